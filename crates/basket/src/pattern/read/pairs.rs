//! Lists of pairs: a height, and what was measured there.

use toml::Spanned;
use toml::de::DeValue;

use super::problem::Fault;
use super::raw::type_name;
use super::section::Section;
use crate::measure::Length;

/// What stands where a pair should.
pub(super) fn shape_of(entry: &Spanned<DeValue<'_>>) -> String {
    match entry.get_ref() {
        DeValue::Array(list) => format!("a list of {}", list.len()),
        other => type_name(other).to_owned(),
    }
}

/// Whether the heights of a list rise.
pub(super) fn rising(
    section: &Section,
    (path, list): (&str, &[Spanned<DeValue<'_>>]),
    heights: &[Length],
) -> bool {
    let mut fine = true;
    for (pair, entry) in heights.windows(2).zip(list.iter().skip(1)) {
        let [below, above] = pair else { continue };
        if above <= below {
            let (id, what) = if above == below {
                ("problem-girth-twice", "twice the same height")
            } else {
                ("problem-girth-order", "out of order")
            };
            let help = "write each height once, from the base upward";
            let fault = Fault::new(id, format!("`{path}`: {what}")).with("height", *above);
            section.context.problem(entry.span(), fault, help);
            fine = false;
        }
    }
    fine
}
