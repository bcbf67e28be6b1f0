//! The filler that covers the stave tips between the hoops.

use crate::pattern::keys;
use std::f64::consts::TAU;

use crate::fittings::Ears;
use crate::making::Making;
use crate::measure::Length;
use crate::message::Message;
use crate::pattern::FillerPattern;
use crate::rim::Rim;
use crate::stock::{Kind, Material};
use crate::uprights::Uprights;

/// How much thicker than the staves a filler is, to cover their tips and rest on both hoops
/// (common practice).
const COVERS: f64 = 1.25;
/// The usual filler (common practice).
const USUAL: &str = "cane common";
const CANES: &[Kind] = &[Kind::ChairCane, Kind::BinderCane];
const REEDS: &[Kind] = &[Kind::RoundReed];

/// The filler as computed.
#[derive(Clone, Debug, PartialEq)]
pub struct Filler {
    /// Its stock.
    pub stock: Material,
    /// The pieces, between the ears or once round.
    pub pieces: Vec<FillerPiece>,
    /// Length of all pieces.
    pub length: Length,
}

/// One piece of filler.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FillerPiece {
    /// Length to cut.
    pub length: Length,
    /// Where it begins, as a fraction of the way round.
    pub from_turn: f64,
    /// Where it ends, as a fraction of the way round; smaller than `from_turn` when the piece runs
    /// on past the first stave.
    pub to_turn: f64,
}

impl Filler {
    /// The filler, or none where the pattern wants none or there is nothing to make it from.
    pub fn of(
        pattern: &FillerPattern,
        (rim, uprights, ears): (&Rim, &Uprights, Option<&Ears>),
        making: &mut Making<'_>,
    ) -> Option<Self> {
        let stock = match pattern {
            FillerPattern::None => return None,
            FillerPattern::Stock(stock) => stock.clone(),
            FillerPattern::Choose => choose_stock(uprights.thickness, making)?,
        };
        let round = filler_round(rim.radius(), uprights.thickness);
        let pieces = pieces(round, ears);
        Some(Self { stock, length: pieces.iter().map(|piece| piece.length).sum(), pieces })
    }
}

/// Way round on the middle of the staves: `2π(r + t/2)`.
pub fn filler_round(radius: Length, stave_thickness: Length) -> Length {
    TAU * (radius + stave_thickness / 2.0)
}

fn pieces(round: Length, ears: Option<&Ears>) -> Vec<FillerPiece> {
    let Some(ears) = ears else {
        return vec![FillerPiece { length: round, from_turn: 0.0, to_turn: 1.0 }];
    };
    let half_ear = ears.width / round.max(Length::mm(1e-6)) / 2.0;
    let [first, second] = ears.each.map(|ear| ear.turn);
    [(first, second), (second, first)]
        .into_iter()
        .map(|(from, to)| FillerPiece {
            length: (round * (to - from).rem_euclid(1.0) - ears.width).max(Length::ZERO),
            from_turn: (from + half_ear).rem_euclid(1.0),
            to_turn: (to - half_ear).rem_euclid(1.0),
        })
        .collect()
}

/// Common cane where it covers the stave tips, else the narrowest cane, then the thinnest round reed that
/// does, else the widest of all.
fn choose_stock(stave: Length, making: &mut Making<'_>) -> Option<Material> {
    let catalogue = making.catalogue;
    let of = |kinds: &'static [Kind]| catalogue.materials.iter().filter(|it| kinds.contains(&it.kind));
    let covers = |material: &&Material| material.width >= stave * COVERS;
    let by_width = |a: &&Material, b: &&Material| a.width.to_mm().total_cmp(&b.width.to_mm());
    let usual = catalogue.material(USUAL).filter(covers);
    let narrowest = |kinds| of(kinds).filter(covers).min_by(by_width);
    let found = usual
        .or_else(|| narrowest(CANES))
        .or_else(|| narrowest(REEDS))
        .or_else(|| of(CANES).chain(of(REEDS)).max_by(by_width))
        .cloned();
    let Some(stock) = &found else {
        making.chose(keys::FILLER.path, "none", Message::new("choice-filler-none").with("stave", stave));
        return None;
    };
    let id = if usual.is_some() { "choice-filler-common" } else { "choice-filler" };
    let reason = Message::new(id).with("width", stock.width).with("stave", stave);
    making.chose(keys::filler::STOCK.path, stock.name.as_str(), reason);
    found
}
