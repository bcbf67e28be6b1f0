//! Flat faces of a body filled with triangles, and round holes let into them.

use std::collections::{BTreeMap, BTreeSet};
use std::f64::consts::TAU;

use basket::mould::Axis;
use spade::{ConstrainedDelaunayTriangulation, Point2, Triangulation as _};

use super::hull::{Face, Hull};
use super::mesh::Mesh;

/// Sides of a hole.
const SIDES: u32 = 48;
/// A hole as near as this to a face is in it, in mm.
const IN_FACE: f64 = 0.01;

/// A round hole that is let into a face.
#[derive(Clone, Copy, Debug)]
pub(super) struct Bore {
    pub(super) axis: Axis,
    /// Whether the body lies before the face.
    pub(super) last: bool,
    /// Its middle on the face.
    pub(super) at: [f64; 3],
    pub(super) radius: f64,
    pub(super) depth: f64,
}

impl Hull {
    /// The body as a mesh; holes of which it has no face are left out.
    pub(super) fn filled(mut self, bores: &[Bore]) -> Mesh {
        for mut face in std::mem::take(&mut self.faces) {
            let plane = face.edges.first().map_or(0.0, |[at, _]| face.axis.of(self.places[*at as usize]));
            let own = |bore: &&Bore| {
                bore.axis == face.axis
                    && bore.last == face.last
                    && (face.axis.of(bore.at) - plane).abs() < IN_FACE
            };
            let own: Vec<Bore> = bores.iter().filter(own).copied().collect();
            for bore in own {
                let at = face.axis.put(bore.at, plane);
                self.bored(&mut face, &Bore { at, ..bore });
            }
            let filled = self.triangles(&face);
            self.walls.extend(filled);
        }
        let positions = self.places.iter().map(|place| place.map(|side| side as f32)).collect();
        Mesh { positions, triangles: self.walls }
    }

    /// Lets a hole into a face.
    fn bored(&mut self, face: &mut Face, bore: &Bore) {
        let [u, v] = face.sides();
        let inward = if face.last { -bore.depth } else { bore.depth };
        let first = self.places.len() as u32;
        for deep in [0.0, inward] {
            let corner = |side: u32| {
                let (sin, cos) = (f64::from(side) / f64::from(SIDES) * TAU).sin_cos();
                let place = u.put(bore.at, u.of(bore.at) + bore.radius * cos);
                let place = v.put(place, v.of(bore.at) + bore.radius * sin);
                bore.axis.put(place, bore.axis.of(bore.at) + deep)
            };
            self.places.extend((0..SIDES).map(corner));
        }
        for side in 0..SIDES {
            let (here, next) = (first + side, first + (side + 1) % SIDES);
            face.edges.push([next, here]);
            self.walls.extend([[here, next, next + SIDES], [here, next + SIDES, here + SIDES]]);
        }
        let bottom = first + SIDES;
        self.walls.extend((1..SIDES - 1).map(|side| [bottom, bottom + side, bottom + side + 1]));
    }

    /// The triangles between the edges of a face: a constrained Delaunay triangulation (L. P. Chew, "Constrained
    /// Delaunay triangulations", *Algorithmica* 4, 1989), of which is kept what lies inside.
    fn triangles(&self, face: &Face) -> Vec<[u32; 3]> {
        let sides = face.sides();
        let place = |corner: u32| sides.map(|side| side.of(self.places[corner as usize]));
        let mut net = ConstrainedDelaunayTriangulation::<Point2<f64>>::new();
        let mut handles = BTreeMap::new();
        let mut corners = BTreeMap::new();
        for corner in face.edges.iter().flatten() {
            if handles.contains_key(corner) {
                continue;
            }
            let [x, y] = place(*corner);
            let Ok(handle) = net.insert(Point2::new(x, y)) else { continue };
            handles.insert(*corner, handle);
            corners.insert(handle, *corner);
        }
        for [from, to] in &face.edges {
            if let (Some(from), Some(to)) = (handles.get(from), handles.get(to)) {
                net.try_add_constraint(*from, *to);
            }
        }
        let all = net.inner_faces().filter_map(|triangle| {
            let [a, b, c] = triangle.vertices().map(|vertex| corners.get(&vertex.fix()).copied());
            Some([a?, b?, c?])
        });
        within(&all.collect::<Vec<_>>(), &face.edges)
    }
}

/// The triangles that lie at the left of these edges, and all that hang together with them. A triangle's centre is not
/// asked where it lies: along a straight side it can be as flat as the rounding of its corners.
fn within(triangles: &[[u32; 3]], edges: &[[u32; 2]]) -> Vec<[u32; 3]> {
    let border: BTreeSet<[u32; 2]> = edges.iter().copied().collect();
    let sides = |[a, b, c]: [u32; 3]| [[a, b], [b, c], [c, a]];
    let numbered = || triangles.iter().enumerate();
    let at: BTreeMap<[u32; 2], usize> =
        numbered().flat_map(|(index, triangle)| sides(*triangle).map(|side| (side, index))).collect();
    let mut waiting: Vec<usize> = border.iter().filter_map(|edge| at.get(edge).copied()).collect();
    let mut kept = BTreeSet::new();
    while let Some(index) = waiting.pop() {
        if kept.insert(index) {
            let open = sides(triangles[index]).into_iter().filter(|side| !border.contains(side));
            waiting.extend(open.filter_map(|[from, to]| at.get(&[to, from]).copied()));
        }
    }
    kept.into_iter().map(|index| triangles[index]).collect()
}

impl Face {
    /// Its own two axes, so that the second lies to the left of the first seen from outside.
    fn sides(&self) -> [Axis; 2] {
        let [first, second] = self.axis.others();
        if self.last { [first, second] } else { [second, first] }
    }
}
