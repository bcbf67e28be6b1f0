//! Measures of what a basket holds.

/// Cubic millimetres in a litre.
pub const MM3_PER_LITRE: f64 = 1e6;
/// Litres in a US liquid quart: 57.75 cubic inches (NIST Handbook 44 (2023), appendix C), exact.
pub const LITRES_PER_US_QUART: f64 = 0.946_352_946;
/// Litres in an imperial quart: a quarter of 4.546 09 l (Weights and Measures Act 1985, schedule 1),
/// exact.
pub const LITRES_PER_IMPERIAL_QUART: f64 = 1.136_522_5;

/// US liquid quarts in so many litres.
pub fn litres_to_us_quarts(litres: f64) -> f64 {
    litres / LITRES_PER_US_QUART
}

/// Imperial quarts in so many litres.
pub fn litres_to_imperial_quarts(litres: f64) -> f64 {
    litres / LITRES_PER_IMPERIAL_QUART
}
