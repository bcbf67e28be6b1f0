//! Reading `[ears]` and `[handle]`.

use super::section::Section;
use crate::pattern::keys::handle::{CORNER, CURVE, KIND, RISE, RIVET, THICKNESS, WIDTH};
use crate::pattern::keys::{self, ears};
use crate::pattern::{BailCurve, EarsPattern, HandleKind, HandlePattern};

pub(super) fn ears(file: &Section) -> Option<EarsPattern> {
    let section = file.section(&keys::EARS)?;
    Some(EarsPattern {
        material: section.get(&ears::MATERIAL),
        placing: section.get(&ears::PLACING),
        width: section.get(&ears::WIDTH),
        thickness: section.get(&ears::THICKNESS),
        hole_height: section.get(&ears::HOLE),
        tail: section.get(&ears::TAIL),
    })
}

pub(super) fn handle(file: &Section) -> Option<HandlePattern> {
    let section = file.section(&keys::HANDLE)?;
    let kind = section.get(&KIND);
    let handle = HandlePattern {
        curve: section.get(&CURVE),
        rise: section.get(&RISE),
        corner: section.get(&CORNER),
        width: section.get(&WIDTH),
        thickness: section.get(&THICKNESS),
        rivet: section.get(&RIVET),
    };
    check_curve(&section, &handle);
    (kind != Some(HandleKind::None)).then_some(handle)
}

fn check_curve(section: &Section, handle: &HandlePattern) {
    let plain = matches!(handle.curve, Some(BailCurve::Semicircle | BailCurve::HalfEllipse));
    if plain && handle.corner.is_some() {
        let message = format!("`{}` belongs to a three-centred bail only", CORNER.path);
        section.problem(&CORNER, message, r#"leave it out, or write curve = "three-centred""#);
    }
    if handle.curve == Some(BailCurve::Semicircle) && handle.rise.is_some() {
        let message = format!("`{}` of a semicircle is fixed by the distance between the ears", RISE.path);
        let help = r#"leave it out, or write curve = "three-centred" or "half-ellipse""#;
        section.problem(&RISE, message, help);
    }
}
