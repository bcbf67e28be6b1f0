//! The wooden base: disc, groove in its edge, screw hole and plug.
//!
//! The groove runs round the edge of the disc and opens outward; staves lie in it flat, each on a
//! radius, and turn up over the mould.

use std::f64::consts::TAU;

use serde::Serialize;

use crate::choice::Choice;
use crate::measure::Length;
use crate::message::{Message, Value};
use crate::mould::Mould;
use crate::pattern::BasePattern;
use crate::stock::{Catalogue, Wood};

/// Usual thickness of the disc (common practice).
pub const USUAL_THICKNESS: Length = Length::inches(0.375);
/// Usual depth of the groove (common practice).
pub const USUAL_GROOVE_DEPTH: Length = Length::inches(0.25);
/// Usual hole for the screw that holds the base on the mould (common practice).
pub const USUAL_SCREW_HOLE: Length = Length::inches(0.1875);
/// Thickness of staves for which a groove is cut while their stock is open: about that of 1/4 in
/// flat oval reed (from memory).
pub const USUAL_STAVE_THICKNESS: Length = Length::mm(2.0);
/// Play that a stave needs in its groove to go in without force (common practice).
pub const GROOVE_PLAY: Length = Length::mm(0.1);
/// Swing of a base's moisture in heated rooms over a year, in percent of its dry weight: from 6 to
/// 12 (USDA Forest Products Laboratory, *Wood Handbook*, FPL-GTR-190 (2010), chapter 13).
pub const INDOOR_SWING: f64 = 6.0;
/// Moisture in percent below which wood shrinks (*Wood Handbook*, FPL-GTR-190 (2010), chapter 4).
const FIBRE_SATURATION: f64 = 30.0;
/// Diameters of plugs in inches (from memory of woodturners' and joiners' supplies).
const PLUGS: [f64; 6] = [0.25, 0.375, 0.5, 0.625, 0.75, 1.0];
/// How much wider than its hole a plug must be to cover the screw's sunk head (common practice).
const PLUG_COVER: Length = Length::inches(0.125);

/// The base as computed.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Base {
    /// Diameter of the disc.
    #[serde(rename = "diameter_mm")]
    pub diameter: Length,
    /// Thickness of the disc.
    #[serde(rename = "thickness_mm")]
    pub thickness: Length,
    /// How deep the groove goes in from the edge.
    #[serde(rename = "groove_depth_mm")]
    pub groove_depth: Length,
    /// How wide the groove is, from its lower to its upper cheek.
    #[serde(rename = "groove_width_mm")]
    pub groove_width: Length,
    /// Radius of the bottom of the groove, where the feet of the staves end.
    #[serde(rename = "groove_radius_mm")]
    pub groove_radius: Length,
    /// The wood.
    pub wood: Wood,
    /// Hole for the screw that holds the base on the mould.
    #[serde(rename = "screw_hole_mm")]
    pub screw_hole: Length,
    /// Diameter of the plug that closes the hole.
    #[serde(rename = "plug_diameter_mm")]
    pub plug_diameter: Length,
    /// How much wider the disc gets across the grain from a dry to a damp room.
    #[serde(rename = "movement_mm")]
    pub movement: Length,
}

impl Base {
    /// The base that a pattern describes; what it leaves out is chosen to suit the mould and the
    /// staves, and each such choice is added to `choices`.
    pub fn of(
        pattern: &BasePattern,
        stave_thickness: Option<Length>,
        mould: &Mould,
        catalogue: &Catalogue,
        choices: &mut Vec<Choice>,
    ) -> Self {
        let stave = stave_thickness.unwrap_or(USUAL_STAVE_THICKNESS);
        let mut given = |key, written: Option<Length>, usual: Length, reason: Message| {
            written.unwrap_or_else(|| {
                choices.push(Choice { key, value: usual.into(), reason });
                usual
            })
        };
        let diameter = given(
            "base.diameter",
            pattern.diameter,
            usual_diameter(mould, stave),
            Message::new("choice-base-diameter").with("girth", mould.girth_base).with("stave", stave),
        );
        let thickness = given(
            "base.thickness",
            pattern.thickness,
            USUAL_THICKNESS,
            Message::new("choice-base-thickness").with("thickness", USUAL_THICKNESS),
        );
        let groove_depth = given(
            "base.groove.depth",
            pattern.groove_depth,
            USUAL_GROOVE_DEPTH,
            Message::new("choice-base-groove-depth").with("depth", USUAL_GROOVE_DEPTH),
        );
        let groove_width = given(
            "base.groove.width",
            pattern.groove_width,
            usual_groove_width(stave),
            Message::new("choice-base-groove-width").with("stave", stave).with("play", GROOVE_PLAY),
        );
        let screw_hole = given(
            "base.screw",
            pattern.screw_hole,
            USUAL_SCREW_HOLE,
            Message::new("choice-base-screw-hole").with("hole", USUAL_SCREW_HOLE),
        );
        let wood = pattern.wood.clone().unwrap_or_else(|| usual_wood(catalogue, choices));
        Self {
            diameter,
            thickness,
            groove_depth,
            groove_width,
            groove_radius: (diameter / 2.0 - groove_depth).max(Length::ZERO),
            movement: movement(diameter, wood.tangential, INDOOR_SWING),
            wood,
            screw_hole,
            plug_diameter: plug(screw_hole),
        }
    }
}

/// Change of a piece of wood across the grain, `D · S · ΔM / 30`, for its shrinkage `S` from green
/// to oven dry (as a share) and a change of moisture in percent of its dry weight, below 30 %
/// (USDA Forest Products Laboratory, *Wood Handbook*, FPL-GTR-190 (2010), chapter 4).
pub fn movement(across: Length, shrinkage: f64, moisture_change: f64) -> Length {
    across * (shrinkage * moisture_change / FIBRE_SATURATION)
}

/// The same by the coefficient of dimensional change for one percent of moisture, `D · C · ΔM`
/// (*Wood Handbook*, FPL-GTR-190 (2010), chapter 13).
pub fn movement_by_coefficient(across: Length, coefficient: f64, moisture_change: f64) -> Length {
    across * (coefficient * moisture_change)
}

/// As wide as the mould's base less a stave all round, so that the staves turn up close to the
/// mould; rounded down to 1/16 in.
fn usual_diameter(mould: &Mould, stave: Length) -> Length {
    let sixteenth = 1.0 / 16.0;
    let room = mould.girth_base / TAU * 2.0 - stave * 2.0;
    Length::inches(((room.to_inches() / sixteenth + 1e-9).floor() * sixteenth).max(sixteenth))
}

fn usual_groove_width(stave: Length) -> Length {
    let step = 1.0 / 32.0;
    Length::inches(((stave + GROOVE_PLAY).to_inches() / step - 1e-9).ceil().max(1.0) * step)
}

fn usual_wood(catalogue: &Catalogue, choices: &mut Vec<Choice>) -> Wood {
    let wood =
        catalogue.wood("cherry").or_else(|| catalogue.woods.first()).cloned().unwrap_or_else(|| Wood {
            name: "cherry".to_owned(),
            tangential: 0.071,
            radial: 0.037,
            source: "USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010), table 4-3"
                .to_owned(),
        });
    choices.push(Choice {
        key: "base.wood",
        value: Value::Name(wood.name.clone()),
        reason: Message::new("choice-base-wood")
            .with("wood", &wood)
            .with("tangential", Value::Percent(wood.tangential)),
    });
    wood
}

fn plug(hole: Length) -> Length {
    let least = hole + PLUG_COVER;
    PLUGS.iter().map(|inches| Length::inches(*inches)).find(|plug| *plug >= least).unwrap_or(least)
}
