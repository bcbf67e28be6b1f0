//! How much weaver every row, course and the whole weaving takes.

use std::f64::consts::{PI, TAU};

use crate::colour::Colour;
use crate::form::Form;
use crate::measure::Length;
use crate::pattern::Way;
use crate::staves::Staves;
use crate::weave::fabric::Fabric;
use crate::weave::joins::{Joiner, Run};
use crate::weave::layout::Laid;
use crate::weave::look::Eye;
use crate::weave::overlaps::APART;
use crate::weave::sight::proportion;
use crate::weave::strands::{RowsOf, WeaverAmount};
use crate::weave::take_up::over_one_pitch;
use crate::weave::{Course, Join, Row, Weave, begin};

impl Weave {
    /// Weaves the courses round the staves.
    pub fn of(
        courses: &[Laid<'_>],
        shrink: Option<f64>,
        stave_colours: &[Colour],
        form: &Form,
        staves: &Staves,
    ) -> Self {
        let mut joiner = Joiner::new(staves.uprights.count.max(1));
        let mut each_row = Vec::new();
        let mut woven: Vec<Course> = Vec::with_capacity(courses.len());
        for (laid, number) in courses.iter().zip(1..) {
            let below = woven.iter().rfind(|course| course.rows > 0);
            let fabric = laid.pattern.fabric(staves.uprights.count);
            let fabric = match below {
                Some(course) if laid.below > 0 => fabric.over(&course.fabric, course.rows),
                _ => fabric,
            };
            let loom = Loom { laid, form, staves, fabric }.spread(&joiner);
            let (course, rows) = loom.weave(number, &mut joiner);
            woven.push(course);
            each_row.extend(rows);
        }
        let last = woven.last();
        let top_along = last.map_or(Length::ZERO, |course| course.to);
        let shrink = shrink.or(last.map(|course| course.weaver.shrink)).unwrap_or(0.0);
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
            stave_colours: if stave_colours.is_empty() { undyed() } else { stave_colours.to_vec() },
        }
    }
}

/// One course, the mould and the staves on which it is woven.
struct Loom<'a> {
    laid: &'a Laid<'a>,
    form: &'a Form,
    staves: &'a Staves,
    fabric: Fabric,
}

/// A round of one weaver: its length on the basket, and what it would be if it went straight.
#[derive(Clone, Copy, Default)]
struct Round {
    length: Length,
    straight: Length,
}

impl Loom<'_> {
    /// With the beginnings of rows that are woven by themselves spread round and clear of the joins below.
    fn spread(mut self, joiner: &Joiner) -> Self {
        if self.laid.pattern.rows_follow() == Way::RowByRow {
            let first = self.laid.middle(0);
            let girth = (self.form.profile.at(first).radius + self.staves.uprights.thickness / 2.0) * TAU;
            let pitch = girth / f64::from(self.staves.uprights.count.max(1));
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
        let mut straight = Length::ZERO;
        let mut weavers = Vec::new();
        for (index, of) in (0..).zip(self.rows_of()) {
            let mut run = Run::new(laid, self.material_index(index), self.staves, index + 1);
            for (row, changes) in of.each().filter_map(|row| Some((row, *changes.get(row as usize)?))) {
                let Some(line) = rows.get_mut(row as usize) else { break };
                let round = self.round(line.along, changes, run.material.thickness);
                line.length += round.length;
                straight += round.straight;
                let along = line.along;
                run.push(row, round.length, round.straight, along);
            }
            weavers.push(joiner.join(&run, of, &self.fabric));
        }
        (self.course(weavers, straight, &rows), rows)
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
    /// Where it changes sides between two staves it crosses (see [`over_one_pitch`]); where it does not
    /// it runs straight on. It is measured on the middle surface of the staves, and half the thickness
    /// of stave and weaver further out for each share of its way that it spends more outside than
    /// inside (derived for this project).
    fn round(&self, along: Length, changes: u32, weaver: Length) -> Round {
        let count = f64::from(self.staves.uprights.count.max(1));
        let thickness = self.staves.uprights.thickness;
        let width = self.staves.uprights.width_at(along);
        let girth = (self.form.profile.at(along).radius + thickness / 2.0) * TAU;
        let pitch = girth / count;
        let gap = (pitch - width).max(Length::ZERO);
        let crossed = (over_one_pitch(width, gap, thickness, weaver) / (width + gap)).max(1.0);
        let crossed = if crossed.is_finite() { crossed } else { 1.0 };
        let share = (f64::from(changes) / count).min(1.0);
        let outward = (thickness + weaver) * (PI * self.fabric.outward());
        Round { length: girth * (1.0 + (crossed - 1.0) * share) + outward, straight: girth }
    }

    fn course(self, weavers: Vec<WeaverAmount>, straight: Length, rows: &[Row]) -> Course {
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
            space: laid.pattern.space_between_rows(),
            doubled: laid.pattern.doubled.min(laid.rows),
            from: laid.from,
            to: laid.to(),
            wanted_to: laid.wanted_to,
            length,
            take_up: if straight > Length::ZERO { length / straight - 1.0 } else { 0.0 },
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
