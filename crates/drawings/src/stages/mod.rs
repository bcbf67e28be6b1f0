//! The basket as it is made, drawn from the model as it stands at each stage: a basket of 43 staves
//! shows 43.

mod close;
mod exploded;
mod join;
mod look;
mod parts;
mod plate;
mod whole;

use basket::Basket;
use basket::message::Value;
use words::Words;

use crate::drawing::Drawing;
use crate::solid::{PartKind, Solid};
pub use plate::Plate;

/// The drawings that a basket has, in making order.
pub fn plates(basket: &Basket) -> Vec<Plate> {
    Plate::ALL.into_iter().filter(|plate| plate.is_of(basket)).collect()
}

/// A drawing of the making, about 70 mm wide (exploded view and cover as wide as a page), in black,
/// white and greys. None where the basket has not what it would show.
///
/// Its title is its caption.
pub fn stage_drawing(basket: &Basket, words: &Words, plate: Plate) -> Option<Drawing> {
    if !plate.is_of(basket) {
        return None;
    }
    let (drawing, rows) = match plate {
        Plate::Exploded => exploded::exploded(basket, words)?,
        Plate::Join => close::join(basket, words)?,
        Plate::PinAndClinch => close::pin(basket, words)?,
        Plate::Scarf | Plate::TipsTrimmed | Plate::LashingStart | Plate::LashingEnd | Plate::EarWithRivet => {
            close::close(basket, plate)?
        }
        _ => whole::whole(basket, plate)?,
    };
    let id = format!("plate-{}", plate.name());
    let args = args(basket, rows);
    Some(Drawing {
        name: plate.figure(),
        title: words.with(&id, &args),
        description: words.with(&format!("{id}.alt"), &args),
        ..drawing
    })
}

/// How many rows a solid shows.
fn rows(solid: &Solid) -> u32 {
    let rows = solid.parts.iter().filter(|part| part.kind == PartKind::Row);
    rows.filter_map(|part| part.number).max().unwrap_or(0)
}

/// What captions and descriptions may mention.
fn args(basket: &Basket, rows: u32) -> Vec<(&'static str, Value)> {
    let join = join::first(basket);
    let scarf = &basket.rim.outer.scarf;
    vec![
        ("title", Value::Name(basket.title.clone())),
        ("count", basket.staves.count.into()),
        ("rows", rows.into()),
        ("row", join.map_or(0, |join| join.row).into()),
        ("cut", join.map_or(0, |join| join.cut_over).into()),
        ("start", join.map_or(0, |join| join.start_behind).into()),
        ("from", scarf.from_stave.into()),
        ("to", scarf.to_stave.into()),
        ("pins", basket.pins.count.into()),
        ("wraps", basket.lashing.wraps.into()),
        ("first-ear", basket.ears.as_ref().map_or(0, |ears| ears.each[0].stave).into()),
        ("second-ear", basket.ears.as_ref().map_or(0, |ears| ears.each[1].stave).into()),
    ]
}
