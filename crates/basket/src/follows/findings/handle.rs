//! Does the handle swing, fold and hang level?

use super::case::{Case, Measured};
use super::finding::{Finding, Grade, Place};
use super::write;
use crate::fittings::{BEND_LIMIT, Fold, Handle, Lashed, Ring};
use crate::measure::{Angle, Length};
use crate::message::Value;
use crate::pattern::keys;
use crate::pattern::{BailCurve, HandlePattern, Units};
use crate::piece::Piece;
use crate::stock::Material;

/// Room that a swinging end wants above the rim (common practice: 1/32 in).
const SWING_ROOM: Length = Length::inches(1.0 / 32.0);
/// A lean of the handle that the eye sees (common practice: 2 degrees).
const LEAN: f64 = 2.0;
/// Degrees above level at which a handle that is let down is in the way (common practice).
const STANDS_UP: f64 = 5.0;
/// What is proposed against a hard bend stays this share within its limit.
const ROUNDER: f64 = 0.98;

pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    let Some(handle) = &case.basket.handle else { return Vec::new() };
    let checks = [fouls_rim, cannot_fold, bent_too_hard, uneven, rivet_too_short];
    checks.into_iter().filter_map(|check| check(case, handle)).collect()
}

fn fouls_rim(case: &Case<'_>, handle: &Handle) -> Option<Finding> {
    let room = handle.swing_clearance;
    room.falls_short_of(SWING_ROOM).then(|| {
        let grade = if room < Length::ZERO { Grade::Stop } else { Grade::Care };
        let end = (handle.cut - handle.arc) / 2.0;
        Finding::new(grade, "handle-fouls-rim", Piece::Handle)
            .measured(room, SWING_ROOM)
            .arg("pivot", handle.pivot_height)
            .arg("width", handle.width)
            .maybe(keys::ears::HOLE.path, higher(case, handle, end.max(handle.width / 2.0)))
    })
}

/// A bail that comes to rest on the rim before it is level stands up in the way. Level or lower, it
/// is down.
fn cannot_fold(case: &Case<'_>, handle: &Handle) -> Option<Finding> {
    let Fold::OnRim { above_level } = handle.fold else { return None };
    (above_level.to_degrees() > STANDS_UP).then(|| {
        let limit = Angle::degrees(STANDS_UP);
        Finding::new(Grade::Care, "handle-cannot-fold", Piece::Handle)
            .measured(above_level, limit)
            .arg("pivot", handle.pivot_height)
            .arg("width", handle.width)
            .maybe(keys::ears::HOLE.path, higher(case, handle, handle.width / 2.0))
    })
}

/// A height of the hole at which what reaches so far below the pivots clears the lashed rim.
fn higher(case: &Case<'_>, handle: &Handle, reach: Length) -> Option<String> {
    let (body, ears) = (&case.basket.body, case.basket.ears.as_ref()?);
    let lashed = Lashed {
        form: &body.form,
        uprights: body.uprights(),
        weave: &body.weave,
        rim: body.rim(),
        filler: body.filler(),
        lashing: body.lashing(),
        ears,
    };
    let top = lashed.rings(handle.pivot_height).iter().map(Ring::top).reduce(Length::min)?;
    Some(write::at_least(handle.pivot_height + reach + SWING_ROOM - top, case.units()))
}

/// A bail that is bent harder than its wood takes.
fn bent_too_hard(case: &Case<'_>, handle: &Handle) -> Option<Finding> {
    let pattern = case.pattern.handle.as_ref()?;
    (handle.bend_strain > BEND_LIMIT).then(|| {
        let [strain, limit] = [handle.bend_strain, BEND_LIMIT].map(Value::Percent);
        let finding = Finding::new(Grade::Care, "bail-bent-too-hard", Piece::Handle)
            .measured(strain, limit)
            .arg("thickness", handle.thickness)
            .arg("radius", handle.thickness / (2.0 * handle.bend_strain));
        rounder(handle, pattern, case.units())
            .into_iter()
            .filter(|(changed, ..)| handle.strain_as(changed) <= BEND_LIMIT)
            .fold(finding, |finding, (_, key, value)| finding.remedy(key, value))
    })
}

/// Changes that may let the wood take the bend, each as the pattern it gives, the key and the value: a
/// thinner bail, wider corners, another rise, half a circle.
fn rounder(
    handle: &Handle,
    pattern: &HandlePattern,
    units: Units,
) -> Vec<(HandlePattern, &'static str, String)> {
    let thinner = handle.thickness * (BEND_LIMIT / handle.bend_strain * ROUNDER);
    let wanted = handle.thickness / (2.0 * BEND_LIMIT) / ROUNDER;
    let (span, with) = (handle.half_span, |rise| HandlePattern { rise: Some(rise), ..pattern.clone() });
    let mut changes = vec![(
        HandlePattern { thickness: Some(thinner), ..pattern.clone() },
        keys::handle::THICKNESS.path,
        write::at_most(thinner, units),
    )];
    match handle.curve {
        BailCurve::ThreeCentred if wanted < handle.rise * ROUNDER => {
            let wider = HandlePattern { corner: Some(wanted), ..pattern.clone() };
            changes.push((wider, keys::handle::CORNER.path, write::at_least(wanted, units)));
        }
        BailCurve::HalfEllipse if handle.rise > span => {
            let lower = span * (span / wanted);
            changes.push((with(lower), keys::handle::RISE.path, write::at_most(lower, units)));
        }
        BailCurve::HalfEllipse => {
            let higher = Length::mm(libm::sqrt(wanted.to_mm() * span.to_mm()));
            changes.push((with(higher), keys::handle::RISE.path, write::at_least(higher, units)));
        }
        _ => {}
    }
    if handle.curve != BailCurve::Semicircle && pattern.rise.is_none() && pattern.corner.is_none() {
        let half_circle = HandlePattern { curve: Some(BailCurve::Semicircle), ..pattern.clone() };
        changes.push((half_circle, keys::handle::CURVE.path, write::name("semicircle")));
    }
    changes
}

fn uneven(case: &Case<'_>, handle: &Handle) -> Option<Finding> {
    let limit = Angle::degrees(LEAN);
    let lean = handle.tilt.to_degrees().abs();
    (lean > LEAN).then(|| {
        let least = case.basket.ears.as_ref().and_then(|ears| ears.options.first());
        let placing = least.map(|option| {
            let word = crate::term::Term::term(option.placing);
            write::name(word.trim_start_matches("ear-placing-"))
        });
        Finding::new(Grade::Care, "handle-uneven", Piece::Handle)
            .measured(handle.tilt, limit)
            .maybe(keys::ears::PLACING.path, placing)
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
        Finding::new(grade, "rivet-too-short", place)
            .measured(length, handle.rivet_length)
            .arg("rivet", &handle.rivet)
            .arg("grip", handle.grip)
            .maybe(keys::handle::RIVET.path, longer_rivet(case, handle))
            .maybe(keys::ears::THICKNESS.path, thinner_ear(case, missing))
            .maybe(keys::handle::THICKNESS.path, thinner(handle.thickness, missing, case))
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
