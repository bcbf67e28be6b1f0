//! How one basket stands in another.
//!
//! The inner basket stands with its base on the floor of the outer one, both over one middle and in one
//! direction. On its way down each of its levels passes all levels of the outer one that lie above where it
//! comes to rest; so the room is least where its outside comes nearest to anything above that place. All
//! levels of a wall are curves at an even distance from its foot, which keep its directions. Seen in one
//! direction, the room between two levels is what the feet leave plus how far the one level lies outside its
//! foot less how far the other does; so the least room is the least that the feet leave, and the least of
//! the levels.

use std::f64::consts::TAU;

use crate::basket::Basket;
use crate::fittings::{Handle, SwingHandle};
use crate::form::{Form, Off, Outline as _};
use crate::lashing::Lashing;
use crate::measure::Length;
use crate::parts::vessel::Vessel;
use crate::pattern::HandleJoint;

/// Places of a side that are looked at.
const PLACES: u32 = 200;
/// Places round a foot that are looked at.
const ROUND: u32 = 256;
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
        let feet = between(&inner.body.form, &outer.body.form);
        let outside = outside(inner);
        let mut opening = inside(&outer.body);
        opening.sort_by(|a, b| a.0.to_mm().total_cmp(&b.0.to_mm()));
        let room = |(height, out): &(Length, Length)| {
            let height = *height + lift;
            let above = opening.iter().filter(|(level, _)| *level >= height).map(|(_, open)| *open);
            above.reduce(Length::min).map(|open| (feet + open - *out, height))
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

/// Least distance between the feet of two forms, the inner within the outer; negative where it reaches out.
fn between(inner: &Form, outer: &Form) -> Length {
    let off = Off::of(&|turn| outer.outline.at(turn));
    let places = (0..ROUND).map(|number| inner.outline.at(f64::from(number) / f64::from(ROUND)).point);
    let nearest = places.map(|place| off.distance(place)).fold(f64::NEG_INFINITY, f64::max);
    Length::mm(-nearest)
}

/// How far a level of this girth over 2π lies outside its foot.
fn out(form: &Form, radius: Length) -> Length {
    radius - Length::mm(form.outline.girth() / TAU)
}

/// Height of a rim's top.
fn top(vessel: &Vessel) -> Length {
    let rim = vessel.rim();
    vessel.profile().at(rim.along + rim.height).height
}

/// The outside of a basket: heights above its floor, and how far each level lies outside the foot.
fn outside(basket: &Basket) -> Vec<(Length, Length)> {
    let vessel = &basket.body;
    let (form, rim, uprights) = (&vessel.form, vessel.rim(), vessel.uprights());
    let base = vessel.base();
    let edge = out(form, base.edge_radius());
    let mut places = vec![(-base.thickness, edge), (Length::ZERO, edge)];
    // A row stands off a stave on the outside as far as on the inside.
    let wall = form.profile.spots(PLACES).filter(|spot| spot.along <= rim.along).map(|spot| {
        let stands = uprights.standing.at(spot.along) * 2.0 + uprights.thickness;
        (spot.height, out(form, spot.radius + stands))
    });
    places.extend(wall);
    let lashing = vessel.lashing().map_or(Length::ZERO, Lashing::thickness);
    let hoop = out(form, rim.outer_radius(uprights) + lashing);
    places.extend([form.profile.at(rim.along).height, top(vessel)].map(|height| (height, hoop)));
    places.extend(handle(basket).map(|reach| (top(vessel), out(form, rim.radius() + reach))));
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
fn inside(vessel: &Vessel) -> Vec<(Length, Length)> {
    let (form, rim) = (&vessel.form, vessel.rim());
    let wall = form.profile.spots(PLACES).filter(|spot| spot.along <= rim.along);
    let mut places: Vec<_> = wall.map(|spot| (spot.height, out(form, spot.radius))).collect();
    let lashing = vessel.lashing().map_or(Length::ZERO, Lashing::thickness);
    let hoop = out(form, rim.inner_radius() - lashing);
    places.extend([form.profile.at(rim.along).height, top(vessel)].map(|height| (height, hoop)));
    places
}
