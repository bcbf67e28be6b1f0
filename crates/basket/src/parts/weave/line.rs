//! The line that the eye follows up a weave.

use crate::pattern::Rule;
use crate::weave::look::{Eye, Look, REACH, ROWS_READ, Sighting};

/// Two lines that lean opposite ways and are this much alike in length are checks.
const ALIKE: f64 = 1.15;

/// A move that leaves a weave as it is: a line that the eye may follow.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Line {
    pub(super) staves: i64,
    pub(super) rows: u32,
}

impl Line {
    const fn reach(self) -> u64 {
        self.staves.unsigned_abs()
    }

    /// The square of its length, in rows.
    fn length(self, proportion: f64) -> f64 {
        let (along, up) = (self.staves as f64 * proportion, f64::from(self.rows));
        along * along + up * up
    }
}

/// What the eye follows.
pub(super) enum Followed {
    /// No line that climbs.
    Still(Look),
    /// A line straight up or to one side.
    Along(Line),
}

impl Followed {
    pub(super) fn sighting(self, repeat: u32) -> Sighting {
        let repeat = Some(repeat);
        match self {
            Self::Still(look) => Sighting::still(look, repeat),
            Self::Along(Line { staves: 0, .. }) => Sighting::still(Look::Columns, repeat),
            Self::Along(Line { staves, rows }) => {
                let slope = staves as f64 / f64::from(rows);
                Sighting { look: Look::Spiral, slope, every: rows, repeat }
            }
        }
    }
}

/// For some rows up the staves along that bring a weave onto itself, by the shortest way round; both where
/// the ways to either side are alike.
pub(super) fn moves(seen: u32, repeat: u32, mut staves: impl FnMut(u32) -> Option<i64>) -> Vec<Line> {
    let half = i64::from(repeat / 2);
    let mut found = Vec::new();
    for rows in 1..=REACH.min(seen / 2) {
        let Some(staves) = staves(rows) else { continue };
        found.push(Line { staves, rows });
        if staves == half && repeat.is_multiple_of(2) {
            found.push(Line { staves: -half, rows });
        }
    }
    found
}

/// The line that is followed up a rule whose rows are each set off by so many staves from the one below, if
/// it climbs: as it is read off the cells.
pub(super) fn climbing(rule: Rule, step: i64, eye: Eye) -> Option<Line> {
    let repeat = rule.repeat();
    let round = i64::from(repeat);
    let nearest_way = |rows: u32| {
        let staves = (step * i64::from(rows)).rem_euclid(round);
        Some(if 2 * staves > round { staves - round } else { staves })
    };
    // One row and the next are always seen.
    let moves = moves(eye.rows.clamp(2, ROWS_READ), repeat, nearest_way);
    let run = u64::from(rule.over().min(rule.under()));
    match touching(&moves, run, repeat).unwrap_or_else(|| nearest(&moves, repeat, eye.proportion)) {
        Followed::Along(line) if line.staves != 0 => Some(line),
        _ => None,
    }
}

/// The line from row to row along which like cells touch: they share edges as long as it moves on by less than
/// the shortest run of them, and meet at corners where it moves on by as much.
pub(super) fn touching(moves: &[Line], run: u64, repeat: u32) -> Option<Followed> {
    let first = moves.first().filter(|line| line.reach() <= run.max(1))?;
    if first.reach() * 2 == u64::from(repeat) {
        return Some(Followed::Still(Look::Checks));
    }
    (first.rows == 1).then_some(Followed::Along(*first))
}

/// The shortest move.
pub(super) fn nearest(moves: &[Line], repeat: u32, proportion: f64) -> Followed {
    let length = |line: &Line| line.length(proportion);
    let shortest = |side: &dyn Fn(i64) -> bool| {
        let fit = moves.iter().filter(|line| side(line.staves.signum()));
        fit.min_by(|a, b| length(a).total_cmp(&length(b))).copied()
    };
    let Some(best) = shortest(&|_| true) else { return Followed::Still(Look::Mixed) };
    let round = Line { staves: i64::from(repeat), rows: 0 };
    if length(&best) > length(&round) * ALIKE * ALIKE {
        return Followed::Still(Look::Bands);
    }
    let other = shortest(&|side| side == -best.staves.signum());
    let either = other.is_some_and(|other| length(&other) < length(&best) * ALIKE * ALIKE);
    if best.staves != 0 && either { Followed::Still(Look::Checks) } else { Followed::Along(best) }
}
