//! Reading `[handle]`.

use super::fittings::axis_of_round;
use super::problem::Fault;
use super::section::Section;
use crate::message::Value;
use crate::pattern::keys;
use crate::pattern::keys::handle::{
    AXIS, BELONGS, CORNER, CURVE, ENDS, JOINT, KIND, MADE, RISE, RIVET, SHOWS, THICKNESS, WIDTH,
};
use crate::pattern::{BailCurve, HandleKind, HandlePattern, Word};
use crate::term::Term;

pub(super) fn handle(file: &Section, round: bool) -> Option<HandlePattern> {
    let section = file.section(&keys::HANDLE)?;
    let handle = HandlePattern {
        kind: section.get(&KIND),
        made: section.get(&MADE),
        axis: section.get(&AXIS),
        joint: section.get(&JOINT),
        curve: section.get(&CURVE),
        rise: section.get(&RISE),
        corner: section.get(&CORNER),
        width: section.get(&WIDTH),
        thickness: section.get(&THICKNESS),
        shows: section.get(&SHOWS),
        ends: section.get(&ENDS),
        rivet: section.get(&RIVET),
    };
    let kind = handle.kind();
    if kind == HandleKind::None {
        return None;
    }
    check_kind(&section, kind);
    axis_of_round(&section, &AXIS, round);
    check_curve(&section, &handle);
    if kind == HandleKind::Fixed && file.has(&keys::EARS) {
        let message =
            format!("`{}` are not needed: a fixed handle stands in the rim itself", keys::EARS.path);
        file.problem(
            &keys::EARS,
            Fault::new("problem-ears", message),
            r#"leave them out, or write kind = "swing" under [handle]"#,
        );
    }
    Some(handle)
}

fn check_kind(section: &Section, kind: HandleKind) {
    for (key, kinds) in BELONGS {
        if section.has(key) && !kinds.contains(&kind) {
            let words: Vec<String> = kinds.iter().map(|kind| format!("\"{}\"", kind.word())).collect();
            let message = format!("`{}` does not belong to a handle of kind \"{}\"", key.path(), kind.word());
            let fault = Fault::new("problem-other-handle", message).with("kind", Value::Term(kind.term()));
            section.problem(key, fault, format!("leave it out, or write kind = {}", words.join(" or ")));
        }
    }
}

fn check_curve(section: &Section, handle: &HandlePattern) {
    let plain = matches!(handle.curve, Some(BailCurve::Semicircle | BailCurve::HalfEllipse));
    if plain && handle.corner.is_some() {
        let message = format!("`{}` belongs to a three-centred bail only", CORNER.path);
        section.problem(
            &CORNER,
            Fault::new("problem-three-centred", message),
            r#"leave it out, or write curve = "three-centred""#,
        );
    }
    if handle.curve == Some(BailCurve::Semicircle) && handle.rise.is_some() {
        let message = format!("`{}` of a semicircle is fixed by the distance between the ears", RISE.path);
        let help = r#"leave it out, or write curve = "three-centred" or "half-ellipse""#;
        section.problem(&RISE, Fault::new("problem-semicircle", message), help);
    }
}
