//! Reading `[base]`.

use super::problem::Fault;
use super::section::Section;
use crate::pattern::BasePattern;
use crate::pattern::keys;
use crate::pattern::keys::base::{DIAMETER, GROOVE, RINGS, SCREW, SEALED, THICKNESS, WOOD};
use crate::pattern::keys::groove::{DEPTH, WIDTH};

pub(super) fn base(file: &Section) -> BasePattern {
    let Some(section) = file.section(&keys::BASE) else {
        return BasePattern::default();
    };
    let groove = section.section(&GROOVE);
    let base = BasePattern {
        diameter: section.get(&DIAMETER),
        thickness: section.get(&THICKNESS),
        groove_depth: groove.as_ref().and_then(|groove| groove.get(&DEPTH)),
        groove_width: groove.as_ref().and_then(|groove| groove.get(&WIDTH)),
        woods: section.get(&WOOD),
        screw_hole: section.get(&SCREW),
        rings: section.get(&RINGS),
        sealed: section.get(&SEALED),
    };
    if let Some(groove) = &groove {
        check_groove(groove, &base);
    }
    if let (Some(screw), Some(diameter)) = (base.screw_hole, base.diameter)
        && screw >= diameter
    {
        let message = format!("`{}` is as wide as the base", SCREW.path);
        section.problem(
            &SCREW,
            Fault::new("problem-screw", message),
            format!("write the diameter of the hole, such as {}", SCREW.example),
        );
    }
    base
}

fn check_groove(groove: &Section, base: &BasePattern) {
    if let (Some(depth), Some(diameter)) = (base.groove_depth, base.diameter)
        && depth >= diameter / 2.0
    {
        let message = format!("`{}` reaches the middle of the base", DEPTH.path);
        groove.problem(
            &DEPTH,
            Fault::new("problem-groove-deep", message),
            format!("write a depth smaller than half of {}", DIAMETER.path),
        );
    }
    if let (Some(width), Some(thickness)) = (base.groove_width, base.thickness)
        && width >= thickness
    {
        let message = format!("`{}` is as wide as the base is thick", WIDTH.path);
        groove.problem(
            &WIDTH,
            Fault::new("problem-groove-wide", message),
            format!("write a width smaller than {}", THICKNESS.path),
        );
    }
}
