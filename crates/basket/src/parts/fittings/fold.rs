//! Where a bail comes to rest when it is let down.

use std::f64::consts::FRAC_PI_2;

use serde::Serialize;

use crate::fittings::Bail;
use crate::measure::{Angle, Length};

/// Where a handle that is let down comes to rest.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Fold {
    /// It passes outside the rim and rests on the wall.
    OnWall {
        /// Angle below level.
        #[serde(rename = "below_level_deg")]
        below_level: Angle,
        /// How far its middle hangs below the pivots.
        #[serde(rename = "drop_mm")]
        drop: Length,
    },
    /// It is no wider than the rim and rests on it.
    OnRim {
        /// Angle above level.
        #[serde(rename = "above_level_deg")]
        above_level: Angle,
    },
}

/// Halvings after which an angle no longer changes.
const HALVINGS: u32 = 52;
/// Points on half a bail at which it is held against the rim.
const POINTS: u32 = 48;

/// The rim as something to rest on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ledge {
    /// Radius of its inner face.
    pub inner: Length,
    /// Radius of its outer face.
    pub outer: Length,
    /// How far its top lies below the pivots.
    pub below_pivots: Length,
    /// Its height.
    pub height: Length,
}

impl Fold {
    /// Where a bail of this width and thickness comes to rest on a basket with this rim, whose wall has
    /// the radius `wall` so far below the rim's top. It passes outside only if it is wider than the rim
    /// at the pivots and reaches beyond it at its middle.
    pub fn of(
        bail: &Bail,
        width: Length,
        thickness: Length,
        rim: Ledge,
        wall: &dyn Fn(Length) -> Length,
    ) -> Self {
        let half = thickness / 2.0;
        if (bail.half_span() - half).min(bail.rise() - half) < rim.outer {
            let below = rest_on_rim(bail, width, rim).to_radians();
            return Self::OnRim { above_level: Angle::radians(-below) };
        }
        let basket = |below_pivots: Length| match below_pivots - rim.below_pivots {
            above if above < Length::ZERO => Length::ZERO,
            beside if beside <= rim.height => rim.outer,
            below => wall(below),
        };
        let (below_level, drop) = fold_on_wall(bail.rise(), bail.rise() - half, basket);
        Self::OnWall { below_level, drop }
    }
}

/// Where the middle of a bail that swings down from level first touches the wall: how far below level
/// and how far it then hangs below the pivots. `rise` is the distance from the pivots to the middle,
/// `reach` the same to its inner face; `wall` gives the radius of what stands so far below the pivots.
/// Solves `reach·cos φ = wall(reach·sin φ)`; on an upright wall of radius R that is `acos(R/reach)`.
/// A bail that touches nothing hangs straight down.
pub fn fold_on_wall(rise: Length, reach: Length, wall: impl Fn(Length) -> Length) -> (Angle, Length) {
    let touches = |angle: f64| reach * angle.cos() <= wall(reach * angle.sin());
    let angle = first_touch(0.0, touches);
    (Angle::radians(angle), rise * angle.sin())
}

/// How far below level (negative: above) a bail lies that rests on the rim: its lower edge, half its
/// width below its middle, meets the ledge at the first point that is over it.
pub fn rest_on_rim(bail: &Bail, width: Length, ledge: Ledge) -> Angle {
    let points: Vec<(f64, f64)> = (0..=POINTS)
        .map(|point| bail.point(f64::from(point) / f64::from(POINTS)))
        .map(|(aside, away)| (aside.to_mm(), away.to_mm()))
        .collect();
    let touches = |angle: f64| {
        let (sin, cos) = angle.sin_cos();
        points.iter().any(|(aside, away)| {
            let radius = Length::mm(aside.hypot(away * cos));
            let lower_edge = Length::mm(away * sin) + width / 2.0 * cos;
            radius >= ledge.inner && radius <= ledge.outer && lower_edge >= ledge.below_pivots
        })
    };
    Angle::radians(first_touch(-FRAC_PI_2, touches))
}

/// The first angle from `start` to straight down at which something touches.
fn first_touch(start: f64, touches: impl Fn(f64) -> bool) -> f64 {
    let steps = 180_u32;
    let at = |step: u32| start + (FRAC_PI_2 - start) * f64::from(step) / f64::from(steps);
    let Some(step) = (0..=steps).find(|step| touches(at(*step))) else { return FRAC_PI_2 };
    let (mut free, mut touching) = (at(step.saturating_sub(1)), at(step));
    for _ in 0..HALVINGS {
        let middle = f64::midpoint(free, touching);
        if touches(middle) {
            touching = middle;
        } else {
            free = middle;
        }
    }
    touching
}
