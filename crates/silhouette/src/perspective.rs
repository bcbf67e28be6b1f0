//! From the outline that an eye sees to the surface itself.
//!
//! The eye stands before the axis. A line of sight that touches a turned surface lies in its tangent plane,
//! and so does the tangent of the seen outline; the surface's normal there meets the axis. Both together
//! give the place of touch, exactly and point by point (derived here; of a cylinder of radius `r` at the
//! distance `d` it gives back the known apparent radius `r·d/√(d² − r²)`).

/// An outline as it is seen in the plane of the axis: distance from the axis, height, and how the distance changes
/// with the height.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Seen {
    pub(crate) aside: f64,
    pub(crate) up: f64,
    pub(crate) slope: f64,
}

/// An eye so far from the axis, at a height.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Eye {
    pub(crate) distance: f64,
    pub(crate) up: f64,
}

impl Eye {
    /// Height and radius of the surface where a line of sight touches it.
    pub(crate) fn touched(&self, seen: Seen) -> [f64; 2] {
        let (d, x, above) = (self.distance, seen.aside, seen.up - self.up);
        let share = d * d / (d * d + x * x - x * above * seen.slope);
        let [across, toward] = [share * x, d * (share - 1.0)];
        [self.up + share * above, libm::hypot(across, toward)]
    }

    /// Height of a level end of this radius whose outermost place is seen at a height: its near side where the
    /// eye looks onto it from within the mould's height, else its far side.
    pub(crate) fn end(&self, seen: f64, radius: f64, is_top: bool) -> f64 {
        let within = (seen > self.up) == is_top;
        let depth = if within { self.distance - radius } else { self.distance + radius };
        self.up + (seen - self.up) * depth / self.distance
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Plane geometry: the tangents from a point at the distance `d` to a circle of radius `r` cross the plane
    /// of its middle at `r·d/√(d² − r²)`: 75.212 for 75 at 1000, 76.355 at 400.
    #[test]
    fn a_cylinder_is_seen_too_wide() {
        for (distance, seen) in [(1000.0, 75.212), (400.0, 76.355)] {
            let eye = Eye { distance, up: 0.0 };
            let [_, radius] = eye.touched(Seen { aside: seen, up: 30.0, slope: 0.0 });
            assert!((radius - 75.0).abs() < 1e-3, "{radius}");
        }
    }

    /// Plane geometry: a sphere is seen under the angle whose sine is `r/d`, whatever the direction.
    #[test]
    fn a_sphere_comes_back() {
        let (distance, radius) = (500.0, 80.0_f64);
        let seen_radius = radius * distance / (distance * distance - radius * radius).sqrt();
        let eye = Eye { distance, up: 0.0 };
        for step in 1..9 {
            let (sin, cos) = (f64::from(step) / 10.0 * std::f64::consts::FRAC_PI_2).sin_cos();
            let [up, aside] = [seen_radius * sin, seen_radius * cos];
            let [height, round] = eye.touched(Seen { aside, up, slope: -up / aside });
            assert!((height.hypot(round) - radius).abs() < 1e-9, "{height} {round}");
        }
    }
}
