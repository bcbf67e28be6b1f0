//! The lid as it lies on its basket: made like any basket, plaque down, and turned over.

use basket::steps::Stage;
use basket::{Basket, Of};

use super::detail::Detail;
use super::part::Part;
use super::solid;

/// The parts of a basket's lid, shut; none where there is no lid.
pub(super) fn lid(basket: &Basket, detail: Detail) -> Vec<Part> {
    let (Some(lid), Some(alone)) = (basket.lid.as_ref(), basket.lid_alone()) else { return Vec::new() };
    let rim = basket.body.rim();
    let top = basket.body.profile().at(rim.along + rim.height).height + lid.rises;
    let foot = (top - lid.vessel.base().thickness).to_mm() as f32;
    let mut parts = solid(&alone, Stage::Finished, detail).parts;
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
