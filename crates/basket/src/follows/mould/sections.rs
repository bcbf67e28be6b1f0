//! A mould as level sections, each a convex polygon.

use super::block::{Axis, Block};
use crate::form::Form;
use crate::measure::Length;

/// Corners of a section: a multiple of four, so that the ends of both axes are among them.
const CORNERS: u32 = 144;
/// What is thinner than this is nothing.
const LEAST: Length = Length::mm(1e-3);
/// How far a block reaches beyond the mould where it is not cut.
pub(super) const BEYOND: Length = Length::mm(1.0);

/// The sections of a mould, rising.
#[derive(Clone, Debug)]
pub(super) struct Sections {
    levels: Vec<Section>,
}

/// One section.
#[derive(Clone, Debug)]
pub(super) struct Section {
    /// Its height, in mm.
    pub(super) height: f64,
    /// Its corners, counter-clockwise, in mm.
    pub(super) ring: Vec<[f64; 2]>,
}

impl Sections {
    /// So many of them from foot to top.
    pub(super) fn of(form: &Form, count: u32) -> Self {
        let levels = (0..count).map(|number| {
            let up = form.height() * (f64::from(number) / f64::from(count.saturating_sub(1).max(1)));
            let along = form.profile.along_at_height(up);
            let corner = |corner: u32| {
                let turn = f64::from(corner) / f64::from(CORNERS);
                let [x, y, _] = form.at(along, turn, Length::ZERO).point;
                [x.to_mm(), y.to_mm()]
            };
            Section { height: up.to_mm(), ring: (0..CORNERS).map(corner).collect() }
        });
        Self { levels: levels.collect() }
    }

    /// Those up to a height, rising.
    pub(super) fn up_to(&self, height: Length) -> impl Iterator<Item = &Section> {
        self.levels.iter().filter(move |level| level.height <= height.to_mm() + 1e-6)
    }

    /// The block round the whole mould.
    pub(super) fn around(&self) -> Block {
        let far = Length::mm(1e6);
        let everywhere = Block { from: [-far; 3], to: [far; 3] };
        self.reach(&everywhere).unwrap_or(everywhere).grown(BEYOND)
    }

    /// From where to where the mould reaches within a block; none where there is nothing of it.
    pub(super) fn reach(&self, block: &Block) -> Option<Block> {
        let [low, high] = block.side(Axis::Height).map(Length::to_mm);
        let cut = self.between([low, high]).into_iter().map(|level| (level.height, level.within(block)));
        let cut: Vec<(f64, Vec<[f64; 2]>)> = cut.filter(|(_, ring)| !ring.is_empty()).collect();
        let corners = cut.iter().flat_map(|(_, ring)| ring);
        let [from, to] = corners.fold([[f64::INFINITY; 2], [f64::NEG_INFINITY; 2]], |[from, to], [x, y]| {
            [[from[0].min(*x), from[1].min(*y)], [to[0].max(*x), to[1].max(*y)]]
        });
        // Between two sections it may begin, or end.
        let [foot, second, top] = [self.levels.first(), self.levels.get(1), self.levels.last()]
            .map(|level| level.map_or(0.0, |level| level.height));
        let heights = || cut.iter().map(|(height, _)| *height);
        let begins = heights().fold(f64::INFINITY, f64::min) - (second - foot);
        let ends = heights().fold(f64::NEG_INFINITY, f64::max) + (second - foot);
        let corner = |[x, y]: [f64; 2], height: f64| [x, y, height].map(Length::mm);
        let reach =
            Block { from: corner(from, begins.max(low).max(foot)), to: corner(to, ends.min(high).min(top)) };
        reach.size().into_iter().all(|size| size > LEAST).then_some(reach)
    }

    /// The largest section of the mould within a block.
    pub(super) fn largest(&self, block: &Block) -> Vec<[f64; 2]> {
        let cut = self.between(block.side(Axis::Height).map(Length::to_mm));
        let plans = cut.iter().map(|level| level.within(block));
        plans.max_by(|a, b| area(a).total_cmp(&area(b))).unwrap_or_default()
    }

    /// The sections from one height to another, both of these included.
    fn between(&self, [low, high]: [f64; 2]) -> Vec<Section> {
        let inner = self.levels.iter().filter(|level| (low..=high).contains(&level.height)).cloned();
        [low, high].into_iter().filter_map(|height| self.at(height)).chain(inner).collect()
    }

    /// The section at a height, as even as can be between the two next to it.
    fn at(&self, height: f64) -> Option<Section> {
        let above = self.levels.partition_point(|level| level.height < height);
        let (below, above) = (self.levels.get(above.checked_sub(1)?)?, self.levels.get(above)?);
        let share = (height - below.height) / (above.height - below.height).max(1e-9);
        let pairs = below.ring.iter().zip(&above.ring);
        let ring = pairs.map(|(a, b)| [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share]);
        Some(Section { height, ring: ring.collect() })
    }

    /// Whether a place in mm lies in the mould: in both sections next to it.
    pub(super) fn hold(&self, [x, y, height]: [f64; 3]) -> bool {
        let above = self.levels.partition_point(|level| level.height < height);
        let next = [above.checked_sub(1), Some(above)].map(|index| self.levels.get(index?));
        let [Some(below), Some(above)] = next else { return false };
        below.holds([x, y]) && above.holds([x, y])
    }
}

impl Section {
    /// The corners of what lies of it within a block's sides.
    pub(super) fn within(&self, block: &Block) -> Vec<[f64; 2]> {
        let mut ring = self.ring.clone();
        for (axis, out) in [(Axis::Length, [1.0, 0.0]), (Axis::Width, [0.0, 1.0])] {
            let [from, to] = block.side(axis).map(Length::to_mm);
            ring = clipped(&ring, out, from);
            ring = clipped(&ring, out.map(|side| -side), -to);
        }
        ring
    }

    fn holds(&self, place: [f64; 2]) -> bool {
        let next = self.ring.iter().cycle().skip(1);
        self.ring
            .iter()
            .zip(next)
            .all(|(a, b)| (b[0] - a[0]) * (place[1] - a[1]) - (b[1] - a[1]) * (place[0] - a[0]) >= 0.0)
    }
}

/// Area of a polygon.
fn area(ring: &[[f64; 2]]) -> f64 {
    ring.iter().zip(ring.iter().cycle().skip(1)).map(|(a, b)| (a[0] * b[1] - a[1] * b[0]) / 2.0).sum()
}

/// What of a convex polygon lies at least so far out in a direction (I. Sutherland, G. Hodgman, "Reentrant polygon
/// clipping", *Communications of the ACM* 17, 1974).
fn clipped(ring: &[[f64; 2]], [out_x, out_y]: [f64; 2], least: f64) -> Vec<[f64; 2]> {
    let over = |[x, y]: &[f64; 2]| x * out_x + y * out_y - least;
    let mut kept = Vec::with_capacity(ring.len() + 2);
    for (a, b) in ring.iter().zip(ring.iter().cycle().skip(1)) {
        let (here, there) = (over(a), over(b));
        if here >= 0.0 {
            kept.push(*a);
        }
        if (here >= 0.0) != (there >= 0.0) {
            let share = here / (here - there);
            kept.push([a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share]);
        }
    }
    kept
}
