//! The basket as a solid: every piece of it as a closed mesh, and nothing that was not computed.
//!
//! Millimetres; z points up, the origin is in the middle of the mould's base, and stave 1 stands on
//! the x axis with the numbers rising clockwise seen from above.
//!
//! Staves and hoops are laid to the curve of the wall, so that a flat section is bent round it by the
//! rise of its arc (0.06 mm for a stave of 1/4 in on a radius of 80 mm). Holes are not cut: pins and
//! rivets fill theirs.

mod base;
mod bow;
mod budget;
mod cache;
mod clamp;
mod colour;
mod cover;
mod crossing;
mod detail;
mod ear;
mod export;
mod fill;
mod fixed;
mod frame;
mod handle;
mod hull;
mod laid;
mod lane;
mod lashing;
mod maker;
mod mesh;
mod outlined;
mod part;
mod pin;
mod rim;
mod row;
mod section;
mod shape;
mod stage;
mod stand;
mod stave;
mod surface;
mod wooden;

use basket::Basket;
use basket::steps::Stage;

pub(crate) use cache::PartCache;
pub(crate) use clamp::count as clamps;
pub use cover::LidPose;
pub use detail::{Detail, Simplified};
pub use export::{glb, stl, three_mf};
use maker::Maker;
pub use mesh::Mesh;
pub use part::{Part, Solid, Turned};
pub use wooden::{mould_pieces, mould_solid};

/// No piece passes through another by more than this many mm, apart from pins and rivets in their holes,
/// and from the weavers of a wale, which press each other flat where they pass in a gap.
pub const MOST_OVERLAP: f32 = 0.15;
/// Pieces that touch lie no further apart than this many mm.
pub const MOST_GAP: f32 = 0.15;

/// The basket at a stage of its making: what exists then, and nothing else; finished, with its lid shut.
///
/// Every basket that can be computed gives a solid, with finite corners; one that cannot be woven may have
/// parts that pass through each other.
pub fn solid(basket: &Basket, stage: Stage, detail: Detail) -> Solid {
    with_lid(basket, stage, detail, LidPose::Closed)
}

/// The same with the lid of a finished basket as it is asked for.
pub fn with_lid(basket: &Basket, stage: Stage, detail: Detail, pose: LidPose) -> Solid {
    let maker = Maker::of(basket, detail);
    let mut solid = maker.at(stage);
    if stage == Stage::Finished {
        solid.extend(cover::parts(&maker, pose));
    }
    solid
}
