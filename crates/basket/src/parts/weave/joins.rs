//! Where a spent strand ends and a new one begins.
//!
//! The spent strand is cut where it lies over a stave. The new strand starts where the weaver dips
//! behind a stave, at least four staves back, and runs with the old one, over it, so that neither end
//! shows from outside. No two overlaps come within an inch of each other: one that would is moved back.

use crate::colour::Colour;
use crate::measure::Length;
use crate::pattern::Way;
use crate::stock::Material;
use crate::uprights::Uprights;
use crate::weave::fabric::Fabric;
use crate::weave::layout::Laid;
use crate::weave::overlaps::{Overlap, Overlaps};
use crate::weave::strands::{Join, RowsOf, Strand, TooShort, WeaverAmount};

/// Staves over which old and new strand lie together, at least (common practice: four to six).
pub const OVERLAP_STAVES: u32 = 4;
/// Length of a strand to count on where the material does not say: a 1000 ft hank of 80 strands
/// (L. Day Perry, *Seat Weaving*, p. 7, for the hank; a published how-to for the strands).
const STRAND: Length = Length::feet(12.5);
/// The furthest that a start is looked for, in staves behind the cut.
const FURTHEST_START: u32 = 24;

/// The run of one weaver through its rows.
pub(super) struct Run<'a> {
    pub(super) material: &'a Material,
    laid: &'a Laid<'a>,
    count: u32,
    /// Number within the course, from 1.
    weaver: u32,
    rows: Vec<RunRow>,
}

/// One round of a weaver.
#[derive(Clone, Copy)]
struct RunRow {
    /// Row of the course, from 0.
    row: u32,
    length: Length,
    /// Length of the weaver when it begins and when it ends.
    from: Length,
    to: Length,
    along: Length,
    /// Distance from stave to stave.
    pitch: Length,
}

impl RunRow {
    /// Where strands lie together from a stave (from 0) of this row on to one so many staves further, which may
    /// be in another.
    fn overlap(&self, last: &Self, first: u32, reach: u32) -> Overlap {
        Overlap { low: self.along, high: last.along, first, reach, pitch: last.pitch }
    }
}

/// A place in a run: index of the row within the run, and place within the row.
type RunPlace = (usize, u32);

impl<'a> Run<'a> {
    pub(super) fn new(laid: &'a Laid<'a>, material: u32, uprights: &Uprights, weaver: u32) -> Self {
        let material = laid.pattern.material(material);
        Self { material, laid, count: uprights.count.max(1), weaver, rows: Vec::new() }
    }

    /// Adds a round: its row, its length, its length without take-up, and where it lies on the mould.
    pub(super) fn push(&mut self, row: u32, length: Length, straight: Length, along: Length) {
        let from = self.rows.last().map_or(Length::ZERO, |row| row.to);
        self.rows.push(RunRow {
            row,
            length,
            from,
            to: from + length,
            along,
            pitch: straight / f64::from(self.count),
        });
    }

    fn total(&self) -> Length {
        self.rows.last().map_or(Length::ZERO, |row| row.to)
    }

    fn step(&self, row: usize) -> Length {
        self.rows.get(row).map_or(Length::ZERO, |row| row.length / f64::from(self.count))
    }

    /// Length of the run up to a spot.
    fn at(&self, (row, place): RunPlace) -> Length {
        self.rows.get(row).map_or(self.total(), |line| line.from + self.step(row) * f64::from(place))
    }

    /// The spot to which a length of the run reaches.
    fn spot(&self, reach: Length) -> Option<RunPlace> {
        let row = self.rows.partition_point(|row| row.to <= reach);
        let line = self.rows.get(row)?;
        let place = ((reach - line.from) / self.step(row)).floor().clamp(0.0, f64::from(self.count - 1));
        Some((row, place as u32))
    }

    /// The shortest strand that is laid: twice the overlap and a stave, and half a round. More joins than two
    /// a round make no wall; a strand that is shorter is refused by a finding.
    fn least(&self, row: usize) -> Length {
        self.step(row) * f64::from((2 * OVERLAP_STAVES + 1).max(self.count / 2))
    }

    fn back(&self, (row, place): RunPlace) -> Option<RunPlace> {
        match place.checked_sub(1) {
            Some(place) => Some((row, place)),
            None => row.checked_sub(1).map(|row| (row, self.count - 1)),
        }
    }

    /// Whether this weaver lies outside at a spot.
    fn is_over(&self, fabric: &Fabric, (row, place): RunPlace) -> bool {
        let Some(line) = self.rows.get(row) else { return false };
        fabric.is_outside(line.row, fabric.stave_in(line.row, place), self.weaver - 1)
    }

    /// Length of the strand of this index (from 0): first those that the pattern lists, dealt round
    /// to the weavers in turn, then the material's own.
    fn strand(&self, index: u32) -> Length {
        let own = self.material.put_up.strand.unwrap_or(STRAND);
        let pattern = self.laid.pattern;
        let turn = u64::from(index) * u64::from(pattern.weavers()) + u64::from(self.weaver - 1);
        let listed = usize::try_from(turn).ok().and_then(|turn| pattern.strands.get(turn));
        listed.copied().unwrap_or(own)
    }

    /// A new strand's start: where the weaver dips behind a stave, at least four staves back.
    fn start(&self, fabric: &Fabric, cut: RunPlace) -> RunPlace {
        let mut fourth = cut;
        for _ in 0..OVERLAP_STAVES {
            fourth = self.back(fourth).unwrap_or(fourth);
        }
        let mut spot = fourth;
        for _ in OVERLAP_STAVES..FURTHEST_START {
            if !self.is_over(fabric, spot) {
                return spot;
            }
            let Some(before) = self.back(spot) else { break };
            spot = before;
        }
        fourth
    }
}

/// Joins the strands of all courses, and keeps the joins apart.
pub(super) struct Joiner {
    overlaps: Overlaps,
}

impl Joiner {
    pub(super) const fn new(count: u32) -> Self {
        Self { overlaps: Overlaps::new(count) }
    }

    /// Where strands lie together so far.
    pub(super) const fn overlaps(&self) -> &Overlaps {
        &self.overlaps
    }

    /// Cuts a run into strands.
    pub(super) fn join(&mut self, run: &Run<'_>, rows: RowsOf, fabric: &Fabric) -> WeaverAmount {
        let mut cutter = Cutter {
            run,
            fabric,
            colours: colours(run),
            strands: Vec::new(),
            joins: Vec::new(),
            too_short: None,
        };
        let length = run.total();
        if length > Length::ZERO {
            match run.laid.pattern.rows_follow() {
                Way::Continuous => cutter.segment(self, 0, run.rows.len()),
                Way::RowByRow => {
                    // Where a row begins it overlaps itself: no join comes near that either.
                    for line in &run.rows {
                        self.overlaps.place(line.overlap(
                            line,
                            fabric.stave_in(line.row, 0),
                            OVERLAP_STAVES - 1,
                        ));
                    }
                    (0..run.rows.len()).for_each(|row| cutter.segment(self, row, row + 1));
                }
            }
        }
        let Cutter { colours, strands, joins, too_short, .. } = cutter;
        WeaverAmount {
            material: run.material.clone(),
            colours,
            rows,
            length,
            cut: strands.iter().map(|strand: &Strand| strand.cut).sum(),
            strand: run.material.put_up.strand.unwrap_or(STRAND),
            strands,
            joins,
            too_short,
        }
    }
}

fn colours(run: &Run<'_>) -> Vec<Colour> {
    let pattern = run.laid.pattern;
    let index = if run.weaver > pattern.weavers() { 0 } else { run.weaver as usize - 1 };
    let own = pattern.colours.get(index).filter(|colours| !colours.is_empty());
    own.cloned().unwrap_or_else(|| vec![Colour::natural()])
}

/// Cuts one run into strands.
struct Cutter<'a> {
    run: &'a Run<'a>,
    fabric: &'a Fabric,
    colours: Vec<Colour>,
    strands: Vec<Strand>,
    joins: Vec<Join>,
    too_short: Option<TooShort>,
}

impl Cutter<'_> {
    /// Rows that one weaver runs through without a new beginning.
    fn segment(&mut self, joiner: &mut Joiner, first: usize, past: usize) {
        let run = self.run;
        let end = run.at((past, 0));
        let tail = run.step(first) * f64::from(OVERLAP_STAVES);
        let mut start = (first, 0);
        let mut begun = run.at(start) - tail;
        loop {
            let index = self.strands.len() as u32;
            let (strand, least) = (run.strand(index), run.least(start.0));
            let reach = begun + strand.max(least);
            let cut = run.spot(reach).filter(|_| reach < end).map(|spot| self.cut(joiner, start, spot));
            if strand < least && cut.is_some() {
                self.too_short.get_or_insert(TooShort { strand, least });
            }
            let cut = cut.filter(|cut| *cut > start);
            let reach = cut.map_or(end, |cut| run.at(cut));
            let row = run.rows.get(start.0).map_or(0, |row| row.row);
            let colour = index % self.colours.len().max(1) as u32;
            self.strands.push(Strand { colour, row, place: start.1, cut: reach - begun });
            let Some(cut) = cut else { break };
            let next = self.next(start, cut);
            self.place(joiner, cut, next);
            (start, begun) = (next, run.at(next));
        }
    }

    /// Where the strand after one that starts and is cut at these spots begins.
    fn next(&self, start: RunPlace, cut: RunPlace) -> RunPlace {
        Some(self.run.start(self.fabric, cut)).filter(|next| *next > start).unwrap_or(cut)
    }

    /// The last spot, at most a round back, where the weaver lies over a stave and no other overlap is
    /// near; else the one furthest from others.
    fn cut(&self, joiner: &Joiner, start: RunPlace, reach: RunPlace) -> RunPlace {
        let run = self.run;
        let least = run.at(start) + run.step(start.0) * f64::from(OVERLAP_STAVES + 1);
        let along = |row: usize| run.rows.get(row).map_or(Length::ZERO, |row| row.along);
        // A round back, and the new strand's start before that.
        let near = joiner.overlaps.near(along(reach.0.saturating_sub(2)), along(reach.0));
        let mut best: Option<(f64, RunPlace)> = None;
        let mut spot = reach;
        for _ in 0..run.count {
            if run.is_over(self.fabric, spot) {
                let overlap = self.overlap(spot, self.next(start, spot));
                let distance = overlap.map_or(0.0, |overlap| joiner.overlaps.distance(&near, &overlap));
                if distance >= 1.0 {
                    return spot;
                }
                if best.is_none_or(|(most, _)| distance > most) {
                    best = Some((distance, spot));
                }
            }
            match run.back(spot).filter(|&before| run.at(before) > least) {
                Some(before) => spot = before,
                None => break,
            }
        }
        best.map_or(reach, |(_, spot)| spot)
    }

    /// Where the old strand, cut at a spot, and the new one, begun at another, lie together.
    fn overlap(&self, cut: RunPlace, next: RunPlace) -> Option<Overlap> {
        let (first, last) = (self.run.rows.get(next.0)?, self.run.rows.get(cut.0)?);
        let reach = (cut.0 - next.0.min(cut.0)) as u32 * self.run.count + cut.1 - next.1;
        Some(first.overlap(last, self.fabric.stave_in(first.row, next.1), reach))
    }

    fn place(&mut self, joiner: &mut Joiner, cut: RunPlace, next: RunPlace) {
        let (Some(overlap), Some(line)) = (self.overlap(cut, next), self.run.rows.get(cut.0)) else { return };
        joiner.overlaps.place(overlap);
        self.joins.push(Join {
            row: self.run.laid.first_row + line.row,
            cut_over: self.fabric.stave_in(line.row, cut.1) + 1,
            start_behind: overlap.first + 1,
            weaver: self.run.weaver,
            recolour: self.colours.len() > 1,
        });
    }
}
