//! Formulas for staves side by side. All are plane geometry, derived here, unless a source is named.

use std::f64::consts::PI;

use crate::measure::Length;

/// Count of staves on a girth, `C / (w + g)`, before it is rounded to what the weave allows
/// (a learner's weblog: 800 mm, 6 mm staves, 1.5 mm gaps give 106.67, hence 106 or 107).
pub fn count_on(girth: Length, width: Length, gap: Length) -> f64 {
    let pitch = (width + gap).to_mm();
    if pitch > 0.0 { girth.to_mm() / pitch } else { 0.0 }
}

/// Width at which flat staves that lie on a circle of this inner radius touch at their edges:
/// `2 r tan(π/n)`. Two staves or fewer never touch; twice the girth is returned for them.
pub fn touch_width(inner_radius: Length, count: u32) -> Length {
    if count < 3 {
        inner_radius * (4.0 * PI)
    } else {
        inner_radius * (2.0 * libm::tan(PI / f64::from(count)))
    }
}

/// Strain of the outer face of a strip bent so that its middle has this radius: `t / (2R)`
/// (elementary beam theory).
pub fn bend_strain(thickness: Length, middle_radius: Length) -> f64 {
    thickness / (middle_radius.max(Length::mm(1e-3)) * 2.0)
}
