//! Everything that the page shows of a pattern but pictures.

pub(crate) mod colours;
mod courses;
mod cuts;
mod drawings;
mod field;
mod figures;
mod findings;
mod form;
mod grips;
pub(crate) mod lengths;
mod mould;
mod outlines;
mod place;
pub(crate) mod problems;
mod usual;

use basket::message::Value;
use basket::pattern::Pattern;
use basket::stock::Kind;
use basket::{Basket, Catalogue, Colour, Draft, Material};
use words::Words;

use super::api::{Edit, Looked, MaterialName, Problem, Shown, Stock, UnitsWord, Word};
use super::compute::{Shop, at_a_glance, draft, language, words};
use super::refusal::Refusal;
use super::text::Written;
pub(crate) use drawings::stages;
pub(crate) use findings::findings;
pub(crate) use form::label_of;

use crate::own::Own;

/// What a pattern gives: the form, the findings, the cuts.
pub(crate) fn look(
    source: &str,
    tag: Option<&str>,
    units: Option<UnitsWord>,
    shop: Shop<'_>,
) -> Result<Looked, Refusal> {
    looked(source, draft(source, shop), (tag, units), shop)
}

/// The same while a hand moves: what mends a finding is not tried, and so not told.
pub(crate) fn glance(
    source: &str,
    tag: Option<&str>,
    units: Option<UnitsWord>,
    shop: Shop<'_>,
) -> Result<Looked, Refusal> {
    let mut looked = looked(source, at_a_glance(source, shop), (tag, units), shop)?;
    for finding in looked.basket.iter_mut().flat_map(|basket| &mut basket.findings) {
        finding.steps.clear();
        finding.remedy.clear();
    }
    Ok(looked)
}

fn looked(
    source: &str,
    draft: Result<Draft, Vec<Problem>>,
    (tag, units): (Option<&str>, Option<UnitsWord>),
    shop: Shop<'_>,
) -> Result<Looked, Refusal> {
    language(tag)?;
    match draft {
        Err(found) => Ok(Looked { problems: problems::told(found, tag), basket: None }),
        Ok(draft) => {
            let words = words(tag, units, draft.pattern.units)?;
            Ok(Looked { problems: Vec::new(), basket: Some(shown((source, &draft), &words, shop)) })
        }
    }
}

/// A basket as the page shows it.
pub(crate) fn shown((source, draft): (&str, &Draft), words: &Words, shop: Shop<'_>) -> Shown {
    let written = Written::of(source);
    let Draft { pattern, basket, .. } = draft;
    Shown {
        title: basket.title.clone(),
        units: pattern.units.into(),
        groups: form::groups(&written, pattern, basket, words),
        mould: mould::mould(&written, pattern, basket, words),
        lid: basket.lid.is_some(),
        courses: courses::courses(&written, pattern, basket, words),
        findings: findings(draft, &written, words),
        cuts: cuts::cuts(&draft.cuts, words),
        figures: figures::figures(draft, words),
        stages: stages(basket, words),
        drawings: drawings::drawings(basket, words),
        materials: own_materials(pattern, words, shop),
        shelf_unread: shop.own.unread,
        colours: colours::colours(&written, words),
        lengths: cuts::lengths(basket, words),
    }
}

/// Materials that the pattern adds to the catalogue, then those that the maker measured.
fn own_materials(pattern: &Pattern, words: &Words, shop: Shop<'_>) -> Vec<MaterialName> {
    let written = pattern.materials.iter();
    let is_new = |material: &&Material| written.clone().all(|own| own.name != material.name);
    let measured = shop.catalogue.materials.iter().filter(|material| shop.own.has(material)).filter(is_new);
    let measured = measured.map(|material| measured_name(material, words));
    written.clone().map(|material| material_name(material, words)).chain(measured).collect()
}

/// The catalogue, woods and colours that every pattern may name; what the maker measured is said as such.
pub(crate) fn stock(catalogue: &Catalogue, own: &Own, words: &Words) -> Stock {
    let material = |material: &Material| {
        if own.has(material) { measured_name(material, words) } else { material_name(material, words) }
    };
    Stock {
        materials: own.catalogue(catalogue).materials.iter().map(material).collect(),
        woods: catalogue
            .woods
            .iter()
            .map(|wood| Word { word: wood.name.clone(), label: words.material(&wood.name) })
            .collect(),
        colours: colours::built_in(words).collect(),
    }
}

/// A material of the shelf, with its size said to be the maker's own.
fn measured_name(material: &Material, words: &Words) -> MaterialName {
    let plain = material_name(material, words);
    let size = words.with("workshop-own-size", &[("size", Value::Name(plain.size))]);
    MaterialName { size, ..plain }
}

fn material_name(material: &Material, words: &Words) -> MaterialName {
    let (width, thickness) = (material.width, material.thickness);
    let size = if width == thickness {
        lengths::both(words, width)
    } else {
        format!("{} × {}", lengths::both(words, width), lengths::both(words, thickness))
    };
    MaterialName {
        name: material.name.clone(),
        label: words.material(&material.name),
        kind: material.kind.words().to_owned(),
        kind_label: words.name(material.kind),
        size,
        width_mm: width.to_mm(),
        thickness_mm: thickness.to_mm(),
        round: matches!(material.kind, Kind::RoundReed | Kind::Pin | Kind::Rivet | Kind::Burr),
        hex: natural(material.kind).to_hex(),
    }
}

/// About the colour of a kind of material, undyed (own choice, by eye).
fn natural(kind: Kind) -> Colour {
    let hex = match kind {
        Kind::ChairCane | Kind::BinderCane => "#d9b56a",
        Kind::Splint => "#cfae7d",
        Kind::Pin => "#c9a54a",
        Kind::Rivet | Kind::Burr => "#b8704a",
        _ => return Colour::natural(),
    };
    Colour::hex("", hex).unwrap_or_else(Colour::natural)
}

/// What to do to write down courses that Stavewright chose; nothing where they are written.
pub(crate) fn take_courses(
    written: &Written,
    pattern: &Pattern,
    basket: &Basket,
    words: &Words,
) -> Vec<Edit> {
    courses::courses(written, pattern, basket, words).take
}
