//! Reading the shape of a mould's foot.

use super::problem::Fault;
use super::section::Section;
use crate::measure::{Length, Unit};
use crate::message::Value;
use crate::pattern::keys::Declared;
use crate::pattern::keys::mould::{
    BASE, CORNER, FULLNESS, LEAST_RAYS, LENGTH, LEVELS, RAYS, SHAPE, WIDTH, WIDTHS,
};
use crate::pattern::{FootSize, Outline, OutlineKind, Word, ray_ends, rays_to, spanned};
use crate::term::Term;

/// How hollow a straight side may be by what a hand cannot measure: it is spanned.
const FORGIVEN: Length = Length::mm(0.25);

pub(super) fn outline(section: &Section) -> Option<Outline> {
    let kind = if section.has(&SHAPE) { section.get(&SHAPE)? } else { SHAPE.constant()? };
    let needed: &[&dyn Declared] = match kind {
        OutlineKind::Round => &[],
        OutlineKind::Oval | OutlineKind::Stadium => &[&LENGTH, &WIDTH],
        OutlineKind::Rectangle => &[&LENGTH, &WIDTH, &CORNER],
        OutlineKind::Traced => &[&RAYS],
    };
    let fine = refuse_others(section, kind, needed);
    section.need(needed);
    let outline = match kind {
        OutlineKind::Round => Outline::Round,
        OutlineKind::Oval => {
            let fullness = if section.has(&FULLNESS) { section.get(&FULLNESS)? } else { 0.0 };
            Outline::Oval { size: size(section)?, fullness }
        }
        OutlineKind::Stadium => Outline::Stadium(size(section)?),
        OutlineKind::Rectangle => {
            let size = size(section)?;
            Outline::Rectangle { corner: corner(section, size)?, size }
        }
        OutlineKind::Traced => Outline::Traced(rays(section)?),
    };
    fine.then_some(outline)
}

/// Keys of other shapes contradict this one.
fn refuse_others(section: &Section, kind: OutlineKind, needed: &[&dyn Declared]) -> bool {
    let every: [&dyn Declared; 8] = [&LENGTH, &WIDTH, &CORNER, &FULLNESS, &RAYS, &BASE, &LEVELS, &WIDTHS];
    let serves = |key: &dyn Declared| match kind {
        OutlineKind::Round => key.path() == BASE.path,
        _ if key.path() == LEVELS.path || key.path() == WIDTHS.path => true,
        OutlineKind::Oval if key.path() == FULLNESS.path => true,
        _ => needed.iter().any(|needed| needed.path() == key.path()),
    };
    let mut fine = true;
    for key in every.into_iter().filter(|key| section.has(*key) && !serves(*key)) {
        let message = format!("`{}` says nothing of a mould that is {}", key.path(), kind.word());
        let help = match (kind, key.path() == BASE.path) {
            (OutlineKind::Round, _) => r#"leave it out, or write shape = "oval" beside it"#.to_owned(),
            (OutlineKind::Traced, true) => format!("leave it out: `{}` give the foot", RAYS.name()),
            (_, true) => format!("write {} and {} of the foot in its place", LENGTH.name(), WIDTH.name()),
            (_, false) => "leave it out".to_owned(),
        };
        let fault = Fault::new("problem-other-shape", message).with("shape", Value::Term(kind.term()));
        section.problem(key, fault, help);
        fine = false;
    }
    fine
}

/// Length and width, the longer first.
fn size(section: &Section) -> Option<FootSize> {
    let (length, width) = (section.get(&LENGTH), section.get(&WIDTH));
    let (length, width) = (length?, width?);
    if width > length {
        let message = format!("`{}` is more than `{}`", WIDTH.path, LENGTH.path);
        let fault = Fault::new("problem-wider-than-long", message);
        section.problem(&WIDTH, fault, "the longer of both is the length: exchange them");
        return None;
    }
    Some(FootSize { length, width })
}

fn corner(section: &Section, size: FootSize) -> Option<Length> {
    let corner = section.get(&CORNER)?;
    if corner > size.width / 2.0 {
        let message = format!("`{}` is more than half the width", CORNER.path);
        let fault = Fault::new("problem-corner", message);
        section.problem(&CORNER, fault, r#"with half the width write shape = "stadium"; else write less"#);
        return None;
    }
    Some(corner)
}

/// Rays whose ends make a convex outline.
fn rays(section: &Section) -> Option<Vec<Length>> {
    let rays = section.get(&RAYS)?;
    if rays.len() < LEAST_RAYS {
        let message = format!("`{}` has {} lengths", RAYS.path, rays.len());
        let help = format!("trace at least {LEAST_RAYS}: from the middle to the edge at even steps of angle");
        let fault =
            Fault::new("problem-few-rays", message).count(rays.len()).with("least", LEAST_RAYS as u32);
        section.problem(&RAYS, fault, help);
        return None;
    }
    let ends: Vec<[f64; 2]> = ray_ends(&rays).map(|end| end.map(Length::to_mm)).collect();
    let spanned: Vec<Length> = rays_to(&spanned(&ends), rays.len()).into_iter().map(Length::mm).collect();
    let hollows = spanned.iter().zip(&rays).map(|(band, ray)| *band - *ray).enumerate();
    let (deepest, depth) =
        hollows.fold((0, Length::ZERO), |most, one| if one.1 > most.1 { one } else { most });
    if depth > FORGIVEN {
        let least = spanned.get(deepest).copied().unwrap_or_default();
        let (path, number) = (RAYS.path, deepest + 1);
        let message = format!("`{path}`: at length {number} the outline is hollow");
        let help = format!(
            "a tape spans a hollow, and so do staves: write at least {:.1} mm, or look at its neighbours",
            (least.to_mm() * 10.0).ceil() / 10.0
        );
        // As it will be said, it has to suffice.
        let step =
            if section.context.unit == Some(Unit::Inch) { Length::inches(0.0625) } else { Length::mm(1.0) };
        let enough = step * (least / step).ceil();
        let fault = Fault::new("problem-hollow", message).count(number).with("least", enough);
        section.problem(&RAYS, fault, help);
        return None;
    }
    Some(spanned)
}
