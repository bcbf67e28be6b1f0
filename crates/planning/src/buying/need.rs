//! What kits need, by material and colour.

use basket::cuts::{Cut, CutStock};
use basket::{Colour, Length, Material};

use super::timing::Timing;
use crate::cutting::Piece;
use crate::kits::Kits;

/// One material in one colour.
#[derive(Clone, Debug, PartialEq)]
pub struct Need {
    /// The material.
    pub material: Material,
    /// Its colour; `natural` where it is not dyed.
    pub colour: String,
    /// Pieces to cut, with spares.
    pub pieces: Vec<Piece>,
    /// Pieces used whole, such as pins, with spares.
    pub whole: u32,
    /// When the classes and orders need it that say so.
    pub timings: Vec<Timing>,
}

impl Need {
    /// Whether it is cut from strands.
    pub fn is_cut(&self) -> bool {
        !self.pieces.is_empty()
    }

    /// Pieces of one length are one kind of piece, whichever baskets they are for.
    fn add(&mut self, length: Length, count: u32) {
        match self.pieces.iter_mut().find(|piece| piece.length == length) {
            Some(piece) => piece.count = piece.count.saturating_add(count),
            None => self.pieces.push(Piece { length, count }),
        }
    }

    /// Whether it is dyed.
    pub fn is_dyed(&self) -> bool {
        self.colour != Colour::natural().name
    }
}

/// What several classes and orders need together, in the order in which it first comes up. Wood for bases and
/// ears is not among it: it is sawn from boards as they come.
pub fn needs<'k>(classes: impl IntoIterator<Item = (&'k Kits, Option<Timing>)>) -> Vec<Need> {
    let mut needs: Vec<Need> = Vec::new();
    let cuts = |(kits, timing): (&'k Kits, Option<Timing>)| {
        kits.batches.iter().map(move |batch| (&batch.cut, timing))
    };
    for (cut, timing) in classes.into_iter().flat_map(cuts) {
        let Some(material) = bought(cut) else { continue };
        let colour = cut.colour.clone().unwrap_or_default().name;
        let place =
            needs.iter().position(|need| need.material.name == material.name && need.colour == colour);
        let place = place.unwrap_or_else(|| {
            let (material, pieces, timings) = (material.clone(), Vec::new(), Vec::new());
            needs.push(Need { material, colour, pieces, whole: 0, timings });
            needs.len() - 1
        });
        let count = cut.count.saturating_add(cut.spares);
        let Some(need) = needs.get_mut(place) else { continue };
        need.timings.extend(timing.filter(|timing| !need.timings.contains(timing)));
        match cut.length.filter(|_| is_strand(material)) {
            Some(length) => need.add(length, count),
            None => need.whole = need.whole.saturating_add(count),
        }
    }
    needs
}

/// What is bought by a put-up of the catalogue.
fn bought(cut: &Cut) -> Option<&Material> {
    match &cut.stock {
        CutStock::Material(material) => Some(material),
        _ => None,
    }
}

/// Whether pieces are cut from it; pins and rivets are used whole.
fn is_strand(material: &Material) -> bool {
    material.put_up.strand.is_some()
}
