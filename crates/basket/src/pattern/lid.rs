//! What is known of the lid.

use super::word::words;
use crate::measure::Length;
use crate::stock::Material;

/// The lid, woven over a shallow mould of its own.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct LidPattern {
    /// How it sits on the basket.
    pub fit: Option<LidFit>,
    /// What it is woven over.
    pub way: Option<LidWay>,
    /// Diameter, or length, of its mould at the rim.
    pub across: Option<Length>,
    /// Height of its mould.
    pub height: Option<Length>,
    /// Diameter, or length, of its mould at the foot, where the plaque is.
    pub plaque: Option<Length>,
    /// Room between its rim and the basket's, all round.
    pub clearance: Option<Length>,
    /// What its staves are cut from.
    pub staves: Option<Material>,
    /// How many staves it has.
    pub count: Option<u32>,
    /// Its weaver.
    pub weaver: Option<Material>,
    /// What the ledge on which it lies is bent from, or the collar that holds it.
    pub ledge: Option<Material>,
    /// What one lifts it by.
    pub lift: Option<LidLift>,
    /// Where it is hinged.
    pub hinge: Option<LidHinge>,
}

/// What a lid is woven over.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum LidWay {
    /// A shallow mould of its own.
    #[default]
    Mould,
    /// A board, on which it is woven flat.
    Flat,
}

words! { LidWay:
    Mould = "mould", "lid-way-mould";
    Flat = "flat", "lid-way-flat";
}

/// How a lid sits on its basket.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum LidFit {
    /// Within the rim, on a ledge.
    #[default]
    DropIn,
    /// Over the rim.
    Cap,
    /// On the rim, with a collar that reaches into it.
    Flush,
}

words! { LidFit:
    DropIn = "drop-in", "lid-fit-drop-in";
    Cap = "cap", "lid-fit-cap";
    Flush = "flush", "lid-fit-flush";
}

/// Where a lid is hinged that lies on the rim.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum LidHinge {
    /// In the middle of a long side; of a round basket, anywhere.
    Side,
    /// At one end.
    End,
    /// Nowhere: it is lifted off.
    None,
}

words! { LidHinge:
    Side = "side", "lid-hinge-side";
    End = "end", "lid-hinge-end";
    None = "none", "lid-hinge-none";
}

/// What one lifts a lid by.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum LidLift {
    /// A turned knob in the plaque's hole.
    #[default]
    Knob,
    /// A loop of cane through the plaque's hole.
    Loop,
    /// Nothing; the hole is plugged.
    None,
}

words! { LidLift:
    Knob = "knob", "lid-lift-knob";
    Loop = "loop", "lid-lift-loop";
    None = "none", "lid-lift-none";
}
