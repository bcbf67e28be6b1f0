//! The cut list, what it adds up to, and what has to be soaked.

use basket::cuts::Cut;
use basket::message::Value;
use basket::{Basket, Length, Material};
use serde::Serialize;

use crate::scribe::{Scribe, name};

#[derive(Serialize)]
pub(crate) struct CutLine {
    piece: String,
    purpose: String,
    material: String,
    count: u32,
    spares: u32,
    length: Vec<String>,
    shape: Vec<String>,
}

#[derive(Serialize)]
pub(crate) struct Supply {
    material: String,
    total: String,
    sold: String,
}

#[derive(Serialize)]
pub(crate) struct Soak {
    material: String,
    time: String,
    pieces: String,
}

pub(crate) fn cuts(basket: &Basket, scribe: &Scribe<'_>) -> Vec<CutLine> {
    basket.cuts.iter().map(|cut| line(cut, scribe)).collect()
}

fn line(cut: &Cut, scribe: &Scribe<'_>) -> CutLine {
    let width = cut.width.map(|width| scribe.text("width", &[("width", name(scribe.fine(width)))]));
    CutLine {
        piece: scribe.words.term(cut.piece),
        purpose: scribe.words.say(&cut.purpose),
        material: scribe.words.value(&cut.material),
        count: cut.count,
        spares: cut.spares,
        length: cut.length.map(|length| scribe.lines(length)).unwrap_or_default(),
        shape: width.into_iter().chain(cut.shape.as_ref().map(|shape| scribe.words.say(shape))).collect(),
    }
}

/// What is needed of each stock, in the order of the cut list.
pub(crate) fn supplies(basket: &Basket, scribe: &Scribe<'_>) -> Vec<Supply> {
    let supply = |material: &str| {
        let stock = known(basket).find(|known| known.name == material)?;
        let total = total(basket, material, scribe);
        Some(Supply { material: scribe.words.material(material), total, sold: sold(stock, scribe) })
    };
    materials(basket).into_iter().filter_map(supply).collect()
}

/// What has to be soaked, and which pieces are made of it.
pub(crate) fn soaks(basket: &Basket, scribe: &Scribe<'_>) -> Vec<Soak> {
    let soak = |material: &str| {
        let (from, to) = known(basket).find(|known| known.name == material)?.soak_minutes?;
        let pieces = basket.cuts.iter().filter(|cut| is_of(cut, material));
        let pieces: Vec<_> = pieces.map(|cut| scribe.words.term(cut.piece)).collect();
        let range = [("from", name(scribe.minutes(from))), ("to", name(scribe.minutes(to)))];
        Some(Soak {
            material: scribe.words.material(material),
            time: scribe.text("range", &range),
            pieces: pieces.join(", "),
        })
    };
    materials(basket).into_iter().filter_map(soak).collect()
}

fn materials(basket: &Basket) -> Vec<&str> {
    let mut names: Vec<&str> = Vec::new();
    for cut in &basket.cuts {
        if let Value::Material(material) = &cut.material
            && !names.contains(&material.as_str())
        {
            names.push(material);
        }
    }
    names
}

fn is_of(cut: &Cut, material: &str) -> bool {
    matches!(&cut.material, Value::Material(name) if name == material)
}

fn total(basket: &Basket, material: &str, scribe: &Scribe<'_>) -> String {
    let cuts = || basket.cuts.iter().filter(|cut| is_of(cut, material));
    let length: Length = cuts().filter_map(|cut| cut.total).sum();
    if length > Length::ZERO {
        return scribe.line(length);
    }
    let pieces: u32 = cuts().map(|cut| cut.count.saturating_add(cut.spares)).fold(0, u32::saturating_add);
    scribe.text("pieces", &[("count", pieces.into())])
}

fn sold(material: &Material, scribe: &Scribe<'_>) -> String {
    let put_up = &material.put_up;
    let unit = ("unit", name(scribe.words.put_up(&put_up.unit)));
    match put_up.length {
        Some(length) => scribe.text("sold-by-length", &[unit, ("length", name(scribe.line(length)))]),
        None => scribe.text("sold-by", &[unit]),
    }
}

/// The materials of which the basket knows more than the name.
fn known(basket: &Basket) -> impl Iterator<Item = &Material> {
    let always = [
        &basket.body.staves().stock,
        &basket.body.rim().outer.stock,
        &basket.body.rim().inner.stock,
        &basket.body.lashing().weaver,
        &basket.body.pins().stock,
    ];
    let weavers = basket.body.weave.courses.iter().flat_map(|course| &course.weavers);
    let weavers = weavers.map(|weaver| &weaver.material);
    let filler = basket.body.filler().iter().map(|filler| &filler.stock);
    let rivet = basket.handle.iter().flat_map(|handle| [Some(&handle.rivet), handle.burr.as_ref()]).flatten();
    always.into_iter().chain(weavers).chain(filler).chain(rivet)
}
