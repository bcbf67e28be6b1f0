//! Reading the names of materials and woods.

use toml::Spanned;
use toml::de::DeValue;

use super::problem::Fault;
use super::section::{Read, Section, list};
use super::text::{nearest, one_of, shorten};
use crate::message::Value;
use crate::pattern::keys::{Declared, Key};
use crate::stock::{Kind, Material, Wood};
use crate::term::Term;

impl Read for Material {
    fn read(section: &Section, key: &Key<Self>, value: &Spanned<DeValue<'_>>) -> Option<Self> {
        material(section, key, key.takes, value)
    }
}

impl Read for Vec<Material> {
    fn read(section: &Section, key: &Key<Self>, value: &Spanned<DeValue<'_>>) -> Option<Self> {
        let list = list(section.context, key, value, key.takes.most)?;
        let found: Self =
            list.iter().filter_map(|value| material(section, key, key.takes.each, value)).collect();
        (found.len() == list.len()).then_some(found)
    }
}

/// A material of one of these kinds, where a key's value or an entry of its list names it.
fn material(
    section: &Section,
    key: &dyn Declared,
    kinds: &[Kind],
    value: &Spanned<DeValue<'_>>,
) -> Option<Material> {
    let context = &section.context;
    let text = context.text(key.path(), value)?;
    let fits = |material: &&Material| kinds.contains(&material.kind);
    match context.catalogue.material(text.text) {
        Some(material) if fits(&material) => return Some(material.clone()),
        Some(material) => {
            let words: Vec<&str> = kinds.iter().map(|kind| kind.words()).collect();
            let message = format!("`{}` cannot be a {}", key.path(), material.kind.words());
            context.problem(
                value.span(),
                Fault::new("problem-kind", message).with("kind", Value::Term(material.kind.term())),
                format!("choose a material of the kind {}", one_of(&words)),
            );
        }
        None => {
            let known: Vec<&Material> = context.catalogue.materials.iter().filter(fits).collect();
            unknown_material(section, value, text.text, &known);
        }
    }
    None
}

/// Notes a name that is none of these materials.
pub(super) fn unknown_material(
    section: &Section,
    value: &Spanned<DeValue<'_>>,
    name: &str,
    known: &[&Material],
) {
    let near = nearest(name, known.iter().flat_map(|material| material.names()));
    let near = near.and_then(|near| known.iter().find(|material| material.is_called(near)));
    let help = match near {
        Some(material) => format!("did you mean `{}`?", material.name),
        None => "look it up with `stavewright materials`, or add it under [materials]".to_owned(),
    };
    let fault = Fault::new("problem-material", format!("`{}` is not a known material", shorten(name)));
    let near = near.map_or(Value::from(""), |material| (*material).into());
    section.context.problem(value.span(), fault.with("written", shorten(name)).with("near", near), help);
}

impl Read for Wood {
    fn read(section: &Section, key: &Key<Self>, value: &Spanned<DeValue<'_>>) -> Option<Self> {
        wood(section, key, value)
    }
}

/// A wood, or a list of woods.
impl Read for Vec<Wood> {
    fn read(section: &Section, key: &Key<Self>, value: &Spanned<DeValue<'_>>) -> Option<Self> {
        if value.get_ref().as_array().is_none() {
            return wood(section, key, value).map(|wood| vec![wood]);
        }
        let list = list(section.context, key, value, key.takes)?;
        if list.is_empty() {
            let fault = Fault::new("problem-empty", format!("`{}` is an empty list", key.path));
            section.problem(key, fault, "name at least one wood");
            return None;
        }
        let found: Self = list.iter().filter_map(|value| wood(section, key, value)).collect();
        (found.len() == list.len()).then_some(found)
    }
}

fn wood(section: &Section, key: &dyn Declared, value: &Spanned<DeValue<'_>>) -> Option<Wood> {
    let text = section.context.text(key.path(), value)?;
    let catalogue = section.context.catalogue;
    let found = catalogue.wood(text.text).cloned();
    if found.is_none() {
        let names: Vec<&str> = catalogue.woods.iter().map(|wood| wood.name.as_str()).collect();
        let near = nearest(text.text, names.iter().copied());
        let help = match near {
            Some(near) => format!("did you mean `{near}`?"),
            None => format!("known: {}", names.join(", ")),
        };
        let message = format!("`{}` is not a known wood", shorten(text.text));
        let fault = Fault::new("problem-wood", message).with("written", shorten(text.text));
        let fault = fault.with("near", near.map_or(Value::from(""), |near| Value::Material(near.to_owned())));
        section.context.problem(value.span(), fault, help);
    }
    found
}
