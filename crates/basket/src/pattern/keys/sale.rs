//! Keys of `[sale]`.

use super::declared::Usual;
use super::key::{Key, keys};
use super::limits::Texts;
use super::note::LONGEST;

keys! {
    /// Which edition it is.
    pub const EDITION: Key<String> =
        Key::new("sale.edition", Texts::Line, Usual::Nothing("usual-none"), r#""second edition""#);
    /// What buyers may do with it.
    pub const RIGHTS: Key<String> = Key::new(
        "sale.rights",
        Texts::Line,
        Usual::Nothing("usual-none"),
        r#""For your own use; not to be copied, taught from or sold in kits.""#,
    );
    /// The maker's own words.
    pub const WORDS: Key<String> = Key::new(
        "sale.words",
        Texts::Paragraphs(LONGEST),
        Usual::Nothing("usual-none"),
        r#""The basket I take to market.""#,
    );
}
