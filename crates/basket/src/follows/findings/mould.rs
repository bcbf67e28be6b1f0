//! Does the basket come off its mould?

use super::case::{Case, Measured};
use super::finding::{Finding, Grade, Place};
use super::write;
use crate::follows::mould::{Apart, CLEAR, Stuck};
use crate::form::Undercut;
use crate::measure::Length;
use crate::message::{Message, Value};
use crate::pattern::keys;
use crate::pattern::{MouldForm, MouldPieces, Word};
use crate::piece::Piece;

/// What a damp basket forgives of a mould that narrows upward, on the radius (common practice:
/// a tape reads a girth to about 1/8 in, which is 0.5 mm of radius).
const FORGIVEN: Length = Length::mm(0.5);
/// Beyond this a rim does not pass a mould of one piece (common practice).
const HOPELESS: Length = Length::mm(2.0);

pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    let Undercut { depth, wide_at, .. } = narrowing(case);
    if !depth.exceeds(FORGIVEN) {
        return Vec::new();
    }
    let place = Place::from(Piece::Mould).at(wide_at);
    let apart = Apart::of(case.basket);
    let found = match case.basket.body.form.mould().pieces {
        MouldPieces::One => Some(undercut(case, place, (depth, &apart))),
        MouldPieces::Several => apart.err().map(|stuck| does_not_come_apart(case, place, stuck)),
    };
    found.into_iter().collect()
}

/// A mould of one piece comes out only if its radius never shrinks toward the rim; one in pieces comes out
/// piece by piece.
fn undercut(case: &Case<'_>, place: Place, (depth, apart): (Length, &Result<Apart, Stuck>)) -> Finding {
    let grade = if depth > HOPELESS { Grade::Stop } else { Grade::Care };
    let serves = match apart {
        Ok(apart) => {
            let segments = u32::try_from(apart.segments.len()).unwrap_or(u32::MAX);
            Message::new("mould-serves-pieces").with("segments", segments)
        }
        Err(_) => Message::new("mould-serves-none"),
    };
    let (key, value) = straightened(case);
    Finding::new(grade, "mould-undercut", place)
        .measured(depth, FORGIVEN)
        .arg("narrowing", depth * 2.0)
        .arg("serves", Value::Said(serves))
        .remedy(key, value)
        .remedy(keys::mould::PIECES.path, write::name(MouldPieces::Several.word()))
}

/// A mould in pieces of which one would not pass the neck.
fn does_not_come_apart(case: &Case<'_>, place: Place, stuck: Stuck) -> Finding {
    let (key, value) = straightened(case);
    let room = stuck.room.map_or(Value::Term("mould-no-core"), |room| {
        Value::Said(Message::new("mould-lacks").with("lack", CLEAR - room))
    });
    Finding::new(Grade::Stop, "mould-does-not-come-apart", place)
        .measured(stuck.room.unwrap_or_default(), CLEAR)
        .arg("room", room)
        .remedy(key, value)
}

/// What the mould does above the basket does not hold it.
fn narrowing(case: &Case<'_>) -> Undercut {
    case.basket.body.form.undercut_below(case.basket.body.rim().along + case.rim_width())
}

/// The mould's own figures with nothing narrower above than below.
fn straightened(case: &Case<'_>) -> (&'static str, String) {
    let units = case.units();
    match &case.pattern.mould.form {
        MouldForm::Girths(girths) => {
            let mut widest = Length::ZERO;
            let rows: Vec<String> = girths
                .iter()
                .map(|girth| {
                    widest = widest.max(girth.girth);
                    format!("[{}, {}]", write::near(girth.height, units), write::near(widest, units))
                })
                .collect();
            (keys::mould::GIRTHS.path, format!("[{}]", rows.join(", ")))
        }
        MouldForm::Drawn { base, .. } => (keys::mould::RIM.path, write::at_least(*base, units)),
    }
}
