//! The weaving as it is woven: bands of rows in which rule and colours stay the same.

mod told;

use crate::colour::Colour;
use crate::message::Message;
use crate::pattern::{Rule, Way};
use crate::stock::Material;
use crate::weave::weaves::Moves;
use crate::weave::{Course, Weave, WeaverAmount};

/// Rows that alternate are told together up to so many in turn.
const MOST_IN_TURN: usize = 12;

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
        self.bands_within(1, u32::MAX)
    }

    /// The same of some rows only, both included: a band that runs past them is told as far as they go, and one
    /// that was begun below goes on.
    pub fn bands_within(&self, from: u32, to: u32) -> Vec<Band> {
        self.courses.iter().flat_map(|course| Bands { course }.within(from, to)).collect()
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
    fn within(&self, from: u32, to: u32) -> Vec<Band> {
        let course = self.course;
        let moves = course.fabric.moves();
        let [from, to] = [from, to].map(|row| i64::from(row) - i64::from(course.first_row));
        self.parts(moves)
            .into_iter()
            .filter_map(|rows| rows.within(from, to))
            .map(|rows| {
                let threads = self.threads(moves, rows);
                Band {
                    first: course.first_row + rows.first,
                    last: course.first_row + rows.last,
                    every: rows.every,
                    how: self.how(moves, threads.len()),
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
        let told = |row| (self.course.fabric.told(row), self.colours(row), row < self.course.doubled);
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
        let runs_on = match moves {
            Moves::RunsOn(_) | Moves::Skips => true,
            Moves::Twined { .. } => course.way == Way::Continuous,
            Moves::EachRow(_) | Moves::Drawn => false,
        };
        let begun = runs_on && (0..row).any(|row| weaver.lies_in(row));
        let (stave, begin) = if let Moves::Twined { .. } = moves {
            let comes_out =
                |place: &u32| fabric.cell(row, fabric.stave_in(row, *place)).outside == Some(number - 1);
            let place = (0..fabric.count).find(comes_out)?;
            let stave = (fabric.stave_in(row, place) + fabric.count - 1) % fabric.count + 1;
            let id = if begun { "weave-on-behind" } else { "weave-begin-behind" };
            (stave, Message::new(id).with("stave", stave))
        } else {
            let over = fabric.is_over(row, fabric.stave_in(row, 0));
            let alike = |place: &u32| fabric.is_over(row, fabric.stave_in(row, *place)) == over;
            // Where one is skipped, that is told by itself.
            let most = if moves == Moves::Skips { 1 } else { fabric.count };
            let run = (0..most).take_while(alike).count() as u32;
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

    fn how(&self, moves: Moves, threads: usize) -> Message {
        let of = |id, rule: Rule| Message::new(id).with("over", rule.over()).with("under", rule.under());
        match moves {
            Moves::RunsOn(rule) if self.course.fabric.every() > 1 && threads > 1 => {
                of("weave-how-in-turn", rule)
            }
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

impl Rows {
    /// Those of them that lie within others (from 0 within the course), if there are any.
    fn within(self, from: i64, to: i64) -> Option<Self> {
        let (first, last, every) =
            (i64::from(self.first), i64::from(self.last), i64::from(self.every.max(1)));
        let skipped = ((from - first).max(0) + every - 1) / every * every;
        let first = first + skipped;
        let last = first + (last.min(to) - first).div_euclid(every) * every;
        (first <= last).then_some(Self { first: first as u32, last: last as u32, every: self.every })
    }
}

/// How many rows take turns, and for how many rows they do: as many rows as can be told together.
fn in_turn<T: PartialEq>(rows: &[T]) -> (usize, usize) {
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
