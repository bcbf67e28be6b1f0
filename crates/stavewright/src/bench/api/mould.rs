//! The mould, and what a hand takes hold of on its drawings.

use serde::Serialize;
use utoipa::ToSchema;

use super::Edit;

/// The mould.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Mould {
    /// Its measured girths, base upward; empty for a mould that is drawn from base, rim and height.
    pub(crate) girths: Vec<Girth>,
    /// The side from base to top: girth over 2π, and height, in mm.
    pub(crate) profile: Vec<[f64; 2]>,
    /// The same as it is seen: half of how far it reaches along its length, then along its width, and the
    /// height, in mm.
    pub(crate) seen: Vec<[f64; 3]>,
    /// Height of the mould in mm.
    pub(crate) height_mm: f64,
    /// Top of the weaving as a height, in mm.
    pub(crate) woven_to_mm: f64,
    /// What to do to measure a drawn mould by girths instead; empty for a measured one.
    pub(crate) measure: Vec<Edit>,
    /// What to do to draw a measured mould from base, rim and height instead; empty for a drawn one.
    pub(crate) draw: Vec<Edit>,
    /// What a hand takes hold of on its side: to the right of the middle, and up, in mm.
    pub(crate) grips: Vec<Grip>,
    /// Seen from above; none where it is round.
    pub(crate) plan: Option<MouldPlan>,
    /// The other shapes that it may take, seen from above.
    pub(crate) shapes: Vec<MouldShape>,
}

/// The mould seen from above.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct MouldPlan {
    /// Its foot, once round: along its length and across, in mm.
    pub(crate) foot: Vec<[f64; 2]>,
    /// Its top.
    pub(crate) top: Vec<[f64; 2]>,
    /// What a hand takes hold of.
    pub(crate) grips: Vec<Grip>,
}

/// A shape seen from above.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct MouldShape {
    /// Its word in a pattern.
    pub(crate) word: String,
    /// What to do so that the mould takes it and stays of about its size.
    pub(crate) edits: Vec<Edit>,
}

/// A place of a drawing that a hand takes hold of.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Grip {
    /// What it is called.
    pub(crate) name: String,
    /// What it stands at, in both units.
    pub(crate) text: String,
    /// Where it is, in mm.
    pub(crate) at: [f64; 2],
    /// What changes when it is pulled.
    pub(crate) pulls: Vec<Pull>,
}

/// A value that follows when a grip is pulled.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Pull {
    /// Its place in the pattern, and those of values that must stay the same as it.
    pub(crate) paths: Vec<String>,
    /// Whether it is a share and no length.
    pub(crate) share: bool,
    /// What it is now, in mm or as a share.
    pub(crate) value: f64,
    /// In which direction the grip is pulled for it; of length 1.
    pub(crate) way: [f64; 2],
    /// How much it grows for each mm that way.
    pub(crate) per: f64,
    /// The least that it may be.
    pub(crate) least: f64,
    /// The most.
    pub(crate) most: f64,
    /// One step of an arrow key.
    pub(crate) step: f64,
}

/// One tape measurement.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Girth {
    /// Its place in the pattern, such as `mould.girths[2]`; height is its entry `[1]`, girth `[2]`.
    pub(crate) path: String,
    /// Height above the base.
    pub(crate) height: Measured,
    /// What the tape read.
    #[allow(clippy::struct_field_names, reason = "what the tape reads is the girth")]
    pub(crate) girth: Measured,
}

/// A length as written.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Measured {
    /// As it stands in the file.
    pub(crate) written: String,
    /// In both units.
    pub(crate) text: String,
    /// In millimetres.
    pub(crate) mm: f64,
}
