//! Every value that a pattern may hold, with what it takes: what a form of a pattern is made of.

use std::ops::RangeInclusive;

use super::course::WEAVES;
use super::words::{self, FILLER_KINDS, LASHING_KINDS, RIM_KINDS, STAVE_KINDS, WEAVER_KINDS};
use crate::measure::Length;
use crate::message::Term;
use crate::pattern::WeaveKind;
use crate::stock::Kind;

/// Values that are thought of together, in making order.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Group {
    /// The basket as a whole.
    Basket,
    /// The mould.
    Mould,
    /// The base.
    Base,
    /// The staves.
    Staves,
    /// The weaving.
    Weave,
    /// The rim, its filler and its pins.
    Rim,
    /// The lashing.
    Lashing,
    /// Ears and handle.
    Handle,
    /// The finish.
    Finish,
}

impl Group {
    /// All groups in making order.
    pub const ALL: [Self; 9] = [
        Self::Basket,
        Self::Mould,
        Self::Base,
        Self::Staves,
        Self::Weave,
        Self::Rim,
        Self::Lashing,
        Self::Handle,
        Self::Finish,
    ];

    /// Its name in data.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Basket => "basket",
            Self::Mould => "mould",
            Self::Base => "base",
            Self::Staves => "staves",
            Self::Weave => "weave",
            Self::Rim => "rim",
            Self::Lashing => "lashing",
            Self::Handle => "handle",
            Self::Finish => "finish",
        }
    }
}

/// A word that a pattern may use, and the identifier of its name in the message files.
pub type Word = (&'static str, &'static str);

/// What a value is.
#[derive(Clone, Debug)]
pub enum FieldKind {
    /// A text.
    Text,
    /// A length, which usually lies within these millimetres (common practice; any other is read too).
    Length(RangeInclusive<f64>),
    /// A whole number, which usually lies within these (common practice).
    Count(RangeInclusive<u32>),
    /// A share in percent.
    Share,
    /// One of a few words.
    Word(fn() -> Vec<Word>),
    /// The word for a weave, perhaps with its figures.
    Weave,
    /// A material of one of these kinds.
    Material(&'static [Kind]),
    /// A list of such materials.
    Materials(&'static [Kind]),
    /// A wood for bases.
    Wood,
    /// One colour or a list.
    Colours,
    /// A list of lengths.
    Lengths,
    /// A weave drawn in rows of signs.
    Chart,
    /// `true` or `false`.
    Flag,
    /// A whole section that is there or not; its keys have fields of their own.
    Part,
}

/// One value of a pattern.
#[derive(Clone, Debug)]
pub struct Field {
    /// Its key, such as `base.groove.depth`.
    pub path: &'static str,
    /// Where it belongs.
    pub group: Group,
    /// What it is.
    pub kind: FieldKind,
}

impl Field {
    /// Identifier of its name in the message files.
    pub fn label(&self) -> String {
        label(self.path)
    }
}

/// One value of a course.
#[derive(Clone, Debug)]
pub struct CourseField {
    /// Its key within the course.
    pub key: &'static str,
    /// What it is.
    pub kind: FieldKind,
    /// Whether courses of a weave may have it.
    pub fits: fn(WeaveKind) -> bool,
}

impl CourseField {
    /// Identifier of its name in the message files.
    pub fn label(&self) -> String {
        label(&format!("course.{}", self.key))
    }
}

/// Identifier of a value's name in the message files: `form-base-groove-depth`.
fn label(path: &str) -> String {
    format!("form-{}", path.replace('.', "-"))
}

fn terms<T: Term + Copy>(words: &[(&'static str, T)]) -> Vec<Word> {
    words.iter().map(|(word, meaning)| (*word, meaning.term())).collect()
}

const fn inches(from: f64, to: f64) -> FieldKind {
    FieldKind::Length(Length::inches(from).to_mm()..=Length::inches(to).to_mm())
}

/// The values of a pattern in making order; girths, courses, colours and materials are lists of
/// their own.
pub const FIELDS: &[Field] = &{
    use FieldKind::{Colours, Count, Material, Part, Share, Text, Wood, Word};
    use Group::{Base, Basket, Finish, Handle, Lashing, Mould, Rim, Staves, Weave};
    const fn field(group: Group, path: &'static str, kind: FieldKind) -> Field {
        Field { path, group, kind }
    }
    [
        field(Basket, "title", Text),
        field(Basket, "units", Word(|| terms(words::UNITS))),
        field(Basket, "language", Word(|| terms(words::LANGUAGE))),
        field(Mould, "mould.shape", Word(|| terms(words::SHAPE))),
        field(Mould, "mould.base", inches(2.0, 16.0)),
        field(Mould, "mould.rim", inches(2.0, 20.0)),
        field(Mould, "mould.height", inches(1.0, 16.0)),
        field(Mould, "mould.side", Word(|| terms(words::SIDE))),
        field(Base, "base.diameter", inches(2.0, 14.0)),
        field(Base, "base.thickness", inches(0.125, 1.0)),
        field(Base, "base.groove.depth", inches(0.0625, 0.75)),
        field(Base, "base.groove.width", inches(0.03125, 0.375)),
        field(Base, "base.wood", Wood),
        field(Base, "base.screw", inches(0.0625, 0.5)),
        field(Staves, "staves.count", Count(21..=151)),
        field(Staves, "staves.stock", Material(STAVE_KINDS)),
        field(Staves, "staves.width", inches(0.0625, 1.0)),
        field(Staves, "staves.gap", inches(0.015_625, 0.375)),
        field(Staves, "staves.taper.from", inches(0.0, 6.0)),
        field(Staves, "staves.taper.foot", inches(0.03125, 0.5)),
        field(Staves, "staves.length", inches(2.0, 20.0)),
        field(Staves, "staves.spares", Count(0..=30)),
        field(Staves, "staves.oval", Word(|| terms(words::OVAL))),
        field(Staves, "staves.colours", Colours),
        field(Weave, "weave.shrink", Share),
        field(Weave, "weave.float-staves", Count(1..=12)),
        field(Weave, "weave.float-rows", Count(1..=12)),
        field(Rim, "rim.stock", Material(RIM_KINDS)),
        field(Rim, "rim.inner", Material(RIM_KINDS)),
        field(Rim, "rim.lap", inches(0.5, 8.0)),
        field(Rim, "filler", Part),
        field(Rim, "filler.stock", Material(FILLER_KINDS)),
        field(Rim, "pins.stock", Material(&[Kind::Pin])),
        field(Rim, "pins.every", Word(|| terms(words::EVERY))),
        field(Lashing, "lashing.weaver", Material(LASHING_KINDS)),
        field(Lashing, "lashing.every", Word(|| terms(words::EVERY))),
        field(Lashing, "lashing.style", Word(|| terms(words::LASHING_STYLE))),
        field(Lashing, "lashing.tail", inches(0.5, 8.0)),
        field(Handle, "ears", Part),
        field(Handle, "ears.material", Word(|| terms(words::EAR_MATERIAL))),
        field(Handle, "ears.placing", Word(|| terms(words::EAR_PLACING))),
        field(Handle, "ears.width", inches(0.25, 2.0)),
        field(Handle, "ears.thickness", inches(0.015_625, 0.5)),
        field(Handle, "ears.hole", inches(0.0625, 2.0)),
        field(Handle, "ears.tail", inches(0.5, 6.0)),
        field(Handle, "handle", Part),
        field(Handle, "handle.curve", Word(|| terms(words::BAIL_CURVE))),
        field(Handle, "handle.rise", inches(1.0, 14.0)),
        field(Handle, "handle.corner", inches(0.5, 8.0)),
        field(Handle, "handle.width", inches(0.125, 1.5)),
        field(Handle, "handle.thickness", inches(0.0625, 0.75)),
        field(Handle, "handle.rivet", Material(&[Kind::Rivet])),
        field(Finish, "finish", Word(|| terms(words::FINISH))),
    ]
};

/// The values of a course.
pub const COURSE_FIELDS: &[CourseField] = &{
    use FieldKind::{Chart, Colours, Count, Flag, Lengths, Material, Materials, Share, Text, Weave, Word};
    const fn field(key: &'static str, kind: FieldKind, fits: fn(WeaveKind) -> bool) -> CourseField {
        CourseField { key, kind, fits }
    }
    const fn any(_: WeaveKind) -> bool {
        true
    }
    [
        field("weave", Weave, any),
        field("weaver", Material(WEAVER_KINDS), any),
        field("weavers", Materials(WEAVER_KINDS), WeaveKind::has_several),
        field("rows", Count(1..=60), any),
        field("until", Text, any),
        field("colours", Colours, any),
        field("way", Word(|| terms(words::WAY)), WeaveKind::has_way),
        field("lean", Word(|| terms(words::LEAN)), WeaveKind::leans),
        field("step", Count(1..=7), WeaveKind::leans),
        field("band", Count(1..=24), WeaveKind::turns),
        field("step-up", Flag, WeaveKind::steps_up),
        field("start", Count(1..=151), any),
        field("chart", Chart, WeaveKind::is_drawn),
        field("chart-file", Text, WeaveKind::is_drawn),
        field("doubled", Count(0..=12), WeaveKind::is_of_one),
        field("strands", Lengths, any),
        field("packing", Share, any),
        field("spaced", inches(0.015_625, 1.0), any),
    ]
};

/// The weaves that a course may name, each with the figures that most often follow it.
pub fn weaves() -> impl Iterator<Item = String> {
    let wales = ["wale 4", "wale 5"].map(str::to_owned);
    WEAVES.iter().map(|(word, figures)| format!("{word}{figures}")).chain(wales)
}

/// The weave of this name, such as `twill 2/1`.
pub fn weave(word: &str) -> Option<WeaveKind> {
    super::course::parse(word)
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::*;
    use crate::pattern::keys;

    /// Lists that are edited by other means than one field each.
    const LISTS: [&str; 5] = ["mould.girths", "weave.courses", "note", "colours", "materials"];

    fn sections() -> Vec<(&'static str, &'static [&'static str])> {
        vec![
            ("mould", keys::MOULD),
            ("base", keys::BASE),
            ("base.groove", keys::GROOVE),
            ("staves", keys::STAVES),
            ("staves.taper", keys::TAPER),
            ("weave", keys::WEAVE),
            ("rim", keys::RIM),
            ("filler", keys::FILLER),
            ("lashing", keys::LASHING),
            ("pins", keys::PINS),
            ("ears", keys::EARS),
            ("handle", keys::HANDLE),
        ]
    }

    #[test]
    fn every_key_has_a_field() {
        let sections = sections();
        let is_section = |path: &str| sections.iter().any(|(name, _)| *name == path);
        let mut keys: BTreeSet<String> = keys::PATTERN.iter().map(|key| (*key).to_owned()).collect();
        for (section, inner) in &sections {
            keys.extend(inner.iter().map(|key| format!("{section}.{key}")));
        }
        let fields: BTreeSet<String> = FIELDS.iter().map(|field| field.path.to_owned()).collect();
        let missing: Vec<&String> = keys
            .difference(&fields)
            .filter(|key| !is_section(key) && !LISTS.contains(&key.as_str()))
            // Whether there is a handle is asked by the field of its section.
            .filter(|key| *key != "handle.kind")
            .collect();
        assert!(missing.is_empty(), "{missing:?}");
        let unknown: Vec<&String> = fields.difference(&keys).collect();
        assert!(unknown.is_empty(), "{unknown:?}");
        let course: BTreeSet<&str> = COURSE_FIELDS.iter().map(|field| field.key).collect();
        assert_eq!(course, keys::COURSE.iter().copied().collect());
    }

    #[test]
    fn every_weave_on_offer_is_read() {
        for word in weaves() {
            let kind = weave(&word).unwrap_or_else(|| panic!("{word}"));
            assert_eq!(kind.to_string(), word);
        }
    }
}
