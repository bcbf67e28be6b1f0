//! Several weavers that chase each other round, each with its own row.

use super::answers::{Answers, Cell, Moves, is_crossed_everywhere};
use super::over_under::{self, gcd};
use crate::pattern::{Rule, WeaveKind};
use crate::weave::diagonal::Diagonal;
use crate::weave::look::Eye;

/// Weavers that follow each other in one spiral and take the rows in turn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Chase {
    /// Over how many, under how many.
    pub rule: Rule,
    /// How many weavers.
    pub weavers: u32,
}

impl Chase {
    /// By how much each weaver is set off from the one before it: the step that makes all rows follow
    /// alike, `m c ≡ n (mod k)`, where there is one (not zero if it can be helped), else one.
    fn step(self, count: u32) -> u32 {
        let repeat = self.rule.repeat();
        let alike = |step: &u32| self.weavers().wrapping_mul(*step) % repeat == count % repeat;
        (1..=repeat).find(alike).unwrap_or(1) % repeat
    }

    /// How many staves its weaver has passed when a row begins, and by how many it is set off from the first.
    fn begun(self, row: u32, count: u32) -> i64 {
        let (round, weaver) = (row / self.weavers(), row % self.weavers());
        let set_off = if weaver == 0 { 0 } else { i64::from(self.step(count)) * i64::from(weaver) };
        i64::from(round) * i64::from(count) + set_off
    }
}

impl Answers for Chase {
    fn cell(&self, row: u32, place: u32, count: u32) -> Cell {
        over_under::cell(self.rule, i64::from(place) + self.begun(row, count), row % self.weavers())
    }
    fn sides(&self, row: u32, begin: u32, count: u32) -> Vec<bool> {
        over_under::sides(self.rule, self.begun(row, count), begin, count)
    }
    fn period(&self) -> u32 {
        self.rule.repeat()
    }
    fn rows(&self, _count: u32) -> u32 {
        self.rule.repeat() * self.weavers()
    }
    fn weavers(&self) -> u32 {
        self.weavers.max(1)
    }
    fn rise(&self) -> u32 {
        self.weavers()
    }
    fn outward(&self) -> f64 {
        over_under::outward(self.rule)
    }
    fn kind(&self) -> WeaveKind {
        WeaveKind::Chase(self.rule)
    }
    fn moves(&self) -> Moves {
        Moves::RunsOn(self.rule)
    }
    fn far_in_rule(&self, row: u32, count: u32) -> i64 {
        self.begun(row, count)
    }
    fn work(&self) -> f64 {
        over_under::work(self.rule) + 1.5 * f64::from(self.weavers() - 1)
    }
    /// `m` weavers follow each other alike where `gcd(m, k)` divides the count.
    fn closes(&self, count: u32) -> bool {
        count.is_multiple_of(gcd(self.weavers(), self.rule.repeat()))
    }
    fn diagonal(&self, count: u32, eye: Eye) -> Diagonal {
        if self.closes(count) {
            Diagonal::of(self.rule, -i64::from(self.step(count)), eye)
        } else {
            Diagonal::Uneven
        }
    }
    fn holds(&self, count: u32) -> bool {
        if self.closes(count) && count >= self.rule.repeat() {
            over_under::locks(self.rule, self.step(count))
        } else {
            is_crossed_everywhere(self, count)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{Answers, Chase};
    use crate::pattern::Rule;

    #[test]
    fn each_further_weaver_is_as_much_more_to_do_whatever_the_rule() {
        let work = |rule, weavers| Chase { rule, weavers }.work();
        let more = |rule| work(rule, 3) - work(rule, 2);
        let twill = Rule::new(2, 2);
        assert!(work(twill, 2) > work(Rule::PLAIN, 2));
        assert!(more(Rule::PLAIN) > 0.0);
        assert!((more(twill) - more(Rule::PLAIN)).abs() < 1e-12);
    }
}
