//! Printing lengths as makers write them, no finer than asked.

use super::Length;

/// How a length is printed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Printing {
    /// Inches and a reduced fraction, to the nearest part of this size: `5 5/8 in`.
    Inches {
        /// The finest part: 16 for sixteenths.
        denominator: u32,
    },
    /// Millimetres to the nearest step: `142.5 mm`.
    Millimetres {
        /// The step in millimetres, such as 0.5.
        step: f64,
    },
    /// Feet for runs of material: whole from 20 feet upward, tenths below.
    Feet,
    /// Metres for runs of material, to a tenth; hundredths below one metre.
    Metres,
}

impl Length {
    /// The length as text with its unit. A length that is not finite prints as `?`.
    ///
    /// ```
    /// use basket::measure::{Length, Printing};
    /// let base = Length::mm(142.9);
    /// assert_eq!(base.print(Printing::Inches { denominator: 16 }), "5 5/8 in");
    /// assert_eq!(base.print(Printing::Millimetres { step: 0.5 }), "143 mm");
    /// ```
    pub fn print(self, printing: Printing) -> String {
        if !self.to_mm().is_finite() {
            return "?".to_owned();
        }
        match printing {
            Printing::Inches { denominator } => inches(self, denominator.max(1)),
            Printing::Millimetres { step } => millimetres(self, step),
            Printing::Feet if self.to_feet().abs() < 19.95 => format!("{} ft", decimal(self.to_feet(), 1)),
            Printing::Feet => format!("{} ft", decimal(self.to_feet(), 0)),
            Printing::Metres if self.to_metres().abs() < 0.995 => {
                format!("{} m", decimal(self.to_metres(), 2))
            }
            Printing::Metres => format!("{} m", decimal(self.to_metres(), 1)),
        }
    }
}

fn inches(length: Length, denominator: u32) -> String {
    let parts = (length.to_inches().abs() * f64::from(denominator)).round();
    let whole = (parts / f64::from(denominator)).floor();
    let rest = (parts - whole * f64::from(denominator)).clamp(0.0, f64::from(denominator - 1)) as u32;
    let sign = if length.to_mm() < 0.0 && parts > 0.0 { "-" } else { "" };
    let divisor = greatest_common_divisor(rest, denominator);
    match (whole > 0.0, rest) {
        (_, 0) => format!("{sign}{whole:.0} in"),
        (true, _) => format!("{sign}{whole:.0} {}/{} in", rest / divisor, denominator / divisor),
        (false, _) => format!("{sign}{}/{} in", rest / divisor, denominator / divisor),
    }
}

fn millimetres(length: Length, step: f64) -> String {
    let step = if step > 0.0 && step.is_finite() { step } else { 0.1 };
    let rounded = (length.to_mm() / step).round() * step;
    let decimals = (0..3).find(|places| is_whole(step * 10_f64.powi(*places))).unwrap_or(3);
    format!("{} mm", decimal(rounded, usize::try_from(decimals).unwrap_or(3)))
}

fn is_whole(number: f64) -> bool {
    (number - number.round()).abs() < 1e-9 && number > 0.5
}

/// At most this many decimals, without idle zeros and without a minus before zero.
fn decimal(number: f64, places: usize) -> String {
    let text = format!("{number:.places$}");
    let text = if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.') } else { &text };
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}

fn greatest_common_divisor(a: u32, b: u32) -> u32 {
    if b == 0 { a.max(1) } else { greatest_common_divisor(b, a % b) }
}
