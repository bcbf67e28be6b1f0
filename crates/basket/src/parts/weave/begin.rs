//! Where rows begin that are each woven by themselves: spread round, so that the places where they overlap
//! their beginnings do not lie above each other.

use crate::measure::Length;
use crate::weave::fabric::Fabric;
use crate::weave::joins::OVERLAP_STAVES;
use crate::weave::overlaps::{APART, Overlap, Overlaps};

/// By how many staves each row begins further round than the one below, for staves this far apart and so many
/// rows this high: the fewest that keep the beginnings within an inch of height an inch apart along the row, and
/// clear of each other's overlaps; where nothing does, what keeps them furthest apart.
///
/// Zero where rows do not meet themselves, so that the fault stays on one line, and where it would break
/// the order of twined weavers.
pub(super) fn spread(fabric: &Fabric, pitch: Length, row: Length, rows: u32) -> u32 {
    let count = fabric.count;
    let unit = fabric.twined();
    if !fabric.closes() || !count.is_multiple_of(unit) || pitch <= Length::ZERO || row <= Length::ZERO {
        return 0;
    }
    let apart = ((APART / pitch).ceil().clamp(0.0, 1e6) as u32).max(OVERLAP_STAVES + 1);
    let near = ((APART / row).ceil().clamp(1.0, 1e3) as u32).min(rows.saturating_sub(1)).max(1);
    let nearest = |step: u32| {
        let round = |rows: u32| {
            let at = (u64::from(rows) * u64::from(step) % u64::from(count)) as u32;
            at.min(count - at)
        };
        (1..=near).map(round).min().unwrap_or(0)
    };
    let steps = || (1..=count / 2).filter(|step| step.is_multiple_of(unit));
    steps()
        .find(|&step| nearest(step) >= apart)
        .or_else(|| steps().max_by_key(|&step| nearest(step)))
        .unwrap_or(0)
}

/// By how many staves further round the rows of a course begin, so that the lowest of them, this far along the
/// mould, keep clear of the overlaps below: the fewest that do, else what keeps them furthest away.
pub(super) fn further(fabric: &Fabric, rows: &[Length], pitch: Length, overlaps: &Overlaps) -> u32 {
    let (Some(&from), Some(&to)) = (rows.first(), rows.last()) else { return 0 };
    let near = overlaps.near(from, to);
    let begins: Vec<u32> = (0..rows.len() as u32).map(|row| fabric.stave_in(row, 0)).collect();
    let distance = |further: &u32| {
        let begin = |(begin, &along): (&u32, &Length)| {
            let first = (begin + further) % fabric.count;
            let overlap = Overlap { low: along, high: along, first, reach: OVERLAP_STAVES - 1, pitch };
            overlaps.distance(&near, &overlap)
        };
        begins.iter().zip(rows).map(begin).fold(f64::INFINITY, f64::min)
    };
    let steps = || (0..fabric.count).step_by(fabric.twined() as usize);
    let furthest = || steps().rev().max_by(|a, b| distance(a).total_cmp(&distance(b)));
    steps().find(|step| distance(step) >= 1.0).or_else(furthest).unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::pattern::Rule;
    use crate::weave::passing::Passing;
    use crate::weave::weaves::{Level, Twined};

    fn plain(count: u32) -> Fabric {
        Fabric::new(Passing::Level(Level { rule: Rule::PLAIN, step: 1 }), count)
    }

    #[test]
    fn beginnings_within_an_inch_of_height_are_an_inch_apart() {
        let (pitch, row) = (Length::mm(8.0), Length::mm(3.0));
        let step = spread(&plain(68), pitch, row, 40);
        for rows in 1..=8 {
            let at = rows * step % 68;
            assert!(pitch * f64::from(at.min(68 - at)) >= APART, "{rows} rows of {step} staves");
        }
    }

    #[test]
    fn a_fault_stays_on_one_line() {
        assert_eq!(spread(&plain(67), Length::mm(8.0), Length::mm(3.0), 40), 0);
    }

    #[test]
    fn twined_weavers_keep_their_order() {
        let wale = |count| Fabric::new(Passing::Twined(Twined { weavers: 3, step_up: true }), count);
        let step = |count| spread(&wale(count), Length::mm(8.0), Length::mm(3.0), 40);
        assert!(step(66) > 0 && step(66).is_multiple_of(3));
        assert_eq!(step(67), 0);
    }
}
