//! A bail that swings about its pivots: where it is stopped, and what room its ends have on the way.
//!
//! The bail is a band, straight across. Its whole length is sampled all round its section. A sample
//! runs on a circle about the line through the pivots, so that as long as it has some room it can turn
//! by the room over its distance from that line without touching anything: in such steps it is let down
//! until no room is left (conservative advancement: B. Mirtich, Impulse-based Dynamic Simulation of
//! Rigid Body Systems, 1996, from memory).

use std::f64::consts::FRAC_PI_2;

use super::plan::{Beside, Plan};
use super::{Bail, Rest, Ring};
use crate::measure::{Angle, Length};

/// Places along half a bail that are sampled, and of how many one is let down before the others.
const PLACES: u32 = 96;
const COARSE: usize = 12;
/// Where it touches, so many places are looked at for one, and again so many for one of these.
const FINE: u32 = 12;
const FINER: u32 = 2;
/// Samples across the thickness and the width, on every side of the section: a rounded hoop comes between
/// two of them no deeper than a hundredth of a millimetre.
const ACROSS: [u32; 2] = [4, 24];
const ROUND: usize = 2 * (ACROSS[0] + ACROSS[1]) as usize;
/// Samples part when their ball has less room than this share of its radius.
const SPLIT: f64 = 0.25;
/// Room at which something touches, in mm.
const TOUCH: f64 = 1e-6;
/// Steps after which what still comes nearer is taken to touch: it is nearer than it can be made.
const MOST: u32 = 400;
/// Positions at which the ends are looked at on their way down.
const POSITIONS: u32 = 16;
/// Samples on half the rounding of an end.
const ROUNDING: u32 = 6;

/// A bail on its pivots.
#[derive(Clone, Copy, Debug)]
pub struct Swing<'a> {
    /// Its middle line.
    pub bail: &'a Bail,
    /// Its width, square to the plane of its curve: seen from the side.
    pub width: Length,
    /// Its thickness, in that plane: seen from the front.
    pub thickness: Length,
    /// How far its ends reach beyond the pivots, rounded.
    pub end: Length,
    /// What it swings over, seen from above.
    pub plan: &'a Plan,
}

/// A bail that has come to rest.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rested {
    /// How far below level it lies; negative: above.
    pub below_level: Angle,
    /// What it rests on; none when it hangs straight down.
    pub on: Option<Rest>,
    /// Where it touches, as a share of the way along it from a pivot to its middle.
    pub share: f64,
    /// How far round the basket from an ear that is.
    pub from_ear: Angle,
}

/// A sample of the upright bail.
#[derive(Clone, Copy)]
struct Sample {
    /// Along the line through the pivots, above it, and on the side to which the bail goes down, in mm.
    place: [f64; 3],
    /// How far from that line.
    reach: f64,
    /// How far it is ahead of the plane of the bail when that goes down.
    ahead: f64,
    /// How far along half the bail, from the pivot to the middle.
    share: f64,
}

impl Sample {
    fn at(place: [f64; 3], share: f64) -> Self {
        let [_, above, before] = place;
        Self { place, reach: libm::hypot(above, before), ahead: libm::atan2(before, above), share }
    }
}

/// What a bail swings over on one side.
struct Side<'a> {
    rings: &'a [Ring],
    beside: Beside<'a>,
}

impl<'a> Side<'a> {
    /// Where a sample is when the bail lies so far below level: its radius, its depth below the pivots, and
    /// how far aside of the line through them; in mm.
    fn place(&self, sample: &Sample, angle: f64) -> [f64; 3] {
        let (sin, cos) = libm::sincos(angle + sample.ahead);
        let aside = sample.reach * cos;
        [self.beside.radius(sample.place[0], aside), sample.reach * sin, aside]
    }

    /// What is nearest to a sample then, and the least that is far away.
    fn nearest(&self, sample: &Sample, angle: f64) -> (f64, Option<&'a Ring>) {
        let place = self.place(sample, angle);
        self.rings.iter().fold((f64::INFINITY, None), |(least, nearest), ring| {
            let room = ring.room(place, least);
            if room < least { (room, Some(ring)) } else { (least, nearest) }
        })
    }

    /// The room of a sample then, where it is less than `least`, else that.
    fn room(&self, sample: &Sample, angle: f64, least: f64) -> f64 {
        let place = self.place(sample, angle);
        self.rings.iter().fold(least, |least, ring| {
            if ring.room(place, least) < least { least.min(ring.distance(place)) } else { least }
        })
    }

    /// Lets samples down that touch nothing at this angle; where one touches before the bail rests as it
    /// does so far, the bail rests there. Samples are let down together as long as the ball about them
    /// has room.
    fn let_down(&self, samples: &[Sample], from: f64, rested: &mut Rested) {
        let (middle, radius) = ball(samples);
        let mut angle = from;
        let mut nearest = None;
        for _ in 0..MOST {
            let sooner = angle < rested.below_level.to_radians();
            if !sooner {
                return;
            }
            let (room, ring) = self.nearest(&middle, angle);
            nearest = ring;
            let room = room - radius;
            if room <= TOUCH.max(radius * SPLIT) {
                break;
            }
            angle += room / (middle.reach + radius);
        }
        let (one, other) = samples.split_at(samples.len() / 2);
        if one.is_empty() {
            let aside = middle.reach * libm::cos(angle + middle.ahead);
            *rested = Rested {
                below_level: Angle::radians(angle),
                on: nearest.map(|ring| ring.part),
                share: middle.share,
                from_ear: self.beside.way_from_ear(middle.place[0], aside),
            };
        } else {
            self.let_down(one, angle, rested);
            self.let_down(other, angle, rested);
        }
    }
}

/// The ball about samples: its middle and its radius.
fn ball(samples: &[Sample]) -> (Sample, f64) {
    let corner = |pick: fn(f64, f64) -> f64, start: f64| {
        samples.iter().fold([start; 3], |[x, y, z], sample| {
            let [along, above, before] = sample.place;
            [pick(x, along), pick(y, above), pick(z, before)]
        })
    };
    let ([x0, y0, z0], [x1, y1, z1]) = (corner(f64::min, f64::INFINITY), corner(f64::max, f64::NEG_INFINITY));
    let middle = [f64::midpoint(x0, x1), f64::midpoint(y0, y1), f64::midpoint(z0, z1)];
    let radius = libm::sqrt((x1 - x0) * (x1 - x0) + (y1 - y0) * (y1 - y0) + (z1 - z0) * (z1 - z0)) / 2.0;
    let share = samples.first().map_or(0.0, |sample| sample.share);
    (Sample::at(middle, share), radius)
}

impl Swing<'_> {
    /// Where it comes to rest when it is let down from upright, on the side on which it is stopped first.
    pub fn down(&self, rings: &[Ring]) -> Rested {
        let straight = Angle::radians(FRAC_PI_2);
        let mut rested = Rested { below_level: straight, on: None, share: 1.0, from_ear: straight };
        let samples = self.samples(0.0, 1.0, PLACES);
        for side in self.sides(rings) {
            for few in samples.chunks(ROUND).step_by(COARSE) {
                side.let_down(few, -FRAC_PI_2, &mut rested);
            }
            side.let_down(&samples, -FRAC_PI_2, &mut rested);
        }
        let mut apart = 1.0 / f64::from(PLACES);
        for _ in 0..FINER {
            let (from, to) = ((rested.share - apart).max(0.0), (rested.share + apart).min(1.0));
            let near = self.samples(from, to, 2 * FINE);
            for side in self.sides(rings) {
                side.let_down(&near, -FRAC_PI_2, &mut rested);
            }
            apart /= f64::from(FINE);
        }
        rested
    }

    /// The least room that its ends beyond the pivots have above the rim, from upright down to where it
    /// comes to rest, on either side; negative where they strike it.
    pub fn end_room(&self, rested: Rested, rings: &[Ring]) -> Length {
        let ends = self.ends();
        let way = rested.below_level.to_radians() + FRAC_PI_2;
        let mut least = f64::INFINITY;
        for side in self.sides(rings) {
            for step in 0..=POSITIONS {
                let angle = way * f64::from(step) / f64::from(POSITIONS) - FRAC_PI_2;
                least = ends.iter().fold(least, |least, end| side.room(end, angle, least));
            }
        }
        Length::mm(if least.is_finite() { least } else { 0.0 })
    }

    /// The sides on which it meets different things.
    fn sides<'r>(&'r self, rings: &'r [Ring]) -> impl Iterator<Item = Side<'r>> + use<'r> {
        self.plan.sides().into_iter().map(move |beside| Side { rings, beside })
    }

    /// Samples between two shares of half the bail above its pivots, for both halves are alike; from the
    /// middle toward the pivot.
    fn samples(&self, from: f64, to: f64, places: u32) -> Vec<Sample> {
        let (half_thick, half_wide) = (self.thickness.to_mm() / 2.0, self.width.to_mm() / 2.0);
        let shares = (0..=places).map(|number| to - (to - from) * f64::from(number) / f64::from(places));
        let outline: Vec<(f64, f64)> = outline().collect();
        let round = |share: f64| {
            let ((along, above), (out_along, out_above)) = (self.bail.point(share), self.bail.outward(share));
            let sample = move |(thick, wide): &(f64, f64)| {
                let out = thick * half_thick;
                let place =
                    [along.to_mm() + out_along * out, above.to_mm() + out_above * out, wide * half_wide];
                Sample::at(place, share)
            };
            outline.iter().map(sample).collect::<Vec<Sample>>()
        };
        shares.flat_map(round).collect()
    }

    /// Samples of one end: the outline of what reaches beyond the pivot, on both faces and between them.
    fn ends(&self) -> Vec<Sample> {
        let (span, half) = (self.bail.half_span().to_mm(), self.width.to_mm() / 2.0);
        let (end, thick) = (self.end.to_mm(), self.thickness.to_mm() / 2.0);
        let rounding = half.min(end);
        let outline = (0..=ROUNDING).flat_map(|step| {
            let (sin, cos) = libm::sincos(FRAC_PI_2 * f64::from(step) / f64::from(ROUNDING));
            [1.0, -1.0].map(|side| (rounding * (1.0 - cos) - end, side * half * sin))
        });
        let straight = [(0.0, half), (0.0, -half)];
        outline
            .chain(straight)
            .flat_map(|(above, before)| {
                [-thick, 0.0, thick].map(|out| Sample::at([span + out, above, before], 0.0))
            })
            .collect()
    }
}

/// Places once round a section, as shares of half its thickness and half its width.
fn outline() -> impl Iterator<Item = (f64, f64)> {
    let [thick, wide] = ACROSS;
    let side = |steps: u32| (0..steps).map(move |step| 2.0 * f64::from(step) / f64::from(steps) - 1.0);
    let (up, back) = (side(thick).map(|at| (at, -1.0)), side(thick).map(|at| (-at, 1.0)));
    up.chain(side(wide).map(|at| (1.0, at))).chain(back).chain(side(wide).map(|at| (-1.0, -at)))
}
