//! A pattern worked out: the basket and all that follows from it.

use crate::assemble::assemble;
use crate::basket::Basket;
use crate::follows::cuts::{self, Cut};
use crate::follows::findings::{self, Finding, Grade};
use crate::follows::steps::{self, Step};
use crate::hand::Hand;
use crate::pattern::Pattern;
use crate::stock::Catalogue;

/// A pattern, its basket, and what follows from them.
#[derive(Clone, Debug, PartialEq)]
pub struct Draft {
    /// What the maker wrote.
    pub pattern: Pattern,
    /// What was computed.
    pub basket: Basket,
    /// The steps, in making order.
    pub steps: Vec<Step>,
    /// The cut list, in making order.
    pub cuts: Vec<Cut>,
    /// The findings, heaviest first.
    pub findings: Vec<Finding>,
}

impl Draft {
    /// Works out a pattern with the materials there are and the maker's own figures.
    ///
    /// Total: every pattern gives a draft. What cannot be woven is said in its findings.
    pub fn of(pattern: Pattern, catalogue: &Catalogue, hand: &Hand) -> Self {
        let bare = Self::bare(pattern, catalogue, hand);
        let findings = findings::check(&bare.pattern, catalogue, &bare.basket, &bare.steps);
        Self { findings, ..bare }
    }

    /// The same for a glance while a hand still moves: what would mend a finding is not tried, which takes longer
    /// than all the rest.
    pub fn at_a_glance(pattern: Pattern, catalogue: &Catalogue, hand: &Hand) -> Self {
        let bare = Self::bare(pattern, catalogue, hand);
        let findings = findings::check_alone(&bare.pattern, catalogue, &bare.basket, &bare.steps);
        Self { findings, ..bare }
    }

    fn bare(pattern: Pattern, catalogue: &Catalogue, hand: &Hand) -> Self {
        let basket = assemble(&pattern, catalogue, hand);
        let steps = steps::list(&basket);
        let cuts = cuts::list(&basket);
        Self { pattern, basket, steps, cuts, findings: Vec::new() }
    }

    /// Whether it cannot be woven as written.
    pub fn stops(&self) -> bool {
        self.findings.iter().any(|finding| finding.grade == Grade::Stop)
    }
}
