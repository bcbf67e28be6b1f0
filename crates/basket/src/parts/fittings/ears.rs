//! The two ears that hold the handle, and how they get into the basket.

use super::ear_places::{Ear, EarOption, Places, Stand, beside, options};
use super::ear_sizes::{self as sizes, Wall};
use crate::making::Making;
use crate::measure::{Angle, Length};
use crate::message::Message;
use crate::pattern::{EarAxis, EarMaterial, EarPlacing, EarWay, EarsPattern, Word, keys};
use crate::stock::Wood;
use crate::weave::Row;

/// The thin end of a tail that is shaved (common practice).
const TIP: Length = Length::inches(1.0 / 32.0);

/// The ears as computed.
#[derive(Clone, Debug, PartialEq)]
pub struct Ears {
    /// Whether they are the ends of a fixed handle, which stand in the rim as ears do.
    pub of_handle: bool,
    /// What they are made of.
    pub material: EarMaterial,
    /// The wood of wooden ears; none where the material says it.
    pub wood: Option<Wood>,
    /// How they get into the basket.
    pub way: EarWay,
    /// The rows that are woven over their tails, where these are woven in.
    pub woven_in: Option<WovenIn>,
    /// At the ends of which axis they stand; none where the mould is round.
    pub axis: Option<EarAxis>,
    /// How they are placed.
    pub placing: EarPlacing,
    /// Width along the rim.
    pub width: Length,
    /// Width of the tail: no wider than a stave, so that a weaver passes beside it.
    pub tail_width: Length,
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

/// Where the tails of ears are woven in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WovenIn {
    /// The row on which the tails stand: the last that is woven before.
    pub on_row: u32,
    /// How many rows are woven over them.
    pub rows: u32,
    /// How much of the mould is left above that row.
    pub mould_left: Length,
}

impl Ears {
    /// The ears in a wall. The first ear stands on stave 1 or, when the error is shared, a quarter pitch
    /// after it.
    pub fn of(pattern: &EarsPattern, wall: &Wall<'_>, making: &mut Making<'_>) -> Self {
        let way = pattern.way.unwrap_or_else(|| choose_way(making));
        let axis = pattern.axis.or_else(|| choose_axis(wall, making));
        let (girth, count) = (wall.seat.girth, wall.uprights.count);
        let stand = Stand { level: wall.level(), girth, count, axis };
        let placing = match (way, pattern.placing) {
            (EarWay::AsStave, _) => EarPlacing::OnStaves,
            (_, Some(placing)) => placing,
            (_, None) => choose_placing(stand, making),
        };
        let material = pattern.material.unwrap_or_else(|| choose_material(making));
        let wood = (material == EarMaterial::Wood)
            .then(|| pattern.wood.clone().unwrap_or_else(|| choose_wood(wall.wood, making)));
        let stave = wall.uprights.width_at(wall.seat.along + wall.height / 2.0);
        let width = pattern.width.unwrap_or_else(|| sizes::choose_width(stave, making));
        let thickness = pattern.thickness.unwrap_or_else(|| sizes::choose_thickness(material, making));
        let hole_height = pattern.hole_height.unwrap_or_else(|| sizes::choose_hole(making));
        let tail = match way {
            EarWay::AsStave => sizes::whole_tail(material, wall, making),
            EarWay::WovenIn | EarWay::PushedDown => {
                pattern.tail.unwrap_or_else(|| sizes::choose_tail(way, making))
            }
        };
        let places = Places::of(placing, stand);
        let chord = places.chord();
        Self {
            of_handle: false,
            material,
            wood,
            way,
            woven_in: (way == EarWay::WovenIn).then(|| WovenIn::of(wall, tail)),
            axis,
            placing,
            width,
            tail_width: width.min(stave),
            thickness,
            hole_height,
            tail,
            length: tail + wall.height + hole_height + width / 2.0,
            each: places.each(),
            off_opposite: chord.off_opposite,
            off_opposite_rim: places.off_opposite_rim(),
            off_middle: chord.off_middle,
            options: options(stand),
        }
    }

    /// Thickness of an ear between the hoops, where it lies on a stave of this thickness: sheet brass as it
    /// is; wood and bone are shaved as thin as the stave (common practice).
    pub fn blade(&self, stave: Length) -> Length {
        match self.material {
            EarMaterial::Brass => self.thickness,
            EarMaterial::Wood | EarMaterial::Oak | EarMaterial::Bone => self.thickness.min(stave),
        }
    }

    /// How deep the shoulder is that each face has above the hoops, over staves of this thickness; nothing
    /// where the ear is of one thickness.
    pub fn shoulder(&self, stave: Length) -> Length {
        (self.thickness - self.blade(stave)) / 2.0
    }

    /// Thickness at the tail's end: shaved tails run out thin, unless they are staves themselves.
    pub fn tip(&self, stave: Length) -> Length {
        let blade = self.blade(stave);
        let shaved = self.material != EarMaterial::Brass && !self.replace_staves();
        if shaved { blade.min(TIP) } else { blade }
    }

    /// Whether they stand in the place of two staves: wood is shaved to a stave and goes into the groove;
    /// brass and bone lie on their stave down to the base (common practice).
    pub fn replace_staves(&self) -> bool {
        self.way == EarWay::AsStave && sizes::is_shaved_to_a_stave(self.material)
    }

    /// The stave, of so many, beside the second ear on the side to which it is off from facing the first.
    pub fn off_toward(&self, count: u32) -> u32 {
        let [first, second] = &self.each;
        beside(second.stave, off_lower(first, second), count)
    }
}

impl WovenIn {
    /// The tails stand on a row, and all rows above it that find room on the tail go over it.
    fn of(wall: &Wall<'_>, tail: Length) -> Self {
        let from = wall.seat.along - tail - Length::mm(1e-6);
        let bottom = |row: &Row| row.along - row.pitch / 2.0;
        let below = wall.rows.iter().take_while(|row| bottom(row) < from).count();
        // One row at least holds the staves that the ears are laid on.
        let below = below.max(1).min(wall.rows.len());
        let top = wall
            .rows
            .get(..below)
            .and_then(<[_]>::last)
            .map_or(Length::ZERO, |row| row.along + row.pitch / 2.0);
        Self {
            on_row: below as u32,
            rows: (wall.rows.len() - below) as u32,
            mould_left: (wall.mould - top).max(Length::ZERO),
        }
    }
}

fn choose_way(making: &mut Making<'_>) -> EarWay {
    making.chose(keys::ears::WAY.path, EarWay::WovenIn.word(), Message::new("choice-ears-way"));
    EarWay::WovenIn
}

/// From end to end a handle goes down outside the sides; from side to side it would have to reach over the ends.
fn choose_axis(wall: &Wall<'_>, making: &mut Making<'_>) -> Option<EarAxis> {
    (!wall.form.outline.is_round()).then(|| {
        making.chose(keys::ears::AXIS.path, EarAxis::Long.word(), Message::new("choice-ears-axis"));
        EarAxis::Long
    })
}

/// On two staves: an ear is pinned through the middle of one. How far they miss each other then is said.
fn choose_placing(stand: Stand<'_>, making: &mut Making<'_>) -> EarPlacing {
    let places = Places::of(EarPlacing::OnStaves, stand);
    let [first, second] = places.each();
    let odd = stand.count % 2 == 1;
    let reason = Message::new(if odd { "choice-ears-placing-odd" } else { "choice-ears-placing-even" })
        .with("count", stand.count)
        .with("off", places.off_opposite_rim())
        .with("angle", places.chord().off_opposite)
        .with("toward", beside(second.stave, off_lower(&first, &second), stand.count));
    making.chose(keys::ears::PLACING.path, EarPlacing::OnStaves.word(), reason);
    EarPlacing::OnStaves
}

/// Whether the second ear is off from facing the first toward lower numbers.
fn off_lower(first: &Ear, second: &Ear) -> bool {
    second.off_axis < first.off_axis
}

fn choose_material(making: &mut Making<'_>) -> EarMaterial {
    let reason = Message::new("choice-ears-material");
    making.chose(keys::ears::MATERIAL.path, "brass", reason);
    EarMaterial::Brass
}

fn choose_wood(base: &Wood, making: &mut Making<'_>) -> Wood {
    let reason = Message::new("choice-ears-wood").with("wood", base);
    making.chose(keys::ears::WOOD.path, base.name.as_str(), reason);
    base.clone()
}
