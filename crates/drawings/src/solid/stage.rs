//! Which parts exist at a stage of the making.

use basket::Basket;
use basket::steps::Stage;

/// Parts that are there together.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum PartGroup {
    Base,
    Screw,
    Plug,
    Mould,
    StavesSet,
    StavesShaved,
    StavesTrimmed,
    Band,
    Rows,
    Ears,
    Hoops,
    Clamps,
    Pins,
    Filler,
    Lashing,
    Handle,
}

impl PartGroup {
    /// How many there are.
    pub(super) const COUNT: usize = Self::ALL.len();

    /// All of them, from the base upward.
    const ALL: [Self; 16] = [
        Self::Base,
        Self::Screw,
        Self::Plug,
        Self::Mould,
        Self::StavesSet,
        Self::StavesShaved,
        Self::StavesTrimmed,
        Self::Band,
        Self::Rows,
        Self::Ears,
        Self::Hoops,
        Self::Clamps,
        Self::Pins,
        Self::Filler,
        Self::Lashing,
        Self::Handle,
    ];

    /// Whether its parts are there at a stage. A basket is on its mould until it is dry and packed:
    /// beside the mould there is no room for the tails of ears and for the inner hoop.
    fn is_there(self, stage: Stage) -> bool {
        match self {
            Self::Base => stage >= Stage::BaseOnMould,
            Self::Screw => (Stage::BaseOnMould..Stage::EarsSet).contains(&stage),
            Self::Mould => stage < Stage::EarsSet,
            Self::Plug => stage == Stage::Finished,
            Self::StavesSet => (Stage::StavesSet..Stage::EarsSet).contains(&stage),
            Self::StavesShaved => (Stage::EarsSet..Stage::Pinned).contains(&stage),
            Self::StavesTrimmed | Self::Pins => stage >= Stage::Pinned,
            Self::Band => (Stage::StavesSet..Stage::Woven).contains(&stage),
            Self::Rows => stage >= Stage::FirstRows,
            Self::Ears => stage >= Stage::EarsSet,
            Self::Hoops => stage >= Stage::RimClamped,
            Self::Clamps => stage == Stage::RimClamped,
            Self::Filler | Self::Lashing => stage >= Stage::Lashed,
            Self::Handle => stage >= Stage::Handled,
        }
    }
}

/// The groups that are there at a stage.
pub(super) fn groups(stage: Stage) -> impl Iterator<Item = PartGroup> {
    PartGroup::ALL.into_iter().filter(move |group| group.is_there(stage))
}

/// How far up the staves reach, along the mould: trimmed level with the hoops, or at full length.
pub(super) fn tips(basket: &Basket, stage: Stage) -> f32 {
    let parts = &basket.body.staves().length_parts;
    let whole = parts.total() - parts.groove - parts.turn;
    let trimmed = basket.body.rim().along + basket.body.rim().height;
    let tips = if stage >= Stage::Pinned { trimmed } else { whole };
    tips.max(basket::Length::mm(1.0)).to_mm() as f32
}
