//! Reading `[ears]` and `[handle]`.

use super::section::Section;
use crate::pattern::keys::handle::{CORNER, CURVE, KIND, RISE, RIVET, THICKNESS, WIDTH};
use crate::pattern::keys::{self, ears};
use crate::pattern::{BailCurve, EarMaterial, EarPlacing, EarWay, EarsPattern, HandleKind, HandlePattern};

pub(super) fn ears(file: &Section) -> Option<EarsPattern> {
    let section = file.section(&keys::EARS)?;
    let ears = EarsPattern {
        material: section.get(&ears::MATERIAL),
        wood: section.get(&ears::WOOD),
        way: section.get(&ears::WAY),
        placing: section.get(&ears::PLACING),
        width: section.get(&ears::WIDTH),
        thickness: section.get(&ears::THICKNESS),
        hole_height: section.get(&ears::HOLE),
        tail: section.get(&ears::TAIL),
    };
    check_ears(&section, &ears);
    Some(ears)
}

fn check_ears(section: &Section, ears: &EarsPattern) {
    if ears.wood.is_some() && ears.material != Some(EarMaterial::Wood) {
        let message = format!("`{}` belongs to wooden ears only", ears::WOOD.path);
        section.problem(&ears::WOOD, message, r#"leave it out, or write material = "wood""#);
    }
    if ears.way == Some(EarWay::AsStave) && ears.placing.is_some_and(|way| way != EarPlacing::OnStaves) {
        let message = format!("`{}` of ears that run down as staves is on staves", ears::PLACING.path);
        section.problem(&ears::PLACING, message, "leave it out, or choose another `ears.way`");
    }
    if ears.way == Some(EarWay::AsStave) && ears.tail.is_some() {
        let message = format!("`{}` of ears that run down as staves follows from the wall", ears::TAIL.path);
        section.problem(&ears::TAIL, message, "leave it out, or choose another `ears.way`");
    }
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
