//! Reading `[materials]`: what a maker adds to the catalogue or measured again.

use std::cell::RefCell;

use toml::Spanned;
use toml::de::DeValue;

use super::keys;
use super::problem::Problem;
use super::section::{Context, RUN, Section, in_order, title_fault, type_name, whole_number};
use super::text::shorten;
use super::{in_file_order, open_file, units};
use crate::stock::{Catalogue, Kind, Material};

const MOST_MATERIALS: usize = 200;
const LONGEST_SOAK: i64 = 14 * 24 * 60;
const SOURCE: &str = "as the maker wrote it";

impl Catalogue {
    /// This catalogue with the materials of a shelf file: the `[materials]` part of a pattern in a
    /// file of its own, with `units` above it if bare numbers are used. A material under a known
    /// name replaces that one.
    ///
    /// # Errors
    /// Everything that is wrong in the file.
    pub fn with_shelf(&self, text: &str) -> Result<Self, Vec<Problem>> {
        let table = open_file(text)?;
        let problems = RefCell::new(Vec::new());
        let context = Context { catalogue: self, unit: None, problems: &problems };
        let file = Section::open(context, "", table.get_ref(), 0..0, keys::SHELF);
        let (_, unit) = units(&file);
        let file = file.with_context(Context { unit, ..context });
        let shelf = self.with(&materials(&file));
        let problems = problems.take();
        if problems.is_empty() { Ok(shelf) } else { Err(in_file_order(problems)) }
    }
}

pub(super) fn materials(file: &Section) -> Vec<Material> {
    let Some(value) = file.value("materials") else { return Vec::new() };
    let DeValue::Table(table) = value.get_ref() else {
        let message = format!("`materials` must be a section, not {}", type_name(value.get_ref()));
        file.problem("materials", message, r#"write [materials."my quarter-inch"] and its keys below"#);
        return Vec::new();
    };
    if table.len() > MOST_MATERIALS {
        let message = format!("{} materials are too many", table.len());
        file.problem("materials", message, format!("at most {MOST_MATERIALS} are read"));
        return Vec::new();
    }
    let mut known: Vec<Material> = Vec::new();
    for (name, key_span, value) in in_order(table) {
        if let Some(fault) = title_fault(name.trim()) {
            let message = format!("the name of a material {fault}");
            file.context.problem(key_span.clone(), message, "write a name of at most 120 characters");
        }
        if let Some(material) = material(file.context, &known, name.trim(), value) {
            known.push(material);
        }
    }
    known
}

fn material(
    context: Context,
    known: &[Material],
    name: &str,
    value: &Spanned<DeValue<'_>>,
) -> Option<Material> {
    let DeValue::Table(table) = value.get_ref() else {
        let message =
            format!("the material `{}` must be a section, not {}", shorten(name), type_name(value.get_ref()));
        context.problem(value.span(), message, r#"write its keys in braces, such as { width = "6.1 mm" }"#);
        return None;
    };
    let section = Section::open(context, "materials", table, value.span(), keys::MATERIAL);
    let mut material = start(&section, known, name)?;
    name.clone_into(&mut material.name);
    overtype(&section, &mut material);
    Some(material)
}

/// The material to begin with: the one it is like, the one it replaces, or a new one of its kind.
fn start(section: &Section, known: &[Material], name: &str) -> Option<Material> {
    let find = |wanted: &str| {
        let known = known.iter().rev().find(|material| material.is_called(wanted));
        known.or_else(|| section.context.catalogue.material(wanted))
    };
    if section.has("like") {
        let like = section.text("like")?;
        let found = find(like.text).cloned().map(|material| Material { aliases: Vec::new(), ..material });
        if found.is_none() {
            let known: Vec<&Material> = section.context.catalogue.materials.iter().chain(known).collect();
            section.unknown_material(section.value("like")?, like.text, &known);
        }
        return found;
    }
    find(name).cloned().or_else(|| fresh(section, name))
}

fn fresh(section: &Section, name: &str) -> Option<Material> {
    let sized = section.has("diameter") || section.has("width") && section.has("thickness");
    if !section.has("kind") || !sized {
        let message = format!("the material `{}` is new, so its kind and size must be given", shorten(name));
        let help = r#"write like = "…" with the name of one that is like it, or kind, width and thickness"#;
        section.problem("", message, help);
        return None;
    }
    let width = section.length("diameter").or_else(|| section.length("width"))?;
    Some(Material::bare(name, kind(section)?, width, width))
}

fn kind(section: &Section) -> Option<Kind> {
    section.word("kind", &Kind::ALL.map(|kind| (kind.words(), kind)))
}

fn overtype(section: &Section, material: &mut Material) {
    let mut written = Vec::new();
    let mut note = |figure: &str| written.push(figure.to_owned());
    if let Some(kind) = kind(section) {
        material.kind = kind;
    }
    if let Some(diameter) = section.length("diameter") {
        (material.width, material.thickness) = (diameter, diameter);
        note("width");
        note("thickness");
    }
    if let Some(width) = section.length("width") {
        material.width = width;
        note("width");
    }
    if let Some(thickness) = section.length("thickness") {
        material.thickness = thickness;
        note("thickness");
    }
    if let Some(length) = section.length("length") {
        material.length = Some(length);
        note("length");
    }
    if let Some(unit) = section.title("put-up") {
        material.put_up.unit = unit;
        note("put-up");
    }
    if let Some(holds) = section.length_within("holds", RUN) {
        material.put_up.length = Some(holds);
        note("put-up");
    }
    if let Some(strand) = section.length_within("strand", RUN) {
        material.put_up.strand = Some(strand);
        note("strand");
    }
    if let Some(soak) = soak(section) {
        material.soak_minutes = Some(soak);
        note("soak");
    }
    if let Some(bend) = section.share("bend", 0.001..=0.5) {
        material.bend_limit = Some(bend);
        note("bend");
    }
    if let Some(shrink) = section.share("shrink", 0.0..=0.3) {
        material.shrink = shrink;
        note("shrink");
    }
    std::sync::Arc::make_mut(&mut material.sources)
        .extend(written.into_iter().map(|figure| (figure, SOURCE.to_owned())));
}

/// Minutes: `soak = 15`, or shortest and longest as `soak = [10, 15]`.
fn soak(section: &Section) -> Option<(f64, f64)> {
    let value = section.value("soak")?;
    let minutes = match value.get_ref() {
        DeValue::Array(list) => match list.as_ref() {
            [least, most] => whole_number(least.get_ref()).zip(whole_number(most.get_ref())),
            _ => None,
        },
        single => whole_number(single).map(|minutes| (minutes, minutes)),
    };
    let minutes = minutes.filter(|(least, most)| 0 <= *least && least <= most && *most <= LONGEST_SOAK);
    if minutes.is_none() {
        let message = "`materials.soak` must be minutes".to_owned();
        section.problem("soak", message, "write soak = 15, or the shortest and longest as soak = [10, 15]");
    }
    minutes.map(|(least, most)| (least as f64, most as f64))
}
