//! The two ears that hold the handle, and the ways to set them opposite on a count of staves.

use crate::pattern::keys;
use std::f64::consts::TAU;

use crate::making::Making;
use crate::measure::{Angle, Length};
use crate::message::{Message, Value};
use crate::parts::seat::Seat;
use crate::pattern::{EarMaterial, EarPlacing, EarsPattern};
use crate::uprights::Uprights;

/// Hole above the rim: the bail's end swings clear with 1/8 in to spare (common practice).
const HOLE_HEIGHT: Length = Length::inches(0.625);
/// Tail below the rim (a basket supplier's page on ears: about 2 in).
const TAIL: Length = Length::inches(2.0);

/// The ears as computed.
#[derive(Clone, Debug, PartialEq)]
pub struct Ears {
    /// What they are made of.
    pub material: EarMaterial,
    /// How they are placed.
    pub placing: EarPlacing,
    /// Width along the rim.
    pub width: Length,
    /// Thickness.
    pub thickness: Length,
    /// Height of the rivet hole above the rim.
    pub hole_height: Length,
    /// Length of the tail below the rim's lower edge.
    pub tail: Length,
    /// Length of one ear, from the tail's end to the top.
    pub length: Length,
    /// The two ears.
    pub each: [Ear; 2],
    /// How far the second is off from facing the first.
    pub off_opposite: Angle,
    /// The same along the rim.
    pub off_opposite_rim: Length,
    /// How far the line through both ears misses the middle of the basket.
    pub off_middle: Length,
    /// All ways of placing, least error first.
    pub options: Vec<EarOption>,
}

/// One ear.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ear {
    /// Its middle, as a fraction of the way round.
    pub turn: f64,
    /// The nearest stave.
    pub stave: u32,
    /// How far its middle is off that stave's, along the rim; positive toward higher numbers.
    pub off_stave: Length,
}

/// What one way of placing would give.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct EarOption {
    /// The way.
    pub placing: EarPlacing,
    /// How far off opposite.
    pub off_opposite: Angle,
    /// The same along the rim.
    pub off_opposite_rim: Length,
    /// The larger distance of an ear's middle from its stave's.
    pub off_stave: Length,
}

impl Ears {
    /// The ears on a seat for hoops of this height. The first
    /// ear stands on stave 1 or, when the error is shared, a quarter pitch after it.
    pub fn of(
        pattern: &EarsPattern,
        (seat, height): (&Seat, Length),
        uprights: &Uprights,
        making: &mut Making<'_>,
    ) -> Self {
        let girth = seat.girth;
        let radius = girth / TAU;
        let options = options(uprights.count, girth);
        let placing = pattern.placing.unwrap_or_else(|| choose_placing(uprights.count, &options, making));
        let material = pattern.material.unwrap_or_else(|| choose_material(making));
        let usual = Usual::of(material);
        let mut size = |given: Option<Length>, key, usual, id| {
            given.unwrap_or_else(|| choose_size(key, usual, id, making))
        };
        let width = size(pattern.width, keys::ears::WIDTH.path, usual.width, usual.reason);
        let thickness = size(pattern.thickness, keys::ears::THICKNESS.path, usual.thickness, usual.reason);
        let hole_height =
            size(pattern.hole_height, keys::ears::HOLE.path, HOLE_HEIGHT, "choice-ears-hole-height");
        let tail = size(pattern.tail, keys::ears::TAIL.path, TAIL, "choice-ears-tail");

        let places = Places::of(placing, uprights.count);
        let off_opposite = places.off_opposite();
        Self {
            material,
            placing,
            width,
            thickness,
            hole_height,
            tail,
            length: tail + height + hole_height + width / 2.0,
            each: places.each(girth),
            off_opposite,
            off_opposite_rim: radius * off_opposite.to_radians(),
            off_middle: off_middle(radius, off_opposite),
            options,
        }
    }

    /// Thickness of an ear between the hoops, where it lies on a stave of this thickness: sheet brass as it
    /// is; wood and bone are shaved as thin as the stave (common practice).
    pub fn blade(&self, stave: Length) -> Length {
        match self.material {
            EarMaterial::Brass => self.thickness,
            EarMaterial::Oak | EarMaterial::Bone => self.thickness.min(stave),
        }
    }
}

/// How far the chord between two places on a circle, so far from facing each other, misses its
/// middle: `r·sin(δ/2)`.
pub fn off_middle(radius: Length, off_opposite: Angle) -> Length {
    radius * libm::sin(off_opposite.to_radians() / 2.0)
}

/// Places of both ears, counted in quarters of the staves' pitch from the middle of stave 1.
struct Places {
    count: u64,
    quarters: [u64; 2],
}

impl Places {
    fn of(placing: EarPlacing, count: u32) -> Self {
        let count = u64::from(count.max(1));
        let facing = 2 * count;
        let quarters = match placing {
            EarPlacing::OnStaves => [0, count.div_ceil(2) % count * 4],
            EarPlacing::StaveAndGap if count.is_multiple_of(2) => [0, facing + 2],
            EarPlacing::StaveAndGap | EarPlacing::ByAngle => [0, facing],
            EarPlacing::Shared => [1, facing + 1],
        };
        Self { count, quarters }
    }

    /// Quarters of a pitch by which the second ear misses the place that faces the first.
    fn quarters_off_opposite(&self) -> u64 {
        let [first, second] = self.quarters;
        (first + 2 * self.count).abs_diff(second)
    }

    /// Quarters of a pitch from the farther ear to its stave.
    fn quarters_off_stave(&self) -> u64 {
        let [first, second] = self.quarters.map(|place| quarters_from_stave(place).unsigned_abs());
        first.max(second)
    }

    fn off_opposite(&self) -> Angle {
        Angle::radians(TAU * self.quarters_off_opposite() as f64 / (4 * self.count) as f64)
    }

    fn each(&self, girth: Length) -> [Ear; 2] {
        let round = (4 * self.count) as f64;
        self.quarters.map(|place| {
            let off = quarters_from_stave(place);
            let index = place.saturating_add_signed(-off) / 4 % self.count;
            Ear {
                turn: place as f64 / round % 1.0,
                stave: index as u32 + 1,
                off_stave: girth * (off as f64 / round),
            }
        })
    }
}

/// From the nearest stave's middle to a place in quarters: −1 to 2.
fn quarters_from_stave(place: u64) -> i64 {
    match place % 4 {
        0 => 0,
        1 => 1,
        2 => 2,
        _ => -1,
    }
}

fn options(count: u32, girth: Length) -> Vec<EarOption> {
    let ways = [EarPlacing::OnStaves, EarPlacing::StaveAndGap, EarPlacing::Shared, EarPlacing::ByAngle];
    let mut ways = ways.map(|placing| (placing, Places::of(placing, count)));
    ways.sort_by_key(|(_, places)| (places.quarters_off_opposite(), places.quarters_off_stave()));
    ways.iter()
        .map(|(placing, places)| EarOption {
            placing: *placing,
            off_opposite: places.off_opposite(),
            off_opposite_rim: girth * (places.off_opposite().to_radians() / TAU),
            off_stave: girth * (places.quarters_off_stave() as f64 / (4 * places.count) as f64),
        })
        .collect()
}

fn placing_name(placing: EarPlacing) -> &'static str {
    match placing {
        EarPlacing::OnStaves => "on-staves",
        EarPlacing::StaveAndGap => "stave-and-gap",
        EarPlacing::Shared => "shared",
        EarPlacing::ByAngle => "by-angle",
    }
}

fn choose_placing(count: u32, options: &[EarOption], making: &mut Making<'_>) -> EarPlacing {
    let Some(best) = options.first() else { return EarPlacing::OnStaves };
    let on_staves = options.iter().find(|option| option.placing == EarPlacing::OnStaves).unwrap_or(best);
    let odd = count % 2 == 1;
    let id = if odd { "choice-ears-placing-odd" } else { "choice-ears-placing-even" };
    making.chose(
        keys::ears::PLACING.path,
        placing_name(best.placing),
        Message::new(id)
            .with("count", count)
            .with("off_stave", best.off_stave)
            .with("on_staves_off", on_staves.off_opposite_rim)
            .with("on_staves_angle", on_staves.off_opposite),
    );
    best.placing
}

fn choose_material(making: &mut Making<'_>) -> EarMaterial {
    let reason = Message::new("choice-ears-material");
    making.chose(keys::ears::MATERIAL.path, "brass", reason);
    EarMaterial::Brass
}

fn choose_size(key: &'static str, size: Length, id: &'static str, making: &mut Making<'_>) -> Length {
    making.chose(key, Value::Length(size), Message::new(id));
    size
}

/// Usual sizes of an ear (common practice; the oak blank of 3/8 in from a maker's weblog, 2014).
struct Usual {
    width: Length,
    thickness: Length,
    reason: &'static str,
}

impl Usual {
    fn of(material: EarMaterial) -> Self {
        let (width, thickness, reason) = match material {
            EarMaterial::Brass => (0.5, 0.0625, "choice-ears-size-brass"),
            EarMaterial::Oak => (0.5, 0.375, "choice-ears-size-oak"),
            EarMaterial::Bone => (0.5, 0.1875, "choice-ears-size-bone"),
        };
        Self { width: Length::inches(width), thickness: Length::inches(thickness), reason }
    }
}
