//! The weaving told row by row.

use serde::Serialize;

use crate::message::{Message, Value};
use crate::pattern::Way;
use crate::weave::fabric::Passing;
use crate::weave::{Course, Weave};

/// Rows that alternate are told together up to so many in turn.
const MOST_IN_TURN: usize = 12;

/// What to do in rows that are woven alike.
#[derive(Clone, Debug, PartialEq, Serialize)]
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
fn in_turn(rows: &[Vec<Message>]) -> (usize, usize) {
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
        let mut text = vec![self.passing(row)];
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
        if row == 0 && self.way == Way::Continuous && self.fabric.begins_anew() && !self.is_drawn() {
            text.push(Message::new("weave-row-step-up"));
        }
        text
    }

    const fn is_drawn(&self) -> bool {
        matches!(self.fabric.passing, Passing::Drawn(_))
    }

    /// How the weaver passes the staves.
    fn passing(&self, row: u32) -> Message {
        let stave = self.fabric.stave_in(row, 0) + 1;
        match &self.fabric.passing {
            Passing::Repeat { rule, .. } => {
                let mut sides = self.fabric.sides(row);
                let side = sides.next().unwrap_or(true);
                let first = 1 + sides.take_while(|other| *other == side).count() as u32;
                Message::new(if side { "weave-row-over" } else { "weave-row-under" })
                    .with("stave", stave)
                    .with("first", first)
                    .with("over", rule.over())
                    .with("under", rule.under())
            }
            Passing::SkipOne => self.skipping(row),
            Passing::Twined { weavers, step_up } => {
                let id = match (row, *step_up) {
                    (0, _) => "weave-row-twined",
                    (_, true) if self.way == Way::RowByRow => "weave-row-twined",
                    (_, true) => "weave-row-twined-step-up",
                    (_, false) => "weave-row-twined-on",
                };
                Message::new(id)
                    .with("weavers", *weavers)
                    .with("over", weavers.saturating_sub(1).max(1))
                    .with("stave", stave)
            }
            Passing::Drawn(_) => self.drawn(row, stave),
        }
    }

    /// Over one, under one, and the stave that is passed on the side of the one before, if there is one.
    fn skipping(&self, row: u32) -> Message {
        let count = self.fabric.count;
        let before = |place: u32| {
            if place > 0 { Some((row, place - 1)) } else { Some((row.checked_sub(1)?, count - 1)) }
        };
        let over = |(row, place): (u32, u32)| self.fabric.is_over(row, self.fabric.stave_in(row, place));
        let skipped =
            (0..count).find(|&place| before(place).is_some_and(|last| over(last) == over((row, place))));
        match skipped {
            Some(place) => Message::new("weave-row-skip").with("stave", self.fabric.stave_in(row, place) + 1),
            None => Message::new("weave-row-skip-none").with("stave", self.fabric.stave_in(row, 0) + 1),
        }
    }

    /// The runs of a row that is drawn by hand; where they repeat, the part that does.
    fn drawn(&self, row: u32, stave: u32) -> Message {
        let sides: Vec<bool> = self.fabric.sides(row).collect();
        let runs: Vec<usize> = sides.chunk_by(|a, b| a == b).map(<[bool]>::len).collect();
        let over = sides.first().copied().unwrap_or(true);
        let told = |runs: &[usize]| {
            Value::Name(runs.iter().map(ToString::to_string).collect::<Vec<_>>().join(" · "))
        };
        let id = |over_id, under_id| Message::new(if over { over_id } else { under_id }).with("stave", stave);
        match repeating(&runs) {
            Some((lead, repeat)) => id("weave-row-drawn-over-again", "weave-row-drawn-under-again")
                .with("runs", told(runs.get(..lead + repeat).unwrap_or(&runs)))
                .with("repeat", repeat as u32),
            None => id("weave-row-drawn-over", "weave-row-drawn-under").with("runs", told(&runs)),
        }
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

/// Where runs repeat after at most one of them: how many lead in, and how many repeat. The last may be cut
/// short by the end of the row.
fn repeating(runs: &[usize]) -> Option<(usize, usize)> {
    let repeats = |lead: usize, repeat: usize| {
        let rest = runs.get(lead..).unwrap_or_default();
        let (Some(again), Some(last)) = (rest.get(repeat..), rest.len().checked_sub(repeat + 1)) else {
            return false;
        };
        rest.len() >= 2 * repeat
            && again.iter().zip(rest).enumerate().all(|(index, (a, b))| a == b || index == last && a < b)
    };
    (2..=runs.len() / 2)
        .step_by(2)
        .flat_map(|repeat| [(0, repeat), (1, repeat)])
        .find(|&(lead, repeat)| repeats(lead, repeat))
}

#[cfg(test)]
mod tests {
    use super::repeating;

    #[test]
    fn runs_that_repeat_are_told_once() {
        assert_eq!(repeating(&[3, 1, 3, 1, 3, 1]), Some((0, 2)));
        assert_eq!(repeating(&[1, 2, 2, 2, 2, 1]), Some((1, 2)));
        assert_eq!(repeating(&[1, 2, 1, 3, 1, 2, 1, 3, 1, 1]), Some((0, 4)));
        assert_eq!(repeating(&[1, 2, 3, 4, 5, 6]), None);
        assert_eq!(repeating(&[9]), None);
    }
}
