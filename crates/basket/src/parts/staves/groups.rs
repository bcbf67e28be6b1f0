//! Staves that are cut alike.

use super::length::CUT_STEP;
use crate::limits::STAVES;
use crate::measure::Length;
use crate::uprights::Uprights;

/// Staves of one length and width.
#[derive(Clone, Debug, PartialEq)]
pub struct Group {
    /// What it is called where there are several: a letter.
    pub name: String,
    /// Their numbers, rising.
    pub numbers: Vec<u32>,
    /// Length to cut.
    pub length: Length,
    /// Full width.
    pub width: Length,
    /// How many more of them to shape.
    pub spares: u32,
}

/// How staves of any length are cut.
pub(super) struct Cutting {
    /// The longest.
    pub(super) length: Length,
    /// Whether all are cut to it.
    pub(super) all_alike: bool,
    pub(super) spares: u32,
}

impl Cutting {
    /// The staves by what they are cut to, that of stave 1 first: all in one where none is longer than another by
    /// more than a step of cutting. Spares are of the longest, and of these the widest, because they can be made smaller.
    pub(super) fn groups(&self, uprights: &Uprights) -> Vec<Group> {
        let [least, most] = longer(uprights);
        let all_alike = self.all_alike || most - least <= CUT_STEP;
        let mut groups: Vec<Group> = Vec::new();
        for number in 1..=uprights.count.min(STAVES) {
            let short = if all_alike { Length::ZERO } else { most - longer_of(uprights, number) };
            let length = self.length - CUT_STEP * libm::floor(short / CUT_STEP + 1e-9);
            let width = uprights.full_width(number);
            let alike = |group: &&mut Group| group.length == length && group.width == width;
            if let Some(group) = groups.iter_mut().find(alike) {
                group.numbers.push(number);
            } else {
                let name = name(groups.len());
                groups.push(Group { name, numbers: vec![number], length, width, spares: 0 });
            }
        }
        let size = |group: &Group| (group.length.to_mm(), group.width.to_mm());
        let longest =
            groups.iter_mut().reduce(|most, group| if size(group) > size(most) { group } else { most });
        if let Some(group) = longest {
            group.spares = self.spares;
        }
        groups
    }
}

/// The letter of a group, or its number where there are more than letters.
fn name(index: usize) -> String {
    let letter = u8::try_from(index).ok().and_then(|index| b'A'.checked_add(index)).map(char::from);
    match letter.filter(char::is_ascii_uppercase) {
        Some(letter) => letter.to_string(),
        None => (index + 1).to_string(),
    }
}

/// By how much the shortest and the longest are longer than the way along the wall.
pub(super) fn longer(uprights: &Uprights) -> [Length; 2] {
    let longer = uprights.paths.iter().map(|path| path.longer);
    let pick = |pick: fn(Length, Length) -> Length| longer.clone().reduce(pick).unwrap_or(Length::ZERO);
    [pick(Length::min), pick(Length::max)]
}

fn longer_of(uprights: &Uprights, number: u32) -> Length {
    uprights.path(number).map_or(Length::ZERO, |path| path.longer)
}
