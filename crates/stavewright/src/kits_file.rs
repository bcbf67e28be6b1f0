//! The file in which a maker writes down who is in a class, what each makes, and what is reckoned with.

use std::collections::BTreeMap;

use jiff::civil::Date;
use rust_decimal::Decimal;
use serde::Deserialize;
use workshop::Order;

use crate::failure::Failure;
use crate::source::Text;

/// Students of one class.
const MOST_STUDENTS: u32 = 500;

/// A class and its kits.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct KitsFile {
    /// What the class is called.
    pub(crate) title: String,
    /// First day on which the material is used.
    #[serde(default, deserialize_with = "day")]
    pub(crate) needed: Option<Date>,
    /// Days from order to delivery.
    #[serde(default = "week")]
    pub(crate) delivery_days: u32,
    /// Further days for stock that is dyed.
    #[serde(default = "week")]
    pub(crate) dye_days: u32,
    /// What is lost at each cut, such as `1 mm`.
    #[serde(default)]
    pub(crate) kerf: Option<String>,
    /// Who makes what.
    pub(crate) students: Vec<Group>,
    /// What is reckoned with.
    #[serde(default)]
    pub(crate) price: PriceTable,
}

impl KitsFile {
    /// What would be written down for an order.
    pub(crate) fn of_order(order: &Order, price: PriceTable) -> Self {
        let (pattern, count, name) = (order.pattern.clone(), order.count, Some(order.name.clone()));
        Self {
            title: order.name.clone(),
            needed: None,
            delivery_days: week(),
            dye_days: week(),
            kerf: None,
            students: vec![Group { pattern, count, name, colours: BTreeMap::new(), ready: None }],
            price,
        }
    }
}

/// Students who make the same.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Group {
    /// Pattern file, beside this one.
    pub(crate) pattern: String,
    /// How many of them there are.
    #[serde(default = "one")]
    pub(crate) count: u32,
    /// What the only one is called; the others are numbered.
    #[serde(default)]
    pub(crate) name: Option<String>,
    /// Colours in the place of the pattern's, such as `{ blue = "red" }`.
    #[serde(default)]
    pub(crate) colours: BTreeMap<String, String>,
    /// What is prepared for them, in the place of the pattern's `ready`.
    #[serde(default)]
    pub(crate) ready: Option<Vec<String>>,
}

/// What prices are reckoned with; money is text, so that it stays decimal.
#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub(crate) struct PriceTable {
    pub(crate) currency: String,
    pub(crate) wage: Money,
    pub(crate) overhead: Money,
    pub(crate) waste: Money,
    pub(crate) mould: Money,
    pub(crate) packing: Money,
    pub(crate) margin: Money,
    pub(crate) retail: Option<Money>,
    pub(crate) step: Money,
    pub(crate) office_minutes: f64,
    pub(crate) kit_minutes: f64,
    pub(crate) teaching_hours: f64,
    pub(crate) travel: Money,
    pub(crate) room: Money,
    pub(crate) venue: Money,
    pub(crate) target: Option<Money>,
    pub(crate) fee: Option<Money>,
}

/// An amount, or a share, written as text such as `"12.50"`.
#[derive(Clone, Copy, Debug, Default, Deserialize)]
#[serde(try_from = "String")]
pub(crate) struct Money(pub(crate) Decimal);

impl TryFrom<String> for Money {
    type Error = String;

    fn try_from(text: String) -> Result<Self, String> {
        text.parse().map(Self).map_err(|_| format!("`{text}` is no amount; write it as \"12.50\""))
    }
}

fn one() -> u32 {
    1
}

fn week() -> u32 {
    7
}

fn day<'de, D: serde::Deserializer<'de>>(written: D) -> Result<Option<Date>, D::Error> {
    let text = String::deserialize(written)?;
    let wrong = |_| serde::de::Error::custom(format!("`{text}` is no day; write it as \"2026-10-17\""));
    text.parse().map(Some).map_err(wrong)
}

/// Reads such a file.
pub(crate) fn parse(text: &Text) -> Result<KitsFile, Failure> {
    let wrong = |message: String, help: &str| Failure::of_file(&text.origin, message, help);
    let file: KitsFile = toml::from_str(&text.content).map_err(|error| {
        wrong(error.to_string().trim_end().to_owned(), "The guide shows a whole kits file.")
    })?;
    let students = file.students.iter().fold(0_u32, |sum, group| sum.saturating_add(group.count));
    if students == 0 || students > MOST_STUDENTS {
        let what = format!("there are {students} students; a class has 1 to {MOST_STUDENTS}");
        return Err(wrong(what, "Say in each [[students]] how many they are: count = 8."));
    }
    let price = &file.price;
    let amounts =
        [price.wage, price.overhead, price.waste, price.mould, price.packing, price.margin, price.step];
    let more = [
        price.travel,
        price.room,
        price.venue,
        price.target.unwrap_or_default(),
        price.fee.unwrap_or_default(),
        price.retail.unwrap_or_default(),
    ];
    let most = Decimal::from(10_000_000);
    if amounts.iter().chain(&more).any(|amount| amount.0.is_sign_negative() || amount.0 > most) {
        let what = "an amount under [price] is below zero or above ten million";
        return Err(wrong(
            what.to_owned(),
            "Write amounts as text, such as wage = \"24.00\"; shares as \"0.1\".",
        ));
    }
    let minutes = [price.office_minutes, price.kit_minutes, price.teaching_hours];
    if minutes.iter().any(|time| !(0.0..=100_000.0).contains(time)) {
        let what = "a time under [price] is below zero or beyond reckoning";
        return Err(wrong(what.to_owned(), "Minutes and hours are numbers, such as kit_minutes = 40."));
    }
    Ok(file)
}
