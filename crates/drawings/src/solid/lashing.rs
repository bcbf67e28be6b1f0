//! The lashing: every wrap round hoops, staves and filler.
//!
//! A wrap comes up outside from a gap between staves, steps along over the top of the rim, goes down
//! inside to the next gap and out through it under the rim. At an ear it passes over the rim beside
//! the ear. A second round lies on the first and steps the other way.

use basket::lashing::Lashing;
use basket::pattern::{Every, LashingStyle};
use basket::{Basket, Length, Piece};
use kurbo::Point;

use super::colour;
use super::maker::Maker;
use super::mesh::{Ends, direction, toward};
use super::part::{Part, Turned};
use super::section::section;
use super::shape::{Shape, turned};
use crate::rim_shape::hull;

/// Share of the rim's height above which a wrap steps along.
const STEP_ABOVE: f32 = 0.72;

/// Most length of a tail that is shown, and its room from the weaving, in mm.
const TAIL: f32 = 22.0;
const TAIL_ROOM: f32 = 0.2;
/// Straight pieces of a tail.
const TAIL_STEPS: u32 = 6;
/// Room between an ear and the wrap beside it, in mm: the rim is narrower inside.
const BESIDE: f32 = 0.4;

/// A corner on the way round the rim: up from the hoops' lower edge and out from the staves' inner
/// face, with the outward direction there.
#[derive(Clone, Copy)]
struct Corner {
    up: f32,
    out: f32,
    face: [f32; 2],
}

impl Maker<'_> {
    /// Layers of strand on the rim.
    fn lashing_layers(&self) -> u32 {
        let layers = |lashing: &Lashing| if lashing.style == LashingStyle::Crossed { 2 } else { 1 };
        self.basket.body.lashing().map_or(0, layers)
    }

    /// Height of the strand's layers on the rim.
    pub(super) fn lashing_height(&self) -> f32 {
        let strand = self.basket.body.lashing().map_or(Length::ZERO, |lashing| lashing.weaver.thickness);
        self.lashing_layers() as f32 * strand.to_mm() as f32
    }

    /// Every wrap, in the order in which they are made.
    pub(super) fn wraps(&self) -> Vec<Part> {
        let basket = self.basket;
        let Some(lashing) = basket.body.lashing() else { return Vec::new() };
        let count = basket.body.uprights().count.max(1);
        let stride = if lashing.every == Every::Stave { 1 } else { 2 };
        let way = self.way_round_rim();
        let mut parts: Vec<Part> = Vec::new();
        let mut plain: Option<(usize, u32)> = None;
        for layer in 0..self.lashing_layers() {
            plain = plain.filter(|_| layer == 0);
            for gap in (0..count).step_by(stride) {
                let next = (gap + stride as u32).min(count);
                let wrap = Wrap { maker: self, basket, lashing, layer, from: gap, to: next, count };
                let number = parts.len() as u32 + 1;
                let alike = wrap.passes_no_ear() && next - gap == stride as u32;
                let mut part = match plain.filter(|_| alike) {
                    Some((of, first)) => again(&parts[of], of, (gap - first) as f32 / count as f32),
                    None => wrap.part(number, &way),
                };
                if alike && plain.is_none() {
                    plain = Some((parts.len(), gap));
                    part.turned = Some(Turned { of: parts.len(), angle: [1.0, 0.0] });
                }
                part.piece = Piece::Wrap(number);
                parts.push(part);
            }
        }
        parts
    }

    /// How many triangles a wrap has.
    pub(super) fn wrap_triangles(&self) -> usize {
        let Some(lashing) = self.basket.body.lashing() else { return 0 };
        let count = self.basket.body.uprights().count.max(1);
        let wrap = Wrap { maker: self, basket: self.basket, lashing, layer: 0, from: 0, to: 1, count };
        wrap.part(1, &self.way_round_rim()).mesh.triangles.len()
    }

    /// The tails of the lashing before they are cut, hanging below the rim: that of its start inside, over
    /// the top rows, and that of its end outside, as it comes down between the hoops.
    pub(super) fn tails(&self) -> Vec<Part> {
        let (basket, surface) = (self.basket, &self.surface);
        let Some(lashing) = basket.body.lashing() else { return Vec::new() };
        let strand = &lashing.weaver;
        let (half, thick) = ((strand.width / 2.0).to_mm() as f32, strand.thickness.to_mm() as f32);
        let weaver =
            basket.body.weave.courses.last().map_or(0.0, |course| course.weaver.thickness.to_mm() as f32);
        let outside = basket.body.uprights().thickness.to_mm() as f32 + weaver;
        let top = basket.body.rim().along.to_mm() as f32 - self.lashing_height() / 2.0;
        let length = TAIL.min(lashing.tail.to_mm() as f32).min(top * 0.7);
        let per_mm = 1.0 / (basket.body.rim().radius().to_mm() as f32).max(1.0);
        let gap = std::f32::consts::PI / basket.body.uprights().count.max(1) as f32;
        let tail = |(number, near): (u32, f32)| {
            let positions: Vec<[f32; 3]> = (0..=TAIL_STEPS)
                .flat_map(|step| {
                    let node = surface.at(top - length * step as f32 / TAIL_STEPS as f32);
                    [(near, half), (near + thick, half), (near + thick, -half), (near, -half)]
                        .map(|(out, across)| node.point(out, direction(gap + across * per_mm)))
                })
                .collect();
            Part::new(Piece::Tail(number), colour::stock(strand), Shape::long(positions, 4))
        };
        [(1, -weaver - thick - TAIL_ROOM), (2, outside + TAIL_ROOM)].map(tail).to_vec()
    }

    /// The way round the rim, from the middle of its underside up outside, over and down inside.
    fn way_round_rim(&self) -> Vec<Corner> {
        let basket = self.basket;
        let height = basket.body.rim().height.to_mm() as f32;
        let stave = basket.body.uprights().thickness.to_mm() as f32;
        let outer = self.hoop_section(&basket.body.rim().outer);
        let inner = self.hoop_section(&basket.body.rim().inner);
        let filler = self.filler_section().unwrap_or_default();
        let points = outer
            .iter()
            .map(|[up, out]| (stave + out, *up))
            .chain(inner.iter().map(|[up, out]| (-out, *up)))
            .chain(filler.iter().map(|[up, out]| (*out, *up)));
        let hull: Vec<Point> = hull(points.map(|(out, up)| Point::new(f64::from(out), f64::from(up))));
        let count = hull.len();
        let mut way: Vec<Corner> = (0..count)
            .map(|index| {
                let (before, here, after) =
                    (hull[(index + count - 1) % count], hull[index], hull[(index + 1) % count]);
                let along = unit(here - before) + unit(after - here);
                let along = unit(along);
                Corner { up: here.y as f32, out: here.x as f32, face: [-along.x as f32, along.y as f32] }
            })
            .collect();
        // Begin with the first corner right of the middle of the underside.
        let middle = stave / 2.0;
        let low = way.iter().fold(f32::INFINITY, |low, at| low.min(at.up));
        let first = (0..count)
            .filter(|index| way[*index].out > middle && way[*index].up < low + 0.2 * height)
            .min_by(|a, b| way[*a].out.total_cmp(&way[*b].out))
            .unwrap_or(0);
        way.rotate_left(first);
        let under = Corner { up: low, out: middle, face: [-1.0, 0.0] };
        way.insert(0, under);
        way.push(under);
        way
    }
}

/// The same wrap further round.
fn again(part: &Part, of: usize, turn: f32) -> Part {
    let angle = toward(turn);
    Part {
        mesh: part.mesh.turned(angle),
        edges: turned(&part.edges, angle),
        turned: Some(Turned { of, angle }),
        ..part.clone()
    }
}

/// A wrap between two gaps.
struct Wrap<'a> {
    maker: &'a Maker<'a>,
    basket: &'a Basket,
    lashing: &'a Lashing,
    layer: u32,
    /// Gaps between which it goes; gap 0 follows the first stave.
    from: u32,
    to: u32,
    count: u32,
}

impl Wrap<'_> {
    fn turn(&self, gap: u32) -> f32 {
        (gap as f32 + 0.5) / self.count as f32
    }

    /// Where an ear stands in the way: from and to, in turns.
    fn ear(&self) -> Option<[f32; 2]> {
        let ears = self.basket.in_rim()?;
        let half =
            self.per_turn() * (((ears.width + self.lashing.weaver.width) / 2.0).to_mm() as f32 + BESIDE);
        let (from, to) = (self.turn(self.from), self.turn(self.to));
        ears.each.iter().find_map(|ear| {
            let middle = ear.turn as f32 + (from - ear.turn as f32).round();
            let near = [middle, middle + 1.0, middle - 1.0]
                .into_iter()
                .find(|at| at - half < to && at + half > from)?;
            Some([near - half, near + half])
        })
    }

    fn passes_no_ear(&self) -> bool {
        self.ear().is_none()
    }

    /// Turns in a millimetre round the rim.
    fn per_turn(&self) -> f32 {
        let body = &self.basket.body;
        1.0 / (body.rim().girth_at(body.uprights().thickness / 2.0).to_mm() as f32).max(1.0)
    }

    /// Where it passes the top of the rim, in turns: outside and inside.
    fn over(&self) -> [f32; 2] {
        let (from, to) = (self.turn(self.from), self.turn(self.to));
        match self.ear() {
            None => [from + (to - from) / 3.0, to - (to - from) / 3.0],
            Some([near, far]) => {
                let middle = f32::midpoint(from, to);
                let off = middle - f32::midpoint(near, far);
                // Wraps on one side of an ear lie beside each other.
                let rank = (off.abs() * self.count as f32 / (self.to - self.from) as f32).floor();
                let width = self.lashing.weaver.width.to_mm() as f32 * self.per_turn();
                [if off < 0.0 { near - rank * width } else { far + rank * width }; 2]
            }
        }
    }

    fn part(&self, number: u32, way: &[Corner]) -> Part {
        let strand = &self.lashing.weaver;
        let (width, thick) = (strand.width.to_mm() as f32, strand.thickness.to_mm() as f32);
        let section = section(strand, width, self.maker.detail);
        let per = section.len();
        let low = self.basket.body.rim().along.to_mm() as f32;
        let lowest = way.iter().fold(f32::INFINITY, |low, at| low.min(at.up));
        let stave = self.basket.body.uprights().thickness.to_mm() as f32;
        let pinched =
            (self.basket.body.staves().gap_rim_wall.to_mm() as f32 * 0.95 / width.max(1e-6)).clamp(0.15, 1.0);
        let turns = self.turns(way);
        let mut positions = Vec::with_capacity(per * way.len());
        for (corner, turn) in way.iter().zip(turns) {
            let through = corner.up < lowest + 0.3 && corner.out > -0.01 && corner.out < stave + 0.01;
            let share = if through { pinched } else { 1.0 };
            let ring = section.iter().rev().map(|[across, out]| {
                let off = self.layer as f32 * thick + out;
                let angle = toward(turn + across * share * self.per_turn());
                self.maker
                    .surface
                    .at(low + corner.up + off * corner.face[0])
                    .point(corner.out + off * corner.face[1], angle)
            });
            positions.extend(ring);
        }
        let corners = if per == 4 { [2, 3] } else { [per - 2, per - 1] };
        let shape = Shape::swept(positions, per, Ends::Capped, corners);
        Part::new(Piece::Wrap(number), colour::stock(strand), shape)
    }

    /// How far round each corner of the way lies, in turns.
    fn turns(&self, way: &[Corner]) -> Vec<f32> {
        let (mut from, mut to) = (self.turn(self.from), self.turn(self.to));
        let mut over = self.over();
        if self.layer % 2 == 1 {
            std::mem::swap(&mut from, &mut to);
            over.reverse();
        }
        let height = self.basket.body.rim().height.to_mm() as f32;
        let middle = self.basket.body.uprights().thickness.to_mm() as f32 / 2.0;
        way.iter()
            .enumerate()
            .map(|(index, corner)| {
                let risen = ((corner.up / height - STEP_ABOVE) / (1.0 - STEP_ABOVE)).clamp(0.0, 1.0);
                if index == 0 || corner.up <= height && corner.out > middle {
                    from + (over[0] - from) * risen
                } else if corner.up <= height {
                    to + (over[1] - to) * risen
                } else {
                    let across = self
                        .basket
                        .body
                        .filler()
                        .map_or(2.0, |filler| filler.stock.width.to_mm() as f32)
                        .max(0.1);
                    let share = ((middle - corner.out) / across + 0.5).clamp(0.0, 1.0);
                    over[0] + (over[1] - over[0]) * share
                }
            })
            .collect()
    }
}

fn unit(vector: kurbo::Vec2) -> kurbo::Vec2 {
    vector / vector.hypot().max(1e-9)
}
