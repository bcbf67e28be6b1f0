//! A mould cut into pieces that a printer has room for.

use super::apart::Apart;
use super::block::{Axis, Block};
use super::pegs::{Joint, Peg, PegSize, pegged};
use super::sections::Sections;
use crate::basket::Basket;
use crate::measure::Length;

/// More pieces than this are nothing to glue up.
pub const MOST_PIECES: usize = 64;
/// Sections of a mould by which it is cut.
const LEVELS: u32 = 121;
/// What a printer's room has to have over: for what the sections of a mould leave out.
const SPARE: Length = Length::mm(0.2);

/// The room of a printer: both sides of its bed, and its height.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Room(pub [Length; 3]);

/// A mould in pieces.
#[derive(Clone, Debug, PartialEq)]
pub struct Split {
    /// Its parts, of each block from the foot upward.
    pub parts: Vec<Part>,
    /// Its pegs.
    pub pegs: Vec<Peg>,
    /// The dowel of the pegs.
    pub peg: PegSize,
    /// How many joints have no room for a peg, and hold by glue alone.
    pub bare: usize,
}

/// One part of a mould.
#[derive(Clone, Debug, PartialEq)]
pub struct Part {
    /// Where it lies.
    pub block: Block,
    /// How large it is: along both sides and up.
    pub size: [Length; 3],
    /// Its largest level section, seen from above.
    pub plan: Vec<[Length; 2]>,
}

/// A printer into which a mould goes in too many pieces.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TooSmall {
    /// How many pieces it would be.
    pub pieces: usize,
}

impl Split {
    /// The mould of a basket, of one piece or round a core, in pieces that go into the printer as they stand or turned
    /// by a quarter. Level cuts and upright ones part it evenly.
    ///
    /// # Errors
    /// [`TooSmall`] where it would be more than [`MOST_PIECES`].
    pub fn of(basket: &Basket, room: Option<Room>, apart: Option<&Apart>) -> Result<Self, TooSmall> {
        let sections = Sections::of(&basket.body.form, LEVELS);
        let whole = apart.map_or_else(|| vec![sections.around()], Apart::blocks);
        let mut split = Vec::new();
        let mut joints = Vec::new();
        for block in whole {
            let before = split.len();
            split.extend(divided(&sections, &block, room)?);
            let own = split.iter().enumerate().skip(before);
            for (first, one) in own.clone() {
                joints.extend(
                    own.clone().filter_map(|(second, other)| Joint::between([first, second], [*one, *other])),
                );
            }
        }
        if split.len() > MOST_PIECES {
            return Err(TooSmall { pieces: split.len() });
        }
        let pegged = pegged(&sections, &joints, basket.body.base().screw_hole, basket.units);
        let part = |block: &Block| Part {
            block: *block,
            size: sections.reach(block).unwrap_or(*block).size(),
            plan: sections.largest(block).into_iter().map(|place| place.map(Length::mm)).collect(),
        };
        let parts = split.iter().map(part).collect();
        Ok(Self { parts, pegs: pegged.pegs, peg: pegged.size, bare: pegged.bare })
    }
}

/// A block's mould in pieces that go into a room.
fn divided(sections: &Sections, block: &Block, room: Option<Room>) -> Result<Vec<Block>, TooSmall> {
    let Some(reach) = sections.reach(block) else { return Ok(Vec::new()) };
    let Some(Room([x, y, height])) = room else { return Ok(vec![*block]) };
    let [length, width, high] = reach.size();
    let over = |size: Length, room: Length| {
        (size / (room - SPARE).max(Length::mm(1.0))).ceil().clamp(1.0, 1e6) as usize
    };
    let [straight, turned] = [[over(length, x), over(width, y)], [over(length, y), over(width, x)]];
    let count = |way: &[usize; 2]| way.iter().product::<usize>();
    let [across, along] = if count(&turned) < count(&straight) { turned } else { straight };
    let upward = over(high, height);
    let pieces = across.saturating_mul(along).saturating_mul(upward);
    if pieces > MOST_PIECES {
        return Err(TooSmall { pieces });
    }
    let mut blocks = vec![*block];
    for (axis, count) in [(Axis::Length, across), (Axis::Width, along), (Axis::Height, upward)] {
        blocks = blocks.iter().flat_map(|block| parted(block, &reach, axis, count)).collect();
    }
    blocks.retain(|block| sections.reach(block).is_some());
    let foot = |block: &Block| Axis::Height.of(block.from).to_mm();
    blocks.sort_by(|a, b| foot(a).total_cmp(&foot(b)));
    Ok(blocks)
}

/// A block parted evenly along an axis, by what the mould reaches.
fn parted(block: &Block, reach: &Block, axis: Axis, count: usize) -> Vec<Block> {
    let ([from, to], [outer_from, outer_to]) = (reach.side(axis), block.side(axis));
    let cut = |number: usize| match number {
        0 => outer_from,
        last if last == count => outer_to,
        number => from + (to - from) * (number as f64 / count as f64),
    };
    (0..count).map(|number| block.with(axis, [cut(number), cut(number + 1)])).collect()
}
