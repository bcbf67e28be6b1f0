//! What was measured beside its limit: both in the same units, never printed alike when they differ, and never
//! with fractions that differ before millimetres that do not.

use basket::Length;
use basket::measure::Printing;
use basket::message::Value;
use basket::pattern::Units;

use crate::{Words, numbers};

/// How two lengths may be said, the coarsest first.
#[derive(Clone, Copy, PartialEq, PartialOrd)]
enum Manner {
    /// In feet or metres.
    Run,
    /// As a maker marks it.
    Length,
    /// As finely as a maker marks it.
    Fine,
    /// The same, in inches with millimetres to a tenth beside them.
    FineInBoth,
    /// Hundredths of a millimetre.
    Hundredths,
    /// Thousandths of a millimetre.
    Thousandths,
}

const MANNERS: [Manner; 6] =
    [Manner::Run, Manner::Length, Manner::Fine, Manner::FineInBoth, Manner::Hundredths, Manner::Thousandths];

impl Words {
    /// A measured value and its limit as text, where they are lengths, angles or shares; others as they
    /// are, so that messages can choose a plural.
    pub fn compared(&self, measured: &Value, limit: &Value) -> (Value, Value) {
        match (measured, limit) {
            (Value::Length(one), Value::Length(other)) => {
                let coarsest = self.coarsest(*one, *other);
                let contradicts =
                    |manner: Manner| manner == Manner::FineInBoth && tenth(*one) == tenth(*other);
                let manners = MANNERS.into_iter().filter(|manner| *manner >= coarsest);
                apart(manners.filter(|manner| one == other || !contradicts(*manner)), |manner| {
                    (self.in_manner(*one, manner), self.in_manner(*other, manner))
                })
            }
            (Value::Angle(one), Value::Angle(other)) => apart(1..=4, |decimals| {
                let say = |degrees| format!("{}°", numbers::decimal(degrees, decimals, self.language));
                (say(one.to_degrees()), say(other.to_degrees()))
            }),
            (Value::Percent(one), Value::Percent(other)) => apart(1..=4, |decimals| {
                let number = |share: f64| numbers::decimal(share * 100.0, decimals, self.language);
                let say = |share| self.with("unit-percent", &[("number", Value::Name(number(share)))]);
                (say(*one), say(*other))
            }),
            _ => (measured.clone(), limit.clone()),
        }
    }

    /// The manner that suits both: fine as soon as one of them is small.
    fn coarsest(&self, one: Length, other: Length) -> Manner {
        let (small, large) = (one.abs().min(other.abs()), one.abs().max(other.abs()));
        let shown = if small > Length::ZERO { small } else { large };
        if shown < Length::inches(0.25) && self.units == Units::Inches {
            Manner::FineInBoth
        } else if shown < Length::inches(0.5) {
            Manner::Fine
        } else if small > Length::feet(6.0) {
            Manner::Run
        } else {
            Manner::Length
        }
    }

    fn in_manner(&self, length: Length, manner: Manner) -> String {
        let millimetres = |step| numbers::size(&length.print(Printing::Millimetres { step }), self.language);
        match manner {
            Manner::Run => numbers::run(length, self.units, self.language),
            Manner::Length => self.length(length),
            Manner::FineInBoth if self.units == Units::Inches => {
                format!("{} ({})", self.fraction(length), millimetres(0.1))
            }
            Manner::Fine | Manner::FineInBoth => self.fraction(length),
            Manner::Hundredths => millimetres(0.01),
            Manner::Thousandths => millimetres(0.001),
        }
    }
}

/// Millimetres to a tenth, as they are printed.
fn tenth(length: Length) -> String {
    length.print(Printing::Millimetres { step: 0.1 })
}

/// The first way of saying in which two values differ, else the first of all.
fn apart<T>(ways: impl IntoIterator<Item = T>, say: impl Fn(T) -> (String, String)) -> (Value, Value) {
    let mut ways = ways.into_iter().map(say).peekable();
    let first = ways.peek().cloned().unwrap_or_default();
    let (measured, limit) = ways.find(|(measured, limit)| measured != limit).unwrap_or(first);
    (Value::Name(measured), Value::Name(limit))
}

#[cfg(test)]
mod tests {
    use basket::Angle;

    use super::*;
    use crate::Language;

    fn said(one: f64, other: f64, units: Units) -> (String, String) {
        let words = Words::new(Language::English, units);
        let (one, other) = words.compared(&Value::Length(Length::mm(one)), &Value::Length(Length::mm(other)));
        (words.value(&one), words.value(&other))
    }

    fn pair(one: &str, other: &str) -> (String, String) {
        (one.to_owned(), other.to_owned())
    }

    #[test]
    fn lengths_that_differ_print_apart() {
        assert_eq!(said(3.2, 3.1, Units::Inches), pair("1/8 in (3.2 mm)", "1/8 in (3.1 mm)"));
        assert_eq!(said(3.21, 3.19, Units::Inches), pair("3.21 mm", "3.19 mm"));
        // 1/8 in and 3/32 in would both be 2.8 mm.
        assert_eq!(said(2.79, 2.77, Units::Inches), pair("2.79 mm", "2.77 mm"));
        assert_eq!(said(3.2, 3.2, Units::Inches), pair("1/8 in (3.2 mm)", "1/8 in (3.2 mm)"));
        assert_eq!(said(12.72, 12.7, Units::Millimetres), pair("12.72 mm", "12.7 mm"));
        assert_eq!(said(100.0, 100.2, Units::Inches), pair("3 15/16 in (100 mm)", "3 15/16 in (100.2 mm)"));
    }

    #[test]
    fn both_are_said_in_the_same_units() {
        assert_eq!(said(4.0, 50.8, Units::Inches), pair("5/32 in (4 mm)", "2 in (50.8 mm)"));
        assert_eq!(said(300.0, 5000.0, Units::Millimetres), pair("300 mm", "5000 mm"));
    }

    #[test]
    fn angles_and_shares_too() {
        let words = Words::new(Language::English, Units::Inches);
        let (one, other) =
            words.compared(&Value::Angle(Angle::degrees(2.04)), &Value::Angle(Angle::degrees(2.0)));
        assert_eq!((words.value(&one), words.value(&other)), pair("2.04°", "2°"));
        let (one, other) = words.compared(&Value::Percent(0.2004), &Value::Percent(0.2));
        assert_eq!((words.value(&one), words.value(&other)), pair("20.04 %", "20 %"));
    }

    #[test]
    fn counts_stay_counts() {
        let words = Words::new(Language::English, Units::Inches);
        assert_eq!(words.compared(&Value::Count(4), &Value::Count(5)), (Value::Count(4), Value::Count(5)));
    }
}
