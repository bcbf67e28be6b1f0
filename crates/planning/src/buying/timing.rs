//! How long material takes to come.

use jiff::ToSpan;
use jiff::civil::Date;

/// When things are needed, and how long they take to come.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Timing {
    /// First day on which the material is used.
    pub needed: Date,
    /// Days from order to delivery.
    pub delivery_days: u32,
    /// Further days for stock that is dyed.
    pub dye_days: u32,
}

impl Timing {
    /// The last day to order; none before the calendar begins.
    pub fn order_by(&self, is_dyed: bool) -> Option<Date> {
        let days = i64::from(self.delivery_days) + if is_dyed { i64::from(self.dye_days) } else { 0 };
        self.needed.checked_sub(days.days()).ok()
    }
}
