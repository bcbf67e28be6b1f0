//! The parts of a solid.

use super::colour::Substance;
use super::detail::Simplified;
use super::mesh::Mesh;
use super::shape::Shape;

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

/// A part's place as another part turned about the z axis.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Turned {
    /// Index of the other part in the solid.
    pub of: usize,
    /// Cosine and sine of the angle.
    pub angle: [f32; 2],
}

impl Part {
    /// A part that is the only one of its kind, like no other.
    pub(super) fn new(
        name: impl Into<String>,
        kind: PartKind,
        substance: Substance<'_>,
        shape: Shape,
    ) -> Self {
        Self {
            name: name.into(),
            kind,
            number: None,
            material: substance.name.to_owned(),
            colour: substance.colour,
            mesh: shape.mesh,
            edges: shape.edges,
            turned: None,
        }
    }

    /// The same with a number among its like.
    pub(super) fn numbered(self, number: u32) -> Self {
        Self { number: Some(number), ..self }
    }
}

/// A basket in the round.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Solid {
    /// Its parts, from the base upward.
    pub parts: Vec<Part>,
    /// How it differs from what was asked for.
    pub simplified: Option<Simplified>,
}

impl Solid {
    /// Adds parts whose [`Turned::of`] counts from their own first.
    pub(super) fn extend(&mut self, parts: impl IntoIterator<Item = Part>) {
        let before = self.parts.len();
        self.parts.extend(parts.into_iter().map(|mut part| {
            if let Some(turned) = &mut part.turned {
                turned.of += before;
            }
            part
        }));
    }

    /// The mirror image. Parts are put together with numbers rising counter-clockwise, as angles do.
    pub(super) fn mirrored(mut self) -> Self {
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
