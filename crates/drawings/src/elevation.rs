//! The outside of the basket seen level from the front: every stave and every row in true
//! projection, rim and lashing.
//!
//! The ears stand at the right and left. With the base down, numbers run from right to left in front.

use std::f64::consts::{PI, TAU};

use basket::pattern::LashingStyle;
use basket::weave::Row;
use basket::{Basket, Length};
use kurbo::{BezPath, Point, Rect};

use crate::around::Around;
use crate::drawing::{Drawing, Line, Tone, closed};
use crate::rim_shape::RimShape;
use crate::sense::sense;
use crate::wall::Wall;

/// Steps up a stave.
const STEPS: u32 = 18;
/// More staves or rows than this are not drawn one by one.
const MOST: u32 = 600;
/// Least height of a row on paper, in mm.
const FINEST: f64 = 0.3;
/// Share of its pitch that a row covers.
const COVERED: f64 = 0.94;
/// The same where the weaver dips into a gap.
const DIPPED: f64 = 0.55;

/// The outside of a basket at a scale, its axis at x 0 and the mould's base at y 0.
pub(crate) struct Elevation<'a> {
    pub(crate) basket: &'a Basket,
    pub(crate) wall: Wall<'a>,
    around: Around<'a>,
    pub(crate) scale: f64,
}

impl<'a> Elevation<'a> {
    pub(crate) fn of(basket: &'a Basket, scale: f64) -> Self {
        Self { basket, wall: Wall::in_front(basket), around: Around::of_front(basket), scale }
    }

    pub(crate) fn place(&self, x: f64, height: f64) -> Point {
        Point::new(x * self.scale, -height * self.scale)
    }

    /// Direction in which a fraction of the way round is seen: 0 right, a quarter turn in front.
    fn direction(&self, turn: f64) -> f64 {
        let first = if self.around.is_round() {
            self.basket.in_rim().map_or(0.25, |ears| ears.each[0].turn)
        } else {
            self.around.begin()
        };
        (sense(self.basket) * (turn - first) * TAU).rem_euclid(TAU)
    }

    /// The share of the way round that lies in a direction.
    fn turn(&self, direction: f64) -> f64 {
        sense(self.basket) * direction / TAU
    }

    /// Staves in front this far along the wall, by number from 0, with their directions there.
    fn in_front(&self, along: Length) -> impl Iterator<Item = (u32, f64)> {
        let uprights = self.basket.body.uprights();
        (0..uprights.count.min(MOST))
            .map(move |index| (index, self.direction(uprights.turn_at(index + 1, along))))
            .filter(|(_, direction)| direction.sin() > 0.0)
    }

    /// Base, staves and weaving.
    pub(crate) fn body(&self, drawing: &mut Drawing) {
        self.disc(drawing);
        self.shade(drawing);
        self.staves(drawing);
        self.weaving(drawing);
    }

    fn disc(&self, drawing: &mut Drawing) {
        let (edge, thickness) = (
            self.around.across(self.basket.body.base().across()).to_mm() / 2.0,
            self.basket.body.base().thickness.to_mm(),
        );
        let disc = Rect::from_points(self.place(-edge, 0.0), self.place(edge, -thickness));
        drawing.shape(disc, Tone::Light, Line::Edge);
    }

    /// What is seen through the gaps.
    fn shade(&self, drawing: &mut Drawing) {
        let top = self.basket.body.rim().along + self.basket.body.rim().height / 2.0;
        let right: Vec<Point> = self.wall.line(Length::ZERO, top, 0.0).collect();
        let left = right.iter().rev().map(|at| Point::new(-at.x, at.y));
        let outline = right.iter().copied().chain(left).map(|at| self.place(at.x, at.y));
        drawing.fill(closed(outline), Tone::Dark);
    }

    fn staves(&self, drawing: &mut Drawing) {
        let staves = &self.basket.body.staves();
        let (from, to) =
            (-staves.length_parts.turn, self.basket.body.rim().along + self.basket.body.rim().height / 2.0);
        let steps: Vec<(Point, Length)> = (0..=STEPS)
            .map(|step| from + (to - from) * (f64::from(step) / f64::from(STEPS)))
            .map(|along| (self.wall.at(along, staves.uprights.thickness.to_mm()), along))
            .collect();
        for (index, direction) in self.in_front(Length::ZERO) {
            let edge = |side: f64| {
                steps.iter().map(move |(at, along)| {
                    let half = staves.uprights.width_of(index + 1, *along).to_mm() / 2.0;
                    let turn = staves.uprights.turn_at(index + 1, *along);
                    self.beside(*at, self.direction(turn), side * half)
                })
            };
            drawing.shape(closed(edge(1.0).chain(edge(-1.0).rev())), lit(direction).1, Line::Fine);
        }
    }

    /// A place on the wall (radius and height) in a direction, so far aside along the tangent.
    fn beside(&self, at: Point, direction: f64, aside: f64) -> Point {
        if !self.around.is_round() {
            let turn = self.turn(direction);
            let [x, _] = self.around.level(at.y, at.x - self.wall.over(at.y)).place(turn);
            let [_, front] = self.around.at(turn).outward;
            return self.place(x + aside * front * sense(self.basket), at.y);
        }
        self.place(at.x * direction.cos() + aside * direction.sin(), at.y)
    }

    /// The same on the round wall; what would lie behind comes to lie on the outline.
    fn around(&self, at: Point, direction: f64, aside: f64) -> Point {
        if !self.around.is_round() {
            let level = self.around.level(at.y, at.x - self.wall.over(at.y));
            let turned = direction - aside * TAU / level.way(self.turn(direction));
            let [x, _] = level.place(self.turn(turned.clamp(0.0, PI)));
            return self.place(x, at.y);
        }
        let turned = direction - aside / at.x.abs().max(1e-6);
        self.place(at.x * turned.clamp(0.0, PI).cos(), at.y)
    }

    /// Every how many rows one is drawn, as high as all of them, where one by one they would be too
    /// fine to print; odd, so that over and under still alternate.
    pub(crate) fn stride(pitch: f64, scale: f64) -> u32 {
        let rows = (FINEST / (pitch * scale).max(1e-6)).ceil().clamp(1.0, 999.0) as u32;
        rows | 1
    }

    fn weaving(&self, drawing: &mut Drawing) {
        let tones = [Tone::White, Tone::Pale, Tone::Light];
        let mut passes = [BezPath::new(), BezPath::new(), BezPath::new()];
        for row in self.basket.body.weave.each_row.iter().take(MOST as usize) {
            let Some(course) = self.basket.body.weave.courses.get(row.course.saturating_sub(1) as usize)
            else {
                continue;
            };
            let stride = Self::stride(course.pitch.to_mm(), self.scale);
            if (row.number - course.first_row.min(row.number)) % stride != stride / 2 {
                continue;
            }
            let index = row.number.saturating_sub(course.first_row);
            let pitch = course.pitch.to_mm() * f64::from(stride);
            let pass = Pass::of(self, row, pitch, course.weaver.thickness.to_mm());
            for (stave, direction) in self.in_front(row.along) {
                if course.fabric.is_over(index, stave) {
                    let tone = lit(direction).0;
                    let path = tones.iter().zip(&mut passes).find(|(of, _)| **of == tone);
                    if let Some((_, path)) = path {
                        path.extend(pass.over(self, direction));
                    }
                }
            }
        }
        for (tone, path) in tones.into_iter().zip(passes) {
            drawing.shape(path, tone, Line::Fine);
        }
    }

    /// The rim with filler and lashing.
    pub(crate) fn rim(&self, drawing: &mut Drawing) {
        let shape = RimShape::of(self.basket);
        let round = |points: &[Point]| {
            let outer = points.iter().map(|at| (at.x, at.y));
            let right: Vec<Point> = outer.map(|(out, up)| self.rim_place(out, up)).collect();
            let left = right.iter().rev().map(|at| Point::new(-at.x, at.y));
            closed(right.iter().copied().chain(left).map(|at| self.place(at.x, at.y)))
        };
        if let Some(filler) = &shape.filler {
            let (low, high) = (filler_height(filler, f64::min), filler_height(filler, f64::max));
            let out = self.basket.body.uprights().thickness.to_mm() / 2.0;
            let band = [Point::new(out, low), Point::new(out, high)];
            drawing.shape(round(&band), Tone::Light, Line::Edge);
        }
        drawing.shape(round(&shape.outer), Tone::Pale, Line::Edge);
        let low = self.basket.body.rim().height.to_mm() * 0.25;
        let shade: Vec<Point> = shape.outer.iter().copied().filter(|at| at.y < low).collect();
        drawing.fill(round(&shade), Tone::Light);
        self.wraps(drawing, &shape.front());
    }

    fn rim_place(&self, out: f64, up: f64) -> Point {
        self.wall.at(self.basket.body.rim().along + Length::mm(up), out)
    }

    fn wraps(&self, drawing: &mut Drawing, front: &[Point]) {
        let Some(lashing) = self.basket.body.lashing() else { return };
        let crossed = lashing.style == LashingStyle::Crossed;
        let once = if crossed { lashing.wraps / 2 } else { lashing.wraps };
        let half = lashing.weaver.width.to_mm() / 2.0;
        let step = TAU / f64::from(once.max(1));
        let ways: &[f64] = if crossed { &[1.0, -1.0] } else { &[1.0] };
        for way in ways {
            for wrap in 0..once.min(MOST) {
                // Wraps lie in the gaps between staves.
                let turn = (f64::from(wrap) + 0.5) / f64::from(once.max(1));
                let middle = self.direction(turn);
                if middle.sin() <= 0.0 {
                    continue;
                }
                let edge = |side: f64| {
                    front.iter().enumerate().map(move |(index, at)| {
                        let share = index as f64 / (front.len().max(2) - 1) as f64 - 0.5;
                        let direction = middle + way * share * step * 0.6;
                        self.around(self.rim_place(at.x, at.y), direction, side * half)
                    })
                };
                let strand = closed(edge(1.0).chain(edge(-1.0).rev()));
                drawing.shape(strand, Tone::White, Line::Fine);
            }
        }
    }
}

fn filler_height(filler: &[Point], pick: fn(f64, f64) -> f64) -> f64 {
    filler.iter().map(|at| at.y).reduce(pick).unwrap_or(0.0)
}

/// Tones of weaver and stave in a direction: light falls from the left and front.
fn lit(direction: f64) -> (Tone, Tone) {
    let right = direction.cos();
    if right > 0.82 {
        (Tone::Light, Tone::Mid)
    } else if !(-0.88..=0.4).contains(&right) {
        (Tone::Pale, Tone::Light)
    } else {
        (Tone::White, Tone::Light)
    }
}

/// The weaver where it lies over a stave, the same at every stave of a row.
struct Pass {
    /// Radius and height, and how far aside, of the corners on one side from the top down.
    corners: [(Point, f64); 4],
}

impl Pass {
    fn of(elevation: &Elevation<'_>, row: &Row, pitch: f64, thickness: f64) -> Self {
        let staves = &elevation.basket.body.staves();
        let out = staves.uprights.thickness.to_mm() + thickness / 2.0;
        let at = |share: f64| elevation.wall.at(row.along + Length::mm(pitch * share / 2.0), out);
        let girth =
            (at(0.0).x - elevation.wall.over(at(0.0).y)) * TAU / f64::from(staves.uprights.count.max(1));
        let half = staves.uprights.width_at(row.along).to_mm() / 2.0;
        let reach = half + (girth - 2.0 * half).max(0.0) * 0.9;
        let corners = [(at(COVERED), half), (at(DIPPED), reach), (at(-DIPPED), reach), (at(-COVERED), half)];
        Self { corners }
    }

    fn over(&self, elevation: &Elevation<'_>, direction: f64) -> BezPath {
        let side = |side: f64| {
            self.corners.iter().map(move |(at, aside)| elevation.around(*at, direction, side * aside))
        };
        closed(side(1.0).chain(side(-1.0).rev()))
    }
}
