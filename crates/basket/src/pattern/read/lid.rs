//! Reading `[lid]`.

use super::section::Section;
use crate::pattern::keys::{self, lid};
use crate::pattern::{LidPattern, MouldPattern, Outline};

pub(super) fn lid(file: &Section, mould: Option<&MouldPattern>) -> Option<LidPattern> {
    let section = file.section(&keys::LID)?;
    let pattern = LidPattern {
        fit: section.get(&lid::FIT),
        across: section.get(&lid::ACROSS),
        height: section.get(&lid::HEIGHT),
        plaque: section.get(&lid::PLAQUE),
        clearance: section.get(&lid::CLEARANCE),
        staves: section.get(&lid::STAVES),
        count: section.get(&lid::COUNT),
        weaver: section.get(&lid::WEAVER),
        ledge: section.get(&lid::LEDGE),
        lift: section.get(&lid::LIFT),
    };
    if let (Some(plaque), Some(across)) = (pattern.plaque, pattern.across)
        && plaque >= across
    {
        let message = format!("`{}` is not smaller than `{}`", lid::PLAQUE.path, lid::ACROSS.path);
        section.problem(&lid::PLAQUE, message, "a lid is woven from its plaque outward: write less");
        return None;
    }
    if mould.is_some_and(|mould| matches!(mould.outline, Outline::Traced(_))) {
        let message = format!("`{}` does not go on a mould whose outline was traced", keys::LID.path);
        let help = r#"write the mould's shape as "oval", "stadium" or "rectangle", or leave the lid out"#;
        file.problem(&keys::LID, message, help);
        return None;
    }
    Some(pattern)
}
