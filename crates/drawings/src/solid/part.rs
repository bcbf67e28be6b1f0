//! The parts of a solid.

use basket::pattern::Direction;
use basket::{Basket, Of, Piece};

use super::colour::Substance;
use super::detail::Simplified;
use super::mesh::Mesh;
use super::shape::Shape;

/// One piece of the basket.
#[derive(Clone, Debug, PartialEq)]
pub struct Part {
    /// What it is.
    pub piece: Piece,
    /// Of which vessel.
    pub of: Of,
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
    /// A part like no other.
    pub(super) fn new(piece: Piece, substance: Substance<'_>, shape: Shape) -> Self {
        Self {
            piece,
            of: Of::Body,
            material: substance.name.to_owned(),
            colour: substance.colour,
            mesh: shape.mesh,
            edges: shape.edges,
            turned: None,
        }
    }

    /// Its name in plain English, such as `stave 12`, `row 34, weaver 2` or `outer hoop`; no other part of a
    /// solid has it. A row's first weaver and its first strand go without saying.
    pub fn name(&self) -> String {
        let kind = self.piece.kind().replace('-', " ");
        let name = match self.piece {
            Piece::Row { row, weaver, strand } => {
                let more = |what: &str, number: u32| match number {
                    1 => String::new(),
                    number => format!(", {what} {number}"),
                };
                format!("{kind} {row}{}{}", more("weaver", weaver), more("strand", strand))
            }
            Piece::Pin { upright } => format!("{kind} in stave {upright}"),
            piece => piece.numbers().iter().fold(kind, |name, number| format!("{name} {number}")),
        };
        match self.of {
            Of::Body => name,
            Of::Lid => format!("lid, {name}"),
        }
    }

    /// The row it belongs to, if it is a strand of one.
    pub const fn row(&self) -> Option<u32> {
        match self.piece {
            Piece::Row { row, .. } => Some(row),
            _ => None,
        }
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

    /// As the basket is woven. Parts are put together with numbers rising counter-clockwise, as angles do: so they
    /// do where the weaver runs to the left, and else they are turned to their mirror image.
    pub(super) fn woven(mut self, basket: &Basket) -> Self {
        if basket.body.weave.direction == Direction::Left {
            return self;
        }
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
