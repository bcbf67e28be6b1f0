//! Reading `[rim]`, `[filler]`, `[lashing]` and `[pins]`.

use toml::de::DeValue;

use super::problem::Fault;
use super::section::Section;
use super::text::Text;
use crate::pattern::keys::{self, Declared, filler, lashing, pins, rim};
use crate::pattern::{FillerPattern, LashingPattern, PinsPattern, RimPattern};

pub(super) fn rim(file: &Section) -> RimPattern {
    file.section(&keys::RIM).map_or_else(RimPattern::default, |section| RimPattern {
        hinged: false,
        hoops: section.get(&rim::HOOPS),
        stock: section.get(&rim::STOCK),
        inner: section.get(&rim::INNER),
        lap: section.get(&rim::LAP),
    })
}

/// Where a word stands in the place of a section: whether it is the one that takes the part away. Any other is
/// a problem.
fn taken_away(file: &Section, key: &dyn Declared, none: &str) -> Option<bool> {
    let value = file.value(key)?;
    let DeValue::String(word) = value.get_ref() else { return None };
    if *word != none {
        file.context.unknown_word(key.path(), &Text { text: word, span: value.span() }, &[none]);
    }
    Some(*word == none)
}

/// `filler = "none"`, or a section with a stock.
pub(super) fn filler(file: &Section, is_lashed: bool) -> FillerPattern {
    let filler = match taken_away(file, &keys::FILLER, filler::NONE) {
        Some(true) => FillerPattern::None,
        Some(false) => FillerPattern::Choose,
        None => file
            .section(&keys::FILLER)
            .and_then(|section| section.get(&filler::STOCK))
            .map_or(FillerPattern::Choose, FillerPattern::Stock),
    };
    if !is_lashed && matches!(filler, FillerPattern::Stock(_)) {
        let message = format!("`{}` lies under a lashing, and the rim has none", keys::FILLER.path);
        let help = "take the filler out, or let the rim be lashed";
        file.problem(&keys::FILLER, Fault::new("problem-filler", message), help);
    }
    filler
}

/// `lashing = "none"`, or a section.
pub(super) fn lashing(file: &Section) -> Option<LashingPattern> {
    match taken_away(file, &keys::LASHING, lashing::NONE) {
        Some(true) => None,
        Some(false) => Some(LashingPattern::default()),
        None => Some(file.section(&keys::LASHING).map_or_else(LashingPattern::default, |section| {
            LashingPattern {
                weaver: section.get(&lashing::WEAVER),
                every: section.get(&lashing::EVERY),
                style: section.get(&lashing::STYLE),
                tail: section.get(&lashing::TAIL),
            }
        })),
    }
}

pub(super) fn pins(file: &Section) -> PinsPattern {
    file.section(&keys::PINS).map_or_else(PinsPattern::default, |section| PinsPattern {
        stock: section.get(&pins::STOCK),
        every: section.get(&pins::EVERY),
    })
}
