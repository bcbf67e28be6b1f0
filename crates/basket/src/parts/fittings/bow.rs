//! A bow of bent wood: the bail of a swinging handle, or a fixed one.

use super::Bail;
use super::bend::{self, bend};
use crate::making::Making;
use crate::measure::{Angle, Length};
use crate::message::Message;
use crate::pattern::keys;
use crate::pattern::{BailCurve, HandleMade, HandlePattern};

/// Strain that steamed oak, ash or hickory takes in a bend without a strap (from memory).
pub(crate) const BEND_LIMIT: f64 = 0.025;
/// Usual thicknesses of a bow (common practice), thickest first.
const THICKNESSES: [Length; 3] = [Length::inches(0.25), Length::inches(0.1875), Length::inches(0.125)];

/// A bow as computed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bow {
    /// Who bends it.
    pub made: HandleMade,
    /// Its curve.
    pub curve: BailCurve,
    /// Half the distance between its feet, at its middle line: its pivots, or where it leaves the rim.
    pub half_span: Length,
    /// Rise of its middle line above its feet.
    pub rise: Length,
    /// Corner radius of a three-centred one.
    pub corner: Option<Length>,
    /// Length of its middle line between its feet.
    pub arc: Length,
    /// Its whole length: the arc, and an end beyond each foot.
    pub cut: Length,
    /// Its width, seen from the side.
    pub width: Length,
    /// Its thickness, seen from the front.
    pub thickness: Length,
    /// Strain of the outer face in its tightest bend, of one half where it is made of two.
    pub bend_strain: f64,
}

/// What decides a bow besides its pattern.
pub(super) struct Feet<'a> {
    /// Half the distance between its feet at a thickness.
    pub(super) span: &'a dyn Fn(Length) -> Length,
    /// How far it reaches beyond each foot.
    pub(super) beyond: Length,
    /// Of how many layers it is bent.
    pub(super) layers: f64,
}

impl Bow {
    /// The bow of a handle of this width, with its curve.
    pub(super) fn of(
        pattern: &HandlePattern,
        width: Length,
        feet: &Feet<'_>,
        making: &mut Making<'_>,
    ) -> (Self, Bail) {
        let thickness = pattern.thickness.unwrap_or_else(|| choose_thickness(pattern, feet, making));
        let bail = bend(pattern, (feet.span)(thickness));
        bend::tell(pattern, &bail, making);
        let bow = Self {
            made: pattern.made.unwrap_or_default(),
            curve: bail.curve(),
            half_span: bail.half_span(),
            rise: bail.rise(),
            corner: bail.corner(),
            arc: bail.length(),
            cut: bail.length() + 2.0 * feet.beyond,
            width,
            thickness,
            bend_strain: strain(&bail, thickness / feet.layers),
        };
        (bow, bail)
    }

    /// How far it reaches beyond each foot.
    pub fn beyond(&self) -> Length {
        (self.cut - self.arc) / 2.0
    }

    /// Its curve.
    pub fn bail(&self) -> Option<Bail> {
        Bail::new(self.curve, self.half_span, self.rise, self.corner.unwrap_or_default())
    }
}

/// Strain of a bow's outer face in its tightest bend: `t/2R`.
pub(super) fn strain(bail: &Bail, thickness: Length) -> f64 {
    thickness / (2.0 * bail.tightest()).max(Length::mm(1e-6))
}

/// How far a handle leans that rises this much above feet whose line misses the middle.
pub fn tilt(off_middle: Length, rise: Length) -> Angle {
    Angle::radians(libm::atan2(off_middle.to_mm(), rise.to_mm()))
}

/// The written width, else one that suits a rim of this radius.
pub(super) fn width(pattern: &HandlePattern, radius: Length, making: &mut Making<'_>) -> Length {
    let usual = Length::inches(if radius < Length::inches(3.0) { 0.5 } else { 0.625 });
    making.or(pattern.width, keys::handle::WIDTH.path, usual, |_| {
        Message::new("choice-handle-width").with("rim", 2.0 * radius)
    })
}

/// The thickest of the usual bows that takes its own bend, else the thinnest.
fn choose_thickness(pattern: &HandlePattern, feet: &Feet<'_>, making: &mut Making<'_>) -> Length {
    let bent = |thickness: Length| bend(pattern, (feet.span)(thickness));
    let takes = |thickness: &Length| strain(&bent(*thickness), *thickness / feet.layers) <= BEND_LIMIT;
    let found = THICKNESSES.into_iter().find(takes);
    let [.., thinnest] = THICKNESSES;
    let thickness = found.unwrap_or(thinnest);
    let id = if found.is_some() { "choice-handle-thickness" } else { "choice-handle-thickness-thinnest" };
    let reason = Message::new(id).with("radius", bent(thickness).tightest());
    making.chose(keys::handle::THICKNESS.path, thickness, reason);
    thickness
}
