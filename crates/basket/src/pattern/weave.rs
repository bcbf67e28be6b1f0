//! The weaving of a pattern as values.

use serde::{Serialize, Serializer};

use super::drawn::Drawn;
use super::rule::Rule;
use super::word::words;
use crate::colour::Colour;
use crate::measure::Length;
use crate::message::{Message, Term};
use crate::stock::Material;

/// The weaving.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct WeavePattern {
    /// Courses from the base upward; empty: chosen.
    pub courses: Vec<CoursePattern>,
    /// Share of its height that fresh weaving loses when it dries and is packed down.
    pub shrink: Option<f64>,
    /// How many staves a weaver may pass without changing sides.
    pub float_staves: Option<u32>,
    /// How many rows a stave may lie bare, or hidden, on one side.
    pub float_rows: Option<u32>,
}

/// A run of rows in one weave.
#[derive(Clone, Debug, PartialEq)]
pub struct CoursePattern {
    /// The weave.
    pub weave: WeaveKind,
    /// The first weaver, and the only material unless there are others.
    pub weaver: Material,
    /// The weavers after the first, where they are named one by one; else all are of the first's.
    pub others: Vec<Material>,
    /// For each weaver the colours of its strands, in order and then again; empty: natural.
    pub colours: Vec<Vec<Colour>>,
    /// Lengths of the first strands, in the order in which they are used; then the material's own.
    pub strands: Vec<Length>,
    /// One row running on into the next, or each row by itself.
    pub way: Option<Way>,
    /// To which side the diagonal of a twill climbs.
    pub lean: Option<Lean>,
    /// By how many staves each row of a twill that begins level is set off from the one below.
    pub step: Option<u32>,
    /// Rows of a reversed twill before it turns.
    pub band: Option<u32>,
    /// Whether each round ends with a step up, so that the next begins level.
    pub step_up: bool,
    /// Stave, counted from 1, at which the first row begins.
    pub start: Option<u32>,
    /// A weave drawn by hand.
    pub chart: Option<Drawn>,
    /// Name of a file that holds the drawing, to be loaded into `chart` by whoever read the pattern.
    pub chart_file: Option<String>,
    /// How many of the first rows are woven with the weaver doubled.
    pub doubled: u32,
    /// Where the course ends.
    pub until: Until,
    /// Row pitch as a share of the weaver's width (packing), as a test strip shows it; 1 is edge to edge.
    pub packing: Option<f64>,
    /// Clear distance from row to row, where rows are spaced.
    pub spaced: Option<Length>,
}

impl CoursePattern {
    /// A course of one weaver of which only this is said.
    pub fn new(weave: WeaveKind, weaver: Material, until: Until) -> Self {
        Self {
            weave,
            weaver,
            others: Vec::new(),
            colours: Vec::new(),
            strands: Vec::new(),
            way: None,
            lean: None,
            step: None,
            band: None,
            step_up: false,
            start: None,
            chart: None,
            chart_file: None,
            doubled: 0,
            until,
            packing: None,
            spaced: None,
        }
    }

    /// How many weavers are at work at a time.
    pub fn weavers(&self) -> u32 {
        let named = (self.others.len() as u32 + 1).max(self.colours.len() as u32);
        match self.weave {
            WeaveKind::Plain
            | WeaveKind::Twill(_)
            | WeaveKind::ReversedTwill(_)
            | WeaveKind::SkipOne
            | WeaveKind::Drawn => 1,
            WeaveKind::Chase(_) | WeaveKind::Slew(_) => named.max(2),
            WeaveKind::Pairing => 2,
            WeaveKind::Wale(rods) => rods,
        }
    }

    /// The material of a weaver, counted from 0.
    pub fn material(&self, weaver: u32) -> &Material {
        let other = (weaver as usize).checked_sub(1).and_then(|index| self.others.get(index));
        other.unwrap_or(&self.weaver)
    }

    /// All materials, the first weaver's first.
    pub fn materials(&self) -> impl Iterator<Item = &Material> {
        std::iter::once(&self.weaver).chain(&self.others)
    }
}

/// A weave.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WeaveKind {
    /// Over one, under one.
    Plain,
    /// Over some, under some.
    Twill(Rule),
    /// A twill that leans one way for a band of rows and then the other.
    ReversedTwill(Rule),
    /// Two or three weavers that follow each other round, each with its own row.
    Chase(Rule),
    /// Two weavers twisted round each stave.
    Pairing,
    /// Three, four or five weavers: each passes in front of all staves of its repeat but one.
    Wale(u32),
    /// Two or more weavers laid side by side as one.
    Slew(Rule),
    /// Over one, under one on an even count, over two once a round.
    SkipOne,
    /// Drawn by hand.
    Drawn,
}

impl WeaveKind {
    /// Whether only one weaver is at work at a time.
    pub const fn is_of_one(self) -> bool {
        !matches!(self, Self::Chase(_) | Self::Slew(_) | Self::Pairing | Self::Wale(_))
    }
    /// Whether several weavers are at work.
    pub const fn has_several(self) -> bool {
        !self.is_of_one()
    }
    /// Whether a maker chooses how rows follow each other.
    pub const fn has_way(self) -> bool {
        !matches!(self, Self::ReversedTwill(_) | Self::Chase(_) | Self::SkipOne)
    }
    /// Whether its diagonal may lean either way.
    pub const fn leans(self) -> bool {
        matches!(self, Self::Twill(_) | Self::Slew(_))
    }
    /// Whether its diagonal turns after a band of rows.
    pub const fn turns(self) -> bool {
        matches!(self, Self::ReversedTwill(_))
    }
    /// Whether its rounds may end with a step up.
    pub const fn steps_up(self) -> bool {
        !matches!(self, Self::Chase(_) | Self::SkipOne | Self::Drawn)
    }
    /// Whether it is drawn by hand.
    pub const fn is_drawn(self) -> bool {
        matches!(self, Self::Drawn)
    }
}

impl std::fmt::Display for WeaveKind {
    /// As a pattern file says it.
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let with = |f: &mut std::fmt::Formatter<'_>, word: &str, rule: Rule| {
            if rule == Rule::PLAIN { write!(f, "{word}") } else { write!(f, "{word} twill {rule}") }
        };
        match *self {
            Self::Plain => write!(f, "plain"),
            Self::Twill(rule) => write!(f, "twill {rule}"),
            Self::ReversedTwill(rule) => write!(f, "reversed twill {rule}"),
            Self::Chase(rule) => with(f, "chase", rule),
            Self::Slew(rule) => with(f, "slew", rule),
            Self::Pairing => write!(f, "pairing"),
            Self::Wale(rods) => write!(f, "wale {rods}"),
            Self::SkipOne => write!(f, "skip one"),
            Self::Drawn => write!(f, "drawn"),
        }
    }
}

impl Serialize for WeaveKind {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

/// How one row follows the other.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Way {
    /// The weaver runs on from row to row.
    Continuous,
    /// Each row is its own piece, begun and ended by itself.
    RowByRow,
}

words! { Way:
    Continuous = "continuous", "way-continuous";
    RowByRow = "row by row", "way-row-by-row";
}

/// To which side a diagonal climbs, seen from outside.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Lean {
    /// Up to the left.
    Left,
    /// Up to the right.
    Right,
}

words! { Lean:
    Left = "left", "lean-left";
    Right = "right", "lean-right";
}

impl Lean {
    /// The other side.
    #[must_use]
    pub const fn other(self) -> Self {
        match self {
            Self::Left => Self::Right,
            Self::Right => Self::Left,
        }
    }
}

/// Where a course ends.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Until {
    /// After this many rows.
    Rows(u32),
    /// At this height above the mould's base.
    Height(Length),
    /// This far below the mould's top.
    BelowTop(Length),
}

impl Term for WeaveKind {
    fn term(self) -> &'static str {
        match self {
            Self::Plain => "weave-plain",
            Self::Twill(_) => "weave-twill",
            Self::ReversedTwill(_) => "weave-reversed-twill",
            Self::Chase(rule) if rule == Rule::PLAIN => "weave-chase",
            Self::Chase(_) => "weave-chase-twill",
            Self::Slew(rule) if rule == Rule::PLAIN => "weave-slew",
            Self::Slew(_) => "weave-slew-twill",
            Self::Pairing => "weave-pairing",
            Self::Wale(3) => "weave-wale-3",
            Self::Wale(4) => "weave-wale-4",
            Self::Wale(_) => "weave-wale-5",
            Self::SkipOne => "weave-skip-one",
            Self::Drawn => "weave-drawn",
        }
    }
}

impl WeaveKind {
    /// Its name, with over and under where they belong to it.
    pub fn name(self) -> Message {
        let name = Message::new(self.term());
        match self {
            Self::Twill(rule) | Self::ReversedTwill(rule) | Self::Chase(rule) | Self::Slew(rule) => {
                name.with("over", rule.over()).with("under", rule.under())
            }
            _ => name,
        }
    }
}

impl WeaveKind {
    /// The rule by which one weaver of this weave goes over and under; over one, under one for a
    /// weave drawn by hand.
    pub const fn rule(self) -> Rule {
        match self {
            Self::Plain | Self::Pairing | Self::SkipOne | Self::Drawn => Rule::PLAIN,
            Self::Twill(rule) | Self::ReversedTwill(rule) | Self::Chase(rule) | Self::Slew(rule) => rule,
            Self::Wale(rods) => Rule::new(rods.saturating_sub(1), 1),
        }
    }
}
