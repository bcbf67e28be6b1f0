//! How much weaver every row, course and the whole weaving takes.

use crate::measure::Length;
use crate::mould::Mould;
use crate::staves::Staves;
use crate::weave::joins::{OVERLAP_STAVES, Run};
use crate::weave::layout::Laid;
use crate::weave::take_up::take_up;
use crate::weave::{Course, Row, Weave};

/// Length of a strand to count on where the material does not say: a 1000 ft hank of 80 strands
/// (L. Day Perry, *Seat Weaving*, p. 7, for the hank; a published how-to for the strands).
const STRAND: Length = Length::feet(12.5);

impl Weave {
    /// Weaves the courses round the staves.
    pub fn of(courses: &[Laid<'_>], shrink: Option<f64>, mould: &Mould, staves: &Staves) -> Self {
        let mut each_row = Vec::new();
        let mut woven = Vec::with_capacity(courses.len());
        for (laid, number) in courses.iter().zip(1..) {
            let first = each_row.len();
            each_row.extend((0..laid.rows).map(|index| row(laid, number, index, mould, staves)));
            woven.push(course(laid, each_row.get(first..).unwrap_or_default(), mould, staves));
        }
        let last = woven.last();
        let top_along = last.map_or(Length::ZERO, |course: &Course| course.to);
        let shrink = shrink.or(last.map(|course| course.weaver.shrink)).unwrap_or(0.0);
        let packing_gap = top_along * shrink;
        let dry_pitch = last.map_or(Length::ZERO, |course| course.pitch * (1.0 - shrink));
        Self {
            rows: each_row.len() as u32,
            length: woven.iter().map(|course| course.length).sum(),
            top_along,
            top_height: mould.profile.at(top_along).height,
            shrink,
            packing_gap,
            rows_to_add: if dry_pitch > Length::ZERO { (packing_gap / dry_pitch) as u32 } else { 0 },
            courses: woven,
            each_row,
        }
    }
}

fn row(laid: &Laid<'_>, course: u32, index: u32, mould: &Mould, staves: &Staves) -> Row {
    let along = laid.middle(index);
    let spot = mould.profile.at(along);
    Row {
        number: laid.first_row + index,
        course,
        along,
        height: spot.height,
        length: round_length(spot.radius, staves.width_at(along), staves, laid.pattern.weaver.thickness),
    }
}

/// Length of one round on the middle surface of the staves, take-up included.
fn round_length(radius: Length, width: Length, staves: &Staves, weaver: Length) -> Length {
    let girth = (radius + staves.thickness / 2.0) * std::f64::consts::TAU;
    let gap = (girth / f64::from(staves.count.max(1)) - width).max(Length::ZERO);
    girth * (1.0 + take_up(width, gap, staves.thickness, weaver))
}

fn course(laid: &Laid<'_>, rows: &[Row], mould: &Mould, staves: &Staves) -> Course {
    let lengths: Vec<Length> = rows.iter().map(|row| row.length).collect();
    let length: Length = lengths.iter().copied().sum();
    let flat: Length = rows
        .iter()
        .map(|row| (mould.profile.at(row.along).radius + staves.thickness / 2.0) * std::f64::consts::TAU)
        .sum();
    let weaver = laid.pattern.weaver.clone();
    let strand = weaver.put_up.strand.unwrap_or(STRAND);
    let staves_count = staves.count.max(1);
    let run = Run {
        rule: laid.pattern.weave.rule(),
        staves: staves_count,
        first_row: laid.first_row,
        rows: &lengths,
        strand,
    };
    let joins = if length > Length::ZERO { run.joins() } else { Vec::new() };
    let mean_step = length / (f64::from(laid.rows.max(1)) * f64::from(staves_count));
    let strands = if laid.rows == 0 { 0 } else { joins.len() as u32 + 1 };
    Course {
        weave: laid.pattern.weave,
        first_row: laid.first_row,
        rows: laid.rows,
        pitch: laid.pitch,
        from: laid.from,
        to: laid.to(),
        wanted_to: laid.wanted_to,
        length,
        take_up: if flat > Length::ZERO { length / flat - 1.0 } else { 0.0 },
        cut: length + mean_step * f64::from(OVERLAP_STAVES * strands),
        strand,
        strands,
        joins,
        weaver,
        fabric: laid.pattern.weave.on(staves_count),
    }
}
