//! Reading `[colours]`, and lists of colour names.

use toml::Spanned;
use toml::de::DeValue;

use super::section::{Section, in_order, title_fault};
use super::text::{nearest, shorten};
use crate::colour::{BUILT_IN, Colour};

const MOST: usize = 100;

/// The colours that a pattern may name: its own, then the built-in ones.
pub(super) struct Palette(Vec<Colour>);

impl Palette {
    pub(super) fn read(file: &Section) -> Self {
        let mut own = Vec::new();
        if let Some(section) = file.value("colours") {
            match section.get_ref() {
                DeValue::Table(table) => {
                    for (name, span, value) in in_order(table).into_iter().take(MOST) {
                        if let Some(fault) = title_fault(name) {
                            let message = format!("the name of a colour {fault}");
                            file.context.problem(span, message, "write a short name, such as \"sea blue\"");
                            continue;
                        }
                        // A colour that cannot be read is said once, not again wherever it is named.
                        let natural = || Colour { name: name.to_owned(), ..Colour::natural() };
                        own.push(colour(file, name, value).unwrap_or_else(natural));
                    }
                }
                _ => file.problem(
                    "colours",
                    "`colours` must be a section".to_owned(),
                    "write [colours] on a line of its own and below it: blue = \"#2b4c7e\"",
                ),
            }
        }
        Self(own)
    }

    fn find(&self, name: &str) -> Option<Colour> {
        let own = self.0.iter().find(|colour| colour.name.eq_ignore_ascii_case(name.trim()));
        own.cloned().or_else(|| Colour::built_in(name))
    }

    /// The colour that a text names; `name` is the key.
    pub(super) fn colour(
        &self,
        section: &Section,
        name: &str,
        value: &Spanned<DeValue<'_>>,
    ) -> Option<Colour> {
        let text = section.context.text(name, value)?;
        let found = self.find(text.text);
        if found.is_none() {
            let known = || self.0.iter().map(|own| own.name.as_str()).chain(BUILT_IN.iter().map(|one| one.0));
            let help = match nearest(text.text, known()) {
                Some(near) => format!("did you mean `{near}`?"),
                None => format!(
                    "define it under [colours], or choose one of {}",
                    known().collect::<Vec<_>>().join(", ")
                ),
            };
            let message = format!("`{}` is not a known colour", shorten(text.text));
            section.context.problem(value.span(), message, help);
        }
        found
    }

    /// A list of colour names, or one name for a list of one; none when a name is wrong.
    pub(super) fn list(&self, section: &Section, key: &str) -> Option<Vec<Colour>> {
        let name = section.name(key);
        let value = section.value(key)?;
        if value.get_ref().is_str() {
            return Some(vec![self.colour(section, &name, value)?]);
        }
        let list = section.list(key, MOST)?;
        let colours: Vec<Colour> =
            list.iter().filter_map(|value| self.colour(section, &name, value)).collect();
        (colours.len() == list.len()).then_some(colours)
    }
}

fn colour(file: &Section, name: &str, value: &Spanned<DeValue<'_>>) -> Option<Colour> {
    let text = file.context.text(&format!("colours.{}", shorten(name)), value)?;
    let found = Colour::hex(name, text.text)
        .or_else(|| Colour::built_in(text.text).map(|like| Colour { name: name.to_owned(), ..like }));
    if found.is_none() {
        let message = format!("`colours.{}` is not a colour", shorten(name));
        let help = "write red, green and blue in hexadecimal: \"#2b4c7e\"";
        file.context.problem(value.span(), message, help);
    }
    found
}
