//! Where strands lie together, kept apart from each other so that the wall is nowhere thick.

use std::collections::BTreeMap;

use crate::measure::Length;

/// Overlaps stay this far from each other, along the row or across it (common practice).
pub(super) const APART: Length = Length::inches(1.0);
/// With more overlaps than this in a band two inches high no basket can keep them apart, and none is moved.
const MOST_APART: usize = 120;

/// A stretch of a row, or of two, in which an old strand and a new one lie together.
#[derive(Clone, Copy)]
pub(super) struct Overlap {
    /// The rows in which it begins and ends, along the mould.
    pub(super) low: Length,
    pub(super) high: Length,
    /// Its first stave (from 0), and how many staves further its last is.
    pub(super) first: u32,
    pub(super) reach: u32,
    /// From stave to stave.
    pub(super) pitch: Length,
}

impl Overlap {
    /// How far apart two are up the wall, between their rows.
    fn up(&self, other: &Self) -> Length {
        (other.low - self.high).max(self.low - other.high).max(Length::ZERO)
    }

    /// How many free staves there are between two, the shorter way round; none where they touch or share one.
    fn free_staves(&self, other: &Self, count: u32) -> u32 {
        let ahead = (other.first + count - self.first) % count;
        let back = (self.first + count - other.first) % count;
        let free = |way: u32, reach: u32| way.saturating_sub(reach.saturating_add(1));
        free(ahead, self.reach).min(free(back, other.reach))
    }
}

/// The overlaps of a basket so far.
pub(super) struct Overlaps {
    count: u32,
    /// By the bands along the mould in which they begin and end, each as high as overlaps are kept apart.
    placed: BTreeMap<i64, Vec<Overlap>>,
}

impl Overlaps {
    /// None as yet, on so many staves.
    pub(super) const fn new(count: u32) -> Self {
        Self { count, placed: BTreeMap::new() }
    }

    pub(super) fn place(&mut self, overlap: Overlap) {
        let (low, high) = (band(overlap.low), band(overlap.high));
        self.placed.entry(high).or_default().push(overlap);
        if low != high {
            self.placed.entry(low).or_default().push(overlap);
        }
    }

    /// Those that may be too near to one between two places along the mould.
    pub(super) fn near(&self, from: Length, to: Length) -> Vec<Overlap> {
        let bands = self.placed.range(band(from - APART)..=band(to + APART)).map(|(_, placed)| placed);
        if bands.clone().map(Vec::len).sum::<usize>() > MOST_APART {
            return Vec::new();
        }
        let near = |other: &&Overlap| from - APART < other.high && other.low < to + APART;
        bands.flatten().filter(near).copied().collect()
    }

    /// How near the nearest of some overlaps is, as a share of the distance to keep: one and more is enough, less
    /// than none is said of one that touches or shares a stave.
    pub(super) fn distance(&self, near: &[Overlap], overlap: &Overlap) -> f64 {
        let share = |other: &Overlap| {
            let up = overlap.up(other) / APART;
            let free = overlap.free_staves(other, self.count);
            if free == 0 && up < 1.0 {
                return up - 1.0;
            }
            up.max(overlap.pitch * f64::from(free) / APART)
        };
        near.iter().map(share).fold(f64::INFINITY, f64::min)
    }
}

/// The band along the mould in which a place lies.
fn band(along: Length) -> i64 {
    (along / APART).floor() as i64
}
