//! Whether a weave holds: whether each stave is crossed on both sides as rows go by.

use crate::pattern::{Rule, gcd};
use crate::weave::fabric::{Fabric, Follow, Passing, chase_is_even, chase_step};

impl Fabric {
    /// Whether each stave is crossed on both sides as rows go by, however many rows there are.
    ///
    /// One weaver in a spiral follows the rule of [`Rule::holds`](crate::pattern::Rule::holds); a twined
    /// row holds by itself; all others are read off their cells.
    pub fn holds(&self) -> bool {
        match &self.passing {
            Passing::Twined { .. } => true,
            Passing::SkipOne => self.count > 1,
            Passing::Repeat { rule, follow: Follow::Spiral } => rule.holds(self.count),
            Passing::Repeat { rule, follow: Follow::Chase(weavers) } if self.steps_alike(*weavers, *rule) => {
                gcd(chase_step(self.count, *weavers, *rule), rule.repeat()) <= rule.over().min(rule.under())
            }
            _ => {
                let places = self.count.min(self.repeat());
                (0..places).all(|place| self.is_crossed(self.stave_in(0, place)))
            }
        }
    }

    /// Whether weavers that chase step on alike from row to row, on staves enough for one repeat: then
    /// the step of a row takes the place of the count in the rule of a spiral.
    fn steps_alike(&self, weavers: u32, rule: Rule) -> bool {
        self.count >= rule.repeat() && chase_is_even(self.count, weavers, rule)
    }

    /// Whether a stave (from 0) is crossed on both sides as rows go by.
    pub fn is_crossed(&self, stave: u32) -> bool {
        let rows = self.rows_that_differ();
        let over = (0..rows).filter(|&row| self.is_over(row, stave)).count() as u32;
        matches!(self.passing, Passing::Twined { .. }) || (0 < over && over < rows)
    }

    /// Places after which a row repeats.
    pub fn repeat(&self) -> u32 {
        match &self.passing {
            Passing::Repeat { rule, .. } => rule.repeat(),
            Passing::SkipOne => self.count,
            Passing::Twined { weavers, .. } => *weavers,
            Passing::Drawn(rows) => rows.first().map_or(1, Vec::len) as u32,
        }
    }

    /// The first rows, up to where only rows follow that were there before.
    fn rows_that_differ(&self) -> u32 {
        match &self.passing {
            Passing::Repeat { rule, follow: Follow::Reversed(band) } => {
                (*band).clamp(1, rule.repeat() - 1) + 1
            }
            _ => self.rows_to_repeat(),
        }
    }

    /// Rows after which the weave repeats upward.
    pub(super) fn rows_to_repeat(&self) -> u32 {
        match &self.passing {
            Passing::Repeat { rule, follow } => match *follow {
                Follow::Spiral | Follow::RowByRow(_) => rule.repeat(),
                Follow::Chase(weavers) => rule.repeat() * weavers.max(1),
                Follow::Reversed(band) => 2 * band.max(1),
            },
            Passing::SkipOne => self.count.saturating_add(1),
            Passing::Twined { weavers, .. } => *weavers,
            Passing::Drawn(rows) => rows.len().max(1) as u32,
        }
    }
}
