//! The mould of a lid: shallow, its levels at an even distance from the basket's foot.

use std::f64::consts::TAU;

use crate::form::{Levels, Outline as _};
use crate::measure::Length;
use crate::parts::vessel::Vessel;
use crate::pattern::{self, FootSize, MouldForm, MouldPattern, MouldPieces, Outline, Side, rays_to, spanned};

/// Places of a foot by which the smaller foot of a lid's mould is drawn.
const RAYS: usize = 120;
/// Places between which these lie.
const PLACES: u32 = 1024;

/// The mould of a lid: `rim` and `plaque` are girths over 2π, the outline is at an even distance from the
/// basket's own at its rim.
pub(crate) fn mould(
    body: &MouldPattern,
    vessel: &Vessel,
    [plaque, rim]: [Length; 2],
    (height, side): (Length, Side),
) -> MouldPattern {
    let form = &vessel.form;
    let inset = plaque - Length::mm(form.outline.girth() / TAU);
    let less =
        |size: &FootSize| FootSize { length: size.length + inset * 2.0, width: size.width + inset * 2.0 };
    let outline = match &body.outline {
        Outline::Round => Outline::Round,
        _ if form.levels != Levels::Even => Outline::Traced(rays(vessel, plaque)),
        Outline::Stadium(size) => Outline::Stadium(less(size)),
        Outline::Rectangle { size, corner } => {
            Outline::Rectangle { size: less(size), corner: (*corner + inset).max(Length::mm(0.1)) }
        }
        Outline::Oval { .. } | Outline::Traced(_) => Outline::Traced(rays(vessel, plaque)),
    };
    let across = |radius: Length| vessel.rim_level(radius).across().length;
    let form = MouldForm::Drawn { base: across(plaque), rim: across(rim), height, side };
    MouldPattern { outline, form, levels: pattern::Levels::Even, pieces: MouldPieces::One }
}

/// The level of the basket's rim with this girth over 2π, by rays at even angles.
fn rays(vessel: &Vessel, plaque: Length) -> Vec<Length> {
    let level = vessel.rim_level(plaque);
    let place = |number: u32| {
        let [x, y] = level.place(f64::from(number) / f64::from(PLACES));
        // A lid is turned over about the long axis: as it is woven it is the mirror image of the basket.
        [x, -y]
    };
    let places: Vec<[f64; 2]> = (0..PLACES).map(place).collect();
    rays_to(&spanned(&places), RAYS).into_iter().map(Length::mm).collect()
}
