//! A weaver as it lies in a row: over and under as the cells of the weave say, with the way it takes from
//! stave to stave, rising from row to row where it runs on in a spiral.
//!
//! Where a spiral begins and ends on a level edge the weaver is tapered to it, as makers cut it.

use basket::limits::TRIANGLES;
use basket::weave::{Course, Row};
use basket::{Basket, Length};

use super::colour::{self, Substance};
use super::crossing::{Bends, Crossing, Waypoint};
use super::lane::{Band, Lane};
use super::maker::Maker;
use super::mesh::{Ends, direction, toward};
use super::section::{CrossSection, weaver_section};
use super::shape::Shape;

/// Least share of its height that a tapered weaver keeps.
const LEAST: f32 = 0.12;

/// A weaver as it lies in a row on the wall.
pub(super) struct Laid<'a> {
    maker: &'a Maker<'a>,
    basket: &'a Basket,
    course: &'a Course,
    lane: &'a Lane<'a>,
    /// Index of the row within its course.
    index: u32,
    /// Section of the weaver: across as a share of its height from 0 to 1, out as a share of its
    /// thickness from −1 to 1.
    section: CrossSection,
    /// Middle of the row, bottom and top of its course, half the row's height, rise in a round.
    middle: f32,
    from: f32,
    to: f32,
    half: f32,
    rise: f32,
    /// Angle of a millimetre round the wall.
    per_mm: f32,
    crossing: Ways,
}

/// The four ways from stave to stave.
struct Ways {
    /// The middle of a stave, inside and outside.
    middle: [Waypoint; 2],
    /// By whether the weaver leaves outside, and whether it arrives outside.
    way: [[Vec<Station>; 2]; 2],
}

/// A place on the way, ready to be turned to its stave: its share of the way, the band of the row's
/// height when several weavers share it, and for each corner of the weaver's section its direction
/// and how far out it lies.
struct Station {
    share: f32,
    crosses: i8,
    corners: Vec<([f32; 2], f32)>,
}

/// A piece of one colour.
type Strand<'a> = (Substance<'a>, Shape);

impl<'a> Laid<'a> {
    pub(super) fn of(maker: &'a Maker<'a>, course: &'a Course, row: &Row, lane: &'a Lane<'a>) -> Self {
        let (basket, packed) = (maker.basket, maker.packed());
        let (width, thick) = (lane.stock.width.to_mm() as f32, lane.stock.thickness.to_mm() as f32);
        let section: CrossSection = weaver_section(lane.stock, width, maker.detail)
            .iter()
            .map(|[up, out]| [up / width.max(1e-6) + 0.5, 2.0 * out / thick.max(1e-6) - 1.0])
            .collect();
        let middle = row.along.to_mm() as f32 * packed;
        let node = maker.surface.at(middle);
        let stave = basket.body.uprights().thickness.to_mm() as f32;
        let round = (node.radius + node.out_radius * stave / 2.0).max(1e-3);
        let per_mm = 1.0 / round;
        let crossing = Crossing {
            stave: &maker.stave_section(basket.body.uprights().width_at(row.along).to_mm() as f32),
            pitch: std::f32::consts::TAU * round / basket.body.uprights().count.max(1) as f32,
            weaver: thick,
            bends: Bends::of(maker.detail),
        };
        let rows = course.fabric.rise();
        let [from, to] = level_ends(basket, course, row);
        let pitch = row.pitch.to_mm() as f32 * packed;
        let each = if rows > 1 { course.pitch.to_mm() as f32 * packed } else { pitch };
        Self {
            crossing: Ways::of(&crossing, &section, per_mm),
            maker,
            basket,
            course,
            lane,
            index: row.number.saturating_sub(course.first_row),
            section,
            middle,
            from: from.to_mm() as f32 * packed,
            to: to.to_mm() as f32 * packed,
            half: (lane.width * packed).min(pitch) / 2.0,
            rise: each * rows as f32,
            per_mm,
        }
    }

    /// Row of the course and stave, both from 0, at a place of the row; places beyond the last lie in the
    /// next round.
    fn crossed(&self, place: u32) -> (u32, u32) {
        let count = self.basket.body.uprights().count.max(1);
        let fabric = &self.course.fabric;
        let row = self.index + fabric.rise() * (place / count);
        (row, fabric.stave_in(row, place % count))
    }

    /// The direction of the stave at a place of the row.
    fn angle(&self, place: u32) -> [f32; 2] {
        let turn = self.basket.body.uprights().turn(self.course.fabric.stave_in(self.index, place) + 1);
        toward(turn as f32)
    }

    fn band_at(&self, place: u32) -> Band {
        let (row, stave) = self.crossed(place);
        self.lane.at(self.course.fabric.cell(row, stave))
    }

    /// Whether the weaver passes outside at a place of the row.
    fn outside(&self, place: u32) -> bool {
        let (row, stave) = self.crossed(place);
        self.course.fabric.is_outside(row, stave, self.lane.weaver)
    }

    /// The weaver in its colour at a place of the row.
    fn substance(&self, place: u32) -> Substance<'a> {
        let amount = self.course.weavers.get(self.lane.weaver as usize);
        let colour = amount.and_then(|amount| amount.colour_at(self.index, place));
        colour::dyed(self.lane.stock, colour)
    }

    /// Lower and upper edge of the row so far round.
    fn edges(&self, turn: f32) -> [f32; 2] {
        let middle = self.middle + self.rise * (turn - 0.5);
        [(middle - self.half).max(self.from), (middle + self.half).min(self.to)]
    }

    /// The weaver from the row's beginning to its end, cut where its colour changes.
    pub(super) fn strands(&self) -> Vec<Strand<'a>> {
        let count = self.basket.body.uprights().count.max(1);
        let per = self.section.len();
        let mut positions = Vec::with_capacity(count as usize * 8 * per);
        let mut outside = self.outside(0);
        let start = Station::of(&self.crossing.middle[usize::from(outside)], &self.section, self.per_mm, 0.0);
        self.put(&mut positions, &start, (0, self.angle(0)), self.band_at(0));
        let mut strands = Vec::new();
        let mut substance = self.substance(0);
        for place in 0..count {
            let now = self.substance(place);
            if now.colour != substance.colour && positions.len() > per {
                let again = positions.split_at(positions.len() - per).1.to_vec();
                strands.extend(strand(substance, std::mem::replace(&mut positions, again), per));
            }
            substance = now;
            let next = self.outside(place + 1);
            let angle = self.angle(place);
            for station in &self.crossing.way[usize::from(outside)][usize::from(next)] {
                let band = self.lane.crossing(station.crosses).unwrap_or_else(|| self.band_at(place + 1));
                self.put(&mut positions, station, (place, angle), band);
            }
            outside = next;
        }
        strands.extend(strand(substance, positions, per));
        strands
    }

    /// Adds the weaver's section at a station, unless the row has no height there.
    fn put(
        &self,
        positions: &mut Vec<[f32; 3]>,
        station: &Station,
        (place, [cos, sin]): (u32, [f32; 2]),
        band: Band,
    ) {
        let [low, high] =
            self.edges((place as f32 + station.share) / self.basket.body.uprights().count.max(1) as f32);
        let height = high - low;
        if height < LEAST * 2.0 * self.half {
            return;
        }
        for ([up, _], ([near, aside], out)) in self.section.iter().zip(&station.corners) {
            let node = self.maker.surface.at(low + height * (band.from + (band.to - band.from) * up));
            let angle = [cos * near - sin * aside, sin * near + cos * aside];
            positions.push(node.point(*out, angle));
        }
    }

    /// The row as a plain band over the staves, for baskets with more crossings than can be drawn.
    pub(super) fn band(&self) -> Strand<'a> {
        let bands = (self.basket.body.weave.rows as usize * self.course.weavers.len().max(1)).max(1);
        let steps = (TRIANGLES / (bands * 8)).clamp(8, 48);
        let out = self.crossing.middle[1];
        let mut positions = Vec::with_capacity(4 * steps);
        for step in 0..steps {
            let angle = toward(step as f32 / steps as f32);
            let at = |share: f32| self.middle + self.half * (2.0 * share - 1.0);
            let [low, high] = [at(self.lane.band.from), at(self.lane.band.to)];
            for (along, side) in [(low, -1.0), (high, -1.0), (high, 1.0), (low, 1.0)] {
                positions.push(self.maker.surface.at(along).point(out.out + out.half * side, angle));
            }
        }
        (self.substance(0), Shape::swept(positions, 4, Ends::Joined, [3]))
    }
}

fn strand(substance: Substance<'_>, positions: Vec<[f32; 3]>, per: usize) -> Option<Strand<'_>> {
    let long = positions.len() >= 2 * per;
    long.then(|| (substance, Shape::swept(positions, per, Ends::Capped, [0, 1])))
}

impl Ways {
    fn of(crossing: &Crossing<'_>, section: &CrossSection, per_mm: f32) -> Self {
        let way = |from: bool, to: bool| -> Vec<Station> {
            let places = crossing.way(from, to);
            let last = places.len().saturating_sub(1);
            let crosses = i8::from(to) - i8::from(from);
            places
                .iter()
                .enumerate()
                .map(|(index, place)| Station {
                    crosses: if index == last { 0 } else { crosses },
                    ..Station::of(place, section, per_mm, crossing.pitch)
                })
                .collect()
        };
        Self {
            middle: [false, true].map(|outside| crossing.middle(outside)),
            way: [false, true].map(|from| [false, true].map(|to| way(from, to))),
        }
    }
}

impl Station {
    fn of(place: &Waypoint, section: &CrossSection, per_mm: f32, pitch: f32) -> Self {
        let (sin, cos) = place.tilt.sin_cos();
        let corner = |[_, out]: &[f32; 2]| {
            let off = out * place.half;
            (direction((place.round + off * sin) * per_mm), place.out + off * cos)
        };
        let share = if pitch > 0.0 { place.round / pitch } else { 0.0 };
        Self { share, crosses: 0, corners: section.iter().map(corner).collect() }
    }
}

/// The level edges between which a row's spiral runs: those of its course, and the one between doubled
/// and single rows.
fn level_ends(basket: &Basket, course: &Course, row: &Row) -> [Length; 2] {
    let last_doubled = (course.first_row + course.doubled).saturating_sub(2) as usize;
    let step = basket
        .body
        .weave
        .each_row
        .get(last_doubled)
        .filter(|_| course.doubled > 0 && course.doubled < course.rows);
    match step {
        Some(last) if row.number <= last.number => [course.from, last.along + last.pitch / 2.0],
        Some(last) => [last.along + last.pitch / 2.0, course.to],
        None => [course.from, course.to],
    }
}
