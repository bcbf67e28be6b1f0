//! What is said of every key of the pattern file, whatever it holds.

use super::group::Group;
use super::limits::{Counts, Lengths, ListOf, Shares, Texts};
use crate::message::Value;
use crate::pattern::WeaveKind;
use crate::stock::Kind;

/// A key of the pattern file, whatever it holds.
pub trait Declared: Sync {
    /// The way to it from the top of the file, such as `base.groove.depth`. A list on the way is passed
    /// over: `weave.courses.rows`.
    fn path(&self) -> &'static str;
    /// Which values it takes.
    fn takes(&self) -> Takes;
    /// What stands in its place where it is left out.
    fn usual(&self) -> Usual<Value>;
    /// A value, as a file writes it.
    fn example(&self) -> &'static str;
    /// The group that it brings into the form, for itself and for all keys within it.
    fn group(&self) -> Option<Group>;
    /// In courses of which weaves it makes sense.
    fn fits(&self) -> Fits;

    /// Its name within its section.
    fn name(&self) -> &'static str {
        let path = self.path();
        path.rsplit_once('.').map_or(path, |(_, name)| name)
    }

    /// Identifier of its name in the message files: `key-base-groove-depth`. What the key is stands there
    /// as the attribute `about`.
    fn label(&self) -> String {
        format!("key-{}", self.path().replace('.', "-"))
    }
}

/// Which values a key takes.
#[derive(Clone, Debug)]
pub enum Takes {
    /// A text.
    Text(Texts),
    /// A length.
    Length(Lengths),
    /// A whole number.
    Count(Counts),
    /// A share of one, in percent or as a plain number.
    Share(Shares),
    /// Whole minutes up to these: one number, or the shortest and longest time.
    Minutes(u32),
    /// `true` or `false`.
    Flag,
    /// One of a few words.
    Word(Vec<Known>),
    /// A list of a few words, or one of them.
    Words(Vec<Known>),
    /// The word for a weave, perhaps with its figures.
    Weave,
    /// A place on the mould at which a course ends.
    End,
    /// A material of one of these kinds.
    Material(&'static [Kind]),
    /// A list of such materials.
    Materials(ListOf<&'static [Kind]>),
    /// A wood of the catalogue.
    Wood,
    /// A wood of the catalogue, or a list of at most so many.
    Woods(usize),
    /// One colour, or a list of at most so many.
    Colours(usize),
    /// One colour, or a list with a colour, or a list of colours, for each weaver.
    WeaverColours(ListOf<usize>),
    /// A list of lengths.
    Lengths(ListOf<Lengths>),
    /// A list of pairs of a height and what was measured there, of at most so many.
    Pairs(usize),
    /// A weave drawn in at most so many rows of signs.
    Chart(usize),
    /// A section.
    Section(Contents),
    /// A section that makes a part of the basket be there; where it has one, the word that takes the part
    /// away stands in its place.
    Part(Contents, Option<&'static str>),
    /// A list of sections.
    Sections(ListOf<Contents>),
    /// At most so many sections under names of the maker's own.
    Named(ListOf<Contents>),
    /// At most so many colours under names of the maker's own.
    OwnColours(usize),
}

impl Takes {
    /// What stands in the section, or in each of the sections, that it takes.
    pub const fn contents(&self) -> Contents {
        match self {
            Self::Section(contents) | Self::Part(contents, _) => *contents,
            Self::Sections(list) | Self::Named(list) => list.each,
            _ => Contents::NONE,
        }
    }
}

/// A word that a key takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Known {
    /// As a file writes it.
    pub word: &'static str,
    /// Identifier of its name in the message files.
    pub term: &'static str,
}

/// What stands in a section.
#[derive(Clone, Copy)]
pub struct Contents {
    /// Its keys, in the order of the form.
    pub keys: &'static [&'static dyn Declared],
    /// Keys of which one stands for the other.
    pub either: &'static [Either],
}

impl Contents {
    const NONE: Self = Self::of(&[]);

    /// These keys.
    pub const fn of(keys: &'static [&'static dyn Declared]) -> Self {
        Self { keys, either: &[] }
    }
}

impl std::fmt::Debug for Contents {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_list().entries(self.keys.iter().map(|key| key.path())).finish()
    }
}

/// Two ways to say one thing, each with keys of its own.
#[derive(Clone, Copy)]
pub struct Either {
    /// The keys of each way.
    pub ways: [&'static [&'static dyn Declared]; 2],
    /// Whether one of them is needed.
    pub is_needed: bool,
    /// What mends a file that goes both ways; none where it may.
    pub help: Option<&'static str>,
    /// Keys of a way that it does not need in all patterns.
    pub may_lack: &'static [&'static str],
}

/// What stands in the place of a value that is left out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Usual<U> {
    /// Nothing can: it must be written.
    Needed,
    /// This, whatever the basket.
    Constant(U),
    /// What suits the basket; the message of this identifier says what that is.
    Computed(&'static str),
    /// Nothing does; the message of this identifier says what that means.
    Nothing(&'static str),
}

/// In courses of which weaves a key makes sense.
#[derive(Clone, Copy, Debug)]
pub struct Fits {
    /// Whether it does with this weave.
    pub with: fn(WeaveKind) -> bool,
    /// What it belongs to, where it is refused with other weaves.
    pub only: Option<&'static str>,
}

impl Fits {
    /// In all courses.
    pub const ALL: Self = Self { with: |_| true, only: None };
}
