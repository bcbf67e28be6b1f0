//! Reading `[colours]`, and lists of colour names.

use toml::Spanned;
use toml::de::DeValue;

use super::context::Context;
use super::palette::Palette;
use super::problem::Fault;
use super::raw::{in_order, type_term};
use super::section::{Read, Section, list};
use super::text::{nearest, shorten, title_fault};
use crate::colour::Colour;
use crate::pattern::keys::{self, Key};

/// The colours that the file may name.
pub(super) fn palette(file: &Section) -> Palette {
    let Some(section) = file.value(&keys::COLOURS) else { return Palette::default() };
    let DeValue::Table(table) = section.get_ref() else {
        file.problem(
            &keys::COLOURS,
            Fault::new("problem-not-section", "`colours` must be a section".to_owned())
                .with("found", type_term(section.get_ref())),
            "write [colours] on a line of its own and below it: blue = \"#2b4c7e\"",
        );
        return Palette::default();
    };
    let mut own = Vec::new();
    for (name, span, value) in in_order(table).into_iter().take(keys::COLOURS.takes) {
        if let Some(fault) = title_fault(name) {
            file.context.problem(
                span,
                fault.of("the name of a colour"),
                "write a short name, such as \"sea blue\"",
            );
            continue;
        }
        // A colour that cannot be read is said once, not again wherever it is named.
        let natural = || Colour { name: name.to_owned(), ..Colour::natural() };
        own.push(own_colour(file, name, value).unwrap_or_else(natural));
    }
    Palette::of(own)
}

fn own_colour(file: &Section, name: &str, value: &Spanned<DeValue<'_>>) -> Option<Colour> {
    let path = format!("{}.{}", keys::COLOURS.path, shorten(name));
    let text = file.context.text(&path, value)?;
    let found = Colour::hex(name, text.text)
        .or_else(|| Colour::built_in(text.text).map(|like| Colour { name: name.to_owned(), ..like }));
    if found.is_none() {
        let help = "write red, green and blue in hexadecimal: \"#2b4c7e\"";
        let fault = Fault::new("problem-hex", format!("`{path}` is not a colour"));
        file.context.problem(value.span(), fault.with("written", shorten(text.text)), help);
    }
    found
}

/// The colour that a text names; `path` is the key.
pub(super) fn colour(context: Context, path: &str, value: &Spanned<DeValue<'_>>) -> Option<Colour> {
    let text = context.text(path, value)?;
    let found = context.palette.find(text.text);
    if found.is_none() {
        let known = context.palette.names();
        let near = nearest(text.text, known.iter().copied());
        let help = match near {
            Some(near) => format!("did you mean `{near}`?"),
            None => format!("define it under [colours], or choose one of {}", known.join(", ")),
        };
        let message = format!("`{}` is not a known colour", shorten(text.text));
        let fault = Fault::new("problem-colour", message).with("written", shorten(text.text)).near(near);
        context.problem(value.span(), fault, help);
    }
    found
}

/// A list of colour names, or one name for a list of one; none when a name is wrong.
impl Read for Vec<Colour> {
    fn read(section: &Section, key: &Key<Self>, value: &Spanned<DeValue<'_>>) -> Option<Self> {
        if value.get_ref().is_str() {
            return Some(vec![colour(section.context, key.path, value)?]);
        }
        let list = list(section.context, key, value, key.takes)?;
        let colours: Self =
            list.iter().filter_map(|value| colour(section.context, key.path, value)).collect();
        (colours.len() == list.len()).then_some(colours)
    }
}
