//! Pins and ears.

use basket::fittings;
use serde::Serialize;

use super::measure::{Degrees, Mm};
use super::vocabulary::{EarAxis, EarMaterial, EarPlacing, EarWay, Every};

/// The pins through hoops and staves.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(crate) struct Pins {
    /// At each or every other stave.
    every: Every,
    /// How many in all.
    count: u32,
    /// All staves that are pinned, in order round the rim.
    staves: Vec<u32>,
    /// The pins through hoops and staves.
    others: PinSet,
    /// The pins that hold the ears: each goes through hoop, ear, stave and hoop. `null` without ears.
    ears: Option<PinSet>,
}

/// Pins that are alike.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct PinSet {
    /// The pin.
    stock: String,
    /// The staves that it goes through, in order round the rim.
    staves: Vec<u32>,
    /// How many.
    count: u32,
    /// How many more to have at hand.
    spares: u32,
    /// Thickness to go through.
    stack_mm: Mm,
    /// Least length: the stack and enough to clinch.
    length_needed_mm: Mm,
    /// Length of the pin chosen.
    length_mm: Mm,
    /// Diameter of the hole to drill.
    drill_mm: Mm,
}

/// The two ears.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(crate) struct Ears {
    /// What they are made of.
    material: EarMaterial,
    /// The wood of wooden ears; `null` where the material says it.
    wood: Option<String>,
    /// How they get into the basket.
    way: EarWay,
    /// Where their tails are woven in; `null` where they are not.
    woven_in: Option<WovenIn>,
    /// At the ends of which axis they stand; `null` where the mould is round.
    axis: Option<EarAxis>,
    /// How they are placed.
    placing: EarPlacing,
    /// Width along the rim.
    width_mm: Mm,
    /// Width of the tail.
    tail_width_mm: Mm,
    /// Thickness.
    thickness_mm: Mm,
    /// Height of the rivet hole above the rim.
    hole_height_mm: Mm,
    /// Length of the tail below the rim's lower edge.
    tail_mm: Mm,
    /// Length of one ear, from the tail's end to the top.
    length_mm: Mm,
    /// The two ears.
    each: [Ear; 2],
    /// How far the second is off from facing the first.
    off_opposite_deg: Degrees,
    /// The same along the rim.
    off_opposite_mm: Mm,
    /// How far the line through both ears misses the middle of the basket.
    off_middle_mm: Mm,
    /// All ways of placing, least error first.
    options: Vec<EarOption>,
}

/// Where the tails of ears are woven in.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct WovenIn {
    /// The row on which the tails stand: the last that is woven before.
    on_row: u32,
    /// How many rows are woven over them.
    rows: u32,
    /// How much of the mould is left above that row.
    mould_left_mm: Mm,
}

/// One ear.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct Ear {
    /// Its middle, as a fraction of the way round.
    turn: f64,
    /// The nearest stave.
    stave: u32,
    /// How far its middle is off that stave's, along the rim; positive toward higher numbers.
    off_stave_mm: Mm,
    /// How far it is off the end of the axis on which ears stand; positive toward higher numbers.
    off_axis_mm: Mm,
}

/// What one way of placing would give.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct EarOption {
    /// The way.
    placing: EarPlacing,
    /// How far off opposite.
    off_opposite_deg: Degrees,
    /// The same along the rim.
    off_opposite_mm: Mm,
    /// The larger distance of an ear's middle from its stave's.
    off_stave_mm: Mm,
}

impl From<&fittings::Pins> for Pins {
    fn from(pins: &fittings::Pins) -> Self {
        let fittings::Pins { every, others, ears, of_handle: _ } = pins;
        Self {
            every: every.into(),
            count: pins.count(),
            staves: pins.each().into_iter().map(|(stave, _)| stave).collect(),
            others: others.into(),
            ears: ears.as_ref().map(PinSet::from),
        }
    }
}

impl From<&fittings::PinSet> for PinSet {
    fn from(set: &fittings::PinSet) -> Self {
        let fittings::PinSet { stock, staves, spares, stack, length_needed, length, drill } = set;
        Self {
            stock: stock.name.clone(),
            count: set.count(),
            staves: staves.clone(),
            spares: *spares,
            stack_mm: stack.into(),
            length_needed_mm: length_needed.into(),
            length_mm: length.into(),
            drill_mm: drill.into(),
        }
    }
}

impl From<&fittings::Ears> for Ears {
    fn from(ears: &fittings::Ears) -> Self {
        let fittings::Ears {
            of_handle: _,
            material,
            wood,
            way,
            woven_in,
            axis,
            placing,
            width,
            tail_width,
            thickness,
            hole_height,
            tail,
            length,
            each,
            off_opposite,
            off_opposite_rim,
            off_middle,
            options,
        } = ears;
        Self {
            material: material.into(),
            wood: wood.as_ref().map(|wood| wood.name.clone()),
            way: way.into(),
            woven_in: woven_in.as_ref().map(WovenIn::from),
            axis: axis.map(|axis| (&axis).into()),
            placing: placing.into(),
            width_mm: width.into(),
            tail_width_mm: tail_width.into(),
            thickness_mm: thickness.into(),
            hole_height_mm: hole_height.into(),
            tail_mm: tail.into(),
            length_mm: length.into(),
            each: each.each_ref().map(Ear::from),
            off_opposite_deg: off_opposite.into(),
            off_opposite_mm: off_opposite_rim.into(),
            off_middle_mm: off_middle.into(),
            options: options.iter().map(EarOption::from).collect(),
        }
    }
}

impl From<&fittings::WovenIn> for WovenIn {
    fn from(woven_in: &fittings::WovenIn) -> Self {
        let fittings::WovenIn { on_row, rows, mould_left } = woven_in;
        Self { on_row: *on_row, rows: *rows, mould_left_mm: mould_left.into() }
    }
}

impl From<&fittings::Ear> for Ear {
    fn from(ear: &fittings::Ear) -> Self {
        let fittings::Ear { turn, stave, off_stave, off_axis } = ear;
        Self { turn: *turn, stave: *stave, off_stave_mm: off_stave.into(), off_axis_mm: off_axis.into() }
    }
}

impl From<&fittings::EarOption> for EarOption {
    fn from(option: &fittings::EarOption) -> Self {
        let fittings::EarOption { placing, off_opposite, off_opposite_rim, off_stave } = option;
        Self {
            placing: placing.into(),
            off_opposite_deg: off_opposite.into(),
            off_opposite_mm: off_opposite_rim.into(),
            off_stave_mm: off_stave.into(),
        }
    }
}
