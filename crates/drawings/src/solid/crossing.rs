//! The way of a weaver from one stave to the next, in the plane across the staves.
//!
//! A taut weaver follows the shortest way: it lies on the staves' own section, leaves one stave and
//! meets the next along their common tangent (F. T. Peirce, "The Geometry of Cloth Structure",
//! *Journal of the Textile Institute* 28 (1937), T45, with the true section of the stave in place of
//! his circle). In a gap narrower than itself a weaver is pinched to the width of the gap.

use std::f32::consts::FRAC_PI_2;

use super::detail::Detail;
use super::section::CrossSection;

/// A pinched weaver keeps at least this share of its thickness.
const LEAST: f32 = 0.2;
/// Turns sharper than this, in radians, are rounded by more than one point.
const SHARP: f32 = 0.45;
/// Largest turn between two points of a rounding.
const STEP: f32 = 0.8;

/// A place on the weaver's middle line: how far round from the stave behind, how far out from the
/// staves' inner face, the direction outward across the weaver as an angle from straight out toward
/// the stave ahead, and half its thickness there.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Waypoint {
    pub(super) round: f32,
    pub(super) out: f32,
    pub(super) tilt: f32,
    pub(super) half: f32,
}

/// A corner of a stave's section over which a weaver bends, with the tilts between which it does.
struct Corner {
    at: [f32; 2],
    from: f32,
    to: f32,
}

/// How a weaver's bends over the staves' corners are drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Bends {
    /// Rounded.
    Round,
    /// As one point each.
    Sharp,
    /// Not at all: straight from the middle of a stave to the middle of the next.
    Straight,
}

impl Bends {
    pub(super) const fn of(detail: Detail) -> Self {
        match detail {
            Detail::Full | Detail::Page => Self::Round,
            Detail::Column => Self::Sharp,
            Detail::Thumbnail => Self::Straight,
        }
    }
}

/// Staves side by side with a weaver between them.
pub(super) struct Crossing<'a> {
    pub(super) stave: &'a CrossSection,
    pub(super) pitch: f32,
    pub(super) weaver: f32,
    pub(super) bends: Bends,
}

impl Crossing<'_> {
    /// The weaver's middle at the middle of a stave, outside or inside it.
    pub(super) fn middle(&self, outside: bool) -> Waypoint {
        let half = self.weaver / 2.0;
        let out = if outside { support(self.stave, 0.0, 1.0) + half } else { -half };
        Waypoint { round: 0.0, out, tilt: 0.0, half }
    }

    /// From the middle of a stave (left out) to the middle of the next.
    pub(super) fn way(&self, from_outside: bool, to_outside: bool) -> Vec<Waypoint> {
        let last = Waypoint { round: self.pitch, ..self.middle(to_outside) };
        let mut way = match (from_outside, to_outside) {
            _ if self.bends == Bends::Straight => Vec::new(),
            (true, false) => self.inward(),
            (false, true) => self.outward(),
            _ => vec![Waypoint { round: self.pitch / 2.0, ..last }],
        };
        way.push(last);
        way
    }

    fn inward(&self) -> Vec<Waypoint> {
        let tilt = self.tangent();
        let behind = corners(self.stave, 1.0);
        let ahead = corners(self.stave, -1.0);
        let mut way = Vec::with_capacity(10);
        self.bend(&behind, tilt, |at, tilt, half| {
            way.push(Waypoint { round: at[0], out: at[1], tilt, half });
        });
        let turned = way.len();
        self.bend(&ahead, tilt, |at, tilt, half| {
            way.push(Waypoint { round: self.pitch - at[0], out: -at[1], tilt, half });
        });
        way[turned..].reverse();
        way
    }

    /// The mirror image of the way inward.
    fn outward(&self) -> Vec<Waypoint> {
        let mirrored =
            |place: &Waypoint| Waypoint { round: self.pitch - place.round, tilt: -place.tilt, ..*place };
        self.inward().iter().rev().map(mirrored).collect()
    }

    /// Half the weaver's thickness where it is tilted by so much.
    fn half(&self, tilt: f32) -> f32 {
        let width = support(self.stave, FRAC_PI_2, 1.0) + support(self.stave, FRAC_PI_2, -1.0);
        let room = (self.pitch - width).clamp(self.weaver * LEAST, self.weaver);
        self.weaver / 2.0 + (room - self.weaver) / 2.0 * tilt.sin()
    }

    /// Tilt at which the weaver crosses the gap: where the supports of both staves and the weaver's
    /// thickness just fill the pitch. A right angle when it is jammed.
    fn tangent(&self) -> f32 {
        let excess = |tilt: f32| {
            support(self.stave, tilt, 1.0) + support(self.stave, tilt, -1.0) + 2.0 * self.half(tilt)
                - self.pitch * tilt.sin()
        };
        if excess(FRAC_PI_2) > 0.0 {
            return FRAC_PI_2;
        }
        let (mut low, mut high) = (0.0, FRAC_PI_2);
        for _ in 0..18 {
            let middle = f32::midpoint(low, high);
            if excess(middle) > 0.0 { low = middle } else { high = middle }
        }
        high
    }

    /// Bends the weaver over the corners up to a tilt.
    fn bend(&self, corners: &[Corner], tilt: f32, mut place: impl FnMut([f32; 2], f32, f32)) {
        let mut put = |at: [f32; 2], tilt: f32| {
            let half = self.half(tilt);
            let (sin, cos) = tilt.sin_cos();
            place([at[0] + half * sin, at[1] + half * cos], tilt, half);
        };
        for corner in corners.iter().filter(|corner| corner.from < tilt) {
            let (from, last) = (corner.from.max(0.0), corner.to >= tilt);
            let to = corner.to.min(tilt);
            if corner.at[0].abs() < 1e-6 && !last {
                continue;
            }
            if to - from < SHARP || self.bends == Bends::Sharp {
                put(corner.at, if last { tilt } else { f32::midpoint(from, to) });
                continue;
            }
            let steps = ((to - from) / STEP).ceil() as u32;
            for step in 0..=steps {
                put(corner.at, from + (to - from) * step as f32 / steps as f32);
            }
        }
    }
}

/// How far a section (times `sign`) reaches in the direction tilted so far from straight out.
fn support(section: &CrossSection, tilt: f32, sign: f32) -> f32 {
    let (sin, cos) = tilt.sin_cos();
    section.iter().map(|at| sign * (at[0] * sin + at[1] * cos)).fold(f32::NEG_INFINITY, f32::max)
}

/// The corners of a section (times `sign`) whose outward directions lie between straight out and
/// straight ahead, in that order.
fn corners(section: &CrossSection, sign: f32) -> Vec<Corner> {
    let count = section.len();
    let at = |index: usize| section[index % count].map(|figure| figure * sign);
    // A side's outward direction, as tilt from straight out toward ahead.
    let tilt = |index: usize| {
        let (from, to) = (at(index), at(index + 1));
        (to[1] - from[1]).atan2(from[0] - to[0])
    };
    let mut corners: Vec<Corner> = (0..count)
        .map(|index| Corner { at: at(index), from: tilt(index), to: tilt(index + count - 1) })
        .filter(|corner| corner.to > 1e-4 && corner.from < FRAC_PI_2 - 1e-4 && corner.from <= corner.to)
        .collect();
    corners.sort_by(|a, b| a.from.total_cmp(&b.from));
    corners
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A stave with round edges (a race track), for which Kemp's formula holds.
    fn race_track(width: f32, thick: f32) -> CrossSection {
        let half = (width - thick) / 2.0;
        let round = |middle: f32, from: f32| {
            (0..=32).map(move |step| {
                let (sin, cos) = (from + std::f32::consts::PI * step as f32 / 32.0).sin_cos();
                [middle + thick / 2.0 * cos, thick / 2.0 + thick / 2.0 * sin]
            })
        };
        round(half, -FRAC_PI_2).chain(round(-half, FRAC_PI_2)).collect()
    }

    fn length(from: Waypoint, way: &[Waypoint]) -> f32 {
        let mut last = from;
        let mut length = 0.0;
        for place in way {
            length += (place.round - last.round).hypot(place.out - last.out);
            last = *place;
        }
        length
    }

    /// A. Kemp, "An Extension of Peirce's Cloth Geometry to the Treatment of Non-circular Threads",
    /// *Journal of the Textile Institute* 49 (1958), T44: staves 16 wide and 1.5 thick, weaver 1.5,
    /// gap 6: 22.6084 on a pitch of 22.
    #[test]
    fn the_way_over_race_tracks_is_as_long_as_kemp_says() {
        let stave = race_track(16.0, 1.5);
        let crossing = Crossing { stave: &stave, pitch: 22.0, weaver: 1.5, bends: Bends::Round };
        let inward = length(crossing.middle(true), &crossing.way(true, false));
        let outward = length(crossing.middle(false), &crossing.way(false, true));
        assert!((inward - 22.6084).abs() < 0.02, "{inward}");
        assert!((outward - inward).abs() < 1e-3);
    }

    #[test]
    fn a_weaver_in_too_narrow_a_gap_is_pinched_to_it() {
        let stave = race_track(16.0, 1.5);
        let crossing = Crossing { stave: &stave, pitch: 16.8, weaver: 1.5, bends: Bends::Round };
        let way = crossing.way(true, false);
        let thinnest = way.iter().map(|place| 2.0 * place.half).fold(f32::INFINITY, f32::min);
        assert!((thinnest - 0.8).abs() < 1e-3, "{thinnest}");
        assert!(way.iter().all(|place| place.round.is_finite() && place.tilt <= FRAC_PI_2));
    }

    #[test]
    fn a_weaver_that_stays_outside_runs_straight() {
        let stave = race_track(6.0, 1.5);
        let crossing = Crossing { stave: &stave, pitch: 8.0, weaver: 1.0, bends: Bends::Round };
        assert!(crossing.way(true, true).iter().all(|place| (place.out - 2.0).abs() < 1e-6));
        assert!(crossing.way(false, false).iter().all(|place| (place.out + 0.5).abs() < 1e-6));
    }
}
