//! The hoops of the rim.

use basket::rim;
use serde::Serialize;

use super::measure::Mm;
use super::vocabulary::HoopWay;

/// The two-piece split rim.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(crate) struct Rim {
    /// How the hoops come to be.
    hoops: HoopWay,
    /// Lower edge of the hoops, along the mould.
    along_mm: Mm,
    /// Height of the hoops on the wall.
    height_mm: Mm,
    /// Girth of the staves' inner faces at the middle of the rim.
    girth_mm: Mm,
    /// Thickness through both hoops and the stave.
    stack_mm: Mm,
    /// The hoop outside the staves.
    outer: Hoop,
    /// The hoop inside the staves.
    inner: Hoop,
}

/// One hoop.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct Hoop {
    /// Its stock.
    stock: String,
    /// From side to side at its flat face: of the outer hoop inside, of the inner one outside; its length where
    /// it is not round.
    across_mm: Mm,
    /// The same the short way.
    across_width_mm: Mm,
    /// Length once round, at the neutral axis.
    neutral_mm: Mm,
    /// Length to cut, with the lap.
    cut_mm: Mm,
    /// Strain of its outer fibre when bent to the rim.
    bend_strain: f64,
    /// The scarf that closes it.
    scarf: Scarf,
}

/// A long tapered overlap that closes a hoop.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct Scarf {
    /// Length of the lap.
    lap_mm: Mm,
    /// Middle of the scarf, as a fraction of the way round.
    turn: f64,
    /// Stave nearest to its start.
    from_stave: u32,
    /// Stave nearest to its end.
    to_stave: u32,
    /// Distance along the rim from the scarf's nearer end to the nearest ear; `null` without ears.
    clear_of_ear_mm: Option<Mm>,
    /// Distance along the rim between this scarf and the other hoop's.
    clear_of_other_mm: Mm,
}

impl From<&rim::Rim> for Rim {
    fn from(rim: &rim::Rim) -> Self {
        let rim::Rim { hoops, along, height, girth, tightest: _, across: _, stack, outer, inner } = rim;
        Self {
            hoops: hoops.into(),
            along_mm: along.into(),
            height_mm: height.into(),
            girth_mm: girth.into(),
            stack_mm: stack.into(),
            outer: outer.into(),
            inner: inner.into(),
        }
    }
}

impl From<&rim::Hoop> for Hoop {
    fn from(hoop: &rim::Hoop) -> Self {
        let rim::Hoop { stock, across, neutral, cut, bend_strain, scarf } = hoop;
        Self {
            stock: stock.name.clone(),
            across_mm: across.length.into(),
            across_width_mm: across.width.into(),
            neutral_mm: neutral.into(),
            cut_mm: cut.into(),
            bend_strain: *bend_strain,
            scarf: scarf.into(),
        }
    }
}

impl From<&rim::Scarf> for Scarf {
    fn from(scarf: &rim::Scarf) -> Self {
        let rim::Scarf { lap, turn, from_stave, to_stave, clear_of_ear, clear_of_other } = scarf;
        Self {
            lap_mm: lap.into(),
            turn: *turn,
            from_stave: *from_stave,
            to_stave: *to_stave,
            clear_of_ear_mm: clear_of_ear.map(Mm::from),
            clear_of_other_mm: clear_of_other.into(),
        }
    }
}
