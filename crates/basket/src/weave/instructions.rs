//! The weaving told row by row.

use serde::Serialize;

use crate::message::{Message, Value};
use crate::pattern::Way;
use crate::weave::fabric::Passing;
use crate::weave::{Course, Weave};

/// What to do in a run of rows that are woven alike.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Instruction {
    /// Number of the first row.
    pub first: u32,
    /// Number of the last row.
    pub last: u32,
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
    "weave-row-skip",
    "weave-row-begin",
    "weave-row-weaver",
    "weave-row-colour",
    "weave-row-doubled",
    "weave-row-end",
];

/// The weaving row by row; rows that are woven alike are told together.
pub fn instructions(weave: &Weave) -> Vec<Instruction> {
    let mut all: Vec<Instruction> = Vec::new();
    for course in &weave.courses {
        for index in 0..course.rows {
            let row = course.first_row + index;
            let text = course.row(index);
            match all.last_mut().filter(|last| index > 0 && last.text == text) {
                Some(last) => last.last = row,
                None => all.push(Instruction { first: row, last: row, text }),
            }
        }
    }
    all
}

impl Course {
    /// What to do in one row, counted from 0 within the course.
    fn row(&self, row: u32) -> Vec<Message> {
        let mut text = vec![self.passing(row)];
        let each_anew = self.way == Way::RowByRow;
        if row == 0 || each_anew {
            text.push(Message::new("weave-row-begin").with("stave", self.fabric.stave(0) + 1));
        }
        if self.weavers.len() > 1 || self.weavers.iter().any(|weaver| weaver.colours.len() > 1) {
            text.extend(self.laid(row));
        }
        if row < self.doubled {
            text.push(Message::new("weave-row-doubled"));
        }
        if each_anew {
            text.push(Message::new("weave-row-end"));
        }
        text
    }

    /// How the weaver passes the staves.
    fn passing(&self, row: u32) -> Message {
        let stave = self.fabric.stave(0) + 1;
        let first = || {
            let mut sides = self.fabric.sides(row);
            let side = sides.next().unwrap_or(true);
            (side, 1 + sides.take_while(|other| *other == side).count() as u32)
        };
        match &self.fabric.passing {
            Passing::Repeat { rule, .. } => {
                let (side, staves) = first();
                Message::new(if side { "weave-row-over" } else { "weave-row-under" })
                    .with("stave", stave)
                    .with("first", staves)
                    .with("over", rule.over())
                    .with("under", rule.under())
            }
            Passing::SkipOne => {
                let places = 0..self.fabric.count.saturating_sub(1);
                let both = |place: &u32| {
                    let over = |place| self.fabric.is_over(row, self.fabric.stave(place));
                    over(*place) == over(place + 1)
                };
                let skipped = places.clone().find(both).map_or(stave, |place| self.fabric.stave(place) + 1);
                Message::new("weave-row-skip").with("stave", skipped)
            }
            Passing::Twined { weavers, step_up } => {
                let id = match (row, *step_up) {
                    (0, _) => "weave-row-twined",
                    (_, true) => "weave-row-twined-step-up",
                    (_, false) => "weave-row-twined-on",
                };
                Message::new(id)
                    .with("weavers", *weavers)
                    .with("over", weavers.saturating_sub(1).max(1))
                    .with("stave", stave)
            }
            Passing::Drawn(_) => {
                let sides: Vec<bool> = self.fabric.sides(row).collect();
                let runs: Vec<String> =
                    sides.chunk_by(|a, b| a == b).map(|run| run.len().to_string()).collect();
                let over = sides.first().copied().unwrap_or(true);
                Message::new(if over { "weave-row-drawn-over" } else { "weave-row-drawn-under" })
                    .with("stave", stave)
                    .with("runs", Value::Name(runs.join(" · ")))
            }
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
}
