//! Rows of weaving: every weaver over and under as the cells of the weave say, with the way it takes
//! from stave to stave, rising from row to row where the weaver runs on in a spiral.
//!
//! Where a spiral begins and ends on a level edge the weaver is tapered to it, as makers cut it.

use basket::stock::Material;
use basket::weave::{Cell, Course, Follow, Passing, Row};
use basket::{Basket, Length};

use super::crossing::{Bends, Crossing, Place};
use super::edges;
use super::mesh::{Ends, direction};
use super::section::{Section, weaver_section};
use super::stave::stave_section;
use super::surface::Surface;
use super::{Detail, Mesh, Part, PartKind, colour};

/// Least share of its height that a tapered weaver keeps.
const LEAST: f32 = 0.12;
/// Crossings above which rows are drawn as plain bands, so that no pattern takes too long.
const MOST: u64 = 60_000;

/// All rows up to a number; `packed` is the share of its height to which the weaving is pressed down.
pub(super) fn rows(basket: &Basket, surface: &Surface, upto: u32, packed: f32, detail: Detail) -> Vec<Part> {
    let crossings = u64::from(upto.min(basket.body.weave.rows)) * u64::from(basket.body.uprights().count);
    let rows: Vec<&Row> = basket.body.weave.each_row.iter().filter(|row| row.number <= upto).collect();
    let build = |rows: &[&Row]| -> Vec<Part> {
        rows.iter()
            .flat_map(|row| row_parts(basket, surface, row, packed, crossings <= MOST, detail))
            .collect()
    };
    // Rows make up most of a solid: two threads share them.
    let (lower, upper) = rows.split_at(rows.len() / 2);
    std::thread::scope(|scope| {
        let above = scope.spawn(|| build(upper));
        let mut parts = build(lower);
        parts.extend(above.join().unwrap_or_else(|_| build(upper)));
        parts
    })
}

/// The weavers of a row, true or as plain bands.
fn row_parts(
    basket: &Basket,
    surface: &Surface,
    row: &Row,
    packed: f32,
    woven: bool,
    detail: Detail,
) -> Vec<Part> {
    let Some(course) = basket.body.weave.courses.get(row.course.saturating_sub(1) as usize) else {
        return Vec::new();
    };
    let lanes = Lane::of(course, row.number.saturating_sub(course.first_row));
    let alone = lanes.len() == 1;
    let mut parts = Vec::new();
    for lane in lanes {
        let laid = Laid::of(basket, surface, course, row, packed, &lane, detail);
        let pieces = if woven { laid.pieces() } else { vec![laid.band()] };
        for (piece, (colour, mesh, edges)) in (1..).zip(pieces) {
            let weaver = if alone { String::new() } else { format!(", weaver {}", lane.weaver + 1) };
            let strand = if piece == 1 { String::new() } else { format!(", strand {piece}") };
            let name = format!("row {}{weaver}{strand}", row.number);
            let part = Part::new(&name, PartKind::Row, &lane.stock.name, colour, mesh);
            parts.push(Part { number: Some(row.number), edges, ..part });
        }
    }
    parts
}

/// What a weaver takes of a row's height.
struct Lane<'a> {
    weaver: u32,
    stock: &'a Material,
    /// From where to where it lies, as shares of the row's height.
    band: Band,
    /// How many weavers are twined in the row.
    twined: u32,
    /// Width of all weavers that lie one above the other, in mm.
    width: f32,
}

impl<'a> Lane<'a> {
    /// The weavers of a row (from 0 within its course): one, or several one above the other, or several
    /// twined.
    fn of(course: &'a Course, row: u32) -> Vec<Self> {
        let whole = Band { from: 0.0, to: 1.0 };
        let width = |stock: &Material| stock.width.to_mm() as f32;
        let stock = |weaver: u32| {
            course.weavers.get(weaver as usize).map_or(&course.weaver, |amount| &amount.material)
        };
        if let Passing::Twined { weavers, .. } = &course.fabric.passing {
            let twined = (*weavers).max(2);
            let lane = |weaver| {
                let width = width(stock(weaver)) * (twined - 1) as f32;
                Self { weaver, stock: stock(weaver), band: whole, twined, width }
            };
            return (0..twined).map(lane).collect();
        }
        let mut lying: Vec<u32> = (0..)
            .zip(&course.weavers)
            .filter(|(_, amount)| amount.lies_in(row))
            .map(|(weaver, _)| weaver)
            .collect();
        if lying.is_empty() {
            lying.push(0);
        }
        let all: f32 = lying.iter().map(|weaver| width(stock(*weaver))).sum();
        let mut below = 0.0;
        let lane = |weaver: u32| {
            let from = below / all.max(1e-6);
            below += width(stock(weaver));
            let band = Band { from, to: below / all.max(1e-6) };
            Self { weaver, stock: stock(weaver), band, twined: 1, width: all }
        };
        lying.into_iter().map(lane).collect()
    }
}

impl Lane<'_> {
    /// Where the weaver lies in a gap in which it changes sides. Weavers twined together pass each other
    /// there: the one going in below, the one coming out above.
    fn crossing(&self, crosses: i8) -> Option<Band> {
        if self.twined < 2 || crosses == 0 {
            return None;
        }
        let share = 1.0 / self.twined.saturating_sub(1).max(2) as f32;
        Some(if crosses < 0 { Band { from: 0.0, to: share } } else { Band { from: 1.0 - share, to: 1.0 } })
    }

    /// Where the weaver lies at a stave. Of several twined outside a stave, the one that came out last
    /// lies uppermost and the one that goes in next lowest.
    fn at(&self, cell: Cell) -> Band {
        if self.twined < 3 {
            return self.band;
        }
        let lanes = self.twined - 1;
        let phase = (self.weaver + self.twined - cell.outside.unwrap_or(0) % self.twined) % self.twined;
        let lane = match phase {
            0 => (lanes - 1) as f32,
            1 => (lanes - 1) as f32 / 2.0,
            _ => (phase - 2) as f32,
        };
        Band { from: lane / lanes as f32, to: (lane + 1.0) / lanes as f32 }
    }
}

/// A weaver as it lies in a row on the wall.
struct Laid<'a> {
    basket: &'a Basket,
    surface: &'a Surface,
    course: &'a Course,
    lane: &'a Lane<'a>,
    /// Index of the row within its course.
    index: u32,
    /// Section of the weaver: across as a share of its height from 0 to 1, out as a share of its
    /// thickness from −1 to 1.
    section: Section,
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

/// A piece of one colour with its edges.
type Piece = ([u8; 3], Mesh, Vec<Vec<[f32; 3]>>);

impl<'a> Laid<'a> {
    fn of(
        basket: &'a Basket,
        surface: &'a Surface,
        course: &'a Course,
        row: &Row,
        packed: f32,
        lane: &'a Lane<'a>,
        detail: Detail,
    ) -> Self {
        let (width, thick) = (lane.stock.width.to_mm() as f32, lane.stock.thickness.to_mm() as f32);
        let section: Section = weaver_section(lane.stock, width, detail)
            .iter()
            .map(|[up, out]| [up / width.max(1e-6) + 0.5, 2.0 * out / thick.max(1e-6) - 1.0])
            .collect();
        let middle = row.along.to_mm() as f32 * packed;
        let node = surface.at(middle);
        let stave = basket.body.uprights().thickness.to_mm() as f32;
        let round = (node.radius + node.out_radius * stave / 2.0).max(1e-3);
        let per_mm = 1.0 / round;
        let crossing = Crossing {
            stave: &stave_section(basket, basket.body.uprights().width_at(row.along).to_mm() as f32, detail),
            pitch: std::f32::consts::TAU * round / basket.body.uprights().count.max(1) as f32,
            weaver: thick,
            bends: Bends::of(detail),
        };
        let rounds = rounds(course);
        let [from, to] = level_ends(basket, course, row);
        let pitch = row.pitch.to_mm() as f32 * packed;
        let rise = if rounds > 1 {
            course.pitch.to_mm() as f32 * packed * rounds as f32
        } else {
            pitch * rounds as f32
        };
        Self {
            crossing: Ways::of(&crossing, &section, per_mm),
            basket,
            surface,
            course,
            lane,
            index: row.number.saturating_sub(course.first_row),
            section,
            middle,
            from: from.to_mm() as f32 * packed,
            to: to.to_mm() as f32 * packed,
            half: (lane.width * packed).min(pitch) / 2.0,
            rise,
            per_mm,
        }
    }

    /// The cell at a place of the row; places beyond the last lie in the next round.
    fn cell(&self, place: u32) -> Cell {
        let count = self.basket.body.uprights().count.max(1);
        let row = self.index + rounds(self.course) * (place / count);
        self.course.fabric.cell(row, self.course.fabric.stave_in(row, place % count))
    }

    /// The direction of the stave at a place of the row.
    fn angle(&self, place: u32) -> [f32; 2] {
        let turn = self.basket.body.uprights().turn(self.course.fabric.stave_in(self.index, place) + 1);
        direction((turn * std::f64::consts::TAU) as f32)
    }

    fn band_at(&self, place: u32) -> Band {
        self.lane.at(self.cell(place))
    }

    /// Whether the weaver passes outside at a place of the row.
    fn outside(&self, place: u32) -> bool {
        let cell = self.cell(place);
        if self.lane.twined == 1 { cell.outside.is_some() } else { cell.inside != Some(self.lane.weaver) }
    }

    /// The weaver's colour at a place of the row.
    fn colour(&self, place: u32) -> [u8; 3] {
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
    fn pieces(&self) -> Vec<Piece> {
        let count = self.basket.body.uprights().count.max(1);
        let per = self.section.len();
        let mut positions = Vec::with_capacity(count as usize * 8 * per);
        let mut outside = self.outside(0);
        let start = Station::of(&self.crossing.middle[usize::from(outside)], &self.section, self.per_mm, 0.0);
        self.put(&mut positions, &start, (0, self.angle(0)), self.band_at(0));
        let mut pieces = Vec::new();
        let mut colour = self.colour(0);
        for place in 0..count {
            let now = self.colour(place);
            if now != colour && positions.len() > per {
                let again = positions.split_at(positions.len() - per).1.to_vec();
                pieces.extend(piece(colour, std::mem::replace(&mut positions, again), per));
            }
            colour = now;
            let next = self.outside(place + 1);
            let angle = self.angle(place);
            for station in &self.crossing.way[usize::from(outside)][usize::from(next)] {
                let band = self.lane.crossing(station.crosses).unwrap_or_else(|| self.band_at(place + 1));
                self.put(&mut positions, station, (place, angle), band);
            }
            outside = next;
        }
        pieces.extend(piece(colour, positions, per));
        pieces
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
            let node = self.surface.at(low + height * (band.from + (band.to - band.from) * up));
            let angle = [cos * near - sin * aside, sin * near + cos * aside];
            positions.push(node.point(*out, angle));
        }
    }

    /// The row as a plain band over the staves, for baskets with more crossings than can be drawn.
    fn band(&self) -> Piece {
        let steps = 48;
        let out = self.crossing.middle[1];
        let mut positions = Vec::with_capacity(4 * steps);
        for step in 0..steps {
            let angle = direction(std::f32::consts::TAU * step as f32 / steps as f32);
            let at = |share: f32| self.middle + self.half * (2.0 * share - 1.0);
            let [low, high] = [at(self.lane.band.from), at(self.lane.band.to)];
            for (along, side) in [(low, -1.0), (high, -1.0), (high, 1.0), (low, 1.0)] {
                positions.push(self.surface.at(along).point(out.out + out.half * side, angle));
            }
        }
        let lines = vec![edges::line(&positions, 4, 3)];
        (self.colour(0), Mesh::swept(positions, 4, Ends::Joined), lines)
    }
}

/// The part of a row's height that a weaver takes up.
#[derive(Clone, Copy)]
struct Band {
    from: f32,
    to: f32,
}

fn piece(colour: [u8; 3], positions: Vec<[f32; 3]>, per: usize) -> Option<Piece> {
    if positions.len() < 2 * per {
        return None;
    }
    let lines = [0, 1].map(|corner| edges::line(&positions, per, corner)).to_vec();
    Some((colour, Mesh::swept(positions, per, Ends::Capped), lines))
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

/// By how many rows a weaver rises in a round.
fn rounds(course: &Course) -> u32 {
    match &course.fabric.passing {
        Passing::Repeat { follow: Follow::Spiral, .. } | Passing::SkipOne => 1,
        Passing::Repeat { follow: Follow::Chase(weavers), .. } => (*weavers).max(1),
        Passing::Twined { step_up, .. } => u32::from(!step_up),
        _ => 0,
    }
}
