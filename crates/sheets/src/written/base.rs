//! The wooden base.

use basket::{base, stock};
use serde::Serialize;

use super::measure::Mm;
use super::vocabulary::Rings;

/// The wooden base.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(crate) struct Base {
    /// Diameter of the disc; where it is not round, its girth / π.
    diameter_mm: Mm,
    /// Its length; its diameter where it is round.
    length_mm: Mm,
    /// Its width.
    width_mm: Mm,
    /// Thickness of the disc.
    thickness_mm: Mm,
    /// How deep the groove goes in from the edge.
    groove_depth_mm: Mm,
    /// How wide the groove is, from its lower to its upper cheek.
    groove_width_mm: Mm,
    /// Radius of the bottom of the groove, where the feet of the staves end.
    groove_radius_mm: Mm,
    /// The wood, or that of its middle strip.
    wood: Wood,
    /// The woods of the strips it is glued up from, side by side; empty where it is in one piece.
    strips: Vec<Wood>,
    /// Hole for the screw that holds the base on the mould.
    screw_hole_mm: Mm,
    /// Diameter of the plug that closes the hole.
    plug_diameter_mm: Mm,
    /// How much wider the disc gets across the grain from a dry to a damp room.
    movement_mm: Mm,
    /// On which face rings are turned.
    rings: Rings,
    /// Radii of the turned rings.
    ring_radii_mm: Vec<Mm>,
    /// Whether it is sealed before the weaving.
    sealed: bool,
}

/// A wood: how far it moves across the grain.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct Wood {
    /// Name, such as `cherry`.
    name: String,
    /// Tangential shrinkage from green to oven dry, as a share.
    tangential: f64,
    /// Radial shrinkage from green to oven dry, as a share.
    radial: f64,
    /// Where the figures come from.
    source: String,
}

impl From<&base::Base> for Base {
    fn from(base: &base::Base) -> Self {
        let base::Base {
            diameter,
            over: _,
            ends: _,
            thickness,
            groove_depth,
            groove_width,
            wood,
            strips,
            screw_hole,
            plug_diameter,
            movement,
            rings,
            sealed,
        } = base;
        Self {
            diameter_mm: diameter.into(),
            length_mm: base.across().length.into(),
            width_mm: base.across().width.into(),
            thickness_mm: thickness.into(),
            groove_depth_mm: groove_depth.into(),
            groove_width_mm: groove_width.into(),
            groove_radius_mm: base.groove_radius().into(),
            wood: wood.into(),
            strips: strips.iter().map(Wood::from).collect(),
            screw_hole_mm: screw_hole.into(),
            plug_diameter_mm: plug_diameter.into(),
            movement_mm: movement.into(),
            rings: rings.into(),
            ring_radii_mm: base.ring_radii().iter().map(Mm::from).collect(),
            sealed: *sealed,
        }
    }
}

impl From<&stock::Wood> for Wood {
    fn from(wood: &stock::Wood) -> Self {
        let stock::Wood { name, tangential, radial, source } = wood;
        Self { name: name.clone(), tangential: *tangential, radial: *radial, source: source.clone() }
    }
}
