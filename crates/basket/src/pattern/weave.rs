//! The weaving of a pattern as values.

use serde::{Serialize, Serializer};

use super::direction::Direction;
use super::drawn::Drawn;
use super::face::CaneFace;
use super::lean::Lean;
use super::rule::Rule;
use super::word::words;
use crate::colour::Colour;
use crate::measure::Length;
use crate::message::Message;
use crate::stock::Material;
use crate::term::Term;

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
    /// To which side the weaver runs.
    pub direction: Option<Direction>,
    /// Which face of the cane looks out in the first rows.
    pub first_face: Option<CaneFace>,
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
    /// The course as it is woven: what is told by its look is turned over where the weaver runs to the left.
    pub(crate) fn toward(&self, direction: Direction) -> Self {
        let mut course = self.clone();
        if direction == Direction::Left {
            course.lean = course.lean.map(Lean::other);
            course.chart = course.chart.map(Drawn::mirrored);
        }
        course
    }

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
        let about = self.weave.about();
        let named = (self.others.len() as u32 + 1).max(self.colours.len() as u32);
        if about.more { named.max(about.weavers) } else { about.weavers }
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

/// What stands behind the word for a weave.
#[derive(Clone, Copy)]
enum Figures {
    None,
    Rule(Rule),
    Rods(u32),
}

/// What a pattern can say of a weave.
struct About {
    /// Its word in a pattern, and what stands behind it.
    word: &'static str,
    figures: Figures,
    /// Its name in the message files.
    term: &'static str,
    /// How many weavers are at work at a time, and whether a pattern may name more.
    weavers: u32,
    more: bool,
    /// How rows follow each other, where a maker has no choice.
    only_way: Option<Way>,
    /// Whether rounds may end with a step up.
    steps_up: bool,
}

impl About {
    const fn one(word: &'static str, term: &'static str) -> Self {
        Self { word, figures: Figures::None, term, weavers: 1, more: false, only_way: None, steps_up: true }
    }
}

impl WeaveKind {
    /// Over one, under one where the rule is that, else a twill.
    pub(crate) fn of(rule: Rule) -> Self {
        if rule == Rule::PLAIN { Self::Plain } else { Self::Twill(rule) }
    }

    const fn about(self) -> About {
        use Figures::{None, Rods};
        match self {
            Self::Plain => About::one("plain", "weave-plain"),
            Self::Twill(rule) => About { figures: Figures::Rule(rule), ..About::one("twill", "weave-twill") },
            Self::ReversedTwill(rule) => About {
                figures: Figures::Rule(rule),
                only_way: Some(Way::RowByRow),
                ..About::one("reversed twill", "weave-reversed-twill")
            },
            Self::Chase(rule) => {
                let (word, term, figures) = if rule.is_plain() {
                    ("chase", "weave-chase", None)
                } else {
                    ("chase twill", "weave-chase-twill", Figures::Rule(rule))
                };
                let only_way = Some(Way::Continuous);
                About { figures, weavers: 2, more: true, only_way, steps_up: false, ..About::one(word, term) }
            }
            Self::Slew(rule) => {
                let (word, term, figures) = if rule.is_plain() {
                    ("slew", "weave-slew", None)
                } else {
                    ("slew twill", "weave-slew-twill", Figures::Rule(rule))
                };
                About { figures, weavers: 2, more: true, ..About::one(word, term) }
            }
            Self::Pairing => About { weavers: 2, ..About::one("pairing", "weave-pairing") },
            Self::Wale(rods) => {
                let term = match rods {
                    3 => "weave-wale-3",
                    4 => "weave-wale-4",
                    _ => "weave-wale-5",
                };
                About { figures: Rods(rods), weavers: rods, ..About::one("wale", term) }
            }
            Self::SkipOne => About {
                only_way: Some(Way::Continuous),
                steps_up: false,
                ..About::one("skip one", "weave-skip-one")
            },
            Self::Drawn => About { steps_up: false, ..About::one("drawn", "weave-drawn") },
        }
    }

    /// Whether only one weaver is at work at a time.
    pub const fn is_of_one(self) -> bool {
        self.about().weavers == 1
    }
    /// Whether several weavers are at work.
    pub const fn has_several(self) -> bool {
        !self.is_of_one()
    }
    /// How rows follow each other, where a maker has no choice: a weaver that runs on leans only one way, and
    /// weavers that chase, or skip a stave, run on.
    pub const fn only_way(self) -> Option<Way> {
        self.about().only_way
    }
    /// Whether a maker chooses how rows follow each other.
    pub const fn has_way(self) -> bool {
        self.only_way().is_none()
    }
    /// Whether its diagonal may lean either way.
    pub const fn leans(self) -> bool {
        matches!(self, Self::Twill(_) | Self::Slew(_))
    }
    /// Whether it is woven for its diagonal: over one, under one has none.
    pub const fn has_diagonal(self) -> bool {
        matches!(self, Self::Twill(rule) | Self::Slew(rule) if !rule.is_plain())
    }
    /// Whether its diagonal turns after a band of rows.
    pub const fn turns(self) -> bool {
        matches!(self, Self::ReversedTwill(_))
    }
    /// Whether its rounds may end with a step up.
    pub const fn steps_up(self) -> bool {
        self.about().steps_up
    }
    /// Whether it is drawn by hand.
    pub const fn is_drawn(self) -> bool {
        matches!(self, Self::Drawn)
    }

    /// The same with weavers that chase each other, for one weaver that goes over some and under some.
    pub const fn chased(self) -> Option<Self> {
        match self {
            Self::Plain => Some(Self::Chase(Rule::PLAIN)),
            Self::Twill(rule) => Some(Self::Chase(rule)),
            _ => None,
        }
    }
    /// The same with one weaver, for weavers that chase each other.
    pub fn of_one(self) -> Option<Self> {
        if let Self::Chase(rule) = self { Some(Self::of(rule)) } else { None }
    }

    /// The same with floats over and under at most so many staves; none where it has none of its own.
    pub fn shortened(self, most: u32) -> Option<Self> {
        let short = |rule: Rule| Rule::new(rule.over().min(most), rule.under().min(most));
        match self {
            Self::Twill(rule) => Some(Self::of(short(rule))),
            Self::ReversedTwill(rule) => Some(Self::ReversedTwill(short(rule))),
            Self::Chase(rule) => Some(Self::Chase(short(rule))),
            Self::Slew(rule) => Some(Self::Slew(short(rule))),
            _ => None,
        }
    }

    /// Its name, with over and under where they belong to it.
    pub fn name(self) -> Message {
        let name = Message::new(self.term());
        match self.about().figures {
            Figures::Rule(rule) => name.with("over", rule.over()).with("under", rule.under()),
            _ => name,
        }
    }
}

impl std::fmt::Display for WeaveKind {
    /// As a pattern file says it.
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let about = self.about();
        match about.figures {
            Figures::None => write!(f, "{}", about.word),
            Figures::Rule(rule) => write!(f, "{} {rule}", about.word),
            Figures::Rods(rods) => write!(f, "{} {rods}", about.word),
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
        self.about().term
    }
}
