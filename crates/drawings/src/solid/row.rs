//! Rows of weaving, weaver by weaver.

use basket::Piece;
use basket::weave::{Course, Row};

use super::detail::Simplified;
use super::laid::Laid;
use super::lane::Lane;
use super::maker::Maker;
use super::part::Part;
use super::stage;

impl Maker<'_> {
    /// The course to which a row belongs.
    pub(super) fn course_of(&self, row: &Row) -> Option<&'_ Course> {
        self.basket.body.weave.courses.get(row.course.saturating_sub(1) as usize)
    }

    /// All rows up to a number.
    pub(super) fn rows(&self, upto: u32) -> Vec<Part> {
        let open = stage::open_to(self.basket);
        let all = self.basket.body.weave.each_row.iter();
        let rows: Vec<&Row> = all.filter(|row| row.number <= upto && row.along < open).collect();
        let build = |rows: &[&Row]| -> Vec<Part> { rows.iter().flat_map(|row| self.row(row)).collect() };
        // Rows make up most of a solid: two threads share them.
        let (lower, upper) = rows.split_at(rows.len() / 2);
        std::thread::scope(|scope| {
            let above = scope.spawn(|| build(upper));
            let mut parts = build(lower);
            parts.extend(above.join().unwrap_or_else(|_| build(upper)));
            parts
        })
    }

    /// The weavers of a row, true or as plain bands.
    fn row(&self, row: &Row) -> Vec<Part> {
        let Some(course) = self.course_of(row) else { return Vec::new() };
        let lanes = Lane::of(course, row.number.saturating_sub(course.first_row));
        let mut parts = Vec::new();
        for lane in lanes {
            let laid = Laid::of(self, course, row, &lane);
            let bands = self.simplified == Some(Simplified::Bands);
            let strands = if bands { vec![laid.band()] } else { laid.strands() };
            for (strand, (substance, shape)) in (1..).zip(strands) {
                let piece = Piece::Row { row: row.number, weaver: lane.weaver + 1, strand };
                parts.push(Part::new(piece, substance, shape));
            }
        }
        parts
    }
}
