//! The weaving as it is woven: bands of rows in which rule and colours stay the same.

use crate::colour::Colour;
use crate::message::{Message, Value};
use crate::pattern::{Rule, Way};
use crate::stock::Material;
use crate::weave::instructions::in_turn;
use crate::weave::weaves::Moves;
use crate::weave::{Course, Weave, WeaverAmount};

/// Changes of colour that a band tells; further ones stand in the list of joins only.
const MOST_CHANGES: usize = 40;

/// Rows that are woven by one rule in one order of colours.
#[derive(Clone, Debug, PartialEq)]
pub struct Band {
    /// Number of the first row.
    pub first: u32,
    /// Number of the last row.
    pub last: u32,
    /// How many rows further the next of these rows is.
    pub every: u32,
    /// The weavers at work, in the order in which they begin.
    pub threads: Vec<Thread>,
    /// How they pass the staves, as a few words.
    pub how: Message,
    /// All that is to be done, a sentence each; the rows can be woven from it alone.
    pub text: Vec<Message>,
}

/// A weaver at work in a band.
#[derive(Clone, Debug, PartialEq)]
pub struct Thread {
    /// Number within its course, counted from 1.
    pub number: u32,
    /// Its material.
    pub material: Material,
    /// Its colour where it begins.
    pub colour: Colour,
    /// Number of the first row that it lays in the band.
    pub row: u32,
    /// Stave at which it begins: the first that it passes, or the one behind which it is laid.
    pub stave: u32,
    /// Words for where it begins.
    begin: Message,
}

impl Weave {
    /// The weaving from the base upward, band by band.
    pub fn bands(&self) -> Vec<Band> {
        self.courses.iter().flat_map(|course| Bands { course }.all()).collect()
    }
}

/// Some rows of a course, from 0 within it: the first, the last, and how many rows on the next is.
#[derive(Clone, Copy)]
struct Rows {
    first: u32,
    last: u32,
    every: u32,
}

/// The bands of one course.
struct Bands<'a> {
    course: &'a Course,
}

impl Bands<'_> {
    fn all(&self) -> Vec<Band> {
        let course = self.course;
        let moves = course.fabric.moves();
        self.parts(moves)
            .into_iter()
            .map(|rows| {
                let threads = self.threads(moves, rows);
                Band {
                    first: course.first_row + rows.first,
                    last: course.first_row + rows.last,
                    every: rows.every,
                    how: self.how(moves),
                    text: self.text(moves, rows, &threads),
                    threads,
                }
            })
            .collect()
    }

    /// The rows that are told together.
    fn parts(&self, moves: Moves) -> Vec<Rows> {
        let course = self.course;
        if moves == Moves::Drawn {
            return self.drawn();
        }
        let mut parts: Vec<Rows> = Vec::new();
        for row in 0..course.rows {
            match parts.last_mut().filter(|part| self.goes_on(moves, **part, row)) {
                Some(part) => part.last = row,
                None => parts.push(Rows { first: row, last: row, every: 1 }),
            }
        }
        parts
    }

    /// Drawn rows that are alike, one after another or in turn.
    fn drawn(&self) -> Vec<Rows> {
        let told = |row| (self.course.fabric.told(row, true), self.colours(row), row < self.course.doubled);
        let all: Vec<_> = (0..self.course.rows).map(told).collect();
        let mut parts = Vec::new();
        let mut done = 0;
        while let Some(rest) = all.get(done..).filter(|rest| !rest.is_empty()) {
            let (every, alike) = in_turn(rest);
            parts.extend((0..every.min(rest.len())).map(|index| Rows {
                first: (done + index) as u32,
                last: (done + index + (alike - 1 - index) / every * every) as u32,
                every: every as u32,
            }));
            done += alike;
        }
        parts
    }

    /// Whether a row belongs to the band below it.
    fn goes_on(&self, moves: Moves, part: Rows, row: u32) -> bool {
        let course = self.course;
        if (row < course.doubled) != (part.first < course.doubled) {
            return false;
        }
        let Moves::EachRow(rule) = moves else { return true };
        let alike = self.colours(row) == self.colours(part.first);
        let set_off = |row| course.fabric.set_off(row, rule.repeat());
        let turns = part.last > part.first && set_off(part.first + 1) != set_off(row);
        alike && !turns
    }

    /// Places of a row from which colours are seen, of each weaver that lies in it.
    fn colours(&self, row: u32) -> Vec<(u32, &Colour)> {
        let changes = self.course.weavers.iter().flat_map(|weaver| {
            let within = weaver.strands.iter().filter(|strand| strand.row == row).map(|strand| strand.place);
            let places = std::iter::once(0).chain(within.filter(|place| *place > 0));
            let lies = weaver.lies_in(row);
            places.filter(move |_| lies).filter_map(move |place| Some((place, weaver.colour_at(row, place)?)))
        });
        let mut seen: Vec<(u32, &Colour)> = Vec::new();
        for change in changes {
            if change.0 == 0 || seen.last().is_none_or(|(_, colour)| *colour != change.1) {
                seen.push(change);
            }
        }
        seen
    }

    fn threads(&self, moves: Moves, rows: Rows) -> Vec<Thread> {
        let mut threads: Vec<Thread> = (1_u32..)
            .zip(&self.course.weavers)
            .filter_map(|(number, weaver)| self.thread(moves, rows, (number, weaver)))
            .collect();
        // In the order in which they begin: by row, and in a row by place.
        let place = |thread: &Thread| {
            self.course.fabric.place_in(rows.first, thread.stave % self.course.fabric.count)
        };
        let is_twined = matches!(moves, Moves::Twined { .. });
        threads.sort_by_key(|thread| (thread.row, if is_twined { place(thread) } else { thread.number }));
        threads
    }

    /// A weaver where it lays a row of the band.
    fn thread(&self, moves: Moves, rows: Rows, (number, weaver): (u32, &WeaverAmount)) -> Option<Thread> {
        let (course, fabric) = (self.course, &self.course.fabric);
        let row = (rows.first..=rows.last).step_by(rows.every as usize).find(|row| weaver.lies_in(*row))?;
        // What was begun in the same course already is not begun again.
        let begun =
            matches!(moves, Moves::RunsOn(_) | Moves::Skips) && (0..row).any(|row| weaver.lies_in(row));
        let (stave, begin) = if let Moves::Twined { .. } = moves {
            let comes_out =
                |place: &u32| fabric.cell(row, fabric.stave_in(row, *place)).outside == Some(number - 1);
            let place = (0..fabric.count).find(comes_out)?;
            let stave = (fabric.stave_in(row, place) + fabric.count - 1) % fabric.count + 1;
            (stave, Message::new("weave-begin-behind").with("stave", stave))
        } else {
            let over = fabric.is_over(row, fabric.stave_in(row, 0));
            let alike = |place: &u32| fabric.is_over(row, fabric.stave_in(row, *place)) == over;
            let run = (0..fabric.count).take_while(alike).count() as u32;
            let id = match (begun, over) {
                (false, true) => "weave-begin-over",
                (false, false) => "weave-begin-under",
                (true, true) => "weave-on-over",
                (true, false) => "weave-on-under",
            };
            let [from, to] = [0, run.saturating_sub(1)].map(|place| fabric.stave_in(row, place) + 1);
            (from, Message::new(id).with("count", run).with("from", from).with("to", to))
        };
        Some(Thread {
            number,
            material: weaver.material.clone(),
            colour: weaver.colour_at(row, 0)?.clone(),
            row: course.first_row + row,
            stave,
            begin,
        })
    }

    fn how(&self, moves: Moves) -> Message {
        let of = |id, rule: Rule| Message::new(id).with("over", rule.over()).with("under", rule.under());
        match moves {
            Moves::RunsOn(rule) if self.course.fabric.every() > 1 => of("weave-how-in-turn", rule),
            Moves::RunsOn(rule) => of("weave-how-on", rule),
            Moves::EachRow(rule) => of("weave-how-each", rule),
            Moves::Twined { over } => Message::new("weave-how-twined").with("over", over),
            Moves::Skips => of("weave-how-on", Rule::PLAIN),
            Moves::Drawn => self.course.weave.name(),
        }
    }

    fn text(&self, moves: Moves, rows: Rows, threads: &[Thread]) -> Vec<Message> {
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
        let how = Value::Said(self.how(moves));
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
                let told = self.course.fabric.told(rows.first, true);
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

impl Thread {
    /// Its colour and material.
    pub fn name(&self) -> Message {
        Message::new("weave-weaver").with("colour", &self.colour).with("material", &self.material)
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
