//! A weave on a count of staves, cell by cell: which weaver is seen outside and which inside at every
//! crossing of a row and a stave. Everything else that is said of a weave is read off its cells.

use crate::pattern::{Rule, gcd};

/// How one row follows the other.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Follow {
    /// One weaver (or several laid as one) runs on in a spiral.
    Spiral,
    /// This many weavers chase each other in one spiral.
    Chase(u32),
    /// Every row is its own piece, begun so many staves further round than the row below.
    RowByRow(i32),
    /// As row by row, one stave further each row, turning back after so many rows.
    Reversed(u32),
}

/// How weavers pass the staves.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Passing {
    /// Over some, under some.
    Repeat {
        /// Over how many, under how many.
        rule: Rule,
        /// How rows follow.
        follow: Follow,
    },
    /// Over one, under one in a spiral on an even count, over two once a round.
    SkipOne,
    /// Several weavers twisted round each stave in turn: two are pairing, three and more a wale.
    Twined {
        /// How many weavers.
        weavers: u32,
        /// Whether each round begins afresh (a step-up), so that rings lie level.
        step_up: bool,
    },
    /// Drawn by hand: `true` where the weaver is seen outside; repeats round and upward.
    Drawn(Vec<Vec<bool>>),
}

/// What is seen at the crossing of a row and a stave. Where no weaver is seen, the stave is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Cell {
    /// Index of the weaver seen from outside.
    pub outside: Option<u32>,
    /// Index of the weaver seen from inside.
    pub inside: Option<u32>,
}

/// A weave on a count of staves.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fabric {
    /// How weavers pass.
    pub passing: Passing,
    /// How many staves.
    pub count: u32,
    /// The stave (from 0) at which the first row begins.
    pub start: u32,
    /// By how many staves each row that is woven by itself begins further round than the one below.
    pub spread: u32,
}

impl Fabric {
    /// The crossing of a row (from 0 at the bottom) and a stave (from 0).
    pub fn cell(&self, row: u32, stave: u32) -> Cell {
        let count = self.count.max(1);
        let place = self.place(stave);
        match &self.passing {
            Passing::Repeat { rule, follow } => {
                let shift = follow.shift(row, count, *rule);
                let step = (i64::from(place) + shift).rem_euclid(i64::from(rule.repeat()));
                one_weaver(follow.weaver(row), step < i64::from(rule.over()))
            }
            Passing::SkipOne => {
                let travelled = u64::from(place) + u64::from(row) * u64::from(count);
                one_weaver(0, (travelled % (u64::from(count) + 1)).is_multiple_of(2))
            }
            Passing::Twined { weavers, step_up } => {
                let weavers = (*weavers).max(2);
                let rounds = if *step_up { 0 } else { u64::from(row) };
                let first = (u64::from(place) + rounds * u64::from(count)) % u64::from(weavers);
                Cell { outside: Some(first as u32), inside: Some((first as u32 + 1) % weavers) }
            }
            Passing::Drawn(rows) => {
                let drawn = rows.get(row as usize % rows.len().max(1));
                let over = drawn.and_then(|cells| cells.get(place as usize % cells.len().max(1)));
                one_weaver(0, over.copied().unwrap_or(false))
            }
        }
    }

    /// By how many staves a row begins further round than the first.
    fn offset(&self, row: u32) -> u32 {
        (u64::from(row) * u64::from(self.spread) % u64::from(self.count.max(1))) as u32
    }

    /// The stave (from 0) at a place of a row, counted from 0 where the row begins.
    pub fn stave_in(&self, row: u32, place: u32) -> u32 {
        self.stave(place + self.offset(row))
    }

    /// The place (from 0) of a stave (from 0) in a row, counted from where the row begins.
    pub fn place_in(&self, row: u32, stave: u32) -> u32 {
        let count = self.count.max(1);
        (self.place(stave) + count - self.offset(row)) % count
    }

    /// Whether a weaver lies outside at each stave of a row, in the order in which it comes to them.
    pub fn sides(&self, row: u32) -> impl Iterator<Item = bool> + '_ {
        let count = self.count.max(1);
        // Where the row begins within the repeat, and how long the repeat is.
        let (mut step, repeat) = match &self.passing {
            Passing::Repeat { rule, follow } => {
                let begins = follow.shift(row, count, *rule) + i64::from(self.offset(row));
                (begins.rem_euclid(i64::from(rule.repeat())) as u32, rule.repeat())
            }
            Passing::SkipOne => {
                let repeat = u64::from(count) + 1;
                ((u64::from(row) * u64::from(count) % repeat) as u32, repeat as u32)
            }
            _ => (0, 1),
        };
        (0..count).map(move |place| {
            let over = match &self.passing {
                Passing::Repeat { rule, .. } => step < rule.over(),
                Passing::SkipOne => step.is_multiple_of(2),
                _ => self.is_over(row, self.stave_in(row, place)),
            };
            step = if step + 1 < repeat { step + 1 } else { 0 };
            over
        })
    }

    /// The stave (from 0) so many staves (from 0) beyond where the first row begins.
    const fn stave(&self, place: u32) -> u32 {
        let count = if self.count == 0 { 1 } else { self.count };
        (place + self.start % count) % count
    }

    /// How many staves a stave (from 0) lies beyond where the first row begins.
    const fn place(&self, stave: u32) -> u32 {
        let count = if self.count == 0 { 1 } else { self.count };
        (stave + count - self.start % count) % count
    }

    /// Whether a weaver is seen from outside.
    pub fn is_over(&self, row: u32, stave: u32) -> bool {
        self.cell(row, stave).outside.is_some()
    }
}

const fn one_weaver(weaver: u32, over: bool) -> Cell {
    if over {
        Cell { outside: Some(weaver), inside: None }
    } else {
        Cell { outside: None, inside: Some(weaver) }
    }
}

impl Follow {
    /// How far the rule has moved on when a row begins.
    fn shift(self, row: u32, count: u32, rule: Rule) -> i64 {
        match self {
            Self::Spiral => i64::from(row) * i64::from(count),
            Self::Chase(weavers) => {
                let weavers = weavers.max(1);
                let own_rounds = i64::from(row / weavers) * i64::from(count);
                own_rounds + i64::from(chase_step(count, weavers, rule)) * i64::from(row % weavers)
            }
            Self::RowByRow(step) => -i64::from(row) * i64::from(step),
            Self::Reversed(band) => {
                let band = i64::from(band.max(1));
                let within = i64::from(row) % (2 * band);
                -(if within < band { within } else { 2 * band - within })
            }
        }
    }

    /// Which weaver lays a row.
    const fn weaver(self, row: u32) -> u32 {
        match self {
            Self::Chase(weavers) if weavers > 0 => row % weavers,
            _ => 0,
        }
    }
}

/// By how much each chasing weaver is set off from the one before it: the step that makes all rows
/// follow alike, `m c ≡ n (mod k)`, where there is one (not zero if it can be helped), else one.
pub fn chase_step(count: u32, weavers: u32, rule: Rule) -> u32 {
    let repeat = rule.repeat();
    (1..=repeat).find(|step| (weavers.wrapping_mul(*step) % repeat) == count % repeat).unwrap_or(1) % repeat
}

/// Whether `m` weavers that chase on this count follow each other alike: `gcd(m, k)` divides `n`.
pub fn chase_is_even(count: u32, weavers: u32, rule: Rule) -> bool {
    count.is_multiple_of(gcd(weavers.max(1), rule.repeat()))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn fabric(passing: Passing, count: u32) -> Fabric {
        Fabric { passing, count, start: 0, spread: 0 }
    }

    fn repeat(over: u32, under: u32, follow: Follow) -> Passing {
        Passing::Repeat { rule: Rule::new(over, under), follow }
    }

    fn drawn(passing: Passing, count: u32, rows: u32) -> String {
        let fabric = fabric(passing, count);
        let row = |row| -> String {
            (0..count).map(|stave| if fabric.is_over(row, stave) { 'X' } else { '.' }).collect()
        };
        (0..rows).map(row).collect::<Vec<_>>().join(" / ")
    }

    fn colours(passing: Passing, count: u32, rows: u32) -> String {
        let fabric = fabric(passing, count);
        let letter = |cell: Cell| cell.outside.map_or('.', |weaver| char::from(b'A' + weaver as u8));
        let row = |row| -> String { (0..count).map(|stave| letter(fabric.cell(row, stave))).collect() };
        (0..rows).map(row).collect::<Vec<_>>().join(" / ")
    }

    #[test]
    fn spirals() {
        let spiral = |over, under| repeat(over, under, Follow::Spiral);
        assert_eq!(drawn(spiral(1, 1), 9, 3), "X.X.X.X.X / .X.X.X.X. / X.X.X.X.X");
        assert_eq!(drawn(spiral(1, 1), 8, 2), "X.X.X.X. / X.X.X.X.");
        assert_eq!(
            drawn(spiral(2, 2), 13, 4),
            "XX..XX..XX..X / X..XX..XX..XX / ..XX..XX..XX. / .XX..XX..XX.."
        );
        assert_eq!(
            drawn(spiral(2, 2), 15, 4),
            "XX..XX..XX..XX. / .XX..XX..XX..XX / ..XX..XX..XX..X / X..XX..XX..XX.."
        );
        assert_eq!(drawn(spiral(2, 2), 14, 2), "XX..XX..XX..XX / ..XX..XX..XX..");
        assert_eq!(drawn(spiral(2, 1), 10, 3), "XX.XX.XX.X / X.XX.XX.XX / .XX.XX.XX.");
    }

    #[test]
    fn chases() {
        assert_eq!(drawn(repeat(1, 1, Follow::Chase(2)), 8, 3), "X.X.X.X. / .X.X.X.X / X.X.X.X.");
        assert_eq!(
            drawn(repeat(2, 2, Follow::Chase(2)), 10, 4),
            "XX..XX..XX / X..XX..XX. / ..XX..XX.. / .XX..XX..X"
        );
    }

    #[test]
    fn wales_make_columns_or_spirals_by_the_remainder() {
        let wale = |count, rows| colours(Passing::Twined { weavers: 3, step_up: false }, count, rows);
        assert_eq!(wale(12, 2), "ABCABCABCABC / ABCABCABCABC");
        assert_eq!(wale(13, 3), "ABCABCABCABCA / BCABCABCABCAB / CABCABCABCABC");
        assert_eq!(wale(14, 3), "ABCABCABCABCAB / CABCABCABCABCA / BCABCABCABCABC");
    }
}
