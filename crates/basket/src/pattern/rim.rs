//! What is known of the rim: hoops, filler, lashing and pins.

use super::word::words;
use crate::measure::Length;
use crate::stock::Material;

/// The two-piece split rim.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct RimPattern {
    /// How the hoops come to be.
    pub hoops: Option<HoopWay>,
    /// Stock of the outer hoop.
    pub stock: Option<Material>,
    /// Stock of the inner hoop, where it differs.
    pub inner: Option<Material>,
    /// Length over which the ends of a hoop lie on each other.
    pub lap: Option<Length>,
    /// Whether a lid is hinged on it in the middle of a long side. Not written here: it follows from the lid.
    pub hinged: bool,
}

/// How the hoops of a rim come to be.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum HoopWay {
    /// Glued to rings before they go on.
    Rings,
    /// Bent and closed in their place on the rim.
    Bent,
    /// Bought as rings.
    Bought,
}

words! { HoopWay:
    Rings = "rings", "hoop-way-rings";
    Bent = "bent", "hoop-way-bent";
    Bought = "bought", "hoop-way-bought";
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

words! { Every:
    Stave = "stave", "every-stave";
    OtherStave = "other-stave", "every-other-stave";
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

words! { LashingStyle:
    Single = "single", "lashing-style-single";
    Crossed = "crossed", "lashing-style-crossed";
}

/// The pins through hoops and staves.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct PinsPattern {
    /// The pin.
    pub stock: Option<Material>,
    /// At each stave or each second one.
    pub every: Option<Every>,
}
