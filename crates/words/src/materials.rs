//! The catalogue's names in the reader's language.

use crate::{Words, numbers};

impl Words {
    /// A material or a wood: `flat oval reed 1/4 in` is `Flachovalrohr 1/4 Zoll` in German. A name that is
    /// not of the catalogue comes back as it is.
    pub fn material(&self, name: &str) -> String {
        let (label, size) = parts(name);
        match (self.known("material", label), size) {
            (Some(label), "") => label,
            (Some(label), size) => format!("{label} {}", numbers::size(size, self.language)),
            (None, _) => name.to_owned(),
        }
    }
    /// A colour; one that the maker named comes back as it is.
    pub fn colour(&self, name: &str) -> String {
        self.known("colour", name).unwrap_or_else(|| name.to_owned())
    }
    /// How a material is sold: `hank`, `coil of 1 lb`; an unknown way comes back as it is.
    pub fn put_up(&self, unit: &str) -> String {
        self.known("put-up", unit).unwrap_or_else(|| unit.to_owned())
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
