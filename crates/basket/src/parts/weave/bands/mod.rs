//! The weaving as it is woven: bands of rows in which rule and colours stay the same.

mod told;

use crate::colour::Colour;
use crate::message::Message;
use crate::pattern::Rule;
use crate::stock::Material;
use crate::weave::instructions::in_turn;
use crate::weave::weaves::Moves;
use crate::weave::{Course, Weave, WeaverAmount};

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
}

impl Thread {
    /// Its colour and material.
    pub fn name(&self) -> Message {
        Message::new("weave-weaver").with("colour", &self.colour).with("material", &self.material)
    }
}
