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
