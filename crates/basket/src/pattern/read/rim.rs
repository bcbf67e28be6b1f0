//! Reading `[rim]`, `[filler]`, `[lashing]` and `[pins]`.

use toml::Spanned;
use toml::de::DeValue;

use super::keys;
use super::section::Section;
use super::words::{EVERY, FILLER_KINDS, LASHING_KINDS, LASHING_STYLE, RIM_KINDS};
use crate::pattern::{FillerPattern, LashingPattern, PinsPattern, RimPattern};
use crate::stock::Kind;

pub(super) fn rim(file: &Section) -> RimPattern {
    file.section("rim", "rim", keys::RIM).map_or_else(RimPattern::default, |section| RimPattern {
        stock: section.stock("stock", RIM_KINDS),
        inner: section.stock("inner", RIM_KINDS),
        lap: section.length("lap"),
    })
}

/// `filler = "none"`, or a section with a stock.
pub(super) fn filler(file: &Section) -> FillerPattern {
    if let Some(DeValue::String(_)) = file.value("filler").map(Spanned::get_ref) {
        let none = file.word("filler", &[("none", ())]);
        return none.map_or(FillerPattern::Choose, |()| FillerPattern::None);
    }
    file.section("filler", "filler", keys::FILLER)
        .and_then(|section| section.stock("stock", FILLER_KINDS))
        .map_or(FillerPattern::Choose, FillerPattern::Stock)
}

pub(super) fn lashing(file: &Section) -> LashingPattern {
    file.section("lashing", "lashing", keys::LASHING).map_or_else(LashingPattern::default, |section| {
        LashingPattern {
            weaver: section.stock("weaver", LASHING_KINDS),
            every: section.word("every", EVERY),
            style: section.word("style", LASHING_STYLE),
            tail: section.length("tail"),
        }
    })
}

pub(super) fn pins(file: &Section) -> PinsPattern {
    file.section("pins", "pins", keys::PINS).map_or_else(PinsPattern::default, |section| PinsPattern {
        stock: section.stock("stock", &[Kind::Pin]),
        every: section.word("every", EVERY),
    })
}
