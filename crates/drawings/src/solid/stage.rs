//! Which parts exist at a stage of the making.

use basket::pattern::HoopWay;
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
    RingsReady,
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
    const ALL: [Self; 18] = [
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
        Self::RingsReady,
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
                | Self::RingsReady
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
    fn is_there(self, basket: &Basket, stage: Stage) -> bool {
        let from = |first| basket.has_reached(first, stage);
        let between = |first, end| from(first) && !from(end);
        match self {
            Self::Base => from(Stage::BaseOnMould),
            Self::Screw => between(Stage::BaseOnMould, Stage::OffMould),
            Self::Mould => !from(Stage::OffMould),
            Self::Plug => stage == Stage::Finished,
            Self::StavesSet => from(Stage::StavesSet) && !from(Stage::EarsSet),
            Self::StavesShaved => from(Stage::StavesSet) && between(Stage::EarsSet, Stage::Pinned),
            Self::StavesTrimmed | Self::Pins => from(Stage::Pinned),
            // Ears are laid on under the band, which is put back on over them.
            Self::Band => between(Stage::StavesSet, Stage::Woven) && stage != Stage::EarsSet,
            // A woven basket dries banded.
            Self::BandOnRows => stage == Stage::Woven,
            Self::Rows => from(Stage::FirstRows),
            Self::Ears => from(Stage::EarsSet),
            Self::RingsReady => stage == Stage::RingsMade && basket.body.rim().hoops == HoopWay::Rings,
            Self::Hoops => from(Stage::RimClamped),
            Self::Clamps => stage == Stage::RimClamped,
            Self::Filler | Self::Lashing => from(Stage::Lashed),
            Self::Handle if basket.handle.as_ref().is_some_and(|handle| handle.fixed().is_some()) => {
                from(Stage::EarsSet)
            }
            Self::Handle => from(Stage::Handled),
        }
    }
}

/// The groups that are there at a stage; where the wall closes there is no rim.
pub(super) fn groups(basket: &Basket, stage: Stage) -> impl Iterator<Item = PartGroup> {
    let closes = basket.body.neck().closes();
    let is_there = move |group: &PartGroup| group.is_there(basket, stage) && !(closes && group.is_at_rim());
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
    let tips = if basket.has_reached(Stage::Pinned, stage) { trimmed } else { whole };
    let tips = tips.min(open_to(basket));
    tips.max(Length::mm(1.0)).to_mm() as f32
}
