//! Measures of what a basket holds.

/// Cubic millimetres in a litre.
pub(super) const MM3_PER_LITRE: f64 = 1e6;
/// Litres in a US liquid quart: 57.75 cubic inches (NIST Handbook 44 (2023), appendix C), exact.
const LITRES_PER_US_QUART: f64 = 0.946_352_946;

/// US liquid quarts in so many litres.
pub fn litres_to_us_quarts(litres: f64) -> f64 {
    litres / LITRES_PER_US_QUART
}
