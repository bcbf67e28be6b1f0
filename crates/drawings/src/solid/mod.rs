//! The basket as a solid: every piece of it as a closed mesh, and nothing that was not computed.
//!
//! Millimetres; z points up, the origin is in the middle of the mould's base, and stave 1 stands on
//! the x axis with the numbers rising clockwise seen from above.
//!
//! Staves and hoops are laid to the curve of the wall, so that a flat section is bent round it by the
//! rise of its arc (0.06 mm for a stave of 1/4 in on a radius of 80 mm). Holes are not cut: pins and
//! rivets fill theirs.

mod base;
mod clamp;
mod colour;
mod crossing;
mod ear;
mod edges;
mod export;
mod frame;
mod handle;
mod lashing;
mod maker;
mod mesh;
mod pin;
mod rim;
mod row;
mod section;
mod stage;
mod stave;
mod surface;

use basket::Basket;
use basket::steps::Stage;

pub(crate) use clamp::count as clamps;
pub use export::{glb, stl, three_mf};
use maker::Maker;
pub(crate) use maker::Stock;
use surface::Surface;

/// No piece passes through another by more than this many mm, apart from pins and rivets in their holes,
/// and from the weavers of a wale, which press each other flat where they pass in a gap.
pub const MOST_OVERLAP: f32 = 0.15;
/// Pieces that touch lie no further apart than this many mm.
pub const MOST_GAP: f32 = 0.15;

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
    /// The screw that holds the base on the mould.
    Screw,
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
    /// A clamp that holds both hoops.
    Clamp,
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
    /// Set where the part is like an earlier one (or itself) but for a turn about the z axis.
    pub turned: Option<Turned>,
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
    /// For a picture as wide as a column of text.
    Column,
    /// For a picture as large as a thumb.
    Thumbnail,
}

/// A part's place as another part turned about the z axis.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Turned {
    /// Index of the other part in the solid.
    pub of: usize,
    /// Cosine and sine of the angle.
    pub angle: [f32; 2],
}

impl Part {
    fn new(name: &str, kind: PartKind, material: &str, colour: [u8; 3], mesh: Mesh) -> Self {
        Self {
            name: name.to_owned(),
            kind,
            number: None,
            material: material.to_owned(),
            colour,
            mesh,
            edges: Vec::new(),
            turned: None,
        }
    }
}

impl Solid {
    /// Adds parts whose [`Turned::of`] counts from their own first.
    fn extend(&mut self, parts: impl IntoIterator<Item = Part>) {
        let before = self.parts.len();
        self.parts.extend(parts.into_iter().map(|mut part| {
            if let Some(turned) = &mut part.turned {
                turned.of += before;
            }
            part
        }));
    }

    /// The mirror image. Parts are put together with numbers rising counter-clockwise, as angles do.
    fn mirrored(mut self) -> Self {
        for part in &mut self.parts {
            let edges = part.edges.iter_mut().flatten();
            part.mesh.positions.iter_mut().chain(edges).for_each(|at| at[1] = -at[1]);
            part.mesh.triangles.iter_mut().for_each(|triangle| triangle.swap(1, 2));
            if let Some(turned) = &mut part.turned {
                turned.angle[1] = -turned.angle[1];
            }
        }
        self
    }

    /// How many triangles all parts have.
    pub fn triangles(&self) -> usize {
        self.parts.iter().map(|part| part.mesh.triangles.len()).sum()
    }
}

/// The basket at a stage of its making: what exists then, and nothing else. Every basket that can be
/// computed gives a solid, with finite corners; one that cannot be woven may have parts that pass
/// through each other.
pub fn solid(basket: &Basket, stage: Stage, detail: Detail) -> Solid {
    let maker = Maker { basket, surface: Surface::of(basket), detail };
    let mut solid = Solid::default();
    for group in stage::groups(stage) {
        solid.extend(maker.make(group, stage::rows(basket, stage)));
    }
    solid.mirrored()
}

/// How far a circle cut into straight pieces may lie inside the true one, in mm.
const fn sagitta(detail: Detail) -> f32 {
    match detail {
        Detail::Full => 0.05,
        Detail::Page | Detail::Column => 0.3,
        Detail::Thumbnail => 1.2,
    }
}

/// Straight pieces for a circle of this radius: `π / acos(1 − s/r)` for a sagitta `s`.
fn segments(radius: f32, detail: Detail) -> u32 {
    let share = 1.0 - sagitta(detail) / radius.max(1e-3);
    if share <= 0.5 {
        return 8;
    }
    ((std::f32::consts::PI / share.acos()).ceil() as u32).clamp(8, 512)
}
