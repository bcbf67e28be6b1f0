//! Reading `[staves]` and `[weave]`.

use toml::Spanned;
use toml::de::DeValue;

use super::keys;
use super::model::{Form, MouldPattern, OvalSide, StavesPattern, TaperPattern};
use super::section::{PLACE, Section, type_name};
use super::weave::{CoursePattern, Until, WeaveKind, WeavePattern};
use crate::measure::Length;
use crate::stock::Kind;

const STAVE_KINDS: &[Kind] = &[
    Kind::FlatReed,
    Kind::FlatOvalReed,
    Kind::HalfRoundReed,
    Kind::ChairCane,
    Kind::BinderCane,
    Kind::Splint,
];
const WEAVER_KINDS: &[Kind] = &[
    Kind::ChairCane,
    Kind::BinderCane,
    Kind::RoundReed,
    Kind::FlatReed,
    Kind::FlatOvalReed,
    Kind::HalfRoundReed,
    Kind::Splint,
];
const MOST_COURSES: usize = 40;

pub(super) fn staves(file: &Section) -> StavesPattern {
    let Some(section) = file.section("staves", "staves", keys::STAVES) else {
        return StavesPattern::default();
    };
    let stock = section.stock("stock", STAVE_KINDS);
    let width = section.length("width");
    if let (Some(width), Some(stock)) = (width, &stock)
        && width > stock.width
    {
        let message = format!("`staves.width` is wider than the stock, {}", stock.name);
        section.problem("width", message, "choose a wider stock, or leave the width out");
    }
    let widest = width.or(stock.as_ref().map(|stock| stock.width));
    StavesPattern {
        count: section.count("count", 3..=999),
        taper: taper(&section, widest),
        stock,
        width,
        gap: section.length("gap"),
        length: section.length("length"),
        spares: section.count("spares", 0..=999),
        oval_side: section.word("oval", &[("out", OvalSide::Out), ("in", OvalSide::In)]),
        colours: Vec::new(),
    }
}

fn taper(staves: &Section, widest: Option<Length>) -> Option<TaperPattern> {
    let section = staves.section("taper", "staves.taper", keys::TAPER)?;
    for (key, example) in [("from", r#"from = "1 1/2 in""#), ("foot", r#"foot = "1/8 in""#)] {
        if !section.has(key) {
            section.missing(key, example);
        }
    }
    let from = section.length_within("from", PLACE);
    let foot = section.length("foot");
    if let (Some(foot), Some(widest)) = (foot, widest)
        && foot > widest
    {
        let message = "`staves.taper.foot` is wider than the stave".to_owned();
        section.problem("foot", message, "write a width at the foot that is smaller than the stave's");
    }
    Some(TaperPattern { from: from?, foot: foot? })
}

pub(super) fn weave(file: &Section, mould: Option<&MouldPattern>) -> WeavePattern {
    let Some(section) = file.section("weave", "weave", keys::WEAVE) else {
        return WeavePattern::default();
    };
    let list = section.list("courses", MOST_COURSES).unwrap_or_default();
    let top = mould.and_then(mould_height);
    let courses: Vec<CoursePattern> = list.iter().filter_map(|entry| course(&section, entry, top)).collect();
    WeavePattern { courses, shrink: section.share("shrink", 0.0..=0.3), ..WeavePattern::default() }
}

fn mould_height(mould: &MouldPattern) -> Option<Length> {
    match &mould.form {
        Form::Girths(girths) => girths.last().map(|last| last.height),
        Form::Drawn { height, .. } => Some(*height),
    }
}

fn course(weave: &Section, entry: &Spanned<DeValue<'_>>, top: Option<Length>) -> Option<CoursePattern> {
    let DeValue::Table(table) = entry.get_ref() else {
        let message =
            format!("each of `weave.courses` must be in braces, not {}", type_name(entry.get_ref()));
        weave.context.problem(
            entry.span(),
            message,
            r#"write { weave = "plain", weaver = "cane fine", rows = 4 }"#,
        );
        return None;
    };
    let section = Section::open(weave.context, "weave.courses", table, entry.span(), keys::COURSE);
    if !section.has("weaver") {
        section.missing("weaver", r#"weaver = "cane fine""#);
    }
    let kind = section.word("weave", &[("plain", WeaveKind::Plain)]);
    let weaver = section.stock("weaver", WEAVER_KINDS);
    let packing = section.share("packing", 0.5..=3.0);
    let until = match (section.has("rows"), section.has("until")) {
        (true, true) => {
            let message = "`weave.courses` has both rows and until".to_owned();
            section.problem("until", message, "keep one of them: it says where the course ends");
            None
        }
        (true, false) => section.count("rows", 1..=2000).map(Until::Rows),
        (false, true) => until(&section, top),
        (false, false) => {
            section.missing("until", r#"rows = 4, until = "height 3 in" or until = "1 in below mould top""#);
            None
        }
    };
    Some(CoursePattern { packing, ..CoursePattern::new(kind.unwrap_or(WeaveKind::Plain), weaver?, until?) })
}

fn until(section: &Section, top: Option<Length>) -> Option<Until> {
    let text = section.text("until")?;
    let written = text.text.trim_end();
    if written.trim() == "mould top" {
        return Some(Until::BelowTop(Length::ZERO));
    }
    let name = section.name("until");
    let until = if let Some(length) = written.strip_suffix("below mould top") {
        Until::BelowTop(section.context.length(&name, &text, 0..length.len(), PLACE)?)
    } else if let Some(length) = written.trim_start().strip_prefix("height ") {
        Until::Height(section.context.length(
            &name,
            &text,
            written.len() - length.len()..written.len(),
            PLACE,
        )?)
    } else {
        let message = format!("`{name}` does not say where the course ends");
        section.problem(
            "until",
            message,
            r#"write "1 in below mould top", "mould top" or "height 3 1/2 in""#,
        );
        return None;
    };
    let (Until::Height(length) | Until::BelowTop(length)) = until else { return Some(until) };
    if top.is_some_and(|top| length > top) {
        section.problem(
            "until",
            format!("`{name}` is not on the mould"),
            "write a place between its base and its top",
        );
        return None;
    }
    Some(until)
}
