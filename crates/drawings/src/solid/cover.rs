//! The lid as it lies on its basket: made like any basket, plaque down, and turned over.

use basket::{Basket, Of};

use super::part::Part;

/// The parts of a lid that was made by itself, shut on its basket.
pub(super) fn shut(basket: &Basket, mut parts: Vec<Part>) -> Vec<Part> {
    let Some(lid) = basket.lid.as_ref() else { return Vec::new() };
    let rim = basket.body.rim();
    let top = basket.body.profile().at(rim.along + rim.height).height + lid.rises;
    let foot = (top - lid.vessel.base().thickness).to_mm() as f32;
    for part in &mut parts {
        part.of = Of::Lid;
        // Half a turn about the long axis.
        let edges = part.edges.iter_mut().flatten();
        part.mesh.positions.iter_mut().chain(edges).for_each(|at| *at = [at[0], -at[1], foot - at[2]]);
        if let Some(turned) = &mut part.turned {
            turned.angle[1] = -turned.angle[1];
        }
    }
    parts
}
