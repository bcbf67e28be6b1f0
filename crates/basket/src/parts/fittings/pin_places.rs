//! Which staves are pinned: those of the ears always, the others as evenly as they can be.

use super::Ears;
use crate::measure::Length;
use crate::pattern::Every;
use crate::uprights::Uprights;

/// Room between the edge of a pin and that of an ear, which a nearer hole would split (common practice).
const CLEAR_OF_EDGE: Length = Length::mm(2.0);

/// The round of staves in which the pinned ones are chosen. Staves count from 0.
pub(super) struct Round<'a> {
    pub(super) every: Every,
    pub(super) uprights: &'a Uprights,
    /// Girth of the rim.
    pub(super) girth: Length,
    pub(super) ears: Option<&'a Ears>,
    /// Diameter of the pins.
    pub(super) pin: Length,
    /// Middles of the outer and the inner hoop's scarf, as shares of the way round: one pin more holds the
    /// lap there.
    pub(super) scarfs: [f64; 2],
}

/// How bad a way from pin to pin is, what weighs most first: pins that stand next to an ear's, squares of
/// how many staves each step is off the usual two, steps too long, and how far (in thousandths of a
/// stave) steps off the usual lie from a scarf.
type Cost = [u64; 4];

impl Round<'_> {
    /// The numbers of the pinned staves, counted from 1, in order.
    pub(super) fn pinned(&self) -> Vec<u32> {
        let count = self.uprights.count;
        let mut ends: Vec<u32> = match self.ears {
            Some(ears) => ears.each.iter().map(|ear| ear.stave.saturating_sub(1)).collect(),
            None => vec![0],
        };
        ends.retain(|stave| *stave < count);
        ends.sort_unstable();
        ends.dedup();
        let next = ends.iter().skip(1).copied().chain(ends.first().map(|first| first + count));
        let mut pinned: Vec<u32> =
            ends.iter().zip(next).flat_map(|(from, to)| self.between(*from, to)).collect();
        pinned.sort_unstable();
        pinned.into_iter().map(|stave| stave + 1).collect()
    }

    /// The pinned staves from one that is pinned to the next such, which is left out.
    fn between(&self, from: u32, to: u32) -> Vec<u32> {
        let count = self.uprights.count;
        let free = |way: u32| way == 0 || way == to - from || self.is_free((from + way) % count);
        let ways: Vec<u32> = match self.every {
            Every::Stave => (0..to - from).filter(|way| free(*way)).collect(),
            Every::OtherStave => self.every_other(from, to - from, free),
        };
        ways.into_iter().map(|way| (from + way) % count).collect()
    }

    /// The least bad way in steps of about two from `from` on over so many staves, by their distances from
    /// it (dynamic programming: R. Bellman, 1957).
    fn every_other(&self, from: u32, whole: u32, free: impl Fn(u32) -> bool) -> Vec<u32> {
        let mut best: Vec<Option<(Cost, u32)>> = vec![Some(([0; 4], 0))];
        for way in 1..=whole {
            let mut least: Option<(Cost, u32)> = None;
            for step in 1..=way {
                if step > 3 && least.is_some() {
                    break;
                }
                let before = way - step;
                let Some((cost, _)) = best.get(before as usize).copied().flatten() else { continue };
                let at_ear = self.ears.is_some() && (before == 0 || way == whole);
                let middle = f64::from(from) + f64::from(before) + f64::from(step) / 2.0;
                let cost = add(cost, self.cost(step, at_ear, middle));
                if least.is_none_or(|(known, _)| cost < known) {
                    least = Some((cost, before));
                }
            }
            best.push(least.filter(|_| free(way)));
        }
        let mut ways = Vec::new();
        let mut way = whole;
        while let Some((_, before)) = best.get(way as usize).copied().flatten().filter(|_| way > 0) {
            ways.push(before);
            way = before;
        }
        ways
    }

    fn cost(&self, step: u32, at_ear: bool, middle: f64) -> Cost {
        let off = u64::from(step.abs_diff(2));
        let aside = if off > 0 { (self.off_scarf(middle) * 1000.0) as u64 } else { 0 };
        [u64::from(at_ear && step == 1), off * off, u64::from(step > 2), aside]
    }

    /// How far a place in the round is from the nearer scarf, all in staves; of equals the outer hoop's
    /// counts as nearer.
    fn off_scarf(&self, place: f64) -> f64 {
        let count = f64::from(self.uprights.count.max(1));
        let [outer, inner] = self.scarfs.map(|turn| {
            let off = place / count - turn;
            (off - off.round()).abs() * count
        });
        outer.min(inner + 0.5)
    }

    /// Whether a pin through a stave goes clear past both ears.
    fn is_free(&self, stave: u32) -> bool {
        let Some(ears) = self.ears else { return true };
        let reach = ears.width / 2.0 + CLEAR_OF_EDGE + self.pin / 2.0;
        ears.each.iter().all(|ear| {
            let off = self.uprights.turn(stave + 1) - ear.turn;
            self.girth * (off - off.round()).abs() >= reach
        })
    }
}

fn add(a: Cost, b: Cost) -> Cost {
    let [a0, a1, a2, a3] = a;
    let [b0, b1, b2, b3] = b;
    [a0 + b0, a1 + b1, a2 + b2, a3 + b3]
}
