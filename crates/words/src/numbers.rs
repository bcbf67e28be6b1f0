//! Numbers and lengths in the reader's language and units.

use basket::Length;
use basket::measure::Printing;
use basket::pattern::Units;

use crate::Language;
use crate::language::{decimal_mark, unit, unit_space};

/// A number with at most this many decimals, in the language's own writing.
pub(crate) fn decimal(number: f64, decimals: u8, language: Language) -> String {
    let text = format!("{number:.*}", usize::from(decimals));
    let text = if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.') } else { &text };
    localised(if text == "-0" { "0" } else { text }, language)
}

/// To the nearest 1/16 in or 0.5 mm.
pub(crate) fn length(length: Length, units: Units, language: Language) -> String {
    printed(length, inches_or(units, 16, 0.5), language)
}

/// To the nearest 1/32 in or 0.1 mm, below 1/16 in to the nearest 1/64; what is smaller than the
/// finest mark says so.
pub(crate) fn fine(length: Length, units: Units, language: Language) -> String {
    let denominator = if length.abs() < Length::inches(1.0 / 16.0) { 64 } else { 32 };
    to_marks(length, inches_or(units, denominator, 0.1), language)
}

/// To the nearest of these marks; what is smaller than one of them says so.
pub(crate) fn to_marks(length: Length, marks: Printing, language: Language) -> String {
    let finest = match marks {
        Printing::Inches { denominator } => Length::inches(1.0 / f64::from(denominator.max(1))),
        Printing::Millimetres { step } => Length::mm(step),
        Printing::Feet | Printing::Metres => Length::ZERO,
    };
    let size = length.abs();
    if size > Length::mm(1e-6) && size < finest {
        return format!("< {}", printed(finest, marks, language));
    }
    printed(length, marks, language)
}

/// Whether a small length says all by itself: in inches only where the fraction is the very length, for a 32nd
/// stands for all that differs from it by up to 0.4 mm.
pub(crate) fn is_told_by_fraction(length: Length, units: Units) -> bool {
    /// Finer than any rule is read.
    const SAME: Length = Length::mm(0.02);
    let fraction = length / Length::inches(1.0 / 32.0);
    units == Units::Millimetres || (Length::inches((fraction.round() - fraction) / 32.0)).abs() < SAME
}

/// Feet or metres.
pub(crate) fn run(length: Length, units: Units, language: Language) -> String {
    let printing = match units {
        Units::Inches => Printing::Feet,
        Units::Millimetres => Printing::Metres,
    };
    printed(length, printing, language)
}

fn inches_or(units: Units, denominator: u32, step: f64) -> Printing {
    match units {
        Units::Inches => Printing::Inches { denominator },
        Units::Millimetres => Printing::Millimetres { step },
    }
}

fn printed(length: Length, printing: Printing, language: Language) -> String {
    size(&length.print(printing), language)
}

/// A size as makers write it, `5 5/8 in`, in the language's own writing.
pub(crate) fn size(text: &str, language: Language) -> String {
    match text.rsplit_once(' ') {
        Some((number, written)) => {
            let space = unit_space(language);
            let number = localised(number, language).replace(' ', space);
            format!("{number}{space}{}", unit(written, language))
        }
        None => localised(text, language),
    }
}

/// The language's decimal mark, and a minus that is not a hyphen.
fn localised(text: &str, language: Language) -> String {
    text.replace('-', "−").replace('.', decimal_mark(language))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn inches_come_in_lowest_terms() {
        let say = |inches| length(Length::inches(inches), Units::Inches, Language::English);
        assert_eq!(say(5.625), "5 5/8 in");
        assert_eq!(say(0.0), "0 in");
        assert_eq!(say(-0.5), "−1/2 in");
        assert_eq!(say(1.99), "2 in");
        assert_eq!(say(3.0 / 16.0), "3/16 in");
    }

    #[test]
    fn millimetres_have_no_false_precision() {
        let say = |mm| length(Length::mm(mm), Units::Millimetres, Language::English);
        assert_eq!(say(142.875), "143 mm");
        assert_eq!(say(142.7), "142.5 mm");
        assert_eq!(fine(Length::mm(1.4766), Units::Millimetres, Language::English), "1.5 mm");
    }

    #[test]
    fn small_lengths_never_print_as_nothing() {
        let say = |mm, units| fine(Length::mm(mm), units, Language::English);
        assert_eq!(say(0.3, Units::Inches), "< 1/64 in");
        assert_eq!(say(0.02, Units::Millimetres), "< 0.1 mm");
        assert_eq!(say(0.0, Units::Inches), "0 in");
        assert_eq!(say(0.8, Units::Inches), "1/32 in");
    }

    #[test]
    fn runs_are_in_feet_and_metres() {
        let say = |mm, units| run(Length::mm(mm), units, Language::English);
        assert_eq!(say(49_073.0, Units::Inches), "161 ft");
        assert_eq!(say(49_073.0, Units::Millimetres), "49.1 m");
        assert_eq!(say(2286.0, Units::Inches), "7.5 ft");
    }

    #[test]
    fn numbers_have_no_idle_zeros() {
        assert_eq!(decimal(2.50, 2, Language::English), "2.5");
        assert_eq!(decimal(-0.001, 1, Language::English), "0");
        assert_eq!(decimal(-4.25, 2, Language::English), "−4.25");
    }

    #[test]
    fn a_fraction_tells_all_only_where_it_is_the_length() {
        // The size of 2.25 mm cane lies between 5/64 and 3/32 in; 3/32 in is 2.38 mm (25.4 mm to the inch).
        for (mm, told) in
            [(2.381_25, true), (2.25, false), (1.98, false), (6.35, true), (6.36, true), (6.5, false)]
        {
            assert_eq!(is_told_by_fraction(Length::mm(mm), Units::Inches), told, "{mm} mm");
        }
        assert!(is_told_by_fraction(Length::mm(2.25), Units::Millimetres));
    }
}
