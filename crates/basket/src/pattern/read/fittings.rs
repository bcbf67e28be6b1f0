//! Reading `[ears]`.

use super::problem::Fault;
use super::section::Section;
use crate::pattern::keys::{self, Key, ears};
use crate::pattern::{EarAxis, EarMaterial, EarPlacing, EarWay, EarsPattern};

pub(super) fn ears(file: &Section, round: bool) -> Option<EarsPattern> {
    let section = file.section(&keys::EARS)?;
    let ears = EarsPattern {
        material: section.get(&ears::MATERIAL),
        wood: section.get(&ears::WOOD),
        way: section.get(&ears::WAY),
        axis: section.get(&ears::AXIS),
        placing: section.get(&ears::PLACING),
        width: section.get(&ears::WIDTH),
        thickness: section.get(&ears::THICKNESS),
        hole_height: section.get(&ears::HOLE),
        tail: section.get(&ears::TAIL),
    };
    check_ears(&section, &ears);
    axis_of_round(&section, &ears::AXIS, round);
    Some(ears)
}

/// A round mould has no longer axis.
pub(super) fn axis_of_round(section: &Section, key: &'static Key<EarAxis>, round: bool) {
    if round && section.has(key) {
        let message = format!("`{}` belongs to a mould that is not round", key.path);
        let fault = Fault::new("problem-axis", message);
        section.problem(key, fault, "leave it out, or give the mould a `shape`");
    }
}

fn check_ears(section: &Section, ears: &EarsPattern) {
    if ears.wood.is_some() && ears.material != Some(EarMaterial::Wood) {
        let message = format!("`{}` belongs to wooden ears only", ears::WOOD.path);
        section.problem(
            &ears::WOOD,
            Fault::new("problem-ear-wood", message),
            r#"leave it out, or write material = "wood""#,
        );
    }
    if ears.way == Some(EarWay::AsStave) && ears.placing.is_some_and(|way| way != EarPlacing::OnStaves) {
        let message = format!("`{}` of ears that run down as staves is on staves", ears::PLACING.path);
        section.problem(
            &ears::PLACING,
            Fault::new("problem-ear-placing", message),
            "leave it out, or choose another `ears.way`",
        );
    }
    if ears.way == Some(EarWay::AsStave) && ears.tail.is_some() {
        let message = format!("`{}` of ears that run down as staves follows from the wall", ears::TAIL.path);
        section.problem(
            &ears::TAIL,
            Fault::new("problem-ear-tail", message),
            "leave it out, or choose another `ears.way`",
        );
    }
}
