//! The basket as a solid: every piece of it as a closed mesh, and nothing that was not computed.
//!
//! Millimetres; z points up, the origin is in the middle of the mould's base, and stave 1 stands on
//! the x axis with the numbers rising counter-clockwise seen from above.

use basket::Basket;
use basket::steps::Stage;

/// A closed surface of triangles, counter-clockwise seen from outside.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Mesh {
    /// Corners, in mm.
    pub positions: Vec<[f32; 3]>,
    /// Triangles as indices of their corners.
    pub triangles: Vec<[u32; 3]>,
}

/// What a part is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum PartKind {
    /// The mould, while the basket is on it.
    Mould,
    /// The band that holds the staves against the mould.
    Band,
    /// The wooden base.
    Base,
    /// The plug in the base's screw hole.
    Plug,
    /// A stave.
    Stave,
    /// A row of weaving.
    Row,
    /// The outer hoop of the rim.
    OuterHoop,
    /// The inner hoop of the rim.
    InnerHoop,
    /// A filler that lies over the stave tips.
    Filler,
    /// A wrap of the lashing.
    Lashing,
    /// A pin through rim and stave.
    Pin,
    /// An ear.
    Ear,
    /// The bail.
    Bail,
    /// A rivet through ear and bail.
    Rivet,
    /// A washer under a rivet or between ear and bail.
    Washer,
}

/// One piece of the basket.
#[derive(Clone, Debug, PartialEq)]
pub struct Part {
    /// Its name in plain English, such as `stave 12`, `row 34` or `outer hoop`.
    pub name: String,
    /// What it is.
    pub kind: PartKind,
    /// Its number among its like, counted from 1, where there are several.
    pub number: Option<u32>,
    /// What it is made of.
    pub material: String,
    /// Its colour as red, green and blue.
    pub colour: [u8; 3],
    /// Its surface.
    pub mesh: Mesh,
    /// Edges worth drawing, in mm.
    pub edges: Vec<Vec<[f32; 3]>>,
}

/// A basket in the round.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Solid {
    /// Its parts, from the base upward.
    pub parts: Vec<Part>,
}

/// How finely a solid is cut into triangles.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Detail {
    /// For looking closely and for printing in three dimensions.
    Full,
    /// For a picture as wide as a page.
    Page,
    /// For a picture as large as a thumb.
    Thumbnail,
}

/// The basket at a stage of its making.
pub fn solid(basket: &Basket, stage: Stage, detail: Detail) -> Solid {
    let _ = (basket, stage, detail);
    Solid::default()
}
