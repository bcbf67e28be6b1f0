//! Does the handle swing, fold and hang level?

use super::case::Case;
use super::{Finding, Grade, Part, Place, write};
use crate::fittings::{Fold, Handle};
use crate::measure::{Angle, Length};
use crate::stock::Material;

/// Room that a swinging end wants above the rim (common practice: 1/32 in).
const SWING_ROOM: Length = Length::inches(1.0 / 32.0);
/// A lean of the handle that the eye sees (common practice: 2 degrees).
const LEAN: f64 = 2.0;

pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    let Some(handle) = &case.basket.handle else { return Vec::new() };
    [fouls_rim(case, handle), cannot_fold(case, handle), uneven(case, handle), rivet_too_short(case, handle)]
        .into_iter()
        .flatten()
        .collect()
}

fn fouls_rim(case: &Case<'_>, handle: &Handle) -> Option<Finding> {
    let room = handle.swing_clearance;
    (room < SWING_ROOM).then(|| {
        let grade = if room < Length::ZERO { Grade::Stop } else { Grade::Care };
        let higher = handle.pivot_height + (SWING_ROOM - room);
        Finding::new(grade, "handle-fouls-rim", Part::Handle, room, SWING_ROOM)
            .arg("pivot", handle.pivot_height)
            .arg("width", handle.width)
            .remedy("ears.hole", write::at_least(higher, case.units()))
    })
}

/// A bail no wider than the rim comes to rest on it and stands up in the way.
fn cannot_fold(case: &Case<'_>, handle: &Handle) -> Option<Finding> {
    let Fold::OnRim { above_level } = handle.fold else { return None };
    let rise = case.basket.rim.radius + case.basket.rim.stack + Length::inches(0.5);
    Some(
        Finding::new(Grade::Care, "handle-cannot-fold", Part::Handle, above_level, Angle::degrees(0.0))
            .arg("rise", handle.rise)
            .remedy("handle.rise", write::at_least(rise, case.units())),
    )
}

fn uneven(case: &Case<'_>, handle: &Handle) -> Option<Finding> {
    let limit = Angle::degrees(LEAN);
    let lean = handle.tilt.to_degrees().abs();
    (lean > LEAN).then(|| {
        let least = case.basket.ears.as_ref().and_then(|ears| ears.options.first());
        let placing = least.map(|option| {
            let word = crate::terms::Term::term(option.placing);
            write::name(word.trim_start_matches("ear-placing-"))
        });
        Finding::new(Grade::Care, "handle-uneven", Part::Handle, handle.tilt, limit)
            .maybe("ears.placing", placing)
    })
}

fn rivet_too_short(case: &Case<'_>, handle: &Handle) -> Option<Finding> {
    let length = handle.rivet.length?;
    (length < handle.rivet_length).then(|| {
        let grade = if length <= handle.grip { Grade::Stop } else { Grade::Care };
        let place = Place::from(Part::Handle);
        Finding::new(grade, "rivet-too-short", place, length, handle.rivet_length)
            .arg("rivet", handle.rivet.name.as_str())
            .arg("grip", handle.grip)
            .maybe("handle.rivet", longer_rivet(case, handle))
    })
}

/// The rivet nearest in diameter that is long enough for its own head.
fn longer_rivet(case: &Case<'_>, handle: &Handle) -> Option<String> {
    let reaches =
        |rivet: &Material| rivet.length.is_some_and(|length| length >= handle.grip + rivet.width * 1.5);
    case.stock_like(&handle.rivet, reaches)
}
