//! Reading `[ears]`, `[handle]` and `finish`.

use super::section::{PLACE, Section};
use super::{keys, words};
use crate::pattern::{BailCurve, EarsPattern, Finish, HandlePattern};
use crate::stock::Kind;

pub(super) fn ears(file: &Section) -> Option<EarsPattern> {
    let section = file.section("ears", "ears", keys::EARS)?;
    Some(EarsPattern {
        material: section.word("material", words::EAR_MATERIAL),
        placing: section.word("placing", words::EAR_PLACING),
        width: section.length("width"),
        thickness: section.length("thickness"),
        hole_height: section.length_within("hole", PLACE),
        tail: section.length("tail"),
    })
}

pub(super) fn handle(file: &Section) -> Option<HandlePattern> {
    let section = file.section("handle", "handle", keys::HANDLE)?;
    let swings = section.word("kind", &[("swing", true), ("none", false)]).unwrap_or(true);
    let handle = HandlePattern {
        curve: section.word("curve", words::BAIL_CURVE),
        rise: section.length("rise"),
        corner: section.length("corner"),
        width: section.length("width"),
        thickness: section.length("thickness"),
        rivet: section.stock("rivet", &[Kind::Rivet]),
    };
    check_curve(&section, &handle);
    swings.then_some(handle)
}

fn check_curve(section: &Section, handle: &HandlePattern) {
    let plain = matches!(handle.curve, Some(BailCurve::Semicircle | BailCurve::HalfEllipse));
    if plain && handle.corner.is_some() {
        let message = "`handle.corner` belongs to a three-centred bail only".to_owned();
        section.problem("corner", message, r#"leave it out, or write curve = "three-centred""#);
    }
    if handle.curve == Some(BailCurve::Semicircle) && handle.rise.is_some() {
        let message = "`handle.rise` of a semicircle is fixed by the distance between the ears".to_owned();
        section.problem(
            "rise",
            message,
            r#"leave it out, or write curve = "three-centred" or "half-ellipse""#,
        );
    }
}

pub(super) fn finish(file: &Section) -> Finish {
    file.word("finish", words::FINISH).unwrap_or_default()
}
