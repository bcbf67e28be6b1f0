//! Even shares of the way round a level.

use crate::form::{Level, OutlinePoint};

/// Places by which the way round is measured.
const PLACES: u32 = 512;

/// The way round a level, by the share of the way round the foot.
pub(super) struct Round {
    /// At even turns the way to there.
    ways: Vec<f64>,
}

impl Round {
    /// The way round through the places of a level.
    pub(super) fn of(level: &Level<'_>) -> Self {
        let places: Vec<OutlinePoint> =
            (0..=PLACES).map(|number| level.at(f64::from(number) / f64::from(PLACES))).collect();
        let mut way = 0.0;
        let ways = places.iter().zip(places.iter().skip(1)).map(|(from, to)| {
            way += from.way_to(to);
            way
        });
        Self { ways: std::iter::once(0.0).chain(ways).collect() }
    }

    /// The turn to which a share of the level's own way round leads.
    pub(super) fn turn(&self, share: f64) -> f64 {
        let whole = self.ways.last().copied().unwrap_or_default();
        let wanted = share * whole;
        let after = self.ways.partition_point(|way| *way < wanted).clamp(1, PLACES as usize);
        let Some([from, to]) = self.ways.get(after - 1..=after) else { return share };
        let between = if to > from { (wanted - from) / (to - from) } else { 0.0 };
        ((after - 1) as f64 + between) / f64::from(PLACES)
    }
}
