//! The basket as it is made, drawn from the model as it stands at each stage: a basket of 43 staves
//! shows 43.

mod close;
mod exploded;
mod join;
pub(crate) mod look;
mod parts;
mod plate;
mod studio;
mod whole;

use std::sync::atomic::{AtomicUsize, Ordering};

use basket::Basket;
use basket::fittings::Handle;
use basket::message::Value;
use basket::pattern::{EarWay, HandleJoint};
use words::Words;

use crate::drawing::Drawing;
use crate::plain::{Why, kept, left_out};
use crate::solid::Simplified;
pub use plate::Plate;
use studio::Studio;

/// The drawings that a basket has, in making order.
pub fn plates(basket: &Basket) -> Vec<Plate> {
    let mut plates: Vec<Plate> = Plate::ALL.into_iter().filter(|plate| plate.is_of(basket)).collect();
    plates.sort_by_key(|plate| basket.place_of(plate.stage()));
    plates
}

/// A drawing of the making, about 70 mm wide (the cover as wide as a page), in its
/// true colours. None where the basket has not what it would show; one that cannot be drawn says so.
///
/// Its title is its caption.
pub fn stage_drawing(basket: &Basket, words: &Words, plate: Plate) -> Option<Drawing> {
    drawing(&Studio::of(basket, words), plate)
}

/// The same without any lettering, to be enlarged until it is read from across a room.
pub fn unlettered(basket: &Basket, words: &Words, plate: Plate) -> Option<Drawing> {
    drawing(&Studio { lettered: false, ..Studio::of(basket, words) }, plate)
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
            made.extend(drawing(&studio, plate).map(|drawing| (plate, drawing)));
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
    made.sort_by_key(|(made, _)| plates.iter().position(|plate| plate == made));
    made
}

/// Drawings of a lid as it is made by itself, in making order; their names begin with `lid-`. None where there is no
/// lid.
pub fn lid_drawings(basket: &Basket, words: &Words) -> Vec<(Plate, Drawing)> {
    let Some(alone) = basket.lid_alone() else { return Vec::new() };
    let studio = Studio::of(&alone, words);
    let made = |plate: Plate| {
        let mut drawing = drawing(&studio, plate)?;
        let (id, args) = (format!("plate-lid-{}", plate.name()), args(&alone, alone.rows_at(plate.stage())));
        drawing.name = plate.lid_figure();
        drawing.title = words.with(&id, &args);
        drawing.description = words.with(&format!("{id}.alt"), &args);
        Some((plate, drawing))
    };
    Plate::OF_LID.into_iter().filter_map(made).collect()
}

fn drawing(studio: &Studio<'_>, plate: Plate) -> Option<Drawing> {
    if !plate.is_of(studio.basket) {
        return None;
    }
    let made = match plate {
        Plate::Exploded => exploded::exploded(studio),
        Plate::Join => close::join(studio),
        Plate::PinAndClinch => close::pin(studio),
        Plate::LashingStart => close::lashing_start(studio),
        Plate::Scarf | Plate::TipsTrimmed | Plate::LashingEnd | Plate::EarWithRivet => {
            close::close(studio, plate)
        }
        _ => whole::whole(studio, plate),
    };
    let words = studio.words;
    let Some((drawing, rows)) = made else {
        return Some(left_out(&named(studio.basket, words, (plate, 0)), words, &Why::Nothing));
    };
    let Drawing { name, mut title, description, .. } = named(studio.basket, words, (plate, rows));
    if studio.far.simplified() == Some(Simplified::Bands) && rows > 0 {
        title = format!("{title} {}", words.term(Simplified::Bands.term()));
    }
    Some(kept(Drawing { name, title, description, ..drawing }, words))
}

/// What stands in the place of a drawing of the making that a basket has not.
pub fn absent(basket: &Basket, words: &Words, plate: Plate) -> Drawing {
    left_out(&named(basket, words, (plate, 0)), words, &Why::Absent)
}

/// An empty drawing with the name, caption and description of a plate that shows so many rows.
fn named(basket: &Basket, words: &Words, (plate, rows): (Plate, u32)) -> Drawing {
    let name = match (plate, basket.ears.as_ref().map(|ears| ears.way)) {
        (Plate::EarsSet, Some(EarWay::WovenIn)) => "ears-woven-in",
        (Plate::EarsSet, Some(EarWay::AsStave)) => "ears-as-staves",
        _ => plate.name(),
    };
    let id = format!("plate-{name}{}", variant(basket, plate));
    let args = args(basket, rows);
    let alt = words.with(&format!("{id}.alt"), &args);
    Drawing::new(plate.figure(), words.with(&id, &args), alt)
}

/// What tells the caption of a handle's joint from that of another.
fn variant(basket: &Basket, plate: Plate) -> &'static str {
    match (plate, &basket.handle) {
        (Plate::Handled | Plate::EarWithRivet, Some(Handle::Knobs(_))) => "-knob",
        (Plate::EarWithRivet, Some(Handle::Swing(swing))) => match swing.joint {
            HandleJoint::Outside => "",
            HandleJoint::Slot => "-slot",
            HandleJoint::Between => "-between",
        },
        _ => "",
    }
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
        ("pins", basket.body.pins().count().into()),
        ("wraps", basket.body.lashing().map_or(0, |lashing| lashing.wraps).into()),
        ("first-ear", basket.in_rim().map_or(0, |ears| ears.each[0].stave).into()),
        ("second-ear", basket.in_rim().map_or(0, |ears| ears.each[1].stave).into()),
    ]
}
