//! Lengths in both units, as the page shows them.

use basket::Length;
use basket::pattern::Units;
use words::Words;

use crate::bench::api::Range;
use crate::bench::text::marks;

/// `4 7/8 in (124 mm)`, to the marks to which it would be written into a pattern.
pub(crate) fn both(words: &Words, length: Length) -> String {
    words.both_to_marks(length, |units| marks(length, units))
}

/// A slider for lengths of these millimetres, on the marks of a rule and around the present one.
pub(super) fn slider(least: f64, most: f64, units: Units, present: Option<Length>) -> Range {
    let present = present.map(Length::to_mm);
    let (least, most) = (
        present.map_or(least, |present| present.min(least)),
        present.map_or(most, |present| present.max(most)),
    );
    let fine = most <= Length::inches(1.5).to_mm();
    let step = match (units, fine) {
        (Units::Inches, true) => Length::inches(1.0 / 64.0).to_mm(),
        (Units::Inches, false) => Length::inches(1.0 / 16.0).to_mm(),
        (Units::Millimetres, true) => 0.1,
        (Units::Millimetres, false) => 0.5,
    };
    // A little to spare, so that a mark which arithmetic puts a hair off stays in.
    let (least, most) = ((least / step + 1e-6).floor() * step, (most / step - 1e-6).ceil() * step);
    Range { least, most, step }
}
