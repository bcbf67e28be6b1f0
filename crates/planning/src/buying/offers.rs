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

    /// The unit of length by which it is sold, as one piece of so many units; none for what is sold in whole
    /// units, such as hanks.
    pub fn length_unit(&self) -> Option<LengthUnit> {
        LengthUnit::called(&self.unit).filter(|unit| self.holds == 1 && unit.is_length(self.length))
    }

    /// Whether it is sold by the running foot or metre.
    pub fn is_by_length(&self) -> bool {
        self.length_unit().is_some()
    }
}

/// A unit of length by which material is sold.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LengthUnit {
    /// The running foot.
    Foot,
    /// The running metre.
    Metre,
}

impl LengthUnit {
    /// By any of its names.
    pub fn called(unit: &str) -> Option<Self> {
        match unit.trim().to_lowercase().as_str() {
            "foot" | "feet" | "ft" | "fuß" => Some(Self::Foot),
            "metre" | "meter" | "m" => Some(Self::Metre),
            _ => None,
        }
    }

    /// How long so many are.
    pub fn times(self, count: u32) -> Length {
        Length::mm((self.nanometres() * i64::from(count)) as f64 / 1e6)
    }

    pub(super) fn nanometres(self) -> i64 {
        match self {
            Self::Foot => 304_800_000,
            Self::Metre => 1_000_000_000,
        }
    }

    /// Whether this is one such unit, to the millimetre.
    pub fn is_length(self, length: Option<Length>) -> bool {
        length.is_some_and(|length| (length.to_mm() - self.times(1).to_mm()).abs() <= 1.0)
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
