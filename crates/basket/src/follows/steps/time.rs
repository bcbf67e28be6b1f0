//! How long weaving takes, and how long things dry: the least usual waits, all of them common
//! practice; and shares of work.

use crate::basket::Basket;
use crate::pattern::{Way, WeaveKind};
use crate::weave::Row;

/// Rows that are the hardest (common practice: the first two, and from the fourth on it goes easily).
const HARDEST_ROWS: u32 = 2;

/// Minutes of weaving one row, joins not: by its crossings, for a metre of few staves goes quickly.
pub(super) fn row(basket: &Basket, row: &Row) -> f64 {
    let pace = &basket.hand.pace;
    let Some(course) = basket.body.weave.course_of(row.number) else { return 0.0 };
    let each = match course.weave {
        WeaveKind::Pairing | WeaveKind::Wale(_) => pace.twined_crossing,
        kind if kind == WeaveKind::Plain || course.fabric.repeat() == 2 => pace.crossing,
        _ => pace.counted_crossing,
    };
    let begun = if course.way == Way::RowByRow { pace.begin_row } else { 0.0 };
    let harder = if row.number <= HARDEST_ROWS { pace.first_rows } else { 1.0 };
    f64::from(course.fabric.count) * each * harder + begun
}

/// Staves under the band, until they keep their bend. A strip 1.5 mm thick loses 90 % of its water
/// in 2.65 h (diffusion through both faces, D = 4.5e-11 m²/s, value for wood from memory).
pub(super) const STAVES_DRY: f64 = 3.0 * 60.0;
/// The finished weaving on the mould: 24 to 72 h (common practice); the least.
pub(super) const BODY_DRY: f64 = 24.0 * 60.0;
/// Bent hoops and bail in their clamps: overnight (common practice).
pub(super) const BENT_DRY: f64 = 12.0 * 60.0;
/// Glue at the plug (common practice; the maker of the glue knows better).
pub(super) const GLUE_DRY: f64 = 60.0;
/// Between coats of shellac (common practice; the maker of the product knows better).
pub(super) const SHELLAC_DRY: f64 = 60.0;
/// Stain before shellac (common practice; the maker of the product knows better).
pub(super) const STAIN_DRY: f64 = 12.0 * 60.0;
/// Oil (common practice; the maker of the product knows better).
pub(super) const OIL_DRY: f64 = 72.0 * 60.0;
/// Between coats of varnish: overnight (common practice; the maker of the product knows better).
pub(super) const VARNISH_DRY: f64 = 12.0 * 60.0;

/// Share of the work of taking a basket off, plugging and sanding it that taking it off is (common practice).
pub(super) const OFF: f64 = 1.0 / 6.0;
