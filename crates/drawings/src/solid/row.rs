//! Rows of weaving, weaver by weaver.

use basket::Piece;
use basket::weave::Row;

use super::laid::Laid;
use super::lane::Lane;
use super::maker::Maker;
use super::part::Part;

/// Crossings above which rows are drawn as plain bands, so that no pattern takes too long.
const MOST: u64 = 60_000;

impl Maker<'_> {
    /// All rows up to a number.
    pub(super) fn rows(&self, upto: u32) -> Vec<Part> {
        let basket = self.basket;
        let crossings = u64::from(upto.min(basket.body.weave.rows)) * u64::from(basket.body.uprights().count);
        let rows: Vec<&Row> = basket.body.weave.each_row.iter().filter(|row| row.number <= upto).collect();
        let build = |rows: &[&Row]| -> Vec<Part> {
            rows.iter().flat_map(|row| self.row(row, crossings <= MOST)).collect()
        };
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
    fn row(&self, row: &Row, woven: bool) -> Vec<Part> {
        let Some(course) = self.basket.body.weave.courses.get(row.course.saturating_sub(1) as usize) else {
            return Vec::new();
        };
        let lanes = Lane::of(course, row.number.saturating_sub(course.first_row));
        let mut parts = Vec::new();
        for lane in lanes {
            let laid = Laid::of(self, course, row, &lane);
            let strands = if woven { laid.strands() } else { vec![laid.band()] };
            for (strand, (substance, shape)) in (1..).zip(strands) {
                let piece = Piece::Row { row: row.number, weaver: lane.weaver + 1, strand };
                parts.push(Part::new(piece, substance, shape));
            }
        }
        parts
    }
}
