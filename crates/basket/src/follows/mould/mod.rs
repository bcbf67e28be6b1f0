//! What whoever makes the mould has to know beyond its shape: into which pieces it is cut for a printer, and into
//! which it comes apart where a basket does not lift off.

mod apart;
mod block;
mod pegs;
mod pieces;
mod sections;
mod split;

pub use apart::{Apart, CLEAR, Segment, Stuck};
pub use block::{Axis, Block};
pub use pegs::{Peg, PegSize};
pub use pieces::{NoPieces, Pieces};
pub use split::{MOST_PIECES, Part, Room, Split, TooSmall};
