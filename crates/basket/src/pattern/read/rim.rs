//! Reading `[rim]`, `[filler]`, `[lashing]` and `[pins]`.

use toml::de::DeValue;

use super::section::Section;
use super::text::Text;
use crate::pattern::keys::{self, filler, lashing, pins, rim};
use crate::pattern::{FillerPattern, LashingPattern, PinsPattern, RimPattern};

pub(super) fn rim(file: &Section) -> RimPattern {
    file.section(&keys::RIM).map_or_else(RimPattern::default, |section| RimPattern {
        hoops: section.get(&rim::HOOPS),
        stock: section.get(&rim::STOCK),
        inner: section.get(&rim::INNER),
        lap: section.get(&rim::LAP),
    })
}

/// `filler = "none"`, or a section with a stock.
pub(super) fn filler(file: &Section) -> FillerPattern {
    match file.value(&keys::FILLER).map(|value| (value.get_ref(), value.span())) {
        Some((DeValue::String(word), _)) if *word == filler::NONE => FillerPattern::None,
        Some((DeValue::String(word), span)) => {
            let text = Text { text: word, span };
            file.context.unknown_word(keys::FILLER.path, &text, &[filler::NONE]);
            FillerPattern::Choose
        }
        _ => file
            .section(&keys::FILLER)
            .and_then(|section| section.get(&filler::STOCK))
            .map_or(FillerPattern::Choose, FillerPattern::Stock),
    }
}

pub(super) fn lashing(file: &Section) -> LashingPattern {
    file.section(&keys::LASHING).map_or_else(LashingPattern::default, |section| LashingPattern {
        weaver: section.get(&lashing::WEAVER),
        every: section.get(&lashing::EVERY),
        style: section.get(&lashing::STYLE),
        tail: section.get(&lashing::TAIL),
    })
}

pub(super) fn pins(file: &Section) -> PinsPattern {
    file.section(&keys::PINS).map_or_else(PinsPattern::default, |section| PinsPattern {
        stock: section.get(&pins::STOCK),
        every: section.get(&pins::EVERY),
    })
}
