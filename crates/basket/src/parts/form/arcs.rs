//! Outlines put together from straight lines and arcs of circles that run into each other without a corner:
//! rounded rectangle, stadium, and a smooth curve through points that somebody marked.

use std::f64::consts::{FRAC_PI_2, PI, TAU};

use super::outline::{Outline, OutlinePoint};

/// An arc that turns by less than this is taken as straight.
const STRAIGHT: f64 = 1e-9;

/// Straight lines and arcs, one after the other.
#[derive(Clone, Debug, PartialEq)]
pub struct Arcs {
    pieces: Vec<Piece>,
    area: f64,
    /// Whether both halves along either axis are alike.
    even: bool,
}

/// A line (of no curvature) or an arc.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Piece {
    /// Way along the outline to where it begins.
    way: f64,
    length: f64,
    from: [f64; 2],
    /// The direction in which it begins, as an angle.
    heading: f64,
    curvature: f64,
}

impl Arcs {
    /// A rectangle of this length and width with corners of this radius, in mm; a stadium where the radius
    /// is half its width. It begins in the middle of its right end.
    pub fn rectangle([length, width]: [f64; 2], corner: f64) -> Self {
        let corner = corner.clamp(1e-3, (length.min(width) / 2.0).max(1e-3));
        let [across, along] = [length, width].map(|side| (side - 2.0 * corner).max(0.0));
        let arc = (FRAC_PI_2 * corner, 1.0 / corner);
        let straight = |length: f64| (length, 0.0);
        let runs = [
            straight(along / 2.0),
            arc,
            straight(across),
            arc,
            straight(along),
            arc,
            straight(across),
            arc,
            straight(along / 2.0),
        ];
        Self { even: true, ..Self::running([length / 2.0, 0.0], FRAC_PI_2, runs) }
    }

    /// The smooth curve through the corners of a convex polygon, counter-clockwise: at each corner it runs as
    /// the circle through that corner and its neighbours does, and between two corners on two arcs that meet
    /// without a bend (K. M. Bolton, "Biarc curves", Computer-Aided Design 7 (1975), pp. 89–92; cited from
    /// memory). Its middle is moved to that of its length and width, and it begins where it reaches farthest
    /// along x. None for fewer than three corners.
    pub fn through(points: &[[f64; 2]]) -> Option<Self> {
        let count = points.len();
        let at = |index: usize| points.get(index % count.max(1)).copied().unwrap_or_default();
        if count < 3 {
            return None;
        }
        let heading = |index: usize| circle_heading([at(index + count - 1), at(index), at(index + 1)]);
        let runs: Vec<(f64, f64)> = (0..count)
            .flat_map(|index| biarc([at(index), at(index + 1)], [heading(index), heading(index + 1)]))
            .collect();
        let heading = heading(0);
        Some(Self::running(at(0), libm::atan2(heading[1], heading[0]), runs).centred())
    }

    /// Pieces of a length and a curvature each, from a place in a direction.
    fn running(start: [f64; 2], heading: f64, runs: impl IntoIterator<Item = (f64, f64)>) -> Self {
        let (mut from, mut heading, mut way) = (start, heading, 0.0);
        let mut pieces = Vec::new();
        for (length, curvature) in runs {
            if length > 0.0 {
                let piece = Piece { way, length, from, heading, curvature };
                (from, heading, way) = (piece.at(length).0, heading + curvature * length, way + length);
                pieces.push(piece);
            }
        }
        let area = pieces.iter().map(Piece::area).sum();
        Self { pieces, area, even: false }
    }

    /// How far it reaches from edge to edge, along x and along y.
    pub fn across(&self) -> [f64; 2] {
        let [right, top, left, bottom] = self.farthest();
        [right[0] - left[0], top[1] - bottom[1]]
    }

    /// The places that lie farthest to the right, to the top, to the left and to the bottom.
    fn farthest(&self) -> [[f64; 2]; 4] {
        [0.0, 0.25, 0.5, 0.75].map(|turn| {
            let (piece, along) = self.facing(turn * TAU);
            self.pieces.get(piece).map_or([0.0; 2], |piece| piece.at(along).0)
        })
    }

    /// Moved so that its length and width have their middle at the origin, begun at its farthest place
    /// along x.
    fn centred(&self) -> Self {
        let [start, top, left, bottom] = self.farthest();
        let middle = [f64::midpoint(start[0], left[0]), f64::midpoint(top[1], bottom[1])];
        let (first, along) = self.facing(0.0);
        let (before, after) = self.pieces.split_at(first.min(self.pieces.len()));
        let Some(split) = after.first() else { return self.clone() };
        let run = |piece: &Piece| (piece.length, piece.curvature);
        let runs = std::iter::once((split.length - along, split.curvature))
            .chain(after.iter().skip(1).chain(before).map(run))
            .chain([(along, split.curvature)]);
        let start = [start[0] - middle[0], start[1] - middle[1]];
        Self::running(start, split.heading + split.curvature * along, runs)
    }

    /// The place whose outward direction has this angle: which piece, and how far along it.
    fn facing(&self, outward: f64) -> (usize, f64) {
        let wanted = outward + FRAC_PI_2;
        let off = |piece: &Piece| (wanted - piece.heading).rem_euclid(TAU);
        let turns = |piece: &Piece| piece.curvature * piece.length;
        let found = self.pieces.iter().position(|piece| off(piece) <= turns(piece) && turns(piece) > 0.0);
        let nearest = || {
            let places = self.pieces.iter().map(|piece| off(piece).min(TAU - off(piece))).enumerate();
            places.min_by(|a, b| a.1.total_cmp(&b.1)).map_or(0, |(index, _)| index)
        };
        match found.and_then(|index| self.pieces.get(index).map(|piece| (index, piece))) {
            Some((index, piece)) => (index, off(piece) / piece.curvature),
            None => (nearest(), 0.0),
        }
    }

    /// The same shape in another size.
    #[must_use]
    pub fn scaled(&self, factor: f64) -> Self {
        let start = self.pieces.first().map_or(([0.0; 2], 0.0), |first| (first.from, first.heading));
        let runs = self.pieces.iter().map(|piece| (piece.length * factor, piece.curvature / factor));
        Self { even: self.even, ..Self::running(start.0.map(|at| at * factor), start.1, runs) }
    }

    /// Whether both halves along either axis are alike.
    pub const fn is_even(&self) -> bool {
        self.even
    }
}

impl Outline for Arcs {
    fn girth(&self) -> f64 {
        self.pieces.last().map_or(0.0, |last| last.way + last.length)
    }

    fn at(&self, turn: f64) -> OutlinePoint {
        let way = turn.rem_euclid(1.0) * self.girth();
        let index = self.pieces.partition_point(|piece| piece.way <= way).saturating_sub(1);
        let Some(piece) = self.pieces.get(index) else {
            return OutlinePoint { point: [0.0; 2], outward: [1.0, 0.0], curvature: 0.0 };
        };
        let (point, heading) = piece.at((way - piece.way).min(piece.length));
        let (sin, cos) = libm::sincos(heading);
        OutlinePoint { point, outward: [sin, -cos], curvature: piece.curvature }
    }

    fn tightest(&self) -> f64 {
        let most = self.pieces.iter().map(|piece| piece.curvature).fold(0.0, f64::max);
        if most > 0.0 { 1.0 / most } else { 0.0 }
    }

    fn flattest(&self) -> f64 {
        1.0 / self.pieces.iter().map(|piece| piece.curvature).fold(f64::INFINITY, f64::min)
    }

    fn short_of_circle(&self) -> f64 {
        let radius = self.girth() / TAU;
        PI * radius * radius - self.area
    }
}

impl Piece {
    /// The place so far along it, and the direction there.
    fn at(&self, along: f64) -> ([f64; 2], f64) {
        let turned = self.curvature * along;
        // A chord lies half way between the directions at its ends.
        let chord =
            if turned.abs() < STRAIGHT { along } else { 2.0 * libm::sin(turned / 2.0) / self.curvature };
        let (sin, cos) = libm::sincos(self.heading + turned / 2.0);
        ([self.from[0] + chord * cos, self.from[1] + chord * sin], self.heading + turned)
    }

    /// Area between it and the origin: a triangle on its chord, and the segment that bulges beyond that.
    fn area(&self) -> f64 {
        let (to, turned) = (self.at(self.length).0, self.curvature * self.length);
        let triangle = (self.from[0] * to[1] - self.from[1] * to[0]) / 2.0;
        let segment = if turned.abs() < STRAIGHT {
            0.0
        } else {
            (turned - libm::sin(turned)) / (2.0 * self.curvature * self.curvature)
        };
        triangle + segment
    }
}

/// The direction, of length 1, in which the circle through three places runs at the second.
fn circle_heading([before, at, after]: [[f64; 2]; 3]) -> [f64; 2] {
    // The tangent leans to the shorter of both chords: their directions, each over its own length.
    let [into, out] = [[before, at], [at, after]].map(|[from, to]| {
        let [x, y] = [to[0] - from[0], to[1] - from[1]];
        let length = libm::hypot(x, y).max(1e-9);
        [x, y].map(|part| part / (length * length))
    });
    let [x, y] = [into[0] + out[0], into[1] + out[1]];
    let length = libm::hypot(x, y).max(1e-12);
    [x, y].map(|part| part / length)
}

/// Two arcs from one place to another that begin and end in given directions, as (length, curvature). They
/// meet where their common tangent runs along the chord, so that neither bends back.
fn biarc([from, to]: [[f64; 2]; 2], [start, end]: [[f64; 2]; 2]) -> [(f64, f64); 2] {
    let chord = [to[0] - from[0], to[1] - from[1]];
    let length = libm::hypot(chord[0], chord[1]);
    let turned = |a: [f64; 2], b: [f64; 2]| libm::atan2(a[0] * b[1] - a[1] * b[0], a[0] * b[0] + a[1] * b[1]);
    let turns = [turned(start, chord), turned(chord, end)].map(|turn| turn.max(0.0));
    let both = libm::sin(f64::midpoint(turns[0], turns[1]));
    if both < STRAIGHT {
        return [(length, 0.0), (0.0, 0.0)];
    }
    // From either end the other's half turn decides how far off the joint lies: the law of sines.
    let halves = turns.map(|turn| libm::sin(turn / 2.0));
    let arc = |turn: f64, half: f64, other: f64| {
        let chord = length * other / both;
        if half < STRAIGHT { (chord, 0.0) } else { (turn * chord / (2.0 * half), 2.0 * half / chord) }
    };
    [arc(turns[0], halves[0], halves[1]), arc(turns[1], halves[1], halves[0])]
}
