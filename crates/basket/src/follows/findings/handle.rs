//! Does the handle swing, fold and hang level?

use super::case::{Case, Measured};
use super::{Finding, Grade, Place, write};
use crate::fittings::{Fold, Handle};
use crate::measure::{Angle, Length};
use crate::piece::Piece;
use crate::stock::Material;

/// Room that a swinging end wants above the rim (common practice: 1/32 in).
const SWING_ROOM: Length = Length::inches(1.0 / 32.0);
/// A lean of the handle that the eye sees (common practice: 2 degrees).
const LEAN: f64 = 2.0;
/// Degrees above level at which a handle that is let down is in the way (common practice).
const STANDS_UP: f64 = 5.0;

pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    let Some(handle) = &case.basket.handle else { return Vec::new() };
    [fouls_rim(case, handle), cannot_fold(case, handle), uneven(case, handle), rivet_too_short(case, handle)]
        .into_iter()
        .flatten()
        .collect()
}

fn fouls_rim(case: &Case<'_>, handle: &Handle) -> Option<Finding> {
    let room = handle.swing_clearance;
    room.falls_short_of(SWING_ROOM).then(|| {
        let grade = if room < Length::ZERO { Grade::Stop } else { Grade::Care };
        let higher = handle.pivot_height + (SWING_ROOM - room);
        Finding::new(grade, "handle-fouls-rim", Piece::Handle, room, SWING_ROOM)
            .arg("pivot", handle.pivot_height)
            .arg("width", handle.width)
            .remedy("ears.hole", write::at_least(higher, case.units()))
    })
}

/// A bail that comes to rest on the rim before it is level stands up in the way. Level or lower, it
/// is down.
fn cannot_fold(case: &Case<'_>, handle: &Handle) -> Option<Finding> {
    let Fold::OnRim { above_level } = handle.fold else { return None };
    (above_level.to_degrees() > STANDS_UP).then(|| {
        let higher = handle.width / 2.0 + SWING_ROOM;
        let limit = Angle::degrees(STANDS_UP);
        Finding::new(Grade::Care, "handle-cannot-fold", Piece::Handle, above_level, limit)
            .arg("pivot", handle.pivot_height)
            .arg("width", handle.width)
            .remedy("ears.hole", write::at_least(higher, case.units()))
    })
}

fn uneven(case: &Case<'_>, handle: &Handle) -> Option<Finding> {
    let limit = Angle::degrees(LEAN);
    let lean = handle.tilt.to_degrees().abs();
    (lean > LEAN).then(|| {
        let least = case.basket.ears.as_ref().and_then(|ears| ears.options.first());
        let placing = least.map(|option| {
            let word = crate::message::Term::term(option.placing);
            write::name(word.trim_start_matches("ear-placing-"))
        });
        Finding::new(Grade::Care, "handle-uneven", Piece::Handle, handle.tilt, limit)
            .maybe("ears.placing", placing)
    })
}

/// A head wants 1.5 diameters (a how-to article on rivets); with one diameter it is small but holds.
fn rivet_too_short(case: &Case<'_>, handle: &Handle) -> Option<Finding> {
    let length = handle.rivet.length?;
    length.falls_short_of(handle.rivet_length).then(|| {
        let grade = if length <= handle.grip {
            Grade::Stop
        } else if length < handle.grip + handle.rivet.width {
            Grade::Care
        } else {
            Grade::Note
        };
        let place = Place::from(Piece::Handle);
        let missing = handle.rivet_length - length;
        Finding::new(grade, "rivet-too-short", place, length, handle.rivet_length)
            .arg("rivet", &handle.rivet)
            .arg("grip", handle.grip)
            .maybe("handle.rivet", longer_rivet(case, handle))
            .maybe("ears.thickness", thinner_ear(case, missing))
            .maybe("handle.thickness", thinner(handle.thickness, missing, case))
    })
}

fn thinner_ear(case: &Case<'_>, by: Length) -> Option<String> {
    let ears = case.basket.ears.as_ref()?;
    thinner(ears.thickness, by, case)
}

/// A thickness less this, as long as two thirds of it are left.
fn thinner(thickness: Length, by: Length, case: &Case<'_>) -> Option<String> {
    let left = thickness - by;
    (left > thickness * (2.0 / 3.0)).then(|| write::workable(left, case.units()))
}

/// The rivet nearest in diameter that is long enough for its own head.
fn longer_rivet(case: &Case<'_>, handle: &Handle) -> Option<String> {
    let reaches =
        |rivet: &Material| rivet.length.is_some_and(|length| length >= handle.grip + rivet.width * 1.5);
    case.stock_like(&handle.rivet, reaches)
}
