//! Where rows lie on the mould: courses one above the other, from the base upward.

use crate::form::Form;
use crate::hand::Hand;
use crate::limits::ROWS;
use crate::measure::Length;
use crate::pattern::{CoursePattern, Until};
use crate::stock::Material;
use crate::uprights::Standing;
use crate::weave::passing::Passing;

/// A course set on the mould.
#[derive(Clone, Debug, PartialEq)]
pub struct Laid<'a> {
    pub(super) pattern: &'a CoursePattern,
    /// Rows of the same weave right below, from which it goes on.
    pub(super) below: u32,
    pub(super) first_row: u32,
    pub(super) rows: u32,
    pub(super) from: Length,
    pub(super) wanted_to: Option<Length>,
    heights: Heights,
}

impl Laid<'_> {
    /// Top of the last row, along the mould.
    pub fn to(&self) -> Length {
        self.from + self.heights.of(self.rows)
    }
    /// Mean distance from row to row where rows are not doubled.
    pub(super) fn pitch(&self) -> Length {
        self.heights.cycle.iter().copied().sum::<Length>() / self.heights.cycle.len().max(1) as f64
    }
    /// Clear distance between rows, where they are spaced.
    pub(super) const fn clear(&self) -> Length {
        self.heights.clear
    }
    /// Height of the lowest row that is not doubled.
    pub(super) fn lowest(&self) -> Length {
        self.heights.cycle.iter().copied().reduce(Length::min).unwrap_or(Length::ZERO)
    }
    /// Height of the row with this index (from 0) within the course.
    pub(super) fn row_pitch(&self, index: u32) -> Length {
        self.heights.of(index + 1) - self.heights.of(index)
    }
    /// Middle of the row with this index (from 0) within the course, along the mould.
    pub(super) fn middle(&self, index: u32) -> Length {
        self.from + (self.heights.of(index) + self.heights.of(index + 1)) / 2.0
    }
}

/// How high rows lie: weavers that chase take turns, slewed weavers lie side by side, twined weavers lie over
/// each other, and doubled rows are twice as high. A height that the pattern gives in widths of the
/// weaver goes before what is usual.
#[derive(Clone, Debug, PartialEq)]
struct Heights {
    cycle: Vec<Length>,
    /// Clear distance between rows, where they are spaced.
    clear: Length,
    doubled: u32,
}

impl Heights {
    /// Of a course with so many rows of the same weave below.
    fn new(course: &CoursePattern, below: u32, hand: &Hand) -> Self {
        let weavers = || (0..course.weavers()).map(|weaver| course.material(weaver));
        let most = |of: &dyn Fn(&Material) -> Length| weavers().map(of).fold(Length::ZERO, Length::max);
        let edge_to_edge = |width: Length| (width, width);
        let passing = Passing::of(course);
        let weave = passing.weave();
        // The width by which packing is meant, and the usual height.
        let rows: Vec<(Length, Length)> = if weave.twined() > 1 {
            vec![(most(&|weaver| weaver.width), most(&|weaver| weaver.width + weave.climb(weaver)))]
        } else if weave.weavers() > 1 {
            weavers().map(|weaver| edge_to_edge(weaver.width)).collect()
        } else {
            vec![edge_to_edge(weavers().map(|weaver| weaver.width).sum())]
        };
        let spaced = course.spaced.unwrap_or(Length::ZERO);
        let height = |&(width, usual): &(Length, Length)| {
            (course.packing.map_or(usual * hand.row_height, |packing| width * packing) + spaced)
                .max(Length::mm(0.1))
        };
        let clear = rows.first().map_or(Length::ZERO, |row| (height(row) - row.1).max(Length::ZERO));
        let mut cycle: Vec<Length> = rows.iter().map(height).collect();
        let turns = below as usize % cycle.len().max(1);
        cycle.rotate_left(turns);
        Self { cycle, clear, doubled: course.doubled }
    }

    /// Height of so many rows.
    fn of(&self, rows: u32) -> Length {
        self.single(rows) + self.single(rows.min(self.doubled))
    }

    fn single(&self, rows: u32) -> Length {
        if let [pitch] = self.cycle.as_slice() {
            return *pitch * f64::from(rows);
        }
        let turns = rows as usize / self.cycle.len().max(1);
        let round: Length = self.cycle.iter().copied().sum();
        round * turns as f64 + self.cycle.iter().take(rows as usize - turns * self.cycle.len()).copied().sum()
    }

    /// How many rows fit into a room.
    fn rows_within(&self, room: Length) -> u32 {
        let slack = self.cycle.first().copied().unwrap_or(Length::ZERO) * 1e-6;
        (0..ROWS).find(|&rows| self.of(rows + 1) > room + slack).unwrap_or(ROWS)
    }
}

/// Sets the courses on the mould, each where the one below ends.
pub fn lay_out<'a>(courses: &'a [CoursePattern], form: &Form, hand: &Hand) -> Vec<Laid<'a>> {
    let mut from = Length::ZERO;
    let mut first_row = 1;
    let mut laid: Vec<Laid<'a>> = Vec::with_capacity(courses.len());
    for pattern in courses {
        let lower = laid.iter().rfind(|lower| lower.rows > 0);
        let goes_on = lower.filter(|lower| pattern.goes_on(lower.pattern));
        let below = goes_on.map_or(0, |lower| lower.below + lower.rows);
        let heights = Heights::new(pattern, below, hand);
        let wanted_to = match pattern.until {
            Until::Rows(_) => None,
            Until::Height(height) => Some(form.profile.along_at_height(height)),
            Until::BelowTop(below) => Some(form.profile.along_at_height(form.height() - below)),
        };
        let rows = match (pattern.until, wanted_to) {
            (Until::Rows(rows), _) => rows,
            (_, Some(to)) => heights.rows_within(to - from),
            (_, None) => 0,
        }
        .min(ROWS - (first_row - 1).min(ROWS));
        let course = Laid { pattern, below, first_row, rows, from, wanted_to, heights };
        from = course.to();
        first_row += rows;
        laid.push(course);
    }
    laid
}

/// How far rows hold the inner faces of the uprights off the form: as far as the thickest weaver of their
/// course is thick, from the middle of the first row upward; nothing at the foot.
pub fn behind(laid: &[Laid<'_>]) -> Standing {
    let woven = || laid.iter().filter(|course| course.rows > 0);
    let thickness = |course: &Laid<'_>| {
        course.pattern.materials().map(|weaver| weaver.thickness).fold(Length::ZERO, Length::max)
    };
    let foot = woven().next().map(|_| (Length::ZERO, Length::ZERO));
    let courses = woven().flat_map(|course| {
        let from = if course.from > Length::ZERO { course.from } else { course.middle(0) };
        [(from, thickness(course)), (course.to(), thickness(course))]
    });
    Standing::new(foot.into_iter().chain(courses).collect())
}
