//! The maker's file: what was written, and nothing that can be computed from it.
//!
//! A pattern is a TOML file. [`read()`] turns its text into a [`Pattern`] or lists everything that is
//! wrong with it, each with its place in the text and how to mend it. Whatever is `None` in a pattern
//! was left out and is computed.

mod amend;
mod base;
mod direction;
pub mod drawn;
mod face;
mod finish;
mod fittings;
mod handle;
pub mod keys;
mod lean;
mod level;
mod lid;
mod mould;
mod note;
pub mod rays;
mod read;
mod ready;
mod rim;
mod rule;
mod sale;
mod staves;
mod step;
mod units;
mod weave;
mod word;

pub use base::{BasePattern, Rings};
pub use direction::{Direction, Handed};
pub use face::CaneFace;
pub use finish::{Finish, FinishPart};
pub use fittings::{EarAxis, EarMaterial, EarPlacing, EarWay, EarsPattern};
pub use handle::{BailCurve, HandleJoint, HandleKind, HandleMade, HandlePattern};
pub use lean::Lean;
pub use level::Level;
pub use lid::{LidFit, LidHinge, LidLift, LidPattern, LidWay};
pub use mould::{
    FootSize, Girth, Levels, LevelsKind, MouldForm, MouldPattern, MouldPieces, Outline, OutlineKind, Side,
    WidthAt,
};
pub use note::{Note, Photo};
pub use rays::{ray_ends, rays_to, spanned};
pub use read::{Problem, read};
pub use ready::{AllReady, Ready};
pub use rim::{Every, FillerPattern, HoopWay, LashingPattern, LashingStyle, PinsPattern, RimPattern};
pub use rule::Rule;
pub use sale::Sale;
pub use staves::{OvalSide, Spacing, StavesPattern, TaperPattern};
pub use step::StepKind;
pub use units::{Language, Units};
pub use weave::{CoursePattern, Until, Way, WeaveKind, WeavePattern};
pub use word::Word;

use crate::stock::Material;

/// A commented pattern to start from; it reads without problems.
pub const STARTER: &str = include_str!("starter.toml");

/// One basket, as its maker wrote it.
#[derive(Clone, Debug, PartialEq)]
pub struct Pattern {
    /// Name of the basket.
    pub title: String,
    /// Units of the file.
    pub units: Units,
    /// Language of the sheets; none when the pattern does not say.
    pub language: Option<Language>,
    /// For whom it is; none where the pattern does not say.
    pub level: Option<Level>,
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
    /// The lashing that binds the rim; none where pins alone hold it.
    pub lashing: Option<LashingPattern>,
    /// The pins through the rim.
    pub pins: PinsPattern,
    /// The ears, if there are any.
    pub ears: Option<EarsPattern>,
    /// The handle, if there is one.
    pub handle: Option<HandlePattern>,
    /// The lid, if there is one.
    pub lid: Option<LidPattern>,
    /// What protects the finished basket.
    pub finish: Finish,
    /// What it goes on; empty: the whole basket.
    pub finish_on: Vec<FinishPart>,
    /// What is written on the finished basket beside the date.
    pub signature: Option<String>,
    /// Which hand leads the weaver.
    pub hand: Handed,
    /// What lies ready before the making begins.
    pub ready: AllReady,
    /// The maker's own words and photographs for the steps, in the order of the file.
    pub notes: Vec<Note>,
    /// What stands on the title page of a pattern for sale.
    pub sale: Sale,
    /// Materials that the maker added or measured again; they stand before the catalogue's.
    pub materials: Vec<Material>,
}

impl Pattern {
    /// The handle, where it is one that is fixed in the rim.
    pub(crate) fn fixed_handle(&self) -> Option<&HandlePattern> {
        self.handle.as_ref().filter(|handle| handle.kind() == HandleKind::Fixed)
    }
}

impl Pattern {
    /// Whether it has a lid with hinge and latch in the middle of its long sides.
    pub(crate) fn is_hinged_at_sides(&self) -> bool {
        let at_side = |lid: &LidPattern| {
            lid.fit == Some(LidFit::Flush) && matches!(lid.hinge, None | Some(LidHinge::Side))
        };
        !matches!(self.mould.outline, Outline::Round) && self.lid.as_ref().is_some_and(at_side)
    }

    /// The courses that it names, as they are woven in its direction.
    pub(crate) fn woven_courses(&self) -> Vec<CoursePattern> {
        self.weave.courses.iter().map(|course| course.toward(self.direction())).collect()
    }

    /// To which side the weaver runs.
    pub fn direction(&self) -> Direction {
        self.weave.direction.unwrap_or(Direction::of(self.hand))
    }
}
