//! How one basket stands in another.
//!
//! The inner basket stands with its base on the floor of the outer one, both over one middle and in one
//! direction. On its way down each of its levels passes all levels of the outer one that lie above where it
//! comes to rest; so the room is least where its outside comes nearest to anything above that place. One
//! convex curve lies within another by the least by which that one's tangents lie farther out, direction by
//! direction (the support function, see `form/levels.rs`).

use std::f64::consts::TAU;

use crate::basket::Basket;
use crate::fittings::{Handle, SwingHandle};
use crate::form::{Form, Level, Outline as _};
use crate::lashing::Lashing;
use crate::measure::Length;
use crate::parts::vessel::Vessel;
use crate::pattern::HandleJoint;

/// Places of a side that are looked at.
const PLACES: u32 = 200;
/// Directions in which levels are compared, and places of a foot that are looked at for each.
const ROUND: u32 = 128;
const FINE: u32 = 4096;
/// How far the head of a rivet stands out, in its own diameters (common practice).
const HEAD: f64 = 0.5;

/// How one basket stands in another.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Nest {
    /// Least room between both, all the way down; negative where the inner one does not go in.
    pub room: Length,
    /// Where that is: height above the outer basket's floor, when the inner one has come to rest.
    pub at: Length,
    /// How far the inner rim lies below the outer one; negative where it stands above.
    pub below: Length,
}

impl Nest {
    /// One basket in another, with their handles upright.
    pub fn of(inner: &Basket, outer: &Basket) -> Self {
        let lift = inner.body.base().thickness;
        let [inner_foot, outer_foot] = [&inner.body.form, &outer.body.form].map(tangents);
        let outside: Vec<Reach> = outside(inner).into_iter().map(|level| level.reach(&inner_foot)).collect();
        let opening: Vec<Reach> =
            inside(&outer.body).into_iter().map(|level| level.reach(&outer_foot)).collect();
        let room = |level: &Reach| {
            let height = level.height + lift;
            let above = opening.iter().filter(|open| open.height >= height);
            let rooms = above.map(|open| open.room_for(level));
            rooms.reduce(f64::min).map(|room| (Length::mm(room), height))
        };
        let least = outside.iter().filter_map(room).min_by(|a, b| a.0.to_mm().total_cmp(&b.0.to_mm()));
        // Nothing of the inner basket is met where all of it stands above the outer one.
        let (room, at) = least.unwrap_or((Length::ZERO, Length::ZERO));
        Self { room, at, below: top(&outer.body) - (top(&inner.body) + lift) }
    }

    /// Whether there is as much room as is wanted.
    pub fn fits(&self, wanted: Length) -> bool {
        self.room + Length::mm(1e-6) >= wanted
    }
}

/// A level, by its height above the floor.
#[derive(Clone, Copy)]
struct At<'a> {
    height: Length,
    level: Level<'a>,
}

/// How far a level's tangents lie from the middle, in mm, by the directions of `tangents`.
struct Reach {
    height: Length,
    toward: Vec<f64>,
}

impl At<'_> {
    fn reach(&self, foot: &[f64]) -> Reach {
        let toward = (0..).zip(foot).map(|(number, foot)| self.level.toward(*foot, angle(number))).collect();
        Reach { height: self.height, toward }
    }
}

impl Reach {
    /// Least room for another level within this one.
    fn room_for(&self, inner: &Self) -> f64 {
        let rooms = self.toward.iter().zip(&inner.toward).map(|(open, out)| open - out);
        rooms.fold(f64::INFINITY, f64::min)
    }
}

/// One of the directions.
fn angle(number: u32) -> f64 {
    f64::from(number) / f64::from(ROUND) * TAU
}

/// How far the tangents of a foot lie from its middle, in mm.
fn tangents(form: &Form) -> Vec<f64> {
    let places = |number: u32| form.outline.at(f64::from(number) / f64::from(FINE)).point;
    let points: Vec<[f64; 2]> = (0..FINE).map(places).collect();
    let toward = |number: u32| {
        let (sin, cos) = libm::sincos(angle(number));
        points.iter().map(|[x, y]| x * cos + y * sin).fold(f64::NEG_INFINITY, f64::max)
    };
    (0..ROUND).map(toward).collect()
}

/// Height of a rim's top.
fn top(vessel: &Vessel) -> Length {
    let rim = vessel.rim();
    vessel.profile().at(rim.along + rim.height).height
}

/// The outside of a basket.
fn outside(basket: &Basket) -> Vec<At<'_>> {
    let vessel = &basket.body;
    let (form, rim, uprights) = (&vessel.form, vessel.rim(), vessel.uprights());
    let base = vessel.base();
    let at = |height: Length, radius: Length| At { height, level: form.level(height, radius) };
    let mut places = [-base.thickness, Length::ZERO].map(|height| at(height, base.edge_radius())).to_vec();
    // A row stands off a stave on the outside as far as on the inside.
    let wall = form.profile.spots(PLACES).filter(|spot| spot.along <= rim.along).map(|spot| {
        let stands = uprights.standing.at(spot.along) * 2.0 + uprights.thickness;
        at(spot.height, spot.radius + stands)
    });
    places.extend(wall);
    let lashing = vessel.lashing().map_or(Length::ZERO, Lashing::thickness);
    let hoop = rim.outer_radius(uprights) + lashing;
    places.extend(rim_at(vessel, hoop));
    let hung = |reach| At { height: top(vessel), level: vessel.rim_level(rim.radius() + reach) };
    places.extend(handle(basket).map(hung));
    places
}

/// How far what hangs on the ears stands out from the staves' inner faces.
fn handle(basket: &Basket) -> Option<Length> {
    let ear = basket.ears.as_ref()?.thickness;
    let stave = basket.body.uprights().thickness / 2.0;
    let head = basket.rivets().map_or(Length::ZERO, |rivets| rivets.stock.width * HEAD);
    match basket.handle.as_ref()? {
        Handle::Swing(swing) => Some(stave + head + beyond(swing, ear)),
        Handle::Knobs(knobs) => Some(stave + head + knobs.rivets.grip - ear / 2.0),
        Handle::Fixed(_) => None,
    }
}

/// How far a bail stands out from the middle of its ear.
fn beyond(swing: &SwingHandle, ear: Length) -> Length {
    match swing.joint {
        HandleJoint::Outside => swing.rivets.grip - ear / 2.0,
        HandleJoint::Slot | HandleJoint::Between => swing.rivets.grip / 2.0,
    }
}

/// The inside of a vessel: weavers touch the form, and the inner hoop with its lashing stands inside the
/// staves.
fn inside(vessel: &Vessel) -> Vec<At<'_>> {
    let (form, rim) = (&vessel.form, vessel.rim());
    let at = |height: Length, radius: Length| At { height, level: form.level(height, radius) };
    let wall = form.profile.spots(PLACES).filter(|spot| spot.along <= rim.along);
    let mut places: Vec<_> = wall.map(|spot| at(spot.height, spot.radius)).collect();
    let lashing = vessel.lashing().map_or(Length::ZERO, Lashing::thickness);
    let hoop = rim.inner_radius() - lashing;
    places.extend(rim_at(vessel, hoop));
    places
}

/// Lower and upper edge of what stands upright in the rim.
fn rim_at(vessel: &Vessel, radius: Length) -> [At<'_>; 2] {
    let low = vessel.profile().at(vessel.rim().along).height;
    [low, top(vessel)].map(|height| At { height, level: vessel.rim_level(radius) })
}
