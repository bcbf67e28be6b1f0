//! What can be bought.

use basket::stock::Kind;
use basket::{Length, Material};
use rust_decimal::Decimal;

/// One unit that can be bought.
#[derive(Clone, Debug, PartialEq)]
pub struct Offer {
    /// Material by the name under which a pattern asks for it.
    pub material: String,
    /// Colour; `natural` where it is not dyed.
    pub colour: String,
    /// What the unit is called, such as `half hank`.
    pub unit: String,
    /// Strands in it, or pieces used whole.
    pub holds: u32,
    /// Length of one strand that may be counted on; none for pieces used whole.
    pub length: Option<Length>,
    /// What it costs; none where that is not known.
    pub price: Option<Decimal>,
    /// Where, in the maker's own words.
    pub from: String,
}

impl Offer {
    /// What this many cost.
    pub fn cost(&self, count: u32) -> Option<Decimal> {
        self.price.and_then(|price| price.checked_mul(Decimal::from(count)))
    }
}

/// The put-ups of the catalogue, without a price. Chair cane comes in half hanks too (how-to articles on
/// caning: 500 ft).
pub fn usual_offers(material: &Material, colour: &str) -> Vec<Offer> {
    let put_up = &material.put_up;
    let offer = |unit: &str, share: f64| {
        let strands = match (put_up.length, put_up.strand) {
            (Some(all), Some(strand)) if strand > Length::ZERO => {
                (all * share / strand).floor().max(1.0) as u32
            }
            _ => pieces_in(&put_up.unit),
        };
        Offer {
            material: material.name.clone(),
            colour: colour.to_owned(),
            unit: unit.to_owned(),
            holds: strands,
            length: put_up.strand,
            price: None,
            from: String::new(),
        }
    };
    let mut offers = vec![offer(&put_up.unit, 1.0)];
    offers.extend((material.kind == Kind::ChairCane).then(|| offer("half hank", 0.5)));
    offers
}

/// Pieces in a unit that holds no length (from memory; counts vary).
fn pieces_in(unit: &str) -> u32 {
    if unit == "box" { 100 } else { 1 }
}
