//! A band in sentences.

use super::{Bands, Rows, Thread};
use crate::message::{Message, Value};
use crate::pattern::{Rule, Way};
use crate::weave::weaves::Moves;

/// Changes of colour that a band tells; further ones stand in the list of joins only.
const MOST_CHANGES: usize = 40;

impl Bands<'_> {
    /// All that is to be done, a sentence each.
    pub(super) fn text(&self, moves: Moves, rows: Rows, threads: &[Thread]) -> Vec<Message> {
        let fabric = &self.course.fabric;
        let mut text = self.head(moves, rows, threads);
        match moves {
            Moves::RunsOn(rule) if rule != Rule::PLAIN && rows.last > rows.first && fabric.closes() => {
                text.extend(shift(fabric.set_off(rows.first + 1, rule.repeat())));
            }
            Moves::EachRow(rule) => text.extend(self.each_row(rule, rows)),
            Moves::Skips => text.extend(self.skips(rows)),
            Moves::Twined { .. } if fabric.rise() == 0 && rows.last > rows.first => {
                text.push(Message::new(if self.course.way == Way::RowByRow {
                    "weave-row-end"
                } else {
                    "weave-band-twined-step-up"
                }));
            }
            _ => {}
        }
        text.extend(self.changes(moves, rows));
        text
    }

    /// The rows, the weavers and where they begin.
    fn head(&self, moves: Moves, rows: Rows, threads: &[Thread]) -> Vec<Message> {
        let how = Value::Said(self.how(moves, threads.len()));
        let label = Value::Said(self.label(rows));
        let each = |id, thread: &Thread| {
            Message::new(id)
                .with("number", thread.number)
                .with("weaver", Value::Said(thread.name()))
                .with("begin", Value::Said(thread.begin.clone()))
        };
        let count = threads.len() as u32;
        match threads {
            _ if moves == Moves::Drawn => {
                let named = |thread: &Thread| {
                    let weaver = Value::Said(thread.name());
                    Message::new("weave-band-drawn").with("rows", label.clone()).with("weaver", weaver)
                };
                let told = self.course.fabric.told(rows.first);
                threads.iter().take(1).map(named).chain([told]).collect()
            }
            [thread] => vec![each("weave-band-one", thread).with("rows", label).with("how", how)],
            [lowest, ..] if self.lie_together() => {
                let head = each("weave-band-together", lowest).with("rows", label).with("how", how);
                let lies = |thread: &Thread| each("weave-band-lies", thread);
                std::iter::once(head.with("count", count)).chain(threads.iter().map(lies)).collect()
            }
            _ => {
                let head = Message::new("weave-band-several").with("rows", label).with("how", how);
                let named = |thread: &Thread| {
                    if self.course.fabric.every() == 1 {
                        return each("weave-band-each", thread);
                    }
                    each("weave-band-each-from", thread).with("row", thread.row)
                };
                std::iter::once(head.with("count", count)).chain(threads.iter().map(named)).collect()
            }
        }
    }

    /// Whether several weavers lie in each row as if they were one.
    fn lie_together(&self) -> bool {
        self.course.fabric.weavers() == 1
    }

    fn label(&self, rows: Rows) -> Message {
        let id = match ((rows.last - rows.first) / rows.every.max(1), rows.every) {
            (0, _) => "weave-rows-one",
            (_, 1) => "weave-rows",
            (1, _) => "weave-rows-two",
            _ => "weave-rows-every",
        };
        let first = self.course.first_row + rows.first;
        Message::new(id)
            .with("first", first)
            .with("second", first + rows.every)
            .with("last", self.course.first_row + rows.last)
    }

    /// How rows that each begin anew follow each other.
    fn each_row(&self, rule: Rule, rows: Rows) -> Vec<Message> {
        let (course, fabric) = (self.course, &self.course.fabric);
        let mut text = Vec::new();
        if rows.last > rows.first {
            let set_off = fabric.set_off(rows.first + 1, rule.repeat());
            text.push(shift(set_off).unwrap_or_else(|| Message::new("weave-shift-none")));
            let further = (fabric.stave_in(rows.first + 1, 0) + fabric.count
                - fabric.stave_in(rows.first, 0))
                % fabric.count;
            if further > 0 {
                text.push(Message::new("weave-band-further").with("staves", further));
            }
        }
        text.push(Message::new(if course.way == Way::RowByRow {
            "weave-row-end"
        } else {
            "weave-row-step-up"
        }));
        text
    }

    /// Where a stave is passed on the same side as the one before it.
    fn skips(&self, rows: Rows) -> Vec<Message> {
        let fabric = &self.course.fabric;
        let skip = |row: u32| {
            let over = |place: u32| fabric.is_over(row, fabric.stave_in(row, place));
            let before = |place: u32| match place.checked_sub(1) {
                Some(before) => Some(over(before)),
                None => Some(fabric.is_over(row.checked_sub(1)?, fabric.stave_in(row - 1, fabric.count - 1))),
            };
            (0..fabric.count).find(|place| before(*place) == Some(over(*place)))
        };
        let mut told: Vec<(u32, u32, u32)> = Vec::new();
        for row in rows.first..=rows.last {
            let Some(place) = skip(row) else { continue };
            match told
                .last_mut()
                .filter(|(first, from, last)| *last + 1 == row && from + row - first == place)
            {
                Some((_, _, last)) => *last = row,
                None => told.push((row, place, row)),
            }
        }
        let first_row = self.course.first_row;
        let say = |(row, place, last): (u32, u32, u32)| {
            Message::new(if last > row { "weave-band-skip" } else { "weave-band-skip-one" })
                .with("row", first_row + row)
                .with("last", first_row + last)
                .with("stave", fabric.stave_in(row, place) + 1)
        };
        told.into_iter().map(say).collect()
    }

    /// Where the colour changes within the band.
    fn changes(&self, moves: Moves, rows: Rows) -> Vec<Message> {
        let course = self.course;
        let several = course.weavers.len() > 1;
        let mut text = Vec::new();
        for (weaver, number) in course.weavers.iter().zip(1_u32..) {
            let mut before = None;
            for strand in weaver.strands.iter().filter(|strand| strand.row <= rows.last) {
                let colour = weaver.colour_at(strand.row, strand.place);
                let changed = before.is_some() && before != colour;
                before = colour;
                let begins = strand.row == rows.first && strand.place == 0;
                // Rows that begin anew are told apart by the colours in which they begin.
                let alike = matches!(moves, Moves::EachRow(_) | Moves::Drawn) && strand.row != rows.first;
                let (Some(colour), true) = (colour, changed && strand.row >= rows.first && !begins && !alike)
                else {
                    continue;
                };
                let stave = course.fabric.stave_in(strand.row, strand.place) + 1;
                let id = if several { "weave-band-change-of" } else { "weave-band-change" };
                text.push(
                    Message::new(id)
                        .with("weaver", number)
                        .with("row", course.first_row + strand.row)
                        .with("stave", stave)
                        .with("colour", colour),
                );
            }
        }
        let more = text.len().saturating_sub(MOST_CHANGES);
        if more > 0 {
            text.truncate(MOST_CHANGES);
            text.push(Message::new("weave-band-changes-more").with("count", more as u32));
        }
        text
    }
}

/// By how many staves each row lies further on or back.
fn shift(staves: i64) -> Option<Message> {
    let id = match staves {
        0 => return None,
        1.. => "weave-shift-on",
        _ => "weave-shift-back",
    };
    Some(Message::new(id).with("staves", Value::Count(staves.abs())))
}
