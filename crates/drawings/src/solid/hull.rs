//! The mould as walls and flat faces, which can be cut by planes.
//!
//! Faces are kept as their edges alone, until no more is cut: so a cut never meets a triangle that was not there
//! before, and what lies on both sides of an edge has the same corners.

use std::collections::{BTreeMap, BTreeSet};
use std::f64::consts::TAU;

use basket::mould::Axis;
use basket::{Basket, Length};

/// Places along the mould's side.
const STEPS: u32 = 240;
/// Sides of the screw hole.
const HOLE_SIDES: u32 = 48;
/// Wood that is left between the screw hole and the side, where there is next to none, in mm.
const LEAST_WALL: f64 = 0.1;
/// Corners as near to a plane as this lie on it, in mm.
const ON_PLANE: f64 = 1e-3;

/// A closed body.
#[derive(Clone, Debug, Default)]
pub(super) struct Hull {
    /// Its corners, in mm.
    pub(super) places: Vec<[f64; 3]>,
    /// The triangles of its walls, counter-clockwise seen from outside.
    pub(super) walls: Vec<[u32; 3]>,
    /// Its flat faces.
    pub(super) faces: Vec<Face>,
}

/// A flat face, square to an axis.
#[derive(Clone, Debug)]
pub(super) struct Face {
    pub(super) axis: Axis,
    /// Whether the body lies before it along the axis.
    pub(super) last: bool,
    /// Its edges; seen from outside it lies at their left.
    pub(super) edges: Vec<[u32; 2]>,
}

impl Hull {
    /// The mould with the hole for the screw through its middle, foot below, with so many sides.
    pub(super) fn of(basket: &Basket, sides: u32) -> Self {
        let form = &basket.body.form;
        let hole = (basket.body.base().screw_hole.to_mm() / 2.0).max(0.5);
        let mut hull = Self::default();
        for step in 0..=STEPS {
            let along = form.arc() * (f64::from(step) / f64::from(STEPS));
            for side in 0..sides {
                let [x, y, z] =
                    form.at(along, f64::from(side) / f64::from(sides), Length::ZERO).point.map(Length::to_mm);
                let out = x.hypot(y).max(1e-9);
                let grown = (hole + LEAST_WALL).max(out) / out;
                hull.places.push([x * grown, y * grown, z]);
            }
        }
        let inner = (STEPS + 1) * sides;
        for height in [0.0, form.height().to_mm()] {
            let corner = |side: u32| {
                let (sin, cos) = (f64::from(side) / f64::from(HOLE_SIDES) * TAU).sin_cos();
                [hole * cos, hole * sin, height]
            };
            hull.places.extend((0..HOLE_SIDES).map(corner));
        }
        let ring =
            |first: u32, sides: u32| (0..sides).map(move |side| [first + side, first + (side + 1) % sides]);
        for step in 0..STEPS {
            for [here, next] in ring(step * sides, sides) {
                hull.walls.extend([[here, next, next + sides], [here, next + sides, here + sides]]);
            }
        }
        for [here, next] in ring(inner, HOLE_SIDES) {
            hull.walls
                .extend([[here, next + HOLE_SIDES, next], [here, here + HOLE_SIDES, next + HOLE_SIDES]]);
        }
        let back = |[from, to]: [u32; 2]| [to, from];
        let foot = ring(0, sides).map(back).chain(ring(inner, HOLE_SIDES)).collect();
        let top = ring(STEPS * sides, sides).chain(ring(inner + HOLE_SIDES, HOLE_SIDES).map(back)).collect();
        let level = |last: bool, edges: Vec<[u32; 2]>| Face { axis: Axis::Height, last, edges };
        hull.faces = vec![level(false, foot), level(true, top)];
        hull
    }

    /// What of it lies within so much along an axis.
    pub(super) fn between(&self, axis: Axis, [from, to]: [f64; 2]) -> Self {
        self.cut(axis, from, false).cut(axis, to, true)
    }

    /// What of it lies on one side of a plane: with its last face there, or its first.
    fn cut(&self, axis: Axis, at: f64, last: bool) -> Self {
        let sign = if last { -1.0 } else { 1.0 };
        let over = |place: &[f64; 3]| {
            let over = sign * (axis.of(*place) - at);
            if over.abs() < ON_PLANE { 0.0 } else { over }
        };
        let over: Vec<f64> = self.places.iter().map(over).collect();
        if over.iter().all(|over| *over >= 0.0) {
            return self.clone();
        }
        let mut cut = Cut { hull: self, over, axis, at, new: Self::default(), known: BTreeMap::new() };
        let mut edges = cut.walls();
        for face in &self.faces {
            cut.face(face, &mut edges);
        }
        let mut new = cut.new;
        new.faces.push(Face { axis, last, edges });
        new
    }
}

/// A cut that is being made.
struct Cut<'a> {
    hull: &'a Hull,
    /// How far each corner lies on the side that is kept.
    over: Vec<f64>,
    axis: Axis,
    at: f64,
    new: Hull,
    /// New corners by what they were: a corner, or the edge on which they lie.
    known: BTreeMap<[u32; 2], u32>,
}

impl Cut<'_> {
    fn over(&self, corner: u32) -> f64 {
        self.over[corner as usize]
    }

    /// Where an edge meets the plane; a corner is an edge to itself.
    fn corner(&mut self, a: u32, b: u32) -> u32 {
        let key = [a.min(b), a.max(b)];
        if let Some(known) = self.known.get(&key) {
            return *known;
        }
        let [from, to] = key.map(|corner| self.hull.places[corner as usize]);
        let [here, there] = key.map(|corner| self.over(corner));
        let place = if a == b {
            if here == 0.0 { self.axis.put(from, self.at) } else { from }
        } else {
            let share = here / (here - there);
            let between = [0, 1, 2].map(|side| from[side] + (to[side] - from[side]) * share);
            self.axis.put(between, self.at)
        };
        let number = self.new.places.len() as u32;
        self.new.places.push(place);
        self.known.insert(key, number);
        number
    }

    /// What is left of an edge, with whether its ends lie on the plane.
    fn edge(&mut self, [a, b]: [u32; 2]) -> Option<[u32; 2]> {
        let (here, there) = (self.over(a), self.over(b));
        if here <= 0.0 && there <= 0.0 {
            return None;
        }
        let from = if here >= 0.0 { self.corner(a, a) } else { self.corner(a, b) };
        let to = if there >= 0.0 { self.corner(b, b) } else { self.corner(a, b) };
        Some([from, to])
    }

    /// Cuts all walls; the edges that the new face has with them.
    fn walls(&mut self) -> Vec<[u32; 2]> {
        let mut open: BTreeSet<[u32; 2]> = BTreeSet::new();
        for triangle in &self.hull.walls {
            if triangle.iter().all(|corner| self.over(*corner) <= 0.0) {
                continue;
            }
            let mut kept: Vec<(u32, bool)> = Vec::with_capacity(4);
            for (a, b) in triangle.iter().zip(triangle.iter().cycle().skip(1)) {
                let (here, there) = (self.over(*a), self.over(*b));
                if here >= 0.0 {
                    kept.push((self.corner(*a, *a), here == 0.0));
                }
                if here * there < 0.0 {
                    kept.push((self.corner(*a, *b), true));
                }
            }
            for index in 2..kept.len() {
                self.new.walls.push([kept[0].0, kept[index - 1].0, kept[index].0]);
            }
            for (from, to) in kept.iter().zip(kept.iter().cycle().skip(1)) {
                if from.1 && to.1 && !open.remove(&[from.0, to.0]) {
                    open.insert([to.0, from.0]);
                }
            }
        }
        open.into_iter().collect()
    }

    /// Cuts a face; the edges that the new one has with it are added to those.
    fn face(&mut self, face: &Face, edges: &mut Vec<[u32; 2]>) {
        let kept: Vec<[u32; 2]> = face.edges.iter().filter_map(|edge| self.edge(*edge)).collect();
        if kept.is_empty() {
            return;
        }
        let mut own = kept.clone();
        if face.axis != self.axis {
            for [from, to] in self.closing(face.axis, &kept) {
                own.push([from, to]);
                edges.push([to, from]);
            }
        }
        self.new.faces.push(Face { edges: own, ..*face });
    }

    /// What closes the edges of a face, square to its axis, along the plane: from each end to the next beginning. Of the ends in their
    /// order along the cut, the face lies between the first and the second, the third and the fourth.
    fn closing(&self, face: Axis, edges: &[[u32; 2]]) -> Vec<[u32; 2]> {
        let mut balance: BTreeMap<u32, i32> = BTreeMap::new();
        for [from, to] in edges {
            *balance.entry(*from).or_default() -= 1;
            *balance.entry(*to).or_default() += 1;
        }
        let mut ends: Vec<(u32, i32)> = balance.into_iter().filter(|(_, balance)| *balance != 0).collect();
        let [first, second] = self.axis.others();
        let way = if first == face { second } else { first };
        let place = |end: &(u32, i32)| way.of(self.new.places[end.0 as usize]);
        ends.sort_by(|a, b| place(a).total_cmp(&place(b)));
        let pairs = ends.chunks(2).filter_map(|pair| {
            let [one, other] = pair else { return None };
            Some(if one.1 > 0 { [one.0, other.0] } else { [other.0, one.0] })
        });
        pairs.collect()
    }
}
