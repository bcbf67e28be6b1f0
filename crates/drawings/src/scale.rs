//! Round scales of drawings, and round steps on the scales of charts.

use basket::Length;
use basket::message::Value;
use basket::pattern::Units;
use words::Words;

/// Scales in which a basket is drawn.
const SCALES: [f64; 14] =
    [2.0, 1.5, 1.0, 0.8, 1.0 / 1.5, 0.5, 0.4, 1.0 / 3.0, 0.25, 0.2, 0.125, 0.1, 0.05, 0.02];

const INCHES: [f64; 12] = [1.0 / 32.0, 1.0 / 16.0, 0.125, 0.25, 0.5, 1.0, 2.0, 4.0, 10.0, 20.0, 50.0, 100.0];
const MILLIMETRES: [f64; 13] = [0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0, 1000.0];

/// The largest round scale up to the largest that fits.
pub(crate) fn round_scale(largest: f64) -> f64 {
    SCALES.into_iter().find(|scale| *scale <= largest).unwrap_or(largest)
}

/// A scale as makers write it, such as `1 : 2`.
pub(crate) fn scale_name(scale: f64, words: &Words) -> String {
    let plain = |number| words.value(&Value::Number(number, 2));
    if scale >= 1.0 { format!("{} : 1", plain(scale)) } else { format!("1 : {}", plain(1.0 / scale)) }
}

/// At most `most` round lengths from zero up to `top`, in the reader's units.
pub(crate) fn ticks(top: Length, units: Units, most: usize) -> Vec<Length> {
    let steps: Vec<Length> = match units {
        Units::Inches => INCHES.map(Length::inches).to_vec(),
        Units::Millimetres => MILLIMETRES.map(Length::mm).to_vec(),
    };
    let fits = |step: &Length| top / *step < most as f64;
    let Some(step) = steps.into_iter().find(fits) else { return Vec::new() };
    (0..most as u32).map(|tick| step * f64::from(tick)).filter(|tick| *tick <= top).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ticks_are_round_and_few() {
        let in_inches = ticks(Length::inches(4.2), Units::Inches, 6);
        assert_eq!(in_inches, [0.0, 1.0, 2.0, 3.0, 4.0].map(Length::inches));
        let in_mm = ticks(Length::mm(7.0), Units::Millimetres, 6);
        assert_eq!(in_mm, [0.0, 2.0, 4.0, 6.0].map(Length::mm));
    }
}
