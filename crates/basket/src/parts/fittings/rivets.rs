//! The two rivets on the ears, and what they go through.

use super::FORMED_HEAD;
use crate::making::Making;
use crate::measure::Length;
use crate::message::Message;
use crate::pattern::keys;
use crate::stock::{Catalogue, Kind, Material};

/// Thickness of the washer beside an ear (common practice), and of a burr that is in no catalogue.
pub(super) const WASHER: Length = Length::mm(0.8);
/// How much wider than the rivet its hole is drilled, so that what it holds turns (common practice).
const PLAY: Length = Length::mm(0.2);
/// Diameter of a usual rivet (from memory: 1/8 to 3/16 in).
const RIVET: Length = Length::inches(0.125);
/// Baskets under this width have holes of [`SMALL_HOLE`] (common practice).
const SMALL: Length = Length::inches(7.0);
const SMALL_HOLE: Length = Length::inches(0.125);

/// Two rivets that are alike.
#[derive(Clone, Debug, PartialEq)]
pub struct Rivets {
    /// The rivet.
    pub stock: Material,
    /// Thickness that it goes through.
    pub grip: Length,
    /// Length needed: the grip and 1.5 diameters to form the head.
    pub length: Length,
    /// Drill for it.
    pub drill: Length,
    /// How many.
    pub count: u32,
    /// The burr that belongs to it; none where none is known.
    pub burr: Option<Material>,
    /// Washers or burrs needed.
    pub washers: u32,
}

impl Rivets {
    /// Rivets through so much and a burr, with so many washers or burrs each, on a rim of this radius; the
    /// written ones, else what the catalogue has.
    pub(super) fn of(
        written: Option<&Material>,
        (through, washers): (Length, u32),
        radius: Length,
        making: &mut Making<'_>,
    ) -> Self {
        let grip = through + thickest_burr(making.catalogue);
        let is_small = 2.0 * radius < SMALL;
        let stock = written.cloned().unwrap_or_else(|| choose(grip, is_small, making));
        let loose = stock.width + PLAY;
        let count = 2;
        Self {
            length: length_for(grip, stock.width),
            drill: if is_small && loose <= SMALL_HOLE { SMALL_HOLE } else { loose },
            burr: burr_of(making.catalogue, &stock),
            stock,
            grip,
            count,
            washers: count * washers,
        }
    }
}

/// The burr that is slipped on under the head: the thickest of the catalogue, so that the rivet reaches.
fn thickest_burr(catalogue: &Catalogue) -> Length {
    catalogue.of_kind(Kind::Burr).map(|burr| burr.thickness).reduce(Length::max).unwrap_or(WASHER)
}

/// The burr that goes by the same number as a rivet, whatever the rivet's length.
fn burr_of(catalogue: &Catalogue, rivet: &Material) -> Option<Material> {
    let name = rivet.name.split(" x ").next().unwrap_or_default().replace("rivet", "burr");
    catalogue.material(&name).filter(|burr| burr.kind == Kind::Burr).cloned()
}

fn length_for(grip: Length, diameter: Length) -> Length {
    grip + FORMED_HEAD * diameter
}

/// The rivet nearest to the usual diameter that is long enough, of equals the shortest; on a small basket
/// before all others one that goes through a small hole.
fn choose(grip: Length, is_small: bool, making: &mut Making<'_>) -> Material {
    let rivets = || making.catalogue.of_kind(Kind::Rivet);
    let long_enough =
        |rivet: &&Material| rivet.length.is_none_or(|length| length >= length_for(grip, rivet.width));
    let too_wide = |rivet: &Material| is_small && rivet.width + PLAY > SMALL_HOLE;
    let off = |rivet: &Material| (rivet.width - RIVET).abs().to_mm();
    let length = |rivet: &Material| rivet.length.unwrap_or(Length::ZERO).to_mm();
    let by_length = |a: &&Material, b: &&Material| length(a).total_cmp(&length(b));
    let by_fit = |a: &&Material, b: &&Material| {
        too_wide(a).cmp(&too_wide(b)).then(off(a).total_cmp(&off(b))).then(by_length(a, b))
    };
    let (rivet, id) = if let Some(rivet) = rivets().filter(long_enough).min_by(by_fit) {
        (rivet.clone(), "choice-handle-rivet")
    } else if let Some(rivet) = rivets().max_by(by_length) {
        (rivet.clone(), "choice-handle-rivet-short")
    } else {
        (Material::bare("rivet 1/8 in", Kind::Rivet, RIVET, RIVET), "choice-handle-rivet-none")
    };
    let reason = Message::new(id).with("grip", grip).with("needed", length_for(grip, rivet.width));
    making.chose(keys::handle::RIVET.path, rivet.name.clone(), reason);
    rivet
}
