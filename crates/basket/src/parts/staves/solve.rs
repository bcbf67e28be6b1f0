//! The solver: from what the pattern fixes and the stock that exists to the staves.

use super::foot::Bend;
use super::groups::{self, Cutting};
use super::length::LengthParts;
use super::needs::Needs;
use super::paths::Wall;
use super::rank::{Entry, Judge, Judged, Offer};
use super::usual::{SPARE_SHARE, SPARES_CONFIDENCE, USUAL_GAP};
use super::wall::StandingRoom;
use super::wider::wider;
use super::{Candidate, GapAt, Staves, explain, formulas};
use crate::base::Base;
use crate::chance;
use crate::limits::STAVES;
use crate::making::Making;
use crate::measure::Length;
use crate::pattern::{OvalSide, Spacing, StavesPattern};
use crate::stock::Material;
use crate::uprights::Uprights;
use crate::weave::Running;

/// How far counts are tried beyond those that the girths suggest.
const BEYOND: f64 = 4.0;
/// How many counts are tried for one stock at most.
const MOST_COUNTS: f64 = 40.0;
/// Most staves that are ever chosen.
const MOST_STAVES: f64 = STAVES as f64;
/// How many candidates are kept.
const KEPT: usize = 3;

impl Staves {
    /// Solves for the staves of a basket. What the pattern fixes is kept exactly, even where it is
    /// bad; what it leaves out is chosen from the stocks offered (used only when it names no stock), and each
    /// choice is noted. Without any stock, 1/4 in flat oval reed is assumed.
    pub fn solve(pattern: &StavesPattern, base: &Base, needs: &Needs<'_>, making: &mut Making<'_>) -> Self {
        let needs = &needs.sound();
        let gap = pattern.gap.unwrap_or_else(|| USUAL_GAP.max(needs.row));
        let judge = Judge { base, needs, gap };
        let assumed = super::assumed_stock();
        let stocks = match &pattern.stock {
            Some(stock) => std::slice::from_ref(stock),
            None if needs.stocks.is_empty() => std::slice::from_ref(&assumed),
            None => needs.stocks,
        };
        let offers: Vec<Offer<'_>> = stocks.iter().map(|stock| judge.offer(stock, pattern.length)).collect();
        let entries = entries(pattern, &offers, &judge);
        let best = best(&judge, pattern, &entries);
        let spare;
        let used = if let Some(best) = best.first() {
            *best
        } else {
            spare = judge.offer(pattern.stock.as_ref().unwrap_or(&assumed), pattern.length);
            judge.judged(entry(pattern, pattern.count.unwrap_or(3), &spare), given_taper(pattern))
        };
        let spares = pattern.spares.unwrap_or_else(|| usual_spares(used.entry.count, making.hand.spoilt));
        let mut staves = Self { spares, ..staves(pattern, &judge, &used, candidates(&judge, &best)) };
        staves.take_paths(pattern, needs);
        explain::choices(pattern, &staves, needs, base, making);
        staves
    }
}

impl Staves {
    /// Lets each stave take its path up the wall.
    fn take_paths(&mut self, pattern: &StavesPattern, needs: &Needs<'_>) {
        let rim = needs.wall + needs.rim / 2.0;
        let uprights = &mut self.uprights;
        let wall = Wall {
            form: needs.form,
            rim,
            outward: uprights.middle(rim),
            count: uprights.count,
            width: uprights.width,
        };
        uprights.paths = wall.paths(self.spacing);
        uprights.paths_to = rim;
        if let Some(ends) = pattern.ends.filter(|_| !needs.form.outline.is_round()) {
            uprights.wider = wider(needs.form, uprights, ends.min(self.stock.width), rim);
        }
        if !uprights.paths.is_empty() {
            let [_, longest] = groups::longer(uprights);
            self.length_parts = self.length_parts.along_paths(longest, pattern.length);
            self.length = self.length_parts.total();
        }
        let all_alike = pattern.length.is_some();
        self.groups = Cutting { length: self.length, all_alike, spares: self.spares }.groups(&self.uprights);
    }
}

impl Judge<'_> {
    fn offer<'a>(&self, stock: &'a Material, length: Option<Length>) -> Offer<'a> {
        let bend = Bend::of(&self.needs.form.profile, self.base, stock);
        let parts = LengthParts::of(self.base, &bend, self.needs, length);
        let wall = StandingRoom::of(self.base, self.needs, &bend, &parts);
        Offer { stock, bend, parts, wall }
    }
}

/// Everything that could be used. A count that the pattern fixes is tried with every stock; the
/// counts around what the girths suggest are tried too, to show what would be better.
fn entries<'a>(pattern: &StavesPattern, offers: &'a [Offer<'a>], judge: &Judge<'_>) -> Vec<Entry<'a>> {
    let mut entries = Vec::new();
    for offer in offers {
        let width = pattern.width.unwrap_or(offer.stock.width);
        let (low, high) = counts_around(&offer.wall, width, judge.gap.max(Length::ZERO));
        let others =
            most_run((low..=high).collect(), judge).into_iter().filter(|count| Some(*count) != pattern.count);
        entries.extend(pattern.count.into_iter().chain(others).map(|count| entry(pattern, count, offer)));
    }
    entries
}

fn entry<'a>(pattern: &StavesPattern, count: u32, offer: &'a Offer<'a>) -> Entry<'a> {
    Entry { count, offer, width: pattern.width.unwrap_or(offer.stock.width) }
}

/// The counts on which nothing stops, and of these the ones on which most courses run; all where none is.
fn most_run(counts: Vec<u32>, judge: &Judge<'_>) -> Vec<u32> {
    let running: Vec<(u32, Running)> =
        counts.iter().map(|count| (*count, (judge.needs.running)(*count))).collect();
    let fit = |(_, running): &&(u32, Running)| !running.stops();
    let Some(most) = running.iter().filter(fit).map(|(_, running)| running.run).max() else { return counts };
    running.iter().filter(fit).filter(|(_, running)| running.run == most).map(|(count, _)| *count).collect()
}

/// The counts that the girth at the rim and the widest girth suggest, and a few on either side.
fn counts_around(wall: &StandingRoom, width: Length, gap: Length) -> (u32, u32) {
    let width = width.max(Length::mm(0.1));
    let rim = formulas::count_on(wall.girth_rim(), width, gap);
    let widest = formulas::count_on(wall.girth_widest(), width, gap);
    let high = (widest.ceil() + BEYOND).clamp(3.0, MOST_STAVES);
    let low = (rim.min(widest).floor() - BEYOND).max(high - MOST_COUNTS).clamp(3.0, high);
    (low as u32, high as u32)
}

/// The best few entries, best first; one that the pattern demands stands first in any case. Where it demands a
/// count and leaves the stock open, the kind of stock stays the one that an open count would have: a count
/// alone does not turn reed into cane.
fn best<'a>(judge: &Judge<'a>, pattern: &StavesPattern, entries: &[Entry<'a>]) -> Vec<Judged<'a>> {
    let taper = given_taper(pattern);
    let Some(count) = pattern.count else { return least(judge, taper, entries, (KEPT, &|_| true)) };
    let usual = least(judge, taper, entries, (1, &|_| true));
    let kind = usual.first().map(|judged| judged.entry.offer.stock.kind);
    let demanded = |entry: &Entry<'_>| entry.count == count && Some(entry.offer.stock.kind) == kind;
    least(judge, taper, entries, (KEPT, &demanded))
}

/// The so many entries of the least penalty, the demanded ones before all others. An entry whose penalty cannot
/// come below those already found is not tapered at all.
fn least<'a>(
    judge: &Judge<'a>,
    taper: Option<(Length, Length)>,
    entries: &[Entry<'a>],
    (most, demanded): (usize, &dyn Fn(&Entry<'_>) -> bool),
) -> Vec<Judged<'a>> {
    let key = |judged: &Judged<'_>| (!demanded(&judged.entry), judged.penalty);
    let bound = |entry: &Entry<'a>| (!demanded(entry), judge.at_least(entry), *entry);
    let mut bounded: Vec<(bool, f64, Entry<'a>)> = entries.iter().map(bound).collect();
    bounded.sort_by(|one, other| one.0.cmp(&other.0).then(one.1.total_cmp(&other.1)));
    let mut kept: Vec<Judged<'a>> = Vec::with_capacity(most + 1);
    for (other, bound, entry) in bounded {
        let used_found = kept.first().is_some_and(|first| demanded(&first.entry));
        if other && !used_found {
            continue;
        }
        let beaten = kept.iter().filter(|judged| judged.penalty <= bound).count();
        if beaten >= most {
            continue;
        }
        let judged = judge.judged(entry, taper);
        let place = kept.iter().position(|better| {
            let ((there, penalty_there), (here, penalty_here)) = (key(better), key(&judged));
            there.cmp(&here).then(penalty_there.total_cmp(&penalty_here)).is_gt()
        });
        kept.insert(place.unwrap_or(kept.len()), judged);
        kept.truncate(most);
    }
    kept
}

fn given_taper(pattern: &StavesPattern) -> Option<(Length, Length)> {
    pattern.taper.map(|taper| (taper.from, taper.foot))
}

fn candidates(judge: &Judge<'_>, best: &[Judged<'_>]) -> Vec<Candidate> {
    best.iter()
        .map(|judged| Candidate {
            count: judged.entry.count,
            stock: judged.entry.offer.stock.clone(),
            gap_rim: judged.gap_rim,
            gap_narrowest: judged.narrowest,
            gap_widest: judged.widest,
            foot: judged.taper.foot,
            penalty: judged.penalty,
            reasons: judge.reasons(judged),
        })
        .collect()
}

fn staves(
    pattern: &StavesPattern,
    judge: &Judge<'_>,
    used: &Judged<'_>,
    candidates: Vec<Candidate>,
) -> Staves {
    let Entry { count, offer: Offer { stock, bend, parts, wall }, width } = used.entry;
    let every_gap = gaps(judge, used);
    let narrowest = extreme(&every_gap, |gap, best| gap.gap < best.gap);
    let widest = extreme(&every_gap, |gap, best| gap.gap > best.gap);
    Staves {
        uprights: Uprights {
            kind: stock.kind,
            count,
            thickness: stock.thickness,
            width,
            foot: used.taper.foot,
            foot_along: parts.foot_along(),
            full_from: used.taper.from,
            standing: wall.standing.clone(),
            wider: None,
            paths: Vec::new(),
            paths_to: Length::ZERO,
        },
        spares: 0,
        stock: (*stock).clone(),
        spacing: pattern.spacing.unwrap_or(Spacing::Foot),
        groups: Vec::new(),
        oval_side: pattern.oval_side.unwrap_or(OvalSide::Out),
        taper: used.taper,
        length: parts.total(),
        length_parts: *parts,
        gaps: every_gap.into_iter().step_by(2).collect(),
        gap_rim: used.gap_rim,
        gap_rim_wall: used.gap_rim_wall,
        narrowest,
        widest,
        gap_wanted: judge.gap,
        foot_touch: formulas::touch_width(judge.base.crowded_radius(), count),
        bend: bend.clone(),
        candidates,
    }
}

fn gaps(judge: &Judge<'_>, used: &Judged<'_>) -> Vec<GapAt> {
    let task = judge.task(&used.entry);
    let (from, foot) = (used.taper.from.to_mm(), used.taper.foot.to_mm());
    let places = used.entry.offer.wall.spots.iter().zip(task.pitches());
    places
        .map(|(spot, (along, pitch))| {
            let width = task.width_at(along, from, foot);
            GapAt {
                along: spot.along,
                height: spot.height,
                width: Length::mm(width),
                ideal_width: (Length::mm(pitch - task.gap)).max(Length::ZERO),
                gap: Length::mm(pitch - width),
            }
        })
        .collect()
}

fn extreme(gaps: &[GapAt], beats: impl Fn(&GapAt, &GapAt) -> bool) -> GapAt {
    let none = GapAt {
        along: Length::ZERO,
        height: Length::ZERO,
        width: Length::ZERO,
        ideal_width: Length::ZERO,
        gap: Length::ZERO,
    };
    gaps.iter().copied().reduce(|best, gap| if beats(&gap, &best) { gap } else { best }).unwrap_or(none)
}

/// A tenth of the count, or as many as chance asks for, whichever is more.
fn usual_spares(count: u32, spoilt: f64) -> u32 {
    let tenth = (f64::from(count) * SPARE_SHARE).ceil() as u32;
    // Counts beyond any basket are not worth an exact sum.
    let by_chance = if count <= 10_000 { chance::spares(count, spoilt, SPARES_CONFIDENCE) } else { 0 };
    tenth.max(by_chance)
}
