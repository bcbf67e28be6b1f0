//! A line of the cut list.

use crate::colour::Colour;
use crate::form::Across;
use crate::measure::Length;
use crate::message::{Message, Value};
use crate::pattern::EarMaterial;
use crate::piece::{Of, Piece};
use crate::stock::{Material, Wood};
use crate::term::Term;

/// What a piece is cut from.
#[derive(Clone, Debug, PartialEq)]
pub enum CutStock {
    /// A material of the catalogue or the shelf.
    Material(Material),
    /// A ring of this material, bought as such.
    Ring(Material),
    /// A wood.
    Wood(Wood),
    /// What ears are made of.
    Ear(EarMaterial),
    /// Strips of wood, side by side, that a base is glued up from.
    Strips(Vec<Wood>),
    /// Wood that bends to a bow.
    Bail,
    /// A bow that is bought bent.
    BoughtBow,
    /// Wood for turned knobs.
    Knob,
    /// A washer that fits this rivet, where no burr of its own is known.
    WasherFor(Material),
}

impl CutStock {
    /// Its name.
    pub fn name(&self) -> Value {
        match self {
            Self::Material(material) => material.into(),
            Self::Ring(stock) => Message::new("cut-ring-bought").with("stock", stock).into(),
            Self::Wood(wood) => wood.into(),
            Self::Ear(material) => Value::Term(material.term()),
            Self::Strips(woods) => Value::List(woods.iter().map(Value::from).collect()),
            Self::Bail => Value::Term("cut-bail-material"),
            Self::BoughtBow => Value::Term("cut-bow-material"),
            Self::Knob => Value::Term("cut-knob-material"),
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
    pub piece: Piece,
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
    pub(super) fn new(piece: Piece, stock: CutStock, count: u32, purpose: Message) -> Self {
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
    /// A disc: its diameter, or its length and width.
    pub(super) fn across(mut self, across: Across) -> Self {
        self.length = (!across.is_round()).then_some(across.length);
        self.width(across.width)
    }
    pub(super) fn shape(mut self, shape: Message) -> Self {
        self.shape = Some(shape);
        self
    }
}
