//! Amounts of money in plain files: as text, so that they stay decimal.

use rust_decimal::Decimal;
use serde::{Deserialize, Deserializer, Serializer, de::Error};

#[allow(clippy::ref_option, reason = "serde hands the field over so")]
pub fn serialize<S: Serializer>(amount: &Option<Decimal>, to: S) -> Result<S::Ok, S::Error> {
    match amount {
        Some(amount) => to.collect_str(amount),
        None => to.serialize_none(),
    }
}

pub fn deserialize<'de, D: Deserializer<'de>>(from: D) -> Result<Option<Decimal>, D::Error> {
    let Some(text) = Option::<String>::deserialize(from)? else { return Ok(None) };
    let wrong = |_| D::Error::custom(format!("`{text}` is no amount; write it as \"12.50\""));
    text.parse().map(Some).map_err(wrong)
}
