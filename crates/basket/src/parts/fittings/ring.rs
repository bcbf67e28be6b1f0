//! What a handle swings over, as rings round the basket. The radius of a place is that of its level: the girth
//! over 2π.

use super::Ears;
use crate::form::{Form, Level};
use crate::lashing::{Filler, Hull, Lashing, RimSection};
use crate::measure::Length;
use crate::rim::Rim;
use crate::uprights::Uprights;
use crate::weave::Weave;

/// Sides by which a rounded face of the rim is drawn: on a hoop of 3/8 in they lie within 0.01 mm of it.
const STEPS: u32 = 32;
/// Rings into which the wall is cut, each with straight sides.
const SLICES: u32 = 24;
/// A ring is looked at closely by what comes nearer than this, in mm.
const NEAR: f64 = 4.0;

/// What a handle comes to rest on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Rest {
    /// The rim.
    Rim,
    /// The wall.
    Wall,
}

/// Which stretch of its round a ring takes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Stretch {
    /// All of it.
    All,
    /// From ear to ear: it begins so far beside an ear's middle.
    BetweenEars(Length),
    /// So far to each side of an ear's middle.
    AtEars(Length),
}

/// A ring round the basket with a convex section.
#[derive(Clone, Debug, PartialEq)]
pub struct Ring {
    /// What it is a ring of.
    pub part: Rest,
    /// Where it is.
    pub stretch: Stretch,
    /// Least and largest radius, least and largest depth below the pivots, in mm.
    extent: [f64; 4],
    sides: Vec<Side>,
}

/// A side of a ring's section; all in mm.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Side {
    /// Square to it, away from the section: by radius, by depth.
    out: [f64; 2],
    /// How far out it lies in that direction.
    off: f64,
    /// From where to where it reaches along itself, a quarter turn on from `out`.
    ends: [f64; 2],
}

impl Side {
    /// The side between two corners that follow each other; none where they are one.
    fn of([from, to]: [(Length, Length); 2]) -> Option<Self> {
        let [from, to] = [from, to].map(|(radius, below)| [radius.to_mm(), below.to_mm()]);
        let along = [to[0] - from[0], to[1] - from[1]];
        let length = libm::hypot(along[0], along[1]);
        let along = along.map(|way| way / length);
        let out = [along[1], -along[0]];
        let ends = [from, to].map(|end| dot(along, end));
        (length > 0.0).then(|| Self { out, off: dot(out, from), ends })
    }

    /// How far outside its line a place lies.
    fn outside(&self, place: [f64; 2]) -> f64 {
        dot(self.out, place) - self.off
    }

    /// How far from it a place lies.
    fn distance(&self, place: [f64; 2]) -> f64 {
        let along = dot([-self.out[1], self.out[0]], place);
        libm::hypot(self.outside(place), along - along.clamp(self.ends[0], self.ends[1].max(self.ends[0])))
    }
}

fn dot([ax, ay]: [f64; 2], [bx, by]: [f64; 2]) -> f64 {
    ax * bx + ay * by
}

impl Ring {
    /// The ring whose section is the hull of these places, given as (radius, depth below the pivots).
    pub fn of(part: Rest, stretch: Stretch, section: impl IntoIterator<Item = (Length, Length)>) -> Self {
        let hull = Hull::of(section);
        let mut extent = [f64::INFINITY, f64::NEG_INFINITY, f64::INFINITY, f64::NEG_INFINITY];
        for (radius, below) in hull.corners() {
            let (radius, below) = (radius.to_mm(), below.to_mm());
            let [least, most, high, low] = extent;
            extent = [least.min(radius), most.max(radius), high.min(below), low.max(below)];
        }
        Self { part, stretch, extent, sides: hull.sides().filter_map(Side::of).collect() }
    }

    /// Radius of its outermost place.
    pub fn outer(&self) -> Length {
        Length::mm(self.extent[1])
    }

    /// How far below the pivots its highest place lies.
    pub fn top(&self) -> Length {
        Length::mm(self.extent[2])
    }

    /// A place on this radius, so deep below the pivots and so far aside of the line through them lies at
    /// least this far outside it; negative: inside, by so much. Nothing finer is asked for than whether
    /// it is less than `least`. All in mm.
    pub(super) fn room(&self, [radius, below, aside]: [f64; 3], least: f64) -> f64 {
        let beyond = self.beyond(aside);
        let [nearest, farthest, high, low] = self.extent;
        let off = (nearest - radius).max(radius - farthest).max(high - below).max(below - low);
        if beyond.max(off) >= least || off > NEAR {
            return beyond.max(off);
        }
        self.sides.iter().map(|side| side.outside([radius, below])).fold(beyond, f64::max)
    }

    /// How far outside it such a place lies: the same, to the mark.
    pub(super) fn distance(&self, [radius, below, aside]: [f64; 3]) -> f64 {
        let (beyond, place) = (self.beyond(aside), [radius, below]);
        let inside = self.sides.iter().map(|side| side.outside(place)).fold(f64::NEG_INFINITY, f64::max);
        if inside <= 0.0 {
            return inside.max(beyond);
        }
        let off = self.sides.iter().map(|side| side.distance(place)).fold(f64::INFINITY, f64::min);
        libm::hypot(off, beyond.max(0.0))
    }

    /// How far beyond the ends of its stretch a place so far aside lies.
    fn beyond(&self, aside: f64) -> f64 {
        match self.stretch {
            Stretch::All => f64::NEG_INFINITY,
            Stretch::BetweenEars(from) => from.to_mm() - aside.abs(),
            Stretch::AtEars(to) => aside.abs() - to.to_mm(),
        }
    }
}

/// A basket that is ready for its handle: woven, lashed, its ears set.
#[derive(Clone, Copy, Debug)]
pub struct Lashed<'a> {
    /// The shape of its wall.
    pub form: &'a Form,
    /// What stands round the wall.
    pub uprights: &'a Uprights,
    /// The weaving.
    pub weave: &'a Weave,
    /// The hoops.
    pub rim: &'a Rim,
    /// The filler, if there is one.
    pub filler: Option<&'a Filler>,
    /// The lashing, if there is one.
    pub lashing: Option<&'a Lashing>,
    /// The ears.
    pub ears: &'a Ears,
}

impl Lashed<'_> {
    /// The level so far outside the staves' inner faces, in the middle of the rim.
    pub(super) fn level(&self, outward: Length) -> Level<'_> {
        let middle = self.form.profile.at(self.rim.along + self.rim.height / 2.0);
        self.form.level(middle.height, self.rim.radius() + outward)
    }

    /// How far a level of this radius reaches toward an ear.
    pub(super) fn reach(&self, radius: Length) -> Length {
        self.level(radius - self.rim.radius()).reach(self.ears.axis)
    }

    /// Rim and wall as a handle on pivots so far above the rim meets them. Filler and lashing end beside
    /// the ears, where the hoops are bare. The wall is as thick as its staves with a weaver on both
    /// sides.
    pub fn rings(&self, pivots: Length) -> Vec<Ring> {
        let section = RimSection::of(self.rim, self.filler, STEPS);
        let lashed = section.hull().grown(self.lashing.map_or(Length::ZERO, Lashing::thickness));
        let bare = section.outer.iter().chain(&section.inner).chain(&section.stave);
        let place = |(out, up): (Length, Length)| self.place(self.rim.along + up, out, pivots);
        let beside = self.ears.width / 2.0;
        let rim = [
            Ring::of(Rest::Rim, Stretch::BetweenEars(beside), lashed.corners().iter().copied().map(place)),
            Ring::of(Rest::Rim, Stretch::AtEars(beside), bare.copied().map(place)),
        ];
        rim.into_iter().chain((0..SLICES).map(|number| self.slice(number, pivots))).collect()
    }

    /// A ring of the wall below the rim.
    fn slice(&self, number: u32, pivots: Length) -> Ring {
        let along = |number: u32| self.rim.along * (f64::from(number) / f64::from(SLICES));
        let [from, to] = [along(number), along(number + 1)];
        let weaver = self.weaver((from + to) / 2.0);
        let faces = [-weaver, self.uprights.thickness + weaver];
        let corners = [from, to].into_iter().flat_map(|along| faces.map(|out| (along, out)));
        Ring::of(Rest::Wall, Stretch::All, corners.map(|(along, out)| self.place(along, out, pivots)))
    }

    /// Thickness of the thickest weaver this far along the wall.
    fn weaver(&self, along: Length) -> Length {
        let course = self.weave.courses.iter().find(|course| (course.from..course.to).contains(&along));
        let weavers = course.into_iter().flat_map(|course| &course.weavers);
        weavers.map(|weaver| weaver.material.thickness).fold(Length::ZERO, Length::max)
    }

    /// The place so far along the wall and so far out from the staves' inner face, as (radius, depth below
    /// pivots that stand so high above the rim).
    fn place(&self, along: Length, out: Length, pivots: Length) -> (Length, Length) {
        let (profile, rim) = (&self.form.profile, self.rim);
        let standing = self.uprights.standing.at(along);
        let spot = profile.at(along);
        let (sin, cos) = libm::sincos(spot.lean.to_radians());
        let top = profile.at(rim.along + rim.height).height + pivots;
        (spot.radius + standing + out * cos, top - spot.height + out * sin)
    }
}
