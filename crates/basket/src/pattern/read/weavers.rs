//! Reading the weavers of a course and their colours.

use toml::Spanned;
use toml::de::DeValue;

use super::colours::colour;
use super::problem::Fault;
use super::section::Section;
use crate::Material;
use crate::colour::Colour;
use crate::pattern::keys::Declared;
use crate::pattern::keys::course::{COLOURS, MOST_WEAVERS, ONE_WEAVER_OR_MORE, WEAVER, WEAVERS};
use crate::pattern::{CoursePattern, WeaveKind};

/// The materials, one or a list.
pub(super) fn weavers(section: &Section) -> Option<Vec<Material>> {
    match section.one_way(&ONE_WEAVER_OR_MORE) {
        [true, true] => None,
        [true, false] => section.get(&WEAVER).map(|weaver| vec![weaver]),
        [false, true] => {
            let weavers = section.get(&WEAVERS)?;
            if weavers.is_empty() {
                let message = format!("`{}` names no weaver", WEAVERS.path);
                let help = format!("write {} = {}", WEAVERS.name(), WEAVERS.example);
                section.problem(&WEAVERS, Fault::new("problem-empty", message), help);
                return None;
            }
            Some(weavers)
        }
        [false, false] => {
            section.need(&[&WEAVER]);
            None
        }
    }
}

/// Notes more or fewer weavers than the weave takes.
pub(super) fn check_weavers(section: &Section, course: &CoursePattern) {
    let named = course.others.len() as u32 + 1;
    let fits = match course.weave {
        WeaveKind::Chase(_) => named <= 3,
        WeaveKind::Slew(_) => true,
        _ => named == 1 || named == course.weavers(),
    };
    if !fits {
        let takes = if matches!(course.weave, WeaveKind::Chase(_)) { 3 } else { course.weavers() };
        let message = format!("`{}` names {named} weavers", WEAVERS.path);
        let help = format!("`{}` takes {}", course.weave, in_words(takes));
        let fault = Fault::new("problem-weavers", message).with("count", named).with("takes", takes);
        section.problem(&WEAVERS, fault, help);
    }
}

/// Colours as written: none, one for all weavers, or the strands of each weaver.
pub(super) enum Colours {
    None,
    One(Colour),
    Each(Vec<Vec<Colour>>),
}

/// The colours of a course, as written.
pub(super) fn colours(section: &Section) -> Option<Colours> {
    let Some(value) = section.value(&COLOURS) else { return Some(Colours::None) };
    if value.get_ref().is_str() {
        return colour(section.context, COLOURS.path, value).map(Colours::One);
    }
    let list = section.list(&COLOURS, COLOURS.takes.most)?;
    let each: Vec<Vec<Colour>> = list.iter().filter_map(|value| strands(section, value)).collect();
    (each.len() == list.len()).then_some(Colours::Each(each))
}

/// The colours of one weaver's strands: one, or a list.
fn strands(section: &Section, value: &Spanned<DeValue<'_>>) -> Option<Vec<Colour>> {
    let path = COLOURS.path;
    let Some(strands) = value.get_ref().as_array() else {
        return Some(vec![colour(section.context, path, value)?]);
    };
    if strands.is_empty() || strands.len() > COLOURS.takes.each {
        let message = format!("`{path}` has a weaver with {} colours", strands.len());
        let fault = Fault::new("problem-strand-colours", message).count(strands.len());
        section.context.problem(value.span(), fault, "name the colours of its strands in order");
        return None;
    }
    let colours: Vec<Colour> =
        strands.iter().filter_map(|value| colour(section.context, path, value)).collect();
    (colours.len() == strands.len()).then_some(colours)
}

/// The colours of each weaver of a course.
pub(super) fn dealt(section: &Section, course: &CoursePattern, colours: Colours) -> Vec<Vec<Colour>> {
    let each = match colours {
        Colours::None => return Vec::new(),
        Colours::One(colour) => return vec![vec![colour]; course.weavers() as usize],
        Colours::Each(each) => each,
    };
    let got = each.len() as u32;
    let fits = match course.weave {
        WeaveKind::Chase(_) | WeaveKind::Slew(_) if course.others.is_empty() => {
            let most = if matches!(course.weave, WeaveKind::Chase(_)) { 3 } else { MOST_WEAVERS as u32 };
            (2..=most).contains(&got)
        }
        _ => got == course.weavers(),
    };
    if !fits {
        let message = format!("`{}` names the colours of {got} weavers", COLOURS.path);
        let help = if course.weavers() == 1 {
            format!(
                "this weave has one weaver: for strands of several colours in turn write {} = {}",
                COLOURS.name(),
                COLOURS.example
            )
        } else {
            format!("name one for each of the {}", in_words(course.weavers()))
        };
        let fault = Fault::new("problem-colours", message).with("count", got).with("takes", course.weavers());
        section.problem(&COLOURS, fault, help);
    }
    each
}

fn in_words(weavers: u32) -> String {
    if weavers == 1 { "1 weaver".to_owned() } else { format!("{weavers} weavers") }
}
