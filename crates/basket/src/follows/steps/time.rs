//! How long things dry: the least usual waits, all of them common practice; and shares of work.

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

/// Share of the work of taking a basket off, plugging and sanding it that taking it off is (common practice).
pub(super) const OFF: f64 = 1.0 / 6.0;
