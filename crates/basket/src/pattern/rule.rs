//! Over some staves, under some: the figures of a weave as written.

/// Over so many staves, under so many, again and again.
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

    /// Whether it is over one, under one.
    pub const fn is_plain(self) -> bool {
        self.over == 1 && self.under == 1
    }
}

impl std::fmt::Display for Rule {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{}/{}", self.over, self.under)
    }
}
