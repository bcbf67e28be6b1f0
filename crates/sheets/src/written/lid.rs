//! How a lid sits on its basket; the lid itself is a vessel like any other.

use basket::Length;
use basket::form::Across;
use basket::lid::{Collar, Hinge, HingePlace, Ledge, Lid, LidSeat, Over};
use basket::message::Term;
use serde::Serialize;

use super::measure::Mm;

/// How a lid sits on its basket.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(crate) struct LidFit {
    /// How it sits, such as `drop-in`.
    fit: String,
    /// What it is woven over: `mould`, or `flat` of a board.
    way: String,
    /// Room all round between what goes in and the opening.
    clearance_mm: Mm,
    /// The room that is wanted.
    wanted_mm: Mm,
    /// Length of the opening within a lashed rim: the basket's, or that of a cap.
    opening_length_mm: Mm,
    /// Its width.
    opening_width_mm: Mm,
    /// Length of the lid over its lashed rim.
    length_mm: Mm,
    /// Its width.
    width_mm: Mm,
    /// How far its top lies above the top of the basket's rim.
    rises_mm: Mm,
    /// The ledge within the basket, or `null`.
    ledge: Option<LedgeFile>,
    /// How far a cap reaches down over the rim, or `null`.
    down_mm: Option<Mm>,
    /// The collar of a lid that lies flush on the rim, or `null`.
    collar: Option<CollarFile>,
    /// What one lifts it by, such as `knob`.
    lift: String,
    /// Hinge and latch, or `null`.
    hinge: Option<HingeFile>,
}

/// The ledge on which a lid lies.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct LedgeFile {
    /// Name of what its rings are bent from.
    stock: String,
    /// Lengths of its rings, the outermost first, with the lap.
    rings_mm: Vec<Mm>,
    /// The lap of each.
    lap_mm: Mm,
    /// Its lower edge, along the basket's wall.
    along_mm: Mm,
    /// Length within it.
    inside_length_mm: Mm,
    /// Width within it.
    inside_width_mm: Mm,
    /// How far the lid lies on it, pushed to the other side.
    overlap_mm: Mm,
}

/// The collar in a lid's rim.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct CollarFile {
    /// Name of what it is bent from.
    stock: String,
    /// Length to cut, with the lap.
    cut_mm: Mm,
    /// The lap.
    lap_mm: Mm,
    /// Length over it.
    length_mm: Mm,
    /// Width over it.
    width_mm: Mm,
    /// How far it reaches into the basket.
    down_mm: Mm,
    /// How far the lid's rim stands out over the basket's; negative where it stands back.
    proud_mm: Mm,
}

/// Hinge and latch of a lid.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct HingeFile {
    /// Where it is, such as `side`.
    at: String,
    /// Way along the rim from the first loop to the second.
    apart_mm: Mm,
    /// How far the rim curves out between them.
    bulge_mm: Mm,
    /// Where the loops go round both rims.
    loops: Vec<HingePlaceFile>,
    /// Where the latch is.
    latch: HingePlaceFile,
}

/// A gap of the basket and the gap of the lid that lies over it, by the staves on both sides.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct HingePlaceFile {
    /// Staves of the basket.
    body: [u32; 2],
    /// Staves of the lid.
    lid: [u32; 2],
}

impl From<&Lid> for LidFit {
    fn from(lid: &Lid) -> Self {
        let Lid { vessel: _, mould: _, seat, clearance, wanted, opening, across, rises, lift, hinge } = lid;
        let [opening_length_mm, opening_width_mm] = sides(opening);
        let [length_mm, width_mm] = sides(across);
        let (mut ledge, mut down_mm, mut collar) = (None, None, None);
        match seat {
            LidSeat::Ledge(own) => ledge = Some(own.into()),
            LidSeat::Over(Over { along: _, down }) => down_mm = Some(down.into()),
            LidSeat::Collar(own) => collar = Some(own.into()),
        }
        Self {
            fit: word(seat.fit().term(), "lid-fit-"),
            way: word(lid.way().term(), "lid-way-"),
            clearance_mm: clearance.into(),
            wanted_mm: wanted.into(),
            opening_length_mm,
            opening_width_mm,
            length_mm,
            width_mm,
            rises_mm: rises.into(),
            ledge,
            down_mm,
            collar,
            lift: word(lift.term(), "lid-lift-"),
            hinge: hinge.as_ref().map(HingeFile::from),
        }
    }
}

impl From<&Ledge> for LedgeFile {
    fn from(Ledge { stock, rings, lap, along, overlap, inside }: &Ledge) -> Self {
        let [inside_length_mm, inside_width_mm] = sides(inside);
        Self {
            stock: stock.name.clone(),
            rings_mm: rings.iter().map(|ring: &Length| ring.into()).collect(),
            lap_mm: lap.into(),
            along_mm: along.into(),
            inside_length_mm,
            inside_width_mm,
            overlap_mm: overlap.into(),
        }
    }
}

impl From<&Collar> for CollarFile {
    fn from(Collar { stock, length, lap, outside, down, proud }: &Collar) -> Self {
        let [length_mm, width_mm] = sides(outside);
        Self {
            stock: stock.name.clone(),
            cut_mm: length.into(),
            lap_mm: lap.into(),
            length_mm,
            width_mm,
            down_mm: down.into(),
            proud_mm: proud.into(),
        }
    }
}

impl From<&Hinge> for HingeFile {
    fn from(Hinge { at, apart, bulge, loops, latch }: &Hinge) -> Self {
        let place = |HingePlace { body, lid }: &HingePlace| HingePlaceFile { body: *body, lid: *lid };
        Self {
            at: word(at.term(), "lid-hinge-"),
            apart_mm: apart.into(),
            bulge_mm: bulge.into(),
            loops: loops.iter().map(place).collect(),
            latch: place(latch),
        }
    }
}

fn sides(across: &Across) -> [Mm; 2] {
    [across.length.into(), across.width.into()]
}

fn word(term: &str, prefix: &str) -> String {
    term.trim_start_matches(prefix).to_owned()
}
