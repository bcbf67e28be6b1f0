//! Which weaves hold on which counts of staves.

/// A weave in one continuous round: over some staves, under some, again and again.
///
/// Stave `i` (from 0) in round `q` on `n` staves is crossed on the outside when
/// `(i + q·n) mod (over + under) < over` (derived for this project).
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Rule {
    over: u32,
    under: u32,
}

impl Rule {
    /// Over one, under one.
    pub const PLAIN: Self = Self::new(1, 1);

    /// Over `over`, under `under`; both are at least one.
    pub const fn new(over: u32, under: u32) -> Self {
        Self { over: if over == 0 { 1 } else { over }, under: if under == 0 { 1 } else { under } }
    }

    /// How many staves the weaver lies over.
    pub const fn over(self) -> u32 {
        self.over
    }

    /// Behind how many staves the weaver lies.
    pub const fn under(self) -> u32 {
        self.under
    }

    /// Staves after which the rule repeats.
    pub const fn repeat(self) -> u32 {
        self.over.saturating_add(self.under)
    }

    /// Whether the weaver lies outside stave `stave` (from 0) in round `round` (from 0).
    pub fn is_over(self, stave: u32, round: u32, count: u32) -> bool {
        let place = u64::from(stave) + u64::from(round) * u64::from(count);
        place % u64::from(self.repeat()) < u64::from(self.over)
    }

    /// Whether every stave is crossed on both sides as rounds go by, so that the weave holds:
    /// `gcd(n, over + under) ≤ min(over, under)` (derived for this project).
    pub fn holds(self, count: u32) -> bool {
        gcd(count, self.repeat()) <= self.over.min(self.under)
    }
}

impl std::fmt::Display for Rule {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{}/{}", self.over, self.under)
    }
}

/// Greatest common divisor.
pub(crate) const fn gcd(a: u32, b: u32) -> u32 {
    if b == 0 { a } else { gcd(b, a % b) }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn drawn(rule: Rule, count: u32, rounds: u32) -> String {
        let row = |round| -> String {
            (0..count).map(|stave| if rule.is_over(stave, round, count) { 'X' } else { '.' }).collect()
        };
        (0..rounds).map(row).collect::<Vec<_>>().join(" / ")
    }

    #[test]
    fn plain_weave_alternates_on_odd_counts_and_stacks_on_even_ones() {
        let plain = Rule::new(1, 1);
        assert_eq!(drawn(plain, 9, 3), "X.X.X.X.X / .X.X.X.X. / X.X.X.X.X");
        assert_eq!(drawn(plain, 8, 2), "X.X.X.X. / X.X.X.X.");
    }

    #[test]
    fn holding_agrees_with_watching_every_stave() {
        for (over, under) in (1..=6).flat_map(|a| (1..=6).map(move |b| (a, b))) {
            let rule = Rule::new(over, under);
            for count in 3..=60 {
                let crossed_on_both_sides = (0..count).all(|stave| {
                    let sides = (0..rule.repeat()).map(|round| rule.is_over(stave, round, count));
                    let outside = sides.filter(|&over| over).count() as u32;
                    0 < outside && outside < rule.repeat()
                });
                assert_eq!(rule.holds(count), crossed_on_both_sides, "{over}/{under} on {count}");
            }
        }
    }
}
