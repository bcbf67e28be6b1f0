//! The swinging handle: bail, rivets, swing clearance and how far it folds.

use super::bend::{self, bend};
use super::{Bail, FORMED_HEAD, Fold, Lashed, Rest, Ring, Swing};
use crate::making::Making;
use crate::measure::{Angle, Length};
use crate::message::Message;
use crate::pattern::keys;
use crate::pattern::{BailCurve, HandlePattern};
use crate::stock::{Catalogue, Kind, Material};

/// Wood beyond each pivot (common practice).
const END: Length = Length::inches(0.5);
/// Thickness of the washer between bail and ear (common practice), and of a burr that is in no catalogue.
const WASHER: Length = Length::mm(0.8);
/// For each rivet a washer between bail and ear and a burr under the formed head.
const WASHERS: u32 = 2;
/// How much wider than the rivet its hole is drilled, so that the bail swings (common practice).
const PLAY: Length = Length::mm(0.2);
/// Diameter of a usual rivet (from memory: 1/8 to 3/16 in).
const RIVET: Length = Length::inches(0.125);
/// Strain that steamed oak, ash or hickory takes in a bend without a strap (from memory).
pub(crate) const BEND_LIMIT: f64 = 0.025;
/// Usual thicknesses of a bail (common practice), thickest first.
const THICKNESSES: [Length; 3] = [Length::inches(0.25), Length::inches(0.1875), Length::inches(0.125)];

/// The handle as computed.
#[derive(Clone, Debug, PartialEq)]
pub struct Handle {
    /// The curve of the bail.
    pub curve: BailCurve,
    /// Half the distance between the pivots, at the bail's middle line.
    pub half_span: Length,
    /// Rise of the bail's middle line above the pivots.
    pub rise: Length,
    /// Corner radius of a three-centred bail.
    pub corner: Option<Length>,
    /// Length of the middle line between the pivots.
    pub arc: Length,
    /// Length to cut: the arc and an end beyond each pivot.
    pub cut: Length,
    /// Width of the bail, seen from the side.
    pub width: Length,
    /// Thickness of the bail, seen from the front.
    pub thickness: Length,
    /// Height of the pivots above the rim.
    pub pivot_height: Length,
    /// Least room between the bail's rounded ends and the rim, all the way from where it rests on one side
    /// to where it rests on the other.
    pub swing_clearance: Length,
    /// Room between the bail's sides and the outer face of the rim as it goes down.
    pub side_clearance: Length,
    /// Where it comes to rest.
    pub fold: Fold,
    /// Where it rests: how far along the rim from an ear.
    pub rests: Length,
    /// Strain of the bail's outer face in its tightest bend.
    pub bend_strain: f64,
    /// The rivet.
    pub rivet: Material,
    /// Thickness that the rivet goes through: bail, ear and washers.
    pub grip: Length,
    /// Length of rivet: the grip and 1.5 diameters to form the head.
    pub rivet_length: Length,
    /// Drill for the rivet.
    pub drill: Length,
    /// Rivets needed.
    pub rivets: u32,
    /// The burr that belongs to the rivet; none where none is known.
    pub burr: Option<Material>,
    /// Washers or burrs needed.
    pub washers: u32,
    /// How far the handle leans when the ears do not face each other.
    pub tilt: Angle,
}

impl Handle {
    /// The handle of a basket that is ready for it.
    pub fn of(pattern: &HandlePattern, basket: &Lashed<'_>, making: &mut Making<'_>) -> Self {
        let (ears, radius) = (basket.ears, basket.rim.radius());
        let width = pattern.width.unwrap_or_else(|| choose_width(radius, making));
        let ear_middle = radius + basket.uprights.thickness / 2.0;
        let ear_face = ear_middle * libm::cos(ears.off_opposite.to_radians() / 2.0) + ears.thickness / 2.0;
        let inner_face = ear_face + WASHER;
        let thickness = pattern.thickness.unwrap_or_else(|| choose_thickness(pattern, inner_face, making));
        let half_span = inner_face + thickness / 2.0;
        let bail = bend(pattern, half_span);
        bend::tell(pattern, &bail, making);

        let rings = basket.rings(ears.hole_height);
        let swing = Swing { bail: &bail, width, thickness, end: END, off_middle: ears.off_middle };
        let rested = swing.down(&rings);
        let rim = rings.iter().filter(|ring| ring.part == Rest::Rim);
        let grip = thickness + ears.thickness + WASHER + thickest_burr(making.catalogue);
        let rivet = pattern.rivet.clone().unwrap_or_else(|| choose_rivet(grip, making));
        let rivets = 2;
        Self {
            curve: bail.curve(),
            half_span,
            rise: bail.rise(),
            corner: bail.corner(),
            arc: bail.length(),
            cut: bail.length() + 2.0 * END,
            width,
            thickness,
            pivot_height: ears.hole_height,
            swing_clearance: swing.end_room(rested, &rings),
            side_clearance: inner_face - rim.map(Ring::outer).fold(radius, Length::max),
            fold: Fold::of(bail.rise(), rested),
            rests: basket.rim.outer_radius(basket.uprights) * rested.from_ear.to_radians(),
            bend_strain: strain(&bail, thickness),
            grip,
            rivet_length: rivet_length(grip, rivet.width),
            drill: rivet.width + PLAY,
            burr: burr_of(making.catalogue, &rivet),
            rivet,
            rivets,
            washers: rivets * WASHERS,
            tilt: tilt(ears.off_middle, bail.rise()),
        }
    }

    /// Strain of its outer face if it were bent as another pattern says, with everything else as it is.
    pub(crate) fn strain_as(&self, pattern: &HandlePattern) -> f64 {
        let thickness = pattern.thickness.unwrap_or(self.thickness);
        let half_span = self.half_span + (thickness - self.thickness) / 2.0;
        strain(&bend(pattern, half_span), thickness)
    }
}

/// Strain of a bail's outer face in its tightest bend: `t/2R`.
fn strain(bail: &Bail, thickness: Length) -> f64 {
    thickness / (2.0 * bail.tightest()).max(Length::mm(1e-6))
}

/// How far a handle leans that rises this much above pivots whose line misses the middle.
pub fn tilt(off_middle: Length, rise: Length) -> Angle {
    Angle::radians(libm::atan2(off_middle.to_mm(), rise.to_mm()))
}

/// The burr that is slipped on under the head: the thickest of the catalogue, so that the rivet reaches.
fn thickest_burr(catalogue: &Catalogue) -> Length {
    catalogue.of_kind(Kind::Burr).map(|burr| burr.thickness).reduce(Length::max).unwrap_or(WASHER)
}

/// The burr that goes by the same number as a rivet.
fn burr_of(catalogue: &Catalogue, rivet: &Material) -> Option<Material> {
    catalogue.material(&rivet.name.replace("rivet", "burr")).filter(|burr| burr.kind == Kind::Burr).cloned()
}

fn rivet_length(grip: Length, diameter: Length) -> Length {
    grip + FORMED_HEAD * diameter
}

fn choose_width(radius: Length, making: &mut Making<'_>) -> Length {
    let width = Length::inches(if radius < Length::inches(3.0) { 0.5 } else { 0.625 });
    making.chose(
        keys::handle::WIDTH.path,
        width,
        Message::new("choice-handle-width").with("rim", 2.0 * radius),
    );
    width
}

/// The thickest of the usual bails that takes its own bend, else the thinnest.
fn choose_thickness(pattern: &HandlePattern, inner_face: Length, making: &mut Making<'_>) -> Length {
    let bent = |thickness: Length| bend(pattern, inner_face + thickness / 2.0);
    let takes = |thickness: &Length| strain(&bent(*thickness), *thickness) <= BEND_LIMIT;
    let found = THICKNESSES.into_iter().find(takes);
    let [.., thinnest] = THICKNESSES;
    let thickness = found.unwrap_or(thinnest);
    let id = if found.is_some() { "choice-handle-thickness" } else { "choice-handle-thickness-thinnest" };
    let reason = Message::new(id).with("radius", bent(thickness).tightest());
    making.chose(keys::handle::THICKNESS.path, thickness, reason);
    thickness
}

/// The rivet nearest to the usual diameter that is long enough, of equals the shortest.
fn choose_rivet(grip: Length, making: &mut Making<'_>) -> Material {
    let rivets = || making.catalogue.of_kind(Kind::Rivet);
    let long_enough =
        |rivet: &&Material| rivet.length.is_none_or(|length| length >= rivet_length(grip, rivet.width));
    let off = |rivet: &Material| (rivet.width - RIVET).abs().to_mm();
    let length = |rivet: &Material| rivet.length.unwrap_or(Length::ZERO).to_mm();
    let by_length = |a: &&Material, b: &&Material| length(a).total_cmp(&length(b));
    let by_fit = |a: &&Material, b: &&Material| off(a).total_cmp(&off(b)).then(by_length(a, b));
    let (rivet, id) = if let Some(rivet) = rivets().filter(long_enough).min_by(by_fit) {
        (rivet.clone(), "choice-handle-rivet")
    } else if let Some(rivet) = rivets().max_by(by_length) {
        (rivet.clone(), "choice-handle-rivet-short")
    } else {
        (Material::bare("rivet 1/8 in", Kind::Rivet, RIVET, RIVET), "choice-handle-rivet-none")
    };
    let reason = Message::new(id).with("grip", grip).with("needed", rivet_length(grip, rivet.width));
    making.chose(keys::handle::RIVET.path, rivet.name.clone(), reason);
    rivet
}
