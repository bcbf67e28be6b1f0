//! Which parts exist at a stage of the making.

use basket::steps::Stage;
use basket::{Basket, Length};

/// Places at which a wall is asked whether it is still open.
const PLACES: f64 = 200.0;

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
    BandOnRows,
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
    const ALL: [Self; 17] = [
        Self::Base,
        Self::Screw,
        Self::Plug,
        Self::Mould,
        Self::StavesSet,
        Self::StavesShaved,
        Self::StavesTrimmed,
        Self::Band,
        Self::BandOnRows,
        Self::Rows,
        Self::Ears,
        Self::Hoops,
        Self::Clamps,
        Self::Pins,
        Self::Filler,
        Self::Lashing,
        Self::Handle,
    ];

    /// Whether its parts stand on the rim.
    fn is_at_rim(self) -> bool {
        matches!(
            self,
            Self::Ears
                | Self::Hoops
                | Self::Clamps
                | Self::Pins
                | Self::Filler
                | Self::Lashing
                | Self::Handle
        )
    }

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
            // A woven basket dries banded.
            Self::BandOnRows => stage == Stage::Woven,
            Self::Rows => stage >= Stage::FirstRows,
            Self::Ears => stage >= Stage::EarsSet,
            Self::Hoops => stage >= Stage::RimClamped,
            Self::Clamps => stage == Stage::RimClamped,
            Self::Filler | Self::Lashing => stage >= Stage::Lashed,
            Self::Handle => stage >= Stage::Handled,
        }
    }
}

/// The groups that are there at a stage; where the wall closes there is no rim.
pub(super) fn groups(basket: &Basket, stage: Stage) -> impl Iterator<Item = PartGroup> + use<> {
    let closes = basket.body.neck().closes();
    let is_there = move |group: &PartGroup| group.is_there(stage) && !(closes && group.is_at_rim());
    PartGroup::ALL.into_iter().filter(is_there)
}

/// How far up the wall is open: to the place where it closes, or without end.
pub(super) fn open_to(basket: &Basket) -> Length {
    let body = &basket.body;
    let neck = body.neck();
    if !neck.closes() {
        return Length::mm(f64::INFINITY);
    }
    // From below, the last of many places where there is room; a wall that opens again is no basket either.
    let has_room = |along: &Length| {
        body.form.profile.at(*along).radius + body.uprights().standing.at(*along) >= neck.needed
    };
    let step = neck.spot.along / PLACES;
    (0..PLACES as u32)
        .map(|place| step * f64::from(place))
        .take_while(has_room)
        .last()
        .unwrap_or(Length::ZERO)
}

/// How far up the staves reach, along the mould: trimmed level with the hoops, or at full length.
pub(super) fn tips(basket: &Basket, stage: Stage) -> f32 {
    let parts = &basket.body.staves().length_parts;
    let whole = parts.total() - parts.groove - parts.turn;
    let trimmed = basket.body.rim().along + basket.body.rim().height;
    let tips = if stage >= Stage::Pinned { trimmed } else { whole };
    let tips = tips.min(open_to(basket));
    tips.max(Length::mm(1.0)).to_mm() as f32
}
