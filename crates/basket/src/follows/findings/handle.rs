//! Does the handle swing, fold and hang level, and is its wood strong enough where it is worked?

use super::case::{Case, Measured};
use super::finding::{Finding, Grade};
use super::write;
use crate::fittings::{BEND_LIMIT, Bow, FixedHandle, Fold, Handle, Knobs, Lashed, Ring, SwingHandle};
use crate::measure::{Angle, Length};
use crate::message::Value;
use crate::pattern::keys;
use crate::pattern::{BailCurve, HandleJoint, HandleMade, HandlePattern, Units, Word};
use crate::piece::Piece;

/// Room that a swinging end wants above the rim (common practice: 1/32 in).
const SWING_ROOM: Length = Length::inches(1.0 / 32.0);
/// A lean of the handle that the eye sees (common practice: 2 degrees).
const LEAN: f64 = 2.0;
/// Degrees above level at which a handle that is let down is in the way (common practice).
const STANDS_UP: f64 = 5.0;
/// Most of an ear that shows below the end of a handle (common practice: 1/4 in).
const MOST_SHOWN: Length = Length::inches(0.25);
/// Wood that a handle wants beyond its pivot, in diameters of the hole (common practice: one and a half).
const BEYOND_HOLE: f64 = 1.5;
/// Thinnest cheek beside an ear that does not split (common practice: 3/64 in).
const THINNEST_CHEEK: Length = Length::inches(3.0 / 64.0);
/// How far above the foot the ends of a fixed handle have to stop, where the wall turns (common practice).
const ABOVE_FOOT: Length = Length::inches(0.25);
/// What is proposed against a hard bend stays this share within its limit.
const ROUNDER: f64 = 0.98;

pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    let Some(handle) = &case.basket.handle else { return Vec::new() };
    let found = match handle {
        Handle::Swing(swing) => {
            let checks = [fouls_rim, cannot_fold, ear_shows, end_short, cheeks_thin];
            checks.into_iter().filter_map(|check| check(case, swing)).collect()
        }
        Handle::Fixed(fixed) => ends_long(case, fixed).into_iter().collect::<Vec<Finding>>(),
        Handle::Knobs(knobs) => knob_fouls_rim(case, knobs).into_iter().collect(),
    };
    let bow = handle.bow().and_then(|bow| bent_too_hard(case, handle, bow));
    found.into_iter().chain(bow).chain(uneven(case, handle)).collect()
}

fn fouls_rim(case: &Case<'_>, handle: &SwingHandle) -> Option<Finding> {
    let room = handle.swing_clearance;
    room.falls_short_of(SWING_ROOM).then(|| {
        let grade = if room < Length::ZERO { Grade::Stop } else { Grade::Care };
        let end = handle.bow.beyond();
        Finding::new(grade, "handle-fouls-rim", Piece::Handle)
            .measured(room, SWING_ROOM)
            .arg("pivot", handle.pivot_height)
            .arg("width", handle.bow.width)
            .maybe(keys::ears::HOLE.path, higher(case, handle.pivot_height, end.max(handle.bow.width / 2.0)))
    })
}

/// A bail that comes to rest on the rim before it is level stands up in the way. Level or lower, it
/// is down.
fn cannot_fold(case: &Case<'_>, handle: &SwingHandle) -> Option<Finding> {
    let Fold::OnRim { above_level } = handle.fold else { return None };
    (above_level.to_degrees() > STANDS_UP).then(|| {
        let limit = Angle::degrees(STANDS_UP);
        Finding::new(Grade::Care, "handle-cannot-fold", Piece::Handle)
            .measured(above_level, limit)
            .arg("pivot", handle.pivot_height)
            .arg("width", handle.bow.width)
            .maybe(keys::ears::HOLE.path, higher(case, handle.pivot_height, handle.bow.width / 2.0))
    })
}

/// A height of the hole at which what reaches so far below the pivots clears the lashed rim.
fn higher(case: &Case<'_>, pivots: Length, reach: Length) -> Option<String> {
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
    let top = lashed.rings(pivots).iter().map(Ring::top).reduce(Length::min)?;
    Some(write::at_least(pivots + reach + SWING_ROOM - top, case.units()))
}

/// More of an ear than this shows as a gap (common practice: 1/8 to 1/4 in).
fn ear_shows(case: &Case<'_>, handle: &SwingHandle) -> Option<Finding> {
    handle.shows.exceeds(MOST_SHOWN).then(|| {
        Finding::new(Grade::Note, "ear-shows", Piece::Ears)
            .measured(handle.shows, MOST_SHOWN)
            .remedy(keys::handle::SHOWS.path, write::at_most(MOST_SHOWN, case.units()))
    })
}

fn end_short(case: &Case<'_>, handle: &SwingHandle) -> Option<Finding> {
    let (end, hole) = (handle.bow.beyond(), handle.rivets.drill);
    let limit = hole * BEYOND_HOLE;
    end.falls_short_of(limit).then(|| {
        let left = handle.pivot_height - limit;
        Finding::new(Grade::Care, "handle-end-short", Piece::Handle)
            .measured(end, limit)
            .arg("drill", hole)
            .arg("shows", handle.shows)
            .maybe(
                keys::handle::SHOWS.path,
                (left > Length::ZERO).then(|| write::at_most(left, case.units())),
            )
            .remedy(keys::ears::HOLE.path, write::at_least(handle.shows + limit, case.units()))
    })
}

/// The wood on both sides of an ear that a handle takes between.
fn cheeks_thin(case: &Case<'_>, handle: &SwingHandle) -> Option<Finding> {
    let cheek = handle.cheek()?;
    cheek.falls_short_of(THINNEST_CHEEK).then(|| {
        let grade = if cheek <= Length::ZERO { Grade::Stop } else { Grade::Care };
        let thicker = handle.bow.thickness + (THINNEST_CHEEK - cheek) * 2.0;
        Finding::new(grade, "handle-cheek-thin", Piece::Handle)
            .measured(cheek, THINNEST_CHEEK)
            .arg("thickness", handle.bow.thickness)
            .remedy(keys::handle::THICKNESS.path, write::at_least(thicker, case.units()))
            .remedy(keys::handle::JOINT.path, write::name(HandleJoint::Outside.word()))
    })
}

/// Ends of a fixed handle have to stop above the foot.
fn ends_long(case: &Case<'_>, handle: &FixedHandle) -> Option<Finding> {
    let limit = case.basket.body.rim().along - ABOVE_FOOT;
    let tail = handle.ends.tail;
    tail.exceeds(limit).then(|| {
        let grade = if tail > case.basket.body.rim().along { Grade::Stop } else { Grade::Care };
        let most = (limit > Length::ZERO).then(|| write::at_most(limit, case.units()));
        Finding::new(grade, "handle-ends-long", Piece::Handle)
            .measured(tail, limit)
            .maybe(keys::handle::ENDS.path, most)
    })
}

/// A knob wants as much room above the rim as the end of a handle.
fn knob_fouls_rim(case: &Case<'_>, knobs: &Knobs) -> Option<Finding> {
    knobs.rim_room.falls_short_of(SWING_ROOM).then(|| {
        let grade = if knobs.rim_room < Length::ZERO { Grade::Stop } else { Grade::Care };
        let smaller = knobs.diameter - (SWING_ROOM - knobs.rim_room) * 2.0;
        let smaller = (smaller > knobs.diameter / 2.0).then(|| write::at_most(smaller, case.units()));
        Finding::new(grade, "knob-fouls-rim", Piece::Knobs)
            .measured(knobs.rim_room, SWING_ROOM)
            .arg("pivot", knobs.pivot_height)
            .arg("width", knobs.diameter)
            .maybe(keys::ears::HOLE.path, higher(case, knobs.pivot_height, knobs.diameter / 2.0))
            .maybe(keys::handle::WIDTH.path, smaller)
    })
}

/// A bow that is bent harder than its wood takes. Who bends a bought one knows its wood.
fn bent_too_hard(case: &Case<'_>, handle: &Handle, bow: &Bow) -> Option<Finding> {
    let pattern = case.pattern.handle.as_ref()?;
    (bow.made == HandleMade::Bent && bow.bend_strain > BEND_LIMIT).then(|| {
        let [strain, limit] = [bow.bend_strain, BEND_LIMIT].map(Value::Percent);
        let finding = Finding::new(Grade::Care, "bail-bent-too-hard", Piece::Handle)
            .measured(strain, limit)
            .arg("thickness", bow.thickness)
            .arg("radius", bow.thickness / (2.0 * bow.bend_strain));
        rounder(bow, pattern, case.units())
            .into_iter()
            .filter(|(changed, ..)| handle.strain_as(changed) <= BEND_LIMIT)
            .fold(finding, |finding, (_, key, value)| finding.remedy(key, value))
    })
}

/// Changes that may let the wood take the bend, each as the pattern it gives, the key and the value: a
/// thinner bail, wider corners, another rise, half a circle.
fn rounder(bow: &Bow, pattern: &HandlePattern, units: Units) -> Vec<(HandlePattern, &'static str, String)> {
    let thinner = bow.thickness * (BEND_LIMIT / bow.bend_strain * ROUNDER);
    let wanted = bow.thickness / (2.0 * BEND_LIMIT) / ROUNDER;
    let (span, with) = (bow.half_span, |rise| HandlePattern { rise: Some(rise), ..pattern.clone() });
    let mut changes = vec![(
        HandlePattern { thickness: Some(thinner), ..pattern.clone() },
        keys::handle::THICKNESS.path,
        write::at_most(thinner, units),
    )];
    match bow.curve {
        BailCurve::ThreeCentred if wanted < bow.rise * ROUNDER => {
            let wider = HandlePattern { corner: Some(wanted), ..pattern.clone() };
            changes.push((wider, keys::handle::CORNER.path, write::at_least(wanted, units)));
        }
        BailCurve::HalfEllipse if bow.rise > span => {
            let lower = span * (span / wanted);
            changes.push((with(lower), keys::handle::RISE.path, write::at_most(lower, units)));
        }
        BailCurve::HalfEllipse => {
            let higher = Length::mm(libm::sqrt(wanted.to_mm() * span.to_mm()));
            changes.push((with(higher), keys::handle::RISE.path, write::at_least(higher, units)));
        }
        _ => {}
    }
    if bow.curve != BailCurve::Semicircle && pattern.rise.is_none() && pattern.corner.is_none() {
        let half_circle = HandlePattern { curve: Some(BailCurve::Semicircle), ..pattern.clone() };
        changes.push((half_circle, keys::handle::CURVE.path, write::name("semicircle")));
    }
    changes
}

fn uneven(case: &Case<'_>, handle: &Handle) -> Option<Finding> {
    let limit = Angle::degrees(LEAN);
    let tilt = handle.tilt()?;
    let lean = tilt.to_degrees().abs();
    (lean > LEAN).then(|| {
        let least = case.basket.ears.as_ref().and_then(|ears| ears.options.first());
        let placing = least.map(|option| {
            let word = crate::term::Term::term(option.placing);
            write::name(word.trim_start_matches("ear-placing-"))
        });
        Finding::new(Grade::Care, "handle-uneven", Piece::Handle)
            .measured(tilt, limit)
            .maybe(keys::ears::PLACING.path, placing)
    })
}
