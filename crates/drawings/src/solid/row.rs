//! Rows of weaving: every weaver over and under as the cells of the weave say, with the way it takes
//! from stave to stave, rising from row to row where the weaver runs on in a spiral.
//!
//! Where a spiral begins and ends on a level edge the weaver is tapered to it, as makers cut it.

use basket::Basket;
use basket::weave::{Course, Follow, Passing, Row};

use super::crossing::{Crossing, Place};
use super::edges;
use super::mesh::{Ends, direction};
use super::section::{Section, section};
use super::stave::stave_section;
use super::surface::Surface;
use super::{Detail, Mesh, Part, PartKind, colour};

/// Least share of its height that a tapered weaver keeps.
const LEAST: f32 = 0.12;
/// Crossings above which rows are drawn as plain bands, so that no pattern takes too long.
const MOST: u64 = 60_000;

/// All rows up to a number; `packed` is the share of its height to which the weaving is pressed down.
pub(super) fn rows(basket: &Basket, surface: &Surface, upto: u32, packed: f32, detail: Detail) -> Vec<Part> {
    let crossings = u64::from(upto.min(basket.weave.rows)) * u64::from(basket.staves.count);
    let rows = basket.weave.each_row.iter().filter(|row| row.number <= upto);
    let mut parts = Vec::new();
    for row in rows {
        let Some(course) = basket.weave.courses.get(row.course.saturating_sub(1) as usize) else { continue };
        let laid = Laid::of(basket, surface, course, row, packed, detail);
        let weavers = if crossings > MOST { 1 } else { laid.weavers() };
        for weaver in 0..weavers {
            let (mesh, edges) = if crossings > MOST { laid.band() } else { laid.weaver(weaver) };
            if mesh.triangles.is_empty() {
                continue;
            }
            parts.push(Part {
                name: if weavers == 1 {
                    format!("row {}", row.number)
                } else {
                    format!("row {}, weaver {}", row.number, weaver + 1)
                },
                kind: PartKind::Row,
                number: Some(row.number),
                material: course.weaver.name.clone(),
                colour: colour::of(&course.weaver),
                mesh,
                edges,
                turned: None,
            });
        }
    }
    parts
}

/// A row as it lies on the wall.
struct Laid<'a> {
    basket: &'a Basket,
    surface: &'a Surface,
    course: &'a Course,
    row: &'a Row,
    /// Section of the weaver: across as a share of its height from 0 to 1, out as a share of its
    /// thickness from −1 to 1.
    section: Section,
    /// Middle of the row, bottom and top of its course, half the weaver's width, rise in a round.
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
    middle: [Place; 2],
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

impl<'a> Laid<'a> {
    fn of(
        basket: &'a Basket,
        surface: &'a Surface,
        course: &'a Course,
        row: &'a Row,
        packed: f32,
        detail: Detail,
    ) -> Self {
        let weaver = &course.weaver;
        let (width, thick) = (weaver.width.to_mm() as f32, weaver.thickness.to_mm() as f32);
        let section: Section = section(weaver, width, detail)
            .iter()
            .map(|[up, out]| [up / width.max(1e-6) + 0.5, 2.0 * out / thick.max(1e-6) - 1.0])
            .collect();
        let middle = row.along.to_mm() as f32 * packed;
        let node = surface.at(middle);
        let stave = basket.staves.thickness.to_mm() as f32;
        let round = (node.radius + node.out_radius * stave / 2.0).max(1e-3);
        let per_mm = 1.0 / round;
        let crossing = Crossing {
            stave: &stave_section(basket, basket.staves.width_at(row.along).to_mm() as f32, detail),
            pitch: std::f32::consts::TAU * round / basket.staves.count.max(1) as f32,
            weaver: thick,
            coarse: detail == Detail::Thumbnail,
        };
        let pitch = course.pitch.to_mm() as f32 * packed;
        Self {
            crossing: Ways::of(&crossing, &section, per_mm),
            basket,
            surface,
            course,
            row,
            section,
            middle,
            from: course.from.to_mm() as f32 * packed,
            to: course.to.to_mm() as f32 * packed,
            half: (width * packed).min(pitch) / 2.0,
            rise: pitch * rounds(course) as f32,
            per_mm,
        }
    }

    fn index(&self) -> u32 {
        self.row.number.saturating_sub(self.course.first_row)
    }

    /// How many weavers share the row.
    fn weavers(&self) -> u32 {
        let cells = (0..self.basket.staves.count).map(|stave| self.course.fabric.cell(self.index(), stave));
        let both = |cell: basket::weave::Cell| cell.outside.is_some() && cell.inside.is_some();
        match &self.course.fabric.passing {
            Passing::Twined { weavers, .. } => (*weavers).max(2),
            _ => 1 + u32::from(cells.into_iter().any(both)),
        }
    }

    /// Whether a weaver passes a stave outside; a stave beyond the last is met in the next round.
    fn outside(&self, weaver: u32, weavers: u32, stave: u32) -> bool {
        let count = self.basket.staves.count.max(1);
        let row = self.index() + rounds(self.course) * (stave / count);
        let cell = self.course.fabric.cell(row, stave % count);
        if weavers == 1 { cell.outside.is_some() } else { cell.inside != Some(weaver) }
    }

    /// Lower and upper edge of the row so far round.
    fn edges(&self, turn: f32) -> [f32; 2] {
        let middle = self.middle + self.rise * (turn - 0.5);
        [(middle - self.half).max(self.from), (middle + self.half).min(self.to)]
    }

    fn weaver(&self, weaver: u32) -> (Mesh, Vec<Vec<[f32; 3]>>) {
        let (count, weavers) = (self.basket.staves.count.max(1), self.weavers());
        let per = self.section.len();
        let mut positions = Vec::with_capacity(count as usize * 8 * per);
        let mut outside = self.outside(weaver, weavers, 0);
        let start = self.crossing.middle[usize::from(outside)];
        let start = Station::of(&start, &self.section, self.per_mm, 0.0);
        self.put(&mut positions, &start, 0, [1.0, 0.0], Band::of(weaver, weavers, None));
        for stave in 0..count {
            let next = self.outside(weaver, weavers, stave + 1);
            let angle = direction((self.basket.staves.turn(stave + 1) * std::f64::consts::TAU) as f32);
            for station in &self.crossing.way[usize::from(outside)][usize::from(next)] {
                let band = Band::of(weaver, weavers, Some(station.crosses));
                self.put(&mut positions, station, stave, angle, band);
            }
            outside = next;
        }
        let lines = [0, 1].map(|corner| edges::line(&positions, per, corner));
        (Mesh::swept(positions, per, Ends::Capped), lines.to_vec())
    }

    /// Adds the weaver's section at a station, unless the row has no height there.
    fn put(
        &self,
        positions: &mut Vec<[f32; 3]>,
        station: &Station,
        stave: u32,
        [cos, sin]: [f32; 2],
        band: Band,
    ) {
        let turn = (stave as f32 + station.share) / self.basket.staves.count.max(1) as f32;
        let [low, high] = self.edges(turn);
        let height = high - low;
        if height < LEAST * 2.0 * self.half {
            return;
        }
        for ([up, _], ([near, aside], out)) in self.section.iter().zip(&station.corners) {
            let node = self.surface.at(low + height * (band.from + (band.to - band.from) * up));
            let angle = [cos * near - sin * aside, sin * near + cos * aside];
            positions.push(node.point(*out, angle));
        }
    }

    /// The row as a plain band over the staves, for baskets with more crossings than can be drawn.
    fn band(&self) -> (Mesh, Vec<Vec<[f32; 3]>>) {
        let steps = 48;
        let out = self.crossing.middle[1];
        let mut positions = Vec::with_capacity(4 * steps);
        for step in 0..steps {
            let angle = direction(std::f32::consts::TAU * step as f32 / steps as f32);
            let [low, high] = [self.middle - self.half, self.middle + self.half];
            for (along, side) in [(low, -1.0), (high, -1.0), (high, 1.0), (low, 1.0)] {
                positions.push(self.surface.at(along).point(out.out + out.half * side, angle));
            }
        }
        let lines = vec![edges::line(&positions, 4, 3)];
        (Mesh::swept(positions, 4, Ends::Joined), lines)
    }
}

/// The part of a row's height that a weaver takes up.
#[derive(Clone, Copy)]
struct Band {
    from: f32,
    to: f32,
}

impl Band {
    /// All of it for a lone weaver. Weavers twined together pass each other in the gap between
    /// staves: the one going in below, the one coming out above.
    fn of(weaver: u32, weavers: u32, crosses: Option<i8>) -> Self {
        let whole = Self { from: 0.0, to: 1.0 };
        let shares = weavers.max(1) as f32;
        match crosses {
            _ if weavers < 2 => whole,
            Some(-1) => Self { from: 0.0, to: 1.0 / shares },
            Some(1) => Self { from: 1.0 - 1.0 / shares, to: 1.0 },
            _ if weavers == 2 => whole,
            _ => Self { from: weaver as f32 / shares, to: (weaver + 1) as f32 / shares },
        }
    }
}

impl Ways {
    fn of(crossing: &Crossing<'_>, section: &Section, per_mm: f32) -> Self {
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
    fn of(place: &Place, section: &Section, per_mm: f32, pitch: f32) -> Self {
        let (sin, cos) = place.tilt.sin_cos();
        let corner = |[_, out]: &[f32; 2]| {
            let off = out * place.half;
            (direction((place.round + off * sin) * per_mm), place.out + off * cos)
        };
        let share = if pitch > 0.0 { place.round / pitch } else { 0.0 };
        Self { share, crosses: 0, corners: section.iter().map(corner).collect() }
    }
}

/// By how many rows a weaver rises in a round.
fn rounds(course: &Course) -> u32 {
    match &course.fabric.passing {
        Passing::Repeat { follow: Follow::Spiral, .. } | Passing::SkipOne => 1,
        Passing::Repeat { follow: Follow::Chase(weavers), .. } => (*weavers).max(1),
        Passing::Twined { step_up, .. } => u32::from(!step_up),
        _ => 0,
    }
}
