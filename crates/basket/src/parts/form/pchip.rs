//! Slopes of a monotone cubic through measured points.
//!
//! F. N. Fritsch and R. E. Carlson, "Monotone Piecewise Cubic Interpolation", SIAM Journal on
//! Numerical Analysis 17 (1980), pp. 238–246; slopes by F. N. Fritsch and J. Butland, "A Method for
//! Constructing Local Monotone Piecewise Cubic Interpolants", SIAM Journal on Scientific and
//! Statistical Computing 5 (1984), pp. 300–304. A natural spline would bulge between two equal
//! girths; this curve never passes a measurement.

/// Slope at every knot `(x, y)`; the `x` must rise. No slope for fewer than two knots.
pub(super) fn slopes(knots: &[(f64, f64)]) -> Vec<f64> {
    let secants: Vec<Secant> =
        knots.iter().zip(knots.iter().skip(1)).map(|(from, to)| Secant::between(*from, *to)).collect();
    let (Some(first), Some(last)) = (secants.first(), secants.last()) else { return Vec::new() };
    let second = secants.get(1).unwrap_or(first);
    let last_but_one = secants.iter().rev().nth(1).unwrap_or(last);
    let inner = secants.iter().zip(secants.iter().skip(1)).map(|(below, above)| interior(*below, *above));
    std::iter::once(end(*first, *second))
        .chain(inner)
        .chain(std::iter::once(end(*last, *last_but_one)))
        .collect()
}

/// The straight way between two knots.
#[derive(Clone, Copy)]
struct Secant {
    step: f64,
    slope: f64,
}

impl Secant {
    fn between(from: (f64, f64), to: (f64, f64)) -> Self {
        let step = to.0 - from.0;
        Self { step, slope: (to.1 - from.1) / step }
    }
}

/// Weighted harmonic mean of the two secants; zero where they change sign.
fn interior(below: Secant, above: Secant) -> f64 {
    if below.slope * above.slope <= 0.0 {
        return 0.0;
    }
    let weight_below = 2.0 * above.step + below.step;
    let weight_above = above.step + 2.0 * below.step;
    (weight_below + weight_above) / (weight_below / below.slope + weight_above / above.slope)
}

/// Three-point slope at an end, clipped so that the first piece stays monotone.
fn end(outer: Secant, next: Secant) -> f64 {
    let slope =
        ((2.0 * outer.step + next.step) * outer.slope - outer.step * next.slope) / (outer.step + next.step);
    if slope * outer.slope <= 0.0 {
        0.0
    } else if outer.slope * next.slope < 0.0 && slope.abs() > 3.0 * outer.slope.abs() {
        3.0 * outer.slope
    } else {
        slope
    }
}
