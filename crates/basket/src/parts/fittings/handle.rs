//! The swinging handle: bail, rivets, swing clearance and how far it folds.

use serde::Serialize;

use crate::choice::Choice;
use crate::fittings::{Bail, Ears, FORMED_HEAD, Fold, Ledge};
use crate::form::Form;
use crate::measure::{Angle, Length};
use crate::message::{Message, Value};
use crate::pattern::{BailCurve, HandlePattern};
use crate::rim::Rim;
use crate::staves::Staves;
use crate::stock::{self, Catalogue, Kind, Material};

/// Wood beyond each pivot (common practice).
const END: Length = Length::inches(0.5);
/// Thickness of the washer between bail and ear (common practice), and of a burr that is in no catalogue.
const WASHER: Length = Length::mm(0.8);
/// For each rivet a washer between bail and ear and a burr under the formed head.
const WASHERS: u32 = 2;
/// How much wider than the rivet its hole is drilled, so that the bail swings (common practice).
const PLAY: Length = Length::mm(0.2);
/// What the lashing adds to the outer face of the rim (common practice: a strand's thickness).
const LASHING: Length = Length::mm(1.0);
/// Diameter of a usual rivet (from memory: 1/8 to 3/16 in).
const RIVET: Length = Length::inches(0.125);
/// A bail chosen is at most this share of its bend radius thick, 2.5 % of strain (from memory of
/// what steamed oak and ash bend without a strap).
const THICKEST: f64 = 0.05;

/// The handle as computed.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Handle {
    /// The curve of the bail.
    pub curve: BailCurve,
    /// Half the distance between the pivots, at the bail's middle line.
    #[serde(rename = "half_span_mm")]
    pub half_span: Length,
    /// Rise of the bail's middle line above the pivots.
    #[serde(rename = "rise_mm")]
    pub rise: Length,
    /// Corner radius of a three-centred bail.
    #[serde(rename = "corner_mm")]
    pub corner: Option<Length>,
    /// Length of the middle line between the pivots.
    #[serde(rename = "arc_mm")]
    pub arc: Length,
    /// Length to cut: the arc and an end beyond each pivot.
    #[serde(rename = "cut_mm")]
    pub cut: Length,
    /// Width of the bail, seen from the side.
    #[serde(rename = "width_mm")]
    pub width: Length,
    /// Thickness of the bail, seen from the front.
    #[serde(rename = "thickness_mm")]
    pub thickness: Length,
    /// Height of the pivots above the rim.
    #[serde(rename = "pivot_height_mm")]
    pub pivot_height: Length,
    /// Room between the bail's rounded ends and the rim below the pivot.
    #[serde(rename = "swing_clearance_mm")]
    pub swing_clearance: Length,
    /// Room between the bail's sides and the outer face of the rim as it goes down.
    #[serde(rename = "side_clearance_mm")]
    pub side_clearance: Length,
    /// Where it comes to rest.
    pub fold: Fold,
    /// Strain of the bail's outer face in its tightest bend.
    pub bend_strain: f64,
    /// The rivet.
    #[serde(serialize_with = "stock::name_only")]
    pub rivet: Material,
    /// Thickness that the rivet goes through: bail, ear and washers.
    #[serde(rename = "grip_mm")]
    pub grip: Length,
    /// Length of rivet: the grip and 1.5 diameters to form the head.
    #[serde(rename = "rivet_length_mm")]
    pub rivet_length: Length,
    /// Drill for the rivet.
    #[serde(rename = "drill_mm")]
    pub drill: Length,
    /// Rivets needed.
    pub rivets: u32,
    /// The burr that belongs to the rivet; none where none is known.
    #[serde(serialize_with = "stock::name_if_any")]
    pub burr: Option<Material>,
    /// Washers or burrs needed.
    pub washers: u32,
    /// How far the handle leans when the ears do not face each other.
    #[serde(rename = "tilt_deg")]
    pub tilt: Angle,
}

impl Handle {
    /// The handle of a basket woven on this mould.
    pub fn of(
        pattern: &HandlePattern,
        catalogue: &Catalogue,
        ears: &Ears,
        rim: &Rim,
        form: &Form,
        staves: &Staves,
        choices: &mut Vec<Choice>,
    ) -> Self {
        let rim_top = form.profile.at(rim.along + rim.height).height;
        let wall = |below_rim: Length| {
            let along = form.profile.along_at_height((rim_top - below_rim).max(Length::ZERO));
            form.profile.at(along).radius + staves.uprights.thickness
        };
        Self::over_wall(pattern, catalogue, ears, rim, &wall, staves, choices)
    }

    /// The handle of a basket whose staves' outer face has the radius `wall` so far below the top of
    /// the rim.
    pub fn over_wall(
        pattern: &HandlePattern,
        catalogue: &Catalogue,
        ears: &Ears,
        rim: &Rim,
        wall: &dyn Fn(Length) -> Length,
        staves: &Staves,
        choices: &mut Vec<Choice>,
    ) -> Self {
        let width = pattern.width.unwrap_or_else(|| choose_width(rim.radius(), choices));
        let thickness = pattern.thickness.unwrap_or_else(|| choose_thickness(rim.radius(), choices));
        let ear_middle = rim.radius() + staves.uprights.thickness / 2.0;
        let half_span = ear_middle + (ears.thickness + thickness) / 2.0 + WASHER;
        let bail = choose_bail(pattern, half_span, choices);

        let outer = rim.outer_radius(&staves.uprights) + LASHING;
        let ledge =
            Ledge { inner: rim.inner_radius(), outer, below_pivots: ears.hole_height, height: rim.height };
        let grip = thickness + ears.thickness + WASHER + thickest_burr(catalogue);
        let rivet = pattern.rivet.clone().unwrap_or_else(|| choose_rivet(catalogue, grip, choices));
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
            swing_clearance: ears.hole_height - END.max(width / 2.0),
            side_clearance: half_span - thickness / 2.0 - outer,
            fold: Fold::of(&bail, width, thickness, ledge, wall),
            bend_strain: thickness / (2.0 * bail.tightest()).max(Length::mm(1e-6)),
            grip,
            rivet_length: rivet_length(grip, rivet.width),
            drill: rivet.width + PLAY,
            burr: burr_of(catalogue, &rivet),
            rivet,
            rivets,
            washers: rivets * WASHERS,
            tilt: tilt(ears.off_middle, bail.rise()),
        }
    }
}

/// How far a handle leans that rises this much above pivots whose line misses the middle.
pub fn tilt(off_middle: Length, rise: Length) -> Angle {
    Angle::radians(off_middle.to_mm().atan2(rise.to_mm()))
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

fn choose_width(radius: Length, choices: &mut Vec<Choice>) -> Length {
    let inches = if radius < Length::inches(3.0) { 0.5 } else { 0.625 };
    choose_size("handle.width", Length::inches(inches), "choice-handle-width", radius, choices)
}

/// The thickest of the usual bails that still bends to the rim.
fn choose_thickness(radius: Length, choices: &mut Vec<Choice>) -> Length {
    let bends = |inches: &f64| Length::inches(*inches) <= radius * THICKEST;
    let inches = [0.25, 0.1875].into_iter().find(bends).unwrap_or(0.125);
    choose_size("handle.thickness", Length::inches(inches), "choice-handle-thickness", radius, choices)
}

fn choose_size(
    key: &'static str,
    size: Length,
    id: &'static str,
    radius: Length,
    choices: &mut Vec<Choice>,
) -> Length {
    choices.push(Choice { key, value: size.into(), reason: Message::new(id).with("rim", 2.0 * radius) });
    size
}

/// The bail's curve with its rise and corners. What cannot be bent as written (a semicircle of another
/// rise, corners larger than the rise) gives way and is told as a choice.
fn choose_bail(pattern: &HandlePattern, half_span: Length, choices: &mut Vec<Choice>) -> Bail {
    let curve = pattern.curve.unwrap_or_else(|| choose_curve(pattern, choices));
    let mut tell = |key, value: Value, id| {
        choices.push(Choice { key, value, reason: Message::new(id).with("half_span", half_span) });
    };
    if curve == BailCurve::Semicircle {
        let told = pattern.rise.is_some_and(|rise| (rise - half_span).abs() > Length::mm(0.5));
        let id = if told { "choice-handle-rise-not-semicircle" } else { "choice-handle-rise-semicircle" };
        if told || pattern.rise.is_none() {
            tell("handle.rise", half_span.into(), id);
        }
        return Bail::Semicircle { half_span };
    }
    let rise = pattern.rise.unwrap_or_else(|| {
        let share = if curve == BailCurve::ThreeCentred { 0.75 } else { 1.25 };
        tell("handle.rise", (half_span * share).into(), "choice-handle-rise");
        half_span * share
    });
    let corner = pattern.corner.unwrap_or(rise * 0.7);
    let bail = Bail::new(curve, half_span, rise, corner);
    if curve == BailCurve::ThreeCentred {
        match bail {
            Some(_) if pattern.corner.is_some() => {}
            Some(_) => tell("handle.corner", corner.into(), "choice-handle-corner"),
            None => tell(
                "handle.curve",
                curve_name(BailCurve::HalfEllipse).into(),
                "choice-handle-not-three-centred",
            ),
        }
    }
    bail.unwrap_or(Bail::HalfEllipse { half_span, rise })
}

fn choose_curve(pattern: &HandlePattern, choices: &mut Vec<Choice>) -> BailCurve {
    let (curve, id) = match (pattern.corner, pattern.rise) {
        (Some(_), _) => (BailCurve::ThreeCentred, "choice-handle-curve-corner"),
        (None, Some(_)) => (BailCurve::HalfEllipse, "choice-handle-curve-rise"),
        (None, None) => (BailCurve::Semicircle, "choice-handle-curve"),
    };
    choices.push(Choice { key: "handle.curve", value: curve_name(curve).into(), reason: Message::new(id) });
    curve
}

fn curve_name(curve: BailCurve) -> &'static str {
    match curve {
        BailCurve::Semicircle => "semicircle",
        BailCurve::ThreeCentred => "three-centred",
        BailCurve::HalfEllipse => "half-ellipse",
    }
}

/// The rivet nearest to the usual diameter that is long enough, of equals the shortest.
fn choose_rivet(catalogue: &Catalogue, grip: Length, choices: &mut Vec<Choice>) -> Material {
    let rivets = || catalogue.of_kind(Kind::Rivet);
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
    choices.push(Choice {
        key: "handle.rivet",
        value: Value::Name(rivet.name.clone()),
        reason: Message::new(id).with("grip", grip).with("needed", rivet_length(grip, rivet.width)),
    });
    rivet
}
