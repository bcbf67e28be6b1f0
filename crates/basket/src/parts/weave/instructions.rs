//! The weaving told row by row.

use crate::message::{Message, Value};
use crate::pattern::Way;
use crate::weave::{Course, Weave};

/// Rows that alternate are told together up to so many in turn.
const MOST_IN_TURN: usize = 12;

/// What to do in rows that are woven alike.
#[derive(Clone, Debug, PartialEq)]
pub struct Instruction {
    /// Number of the first row.
    pub first: u32,
    /// Number of the last row.
    pub last: u32,
    /// How many rows further the next of these rows is.
    pub every: u32,
    /// What to do, a sentence each.
    pub text: Vec<Message>,
}

/// The identifiers of all sentences of instructions in the message files.
pub const SENTENCES: &[&str] = &[
    "weave-row-over",
    "weave-row-under",
    "weave-row-twined",
    "weave-row-twined-from",
    "weave-row-twined-on",
    "weave-row-twined-step-up",
    "weave-row-drawn-over",
    "weave-row-drawn-under",
    "weave-row-drawn-over-again",
    "weave-row-drawn-under-again",
    "weave-row-skip",
    "weave-row-skip-none",
    "weave-row-weaver",
    "weave-row-colour",
    "weave-row-doubled",
    "weave-row-end",
    "weave-row-step-up",
    "weave-row-join",
    "weave-row-join-colour",
];

/// The weaving row by row; rows that are woven alike, one after another or in turn with others, are told
/// together.
pub fn instructions(weave: &Weave) -> Vec<Instruction> {
    let mut all: Vec<Instruction> = Vec::new();
    for course in &weave.courses {
        let rows: Vec<Vec<Message>> = (0..course.rows).map(|row| course.row(row)).collect();
        let mut told = 0;
        while let Some(rest) = rows.get(told..).filter(|rest| !rest.is_empty()) {
            let (every, alike) = in_turn(rest);
            for (index, text) in rest.iter().take(every).enumerate() {
                let first = course.first_row + (told + index) as u32;
                let last = first + ((alike - 1 - index) / every * every) as u32;
                all.push(Instruction { first, last, every: every as u32, text: text.clone() });
            }
            told += alike;
        }
    }
    all
}

/// How many rows take turns, and for how many rows they do: as many rows as can be told together.
pub(super) fn in_turn<T: PartialEq>(rows: &[T]) -> (usize, usize) {
    let alike = |every: usize| {
        let later = rows.get(every..).unwrap_or_default();
        every + later.iter().zip(rows).take_while(|(a, b)| a == b).count()
    };
    (1..=MOST_IN_TURN.min(rows.len()))
        .map(|every| (every, alike(every)))
        .filter(|(every, alike)| *alike >= 2 * every)
        .max_by_key(|(every, alike)| (*alike, usize::MAX - every))
        .unwrap_or((1, 1))
}

impl Course {
    /// What to do in one row, counted from 0 within the course.
    fn row(&self, row: u32) -> Vec<Message> {
        let mut text = vec![self.fabric.told(row, self.way == Way::RowByRow)];
        let laid = self.laid(row);
        let is_news = row == 0 || laid != self.laid(row - 1);
        if is_news && (self.weavers.len() > 1 || self.weavers.iter().any(|weaver| weaver.colours.len() > 1)) {
            text.extend(laid);
        }
        if row < self.doubled {
            text.push(Message::new("weave-row-doubled"));
        }
        if row == 0 && self.way == Way::RowByRow {
            text.push(Message::new("weave-row-end"));
        }
        if row == 0 && self.way == Way::Continuous && self.steps_up() {
            text.push(Message::new("weave-row-step-up"));
        }
        text
    }

    /// Whether each round of one weaver ends with a step up; of several, each row says so.
    fn steps_up(&self) -> bool {
        self.fabric.rise() == 0 && self.fabric.twined() == 1 && !self.weave.is_drawn()
    }

    /// Which weavers lie in a row, and in which colours the row begins.
    fn laid(&self, row: u32) -> Vec<Message> {
        let here = (1_u32..).zip(&self.weavers).filter(|(_, weaver)| weaver.lies_in(row));
        here.map(|(number, weaver)| {
            let colour = weaver.colour_at(row, 0).map_or_else(|| Value::Name(String::new()), Value::from);
            let (id, several) =
                if self.weavers.len() > 1 { ("weave-row-weaver", true) } else { ("weave-row-colour", false) };
            let message = Message::new(id).with("colour", colour);
            if several { message.with("weaver", number).with("material", &weaver.material) } else { message }
        })
        .collect()
    }

    /// What to do at each join of the course, with its row, in weaving order.
    pub fn joining(&self) -> Vec<(u32, Message)> {
        self.joins
            .iter()
            .map(|join| {
                let colour = self.weavers.get(join.weaver as usize - 1).and_then(|weaver| {
                    let row = join.row.saturating_sub(self.first_row);
                    weaver.colour_at(row, self.fabric.place_in(row, join.cut_over.saturating_sub(1)))
                });
                let id = if join.recolour { "weave-row-join-colour" } else { "weave-row-join" };
                let message = Message::new(id)
                    .with("cut", join.cut_over)
                    .with("start", join.start_behind)
                    .with("colour", colour.map_or_else(|| Value::Name(String::new()), Value::from));
                (join.row, message)
            })
            .collect()
    }
}
