//! Reading `[staves]` and `[weave]`.

use super::colours::Palette;
use super::course::course;
use super::section::{PLACE, Section};
use super::words::STAVE_KINDS;
use super::{keys, words};
use crate::measure::Length;
use crate::pattern::{CoursePattern, WeavePattern};
use crate::pattern::{Form, MouldPattern, StavesPattern, TaperPattern};

const MOST_COURSES: usize = 40;

pub(super) fn staves(file: &Section, palette: &Palette) -> StavesPattern {
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
        oval_side: section.word("oval", words::OVAL),
        colours: palette.list(&section, "colours").unwrap_or_default(),
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

pub(super) fn weave(file: &Section, mould: Option<&MouldPattern>, palette: &Palette) -> WeavePattern {
    let Some(section) = file.section("weave", "weave", keys::WEAVE) else {
        return WeavePattern::default();
    };
    let list = section.list("courses", MOST_COURSES).unwrap_or_default();
    let top = mould.and_then(mould_height);
    let courses: Vec<CoursePattern> =
        list.iter().filter_map(|entry| course(&section, entry, top, palette)).collect();
    WeavePattern {
        courses,
        shrink: section.share("shrink", 0.0..=0.3),
        float_staves: section.count("float-staves", 1..=99),
        float_rows: section.count("float-rows", 1..=99),
    }
}

fn mould_height(mould: &MouldPattern) -> Option<Length> {
    match &mould.form {
        Form::Girths(girths) => girths.last().map(|last| last.height),
        Form::Drawn { height, .. } => Some(*height),
    }
}
