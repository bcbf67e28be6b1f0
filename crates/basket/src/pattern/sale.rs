//! What a pattern says of itself when it is sold.

/// What stands on the title page of a pattern for sale.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Sale {
    /// Which edition it is.
    pub edition: Option<String>,
    /// What buyers may do with it.
    pub rights: Option<String>,
    /// The maker's own words; paragraphs are parted by an empty line.
    pub words: Option<String>,
}
