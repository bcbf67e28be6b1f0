//! Round steps for the scales of charts, in the reader's units.

use basket::Length;
use basket::pattern::Units;

const INCHES: [f64; 12] = [1.0 / 32.0, 1.0 / 16.0, 0.125, 0.25, 0.5, 1.0, 2.0, 4.0, 10.0, 20.0, 50.0, 100.0];
const MILLIMETRES: [f64; 13] = [0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0, 1000.0];

/// At most `most` round lengths from zero up to `top`.
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
