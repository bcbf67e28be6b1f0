//! The basket as it is made, drawn from the model as it stands at each stage: a basket of 43 staves
//! shows 43.

mod close;
mod exploded;
mod join;
pub(crate) mod look;
mod parts;
mod plate;
mod whole;

use std::sync::atomic::{AtomicUsize, Ordering};

use basket::Basket;
use basket::message::Value;
use words::Words;

use crate::drawing::Drawing;
use crate::solid::{Detail, PartKind, Stock};
use parts::Parts;
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
    Studio::of(basket, words).drawing(plate)
}

/// All drawings of the making that a basket has, in making order, each as from [`stage_drawing`]. They
/// share the parts that do not change from stage to stage, and are made on as many cores as there are.
pub fn stage_drawings(basket: &Basket, words: &Words) -> Vec<(Plate, Drawing)> {
    let studio = Studio::of(basket, words);
    let plates = plates(basket);
    // The last plates are the largest: begun first, they do not leave one core to finish alone.
    let next = AtomicUsize::new(plates.len());
    let work = || {
        let mut made = Vec::new();
        while let Ok(before) =
            next.fetch_update(Ordering::Relaxed, Ordering::Relaxed, |left| left.checked_sub(1))
        {
            let plate = plates[before - 1];
            made.extend(studio.drawing(plate).map(|drawing| (plate, drawing)));
        }
        made
    };
    let cores = std::thread::available_parallelism().map_or(1, usize::from).min(plates.len());
    let mut made = std::thread::scope(|scope| {
        let others: Vec<_> = (1..cores).map(|_| scope.spawn(work)).collect();
        let mut made = work();
        for other in others {
            made.extend(other.join().unwrap_or_else(|panic| std::panic::resume_unwind(panic)));
        }
        made
    });
    made.sort_by_key(|(plate, _)| *plate);
    made
}

/// What all drawings of a basket share.
struct Studio<'a> {
    basket: &'a Basket,
    words: &'a Words,
    /// The parts as small drawings of the whole show them.
    far: Stock<'a>,
    /// The parts as seen from close by, or large on a cover.
    near: Stock<'a>,
}

impl<'a> Studio<'a> {
    fn of(basket: &'a Basket, words: &'a Words) -> Self {
        let [far, near] = [Detail::Column, Detail::Full].map(|detail| Stock::of(basket, detail));
        Self { basket, words, far, near }
    }

    fn drawing(&self, plate: Plate) -> Option<Drawing> {
        if !plate.is_of(self.basket) {
            return None;
        }
        let (drawing, rows) = match plate {
            Plate::Exploded => exploded::exploded(self)?,
            Plate::Join => close::join(self)?,
            Plate::PinAndClinch => close::pin(self)?,
            Plate::LashingStart => close::lashing_start(self)?,
            Plate::Scarf | Plate::TipsTrimmed | Plate::LashingEnd | Plate::EarWithRivet => {
                close::close(self, plate)?
            }
            _ => whole::whole(self, plate)?,
        };
        let id = format!("plate-{}", plate.name());
        let args = args(self.basket, rows);
        Some(Drawing {
            name: plate.figure(),
            title: self.words.with(&id, &args),
            description: self.words.with(&format!("{id}.alt"), &args),
            ..drawing
        })
    }
}

/// How many rows are shown.
fn rows(parts: &Parts<'_>) -> u32 {
    let rows = parts.iter().filter(|part| part.kind == PartKind::Row);
    rows.filter_map(|part| part.number).max().unwrap_or(0)
}

/// What captions and descriptions may mention.
fn args(basket: &Basket, rows: u32) -> Vec<(&'static str, Value)> {
    let join = join::first(basket);
    let scarf = &basket.body.rim().outer.scarf;
    vec![
        ("title", Value::Name(basket.title.clone())),
        ("count", basket.body.uprights().count.into()),
        ("rows", rows.into()),
        ("row", join.map_or(0, |join| join.row).into()),
        ("cut", join.map_or(0, |join| join.cut_over).into()),
        ("start", join.map_or(0, |join| join.start_behind).into()),
        ("from", scarf.from_stave.into()),
        ("to", scarf.to_stave.into()),
        ("clamps", crate::solid::clamps(basket).into()),
        ("pins", basket.body.pins().count.into()),
        ("wraps", basket.body.lashing().wraps.into()),
        ("first-ear", basket.ears.as_ref().map_or(0, |ears| ears.each[0].stave).into()),
        ("second-ear", basket.ears.as_ref().map_or(0, |ears| ears.each[1].stave).into()),
    ]
}
