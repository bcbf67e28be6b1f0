//! The search for a weave that gives a wanted look: every way to weave on every count is woven, cell by
//! cell, and looked at from outside.

mod colouring;
mod wanted;
mod ways;

pub use wanted::{COUNTS, Wanted};

use std::collections::BTreeMap;

use crate::pattern::{Direction, Lean, WeaveKind};
use crate::weave::fabric::Fabric;
use crate::weave::look::{Look, ROWS_READ, Sighting};
use crate::weave::passing::Passing;
use crate::weave::sights::Sights;
pub use colouring::{Colouring, MOST_COLOURS};

/// Staves that a look is read off: twice the longest repeat of weave and colours.
const STAVES_READ: u32 = 64;
/// No basket has more staves.
const MOST_STAVES: u32 = 1000;
/// What a turn more or less than wanted weighs, in staves more or less than wanted.
const TURN: f64 = 12.0;
/// A spiral that misses the wanted turns by more than this share is not proposed.
const OFF: f64 = 0.5;
/// Of proposals of one family of weaves, no more than so many are kept.
const OF_A_FAMILY: usize = 3;

/// A way to get a wanted look.
#[derive(Clone, Debug, PartialEq)]
pub struct Proposal {
    /// How many staves.
    pub count: u32,
    /// The weave on them.
    pub fabric: Fabric,
    /// Which colours go where.
    pub colouring: Colouring,
    /// What is seen outside.
    pub sighting: Sighting,
    /// To which side the weaver runs.
    pub direction: Direction,
    /// How often a line goes round in the wanted rows.
    pub turns: f64,
    /// The longest way, in staves, that a weaver goes without changing sides.
    pub float: u32,
    /// By how much it falls short: staves off the wanted count and what weighs as much.
    pub penalty: f64,
}

impl Proposal {
    /// Whether the look is seen on the whole round.
    fn is_seen(&self, wanted: &Wanted) -> bool {
        look(&weavers_seen(&self.fabric, self.count), &self.colouring, wanted) == self.sighting
    }

    /// To which side its lines climb, where they do, seen from outside on a basket that stands on its base.
    pub fn lean(&self) -> Option<Lean> {
        self.sighting.lean().map(|lean| self.direction.seen(lean))
    }

    /// The weave, as a pattern names it.
    pub fn weave(&self) -> WeaveKind {
        self.fabric.passing.weave().kind()
    }

    /// The course as written in a pattern: keys with TOML values, but for weaver and length. `names` are
    /// those of the colours; none where there is one only.
    pub fn keys(&self, names: &[&str]) -> Vec<(&'static str, String)> {
        let mut keys = vec![("weave", format!("\"{}\"", self.weave()))];
        keys.extend(self.fabric.passing.weave().keys(self.direction));
        let name =
            |colour: &u8| format!("\"{}\"", names.get(usize::from(*colour)).copied().unwrap_or("natural"));
        let list = |colours: &[u8]| format!("[{}]", colours.iter().map(name).collect::<Vec<_>>().join(", "));
        let weavers = self.fabric.weavers();
        if let Some(every) = self.colouring.every {
            keys.push(("rows", every.to_string()));
        } else if names.len() > 1 || weavers > 2 {
            let mut colours = self.colouring.weavers.clone();
            colours.resize(weavers as usize, colours.first().copied().unwrap_or(0));
            keys.push(("colours", list(&colours)));
        }
        keys
    }

    /// The colour seen outside at a crossing of a row and a stave, both from 0.
    pub fn colour(&self, row: u32, stave: u32) -> u8 {
        self.colouring.seen(row, stave, self.fabric.cell(row, stave).outside)
    }
}

/// All that is proposed, best first, at most `most`.
pub fn find(wanted: &Wanted, most: usize) -> Vec<Proposal> {
    let mut all: Vec<Proposal> =
        ways::all().into_iter().flat_map(|passing| of_way(wanted, &passing)).collect();
    all.sort_by(|a, b| a.penalty.total_cmp(&b.penalty));
    let mut best: Vec<Proposal> = Vec::new();
    for proposal in all {
        if best.len() >= most {
            break;
        }
        if is_new(&best, &proposal) && proposal.fabric.holds() && proposal.is_seen(wanted) {
            best.push(proposal);
        }
    }
    best
}

/// Whether neither the same weave nor enough of its family stand already.
fn is_new(best: &[Proposal], new: &Proposal) -> bool {
    let family = ways::family(&new.fabric.passing);
    let kin = best.iter().filter(|old| ways::family(&old.fabric.passing) == family).count();
    kin < OF_A_FAMILY && best.iter().all(|old| old.fabric.passing != new.fabric.passing)
}

/// What a way to weave gives on all counts. Counts that leave the same remainder look alike, so that one
/// of them is woven for all; each proposal that is kept is woven again on its own count.
fn of_way(wanted: &Wanted, passing: &Passing) -> Vec<Proposal> {
    let repeat = passing.weave().period();
    let colours = u32::from(wanted.colours.clamp(1, MOST_COLOURS));
    let counts = wanted.counts.clone().filter(|count| (3..=MOST_STAVES).contains(count));
    let mut classes: BTreeMap<(u32, bool), Vec<u32>> = BTreeMap::new();
    for count in counts.filter(|&count| ways::fits(passing, count)) {
        classes.entry((count % repeat, count.is_multiple_of(colours))).or_default().push(count);
    }
    classes.into_values().flat_map(|counts| of_class(wanted, passing, &counts)).collect()
}

/// What a way gives on counts that look alike.
fn of_class(wanted: &Wanted, passing: &Passing, counts: &[u32]) -> Vec<Proposal> {
    let Some(&first) = counts.first() else { return Vec::new() };
    let step = passing.weave().period() * u32::from(wanted.colours.clamp(1, MOST_COLOURS));
    let wide = first + step * STAVES_READ.saturating_sub(first).div_ceil(step);
    let seen = weavers_seen(&fabric(passing, wide), STAVES_READ);
    let mut all = Vec::new();
    for colouring in Colouring::all(&fabric(passing, first), wanted) {
        let sighting = look(&seen, &colouring, wanted);
        if is_wanted(wanted, &sighting) {
            let fabrics = counts.iter().map(|&count| fabric(passing, count));
            all.extend(fabrics.filter_map(|fabric| propose(wanted, fabric, &colouring, sighting)));
        }
    }
    all
}

fn fabric(passing: &Passing, count: u32) -> Fabric {
    Fabric::new(passing.clone(), count)
}

/// The weavers seen outside on the first staves.
fn weavers_seen(fabric: &Fabric, staves: u32) -> Sights {
    Sights::of(ROWS_READ, staves, |row, stave| {
        fabric.cell(row, stave).outside.map_or(colouring::STAVE, |weaver| weaver as u8)
    })
}

fn look(weavers: &Sights, colouring: &Colouring, wanted: &Wanted) -> Sighting {
    weavers
        .map(|row, stave, cell| colouring.seen(row, stave, colouring::weaver(cell)))
        .read(wanted.proportion)
}

fn is_wanted(wanted: &Wanted, seen: &Sighting) -> bool {
    let turned = |lean| wanted.direction.seen(lean);
    let leans = |lean| seen.look != Look::Spiral || seen.lean().map(turned) == Some(lean);
    seen.look == wanted.look && wanted.lean.is_none_or(leans)
}

/// None if its turns are far from what is wanted.
fn propose(wanted: &Wanted, fabric: Fabric, colouring: &Colouring, sighting: Sighting) -> Option<Proposal> {
    let (count, float) = (fabric.count, fabric.float_staves(ROWS_READ));
    let turns = sighting.turns(count, wanted.rows);
    let off =
        wanted.turns.filter(|_| wanted.look == Look::Spiral).map_or(0.0, |wanted| (turns - wanted).abs());
    if off > wanted.turns.unwrap_or(f64::INFINITY) * OFF {
        return None;
    }
    // A float over more than three staves catches on things and lets the staves wander.
    let loose = 2.0 * f64::from(float.saturating_sub(3));
    let distance = f64::from(count.abs_diff(wanted.near));
    let penalty = distance + TURN * off + loose + fabric.passing.weave().work() + colouring.work();
    let (direction, colouring) = (wanted.direction, colouring.clone());
    Some(Proposal { count, fabric, colouring, sighting, direction, turns, float, penalty })
}
