//! Patterns that can be read and lie anywhere within the limits of their keys.
//!
//! The text is written from the declarations of the keys, so that a key that is new is tried without
//! another word here. Only the mould and the maker's own stock are written with a purpose: it is they that
//! decide whether a wall narrows, closes, lies level or turns back.

use basket::Catalogue;
use basket::pattern::keys::{self, Contents, Declared, Takes, Usual, course, note};
use basket::pattern::{WeaveKind, read};
use basket::stock::Kind;

use crate::values::Values;

/// How often a section that cannot be read is written anew before it is left out.
const TRIES: u32 = 30;

/// The text of a readable pattern, another for each seed.
pub fn pattern(seed: u64) -> String {
    let mut writer = Writer { values: Values::of(seed), top: format!("title = \"Extreme {seed}\"\n") };
    let before_all = [&keys::MATERIALS as &dyn Declared, &keys::UNITS, &keys::LANGUAGE];
    for key in before_all {
        writer.add(key);
    }
    writer.mould();
    for key in keys::ALL {
        let written = ["title", "mould"].contains(&key.path());
        if !written && !before_all.iter().any(|before| before.path() == key.path()) {
            writer.add(*key);
        }
    }
    writer.top
}

/// Whether a key names a file, which a text alone does not bring.
fn is_of_file(key: &dyn Declared) -> bool {
    [course::CHART_FILE.path, note::PHOTO.path].contains(&key.path())
}

/// Whether the text can be read.
fn is_read(text: &str) -> bool {
    read(text, Catalogue::built_in()).is_ok()
}

struct Writer {
    values: Values,
    /// What is written so far; it can be read as soon as there is a mould.
    top: String,
}

impl Writer {
    /// Adds a key, unless chance leaves it out.
    fn add(&mut self, key: &dyn Declared) {
        if !self.is_wanted(key) {
            return;
        }
        for _ in 0..TRIES {
            let value = self.value(key);
            let text = format!("{}{} = {value}\n", self.top, key.name());
            // Before there is a mould, a plain one stands in for it.
            let mould = if self.top.contains("\nmould") {
                ""
            } else {
                "mould = { base = \"5 in\", rim = \"8 in\", height = \"4 in\" }\n"
            };
            if is_read(&format!("{text}{mould}")) {
                self.top = text;
                return;
            }
        }
    }

    fn is_wanted(&mut self, key: &dyn Declared) -> bool {
        match key.usual() {
            _ if is_of_file(key) => false,
            Usual::Needed => true,
            _ => self.values.is_full(),
        }
    }

    fn mould(&mut self) {
        loop {
            let mould = self.values.mould();
            let text = format!("{}mould = {mould}\n", self.top);
            if is_read(&text) {
                self.top = text;
                return;
            }
        }
    }

    /// A value as a file writes it.
    fn value(&mut self, key: &dyn Declared) -> String {
        match key.takes() {
            Takes::Section(contents) | Takes::Part(contents, None) => self.section(contents, None),
            Takes::Part(contents, Some(none)) => {
                if self.values.chance(0.2) {
                    format!("\"{none}\"")
                } else {
                    self.section(contents, None)
                }
            }
            Takes::Sections(list) => {
                let count = self.values.few(list.most);
                let courses = key.path() == keys::weave::COURSES.path;
                let each: Vec<String> = (0..count)
                    .map(|_| if courses { self.course() } else { self.section(list.each, None) })
                    .collect();
                format!("[{}]", each.join(", "))
            }
            Takes::Named(list) => {
                let each: Vec<String> = (0..self.values.few(list.most).min(12))
                    .map(|number| {
                        let kind = self.values.one_of(&Kind::ALL);
                        self.values.own(format!("own {number}"), kind);
                        format!("\"own {number}\" = {}", self.material(list.each, kind))
                    })
                    .collect();
                format!("{{ {} }}", each.join(", "))
            }
            takes => self.values.simple(&takes),
        }
    }

    /// A material of this kind whose size is given.
    fn material(&mut self, contents: Contents, kind: Kind) -> String {
        let place = Kind::ALL.iter().position(|one| *one == kind).unwrap_or_default();
        let Takes::Word(words) = keys::material::KIND.takes() else { return String::new() };
        let round = [Kind::RoundReed, Kind::Pin, Kind::Rivet, Kind::Burr].contains(&kind);
        let mut parts = vec![format!("kind = \"{}\"", words[place].word)];
        for key in contents.keys {
            let needed = match key.name() {
                "like" | "kind" => continue,
                "diameter" => round,
                "width" | "thickness" => !round,
                "length" => [Kind::Pin, Kind::Rivet].contains(&kind),
                _ => self.values.is_full(),
            };
            let size = ["diameter", "width", "thickness"].contains(&key.name());
            if needed || !size && self.values.chance(0.1) {
                parts.push(format!("{} = {}", key.name(), self.value(*key)));
            }
        }
        format!("{{ {} }}", parts.join(", "))
    }

    /// A course that can be read by itself on this mould.
    fn course(&mut self) -> String {
        for _ in 0..TRIES {
            let kind = self.values.weave();
            let course = self.section(course::CONTENTS, Some(kind));
            let text = format!("{}weave = {{ courses = [{course}] }}\n", self.top);
            if is_read(&text) {
                return course;
            }
        }
        "{ weaver = \"cane fine\", rows = 4 }".to_owned()
    }

    /// A section in braces; of keys that say one thing in two ways those of one way.
    fn section(&mut self, contents: Contents, weave: Option<WeaveKind>) -> String {
        let mut shut = Vec::new();
        let mut needed = Vec::new();
        for either in contents.either {
            let names_file = |way: usize| either.ways[way].iter().any(|key| is_of_file(*key));
            let way = usize::from(self.values.chance(0.5) && !names_file(1));
            shut.extend(either.ways[1 - way].iter().map(|key| key.path()));
            if either.is_needed {
                needed.extend(either.ways[way].iter().map(|key| key.path()));
            }
        }
        let mut parts = Vec::new();
        for key in contents.keys {
            if shut.contains(&key.path()) || weave.is_some_and(|weave| !(key.fits().with)(weave)) {
                continue;
            }
            if key.path() == course::WEAVE.path {
                parts.extend(weave.map(|weave| format!("weave = \"{weave}\"")));
            } else if needed.contains(&key.path()) || self.is_wanted(*key) {
                parts.push(format!("{} = {}", key.name(), self.value(*key)));
            }
        }
        format!("{{ {} }}", parts.join(", "))
    }
}
