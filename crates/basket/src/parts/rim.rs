//! The two-piece split rim: hoops, scarfs and where they lie.
//!
//! Both hoops turn their flat face to the staves and stand on the last row. Lengths are taken at the
//! neutral axis, which lies at the centroid of the section; a curve that runs at a distance `d`
//! outside any convex outline is `2πd` longer than the outline (Jakob Steiner, 1840), so all
//! lengths follow from the outline's girth divided by 2π, here called its radius.

use crate::pattern::keys;
use std::f64::consts::{PI, TAU};

use crate::fittings::Ears;
use crate::form::Across;
use crate::making::Making;
use crate::measure::Length;
use crate::message::Message;
use crate::parts::seat::Seat;
use crate::pattern::{EarAxis, HoopWay, RimPattern, Word};
use crate::stock::{Kind, Material};
use crate::uprights::{Uprights, short_way};

/// Usual stock of the hoops (common practice).
const USUAL_STOCK: &str = "half round reed 3/8 in";
/// Usual lap, and that of a small rim (common practice; a basket maker's lashing tutorial has 2 to 3 in).
const LAPS: [Length; 2] = [Length::inches(4.0), Length::inches(3.0)];
/// Below this a rim is small (common practice).
const SMALL: Length = Length::inches(5.0);
/// A lap is kept this far from an ear where there is room (common practice).
const CLEAR_OF_EAR: Length = Length::inches(0.5);
/// The loops of a hinge stand no further apart than this share of the round.
pub(crate) const MOST_APART: f64 = 1.0 / 12.0;
/// A scarf beside a hinge lies no further from it than this share of the round: beyond come the tight ends.
const MOST_BESIDE: f64 = 0.2;
/// Lap as a multiple of the hoop's thickness: glued scarfs slope 1 in 8 to 1 in 12 (Forest Products
/// Laboratory, Wood Handbook, FPL-GTR-190, 2010, scarf joints).
const LAP_TIMES: f64 = 10.0;
/// Keeps divisions by a length finite.
const LEAST: Length = Length::mm(1e-6);

/// The rim as computed.
#[derive(Clone, Debug, PartialEq)]
pub struct Rim {
    /// How the hoops come to be.
    pub hoops: HoopWay,
    /// Lower edge of the hoops, along the mould.
    pub along: Length,
    /// Height of the hoops on the wall.
    pub height: Length,
    /// Girth of the staves' inner faces at the middle of the rim.
    pub girth: Length,
    /// Smallest radius round these.
    pub tightest: Length,
    /// From side to side of these.
    pub across: Across,
    /// Thickness through both hoops and the stave.
    pub stack: Length,
    /// The hoop outside the staves.
    pub outer: Hoop,
    /// The hoop inside the staves.
    pub inner: Hoop,
}

/// One hoop.
#[derive(Clone, Debug, PartialEq)]
pub struct Hoop {
    /// Its stock.
    pub stock: Material,
    /// From side to side at its flat face: of the outer hoop inside, of the inner one outside.
    pub across: Across,
    /// Length once round, at the neutral axis.
    pub neutral: Length,
    /// Length to cut, with the lap.
    pub cut: Length,
    /// Strain of its outer fibre when bent to the rim.
    pub bend_strain: f64,
    /// The scarf that closes it.
    pub scarf: Scarf,
}

/// A long tapered overlap that closes a hoop.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scarf {
    /// Length of the lap.
    pub lap: Length,
    /// Middle of the scarf, as a fraction of the way round.
    pub turn: f64,
    /// Stave nearest to its start.
    pub from_stave: u32,
    /// Stave nearest to its end.
    pub to_stave: u32,
    /// Distance along the rim from the scarf's nearer end to the nearest ear; none without ears.
    pub clear_of_ear: Option<Length>,
    /// Distance along the rim between this scarf and the other hoop's.
    pub clear_of_other: Length,
}

/// Stock of both hoops.
#[derive(Clone, Debug, PartialEq)]
pub struct HoopStocks {
    /// Of the outer hoop.
    pub outer: Material,
    /// Of the inner hoop.
    pub inner: Material,
}

/// What stands at the rim, so that a scarf keeps clear of it.
#[derive(Clone, Copy, Debug)]
pub enum Taken<'a> {
    /// Nothing.
    Free,
    /// Ears, or the ends of a fixed handle.
    Ears(&'a Ears),
    /// Hinge and latch of a lid, in the middle of both long sides.
    Hinge,
}

impl<'a> Taken<'a> {
    const fn ears(self) -> Option<&'a Ears> {
        match self {
            Self::Ears(ears) => Some(ears),
            Self::Free | Self::Hinge => None,
        }
    }
}

impl Rim {
    /// The rim on its seat.
    pub fn of(
        pattern: &RimPattern,
        stocks: HoopStocks,
        (seat, uprights, taken): (Seat, &Uprights, Taken<'_>),
        making: &mut Making<'_>,
    ) -> Self {
        let ears = taken.ears();
        let hoops = pattern.hoops.unwrap_or_else(|| choose_way(making));
        let HoopStocks { outer, inner } = stocks;
        let thicker = outer.thickness.max(inner.thickness);
        let lap = pattern.lap.unwrap_or_else(|| choose_lap((thicker, seat.girth, ears), making));
        let scarfs = Scarfs { lap, girth: seat.girth, turns: scarf_turns((lap, seat.girth), taken) };
        let [outer_turn, inner_turn] = scarfs.turns;
        let stave = uprights.thickness;
        Self {
            hoops,
            along: seat.along,
            height: outer.width,
            girth: seat.girth,
            tightest: seat.tightest,
            across: seat.across,
            stack: outer.thickness + stave + inner.thickness,
            outer: Hoop::new(
                outer_neutral(seat.girth, stave, outer.centroid()),
                outer_strain(&outer, seat.tightest + stave),
                scarfs.scarf(outer_turn, uprights, ears),
                outer,
            )
            .across(seat.across.grown(stave)),
            inner: Hoop::new(
                inner_neutral(seat.girth, inner.centroid()),
                inner_strain(&inner, seat.tightest),
                scarfs.scarf(inner_turn, uprights, ears),
                inner,
            )
            .across(seat.across),
        }
    }

    /// Girth of the staves' inner faces at the middle of the rim, over 2π.
    pub fn radius(&self) -> Length {
        self.girth / TAU
    }

    /// Girth so far outside the staves' inner faces, at the middle of the rim (Steiner, 1840).
    pub fn girth_at(&self, outward: Length) -> Length {
        (self.girth + TAU * outward).max(Length::ZERO)
    }

    /// Radius of the outer hoop's outer face.
    pub fn outer_radius(&self, uprights: &Uprights) -> Length {
        self.radius() + uprights.thickness + self.outer.stock.thickness
    }

    /// Radius of the inner hoop's inner face.
    pub fn inner_radius(&self) -> Length {
        self.radius() - self.inner.stock.thickness
    }
}

impl Hoop {
    fn new(neutral: Length, bend_strain: f64, scarf: Scarf, stock: Material) -> Self {
        Self {
            stock,
            across: Across::round(Length::ZERO),
            neutral,
            cut: neutral + scarf.lap,
            bend_strain,
            scarf,
        }
    }

    fn across(self, across: Across) -> Self {
        Self { across, ..self }
    }
}

impl HoopStocks {
    /// The stock that a pattern names, else the usual one; the inner hoop is of the outer's unless the
    /// pattern says otherwise.
    pub fn of(pattern: &RimPattern, making: &mut Making<'_>) -> Self {
        let outer = pattern.stock.clone().unwrap_or_else(|| choose_stock(making));
        let inner = pattern.inner.clone().unwrap_or_else(|| outer.clone());
        Self { outer, inner }
    }
}

/// Neutral length of the inner hoop, whose centroid lies `centroid` inside the staves' inner faces.
pub fn inner_neutral(girth: Length, centroid: Length) -> Length {
    (girth - TAU * centroid).max(Length::ZERO)
}

/// Neutral length of the outer hoop, whose centroid lies `centroid` outside staves of this thickness.
pub fn outer_neutral(girth: Length, stave_thickness: Length, centroid: Length) -> Length {
    girth + TAU * (stave_thickness + centroid)
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

fn choose_stock(making: &mut Making<'_>) -> Material {
    let catalogue = making.catalogue;
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
    let reason = Message::new(id).with("width", stock.width).with("thickness", stock.thickness);
    making.chose(keys::rim::STOCK.path, stock.name.as_str(), reason);
    stock
}

fn choose_way(making: &mut Making<'_>) -> HoopWay {
    making.chose(keys::rim::HOOPS.path, HoopWay::Rings.word(), Message::new("choice-rim-hoops"));
    HoopWay::Rings
}

/// The usual lap, less where it would come to an ear.
fn choose_lap((thickness, girth, ears): (Length, Length, Option<&Ears>), making: &mut Making<'_>) -> Length {
    let across = girth / PI;
    let [large, small] = LAPS;
    let usual = if across < SMALL { small } else { large };
    let room = girth / 2.0 - ears.map_or(Length::ZERO, |ears| ears.width) - CLEAR_OF_EAR * 2.0;
    let lap = usual.min(room.max(thickness * LAP_TIMES));
    let id = match lap == usual {
        true if across < SMALL => "choice-rim-lap-small",
        true => "choice-rim-lap",
        false if ears.is_some_and(|ears| ears.of_handle) => "choice-rim-lap-fits-ends",
        false => "choice-rim-lap-fits",
    };
    let reason = Message::new(id).with("usual", usual).with("small", SMALL);
    making.chose(keys::rim::LAP.path, lap, reason);
    lap
}

/// Middles of the outer and the inner scarf, on opposite sides: half way between the ears, and off a hinge. Where these stand in the
/// middle of the long sides, half way would be the tight ends, where a lap is hardest to bend and opens first; there
/// each scarf begins beside an ear.
fn scarf_turns((lap, girth): (Length, Length), taken: Taken<'_>) -> [f64; 2] {
    let Taken::Ears(ears) = taken else {
        let beside = (lap / 2.0 + CLEAR_OF_EAR) / girth.max(LEAST) + MOST_APART / 2.0;
        let off = if matches!(taken, Taken::Hinge) { beside.min(MOST_BESIDE) } else { 0.0 };
        return [0.25, 0.75].map(|side| side + off);
    };
    let [first, second] = ears.each;
    let half = (second.turn - first.turn).rem_euclid(1.0) / 2.0;
    let beside = ((lap + ears.width) / 2.0 + CLEAR_OF_EAR) / girth.max(LEAST);
    let turns = match ears.axis {
        Some(EarAxis::Short) => [first, second].map(|ear| ear.turn + beside.min(half)),
        _ => [first.turn + half, first.turn + half + 0.5],
    };
    turns.map(|turn| turn.rem_euclid(1.0))
}

/// What both scarfs share.
struct Scarfs {
    lap: Length,
    girth: Length,
    turns: [f64; 2],
}

impl Scarfs {
    fn scarf(&self, turn: f64, uprights: &Uprights, ears: Option<&Ears>) -> Scarf {
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
            from_stave: uprights.nearest(turn - half_turn),
            to_stave: uprights.nearest(turn + half_turn),
            clear_of_ear,
            clear_of_other: along(outer, inner) - self.lap,
        }
    }
}
