//! The wooden base: disc, groove in its edge, screw hole and plug.
//!
//! The groove runs round the edge of the disc and opens outward; staves lie in it flat, each on a
//! radius, and turn up over the mould.

use crate::pattern::keys;
use std::f64::consts::{PI, TAU};

use crate::form::{Across, Form};
use crate::making::Making;
use crate::measure::Length;
use crate::message::{Message, Value};
use crate::pattern::{BasePattern, Rings};
use crate::stock::Wood;

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
/// Turned rings, as shares of the way from the plug to the groove (common practice: two together, and one
/// beside the groove).
const TURNED: [f64; 3] = [0.5, 0.62, 0.94];
/// Keeps divisions by a length finite.
const LEAST: Length = Length::mm(1e-6);
/// How much wider than its hole a plug must be to cover the screw's sunk head (common practice).
const PLUG_COVER: Length = Length::inches(0.125);

/// The base as computed.
#[derive(Clone, Debug, PartialEq)]
pub struct Base {
    /// Diameter of the disc; where it is not round, its girth / π.
    pub diameter: Length,
    /// How much more than that its length and its width are; nothing where it is round.
    pub over: Across,
    /// How tight the foot of a mould is that is not round.
    pub ends: Option<TightEnds>,
    /// Thickness of the disc.
    pub thickness: Length,
    /// How deep the groove goes in from the edge.
    pub groove_depth: Length,
    /// How wide the groove is, from its lower to its upper cheek.
    pub groove_width: Length,
    /// The wood, or that of its middle strip; the plug is made of it too.
    pub wood: Wood,
    /// The woods of the strips it is glued up from, side by side; none where it is in one piece.
    pub strips: Vec<Wood>,
    /// Hole for the screw that holds the base on the mould.
    pub screw_hole: Length,
    /// Diameter of the plug that closes the hole.
    pub plug_diameter: Length,
    /// How much wider the disc gets across the grain, which lies along its length, from a dry to a damp room.
    pub movement: Length,
    /// On which face rings are turned.
    pub rings: Rings,
    /// Whether it is sealed before the weaving.
    pub sealed: bool,
}

/// How much tighter than a round foot of its girth a mould's foot is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TightEnds {
    /// The foot's girth over 2π.
    pub round: Length,
    /// Its smallest radius.
    pub tightest: Length,
}

impl TightEnds {
    fn of(form: &Form) -> Option<Self> {
        let tightest = form.tightest(Length::ZERO, Length::ZERO);
        (!form.outline.is_round()).then(|| Self { round: form.girth_base() / TAU, tightest })
    }
}

impl Base {
    /// The base that a pattern describes; what it leaves out is chosen to suit the form and the staves.
    pub fn of(
        pattern: &BasePattern,
        stave_thickness: Option<Length>,
        form: &Form,
        making: &mut Making<'_>,
    ) -> Self {
        let stave = stave_thickness.unwrap_or(USUAL_STAVE_THICKNESS);
        let over = over(form);
        let length =
            making.or(pattern.diameter, keys::base::DIAMETER.path, usual_length(form, stave, over), |_| {
                Message::new("choice-base-diameter").with("girth", form.girth_base()).with("stave", stave)
            });
        let diameter = length - over.length;
        let thickness = making.or(pattern.thickness, keys::base::THICKNESS.path, USUAL_THICKNESS, |usual| {
            Message::new("choice-base-thickness").with("thickness", usual)
        });
        let groove_depth =
            making.or(pattern.groove_depth, keys::groove::DEPTH.path, USUAL_GROOVE_DEPTH, |usual| {
                Message::new("choice-base-groove-depth").with("depth", usual)
            });
        let groove_width =
            making.or(pattern.groove_width, keys::groove::WIDTH.path, usual_groove_width(stave), |_| {
                Message::new("choice-base-groove-width").with("stave", stave).with("play", GROOVE_PLAY)
            });
        let screw_hole = making.or(pattern.screw_hole, keys::base::SCREW.path, USUAL_SCREW_HOLE, |usual| {
            Message::new("choice-base-screw-hole").with("hole", usual)
        });
        let woods = pattern.woods.as_deref().unwrap_or_default();
        let middle = woods.get(woods.len() / 2).cloned();
        let wood = middle.unwrap_or_else(|| usual_wood(making));
        let strips = if woods.len() > 1 { woods.to_vec() } else { Vec::new() };
        let sealed = pattern.sealed.unwrap_or_else(|| choose_sealed(making));
        Self {
            diameter,
            over,
            ends: TightEnds::of(form),
            thickness,
            groove_depth,
            groove_width,
            movement: movement(diameter + over.width, shrinkage(&wood, &strips), INDOOR_SWING),
            wood,
            strips,
            screw_hole,
            plug_diameter: plug(screw_hole),
            rings: pattern.rings.unwrap_or_default(),
            sealed,
        }
    }

    /// Its length and width.
    pub fn across(&self) -> Across {
        Across { length: self.diameter + self.over.length, width: self.diameter + self.over.width }
    }

    /// Radius of the bottom of the groove, where the feet of the staves end.
    pub fn groove_radius(&self) -> Length {
        (self.diameter / 2.0 - self.groove_depth).max(Length::ZERO)
    }

    /// Radius of a round groove on whose bottom the staves would stand as close as they do where this one is
    /// tightest. So far inside an outline of the radius of curvature `ρ` the way from stave to stave shrinks
    /// by that share of `ρ` (differential geometry).
    pub fn crowded_radius(&self) -> Length {
        let Some(TightEnds { round, tightest }) = self.ends else { return self.groove_radius() };
        let inside = round - self.groove_radius();
        (round * (1.0 - inside / tightest.max(LEAST))).max(Length::ZERO)
    }

    /// The names of its woods.
    pub fn woods(&self) -> Value {
        if self.strips.is_empty() {
            return (&self.wood).into();
        }
        Value::List(self.strips.iter().map(Value::from).collect())
    }

    /// Width of each strip it is glued up from.
    pub fn strip_width(&self) -> Length {
        self.diameter / self.strips.len().max(1) as f64
    }

    /// Its glue lines, by their distance from the middle.
    pub fn glue_lines(&self) -> impl Iterator<Item = Length> {
        let (width, from) = (self.strip_width(), self.diameter / 2.0);
        (1..self.strips.len()).map(move |strip| width * strip as f64 - from)
    }

    /// Radii of the turned rings, from the middle outward; none where none are turned.
    pub fn ring_radii(&self) -> Vec<Length> {
        if self.rings == Rings::None || !self.across().is_round() {
            return Vec::new();
        }
        let (from, to) = (self.plug_diameter / 2.0, self.groove_radius());
        TURNED.iter().map(|share| from + (to - from).max(Length::ZERO) * *share).collect()
    }

    /// Radius of its edge.
    pub fn edge_radius(&self) -> Length {
        self.diameter / 2.0
    }
}

/// Change of a piece of wood across the grain, `D · S · ΔM / 30`, for its shrinkage `S` from green
/// to oven dry (as a share) and a change of moisture in percent of its dry weight, below 30 %
/// (USDA Forest Products Laboratory, *Wood Handbook*, FPL-GTR-190 (2010), chapter 4).
pub fn movement(across: Length, shrinkage: f64, moisture_change: f64) -> Length {
    across * (shrinkage * moisture_change / FIBRE_SATURATION)
}

/// How much longer and wider than its girth / π a curve at an even distance from the mould's foot is.
fn over(form: &Form) -> Across {
    if form.outline.is_round() {
        return Across::round(Length::ZERO);
    }
    let (foot, round) = (form.across(Length::ZERO, Length::ZERO), form.girth_base() / PI);
    Across { length: foot.length - round, width: foot.width - round }
}

/// As long as the mould's base less a stave all round, so that the staves turn up close to the
/// mould; rounded down to 1/16 in.
fn usual_length(form: &Form, stave: Length, over: Across) -> Length {
    let sixteenth = 1.0 / 16.0;
    let room = form.girth_base() / TAU * 2.0 - stave * 2.0 + over.length;
    Length::inches(((room.to_inches() / sixteenth + 1e-9).floor() * sixteenth).max(sixteenth))
}

fn usual_groove_width(stave: Length) -> Length {
    let step = 1.0 / 32.0;
    Length::inches(((stave + GROOVE_PLAY).to_inches() / step - 1e-9).ceil().max(1.0) * step)
}

fn usual_wood(making: &mut Making<'_>) -> Wood {
    let catalogue = making.catalogue;
    let found = catalogue.wood("cherry").or_else(|| catalogue.woods.first());
    let wood = found.cloned().unwrap_or_else(|| Wood {
        name: "cherry".to_owned(),
        tangential: 0.071,
        radial: 0.037,
        source: "USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010), table 4-3".to_owned(),
    });
    let reason = Message::new("choice-base-wood")
        .with("wood", &wood)
        .with("tangential", Value::Percent(wood.tangential));
    making.chose(keys::base::WOOD.path, wood.name.as_str(), reason);
    wood
}

fn choose_sealed(making: &mut Making<'_>) -> bool {
    making.chose(keys::base::SEALED.path, "true", Message::new("choice-base-sealed"));
    true
}

/// Shrinkage across the grain; of strips of one width, glued up side by side, the mean of theirs.
fn shrinkage(wood: &Wood, strips: &[Wood]) -> f64 {
    if strips.is_empty() {
        return wood.tangential;
    }
    strips.iter().map(|strip| strip.tangential).sum::<f64>() / strips.len() as f64
}

fn plug(hole: Length) -> Length {
    let least = hole + PLUG_COVER;
    PLUGS.iter().map(|inches| Length::inches(*inches)).find(|plug| *plug >= least).unwrap_or(least)
}
