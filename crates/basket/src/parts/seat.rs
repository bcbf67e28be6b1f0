//! Where a rim sits on its wall.

use crate::form::{Across, Form};
use crate::measure::Length;

/// Where the hoops sit: on the last row, against the staves.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Seat {
    /// Lower edge of the hoops, along the wall.
    pub along: Length,
    /// Height of the middle of the hoops.
    pub height: Length,
    /// Girth of the staves' inner faces at the middle of the hoops' height.
    pub girth: Length,
    /// Smallest radius round these.
    pub tightest: Length,
    /// From side to side of these.
    pub across: Across,
}

impl Seat {
    /// The seat on a last row whose top lies `top` along the wall, for hoops this high; the staves' inner
    /// faces stand `standing` off the form.
    pub fn on(form: &Form, top: Length, height: Length, standing: Length) -> Self {
        let middle = top + height / 2.0;
        let [girth, tightest] = [form.girth(middle, standing), form.tightest(middle, standing)];
        Self {
            along: top,
            height: form.profile.at(middle).height,
            girth,
            tightest,
            across: form.across(middle, standing),
        }
    }
}
