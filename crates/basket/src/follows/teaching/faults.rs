//! The usual faults of each step (common practice). A fault is a line of the table, and its message with the
//! cure in the attribute `cure`.

use super::{ALWAYS, When};
use crate::basket::Basket;
use crate::colour::Colour;
use crate::fittings::Handle;
use crate::message::Message;
use crate::pattern::{EarMaterial, EarPlacing, EarWay, Finish, HoopWay, LashingStyle, StepKind, WeaveKind};
use crate::stock::Kind;

/// A step, a fault that is usual in it, and of which baskets.
const FAULTS: &[(StepKind, &str, When)] = &[
    (StepKind::Cut, "fault-cut-uneven", ALWAYS),
    (StepKind::Cut, "fault-cut-one-edge", ALWAYS),
    (StepKind::Cut, "fault-cut-foot", ALWAYS),
    (StepKind::Bend, "fault-bend-splinters", ALWAYS),
    (StepKind::Bend, "fault-bend-springs", ALWAYS),
    (StepKind::Seal, "fault-seal-groove", ALWAYS),
    (StepKind::Base, "fault-base-off-centre", ALWAYS),
    (StepKind::Base, "fault-base-marks", ALWAYS),
    (StepKind::Staves, "fault-staves-count", ALWAYS),
    (StepKind::Staves, "fault-staves-wander", ALWAYS),
    (StepKind::Staves, "fault-staves-upright", |basket| !basket.body.uprights().paths.is_empty()),
    (StepKind::Staves, "fault-staves-crack", ALWAYS),
    (StepKind::Staves, "fault-staves-face", has_oval_staves),
    (StepKind::FirstRows, "fault-first-skipped", ALWAYS),
    (StepKind::FirstRows, "fault-first-loose", ALWAYS),
    (StepKind::FirstRows, "fault-first-cracks", has_cane),
    (StepKind::FirstRows, "fault-first-seam", has_wrong_parity),
    (StepKind::Half, "fault-half-bulges", ALWAYS),
    (StepKind::Half, "fault-half-drawn-in", ALWAYS),
    (StepKind::Half, "fault-half-join", ALWAYS),
    (StepKind::Half, "fault-half-twill", has_diagonal),
    (StepKind::Half, "fault-half-twined", is_twined),
    (StepKind::Half, "fault-half-colour", is_coloured),
    (StepKind::ToEars, "fault-to-ears-height", ALWAYS),
    (StepKind::Rest, "fault-rest-wander", ALWAYS),
    (StepKind::Rest, "fault-rest-slopes", ALWAYS),
    (StepKind::Dry, "fault-dry-early", ALWAYS),
    (StepKind::Dry, "fault-dry-damp", ALWAYS),
    (StepKind::Ears, "fault-ears-opposite", ALWAYS),
    (StepKind::Ears, "fault-ears-neighbour", is_ears_odd),
    (StepKind::Ears, "fault-ears-slips", |basket| goes(basket, EarWay::WovenIn)),
    (StepKind::Ears, "fault-ears-lifts", |basket| goes(basket, EarWay::PushedDown)),
    (StepKind::Ears, "fault-ears-brass", |basket| is_ear(basket, EarMaterial::Brass)),
    (StepKind::Ears, "fault-ears-wood", |basket| is_ear(basket, EarMaterial::Oak)),
    (StepKind::Ears, "fault-ears-bone", |basket| is_ear(basket, EarMaterial::Bone)),
    (StepKind::Rings, "fault-rings-size", ALWAYS),
    (StepKind::Rings, "fault-rings-scarf", ALWAYS),
    (StepKind::Rings, "fault-rings-crack", ALWAYS),
    (StepKind::OffMould, "fault-off-sticks", ALWAYS),
    (StepKind::OffMould, "fault-off-tips", ALWAYS),
    (StepKind::Rim, "fault-rim-slopes", ALWAYS),
    (StepKind::Rim, "fault-rim-gap", is_ringed),
    (StepKind::Rim, "fault-rim-short", is_bent_in_place),
    (StepKind::Rim, "fault-rim-scarf", is_bent_in_place),
    (StepKind::Rim, "fault-rim-cracks", is_bent_in_place),
    (StepKind::Pins, "fault-pins-bit", ALWAYS),
    (StepKind::Pins, "fault-pins-bend", ALWAYS),
    (StepKind::Pins, "fault-pins-splits", ALWAYS),
    (StepKind::Pins, "fault-pins-ears", |basket| basket.ears.is_some()),
    (StepKind::Lashing, "fault-lashing-frays", ALWAYS),
    (StepKind::Lashing, "fault-lashing-slack", ALWAYS),
    (StepKind::Lashing, "fault-lashing-runs-out", ALWAYS),
    (StepKind::Lashing, "fault-lashing-crosses", is_crossed),
    (StepKind::Handle, "fault-handle-level", ALWAYS),
    (StepKind::Handle, "fault-handle-binds", swings),
    (StepKind::Handle, "fault-handle-cracks", ALWAYS),
    (StepKind::Plug, "fault-plug-proud", ALWAYS),
    (StepKind::Plug, "fault-plug-lashing", |basket| basket.body.lashing().is_some()),
    (StepKind::Lid, "fault-lid-rocks", ALWAYS),
    (StepKind::Finish, "fault-finish-runs", is_coated),
    (StepKind::Finish, "fault-finish-oil", |basket| basket.finish == Finish::Oil),
    (StepKind::Finish, "fault-finish-hairs", ALWAYS),
];

/// The usual faults of a step in the making of this basket. What mends one is the attribute `cure` of its
/// message; both may mention the `count` of the staves.
pub fn faults(step: StepKind, basket: &Basket) -> Vec<Message> {
    let here = FAULTS.iter().filter(|(kind, _, when)| *kind == step && when(basket));
    here.map(|(_, id, _)| Message::new(id).with("count", basket.body.uprights().count)).collect()
}

fn has_oval_staves(basket: &Basket) -> bool {
    matches!(basket.body.staves().stock.kind, Kind::FlatOvalReed | Kind::HalfRoundReed)
}

fn has_cane(basket: &Basket) -> bool {
    let first = basket.body.weave.courses.first();
    first.is_some_and(|course| matches!(course.weaver.kind, Kind::ChairCane | Kind::BinderCane))
}

fn weaves(basket: &Basket) -> impl Iterator<Item = WeaveKind> {
    basket.body.weave.courses.iter().filter(|course| course.rows > 0).map(|course| course.weave)
}

/// Whether a miscount of one keeps a course from locking.
fn has_wrong_parity(basket: &Basket) -> bool {
    weaves(basket).any(|weave| matches!(weave, WeaveKind::Plain | WeaveKind::Chase(_)))
}

fn has_diagonal(basket: &Basket) -> bool {
    weaves(basket).any(|weave| matches!(weave, WeaveKind::Twill(_) | WeaveKind::ReversedTwill(_)))
}

fn is_twined(basket: &Basket) -> bool {
    weaves(basket).any(|weave| matches!(weave, WeaveKind::Pairing | WeaveKind::Wale(_)))
}

fn is_coloured(basket: &Basket) -> bool {
    let weavers = basket.body.weave.courses.iter().flat_map(|course| &course.weavers);
    weavers.flat_map(|weaver| &weaver.colours).any(|colour| *colour != Colour::natural())
}

fn is_ears_odd(basket: &Basket) -> bool {
    basket.body.uprights().count % 2 == 1
        && basket.ears.as_ref().is_some_and(|ears| ears.placing != EarPlacing::ByAngle)
}

fn is_ear(basket: &Basket, material: EarMaterial) -> bool {
    basket.ears.as_ref().is_some_and(|ears| ears.material == material)
}

fn goes(basket: &Basket, way: EarWay) -> bool {
    basket.ears.as_ref().is_some_and(|ears| ears.way == way)
}

fn is_bent_in_place(basket: &Basket) -> bool {
    basket.body.rim().hoops == HoopWay::Bent
}

fn is_ringed(basket: &Basket) -> bool {
    !is_bent_in_place(basket)
}

fn swings(basket: &Basket) -> bool {
    matches!(basket.handle, Some(Handle::Swing(_)))
}

fn is_crossed(basket: &Basket) -> bool {
    basket.body.lashing().is_some_and(|lashing| lashing.style == LashingStyle::Crossed)
}

fn is_coated(basket: &Basket) -> bool {
    matches!(basket.finish, Finish::Shellac | Finish::StainAndShellac | Finish::Varnish)
}

#[cfg(test)]
mod tests {
    use super::FAULTS;
    use crate::pattern::{StepKind, Word};

    #[test]
    fn every_step_has_a_fault_that_is_usual_in_any_basket() {
        let drawn = |id: &&str| FAULTS.iter().filter(|(_, other, _)| other == id).count();
        for step in StepKind::ALL {
            let of_step: Vec<&str> =
                FAULTS.iter().filter(|(kind, ..)| kind == step).map(|(_, id, _)| *id).collect();
            assert!(!of_step.is_empty(), "{step:?}: add its usual faults to the table");
            assert!(of_step.iter().all(|id| drawn(id) == 1), "{step:?}: {of_step:?}");
        }
    }
}
