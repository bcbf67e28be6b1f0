//! A line of the cut list.

use crate::colour::Colour;
use crate::measure::Length;
use crate::message::{Message, Value};
use crate::pattern::EarMaterial;
use crate::piece::Of;
use crate::stock::{Material, Wood};
use crate::term::Term;

/// What a line of the cut list is cut for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum CutPiece {
    /// The base.
    Base,
    /// The plug for its screw hole.
    Plug,
    /// A stave.
    Stave,
    /// A strand of a weaver.
    Weaver,
    /// The outer hoop.
    OuterHoop,
    /// The inner hoop.
    InnerHoop,
    /// A piece of filler.
    Filler,
    /// A strand of the lashing.
    Lashing,
    /// A pin.
    Pin,
    /// An ear.
    Ear,
    /// The bail of the handle.
    Bail,
    /// A rivet.
    Rivet,
    /// A washer or burr.
    Washer,
}

impl CutPiece {
    /// All of them, in making order.
    pub const ALL: [Self; 13] = [
        Self::Base,
        Self::Plug,
        Self::Stave,
        Self::Weaver,
        Self::OuterHoop,
        Self::InnerHoop,
        Self::Filler,
        Self::Lashing,
        Self::Pin,
        Self::Ear,
        Self::Bail,
        Self::Rivet,
        Self::Washer,
    ];
}

impl Term for CutPiece {
    fn term(self) -> &'static str {
        match self {
            Self::Base => "cut-base",
            Self::Plug => "cut-plug",
            Self::Stave => "cut-stave",
            Self::Weaver => "cut-weaver",
            Self::OuterHoop => "cut-outer-hoop",
            Self::InnerHoop => "cut-inner-hoop",
            Self::Filler => "cut-filler",
            Self::Lashing => "cut-lashing",
            Self::Pin => "cut-pin",
            Self::Ear => "cut-ear",
            Self::Bail => "cut-bail",
            Self::Rivet => "cut-rivet",
            Self::Washer => "cut-washer",
        }
    }
}

/// What a piece is cut from.
#[derive(Clone, Debug, PartialEq)]
pub enum CutStock {
    /// A material of the catalogue or the shelf.
    Material(Material),
    /// A wood for bases.
    Wood(Wood),
    /// What ears are made of.
    Ear(EarMaterial),
    /// Wood that bends to a bail.
    Bail,
    /// A washer that fits this rivet, where no burr of its own is known.
    WasherFor(Material),
}

impl CutStock {
    /// Its name.
    pub fn name(&self) -> Value {
        match self {
            Self::Material(material) => material.into(),
            Self::Wood(wood) => wood.into(),
            Self::Ear(material) => Value::Term(material.term()),
            Self::Bail => Value::Term("cut-bail-material"),
            Self::WasherFor(rivet) => Message::new("cut-washer-for").with("rivet", rivet).into(),
        }
    }

    /// The material, where it is one that is sold.
    pub const fn material(&self) -> Option<&Material> {
        match self {
            Self::Material(material) => Some(material),
            _ => None,
        }
    }
}

/// One line of the cut list.
#[derive(Clone, Debug, PartialEq)]
pub struct Cut {
    /// What it is cut for.
    pub piece: CutPiece,
    /// For which vessel.
    pub of: Of,
    /// What it is cut from.
    pub stock: CutStock,
    /// The colour it is dyed; none where it is left as it is.
    pub colour: Option<Colour>,
    /// How many for the basket.
    pub count: u32,
    /// How many more to have ready.
    pub spares: u32,
    /// Length of one piece.
    pub length: Option<Length>,
    /// Width of one piece (diameter of a disc or rod).
    pub width: Option<Length>,
    /// How to shape it, such as a taper.
    pub shape: Option<Message>,
    /// Length of all pieces with spares, where it is used by length.
    pub total: Option<Length>,
    /// What it is for.
    pub purpose: Message,
}

impl Cut {
    pub(super) fn new(piece: CutPiece, stock: CutStock, count: u32, purpose: Message) -> Self {
        Self {
            piece,
            of: Of::Body,
            stock,
            colour: None,
            count,
            spares: 0,
            length: None,
            width: None,
            shape: None,
            total: None,
            purpose,
        }
    }
    pub(super) fn spares(mut self, spares: u32) -> Self {
        self.spares = spares;
        self
    }
    /// Length of one piece; the total follows from counts, so spares come first.
    pub(super) fn length(mut self, length: Length) -> Self {
        self.length = Some(length);
        self.total = Some(length * f64::from(self.count.saturating_add(self.spares)));
        self
    }
    pub(super) fn total(mut self, total: Length) -> Self {
        self.total = Some(total);
        self
    }
    pub(super) fn width(mut self, width: Length) -> Self {
        self.width = Some(width);
        self
    }
    pub(super) fn shape(mut self, shape: Message) -> Self {
        self.shape = Some(shape);
        self
    }
}
