//! The pattern as values. Whatever is `None` was left out and is computed.

use super::weave::WeavePattern;
use crate::colour::Colour;
use crate::measure::{Length, Unit};
use crate::stock::{Material, Wood};

/// The units in which a pattern's bare numbers are meant and its sheets are printed first.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Units {
    /// Inches and fractions.
    #[default]
    Inches,
    /// Millimetres.
    Millimetres,
}

impl Units {
    /// The unit of a bare number.
    pub const fn unit(self) -> Unit {
        match self {
            Self::Inches => Unit::Inch,
            Self::Millimetres => Unit::Millimetre,
        }
    }
}

/// The language in which a pattern's sheets are written.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, serde::Serialize)]
pub enum Language {
    /// English.
    #[default]
    #[serde(rename = "en")]
    English,
    /// German.
    #[serde(rename = "de")]
    German,
}

impl Language {
    /// All languages.
    pub const ALL: &'static [Self] = &[Self::English, Self::German];

    /// The language's tag, such as `en`.
    pub const fn tag(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::German => "de",
        }
    }

    /// The language of this tag.
    pub fn of(tag: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|language| language.tag() == tag)
    }

    /// The units that its readers want first, whatever the pattern is written in; none where the
    /// pattern's own come first.
    pub const fn units(self) -> Option<Units> {
        match self {
            Self::English => None,
            Self::German => Some(Units::Millimetres),
        }
    }
}

/// One basket, as its maker wrote it.
#[derive(Clone, Debug, PartialEq)]
pub struct Pattern {
    /// Name of the basket.
    pub title: String,
    /// Units of the file.
    pub units: Units,
    /// Language of the sheets; none when the pattern does not say.
    pub language: Option<Language>,
    /// The mould.
    pub mould: MouldPattern,
    /// The wooden base.
    pub base: BasePattern,
    /// The staves.
    pub staves: StavesPattern,
    /// The weaving.
    pub weave: WeavePattern,
    /// The two-piece rim.
    pub rim: RimPattern,
    /// The filler on top of the stave tips.
    pub filler: FillerPattern,
    /// The lashing that binds the rim.
    pub lashing: LashingPattern,
    /// The pins through the rim.
    pub pins: PinsPattern,
    /// The ears, if there are any.
    pub ears: Option<EarsPattern>,
    /// The handle, if there is one.
    pub handle: Option<HandlePattern>,
    /// What protects the finished basket.
    pub finish: Finish,
    /// The maker's own words and photographs for the steps, in the order of the file.
    pub notes: Vec<Note>,
    /// Materials that the maker added or measured again; they stand before the catalogue's.
    pub materials: Vec<Material>,
}

/// The maker's own words or photograph for a step.
#[derive(Clone, Debug, PartialEq, Eq, serde::Serialize)]
pub struct Note {
    /// The step, by the identifier of its title, such as `step-lashing`.
    pub step: &'static str,
    /// What to say; paragraphs are parted by an empty line.
    pub text: Option<String>,
    /// What to show.
    pub photo: Option<Photo>,
}

/// A photograph that a pattern names.
#[derive(Clone, Debug, PartialEq, Eq, serde::Serialize)]
pub struct Photo {
    /// Its file, as written: a path that leads downward from the pattern's own folder.
    pub path: String,
    /// Where it stands in the pattern's text, in bytes.
    #[serde(skip)]
    pub span: std::ops::Range<usize>,
    /// What it shows; stands under it, and instead of it for those who cannot see it.
    pub caption: String,
}

/// The shape over which the basket is woven.
#[derive(Clone, Debug, PartialEq)]
pub struct MouldPattern {
    /// Shape seen from above.
    pub outline: Outline,
    /// Shape seen from the side.
    pub form: Form,
}

/// Shape of a mould seen from above.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Outline {
    /// A circle at every height.
    #[default]
    Round,
}

/// Shape of a mould seen from the side.
#[derive(Clone, Debug, PartialEq)]
pub enum Form {
    /// Tape measurements: girth at heights, base upward.
    Girths(Vec<Girth>),
    /// Drawn from three figures.
    Drawn {
        /// Diameter at the base.
        base: Length,
        /// Diameter at the rim.
        rim: Length,
        /// Height from base to rim.
        height: Length,
        /// How the side runs between them.
        side: Side,
    },
}

/// One tape measurement round a mould.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Girth {
    /// Height above the mould's base.
    pub height: Length,
    /// What the tape read.
    pub girth: Length,
}

/// How the side of a drawn mould runs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Side {
    /// Straight up: base and rim have one diameter.
    Straight,
    /// A straight slope from base to rim.
    Cone,
    /// A curve that ends upright at the rim.
    Bowl,
}

/// The wooden disc in whose groove the staves stand.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct BasePattern {
    /// Diameter of the disc.
    pub diameter: Option<Length>,
    /// Thickness of the disc.
    pub thickness: Option<Length>,
    /// How deep the groove goes in from the edge.
    pub groove_depth: Option<Length>,
    /// How wide the groove is, across its depth.
    pub groove_width: Option<Length>,
    /// The wood.
    pub wood: Option<Wood>,
    /// Hole for the screw that holds the base on the mould.
    pub screw_hole: Option<Length>,
}

/// What is known of the staves.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct StavesPattern {
    /// How many.
    pub count: Option<u32>,
    /// From which stock.
    pub stock: Option<Material>,
    /// Full width, where the stock is cut narrower.
    pub width: Option<Length>,
    /// Wanted gap between staves at the rim.
    pub gap: Option<Length>,
    /// The taper.
    pub taper: Option<TaperPattern>,
    /// Length to cut.
    pub length: Option<Length>,
    /// How many extra staves to shape.
    pub spares: Option<u32>,
    /// Which face of an oval or half round stave looks out.
    pub oval_side: Option<OvalSide>,
    /// Colours of the staves, in order round and then again; empty: natural.
    pub colours: Vec<Colour>,
}

/// Which face of a stave looks outward.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum OvalSide {
    /// The rounded face looks out (usual).
    Out,
    /// The rounded face lies on the mould.
    In,
}

/// A straight taper toward the foot.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TaperPattern {
    /// Distance above the mould's base, along the mould, at which full width begins.
    pub from: Length,
    /// Width at the foot.
    pub foot: Length,
}

/// The two-piece split rim.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct RimPattern {
    /// Stock of the outer hoop.
    pub stock: Option<Material>,
    /// Stock of the inner hoop, where it differs.
    pub inner: Option<Material>,
    /// Length over which the ends of a hoop lie on each other.
    pub lap: Option<Length>,
}

/// The filler that covers the stave tips between the hoops.
#[derive(Clone, Debug, Default, PartialEq)]
pub enum FillerPattern {
    /// Left out: chosen.
    #[default]
    Choose,
    /// No filler.
    None,
    /// From this stock.
    Stock(Material),
}

/// The binding of the rim.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct LashingPattern {
    /// The strand.
    pub weaver: Option<Material>,
    /// How often it goes round the rim.
    pub every: Option<Every>,
    /// Once round, or back again the other way.
    pub style: Option<LashingStyle>,
    /// Length left at each end of a strand to tuck away.
    pub tail: Option<Length>,
}

/// At each stave or at each second one.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Every {
    /// At each stave.
    Stave,
    /// At each second stave.
    OtherStave,
}

/// How the rim is bound.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum LashingStyle {
    /// Once round.
    Single,
    /// Round and back, so that the wraps cross.
    Crossed,
}

/// The pins through hoops and staves.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct PinsPattern {
    /// The pin.
    pub stock: Option<Material>,
    /// At each stave or each second one.
    pub every: Option<Every>,
}

/// The two ears that hold the handle.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct EarsPattern {
    /// What they are made of.
    pub material: Option<EarMaterial>,
    /// How they are placed when no stave faces another.
    pub placing: Option<EarPlacing>,
    /// Width along the rim.
    pub width: Option<Length>,
    /// Thickness.
    pub thickness: Option<Length>,
    /// Height of the rivet hole above the rim.
    pub hole_height: Option<Length>,
    /// Length of the tail that goes down behind the weaving.
    pub tail: Option<Length>,
}

/// What ears are made of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum EarMaterial {
    /// Sheet brass.
    Brass,
    /// Oak, shaved.
    Oak,
    /// Bone.
    Bone,
}

/// How two ears are placed on a count of staves.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum EarPlacing {
    /// Each ear on the middle of a stave, as near to opposite as the count allows.
    OnStaves,
    /// One ear on a stave, the other in the gap that faces it.
    StaveAndGap,
    /// Both ears a quarter pitch off their staves, exactly opposite.
    Shared,
    /// Exactly opposite, wherever the staves are.
    ByAngle,
}

/// The swinging handle.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct HandlePattern {
    /// The curve of the bail.
    pub curve: Option<BailCurve>,
    /// Rise of the bail's middle above the pivots.
    pub rise: Option<Length>,
    /// Radius of the corners of a three-centred bail.
    pub corner: Option<Length>,
    /// Width of the bail, seen from the side.
    pub width: Option<Length>,
    /// Thickness of the bail, seen from the front.
    pub thickness: Option<Length>,
    /// The rivet.
    pub rivet: Option<Material>,
}

/// The curve of a bail.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum BailCurve {
    /// Half a circle.
    Semicircle,
    /// Two corner arcs joined by a flatter one.
    ThreeCentred,
    /// Half an ellipse.
    HalfEllipse,
}

/// What protects the finished basket.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Finish {
    /// Left bare.
    None,
    /// Thin coats of shellac.
    #[default]
    Shellac,
    /// Stain, then shellac.
    StainAndShellac,
    /// Drying oil.
    Oil,
}
