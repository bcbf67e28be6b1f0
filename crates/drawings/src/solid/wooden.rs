//! The mould by itself, as it is turned, milled or printed: whole, or in pieces.

use std::collections::BTreeMap;

use basket::mould::{Axis, Peg, Split};
use basket::{Basket, Length, Piece};

use super::colour;
use super::detail::Detail;
use super::fill::Bore;
use super::hull::Hull;
use super::mesh::Mesh;
use super::part::{Part, Solid};
use super::shape::Shape;

/// Fewest sides.
const LEAST_SIDES: u32 = 180;
/// Room between pieces that lie side by side, in mm.
const APART: f32 = 10.0;
/// A cut can graze a corner so that its faces do not close. With other corners it does not; so often others are tried.
const TRIES: u32 = 4;

/// The mould with the hole for the screw through its middle, foot below: one closed surface.
pub fn mould_solid(basket: &Basket, detail: Detail) -> Solid {
    let mesh = Hull::of(basket, sides(basket, detail)).filled(&[]);
    Solid { parts: vec![part(Piece::Mould, mesh)], simplified: None }
}

/// The mould in pieces, side by side, each lying on the larger of its level faces; in the order of the split. None
/// where the pieces do not close.
pub fn mould_pieces(basket: &Basket, split: &Split, detail: Detail) -> Option<Solid> {
    let sides = sides(basket, detail);
    let meshes = (0..TRIES).find_map(|more| {
        let meshes = cut(&Hull::of(basket, sides + 4 * more), split);
        meshes.iter().all(is_closed).then_some(meshes)
    })?;
    let numbered = laid(meshes).into_iter().zip(1..);
    let parts = numbered.map(|(mesh, number)| part(Piece::MouldPart(number), mesh)).collect();
    Some(Solid { parts, simplified: None })
}

fn part(piece: Piece, mesh: Mesh) -> Part {
    Part::new(piece, colour::MOULD, Shape { mesh, edges: Vec::new() })
}

fn sides(basket: &Basket, detail: Detail) -> u32 {
    let widest = basket.body.profile().widest().to_mm() as f32;
    // In quarters, so that the ends of both axes are corners.
    detail.segments(widest).max(LEAST_SIDES).next_multiple_of(4)
}

fn cut(whole: &Hull, split: &Split) -> Vec<Mesh> {
    let mut before: Option<([Length; 2], Hull)> = None;
    let mut meshes = Vec::with_capacity(split.parts.len());
    for (index, part) in split.parts.iter().enumerate() {
        let [length, width] =
            [Axis::Length, Axis::Width].map(|axis| part.block.side(axis).map(Length::to_mm));
        let height = part.block.side(Axis::Height);
        // Pieces of one height follow each other.
        let slab = match before.take() {
            Some((known, slab)) if known == height => slab,
            _ => whole.between(Axis::Height, height.map(Length::to_mm)),
        };
        let piece = slab.between(Axis::Length, length).between(Axis::Width, width);
        before = Some((height, slab));
        let of_piece = split.pegs.iter().flat_map(|peg| bores(peg, split, index));
        meshes.push(piece.filled(&of_piece.collect::<Vec<_>>()));
    }
    meshes
}

/// The hole of a peg in a piece that it joins.
fn bores(peg: &Peg, split: &Split, piece: usize) -> impl Iterator<Item = Bore> {
    let [before, _] = peg.joins;
    let bore = Bore {
        axis: peg.axis,
        last: piece == before,
        at: peg.at.map(Length::to_mm),
        radius: split.peg.hole.to_mm() / 2.0,
        depth: split.peg.depth.to_mm(),
    };
    peg.joins.contains(&piece).then_some(bore).into_iter()
}

/// Whether every edge is run along once in each direction.
fn is_closed(mesh: &Mesh) -> bool {
    let mut edges: BTreeMap<[u32; 2], i32> = BTreeMap::new();
    for [a, b, c] in &mesh.triangles {
        for [from, to] in [[*a, *b], [*b, *c], [*c, *a]] {
            *edges.entry([from.min(to), from.max(to)]).or_default() += if from < to { 1 } else { -1 };
        }
    }
    !mesh.triangles.is_empty() && edges.values().all(|balance| *balance == 0)
}

/// Meshes side by side in rows, each on its larger level face.
fn laid(meshes: Vec<Mesh>) -> Vec<Mesh> {
    let standing: Vec<Mesh> = meshes.into_iter().map(on_larger_face).collect();
    let size = |mesh: &Mesh| {
        let [from, to] = reach(mesh);
        [0, 1].map(|side| to[side] - from[side] + APART)
    };
    let area: f32 = standing.iter().map(size).map(|[x, y]| x * y).sum();
    let widest = standing.iter().map(|mesh| size(mesh)[0]).fold(0.0, f32::max);
    let row = area.sqrt().max(widest);
    let (mut x, mut y, mut deep) = (0.0_f32, 0.0_f32, 0.0_f32);
    let place = |mut mesh: Mesh| {
        let ([wide, long], [from, _]) = (size(&mesh), reach(&mesh));
        if x > 0.0 && x + wide > row {
            (x, y, deep) = (0.0, y + deep, 0.0);
        }
        for at in &mut mesh.positions {
            *at = [at[0] - from[0] + x, at[1] - from[1] + y, at[2] - from[2]];
        }
        (x, deep) = (x + wide, deep.max(long));
        mesh
    };
    standing.into_iter().map(place).collect()
}

/// The mesh, turned over where it is larger at its top than at its bottom.
fn on_larger_face(mut mesh: Mesh) -> Mesh {
    let [from, to] = reach(&mesh);
    let face = |height: f32| {
        let flat = mesh.triangles.iter().map(|triangle| triangle.map(|at| mesh.positions[at as usize]));
        let there = flat.filter(|corners| corners.iter().all(|at| (at[2] - height).abs() < 1e-3));
        there
            .map(|[a, b, c]| ((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])).abs())
            .sum::<f32>()
    };
    if face(to[2]) > face(from[2]) {
        mesh.positions.iter_mut().for_each(|at| *at = [at[0], -at[1], -at[2]]);
    }
    mesh
}

/// The least and the greatest places of a mesh.
fn reach(mesh: &Mesh) -> [[f32; 3]; 2] {
    let least = [f32::INFINITY; 3];
    mesh.positions.iter().fold([least, least.map(|side| -side)], |[from, to], at| {
        [[0, 1, 2].map(|side| from[side].min(at[side])), [0, 1, 2].map(|side| to[side].max(at[side]))]
    })
}
