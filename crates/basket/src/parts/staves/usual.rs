//! What is usual of staves where the pattern leaves it open.

use crate::measure::Length;

/// The usual gap at the rim is one weaver's width, but no less than this (common practice; a learner's weblog
/// takes 1.5 mm).
pub const USUAL_GAP: Length = Length::inches(1.0 / 16.0);
/// Spares for every stave in the basket (a learner's weblog: at least 10 %).
pub const SPARE_SHARE: f64 = 0.1;
/// Wanted chance that the spares suffice (assumed).
pub const SPARES_CONFIDENCE: f64 = 0.95;
