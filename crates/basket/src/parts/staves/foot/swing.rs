//! How the bend at the foot is found: one bend where it fits, else one that swings out and back.
//!
//! Swinging out, the stave may run on level, bends by more than the wall leans, may run straight, and
//! bends back on the same radius until it lies on the wall. The middle of the second arc's circle then
//! stands square off the wall by the radius, and the straight stretch between the arcs is an inner common
//! tangent of both circles. On a straight wall the touch lies lowest where the two circles touch; on
//! a curved one it is searched for from the foot upward. Derived here.

use std::f64::consts::{FRAC_PI_2, PI, TAU};

use super::curve::{Curve, Point};
use crate::base::Base;
use crate::form::Profile;
use crate::measure::Length;

/// Largest figure taken from a pattern, in mm.
const LARGEST: f64 = 1e5;
/// Less than this, in mm or radians, is rounding.
const ROUNDING: f64 = 1e-8;
/// How far, in mm, a curve may cut into what it should clear.
const CLEARANCE: f64 = 1e-7;
/// A turn whose versine is smaller is none.
const NO_TURN: f64 = 1e-9;
/// Places up the wall that are tried for the touch.
const STEPS: u32 = 128;
/// Halvings of a step, until nothing is left of it.
const HALVINGS: u32 = 40;
/// How closely the place on the wall that lies furthest outside a curve is looked at.
const CLOSER: u32 = 32;
/// Where no curve of the least radius lies on the wall, radii that step down by this share are tried, and so
/// many of them.
const TIGHTER: (f64, usize) = (0.75, 20);

/// What a stave has to get round, in mm: the base, the foot of the mould and the wall.
pub(super) struct Foot<'a> {
    profile: &'a Profile,
    /// Radius of the base's edge.
    edge: f64,
    /// Rise from the groove's middle to the mould's foot.
    rise: f64,
    /// Half a stave's thickness.
    half: f64,
    /// Radius of the mould's foot.
    mould: f64,
    /// Places up the wall, evenly from the foot to the top, and the way between two of them.
    wall: Vec<OnWall>,
    step: f64,
}

/// A bend as found.
#[derive(Clone, Copy)]
pub(super) struct Solved {
    pub(super) radius: f64,
    pub(super) is_single: bool,
    pub(super) touch: f64,
    pub(super) curve: Curve,
}

/// A place of a stave's middle that lies on the wall: how far along the mould, where, which way the wall
/// heads, and which way is out.
#[derive(Clone, Copy)]
struct OnWall {
    along: f64,
    point: Point,
    heading: f64,
    out: Point,
}

impl OnWall {
    /// The place of a stave's middle half its thickness outside the mould.
    fn of(profile: &Profile, along: f64, half: f64) -> Self {
        let spot = profile.at(Length::mm(along));
        let heading = (FRAC_PI_2 - spot.lean.to_radians()).clamp(0.0, PI);
        let (sin, cos) = libm::sincos(heading);
        let on_mould =
            Self { along, point: (spot.radius.to_mm(), spot.height.to_mm()), heading, out: (sin, -cos) };
        Self { point: on_mould.outside(half), ..on_mould }
    }

    /// The place so far out from it, square to the wall.
    fn outside(&self, distance: f64) -> Point {
        (self.point.0 + distance * self.out.0, self.point.1 + distance * self.out.1)
    }
}

impl<'a> Foot<'a> {
    pub(super) fn of(profile: &'a Profile, base: &Base, thickness: Length) -> Self {
        let half = sane(thickness / 2.0);
        let step = profile.length().to_mm() / f64::from(STEPS);
        let place = |number| OnWall::of(profile, step * f64::from(number), half);
        Self {
            profile,
            edge: sane(base.edge_radius()),
            rise: sane(base.thickness / 2.0),
            half,
            mould: profile.at(Length::ZERO).radius.to_mm(),
            wall: (0..=STEPS).map(place).collect(),
            step,
        }
    }

    /// Thickness of the stave, as far as it makes sense.
    pub(super) fn thickness(&self) -> Length {
        Length::mm(self.half * 2.0)
    }

    /// The bend of a stave whose stock stands this radius.
    pub(super) fn solve(&self, least: f64) -> Solved {
        // A circle of this radius passes the rim of the base however far it bends.
        let round_the_base = f64::midpoint(self.rise, self.half);
        self.one_bend(least)
            .or_else(|| self.swung(least))
            .or_else(|| self.swung(least.max(round_the_base)))
            .or_else(|| self.tighter(least))
            .unwrap_or_else(|| self.forced(least))
    }

    /// One bend, if it may have this radius: the largest there is room for.
    fn one_bend(&self, least: f64) -> Option<Solved> {
        let wall = self.on_wall(0.0);
        let (sin, cos) = libm::sincos(wall.heading);
        let turn = 1.0 - cos;
        let run = self.mould - self.edge;
        let by_rise = (self.rise - self.half * cos) / turn;
        let by_run = (run * sin + self.half - self.rise * cos) / turn;
        let room = by_rise.min(by_run);
        if turn < NO_TURN || room < least {
            return None;
        }
        // A foot that is nearly level needs no bend to speak of; the base's own size bounds it.
        let radius = room.min(self.mould.max(self.rise).max(self.half).max(least));
        let spare = if radius < room { (room - radius) * turn / sin } else { 0.0 };
        let slack = run + (self.half - self.rise) * sin / turn;
        let (level, up) = (slack.max(0.0) + spare, (-slack).max(0.0) + spare);
        let arc = (1.0 / radius, radius * wall.heading);
        let curve = self.curve([(0.0, level), arc, (0.0, 0.0), (0.0, 0.0), (0.0, up)]);
        Some(Solved { radius, is_single: true, touch: 0.0, curve })
    }

    /// A bend that swings out and back on this radius and touches the wall as low as it can; where
    /// that is at the foot, on the largest radius that does so.
    fn swung(&self, radius: f64) -> Option<Solved> {
        let levels = [Some(0.0), self.level_past_foot(radius)];
        let lowest = |level| self.lowest(radius, level);
        let (touch, curve) =
            levels.into_iter().flatten().filter_map(lowest).min_by(|one, other| one.0.total_cmp(&other.0))?;
        let found = Solved { radius, is_single: false, touch, curve };
        Some(if touch > 0.0 { found } else { self.widened(&found) })
    }

    /// The same touch at the foot on the largest radius.
    fn widened(&self, found: &Solved) -> Solved {
        let foot = self.on_wall(0.0);
        let (mut best, mut beyond) = (*found, self.mould.max(self.rise).max(found.radius));
        for _ in 0..HALVINGS {
            let radius = f64::midpoint(best.radius, beyond);
            match self.swing(radius, 0.0, &foot) {
                Some(curve) => best = Solved { radius, curve, ..best },
                None => beyond = radius,
            }
        }
        best
    }

    /// A smaller radius, the first of those tried, on which the stave comes to lie on the wall. None that is
    /// larger than wall and base together can.
    fn tighter(&self, least: f64) -> Option<Solved> {
        let (share, tries) = TIGHTER;
        let room = self.step * f64::from(STEPS) + self.rise + (self.mould - self.edge).abs();
        let radii = std::iter::successors(Some(least.min(room) * share), |radius| Some(radius * share));
        let mut radii = radii.take(tries).take_while(|radius| *radius > ROUNDING);
        radii.find_map(|radius| self.one_bend(radius).or_else(|| self.swung(radius)))
    }

    /// A curve onto the wall, whatever it cuts: for a base, a groove or a mould that cannot be.
    fn forced(&self, least: f64) -> Solved {
        let away = |wall: &OnWall| libm::hypot(wall.point.0 - self.edge, wall.point.1 + self.rise);
        let (foot, top) = (self.on_wall(0.0), self.on_wall(self.step * f64::from(STEPS)));
        let wall = if away(&foot) > 1e-2 { foot } else { top };
        let radius = least.min(away(&wall) / 4.0).max(ROUNDING);
        let (heading, between) = self.tangent(radius, 0.0, &wall).unwrap_or((wall.heading, 0.0));
        let whole = |angle: f64| if angle > -ROUNDING { angle.max(0.0) } else { angle + TAU };
        let (turn, back) = (whole(heading), whole(whole(heading) - wall.heading));
        let curve = self.swinging(radius, 0.0, (turn, between, back));
        Solved { radius, is_single: false, touch: wall.along, curve }
    }

    /// The lowest touch after so long a level stretch, and the curve to it.
    fn lowest(&self, radius: f64, level: f64) -> Option<(f64, Curve)> {
        let lowest = self.first(radius, level, |_| true)?;
        if self.clears_wall(&lowest) {
            return Some(lowest);
        }
        self.first(radius, level, |swing| self.clears_wall(swing))
    }

    /// The first place up the wall to which a curve leads that will do. Where the circles come to touch
    /// is looked at by itself: further up a curve may have to turn the wrong way.
    fn first(
        &self,
        radius: f64,
        level: f64,
        will_do: impl Fn(&(f64, Curve)) -> bool,
    ) -> Option<(f64, Curve)> {
        let tangent = |wall: &OnWall| self.tangent(radius, level, wall);
        let swing = |wall: &OnWall| Some((wall.along, self.swing(radius, level, wall)?)).filter(&will_do);
        let apart = |along: f64| tangent(&self.on_wall(along)).is_some();
        let swings = |along: f64| swing(&self.on_wall(along));
        let (mut below, mut was_apart) = (0.0, true);
        for wall in &self.wall {
            let is_apart = tangent(wall).is_some();
            let touching = (is_apart && !was_apart).then(|| halved(below, wall.along, apart));
            let found = touching.and_then(swings).or_else(|| {
                swing(wall)?;
                swings(halved(below, wall.along, |along| swings(along).is_some()))
            });
            if found.is_some() {
                return found;
            }
            (below, was_apart) = (wall.along, is_apart);
        }
        None
    }

    /// The curve that swings out and touches the wall here, if there is one that turns the right way and
    /// passes the foot of the mould.
    fn swing(&self, radius: f64, level: f64, wall: &OnWall) -> Option<Curve> {
        let (heading, between) = self.tangent(radius, level, wall)?;
        let back = heading - wall.heading;
        if heading < -ROUNDING || back < -ROUNDING {
            return None;
        }
        let curve = self.swinging(radius, level, (heading.max(0.0), between, back.max(0.0)));
        self.clears_foot(&curve).then_some(curve)
    }

    /// Heading and length of the inner tangent from the circle of the bend to that of the bend back; none
    /// where the circles cut each other.
    fn tangent(&self, radius: f64, level: f64, wall: &OnWall) -> Option<(f64, f64)> {
        let middle = wall.outside(radius);
        let (across, up) = (middle.0 - self.edge - level, middle.1 + self.rise - radius);
        let twice = 2.0 * radius;
        let square = across * across + up * up - twice * twice;
        (square >= 0.0).then(|| {
            let between = square.sqrt();
            let heading = libm::atan2(twice * across + between * up, between * across - twice * up);
            (heading, between)
        })
    }

    fn swinging(&self, radius: f64, level: f64, (turn, between, back): (f64, f64, f64)) -> Curve {
        let bend = |curvature: f64, angle: f64| (curvature, radius * angle);
        let (out, home) = (bend(1.0 / radius, turn), bend(-1.0 / radius, back));
        self.curve([(0.0, level), out, (0.0, between), home, (0.0, 0.0)])
    }

    fn curve(&self, stretches: [(f64, f64); 5]) -> Curve {
        Curve::level_from((self.edge, -self.rise), stretches)
    }

    /// How far the stave must run on level for a bend of this radius to pass the foot of the mould.
    fn level_past_foot(&self, radius: f64) -> Option<f64> {
        let run = (self.mould - self.edge).max(0.0);
        let square = (self.rise - self.half) * (2.0 * radius - self.rise - self.half);
        let level = run - square.max(0.0).sqrt();
        (square >= 0.0 && level > 0.0).then_some(level)
    }

    /// Whether the stave passes outside the foot of the mould or, if that is larger, the rim of the base.
    /// One that leaves the groove at less than half its thickness below cannot.
    fn clears_foot(&self, curve: &Curve) -> bool {
        let foot = (self.mould.max(self.edge), 0.0);
        self.rise <= self.half || curve.outside(foot) <= CLEARANCE - self.half
    }

    /// Whether no part of the wall below the touch lies outside the curve.
    fn clears_wall(&self, (touch, curve): &(f64, Curve)) -> bool {
        let mut worst = (0.0, f64::NEG_INFINITY);
        for wall in self.wall.iter().take_while(|wall| wall.along < *touch) {
            let outside = curve.outside(wall.point);
            if outside > CLEARANCE {
                return false;
            }
            if outside > worst.1 {
                worst = (wall.along, outside);
            }
        }
        let outside = |along: f64| curve.outside(self.on_wall(along).point);
        let (mut low, mut high) = ((worst.0 - self.step).max(0.0), (worst.0 + self.step).min(*touch));
        for _ in 0..CLOSER {
            let (one, other) = (low + (high - low) / 3.0, high - (high - low) / 3.0);
            if outside(one) > outside(other) { high = other } else { low = one }
        }
        outside(f64::midpoint(low, high)) <= CLEARANCE
    }

    fn on_wall(&self, along: f64) -> OnWall {
        OnWall::of(self.profile, along, self.half)
    }
}

/// The lower end of what holds, between a place where it does not and one where it does.
fn halved(mut below: f64, mut above: f64, holds: impl Fn(f64) -> bool) -> f64 {
    for _ in 0..HALVINGS {
        let middle = f64::midpoint(below, above);
        if holds(middle) { above = middle } else { below = middle }
    }
    above
}

fn sane(length: Length) -> f64 {
    let mm = length.to_mm();
    if mm.is_nan() { 0.0 } else { mm.clamp(0.0, LARGEST) }
}
