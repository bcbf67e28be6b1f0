//! Reading `[mould]`.

use toml::Spanned;
use toml::de::DeValue;

use super::context::Context;
use super::levels::levels;
use super::outline::outline;
use super::pairs::{rising, shape_of};
use super::problem::Fault;
use super::section::Section;
use crate::measure::Length;
use crate::pattern::keys::mould::{BASE, GIRTHS, HEIGHT, MEASURED_OR_DRAWN, PIECES, RIM, SIDE};
use crate::pattern::keys::{self, Declared, PART, PLACE};
use crate::pattern::{Girth, MouldForm, MouldPattern, Outline, Side, ray_ends};

const GIRTHS_EXAMPLE: &str = r#"girths = [ ["0", "15 1/2"], ["4", "24"] ], or base, rim, height and side"#;

pub(super) fn mould(file: &Section) -> Option<MouldPattern> {
    if !file.has(&keys::MOULD) {
        file.missing(&keys::MOULD, r#"[mould] and below it girths = [ ["0", "15 1/2"], ["4", "24"] ]"#);
    }
    let section = file.section(&keys::MOULD)?;
    let outline = outline(&section);
    let form = match section.ways(&MEASURED_OR_DRAWN) {
        [Some(_), None] => girths(&section),
        [Some(measured), Some(drawn)] => {
            let message = format!(
                "`{}` contradicts `{}`: a mould is measured or drawn, not both",
                drawn.path(),
                measured.path()
            );
            let fault = Fault::new("problem-both", message);
            let fault = fault.with("key", measured.path()).with("other", drawn.path());
            section.problem(drawn, fault, MEASURED_OR_DRAWN.help.unwrap_or_default());
            None
        }
        [None, Some(_)] => drawn(&section, outline.as_ref()),
        [None, None] => {
            section.missing(&GIRTHS, GIRTHS_EXAMPLE);
            None
        }
    };
    let pieces = section.get_or_usual(&PIECES);
    let levels = levels(&section);
    Some(MouldPattern { outline: outline?, form: form?, levels: levels?, pieces })
}

fn girths(section: &Section) -> Option<MouldForm> {
    let list = section.list(&GIRTHS, GIRTHS.takes)?;
    if list.len() < 2 {
        section.problem(
            &GIRTHS,
            Fault::new("problem-few-girths", format!("`{}` needs at least two measurements", GIRTHS.path)),
            "measure at the base and at the rim, and between them where the side bends",
        );
        return None;
    }
    let read: Vec<Option<Girth>> = list.iter().map(|entry| girth(section.context, entry)).collect();
    let girths: Vec<Girth> = read.into_iter().collect::<Option<_>>()?;
    in_rising_order(section, list, &girths).then_some(MouldForm::Girths(girths))
}

fn girth(context: Context, entry: &Spanned<DeValue<'_>>) -> Option<Girth> {
    let path = GIRTHS.path;
    let Some([height, girth]) = entry.get_ref().as_array().map(AsRef::as_ref) else {
        let message = format!("each of `{path}` must be a height and a girth, not {}", shape_of(entry));
        context.problem(entry.span(), Fault::new("problem-girth", message), r#"write ["1", "19 3/4"]"#);
        return None;
    };
    let height = context.length_value(&format!("{path} height"), height, PLACE);
    let girth = context.length_value(&format!("{path} girth"), girth, PART);
    Some(Girth { height: height?, girth: girth? })
}

fn in_rising_order(section: &Section, list: &[Spanned<DeValue<'_>>], girths: &[Girth]) -> bool {
    let path = GIRTHS.path;
    let mut fine = true;
    if girths.first().is_some_and(|first| first.height.to_mm() > 0.0) {
        let message = format!("the first of `{path}` must be at height 0, the base of the mould");
        section.problem(
            &GIRTHS,
            Fault::new("problem-girth-at-base", message),
            "measure the girth at the base too",
        );
        fine = false;
    }
    let heights: Vec<Length> = girths.iter().map(|girth| girth.height).collect();
    rising(section, (path, list), &heights) && fine
}

fn drawn(section: &Section, outline: Option<&Outline>) -> Option<MouldForm> {
    let is_round = outline == Some(&Outline::Round);
    let needed: &[&dyn Declared] = if is_round { &[&BASE, &RIM, &HEIGHT] } else { &[&RIM, &HEIGHT] };
    section.need(needed);
    let base = if is_round { section.get(&BASE) } else { outline.and_then(length) };
    let (rim, height) = (section.get(&RIM), section.get(&HEIGHT));
    let side = if section.has(&SIDE) { section.get(&SIDE) } else { SIDE.constant() };
    let (base, rim, height, side) = (base?, rim?, height?, side?);
    let path = SIDE.path;
    if side == Side::Straight && base != rim {
        let message = format!("`{path}` is straight, but base and rim differ");
        let help =
            r#"write side = "cone", or give base and rim one diameter (one length where it is not round)"#;
        section.problem(&SIDE, Fault::new("problem-straight", message), help);
        return None;
    }
    let (is_bowl, is_board) = (side == Side::Bowl, side == Side::Board);
    if (is_bowl || is_board) && base >= rim {
        let (what, id) = if is_bowl { ("bowl", "problem-bowl") } else { ("board", "problem-board") };
        let message = format!("`{path}` is a {what}, but the base is not smaller than the rim");
        section.problem(&SIDE, Fault::new(id, message), r#"write side = "cone", or a smaller base"#);
        return None;
    }
    Some(MouldForm::Drawn { base, rim, height, side })
}

/// The length of a foot that is not round.
fn length(outline: &Outline) -> Option<Length> {
    match outline {
        Outline::Round => None,
        Outline::Oval { size, .. } | Outline::Stadium(size) | Outline::Rectangle { size, .. } => {
            Some(size.length)
        }
        Outline::Traced(rays) => {
            let along = || ray_ends(rays).map(|[along, _]| along);
            Some(along().fold(Length::ZERO, Length::max) - along().fold(Length::ZERO, Length::min))
        }
    }
}
