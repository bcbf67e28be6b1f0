//! Reading `[staves]` and `[weave]`.

use super::course::course;
use super::problem::Fault;
use super::section::Section;
use crate::limits::ROWS;
use crate::measure::Length;
use crate::pattern::keys::{self, staves, taper, weave};
use crate::pattern::{
    CoursePattern, MouldForm, MouldPattern, StavesPattern, TaperPattern, Until, WeavePattern,
};

pub(super) fn staves(file: &Section) -> StavesPattern {
    let Some(section) = file.section(&keys::STAVES) else {
        return StavesPattern::default();
    };
    let stock = section.get(&staves::STOCK);
    let width = section.get(&staves::WIDTH);
    if let (Some(width), Some(stock)) = (width, &stock)
        && width > stock.width
    {
        let message = format!("`{}` is wider than the stock, {}", staves::WIDTH.path, stock.name);
        let fault = Fault::new("problem-stave-width", message).with("stock", stock);
        section.problem(&staves::WIDTH, fault, "choose a wider stock, or leave the width out");
    }
    let widest = width.or(stock.as_ref().map(|stock| stock.width));
    StavesPattern {
        count: section.get(&staves::COUNT),
        taper: taper(&section, widest),
        stock,
        width,
        gap: section.get(&staves::GAP),
        length: section.get(&staves::LENGTH),
        spares: section.get(&staves::SPARES),
        spacing: section.get(&staves::SPACING),
        ends: section.get(&staves::ENDS),
        oval_side: section.get(&staves::OVAL),
        colours: section.get(&staves::COLOURS).unwrap_or_default(),
    }
}

fn taper(staves: &Section, widest: Option<Length>) -> Option<TaperPattern> {
    let section = staves.section(&staves::TAPER)?;
    section.need(taper::ALL);
    let from = section.get(&taper::FROM);
    let foot = section.get(&taper::FOOT);
    if let (Some(foot), Some(widest)) = (foot, widest)
        && foot > widest
    {
        let message = format!("`{}` is wider than the stave", taper::FOOT.path);
        let help = "write a width at the foot that is smaller than the stave's";
        section.problem(&taper::FOOT, Fault::new("problem-foot", message), help);
    }
    Some(TaperPattern { from: from?, foot: foot? })
}

pub(super) fn weave(file: &Section, mould: Option<&MouldPattern>) -> WeavePattern {
    let Some(section) = file.section(&keys::WEAVE) else {
        return WeavePattern::default();
    };
    let list = section.list(&weave::COURSES, weave::COURSES.takes.most).unwrap_or_default();
    let top = mould.and_then(mould_height);
    let courses: Vec<CoursePattern> =
        list.iter().filter_map(|entry| course(section.context, entry, top)).collect();
    too_many_rows(&section, &courses);
    WeavePattern {
        courses,
        shrink: section.get(&weave::SHRINK),
        float_staves: section.get(&weave::FLOAT_STAVES),
        float_rows: section.get(&weave::FLOAT_ROWS),
        direction: section.get(&weave::DIRECTION),
        first_face: section.get(&weave::FIRST_FACE),
    }
}

/// Notes that counted rows come to more than any basket has.
fn too_many_rows(section: &Section, courses: &[CoursePattern]) {
    let counted = courses.iter().filter_map(|course| match course.until {
        Until::Rows(rows) => Some(rows),
        _ => None,
    });
    let rows: u32 = counted.sum();
    if rows > ROWS {
        let message = format!("`{}` have {rows} rows together", weave::COURSES.path);
        let fault = Fault::new("problem-rows", message).with("count", rows).with("most", ROWS);
        section.problem(&weave::COURSES, fault, format!("write at most {ROWS} rows in all"));
    }
}

fn mould_height(mould: &MouldPattern) -> Option<Length> {
    match &mould.form {
        MouldForm::Girths(girths) => girths.last().map(|last| last.height),
        MouldForm::Drawn { height, .. } => Some(*height),
    }
}
