//! How finely a solid is cut into triangles.

/// How finely a solid is cut into triangles.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Detail {
    /// For looking closely and for printing in three dimensions.
    Full,
    /// For a picture as wide as a page.
    Page,
    /// For a picture as wide as a column of text.
    Column,
    /// For a picture as large as a thumb.
    Thumbnail,
}

impl Detail {
    /// The next coarser one, if there is one.
    pub(super) const fn coarser(self) -> Option<Self> {
        match self {
            Self::Full => Some(Self::Page),
            Self::Page => Some(Self::Column),
            Self::Column => Some(Self::Thumbnail),
            Self::Thumbnail => None,
        }
    }

    /// How far a circle cut into straight pieces may lie inside the true one, in mm.
    pub(super) const fn sagitta(self) -> f32 {
        match self {
            Self::Full => 0.05,
            Self::Page | Self::Column => 0.3,
            Self::Thumbnail => 1.2,
        }
    }

    /// Straight pieces for a circle of this radius: `π / acos(1 − s/r)` for a sagitta `s`.
    pub(super) fn segments(self, radius: f32) -> u32 {
        let share = 1.0 - self.sagitta() / radius.max(1e-3);
        if share <= 0.5 {
            return 8;
        }
        ((std::f32::consts::PI / share.acos()).ceil() as u32).clamp(8, 512)
    }
}

/// How a basket in the round differs from what was asked for, so that it stays within what a machine can hold.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Simplified {
    /// It is cut into fewer triangles.
    Coarser,
    /// Rows are plain bands, without the weaving.
    Bands,
}

impl Simplified {
    /// Identifier of what is said of it, in the message files.
    pub const fn term(self) -> &'static str {
        match self {
            Self::Coarser => "solid-coarser",
            Self::Bands => "solid-bands",
        }
    }
}
