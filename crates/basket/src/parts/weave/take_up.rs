//! How much longer a weaver is than the way it goes round: it climbs over staves and dips behind them.

use std::f64::consts::FRAC_PI_2;

use crate::measure::Length;

/// Length of a weaver that passes from one face of stiff staves to the other within `way`.
///
/// Peirce's geometry with straight staves (F. T. Peirce, "The Geometry of Cloth Structure",
/// *Journal of the Textile Institute* 28 (1937), T45): with `D` the thickness of stave and weaver
/// together, `sin θ = D / way` and the length is `D (θ + cot θ)`. When `way` is shorter than `D` the
/// weaver is jammed and turns a quarter round.
pub fn crossing(way: Length, thickness: Length) -> Length {
    let sine = thickness / way;
    if sine >= 1.0 {
        thickness * FRAC_PI_2
    } else if sine > 0.0 {
        let angle = sine.asin();
        thickness * (angle + 1.0 / angle.tan())
    } else {
        way
    }
}

/// Length of a weaver over one pitch of flat staves of this width and thickness, `gap` apart, when it
/// changes sides in the gap.
///
/// Race-track section (A. Kemp, "An Extension of Peirce's Cloth Geometry to the Treatment of
/// Non-circular Threads", *Journal of the Textile Institute* 49 (1958), T44): the weaver lies flat over
/// the stave's width less its thickness and crosses in what is left of the pitch.
pub fn over_one_pitch(width: Length, gap: Length, stave: Length, weaver: Length) -> Length {
    let flat = (width - stave).max(Length::ZERO);
    flat + crossing((width + gap - flat).max(Length::ZERO), stave + weaver)
}

/// Share by which the weaver is longer than the pitch; see [`over_one_pitch`]. Zero for an empty pitch.
pub fn take_up(width: Length, gap: Length, stave: Length, weaver: Length) -> f64 {
    let pitch = width + gap;
    if pitch <= Length::ZERO {
        return 0.0;
    }
    (over_one_pitch(width, gap, stave, weaver) / pitch - 1.0).max(0.0)
}
