//! Reading `[materials]`: what a maker adds to the catalogue or measured again.

use std::cell::RefCell;
use std::sync::Arc;

use toml::Spanned;
use toml::de::DeValue;

use super::context::Context;
use super::file::{in_file_order, open_file, units};
use super::palette::Palette;
use super::problem::{Fault, Problem};
use super::raw::{in_order, type_name, type_term};
use super::section::Section;
use super::stock::unknown_material;
use super::text::{shorten, title_fault};
use crate::pattern::keys::material::{
    BEND, DIAMETER, HOLDS, KIND, LENGTH, LIKE, PUT_UP, SHRINK, SOAK, STRAND, THICKNESS, WIDTH,
};
use crate::pattern::keys::{self, Declared};
use crate::stock::{Catalogue, Material};

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
        let context =
            Context { catalogue: self, unit: None, palette: &Palette::default(), problems: &problems };
        let file = Section::open(context, &keys::SHELF, table.get_ref(), 0..0);
        let (_, unit) = units(&file);
        let file = file.with_context(Context { unit, ..context });
        let shelf = self.with(&materials(&file));
        let problems = problems.take();
        if problems.is_empty() { Ok(shelf) } else { Err(in_file_order(problems)) }
    }
}

pub(super) fn materials(file: &Section) -> Vec<Material> {
    let key = keys::MATERIALS;
    let Some(value) = file.value(&key) else { return Vec::new() };
    let DeValue::Table(table) = value.get_ref() else {
        let message = format!("`{}` must be a section, not {}", key.path, type_name(value.get_ref()));
        let fault = Fault::new("problem-not-section", message).with("found", type_term(value.get_ref()));
        file.problem(&key, fault, r#"write [materials."my quarter-inch"] and its keys below"#);
        return Vec::new();
    };
    if table.len() > key.takes.most {
        let message = format!("{} materials are too many", table.len());
        let fault =
            Fault::new("problem-many", message).count(table.len()).with("most", key.takes.most as u32);
        file.problem(&key, fault, format!("at most {} are read", key.takes.most));
        return Vec::new();
    }
    let mut known: Vec<Material> = Vec::new();
    for (name, key_span, value) in in_order(table) {
        if let Some(fault) = title_fault(name.trim()) {
            let fault = fault.of("the name of a material");
            file.context.problem(key_span.clone(), fault, "write a name of at most 120 characters");
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
        let fault = Fault::new("problem-not-section", message).with("found", type_term(value.get_ref()));
        context.problem(value.span(), fault, r#"write its keys in braces, such as { width = "6.1 mm" }"#);
        return None;
    };
    let section = Section::open(context, &keys::MATERIALS, table, value.span());
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
    if section.has(&LIKE) {
        let like = section.text(&LIKE)?;
        let found = find(like.text).cloned().map(|material| Material { aliases: Vec::new(), ..material });
        if found.is_none() {
            let known: Vec<&Material> = section.context.catalogue.materials.iter().chain(known).collect();
            unknown_material(section, section.value(&LIKE)?, like.text, &known);
        }
        return found;
    }
    find(name).cloned().or_else(|| fresh(section, name))
}

fn fresh(section: &Section, name: &str) -> Option<Material> {
    let sized = section.has(&DIAMETER) || section.has(&WIDTH) && section.has(&THICKNESS);
    if !section.has(&KIND) || !sized {
        let message = format!("the material `{}` is new, so its kind and size must be given", shorten(name));
        let help = r#"write like = "…" with the name of one that is like it, or kind, width and thickness"#;
        section
            .problem_here(Fault::new("problem-new-material", message).with("written", shorten(name)), help);
        return None;
    }
    let width = section.get(&DIAMETER).or_else(|| section.get(&WIDTH))?;
    Some(Material::bare(name, section.get(&KIND)?, width, width))
}

fn overtype(section: &Section, material: &mut Material) {
    let mut written = Vec::new();
    let mut note = |figure: &dyn Declared| written.push(figure.name().to_owned());
    if let Some(kind) = section.get(&KIND) {
        material.kind = kind;
    }
    if let Some(diameter) = section.get(&DIAMETER) {
        (material.width, material.thickness) = (diameter, diameter);
        note(&WIDTH);
        note(&THICKNESS);
    }
    if let Some(width) = section.get(&WIDTH) {
        material.width = width;
        note(&WIDTH);
    }
    if let Some(thickness) = section.get(&THICKNESS) {
        material.thickness = thickness;
        note(&THICKNESS);
    }
    if let Some(length) = section.get(&LENGTH) {
        material.length = Some(length);
        note(&LENGTH);
    }
    if let Some(unit) = section.get(&PUT_UP) {
        material.put_up.unit = unit;
        note(&PUT_UP);
    }
    if let Some(holds) = section.get(&HOLDS) {
        material.put_up.length = Some(holds);
        note(&PUT_UP);
    }
    if let Some(strand) = section.get(&STRAND) {
        material.put_up.strand = Some(strand);
        note(&STRAND);
    }
    if let Some(soak) = section.get(&SOAK) {
        material.soak_minutes = Some(soak);
        note(&SOAK);
    }
    if let Some(bend) = section.get(&BEND) {
        material.bend_limit = Some(bend);
        note(&BEND);
    }
    if let Some(shrink) = section.get(&SHRINK) {
        material.shrink = shrink;
        note(&SHRINK);
    }
    Arc::make_mut(&mut material.sources)
        .extend(written.into_iter().map(|figure| (figure, SOURCE.to_owned())));
}
