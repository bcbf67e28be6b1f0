//! Reading `[ears]`.

use super::section::Section;
use crate::pattern::EarsPattern;
use crate::pattern::keys::{self, ears};

pub(super) fn ears(file: &Section) -> Option<EarsPattern> {
    let section = file.section(&keys::EARS)?;
    Some(EarsPattern {
        material: section.get(&ears::MATERIAL),
        placing: section.get(&ears::PLACING),
        width: section.get(&ears::WIDTH),
        thickness: section.get(&ears::THICKNESS),
        hole_height: section.get(&ears::HOLE),
        tail: section.get(&ears::TAIL),
    })
}
