//! The two-piece split rim: hoops, scarfs and where they lie.
//!
//! Both hoops turn their flat face to the staves and stand on the last row. Lengths are taken at the
//! neutral axis, which lies at the centroid of the section; a curve that runs at a distance `d`
//! outside any convex outline is `2πd` longer than the outline (Jakob Steiner, 1840), so all
//! lengths follow from the outline's girth divided by 2π, here called its radius.

use std::f64::consts::TAU;

use serde::Serialize;

use crate::choice::Choice;
use crate::fittings::Ears;
use crate::measure::Length;
use crate::message::{Message, Value};
use crate::mould::Mould;
use crate::pattern::RimPattern;
use crate::staves::Staves;
use crate::stock::{self, Catalogue, Kind, Material};

/// Usual stock of the hoops (common practice).
const USUAL_STOCK: &str = "half round reed 3/8 in";
/// Lap as a multiple of the hoop's thickness: glued scarfs slope 1 in 8 to 1 in 12 (Forest Products
/// Laboratory, Wood Handbook, FPL-GTR-190, 2010, scarf joints).
const LAP_TIMES: f64 = 10.0;
/// Shortest and longest lap chosen (common practice; a basket maker's lashing tutorial has 2 to 3 in).
const LAP_RANGE: (Length, Length) = (Length::inches(2.0), Length::inches(4.0));
/// Keeps divisions by a length finite.
const LEAST: Length = Length::mm(1e-6);

/// The rim as computed.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Rim {
    /// Lower edge of the hoops, along the mould.
    #[serde(rename = "along_mm")]
    pub along: Length,
    /// Height of the hoops on the wall.
    #[serde(rename = "height_mm")]
    pub height: Length,
    /// Radius of the staves' inner face at the middle of the rim.
    #[serde(rename = "radius_mm")]
    pub radius: Length,
    /// Thickness through both hoops and the stave.
    #[serde(rename = "stack_mm")]
    pub stack: Length,
    /// The hoop outside the staves.
    pub outer: Hoop,
    /// The hoop inside the staves.
    pub inner: Hoop,
}

/// One hoop.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Hoop {
    /// Its stock.
    #[serde(serialize_with = "stock::name_only")]
    pub stock: Material,
    /// Length once round, at the neutral axis.
    #[serde(rename = "neutral_mm")]
    pub neutral: Length,
    /// Length to cut, with the lap.
    #[serde(rename = "cut_mm")]
    pub cut: Length,
    /// Strain of its outer fibre when bent to the rim.
    pub bend_strain: f64,
    /// The scarf that closes it.
    pub scarf: Scarf,
}

/// A long tapered overlap that closes a hoop.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Scarf {
    /// Length of the lap.
    #[serde(rename = "lap_mm")]
    pub lap: Length,
    /// Middle of the scarf, as a fraction of the way round.
    pub turn: f64,
    /// Stave nearest to its start.
    pub from_stave: u32,
    /// Stave nearest to its end.
    pub to_stave: u32,
    /// Distance along the rim from the scarf's nearer end to the nearest ear; none without ears.
    #[serde(rename = "clear_of_ear_mm")]
    pub clear_of_ear: Option<Length>,
    /// Distance along the rim between this scarf and the other hoop's.
    #[serde(rename = "clear_of_other_mm")]
    pub clear_of_other: Length,
}

impl Rim {
    /// The rim on a mould. The hoops stand on the last row, whose top lies `top` along the mould.
    pub fn of(
        pattern: &RimPattern,
        stocks: (Material, Material),
        mould: &Mould,
        staves: &Staves,
        top: Length,
        ears: Option<&Ears>,
        choices: &mut Vec<Choice>,
    ) -> Self {
        let radius = middle_radius(mould, top, &stocks.0);
        Self::around(pattern, stocks, top, radius, staves, ears, choices)
    }

    /// The rim where its lower edge lies `along` the mould and the staves' inner face has this radius
    /// at the middle of its height.
    pub fn around(
        pattern: &RimPattern,
        stocks: (Material, Material),
        along: Length,
        radius: Length,
        staves: &Staves,
        ears: Option<&Ears>,
        choices: &mut Vec<Choice>,
    ) -> Self {
        let (outer, inner) = stocks;
        let thicker = outer.thickness.max(inner.thickness);
        let lap = pattern.lap.unwrap_or_else(|| choose_lap(thicker, choices));
        let scarfs = Scarfs { lap, girth: TAU * radius, turns: scarf_turns(ears) };
        let flat = radius + staves.thickness;
        let [outer_turn, inner_turn] = scarfs.turns;
        Self {
            along,
            height: outer.width,
            radius,
            stack: outer.thickness + staves.thickness + inner.thickness,
            outer: Hoop::new(
                outer_neutral(radius, staves.thickness, outer.centroid()),
                outer_strain(&outer, flat),
                scarfs.scarf(outer_turn, staves, ears),
                outer,
            ),
            inner: Hoop::new(
                inner_neutral(radius, inner.centroid()),
                inner_strain(&inner, radius),
                scarfs.scarf(inner_turn, staves, ears),
                inner,
            ),
        }
    }

    /// Radius of the outer hoop's outer face.
    pub fn outer_radius(&self, staves: &Staves) -> Length {
        self.radius + staves.thickness + self.outer.stock.thickness
    }

    /// Radius of the inner hoop's inner face.
    pub fn inner_radius(&self) -> Length {
        self.radius - self.inner.stock.thickness
    }
}

impl Hoop {
    fn new(neutral: Length, bend_strain: f64, scarf: Scarf, stock: Material) -> Self {
        Self { stock, neutral, cut: neutral + scarf.lap, bend_strain, scarf }
    }
}

/// Stock of the outer and the inner hoop.
pub fn stocks(
    pattern: &RimPattern,
    catalogue: &Catalogue,
    choices: &mut Vec<Choice>,
) -> (Material, Material) {
    let outer = pattern.stock.clone().unwrap_or_else(|| choose_stock(catalogue, choices));
    let inner = pattern.inner.clone().unwrap_or_else(|| outer.clone());
    (outer, inner)
}

/// Radius of the mould at the middle of a rim that stands on a last row whose top lies `top` along it.
pub fn middle_radius(mould: &Mould, top: Length, outer: &Material) -> Length {
    mould.profile.at(top + outer.width / 2.0).radius
}

/// Neutral length of the inner hoop: `2π(r − c)`, where `c` is the centroid's distance from the flat.
pub fn inner_neutral(radius: Length, centroid: Length) -> Length {
    TAU * (radius - centroid).max(Length::ZERO)
}

/// Neutral length of the outer hoop: `2π(r + t + c)` over staves of thickness `t`.
pub fn outer_neutral(radius: Length, stave_thickness: Length, centroid: Length) -> Length {
    TAU * (radius + stave_thickness + centroid)
}

/// Strain of the outer fibre of a hoop whose flat lies inside, on this radius: the distance from the
/// neutral axis to the crown over the radius of the neutral axis (plane sections stay plane).
pub fn outer_strain(stock: &Material, flat_radius: Length) -> f64 {
    let centroid = stock.centroid();
    (stock.thickness - centroid) / (flat_radius + centroid).max(LEAST)
}

/// Strain of the outer fibre of a hoop whose flat lies outside, on this radius.
pub fn inner_strain(stock: &Material, flat_radius: Length) -> f64 {
    let centroid = stock.centroid();
    centroid / (flat_radius - centroid).max(LEAST)
}

/// Share of its bend that an elastic, then plastic strip keeps when it is let go:
/// `1 − 3x + 4x³` with `x = R·Y/(E·t)` from bend radius, yield stress, stiffness and thickness
/// (F. J. Gardiner, The Springback of Metals, Transactions of the ASME 79, 1957).
/// Beyond `x = 1/2` nothing yields and the strip straightens altogether.
pub fn springback(x: f64) -> f64 {
    let x = x.clamp(0.0, 0.5);
    1.0 - 3.0 * x + 4.0 * x.powi(3)
}

/// The short way from one place on the rim to another in turns, positive toward higher numbers.
pub(crate) fn short_way(from: f64, to: f64) -> f64 {
    (to - from) - (to - from).round()
}

fn choose_stock(catalogue: &Catalogue, choices: &mut Vec<Choice>) -> Material {
    let usual_width = Length::inches(0.375);
    let nearest = || {
        let half_rounds = catalogue.of_kind(Kind::HalfRoundReed);
        let off = |material: &Material| (material.width - usual_width).abs().to_mm();
        half_rounds.min_by(|a, b| off(a).total_cmp(&off(b)))
    };
    let found = catalogue.material(USUAL_STOCK).or_else(nearest).cloned();
    let id = if found.is_some() { "choice-rim-stock" } else { "choice-rim-stock-none" };
    let stock = found
        .unwrap_or_else(|| Material::bare(USUAL_STOCK, Kind::HalfRoundReed, usual_width, usual_width / 2.0));
    choices.push(Choice {
        key: "rim.stock",
        value: Value::Name(stock.name.clone()),
        reason: Message::new(id).with("width", stock.width).with("thickness", stock.thickness),
    });
    stock
}

fn choose_lap(thickness: Length, choices: &mut Vec<Choice>) -> Length {
    let (shortest, longest) = LAP_RANGE;
    let lap = (thickness * LAP_TIMES).max(shortest).min(longest);
    choices.push(Choice {
        key: "rim.lap",
        value: lap.into(),
        reason: Message::new("choice-rim-lap")
            .with("thickness", thickness)
            .with("times", Value::Number(lap / thickness.max(LEAST), 0))
            .with("shortest", shortest)
            .with("longest", longest),
    });
    lap
}

/// Middles of the outer and the inner scarf: half way between the ears, on opposite sides.
fn scarf_turns(ears: Option<&Ears>) -> [f64; 2] {
    let Some(ears) = ears else { return [0.25, 0.75] };
    let [first, second] = ears.each;
    let half = (second.turn - first.turn).rem_euclid(1.0) / 2.0;
    [(first.turn + half).rem_euclid(1.0), (first.turn + half + 0.5).rem_euclid(1.0)]
}

/// What both scarfs share.
struct Scarfs {
    lap: Length,
    girth: Length,
    turns: [f64; 2],
}

impl Scarfs {
    fn scarf(&self, turn: f64, staves: &Staves, ears: Option<&Ears>) -> Scarf {
        let half_turn = self.lap / self.girth.max(LEAST) / 2.0;
        let [outer, inner] = self.turns;
        let along = |from: f64, to: f64| self.girth * short_way(from, to).abs();
        let clear_of_ear = ears.map(|ears| {
            let [first, second] = ears.each.map(|ear| along(turn, ear.turn));
            first.min(second) - (self.lap + ears.width) / 2.0
        });
        Scarf {
            lap: self.lap,
            turn,
            from_stave: staves.nearest(turn - half_turn),
            to_stave: staves.nearest(turn + half_turn),
            clear_of_ear,
            clear_of_other: along(outer, inner) - self.lap,
        }
    }
}
