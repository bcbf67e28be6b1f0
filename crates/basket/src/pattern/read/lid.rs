//! Reading `[lid]`.

use super::problem::Fault;
use super::section::Section;
use crate::pattern::keys::{self, lid};
use crate::pattern::{LidFit, LidHinge, LidPattern, Word as _};

pub(super) fn lid(file: &Section) -> Option<LidPattern> {
    let section = file.section(&keys::LID)?;
    let pattern = LidPattern {
        fit: section.get(&lid::FIT),
        way: section.get(&lid::WAY),
        across: section.get(&lid::ACROSS),
        height: section.get(&lid::HEIGHT),
        plaque: section.get(&lid::PLAQUE),
        clearance: section.get(&lid::CLEARANCE),
        staves: section.get(&lid::STAVES),
        count: section.get(&lid::COUNT),
        weaver: section.get(&lid::WEAVER),
        ledge: section.get(&lid::LEDGE),
        lift: section.get(&lid::LIFT),
        hinge: section.get(&lid::HINGE),
    };
    let fits = [is_wide(&section, &pattern), is_held(&section, &pattern)];
    fits.iter().all(|fits| *fits).then_some(pattern)
}

/// Its plaque is smaller than its rim.
fn is_wide(section: &Section, pattern: &LidPattern) -> bool {
    let (Some(plaque), Some(across)) = (pattern.plaque, pattern.across) else { return true };
    let wide = plaque < across;
    if !wide {
        let message = format!("`{}` is not smaller than `{}`", lid::PLAQUE.path, lid::ACROSS.path);
        let fault = Fault::new("problem-lid-plaque", message);
        section.problem(&lid::PLAQUE, fault, "a lid is woven from its plaque outward: write less");
    }
    wide
}

/// A cap has nothing but the rim to lie on, and only a lid on the rim can turn on a hinge.
fn is_held(section: &Section, pattern: &LidPattern) -> bool {
    let fit = pattern.fit.unwrap_or_default();
    let ledge = fit == LidFit::Cap && pattern.ledge.is_some();
    if ledge {
        let message = format!("`{}` belongs to a lid that is not a cap", lid::LEDGE.path);
        let fault = Fault::new("problem-lid-ledge", message);
        section.problem(&lid::LEDGE, fault, "leave it out: a cap lies on the rim itself");
    }
    let hinge = fit != LidFit::Flush && pattern.hinge.is_some_and(|hinge| hinge != LidHinge::None);
    if hinge {
        let message = format!("`{}` belongs to a lid that lies flush on the rim", lid::HINGE.path);
        let fault = Fault::new("problem-lid-hinge", message);
        let help = format!("leave it out, or write {} = {:?}", lid::FIT.path, LidFit::Flush.word());
        section.problem(&lid::HINGE, fault, help);
    }
    !ledge && !hinge
}
