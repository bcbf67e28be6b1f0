//! The file in which a maker writes down who is in a class, what each makes, and what is reckoned with.

mod file;
mod read;
mod table;

use basket::pattern::Units;
use planning::class::written::Fault;
use words::{Language, Words};

use crate::failure::Failure;
use crate::source::Text;

pub(crate) use file::{Group, KitsFile, PriceTable};
pub(crate) use read::read;

/// Reads such a file for a command, which says in English what is wrong.
pub(crate) fn parse(text: &Text) -> Result<KitsFile, Failure> {
    read(&text.content).map_err(|faults| {
        let words = Words::new(Language::English, Units::default());
        let told = |fault: Fault| fault.told(|id, args| words.with(id, args));
        Failure::Misread { text: text.clone(), problems: faults.into_iter().map(told).collect() }
    })
}
