//! A mould that comes apart: segments round a core that draws out, for a wall that narrows toward its top.
//!
//! Two pairs of upright saw cuts, square to each other, part it. What they leave in the middle is the core, with
//! straight sides. On two sides of it stand keys with parallel sides, which move straight in once the core is out;
//! then the rest moves in, and each is lifted out when it is in. A segment comes out when, moved in, none of its
//! sections reaches beyond any section of the wall that lies above it. Each section is convex, so that it is enough
//! to ask this direction by direction: how far the segment reaches, and how far the wall does.

use std::f64::consts::TAU;

use super::block::{Axis, Block};
use super::sections::{Section, Sections};
use crate::basket::Basket;
use crate::measure::Length;

/// Room that a segment wants all round on its way (common practice: 1/16 in).
pub const CLEAR: Length = Length::inches(0.0625);
/// Width of a saw cut (common practice: a band saw's, smoothed).
const KERF: Length = Length::mm(1.5);
/// Least wood of a segment where the wall is narrowest (common practice: 3/4 in).
const LEAST_WOOD: Length = Length::inches(0.75);
/// Least wood of a core round its screw hole (common practice: 3/8 in).
const LEAST_CORE: Length = Length::inches(0.375);
/// From one core that is tried to the next.
const STEP: Length = Length::mm(3.0);
/// More cores than this are not tried.
const MOST: u32 = 400;
/// Directions in which is asked how far something reaches.
const DIRECTIONS: u32 = 72;
/// Sections of the wall that are looked at.
const LEVELS: u32 = 31;
/// Steps in which is tried how far a segment moves in.
const MOVES: u32 = 32;

/// A mould round a core.
#[derive(Clone, Debug, PartialEq)]
pub struct Apart {
    /// Length and width of the core.
    pub core: [Length; 2],
    /// Width of the saw cuts.
    pub kerf: Length,
    /// Its segments in the order in which they come out: keys first.
    pub segments: Vec<Segment>,
    block: Block,
}

/// A segment.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Segment {
    /// Where it lies.
    pub block: Block,
    /// Whether it has parallel sides and comes out before the others.
    pub key: bool,
    /// How far it is moved in before it is lifted out, across and along.
    pub moves: [Length; 2],
    /// The least room that it has on its way out.
    pub room: Length,
}

/// Why a mould cannot come apart so.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stuck {
    /// The most room that its tightest segment had of all cores that were tried; negative where it does not pass. None
    /// where the neck is too narrow for any core.
    pub room: Option<Length>,
}

/// A piece's way out.
#[derive(Clone, Copy, Debug)]
struct Way {
    moves: [Length; 2],
    room: Length,
}

/// How many segments there are.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Cuts {
    /// Two keys, and two blocks as long as the mould.
    Four,
    /// Four keys and four corners.
    Eight,
}

impl Apart {
    /// The mould of a basket round a core: in as few segments as come out, with as slender a core as serves.
    ///
    /// # Errors
    /// [`Stuck`] where no core serves.
    pub fn of(basket: &Basket) -> Result<Self, Stuck> {
        let ground = Ground::of(basket);
        // A wider core leaves slimmer segments and more room to move them, until it does not draw out itself.
        let mut cores = ground.cores();
        cores.truncate(cores.partition_point(|core| ground.draws_out(*core)));
        let mut most: Option<Length> = None;
        for cuts in [Cuts::Four, Cuts::Eight] {
            let room = |core: &[Length; 2]| ground.apart(*core, cuts).map(|apart| apart.room());
            let serves = |core: &[Length; 2]| room(core).is_some_and(|room| room >= CLEAR);
            let least = cores.partition_point(|core| !serves(core));
            if let Some(core) = cores.get(least) {
                return ground.apart(*core, cuts).ok_or(Stuck { room: most });
            }
            let widest = cores.last().and_then(room);
            most = most.into_iter().chain(widest).reduce(Length::max);
        }
        Err(Stuck { room: most })
    }

    /// The room of its tightest segment.
    pub fn room(&self) -> Length {
        let rooms = self.segments.iter().map(|segment| segment.room);
        rooms.reduce(Length::min).unwrap_or_default()
    }

    /// The core and then its segments.
    pub fn blocks(&self) -> Vec<Block> {
        std::iter::once(self.block).chain(self.segments.iter().map(|segment| segment.block)).collect()
    }
}

struct Ground {
    sections: Sections,
    directions: Vec<[f64; 2]>,
    around: Block,
    /// Up to where the basket reaches: what the mould does above does not hold it.
    top: Length,
    screw_hole: Length,
}

impl Ground {
    fn of(basket: &Basket) -> Self {
        let form = &basket.body.form;
        let rim = basket.body.rim();
        let sections = Sections::of(form, LEVELS);
        let around = sections.around();
        let direction = |number: u32| {
            let (sin, cos) = libm::sincos(f64::from(number) / f64::from(DIRECTIONS) * TAU);
            [cos, sin]
        };
        Self {
            sections,
            directions: (0..DIRECTIONS).map(direction).collect(),
            around,
            top: form.profile.at(rim.along + rim.height).height.min(form.height()),
            screw_hole: basket.body.base().screw_hole,
        }
    }

    /// Half sizes of cores, slender ones first: all leave the same wood on both axes where the wall is narrowest.
    fn cores(&self) -> Vec<[Length; 2]> {
        let neck = [[1.0, 0.0], [0.0, 1.0]].map(|out| {
            let reach = |section: &Section| {
                support(&section.ring, out).min(support(&section.ring, out.map(|side| -side)))
            };
            let all = self.sections.up_to(self.top).map(reach);
            Length::mm(all.reduce(f64::min).unwrap_or_default())
        });
        let least = self.screw_hole / 2.0 + LEAST_CORE;
        let most_wood = neck[0].min(neck[1]) - least;
        let sizes = (0..MOST).map(move |number| most_wood - STEP * f64::from(number));
        sizes.take_while(|wood| *wood >= LEAST_WOOD).map(|wood| neck.map(|neck| neck - wood)).collect()
    }

    /// What lies of it between, before or behind the cuts on an axis.
    fn side(&self, axis: Axis, half: Length, step: i8) -> [Length; 2] {
        let [from, to] = self.around.side(axis);
        match step {
            0 => [-half, half],
            1 => [half + KERF, to],
            _ => [from, -half - KERF],
        }
    }

    fn core(&self, [half_length, half_width]: [Length; 2]) -> Block {
        let along = self.around.with(Axis::Length, self.side(Axis::Length, half_length, 0));
        along.with(Axis::Width, self.side(Axis::Width, half_width, 0))
    }

    fn draws_out(&self, half: [Length; 2]) -> bool {
        self.way_out(&self.core(half), [Length::ZERO; 2]).room >= CLEAR
    }

    /// The mould round a core of this half size; none where a segment is empty.
    fn apart(&self, half: [Length; 2], cuts: Cuts) -> Option<Apart> {
        let [half_length, half_width] = half;
        let block = |[across, along]: [i8; 2]| {
            let whole = cuts == Cuts::Four && across != 0;
            let whole = whole.then(|| self.around.side(Axis::Width));
            let aside = whole.unwrap_or_else(|| self.side(Axis::Width, half_width, along));
            self.around
                .with(Axis::Length, self.side(Axis::Length, half_length, across))
                .with(Axis::Width, aside)
        };
        let steps: &[[i8; 2]] = match cuts {
            Cuts::Four => &[[0, 1], [0, -1], [1, 0], [-1, 0]],
            Cuts::Eight => &[[0, 1], [0, -1], [1, 0], [-1, 0], [1, 1], [-1, 1], [-1, -1], [1, -1]],
        };
        let segment = |steps: &[i8; 2]| {
            let block = block(*steps);
            self.sections.reach(&block)?;
            let [across, along] = *steps;
            let most = [half_length * (-2.0 * f64::from(across)), half_width * (-2.0 * f64::from(along))];
            let Way { moves, room } = self.way_out(&block, most);
            let key = across == 0 || (along == 0 && cuts == Cuts::Eight);
            Some(Segment { block, key, moves, room })
        };
        let segments: Option<Vec<Segment>> = steps.iter().map(segment).collect();
        Some(Apart {
            core: half.map(|half| half * 2.0),
            kerf: KERF,
            segments: segments?,
            block: self.core(half),
        })
    }

    /// How far a piece is best moved in, at most so far, and the least room that it has then on its way up.
    fn way_out(&self, block: &Block, [across, along]: [Length; 2]) -> Way {
        let slack = self.slack(block);
        let moves = |most: Length| {
            let last = if most == Length::ZERO { 0 } else { MOVES };
            (0..=last).map(move |step| most * (f64::from(step) / f64::from(MOVES)))
        };
        let room = |[x, y]: [Length; 2]| {
            let all = self.directions.iter().zip(&slack);
            let left = all.map(|([cos, sin], slack)| slack - x.to_mm() * cos - y.to_mm() * sin);
            Length::mm(left.fold(f64::INFINITY, f64::min))
        };
        let all = moves(across).flat_map(|x| moves(along).map(move |y| [x, y]));
        let ways = all.map(|moves| Way { moves, room: room(moves) });
        let most = |best: Way, way: Way| if way.room > best.room { way } else { best };
        ways.reduce(most).unwrap_or(Way { moves: [Length::ZERO; 2], room: Length::ZERO })
    }

    /// In each direction, how much farther the wall reaches than the segment does at any level below, in mm.
    fn slack(&self, block: &Block) -> Vec<f64> {
        let mut above = vec![f64::INFINITY; self.directions.len()];
        let mut slack = above.clone();
        let levels: Vec<&Section> = self.sections.up_to(self.top).collect();
        for level in levels.into_iter().rev() {
            let own = level.within(block);
            for ((direction, above), slack) in self.directions.iter().zip(&mut above).zip(&mut slack) {
                *above = above.min(support(&level.ring, *direction));
                if !own.is_empty() {
                    *slack = slack.min(*above - support(&own, *direction));
                }
            }
        }
        slack
    }
}

/// How far places reach in a direction.
fn support(places: &[[f64; 2]], [cos, sin]: [f64; 2]) -> f64 {
    places.iter().map(|[x, y]| x * cos + y * sin).fold(f64::NEG_INFINITY, f64::max)
}
