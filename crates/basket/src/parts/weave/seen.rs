//! What the eye sees at a crossing: which weaver or stave, and its colour.

use crate::colour::Colour;
use crate::weave::{Cell, Course, Weave};

/// From which side a basket is looked at.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Face {
    /// From outside.
    Outside,
    /// From inside.
    Inside,
}

/// What is seen at a crossing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Seen<'a> {
    /// Its colour.
    pub colour: &'a Colour,
    /// Index of the weaver within its course; none where the stave is seen.
    pub weaver: Option<u32>,
}

static UNDYED: std::sync::LazyLock<Colour> = std::sync::LazyLock::new(Colour::natural);

impl Weave {
    /// The course in which a row (counted from 1) lies.
    pub fn course_of(&self, row: u32) -> Option<&Course> {
        let begun = |course: &&Course| course.first_row <= row && course.rows > 0;
        let course = self.courses.iter().rev().find(begun)?;
        (row - course.first_row < course.rows).then_some(course)
    }

    /// What lies at the crossing of a row and a stave, both counted from 1; nothing above the last row.
    pub fn cell(&self, row: u32, stave: u32) -> Cell {
        self.course_of(row).map_or_else(Cell::default, |course| {
            course.fabric.cell(row - course.first_row, stave.saturating_sub(1))
        })
    }

    /// What is seen at the crossing of a row and a stave, both counted from 1.
    ///
    /// Of slewed and doubled weavers, which lie side by side in one row, it is the lowest;
    /// [`Course::side_by_side`] gives the others.
    pub fn colour(&self, row: u32, stave: u32, face: Face) -> Seen<'_> {
        self.course_of(row)
            .and_then(|course| course.seen(row - course.first_row, stave.saturating_sub(1), face))
            .unwrap_or(Seen { colour: self.stave_colour(stave), weaver: None })
    }

    /// The colour of a stave, counted from 1.
    pub fn stave_colour(&self, stave: u32) -> &Colour {
        let index = (stave.max(1) - 1) as usize % self.stave_colours.len().max(1);
        self.stave_colours.get(index).unwrap_or(&UNDYED)
    }
}

impl Course {
    /// The weaver seen at a row of this course (from 0) and a stave (from 0), if any.
    pub fn seen(&self, row: u32, stave: u32, face: Face) -> Option<Seen<'_>> {
        let cell = self.fabric.cell(row, stave);
        let weaver = match face {
            Face::Outside => cell.outside,
            Face::Inside => cell.inside,
        }?;
        Some(Seen { colour: self.weaver_colour(weaver, row, stave), weaver: Some(weaver) })
    }

    /// The weavers that lie side by side in a row of this course (from 0) and their colours at a stave
    /// (from 0), the lowest first; one where the row is neither slewed nor doubled.
    pub fn side_by_side(&self, row: u32, stave: u32) -> Vec<Seen<'_>> {
        let lies = |(weaver, amount): (u32, &super::WeaverAmount)| {
            let seen = Seen { colour: self.weaver_colour(weaver, row, stave), weaver: Some(weaver) };
            amount.lies_in(row).then_some(seen)
        };
        (0..).zip(&self.weavers).filter_map(lies).collect()
    }

    fn weaver_colour(&self, weaver: u32, row: u32, stave: u32) -> &Colour {
        let amount = self.weavers.get(weaver as usize);
        amount.map_or(&UNDYED, |amount| {
            amount.colour_at(row, self.fabric.place_in(row, stave)).unwrap_or(&UNDYED)
        })
    }
}
