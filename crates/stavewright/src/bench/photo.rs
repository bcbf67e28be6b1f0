//! The photograph of a finished basket, kept beside its pattern: `harbour.toml`, `harbour.photo.jpg`.

use std::fs;
use std::io;
use std::path::PathBuf;

use axum::http::StatusCode;
use basket::message::{Message, Value};

use super::folder::Folder;
use super::name::plain;
use super::refusal::Refusal;
use crate::single;

const ENDING: &str = ".photo.jpg";
/// What JPEG files begin with.
const JPEG: [u8; 3] = [0xff, 0xd8, 0xff];

impl Folder {
    /// Whether a pattern has a photograph.
    pub(crate) fn has_photo(&self, name: &str) -> bool {
        self.photo_file(name).is_ok_and(|file| file.symlink_metadata().is_ok_and(|about| about.is_file()))
    }

    /// The photograph of a pattern.
    pub(crate) fn photo(&self, name: &str) -> Result<Vec<u8>, Refusal> {
        if !self.has_photo(name) {
            return Err(missing(name));
        }
        let file = self.photo_file(name)?;
        let about = fs::metadata(&file).map_err(|error| unkept(name, &error))?;
        if about.len() > super::body::LARGEST as u64 {
            return Err(missing(name));
        }
        fs::read(&file).map_err(|error| unkept(name, &error))
    }

    /// Keeps a photograph in the place of an earlier one. The pattern must be there.
    pub(crate) fn keep_photo(&self, name: &str, bytes: &[u8]) -> Result<(), Refusal> {
        self.read(name)?;
        if !bytes.starts_with(&JPEG) {
            return Err(Refusal::said(
                StatusCode::UNPROCESSABLE_ENTITY,
                Message::new("refused-no-photo"),
                "the body",
            ));
        }
        let file = self.photo_file(name)?;
        let there = file.symlink_metadata();
        if there.as_ref().is_ok_and(|about| !about.is_file()) {
            return Err(Refusal::said(
                StatusCode::UNPROCESSABLE_ENTITY,
                Message::new("refused-photo-odd"),
                format!("{name}{ENDING}"),
            ));
        }
        if there.is_ok() {
            let known = fs::read(&file).map_err(|error| unkept(name, &error))?;
            let left = || {
                Refusal::said(
                    StatusCode::UNPROCESSABLE_ENTITY,
                    Message::new("refused-photo-left"),
                    format!("{name}{ENDING}"),
                )
            };
            return single::replace(&file, &known, bytes).map_err(|_| left());
        }
        single::create(&file, bytes).map_err(|error| unkept(name, &error))
    }

    /// Takes the photograph of a pattern away.
    pub(crate) fn drop_photo(&self, name: &str) -> Result<(), Refusal> {
        if !self.has_photo(name) {
            return Err(missing(name));
        }
        fs::remove_file(self.photo_file(name)?).map_err(|error| unkept(name, &error))
    }

    /// A photograph goes with its pattern; where one lies under the new name already, both stay.
    pub(super) fn rename_photo(&self, name: &str, to: &str) {
        if let (true, Ok(from), Ok(to)) = (self.has_photo(name), self.photo_file(name), self.photo_file(to))
            && to.symlink_metadata().is_err()
        {
            // The pattern has its new name already: a photograph that cannot follow is still beside it.
            let _ = fs::rename(from, to);
        }
    }

    fn photo_file(&self, name: &str) -> Result<PathBuf, Refusal> {
        plain(name)?;
        Ok(self.path().join(format!("{name}{ENDING}")))
    }
}

fn missing(name: &str) -> Refusal {
    Refusal::said(StatusCode::NOT_FOUND, Message::new("refused-photo-missing"), format!("{name}{ENDING}"))
}

fn unkept(name: &str, error: &io::Error) -> Refusal {
    Refusal::said(
        StatusCode::INTERNAL_SERVER_ERROR,
        Message::new("refused-photo-unkept").with("said", Value::Name(error.kind().to_string())),
        format!("{name}{ENDING}"),
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    fn folder() -> (tempfile::TempDir, Folder) {
        let place = tempfile::tempdir().unwrap();
        fs::write(place.path().join("harbour.toml"), "title = \"Harbour\"").unwrap();
        let folder = Folder::at(place.path()).unwrap();
        (place, folder)
    }

    #[test]
    fn a_photograph_is_kept_replaced_and_dropped() {
        let (_place, folder) = folder();
        assert!(!folder.has_photo("harbour"));
        for last in [1, 2] {
            let bytes = [JPEG.as_slice(), &[last]].concat();
            folder.keep_photo("harbour", &bytes).unwrap();
            assert_eq!(folder.photo("harbour").unwrap(), bytes);
        }
        folder.drop_photo("harbour").unwrap();
        assert_eq!(folder.photo("harbour").unwrap_err().status(), 404);
    }

    #[test]
    fn what_is_none_and_what_has_no_pattern_is_refused() {
        let (place, folder) = folder();
        assert_eq!(folder.keep_photo("harbour", b"GIF89a").unwrap_err().status(), 422);
        assert_eq!(folder.keep_photo("none", &JPEG).unwrap_err().status(), 404);
        assert!(folder.keep_photo("../harbour", &JPEG).is_err());
        assert_eq!(fs::read_dir(place.path()).unwrap().count(), 1);
    }

    #[cfg(unix)]
    #[test]
    fn a_link_is_no_photograph() {
        let (place, folder) = folder();
        fs::write(place.path().join("secret"), "hidden").unwrap();
        std::os::unix::fs::symlink(place.path().join("secret"), place.path().join("harbour.photo.jpg"))
            .unwrap();
        assert!(!folder.has_photo("harbour"));
        assert_eq!(folder.photo("harbour").unwrap_err().status(), 404);
        assert!(folder.keep_photo("harbour", &JPEG).is_err());
        assert_eq!(fs::read(place.path().join("secret")).unwrap(), b"hidden");
    }
}
