//! What stands in a kits file.

use std::collections::BTreeMap;

use basket::pattern::AllReady;
use basket::{Colour, Length};
use jiff::civil::Date;
use planning::buying::Timing;
use rust_decimal::Decimal;
use workshop::Order;

/// Days from order to delivery, and further ones for dyed stock, where nobody says otherwise.
pub(super) const WEEK: u32 = 7;

/// A class and its kits.
#[derive(Debug)]
pub(crate) struct KitsFile {
    /// What the class is called.
    pub(crate) title: String,
    /// First day on which the material is used.
    pub(crate) needed: Option<Date>,
    /// Days from order to delivery.
    pub(crate) delivery_days: u32,
    /// Further days for stock that is dyed.
    pub(crate) dye_days: u32,
    /// What is lost at each cut.
    pub(crate) kerf: Length,
    /// Who makes what.
    pub(crate) students: Vec<Group>,
    /// What is reckoned with.
    pub(crate) price: PriceTable,
}

impl KitsFile {
    /// When its material is needed, and how long that takes to come; none where it does not say.
    pub(crate) fn timing(&self) -> Option<Timing> {
        let Self { delivery_days, dye_days, .. } = *self;
        self.needed.map(|needed| Timing { needed, delivery_days, dye_days })
    }

    /// What would be written down for an order.
    pub(crate) fn of_order(order: &Order, price: PriceTable) -> Self {
        let group = Group {
            pattern: order.pattern.clone(),
            count: order.count,
            name: Some(order.name.clone()),
            colours: BTreeMap::new(),
            ready: None,
        };
        Self {
            title: order.name.clone(),
            needed: order.needed.as_deref().and_then(|day| day.parse().ok()),
            delivery_days: WEEK,
            dye_days: WEEK,
            kerf: Length::ZERO,
            students: vec![group],
            price,
        }
    }
}

/// Students who make the same.
#[derive(Debug)]
pub(crate) struct Group {
    /// Pattern file, beside this one.
    pub(crate) pattern: String,
    /// How many of them there are.
    pub(crate) count: u32,
    /// What the only one is called; the others are numbered.
    pub(crate) name: Option<String>,
    /// Colours in the place of the pattern's.
    pub(crate) colours: BTreeMap<String, Colour>,
    /// What is prepared for them, in the place of the pattern's `ready`.
    pub(crate) ready: Option<AllReady>,
}

/// What prices are reckoned with.
#[derive(Debug, Default)]
pub(crate) struct PriceTable {
    pub(crate) currency: String,
    pub(crate) wage: Decimal,
    pub(crate) overhead: Decimal,
    pub(crate) waste: Decimal,
    pub(crate) mould: Decimal,
    pub(crate) packing: Decimal,
    pub(crate) margin: Decimal,
    pub(crate) retail: Option<Decimal>,
    pub(crate) step: Decimal,
    pub(crate) office_minutes: f64,
    pub(crate) kit_minutes: f64,
    pub(crate) teaching_hours: f64,
    pub(crate) travel: Decimal,
    pub(crate) room: Decimal,
    pub(crate) venue: Decimal,
    pub(crate) target: Option<Decimal>,
    pub(crate) fee: Option<Decimal>,
}
