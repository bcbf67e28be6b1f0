//! How the levels of a wall follow from its foot.
//!
//! A convex curve is known by its support: how far its tangent with the outward direction `θ` lies from the
//! middle. Every level has the support `k·h(θ) + o + d·cos 2θ`, where `h` is that of the foot: the foot in another
//! size, at an even distance outward, and farther out at the ends than at the sides. Supports add up, so its girth
//! is `k·P + 2πo`, which `d` does not change, and each place keeps the direction it has at the foot (the support
//! function: H. Minkowski, "Volumen und Oberfläche", Mathematische Annalen 57 (1903), pp. 447–495; cited from
//! memory).

use std::f64::consts::TAU;

use super::outline::{Outline as _, OutlinePoint};
use super::profile::{Profile, Spot};
use super::shape::Shape;
use crate::measure::Length;
use crate::pattern;

/// Places of a foot over which it is summed up.
const PLACES: u32 = 4096;
/// Steps of height over which levels are summed up; even.
const STEPS: u32 = 512;
/// Places of the long axis' side by which the side of a mould drawn along both axes is taken.
const DRAWN: u32 = 65;

/// How the levels of a wall follow from its foot.
#[derive(Clone, Debug, PartialEq)]
pub enum Levels {
    /// At an even distance from it all round.
    Even,
    /// The foot in another size.
    Scaled,
    /// At one distance along the longer axis and another along the shorter one: half the width by the height.
    Widths(Profile),
}

/// What makes a level's shape, beside its girth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Section {
    /// How many times as large as the foot: `k`.
    pub(super) grown: f64,
    /// How much farther out at the ends than all round, in mm: `d`.
    pub(super) swing: f64,
}

impl Section {
    pub(super) const EVEN: Self = Self { grown: 1.0, swing: 0.0 };

    /// A place of the foot as it lies on the level with this girth over 2π, in mm; that of the foot is `foot`.
    pub(super) fn place(&self, at: &OutlinePoint, radius: f64, foot: f64) -> [f64; 2] {
        let ([x, y], [out_x, out_y]) = (at.point, at.outward);
        let [cosine, sine] = doubled(at.outward);
        let out = radius - self.grown * foot + self.swing * cosine;
        let aside = -2.0 * self.swing * sine;
        [self.grown * x + out_x * out - out_y * aside, self.grown * y + out_y * out + out_x * aside]
    }

    /// How many times as long as at the foot a short way along the level is there.
    pub(super) fn stretch(&self, at: &OutlinePoint, radius: f64, foot: f64) -> f64 {
        let out = radius - self.grown * foot - 3.0 * self.swing * doubled(at.outward)[0];
        self.grown + at.curvature * out
    }
}

/// Cosine and sine of twice the angle of a direction.
fn doubled([x, y]: [f64; 2]) -> [f64; 2] {
    [x * x - y * y, 2.0 * x * y]
}

impl Levels {
    /// The levels that a pattern's mould describes.
    pub(super) fn of(pattern: &pattern::Levels, foot: Option<&Shape>) -> Self {
        match (pattern, foot) {
            (pattern::Levels::Scaled, Some(_)) => Self::Scaled,
            (pattern::Levels::Widths(widths), Some(foot)) => {
                let own = (Length::ZERO, Length::mm(foot.across()[1] / 2.0));
                let places = widths.iter().map(|at| (at.height, at.width / 2.0));
                Self::Widths(Profile::through(&std::iter::once(own).chain(places).collect::<Vec<_>>()))
            }
            _ => Self::Even,
        }
    }

    /// The side by girths over 2π of a mould whose side along its length is drawn; `round` is that of its foot.
    pub(super) fn mean(&self, long: Profile, round: Length) -> Profile {
        let Self::Widths(short) = self else { return long };
        let own = short.at(Length::ZERO).radius;
        let mean = |spot: Spot| {
            let out = [spot.radius - round, half_at(short, spot.height) - own];
            (spot.height, round + (out[0] + out[1]) / 2.0)
        };
        Profile::through(&long.spots(DRAWN).map(mean).collect::<Vec<_>>())
    }

    /// The level at a place of the side; the girth of the foot over 2π is `foot`.
    pub(super) fn section(&self, spot: &Spot, foot: f64) -> Section {
        match self {
            Self::Even => Section::EVEN,
            Self::Scaled => Section { grown: spot.radius.to_mm() / foot.max(1e-9), swing: 0.0 },
            Self::Widths(short) => {
                let out = (half_at(short, spot.height) - short.at(Length::ZERO).radius).to_mm();
                Section { grown: 1.0, swing: spot.radius.to_mm() - foot - out }
            }
        }
    }

    /// How fast the level moves out at a place of the foot, and how fast up, on the way up the wall.
    pub(super) fn rise(&self, spot: &Spot, at: &OutlinePoint, foot: f64) -> [f64; 2] {
        let (out, up) = libm::sincos(spot.lean.to_radians());
        match self {
            Self::Even => [out, up],
            Self::Scaled => {
                let support = at.point[0] * at.outward[0] + at.point[1] * at.outward[1];
                unit([out * support / foot.max(1e-9), up])
            }
            Self::Widths(short) => {
                let lean = short.at(short.along_at_height(spot.height)).lean.to_radians();
                let (short_out, short_up) = libm::sincos(lean);
                let cosine = doubled(at.outward)[0];
                // Out along the shorter axis on the same rise; a wall that lies level there keeps finite.
                let aside = up * short_out / short_up.max(1e-3);
                unit([out * (1.0 + cosine) - aside * cosine, up])
            }
        }
    }

    /// Sides whose greatest narrowing is that of the wall: as the girth tells, or along both axes.
    pub(super) fn sides<'a>(&'a self, outline: &'a Shape) -> Vec<Box<dyn Fn(Spot) -> Spot + 'a>> {
        let foot = outline.girth() / TAU;
        match self {
            Self::Even => vec![Box::new(|spot| spot)],
            Self::Scaled => {
                let share = outline.across()[0] / 2.0 / foot.max(1e-9);
                vec![Box::new(move |spot: Spot| leaning(spot, spot.radius * share, share, 0.0))]
            }
            Self::Widths(short) => [1.0, -1.0]
                .map(|sign| -> Box<dyn Fn(Spot) -> Spot> {
                    Box::new(move |spot: Spot| {
                        let swing = self.section(&spot, foot).swing;
                        let lean = short.at(short.along_at_height(spot.height)).lean.to_radians();
                        let aside = -sign * libm::tan(lean);
                        leaning(spot, spot.radius + Length::mm(sign * swing), 1.0 + sign, aside)
                    })
                })
                .into(),
        }
    }

    /// How much less a wall holds than a round one of its girths, in mm³.
    pub(super) fn short_of_round(&self, outline: &Shape, profile: &Profile) -> f64 {
        let foot = outline.girth() / TAU;
        let short = outline.short_of_circle();
        match self {
            // A curve at the distance `d` outside one of the girth `P` encloses `P·d + π·d²` more (Jakob
            // Steiner, 1840): as much more as a circle of that girth gains. So what the foot lacks, all lack.
            Self::Even => short * profile.height().to_mm(),
            Self::Scaled => short / (std::f64::consts::PI * foot * foot).max(1e-9) * profile.volume_mm3(),
            Self::Widths(_) => {
                let turned = turned(outline);
                let lacks = |height: Length| {
                    let swing = self.section(&profile.at(profile.along_at_height(height)), foot).swing;
                    short - swing * turned + 1.5 * std::f64::consts::PI * swing * swing
                };
                let step = profile.height() / f64::from(STEPS);
                let weight = |number: u32| match number {
                    0 | STEPS => 1.0,
                    _ => 2.0 + 2.0 * f64::from(number % 2),
                };
                let sum: f64 =
                    (0..=STEPS).map(|number| weight(number) * lacks(step * f64::from(number))).sum();
                sum * step.to_mm() / 3.0
            }
        }
    }
}

/// The same place on a side of this radius that leans `share` times as much, and so much more.
fn leaning(spot: Spot, radius: Length, share: f64, more: f64) -> Spot {
    let (out, up) = libm::sincos(spot.lean.to_radians());
    let lean = crate::measure::Angle::radians(libm::atan2(out * share + up * more, up));
    Spot { radius, lean, ..spot }
}

/// A direction of this kind, of length 1.
fn unit([out, up]: [f64; 2]) -> [f64; 2] {
    let length = libm::hypot(out, up).max(1e-12);
    [out / length, up / length]
}

/// Half the width at a height.
fn half_at(short: &Profile, height: Length) -> Length {
    short.at(short.along_at_height(height)).radius
}

/// `∮ cos 2θ ds` round a foot, in mm: how much more of it faces the ends than the sides.
fn turned(outline: &Shape) -> f64 {
    let step = outline.girth() / f64::from(PLACES);
    let at = |number: u32| outline.at((f64::from(number) + 0.5) / f64::from(PLACES)).outward;
    (0..PLACES).map(|number| doubled(at(number))[0] * step).sum()
}
