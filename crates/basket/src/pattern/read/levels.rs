//! Reading how the levels of a mould follow from its foot.

use toml::Spanned;
use toml::de::DeValue;

use super::context::Context;
use super::pairs::{rising, shape_of};
use super::problem::Fault;
use super::section::Section;
use crate::measure::Length;
use crate::pattern::keys::mould::{LEVELS, WIDTHS};
use crate::pattern::keys::{Declared as _, PART, PLACE};
use crate::pattern::{Levels, LevelsKind, WidthAt};

pub(super) fn levels(section: &Section) -> Option<Levels> {
    let kind = if section.has(&LEVELS) { section.get(&LEVELS)? } else { LevelsKind::Even };
    if !section.has(&WIDTHS) {
        return Some(match kind {
            LevelsKind::Even => Levels::Even,
            LevelsKind::Scaled => Levels::Scaled,
        });
    }
    if section.has(&LEVELS) {
        let message =
            format!("`{}` contradicts `{}`: widths tell how the levels run", LEVELS.path, WIDTHS.path);
        let fault = Fault::new("problem-both", message);
        let fault = fault.with("key", WIDTHS.path).with("other", LEVELS.path);
        section.problem(&LEVELS, fault, format!("leave out `{}`, or the widths", LEVELS.name()));
        return None;
    }
    let list = section.list(&WIDTHS, WIDTHS.takes)?;
    let read: Vec<Option<WidthAt>> = list.iter().map(|entry| width(section.context, entry)).collect();
    let widths: Vec<WidthAt> = read.into_iter().collect::<Option<_>>()?;
    if widths.is_empty() {
        let fault = Fault::new("problem-no-widths", format!("`{}` is empty", WIDTHS.path));
        section.problem(&WIDTHS, fault, r#"write [["4", "8"]], or leave it out"#);
        return None;
    }
    let heights: Vec<Length> = widths.iter().map(|width| width.height).collect();
    let at_foot = heights.first().filter(|first| first.to_mm() <= 0.0);
    if at_foot.is_some() {
        let message =
            format!("the first of `{}` lies at the foot, whose width is written already", WIDTHS.path);
        let help = "begin above the foot: its own width stands for height 0";
        section.problem(&WIDTHS, Fault::new("problem-width-at-foot", message), help);
        return None;
    }
    rising(section, (WIDTHS.path, list), &heights).then_some(Levels::Widths(widths))
}

fn width(context: Context, entry: &Spanned<DeValue<'_>>) -> Option<WidthAt> {
    let path = WIDTHS.path;
    let Some([height, width]) = entry.get_ref().as_array().map(AsRef::as_ref) else {
        let message = format!("each of `{path}` must be a height and a width, not {}", shape_of(entry));
        context.problem(entry.span(), Fault::new("problem-width", message), r#"write ["4", "8"]"#);
        return None;
    };
    let height = context.length_value(&format!("{path} height"), height, PLACE);
    let width = context.length_value(&format!("{path} width"), width, PART);
    Some(WidthAt { height: height?, width: width? })
}
