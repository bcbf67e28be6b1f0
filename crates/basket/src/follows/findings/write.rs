//! Values as a maker writes them into a pattern, rounded in the direction that mends.

use crate::measure::{Length, MM_PER_INCH};
use crate::pattern::Units;

/// A length that must not be smaller.
pub(super) fn at_least(length: Length, units: Units) -> String {
    written(length, units, f64::ceil)
}

/// A length that must not be larger.
pub(super) fn at_most(length: Length, units: Units) -> String {
    written(length, units, f64::floor)
}

/// A length that must not be larger, in steps in which wood and metal are marked out by hand: 1/32 in or
/// 0.5 mm; finer where it is shorter than a few of these.
pub(super) fn workable(length: Length, units: Units) -> String {
    let few = 4.0;
    match units {
        Units::Inches if length >= Length::inches(few / 32.0) => inches(length.to_inches(), 32, f64::floor),
        Units::Millimetres if length >= Length::mm(few * 0.5) => millimetres(length.to_mm(), 0.5, f64::floor),
        _ => at_most(length, units),
    }
}

/// A length to the nearest 1/64 in or 0.1 mm.
pub(super) fn near(length: Length, units: Units) -> String {
    match units {
        Units::Inches => inches(length.to_inches(), 64, f64::round),
        Units::Millimetres => millimetres(length.to_mm(), 0.1, f64::round),
    }
}

/// A length to the nearest mark by which a maker measures.
pub(in crate::follows) fn marked(length: Length, units: Units) -> String {
    written(length, units, f64::round)
}

/// A word or name.
pub(in crate::follows) fn name(name: &str) -> String {
    let escaped = name.replace('\\', "\\\\").replace('"', "\\\"");
    format!("\"{escaped}\"")
}

/// A straight taper to a foot that is already written.
pub(super) fn taper(from: Length, foot: &str, units: Units) -> String {
    format!("{{ from = {}, foot = {foot} }}", near(from, units))
}

/// Counts that a pattern may have.
const COUNTS: (f64, f64) = (3.0, 999.0);

/// The largest odd count that is not above this.
pub(super) fn odd_at_most(number: f64) -> u32 {
    let (fewest, most) = COUNTS;
    let whole = number.floor().clamp(fewest, most) as u32;
    if whole.is_multiple_of(2) { whole.saturating_sub(1).max(3) } else { whole }
}

/// The smallest odd count that is not below this.
pub(super) fn odd_at_least(number: f64) -> u32 {
    let (fewest, most) = COUNTS;
    (number.ceil().clamp(fewest, most) as u32).max(3) | 1
}

/// Small lengths get finer steps than long ones, so that rounding stays a small part of them.
fn written(length: Length, units: Units, round: fn(f64) -> f64) -> String {
    let size = length.abs();
    match units {
        Units::Inches if size < Length::inches(1.0) => inches(length.to_inches(), 64, round),
        Units::Inches => inches(length.to_inches(), 16, round),
        Units::Millimetres if size < Length::mm(25.0) => millimetres(length.to_mm(), 0.1, round),
        Units::Millimetres => millimetres(length.to_mm(), 0.5, round),
    }
}

/// Lengths within this share of a step of a mark are on it.
const ON_MARK: f64 = 1e-6;

fn on_marks(steps: f64, round: fn(f64) -> f64) -> f64 {
    let nearest = steps.round();
    if (steps - nearest).abs() < ON_MARK { nearest } else { round(steps) }
}

fn inches(inches: f64, denominator: u64, round: fn(f64) -> f64) -> String {
    let parts = on_marks(inches * denominator as f64, round).clamp(0.0, 1e12) as u64;
    let (whole, mut over, mut under) = (parts / denominator, parts % denominator, denominator);
    while over > 0 && over.is_multiple_of(2) {
        over /= 2;
        under /= 2;
    }
    match (whole, over) {
        (_, 0) => format!("\"{whole} in\""),
        (0, _) => format!("\"{over}/{under} in\""),
        _ => format!("\"{whole} {over}/{under} in\""),
    }
}

fn millimetres(mm: f64, step: f64, round: fn(f64) -> f64) -> String {
    let value = (on_marks(mm / step, round) * step).max(0.0);
    let text = format!("{value:.1}");
    format!("\"{} mm\"", text.trim_end_matches(".0"))
}

/// The step in which a length of this size is written.
pub(super) fn step(length: Length, units: Units) -> Length {
    match units {
        Units::Inches if length < Length::inches(1.0) => Length::mm(MM_PER_INCH / 64.0),
        Units::Inches => Length::mm(MM_PER_INCH / 16.0),
        Units::Millimetres if length < Length::mm(25.0) => Length::mm(0.1),
        Units::Millimetres => Length::mm(0.5),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rounding_goes_the_way_that_mends() {
        let length = Length::mm(4.0);
        assert_eq!(at_most(length, Units::Inches), "\"5/32 in\"");
        assert_eq!(at_least(length, Units::Inches), "\"11/64 in\"");
        assert_eq!(at_most(Length::mm(4.27), Units::Millimetres), "\"4.2 mm\"");
        assert_eq!(at_least(Length::mm(103.1), Units::Millimetres), "\"103.5 mm\"");
        assert_eq!(near(Length::mm(6.36), Units::Millimetres), "\"6.4 mm\"");
        assert_eq!(near(Length::mm(2.26), Units::Millimetres), "\"2.3 mm\"");
        assert_eq!(at_least(Length::inches(4.875), Units::Inches), "\"4 7/8 in\"");
    }

    #[test]
    fn workable_sizes_are_marked_by_hand() {
        assert_eq!(workable(Length::inches(25.0 / 64.0), Units::Inches), "\"3/8 in\"");
        assert_eq!(workable(Length::mm(9.9), Units::Millimetres), "\"9.5 mm\"");
        assert_eq!(workable(Length::inches(3.0 / 64.0), Units::Inches), "\"3/64 in\"");
    }

    #[test]
    fn odd_counts() {
        assert_eq!((odd_at_most(74.9), odd_at_most(73.0), odd_at_most(1.0)), (73, 73, 3));
        assert_eq!((odd_at_least(74.1), odd_at_least(72.0), odd_at_least(1e9)), (75, 73, 999));
    }
}
