//! How long work takes and how long things dry. All of it is common practice and rough, for one
//! practised pair of hands; a beginner may need twice as long.

/// Cutting and tapering one stave.
pub(super) const SHAPE_STAVE: f64 = 1.5;
/// Setting one stave in the groove.
pub(super) const SET_STAVE: f64 = 0.5;
/// Screwing the base on and marking it.
pub(super) const MOUNT_BASE: f64 = 15.0;
/// Weaving one metre, packing included.
pub(super) const WEAVE_METRE: f64 = 6.0;
/// One join.
pub(super) const JOIN: f64 = 1.0;
/// Packing the dried rows down, all round.
pub(super) const PACK: f64 = 15.0;
/// Sawing, shaping and setting one ear.
pub(super) const EAR: f64 = 20.0;
/// Scarfing, bending and clamping one hoop.
pub(super) const HOOP: f64 = 30.0;
/// Trimming one stave tip.
pub(super) const TRIM: f64 = 0.15;
/// Drilling for one pin, setting and clinching it.
pub(super) const PIN: f64 = 1.5;
/// One wrap of the lashing.
pub(super) const WRAP: f64 = 0.5;
/// Fitting one piece of filler.
pub(super) const FILLER: f64 = 5.0;
/// Shaping and bending the bail.
pub(super) const BAIL: f64 = 45.0;
/// Drilling for and setting one rivet.
pub(super) const RIVET: f64 = 10.0;
/// Taking the basket off, plugging and sanding.
pub(super) const OFF_MOULD: f64 = 30.0;
/// One coat of finish.
pub(super) const COAT: f64 = 15.0;

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
