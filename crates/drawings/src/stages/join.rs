//! A join from close by: the spent strand cut over a stave, the new one begun behind an earlier stave
//! and laid over it.
//!
//! The row itself is drawn as woven, its strands pressed into one; here it is taken apart again, the
//! new strand not yet pressed down, so that both can be told apart.

use std::borrow::Cow;

use basket::steps::Stage;
use basket::weave::Join;
use basket::{Basket, Piece};
use glam::Vec3;

use crate::solid::{Mesh, Part};
use crate::stages::parts::{Parts, find, middle, shared};
use crate::stages::studio::Studio;

/// How far the new strand lies above the spent one, as a share of its height.
const RAISED: f32 = 0.55;
/// The sections to either side that tell how far out a row lies: one of so many of its whole round.
const ABOUT: usize = 12;
/// Most staves between start and cut.
const MOST: u32 = 12;

/// A basket whose row is taken apart at a join.
pub(super) struct Opened<'a> {
    pub(super) parts: Parts<'a>,
    /// The strand that ends, and the one that goes on.
    pub(super) spent: Piece,
    pub(super) new: Piece,
    /// Where the spent strand ends.
    pub(super) cut: Vec3,
    /// Where the new strand is first seen outside.
    pub(super) start: Vec3,
}

/// The first join that lies within one row.
pub(super) fn first(basket: &Basket) -> Option<Join> {
    let mut joins = basket.body.weave.courses.iter().flat_map(|course| &course.joins);
    joins.find(|join| (1..=MOST).contains(&join.cut_over.saturating_sub(join.start_behind))).copied()
}

/// The basket woven as far as the row of a join, with the join open.
pub(super) fn opened<'a>(studio: &'a Studio<'_>, join: &Join) -> Option<Opened<'a>> {
    let mut all = shared(studio.near.at(Stage::Woven));
    all.retain(|part| part.row().is_none_or(|row| row <= join.row));
    let at_stave = |stave| find(&all, Piece::Upright(stave)).and_then(|part| middle(part, |_| true));
    let (cut, start) = (at_stave(join.cut_over)?, at_stave(join.start_behind)?);
    let lies_at = |index: &usize| {
        let row = Swept::of(&all[*index])?;
        let (from, to) = (row.nearest(start), row.nearest(cut));
        (from < to && row.reaches(from, start) && row.reaches(to, cut)).then_some((*index, from, to))
    };
    let rows = (0..all.len()).filter(|index| is_row(&all[*index], join));
    let (index, from, to) = rows.rev().find_map(|index| lies_at(&index))?;
    let row = Swept::of(&all[index])?;
    let shown = at_stave(join.start_behind + 1).map_or(from, |next| row.nearest(next));
    let [cut, start] = [row.middle(to), middle_of(&row.raised(shown))];
    let spent = row.between([0, to], |_, ring| ring.to_vec());
    let lay = |at: usize, ring: &[[f32; 3]]| if at <= to { row.raised(at) } else { ring.to_vec() };
    let strands = all.iter().filter(|part| is_row(part, join)).count() as u32;
    let new = Part { piece: strand_of(join, strands + 1), ..row.between([from, row.count - 1], lay) };
    let (spent_piece, new_piece) = (spent.piece, new.piece);
    all[index] = Cow::Owned(spent);
    all.insert(index + 1, Cow::Owned(new));
    Some(Opened { parts: all, spent: spent_piece, new: new_piece, cut, start })
}

/// A strand of the weaver of a join, in its row.
const fn strand_of(join: &Join, strand: u32) -> Piece {
    Piece::Row { row: join.row, weaver: join.weaver, strand }
}

/// Whether a part is any of them.
fn is_row(part: &Part, join: &Join) -> bool {
    matches!(part.piece, Piece::Row { row, weaver, .. } if (row, weaver) == (join.row, join.weaver))
}

/// A row as its sections, one after the other.
struct Swept<'a> {
    part: &'a Part,
    per: usize,
    count: usize,
}

impl<'a> Swept<'a> {
    fn of(part: &'a Part) -> Option<Self> {
        let count = part.edges.first()?.len();
        let per = part.mesh.positions.len().checked_div(count)?;
        (per >= 3 && count >= 2 && per * count == part.mesh.positions.len()).then_some(Self {
            part,
            per,
            count,
        })
    }

    fn ring(&self, index: usize) -> &'a [[f32; 3]] {
        &self.part.mesh.positions[index * self.per..(index + 1) * self.per]
    }

    fn middle(&self, index: usize) -> Vec3 {
        middle_of(self.ring(index))
    }

    /// The section that lies nearest in the direction of a place.
    fn nearest(&self, place: Vec3) -> usize {
        let toward = place.truncate().normalize_or_zero();
        let turned = |index: &usize| self.middle(*index).truncate().normalize_or_zero().dot(toward);
        (0..self.count).max_by(|a, b| turned(a).total_cmp(&turned(b))).unwrap_or(0)
    }

    /// Whether a section lies in the direction of a place, within a degree or so.
    fn reaches(&self, index: usize, place: Vec3) -> bool {
        let own = self.middle(index).truncate().normalize_or_zero();
        own.dot(place.truncate().normalize_or_zero()) > 0.9998
    }

    /// Radius of the way that lies in the midst of the sections about one.
    fn radius_about(&self, index: usize) -> f32 {
        let reach = self.count / ABOUT;
        let near = index.saturating_sub(reach)..(index + reach + 1).min(self.count);
        let count = near.len().max(1) as f32;
        near.map(|index| self.middle(index).truncate().length()).sum::<f32>() / count
    }

    /// A section laid over another strand: further from the staves, and a little higher.
    fn raised(&self, index: usize) -> Vec<[f32; 3]> {
        let ring = self.ring(index);
        let middle = middle_of(ring);
        let out = middle.truncate().normalize_or_zero();
        let off = middle.truncate().length() - self.radius_about(index);
        let radii = ring.iter().map(|at| Vec3::from(*at).truncate().dot(out));
        let (near, far) = radii.fold((f32::MAX, f32::MIN), |(near, far), at| (near.min(at), far.max(at)));
        let heights = ring.iter().map(|at| at[2]);
        let (low, high) = heights.fold((f32::MAX, f32::MIN), |(low, high), at| (low.min(at), high.max(at)));
        let by = (out * (far - near).abs() * off.signum()).extend((high - low) * RAISED);
        ring.iter().map(|at| (Vec3::from(*at) + by).to_array()).collect()
    }

    /// The row from one section to another, capped at both ends.
    fn between(&self, [from, to]: [usize; 2], lay: impl Fn(usize, &[[f32; 3]]) -> Vec<[f32; 3]>) -> Part {
        let positions: Vec<[f32; 3]> = (from..=to).flat_map(|index| lay(index, self.ring(index))).collect();
        let (first, after) = ((from * self.per) as u32, ((to + 1) * self.per) as u32);
        let within = |triangle: &&[u32; 3]| triangle.iter().all(|corner| (first..after).contains(corner));
        let (per, last) = (self.per as u32, (positions.len() - self.per) as u32);
        let caps = (1..per - 1)
            .flat_map(|corner| [[0, corner + 1, corner], [last, last + corner, last + corner + 1]]);
        let own = self.part.mesh.triangles.iter().filter(within);
        let triangles = own.map(|triangle| triangle.map(|corner| corner - first)).chain(caps).collect();
        let line = |corner: usize| positions.iter().skip(corner).step_by(self.per).copied().collect();
        let end = |at: usize| {
            let ring = &positions[at..at + self.per];
            ring.iter().chain(ring.first()).copied().collect()
        };
        let edges = vec![line(0), line(1), end(0), end(positions.len() - self.per)];
        let mesh = Mesh { positions, triangles };
        Part { edges, mesh, turned: None, ..self.part.clone() }
    }
}

fn middle_of(ring: &[[f32; 3]]) -> Vec3 {
    ring.iter().map(|at| Vec3::from(*at)).sum::<Vec3>() / ring.len().max(1) as f32
}
