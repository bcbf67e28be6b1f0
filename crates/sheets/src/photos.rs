//! The maker's photographs, as bytes that the caller read and checked.

use std::collections::BTreeMap;

/// Photographs by the path under which the pattern names them. A note whose photograph is not among
/// them is set without it.
#[derive(Clone, Debug, Default)]
pub struct Photos(BTreeMap<String, Vec<u8>>);

impl Photos {
    /// Adds a photograph: the whole PNG or JPEG file. One that cannot be decoded fails the sheet.
    #[must_use]
    pub fn with(mut self, path: impl Into<String>, bytes: Vec<u8>) -> Self {
        self.0.insert(path.into(), bytes);
        self
    }

    /// The name under which templates read a photograph.
    pub(crate) fn file(&self, path: &str) -> Option<String> {
        let number = self.0.keys().position(|known| known == path)? + 1;
        let ending = if path.to_lowercase().ends_with(".png") { "png" } else { "jpg" };
        Some(format!("photo-{number}.{ending}"))
    }

    /// All photographs by that name.
    pub(crate) fn files(&self) -> impl Iterator<Item = (String, Vec<u8>)> {
        self.0.iter().filter_map(|(path, bytes)| Some((self.file(path)?, bytes.clone())))
    }
}
