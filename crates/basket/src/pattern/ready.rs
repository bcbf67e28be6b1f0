//! What lies ready before the making begins.

use super::word::words;
use crate::piece::{FloorPart, Piece};

/// Something that lies ready: bought so, or prepared by a teacher.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Ready {
    /// The staves, cut to length.
    StavesCut,
    /// The staves, cut, tapered and sanded.
    StavesTapered,
    /// The hoops, as glued rings.
    Rings,
    /// The handle, bent.
    Handle,
    /// The ears, sawn and shaped.
    Ears,
    /// The base, with its groove, sanded.
    Base,
}

words! { Ready:
    StavesCut = "staves cut", "ready-staves-cut";
    StavesTapered = "staves tapered", "ready-staves-tapered";
    Rings = "rings", "ready-rings";
    Handle = "handle", "ready-handle";
    Ears = "ears", "ready-ears";
    Base = "base", "ready-base";
}

/// All that lies ready, each once, in making order.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct AllReady(Vec<Ready>);

impl AllReady {
    /// These, and what follows from them: tapered staves are cut.
    pub fn of(mut ready: Vec<Ready>) -> Self {
        if ready.contains(&Ready::StavesTapered) {
            ready.push(Ready::StavesCut);
        }
        ready.sort();
        ready.dedup();
        Self(ready)
    }

    /// Whether this lies ready.
    pub fn has(&self, part: Ready) -> bool {
        self.0.contains(&part)
    }

    /// Whether this piece lies ready, as far as it can be made beforehand.
    pub fn has_piece(&self, piece: Piece) -> bool {
        let part = match piece.sort() {
            Piece::Floor(FloorPart::Disc | FloorPart::Groove) => Ready::Base,
            Piece::Uprights => Ready::StavesCut,
            Piece::OuterHoop | Piece::InnerHoop => Ready::Rings,
            Piece::Ears => Ready::Ears,
            Piece::Handle => Ready::Handle,
            _ => return false,
        };
        self.has(part)
    }

    /// Each of them, in making order.
    pub fn each(&self) -> &[Ready] {
        &self.0
    }
}
