//! A pattern as it would be after a change, computed.

use basket::Basket;
use basket::pattern::Pattern;

use crate::bench::api::{Edit, Problem};
use crate::bench::compute::{self, Shop};
use crate::bench::refusal::Refusal;
use crate::bench::text::{self, Written};

/// A text with what it says and gives.
pub(super) struct Trial {
    /// The text.
    pub(super) source: String,
    /// Where its values stand.
    pub(super) written: Written,
    /// What it says.
    pub(super) pattern: Pattern,
    /// What it gives.
    pub(super) basket: Basket,
}

impl Trial {
    /// Reads and computes a text.
    pub(super) fn of(source: String, shop: Shop<'_>) -> Result<Self, Vec<Problem>> {
        let (pattern, basket) = compute::pattern_and_basket(&source, shop)?;
        Ok(Self { written: Written::of(&source), source, pattern, basket })
    }

    /// The text with changes; none where they cannot be made.
    pub(super) fn after(&self, edits: &[Edit], shop: Shop<'_>) -> Option<Self> {
        let source = text::edit(&self.source, edits).ok()?;
        Self::of(source, shop).ok()
    }

    /// The course of this number, counted from 1, with its first and last row.
    pub(super) fn course(&self, number: u32) -> Result<(&basket::weave::Course, (u32, u32)), Refusal> {
        let courses = &self.basket.body.weave.courses;
        let course = number.checked_sub(1).and_then(|index| courses.get(index as usize));
        let course = course.ok_or_else(|| {
            Refusal::senseless(
                format!("there is no course {number}"),
                "course",
                format!("The basket has {}.", courses.len()),
            )
        })?;
        Ok((course, (course.first_row, course.first_row + course.rows.saturating_sub(1))))
    }
}
