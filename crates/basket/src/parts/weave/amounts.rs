//! How much weaver every row, course and the whole weaving takes.

use std::f64::consts::PI;
use std::ops::AddAssign;

use crate::colour::Colour;
use crate::form::Form;
use crate::hand::Hand;
use crate::making::Making;
use crate::measure::Length;
use crate::pattern::{Pattern, Way};
use crate::stock::Material;
use crate::uprights::Uprights;
use crate::weave::fabric::Fabric;
use crate::weave::joins::{Joiner, Run};
use crate::weave::layout::Laid;
use crate::weave::look::Eye;
use crate::weave::overlaps::APART;
use crate::weave::sight::proportion;
use crate::weave::strands::{RowsOf, WeaverAmount};
use crate::weave::taut::{Crossing, TakeUp};
use crate::weave::{Course, Join, Row, Weave, begin, defaults};

impl Weave {
    /// Weaves the courses round the staves.
    pub fn of(
        courses: &[Laid<'_>],
        pattern: &Pattern,
        (form, uprights): (&Form, &Uprights),
        making: &mut Making<'_>,
    ) -> Self {
        let hand = making.hand;
        let stave_colours = &pattern.staves.colours;
        let mut joiner = Joiner::new(uprights.count.max(1));
        let mut each_row = Vec::new();
        let mut woven: Vec<Course> = Vec::with_capacity(courses.len());
        for (laid, number) in courses.iter().zip(1..) {
            let below = woven.iter().rfind(|course| course.rows > 0);
            let fabric = laid.pattern.fabric(uprights.count);
            let fabric = match below {
                Some(course) if laid.below > 0 => fabric.over(&course.fabric, course.rows),
                _ => fabric,
            };
            let loom = Loom { laid, form, uprights, fabric, hand }.spread(&joiner);
            let (course, rows) = loom.weave(number, &mut joiner);
            woven.push(course);
            each_row.extend(rows);
        }
        let last = woven.last();
        let top_along = last.map_or(Length::ZERO, |course| course.to);
        let shrink =
            pattern.weave.shrink.or(hand.shrink).or(last.map(|course| course.weaver.shrink)).unwrap_or(0.0);
        let packing_gap = top_along * shrink;
        let dry_pitch = last.map_or(Length::ZERO, |course| course.pitch * (1.0 - shrink));
        let undyed = || vec![Colour::natural()];
        Self {
            rows: each_row.len() as u32,
            length: woven.iter().map(|course| course.length).sum(),
            top_along,
            top_height: form.profile.at(top_along).height,
            shrink,
            packing_gap,
            rows_to_add: if dry_pitch > Length::ZERO { (packing_gap / dry_pitch) as u32 } else { 0 },
            courses: woven,
            each_row,
            direction: pattern.direction(),
            first_face: defaults::first_face(pattern, courses, making),
            stave_colours: if stave_colours.is_empty() { undyed() } else { stave_colours.clone() },
        }
    }
}

/// One course, the mould and the staves on which it is woven.
struct Loom<'a> {
    laid: &'a Laid<'a>,
    form: &'a Form,
    uprights: &'a Uprights,
    fabric: Fabric,
    hand: &'a Hand,
}

/// A round of one weaver: its length on the basket with the least and the most take-up, and what it would be
/// if it went straight.
#[derive(Clone, Copy, Default)]
struct Round {
    least: Length,
    most: Length,
    straight: Length,
}

impl AddAssign for Round {
    fn add_assign(&mut self, other: Self) {
        self.least += other.least;
        self.most += other.most;
        self.straight += other.straight;
    }
}

impl Round {
    fn take_up(&self) -> TakeUp {
        let share = |length: Length| {
            if self.straight > Length::ZERO { length / self.straight - 1.0 } else { 0.0 }
        };
        TakeUp { least: share(self.least), most: share(self.most) }
    }
}

impl Loom<'_> {
    /// With the beginnings of rows that are woven by themselves spread round and clear of the joins below.
    fn spread(mut self, joiner: &Joiner) -> Self {
        if self.laid.pattern.rows_follow() == Way::RowByRow {
            let first = self.laid.middle(0);
            let pitch = self.uprights.pitch(self.form, first);
            let spread = begin::spread(&self.fabric, pitch, self.laid.lowest(), self.laid.rows);
            self.fabric = self.fabric.spread(spread);
            if spread > 0 && self.laid.pattern.start.is_none() {
                let middles = (0..self.laid.rows).map(|row| self.laid.middle(row));
                let rows: Vec<Length> = middles.take_while(|along| *along < first + APART).collect();
                let further = begin::further(&self.fabric, &rows, pitch, joiner.overlaps());
                self.fabric = self.fabric.begun(further);
            }
        }
        self
    }

    fn weave(self, number: u32, joiner: &mut Joiner) -> (Course, Vec<Row>) {
        let laid = self.laid;
        let changes: Vec<u32> = (0..laid.rows).map(|row| self.fabric.changes(row)).collect();
        let mut rows: Vec<Row> = (0..laid.rows).map(|index| self.row(number, index)).collect();
        let mut all = Round::default();
        let mut weavers = Vec::new();
        for (index, of) in (0..).zip(self.rows_of()) {
            let mut run = Run::new(laid, self.material_index(index), self.uprights, index + 1);
            for (row, changes) in of.each().filter_map(|row| Some((row, *changes.get(row as usize)?))) {
                let Some(line) = rows.get_mut(row as usize) else { break };
                let round = self.round(line.along, changes, run.material);
                line.length += round.most;
                all += round;
                run.push(row, round.most, round.straight, line.along);
            }
            weavers.push(joiner.join(&run, of, &self.fabric));
        }
        (self.course(weavers, all.take_up(), &rows), rows)
    }

    /// The rows of each weaver; one that doubles the first rows comes last.
    fn rows_of(&self) -> Vec<RowsOf> {
        let (pattern, rows) = (self.laid.pattern, self.laid.rows);
        let weavers = pattern.weavers();
        let every = self.fabric.every();
        let of = |weaver| RowsOf { first: self.fabric.first_row_of(weaver), every, before: rows };
        let mut all: Vec<RowsOf> = (0..weavers).map(of).collect();
        if pattern.doubled > 0 {
            all.push(RowsOf { first: 0, every: 1, before: pattern.doubled.min(rows) });
        }
        all
    }

    /// Which of the pattern's weavers this is: the one that doubles is of the first's material.
    fn material_index(&self, weaver: u32) -> u32 {
        if weaver < self.laid.pattern.weavers() { weaver } else { 0 }
    }

    fn row(&self, course: u32, index: u32) -> Row {
        let along = self.laid.middle(index);
        Row {
            number: self.laid.first_row + index,
            course,
            begin: self.fabric.stave_in(index, 0) + 1,
            along,
            height: self.form.profile.at(along).height,
            pitch: self.laid.row_pitch(index),
            length: Length::ZERO,
        }
    }

    /// One round of one weaver that changes sides so many times.
    ///
    /// Where it changes sides between two staves it crosses (see [`Crossing`]); where it does not it runs straight
    /// on. It is measured on the middle surface of the staves, and half the thickness of stave and weaver
    /// further out for each share of its way that it spends more outside than inside. A twined weaver also
    /// rises over the others and sinks under them, at right angles to its way in and out (derived for this
    /// project).
    fn round(&self, along: Length, changes: u32, weaver: &Material) -> Round {
        let straight = self.uprights.girth(self.form, along);
        let crossing = Crossing::at(along, self.form, self.uprights, weaver.thickness);
        let share = (f64::from(changes) / f64::from(self.uprights.count.max(1))).min(1.0);
        let outward = (self.uprights.thickness + weaver.thickness) * (PI * self.fabric.outward());
        let climbed = self.fabric.climb(weaver) * f64::from(changes);
        let length = |take_up: f64| {
            let round = straight * (1.0 + take_up * self.hand.take_up * share);
            Length::mm(libm::hypot(round.to_mm(), climbed.to_mm())) + outward
        };
        let TakeUp { least, most } = crossing.take_up();
        Round { least: length(least), most: length(most), straight }
    }

    fn course(self, weavers: Vec<WeaverAmount>, take_up: TakeUp, rows: &[Row]) -> Course {
        let Self { laid, fabric, .. } = self;
        let length: Length = weavers.iter().map(|weaver| weaver.length).sum();
        let mut joins: Vec<_> = weavers.iter().flat_map(|weaver| weaver.joins.iter().copied()).collect();
        let place = |join: &Join| {
            fabric.place_in(join.row.saturating_sub(laid.first_row), join.cut_over.saturating_sub(1))
        };
        joins.sort_by_key(|join| (join.row, place(join)));
        let middle = laid.rows / 2;
        let proportion = proportion(rows.get(middle as usize), &weavers, middle, fabric.count);
        let eye = Eye { rows: laid.rows, proportion };
        Course {
            weave: laid.pattern.weave,
            way: laid.pattern.rows_follow(),
            first_row: laid.first_row,
            rows: laid.rows,
            pitch: laid.pitch(),
            space: laid.clear(),
            doubled: laid.pattern.doubled.min(laid.rows),
            from: laid.from,
            to: laid.to(),
            wanted_to: laid.wanted_to,
            length,
            take_up,
            cut: weavers.iter().map(|weaver| weaver.cut).sum(),
            strand: weavers.first().map_or(Length::ZERO, |weaver| weaver.strand),
            strands: weavers.iter().map(|weaver| weaver.strands.len() as u32).sum(),
            joins,
            weaver: laid.pattern.weaver.clone(),
            weavers,
            verdict: laid.pattern.verdict(&fabric, eye),
            fabric,
        }
    }
}
