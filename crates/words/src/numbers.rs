//! Numbers and lengths in the reader's language and units.

use basket::Length;
use basket::pattern::Units;

use crate::Language;

/// A number with at most this many decimals, in the language's own writing.
pub(crate) fn decimal(number: f64, decimals: u8, language: Language) -> String {
    let text = format!("{number:.*}", usize::from(decimals));
    let text = if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.') } else { &text };
    let text = if text == "-0" { "0" } else { text };
    text.replace('-', "−").replace('.', language.decimal_mark())
}

/// To the nearest 1/16 in or 0.5 mm.
pub(crate) fn length(length: Length, units: Units, language: Language) -> String {
    match units {
        Units::Inches => format!("{} in", fraction(length.to_inches(), 16)),
        Units::Millimetres => format!("{} mm", stepped(length.to_mm(), 0.5, language)),
    }
}

/// To the nearest 1/32 in or 0.1 mm; what is smaller than the finest mark says so.
pub(crate) fn fine(length: Length, units: Units, language: Language) -> String {
    let nothing = length.abs() < Length::mm(1e-6);
    match units {
        Units::Inches if !nothing && length.abs() < Length::inches(1.0 / 64.0) => "< 1/64 in".to_owned(),
        Units::Inches if length.abs() < Length::inches(1.0 / 16.0) => {
            format!("{} in", fraction(length.to_inches(), 64))
        }
        Units::Inches => format!("{} in", fraction(length.to_inches(), 32)),
        Units::Millimetres if !nothing && length.abs() < Length::mm(0.05) => {
            format!("< {} mm", decimal(0.1, 1, language))
        }
        Units::Millimetres => format!("{} mm", stepped(length.to_mm(), 0.1, language)),
    }
}

/// Feet (to a half below 20) or metres to a tenth.
pub(crate) fn run(length: Length, units: Units, language: Language) -> String {
    match units {
        Units::Inches if length.abs() < Length::feet(20.0) => format!("{} ft", fraction(length.to_feet(), 2)),
        Units::Inches => format!("{} ft", fraction(length.to_feet(), 1)),
        Units::Millimetres => format!("{} m", decimal(length.to_metres(), 1, language)),
    }
}

fn stepped(number: f64, step: f64, language: Language) -> String {
    decimal((number / step).round() * step, 1, language)
}

/// A whole number and a fraction in lowest terms: `5 5/8`.
fn fraction(number: f64, denominator: u64) -> String {
    let parts = (number.abs() * denominator as f64).round() as u64;
    let sign = if number < 0.0 && parts > 0 { "−" } else { "" };
    let (whole, mut over, mut under) = (parts / denominator, parts % denominator, denominator);
    while over > 0 && over % 2 == 0 && under % 2 == 0 {
        over /= 2;
        under /= 2;
    }
    match (whole, over) {
        (_, 0) => format!("{sign}{whole}"),
        (0, _) => format!("{sign}{over}/{under}"),
        _ => format!("{sign}{whole} {over}/{under}"),
    }
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
        assert_eq!(say(2286.0, Units::Inches), "7 1/2 ft");
    }
}
