//! What is said of the keys of a pattern file.

use basket::message::Value;
use basket::pattern::keys::{Declared, Known, Takes, Texts, Usual};
use basket::stock::Kind;

use crate::Words;

/// A key of the pattern file as sentences.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct KeyText {
    /// Its name on a form.
    pub name: String,
    /// What it is.
    pub about: String,
    /// What it takes.
    pub takes: String,
    /// What stands in its place where it is left out.
    pub left_out: String,
}

impl Words {
    /// A key of the pattern file.
    pub fn key(&self, key: &dyn Declared) -> KeyText {
        let label = key.label();
        KeyText {
            name: self.term(&label),
            about: self.term(&format!("{label}.about")),
            takes: self.takes(&key.takes()),
            left_out: match key.usual() {
                Usual::Needed => self.term("usual-needed"),
                Usual::Constant(usual) => self.usual(&usual),
                Usual::Computed(id) | Usual::Nothing(id) => self.term(id),
            },
        }
    }

    /// Words of the file stand in the marks that set off code.
    fn usual(&self, usual: &Value) -> String {
        match usual {
            Value::Name(word) => format!("`{word}`"),
            Value::Length(length) => self.both(*length),
            other => self.value(other),
        }
    }

    fn takes(&self, takes: &Takes) -> String {
        let most = |id, most: usize| self.with(id, &[("most", Value::Count(most as i64))]);
        let between = |id, least, most| self.with(id, &[("least", least), ("most", most)]);
        match takes {
            Takes::Text(Texts::Line) => self.term("takes-line"),
            Takes::Text(Texts::Paragraphs(longest)) => most("takes-paragraphs", *longest),
            Takes::Text(Texts::Photo) => self.term("takes-photo"),
            Takes::Length(_) => self.term("takes-length"),
            Takes::Count(counts) => between("takes-count", counts.least.into(), counts.most.into()),
            Takes::Share(shares) => {
                between("takes-share", Value::Percent(shares.least), Value::Percent(shares.most))
            }
            Takes::Minutes(_) => self.term("takes-minutes"),
            Takes::Flag => self.term("takes-flag"),
            Takes::Word(known) => self.with("takes-word", &[("words", quoted(known))]),
            Takes::Words(known) => self.with("takes-words", &[("words", quoted(known))]),
            Takes::Weave => self.term("takes-weave"),
            Takes::End => self.term("takes-end"),
            Takes::Material(kinds) if kinds.len() == Kind::ALL.len() => self.term("takes-any-material"),
            Takes::Material(kinds) => self.with("takes-material", &[("kinds", self.kinds(kinds))]),
            Takes::Materials(list) => {
                let most = Value::Count(list.most as i64);
                self.with("takes-materials", &[("most", most), ("kinds", self.kinds(list.each))])
            }
            Takes::Wood => self.term("takes-wood"),
            Takes::Woods(longest) => most("takes-woods", *longest),
            Takes::Colours(longest) => most("takes-colours", *longest),
            Takes::WeaverColours(list) => most("takes-weaver-colours", list.most),
            Takes::Lengths(list) => most("takes-lengths", list.most),
            Takes::Pairs(longest) => most("takes-pairs", *longest),
            Takes::Chart(longest) => most("takes-chart", *longest),
            Takes::Section(_) | Takes::Part(_, None) => self.term("takes-section"),
            Takes::Part(_, Some(none)) => self.with("takes-part-or", &[("none", format!("`{none}`").into())]),
            Takes::Sections(list) => most("takes-sections", list.most),
            Takes::Named(list) => most("takes-named", list.most),
            Takes::OwnColours(longest) => most("takes-own-colours", *longest),
        }
    }

    fn kinds(&self, kinds: &[Kind]) -> Value {
        let names: Vec<String> = kinds.iter().map(|kind| self.name(*kind)).collect();
        names.join(", ").into()
    }
}

fn quoted(known: &[Known]) -> Value {
    let words: Vec<String> = known.iter().map(|known| format!("`{}`", known.word)).collect();
    words.join(", ").into()
}
