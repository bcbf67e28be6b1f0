//! Reading `[sale]`: what stands on the title page of a pattern for sale.

use super::section::Section;
use crate::pattern::keys::sale::{EDITION, RIGHTS, WORDS};
use crate::pattern::{Sale, keys};

pub(super) fn sale(file: &Section) -> Sale {
    let Some(section) = file.section(&keys::SALE) else {
        return Sale::default();
    };
    Sale { edition: section.get(&EDITION), rights: section.get(&RIGHTS), words: section.get(&WORDS) }
}
