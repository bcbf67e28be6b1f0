//! Lengths as a maker writes them.

use basket::Length;
use basket::measure::Printing;
use basket::pattern::Units;
use toml_edit::{DocumentMut, Item};

use super::path::Path;
use super::walk::{Found, walk};
use crate::bench::refusal::Refusal;

/// A length as text in the file's own units, with its unit unless the earlier text had none.
pub(super) fn measure(document: &mut DocumentMut, path: &Path, mm: f64) -> Result<String, Refusal> {
    if !mm.is_finite() || !(0.0..=1e5).contains(&mm) {
        return Err(Refusal::senseless(
            format!("{mm} mm is no length for `{path}`"),
            path.to_string(),
            "Send millimetres from 0 to 100000.",
        ));
    }
    let before = walk(document.as_item_mut(), path.steps()).and_then(|place| match place {
        Found::Item(item) => item.as_str().map(str::to_owned),
        Found::Value(value) => value.as_str().map(str::to_owned),
        Found::Table(_) => None,
    });
    let units = document.get("units").and_then(Item::as_str);
    let before_is_metric = before.as_deref().is_some_and(|text| text.contains("mm") || text.contains("cm"));
    let metric = units.map_or(before_is_metric, |units| units == "mm");
    let length = Length::mm(mm);
    let text = length.print(marks(length, if metric { Units::Millimetres } else { Units::Inches }));
    let named = |text: String| text.contains(|sign: char| sign.is_alphabetic() || "\"'″′”’".contains(sign));
    let bare = units.is_some() && before.is_some_and(|text| !named(text));
    let unit = if metric { " mm" } else { " in" };
    Ok(if bare { text.strip_suffix(unit).unwrap_or(&text).to_owned() } else { text })
}

/// The finest marks that a maker works to at this size: what is written into a pattern and what the page says of a
/// length are rounded to the same.
pub(crate) fn marks(length: Length, units: Units) -> Printing {
    match (units, length.abs() < Length::inches(1.0)) {
        (Units::Millimetres, true) => Printing::Millimetres { step: 0.1 },
        (Units::Millimetres, false) => Printing::Millimetres { step: 0.5 },
        (Units::Inches, true) => Printing::Inches { denominator: 64 },
        (Units::Inches, false) => Printing::Inches { denominator: 16 },
    }
}
