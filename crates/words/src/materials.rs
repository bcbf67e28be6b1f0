//! The catalogue's names in the reader's language.

use basket::message::Value;
use basket::pattern::Units;
use basket::{Length, Material};

use crate::language::unit_space;
use crate::{Language, Words, numbers};

impl Words {
    /// A material or a wood: `flat oval reed 1/4 in` is `Flachovalrohr 6,3 mm (1/4 Zoll)` in German, where stock is
    /// sold by the millimetre. A name that is not of the catalogue comes back as it is.
    pub fn material(&self, name: &str) -> String {
        let (label, size) = parts(name);
        match (self.known("material", label), size) {
            (Some(label), "") => label,
            (Some(label), size) => format!("{label} {}", self.stock_size(size)),
            (None, _) => name.to_owned(),
        }
    }
    /// Materials with the width and thickness that were measured of them.
    pub fn measures(&self, measured: &[&Material]) -> String {
        let one = |material: &&Material| {
            let args = [
                ("material", Value::Name(self.material(&material.name))),
                ("width", Value::Name(self.fine_both(material.width))),
                ("thickness", Value::Name(self.fine_both(material.thickness))),
            ];
            self.with("measured-of", &args)
        };
        measured.iter().map(one).collect::<Vec<_>>().join("; ")
    }

    /// A colour; one that the maker named comes back as it is.
    pub fn colour(&self, name: &str) -> String {
        self.known("colour", name).unwrap_or_else(|| name.to_owned())
    }
    /// How a material is sold: `hank`, `coil of 1 lb`; an unknown way comes back as it is.
    pub fn put_up(&self, unit: &str) -> String {
        self.known("put-up", unit).unwrap_or_else(|| unit.to_owned())
    }

    /// A size of the catalogue, in inches with the language's own unit before it: `18 x 5/8 in` is a gauge and a
    /// length.
    fn stock_size(&self, size: &str) -> String {
        let own = numbers::size(size, self.language);
        let (gauge, measure) = size.rsplit_once(" x ").unwrap_or(("", size));
        let inches = measure.ends_with(" in").then(|| Length::parse(measure, None).ok()).flatten();
        match (self.language, inches) {
            (Language::German, Some(length)) => {
                let space = unit_space(self.language);
                let by = if gauge.is_empty() { String::new() } else { format!("{gauge}{space}x{space}") };
                let millimetres = numbers::fine(length, Units::Millimetres, self.language);
                format!("{by}{millimetres} ({})", numbers::size(measure, self.language))
            }
            _ => own,
        }
    }
    fn known(&self, family: &str, name: &str) -> Option<String> {
        let id = format!("{family}-{}", name.replace(' ', "-"));
        self.has(&id).then(|| self.term(&id))
    }
}

/// What a material is and, from the first figure on, of which size.
fn parts(name: &str) -> (&str, &str) {
    let starts_size =
        |(space, _): &(usize, &str)| name[space + 1..].starts_with(|sign: char| sign.is_ascii_digit());
    match name.match_indices(' ').find(starts_size) {
        Some((space, _)) => (&name[..space], &name[space + 1..]),
        None => (name, ""),
    }
}
