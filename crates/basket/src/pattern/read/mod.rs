//! From the text of a file to a pattern, or to the list of all that is wrong with it.

mod base;
mod chart;
mod colours;
mod context;
mod course;
mod ends;
mod file;
mod fittings;
mod handle;
mod levels;
mod lid;
mod materials;
mod mould;
mod notes;
mod outline;
mod pairs;
mod palette;
mod problem;
mod raw;
mod rim;
mod sale;
mod section;
mod stock;
mod text;
mod values;
mod wall;
mod weavers;

use std::cell::RefCell;

use self::context::Context;
use self::file::{in_file_order, open_file, units};
use self::palette::Palette;
use self::problem::Fault;
pub use self::problem::Problem;
use self::section::Section;
use crate::Material;
use crate::pattern::{AllReady, FinishPart, HandlePattern, Outline, Pattern, Units, keys};
use crate::stock::Catalogue;

/// Reads a pattern.
///
/// Materials are looked up in the file's own `[materials]` first, then in the catalogue.
///
/// # Errors
/// Everything that is wrong with the text, in the order of the file.
pub fn read(text: &str, catalogue: &Catalogue) -> Result<Pattern, Vec<Problem>> {
    let table = open_file(text)?;
    let problems = RefCell::new(Vec::new());
    let context = Context { catalogue, unit: None, palette: &Palette::default(), problems: &problems };
    let file = Section::open(context, &keys::PATTERN, table.get_ref(), 0..0);
    let (units, unit) = units(&file);
    let file = file.with_context(Context { unit, ..context });
    let materials = materials::materials(&file);
    let palette = colours::palette(&file);
    let catalogue = &catalogue.with(&materials);
    let file = file.with_context(Context { catalogue, unit, palette: &palette, problems: &problems });
    let pattern = whole(&file, units, materials);
    let problems = problems.take();
    match pattern {
        Some(pattern) if problems.is_empty() => Ok(pattern),
        _ => Err(in_file_order(problems)),
    }
}

fn whole(file: &Section, units: Units, materials: Vec<Material>) -> Option<Pattern> {
    if !file.has(&keys::TITLE) {
        file.missing(&keys::TITLE, r#"title = "…" with the name of the basket, at the top"#);
    }
    let title = file.get(&keys::TITLE);
    let language = file.get(&keys::LANGUAGE);
    let level = file.get(&keys::LEVEL);
    let mould = mould::mould(file);
    let round = mould.as_ref().is_none_or(|mould| mould.outline == Outline::Round);
    let base = base::base(file);
    let staves = wall::staves(file);
    let weave = wall::weave(file, mould.as_ref());
    let rim = rim::rim(file);
    let lashing = rim::lashing(file);
    let filler = rim::filler(file, lashing.is_some());
    let pins = rim::pins(file);
    let handle = handle::handle(file, round);
    let ears = fittings::ears(file, round).or_else(|| handle.as_ref().and_then(HandlePattern::ears));
    let lid = lid::lid(file);
    let finish = file.get_or_usual(&keys::FINISH);
    let hand = file.get_or_usual(&keys::HAND);
    let finish_on = finish_on(file);
    let signature = file.get(&keys::SIGNATURE);
    let ready = AllReady::of(file.get(&keys::READY).unwrap_or_default());
    let notes = notes::notes(file);
    let sale = sale::sale(file);
    Some(Pattern {
        title: title?,
        units,
        language,
        level,
        mould: mould?,
        base,
        staves,
        weave,
        rim,
        filler,
        lashing,
        pins,
        ears,
        handle,
        lid,
        finish,
        finish_on,
        hand,
        signature,
        ready,
        notes,
        sale,
        materials,
    })
}

/// What the finish goes on; a handle only where there is one.
fn finish_on(file: &Section) -> Vec<FinishPart> {
    let parts = file.get(&keys::FINISH_ON).unwrap_or_default();
    if parts.contains(&FinishPart::Handle) && !file.has(&keys::HANDLE) {
        let message = format!("`{}` names a handle, and the basket has none", keys::FINISH_ON.path);
        let fault = Fault::new("problem-no-handle", message);
        file.problem(&keys::FINISH_ON, fault, "leave the handle out, or add [handle]");
    }
    parts
}
