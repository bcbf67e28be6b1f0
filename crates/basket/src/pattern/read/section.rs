//! One table of the file, read key by key; whatever is wrong is noted and reading goes on.

use std::ops::Range;

use toml::Spanned;
use toml::de::{DeTable, DeValue};

use super::context::Context;
use super::problem::Fault;
use super::raw::{type_name, type_term};
use super::text::{Text, nearest, shorten};
use crate::pattern::keys::{Contents, Declared, Either, Key, Writable};

/// A value that is read where a key holds it.
pub(super) trait Read: Writable + Sized {
    /// The value under a key; what is wrong with it is noted.
    fn read(section: &Section, key: &Key<Self>, value: &Spanned<DeValue<'_>>) -> Option<Self>;
}

/// A table of the file, and the key whose section it is.
pub(super) struct Section<'s, 'd> {
    pub(super) context: Context<'s>,
    path: &'static str,
    table: &'s DeTable<'d>,
    span: Range<usize>,
}

impl<'s, 'd> Section<'s, 'd> {
    /// Opens a table that stands under a key, and notes what the key does not know.
    pub(super) fn open(
        context: Context<'s>,
        key: &dyn Declared,
        table: &'s DeTable<'d>,
        span: Range<usize>,
    ) -> Self {
        let section = Self { context, path: key.path(), table, span };
        section.check_keys(key.takes().contents());
        section
    }

    fn check_keys(&self, contents: Contents) {
        let known = names(contents);
        for key in self.table.keys() {
            let word: &str = key.get_ref();
            if !known.contains(&word) {
                let near = nearest(word, known.iter().copied());
                let help = match near {
                    Some(near) => format!("did you mean `{near}`?"),
                    None => format!("known here: {}", known.join(", ")),
                };
                let name = match self.path {
                    "" => shorten(word),
                    path => format!("{path}.{}", shorten(word)),
                };
                let fault = Fault::new("problem-key", format!("`{name}` is not a known key"));
                self.context.problem(key.span(), fault.with("written", shorten(word)).near(near), help);
            }
        }
    }

    /// The same table with more known before it is read.
    pub(super) fn with_context(self, context: Context<'s>) -> Self {
        Self { context, ..self }
    }

    pub(super) fn has(&self, key: &dyn Declared) -> bool {
        self.table.contains_key(key.name())
    }

    pub(super) fn value(&self, key: &dyn Declared) -> Option<&'s Spanned<DeValue<'d>>> {
        self.table.get(key.name())
    }

    /// The value under a key.
    pub(super) fn get<T: Read>(&self, key: &Key<T>) -> Option<T> {
        T::read(self, key, self.value(key)?)
    }

    /// The value under a key, else the usual one.
    pub(super) fn get_or_usual<T: Read<Usual = T> + Default>(&self, key: &Key<T>) -> T {
        self.get(key).or(key.constant()).unwrap_or_default()
    }

    /// The text under a key.
    pub(super) fn text(&self, key: &dyn Declared) -> Option<Text<'s>> {
        self.context.text(key.path(), self.value(key)?)
    }

    /// Notes something wrong with the value of a key (or with the section when the key is absent).
    pub(super) fn problem(&self, key: &dyn Declared, fault: Fault, help: impl Into<String>) {
        let span = self.value(key).map_or(self.span.clone(), Spanned::span);
        self.context.problem(span, fault, help);
    }

    /// Notes something wrong with the section itself.
    pub(super) fn problem_here(&self, fault: Fault, help: impl Into<String>) {
        self.context.problem(self.span.clone(), fault, help);
    }

    /// Notes a key that must not be left out.
    pub(super) fn missing(&self, key: &dyn Declared, example: &str) {
        let fault = Fault::new("problem-missing", format!("`{}` is missing", key.path()));
        self.problem_here(fault.with("key", key.path()), format!("write {example}"));
    }

    /// Notes these keys where they are left out.
    pub(super) fn need(&self, keys: &[&dyn Declared]) {
        for key in keys.iter().filter(|key| !self.has(**key)) {
            self.missing(*key, &format!("{} = {}", key.name(), key.example()));
        }
    }

    /// For each of two ways, the first of its keys that stands here.
    pub(super) fn ways(&self, either: &Either) -> [Option<&'static dyn Declared>; 2] {
        either.ways.map(|keys| keys.iter().copied().find(|key| self.has(*key)))
    }

    /// For each of two ways, whether the section goes it; both is a problem.
    pub(super) fn one_way(&self, either: &Either) -> [bool; 2] {
        let ways = self.ways(either);
        if let ([Some(one), Some(other)], Some(help)) = (ways, either.help) {
            let message = format!("`{}` has both {} and {}", self.path, one.name(), other.name());
            let fault =
                Fault::new("problem-both", message).with("key", one.path()).with("other", other.path());
            self.problem(other, fault, help);
        }
        ways.map(|way| way.is_some())
    }

    /// A table inside this one.
    pub(super) fn section(&self, key: &dyn Declared) -> Option<Self> {
        let value = self.value(key)?;
        if let DeValue::Table(table) = value.get_ref() {
            return Some(Self::open(self.context, key, table, value.span()));
        }
        let message = format!("`{}` must be a section, not {}", key.path(), type_name(value.get_ref()));
        let name = key.name();
        let help = if self.path.is_empty() {
            format!("write [{name}] on a line of its own and its keys below")
        } else {
            let keys = names(key.takes().contents()).join(" = …, ");
            format!("write {name} in braces: {name} = {{ {keys} = … }}")
        };
        let fault = Fault::new("problem-not-section", message).with("found", type_term(value.get_ref()));
        self.problem(key, fault, help);
        None
    }

    /// A list of at most this many values.
    pub(super) fn list(&self, key: &dyn Declared, most: usize) -> Option<&'s [Spanned<DeValue<'d>>]> {
        list(self.context, key, self.value(key)?, most)
    }
}

/// A list of at most this many values, where a key holds it.
pub(super) fn list<'s, 'd>(
    context: Context,
    key: &dyn Declared,
    value: &'s Spanned<DeValue<'d>>,
    most: usize,
) -> Option<&'s [Spanned<DeValue<'d>>]> {
    let path = key.path();
    let Some(list) = value.get_ref().as_array() else {
        let message = format!("`{path}` must be a list, not {}", type_name(value.get_ref()));
        let fault = Fault::new("problem-not-list", message).with("found", type_term(value.get_ref()));
        context.problem(value.span(), fault, "write a list in square brackets");
        return None;
    };
    if list.len() > most {
        let message = format!("`{path}` has {} entries", list.len());
        let fault = Fault::new("problem-many", message).count(list.len()).with("most", most as u32);
        context.problem(value.span(), fault, format!("at most {most} are read"));
        return None;
    }
    Some(list.as_ref())
}

fn names(contents: Contents) -> Vec<&'static str> {
    contents.keys.iter().map(|key| key.name()).collect()
}
