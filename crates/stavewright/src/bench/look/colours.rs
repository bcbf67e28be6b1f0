//! Colours as the page names and shows them.

use basket::Colour;
use basket::colour::BUILT_IN;

use words::Words;

use crate::bench::api::ColourName;
use crate::bench::text::Written;

/// The colours that every pattern may name.
pub(super) fn built_in(words: &Words) -> impl Iterator<Item = ColourName> {
    BUILT_IN.iter().filter_map(|(name, _)| Colour::built_in(name)).map(|colour| colour_name(&colour, words))
}

/// A colour by name and hexadecimal.
pub(crate) fn colour_name(colour: &Colour, words: &Words) -> ColourName {
    ColourName { name: colour.name.clone(), label: words.colour(&colour.name), hex: colour.to_hex() }
}

/// The colours that the pattern defines, then the built-in ones.
pub(super) fn colours(written: &Written, words: &Words) -> Vec<ColourName> {
    let own = written.table("colours").into_iter().filter_map(|(name, text)| {
        let colour = Colour::hex(&name, &text)
            .or_else(|| Colour::built_in(&text).map(|like| Colour { name: name.clone(), ..like }))?;
        Some(colour_name(&colour, words))
    });
    own.chain(built_in(words)).collect()
}
