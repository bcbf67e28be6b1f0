//! Which drawings of the making there are.

use basket::Basket;
use basket::pattern::{HoopWay, StepKind};
use basket::steps::Stage;

use crate::lines::PictureError;

/// A drawing of the making, or of a part of it from close by.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Plate {
    /// The base on the mould.
    BaseOnMould,
    /// All staves in the groove under a band.
    StavesSet,
    /// The first rows.
    FirstRows,
    /// The body half woven.
    HalfWoven,
    /// From close by: a new strand laid over the spent one.
    Join,
    /// The weaving done.
    Woven,
    /// The ears set.
    EarsSet,
    /// The ends of a fixed handle set.
    HandleSet,
    /// Both hoops as rings, lying ready beside the basket.
    RingsMade,
    /// Both hoops, closed, above the basket.
    HoopsScarfed,
    /// From close by: the scarf of the outer hoop.
    Scarf,
    /// Both hoops in place.
    RimClamped,
    /// From close by: the tips of the staves cut level with the hoops.
    TipsTrimmed,
    /// All pins in.
    Pinned,
    /// From close by: a pin's head outside and its peened end inside.
    PinAndClinch,
    /// Filler and lashing on.
    Lashed,
    /// From close by: the first wraps of the lashing.
    LashingStart,
    /// From close by: where the lashing's last wrap meets its first.
    LashingEnd,
    /// The handle riveted to the ears.
    Handled,
    /// From close by: an ear with handle, rivet and washers.
    EarWithRivet,
    /// The lid open, to be tried on.
    LidFitted,
    /// The basket finished.
    Finished,
    /// The parts drawn apart, with their names.
    Exploded,
    /// The basket finished, large, for a cover.
    Cover,
}

impl Plate {
    /// All of them, in making order.
    pub const ALL: [Self; 24] = [
        Self::BaseOnMould,
        Self::StavesSet,
        Self::FirstRows,
        Self::HalfWoven,
        Self::Join,
        Self::Woven,
        Self::EarsSet,
        Self::HandleSet,
        Self::RingsMade,
        Self::HoopsScarfed,
        Self::Scarf,
        Self::RimClamped,
        Self::TipsTrimmed,
        Self::Pinned,
        Self::PinAndClinch,
        Self::Lashed,
        Self::LashingStart,
        Self::LashingEnd,
        Self::Handled,
        Self::EarWithRivet,
        Self::LidFitted,
        Self::Finished,
        Self::Exploded,
        Self::Cover,
    ];

    /// Those that are drawn of a lid too, as it is made.
    pub(super) const OF_LID: [Self; 5] =
        [Self::BaseOnMould, Self::StavesSet, Self::Woven, Self::RimClamped, Self::Lashed];

    /// Its name, fit for a file. Its caption is the message `plate-` and this name; the message's
    /// attribute `alt` describes it for those who cannot see it.
    pub const fn name(self) -> &'static str {
        match self {
            Self::BaseOnMould => "base-on-mould",
            Self::StavesSet => "staves-set",
            Self::FirstRows => "first-rows",
            Self::HalfWoven => "half-woven",
            Self::Join => "join",
            Self::Woven => "woven",
            Self::EarsSet => "ears-set",
            Self::HandleSet => "handle-set",
            Self::RingsMade => "rings-made",
            Self::HoopsScarfed => "hoops-scarfed",
            Self::Scarf => "scarf-close-up",
            Self::RimClamped => "rim-clamped",
            Self::TipsTrimmed => "tips-trimmed",
            Self::Pinned => "pinned",
            Self::PinAndClinch => "pin-and-clinch",
            Self::Lashed => "lashed",
            Self::LashingStart => "lashing-start",
            Self::LashingEnd => "lashing-end",
            Self::Handled => "handled",
            Self::EarWithRivet => "ear-with-rivet",
            Self::LidFitted => "lid-fitted",
            Self::Finished => "finished",
            Self::Exploded => "exploded",
            Self::Cover => "cover",
        }
    }

    /// The name of its [`Drawing`](crate::Drawing).
    pub fn figure(self) -> String {
        format!("stage-{}", self.name())
    }

    /// The same of a drawing of the lid.
    pub fn lid_figure(self) -> String {
        format!("lid-{}", self.figure())
    }

    /// The drawing of that name.
    ///
    /// # Errors
    /// When there is none; the error lists those there are.
    pub fn named(name: &str) -> Result<Self, PictureError> {
        Self::ALL.into_iter().find(|plate| plate.name() == name).ok_or_else(|| PictureError::Unknown {
            what: "stage drawing",
            name: name.to_owned(),
            known: Self::ALL.map(Self::name).join(", "),
        })
    }

    /// The drawings that go with a step, in the order of its text; those of parts that a basket has
    /// not are not among its drawings.
    pub fn of_step(step: StepKind) -> &'static [Self] {
        match step {
            StepKind::Base => &[Self::BaseOnMould],
            StepKind::Staves => &[Self::StavesSet],
            StepKind::FirstRows => &[Self::FirstRows],
            StepKind::Half => &[Self::HalfWoven],
            StepKind::Rest => &[Self::Join],
            StepKind::Dry => &[Self::Woven],
            StepKind::Ears => &[Self::EarsSet],
            StepKind::Rings => &[Self::RingsMade],
            StepKind::Rim => &[Self::HoopsScarfed, Self::Scarf, Self::RimClamped],
            StepKind::Pins => &[Self::TipsTrimmed, Self::Pinned, Self::PinAndClinch],
            StepKind::Lashing => &[Self::LashingStart, Self::LashingEnd, Self::Lashed],
            StepKind::Handle => &[Self::HandleSet, Self::Handled, Self::EarWithRivet],
            StepKind::Lid => &[Self::LidFitted],
            StepKind::Finish => &[Self::Finished],
            StepKind::Cut
            | StepKind::Bend
            | StepKind::Seal
            | StepKind::ToEars
            | StepKind::OffMould
            | StepKind::Plug => &[],
        }
    }

    /// The stage that it is drawn at, or after which it comes.
    pub(super) const fn stage(self) -> Stage {
        match self {
            Self::BaseOnMould => Stage::BaseOnMould,
            Self::StavesSet => Stage::StavesSet,
            Self::FirstRows => Stage::FirstRows,
            Self::HalfWoven | Self::Join => Stage::HalfWoven,
            Self::Woven => Stage::Woven,
            Self::EarsSet | Self::HandleSet => Stage::EarsSet,
            Self::RingsMade => Stage::RingsMade,
            Self::HoopsScarfed | Self::Scarf | Self::RimClamped => Stage::RimClamped,
            Self::TipsTrimmed | Self::Pinned | Self::PinAndClinch => Stage::Pinned,
            Self::Lashed | Self::LashingStart | Self::LashingEnd => Stage::Lashed,
            Self::Handled | Self::EarWithRivet => Stage::Handled,
            Self::LidFitted | Self::Finished | Self::Exploded | Self::Cover => Stage::Finished,
        }
    }

    /// Whether it is drawn of this lid, made by itself.
    pub fn is_of_lid(self, alone: &Basket) -> bool {
        Self::OF_LID.contains(&self) && self.is_of(alone)
    }

    /// Whether a basket has what it shows.
    pub fn is_of(self, basket: &Basket) -> bool {
        match self {
            Self::Join => super::join::first(basket).is_some(),
            Self::EarsSet => basket.ears.is_some(),
            Self::HandleSet => basket.in_rim().is_some() && basket.ears.is_none(),
            Self::Handled | Self::EarWithRivet => basket.rivets().is_some(),
            Self::RingsMade => basket.body.rim().hoops == HoopWay::Rings,
            Self::Scarf => basket.body.rim().hoops != HoopWay::Bought,
            Self::Lashed | Self::LashingStart | Self::LashingEnd => basket.body.lashing().is_some(),
            Self::LidFitted => basket.lid.is_some(),
            Self::Pinned | Self::PinAndClinch => basket.body.pins().count() > 0,
            _ => true,
        }
    }
}
