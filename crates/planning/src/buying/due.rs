//! When the material of a class or an order is needed, and until when it is ordered.

use jiff::civil::Date;

use super::need::needs;
use super::timing::Timing;
use crate::kits::Kits;

/// Until when the material of one class or order is ordered.
#[derive(Clone, Debug, PartialEq)]
pub struct Due {
    /// What the class or the order is called.
    pub name: String,
    /// First day on which the material is used.
    pub needed: Date,
    /// Last day to order what is not dyed; none where all of it is.
    pub order_by: Option<Date>,
    /// Last day to order what is dyed; none where nothing is.
    pub order_dyed_by: Option<Date>,
}

impl Due {
    /// Of the kits of a class or an order.
    pub fn of(name: &str, kits: &Kits, timing: Timing) -> Self {
        let needs = needs([(kits, Some(timing))]);
        let until = |is_dyed: bool| {
            needs.iter().any(|need| need.is_dyed() == is_dyed).then(|| timing.order_by(is_dyed)).flatten()
        };
        Self {
            name: name.to_owned(),
            needed: timing.needed,
            order_by: until(false),
            order_dyed_by: until(true),
        }
    }
}
