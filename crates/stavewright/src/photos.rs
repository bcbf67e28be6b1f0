//! Photographs that a pattern's notes name: read from beside the pattern, never from elsewhere.

use std::fs::File;
use std::io::{Cursor, Read};
use std::path::Path;

use basket::pattern::{Pattern, Photo, Problem};
use image::{ImageFormat, ImageReader, Limits};
use sheets::Photos;

use crate::failure::Failure;
use crate::input::Text;

/// The largest photograph that is read, and all together, in bytes.
const LARGEST: u64 = 10_000_000;
const LARGEST_ALL: usize = 60_000_000;
/// Most pixels along a side.
const MOST_PIXELS: u32 = 10_000;

/// Reads and checks all photographs of a pattern that lies in this folder.
pub(crate) fn load(pattern: &Pattern, text: &Text) -> Result<Photos, Failure> {
    let mut photos = Photos::default();
    let mut problems = Vec::new();
    let mut room = LARGEST_ALL;
    for photo in pattern.notes.iter().filter_map(|note| note.photo.as_ref()) {
        match read(text.origin.folder(), photo).and_then(|bytes| within(&mut room, bytes)) {
            Ok(bytes) => photos = photos.with(photo.path.clone(), bytes),
            Err((message, help)) => problems.push(Problem {
                message: format!("the photo `{}` {message}", photo.path),
                span: Some(photo.span.clone()),
                help: Some(help.to_owned()),
            }),
        }
    }
    if problems.is_empty() { Ok(photos) } else { Err(Failure::Misread { text: text.clone(), problems }) }
}

/// What is wrong with a photograph, and how to mend it.
type Fault = (String, &'static str);

fn read(folder: &Path, photo: &Photo) -> Result<Vec<u8>, Fault> {
    let folder = if folder.as_os_str().is_empty() { Path::new(".") } else { folder };
    let missing = |error: std::io::Error| {
        let help = "the path starts in the pattern's own folder; check the name and its capitals";
        (format!("cannot be read: {error}"), help)
    };
    let path = folder.join(&photo.path).canonicalize().map_err(missing)?;
    if !folder.canonicalize().is_ok_and(|folder| path.starts_with(folder)) {
        return Err((
            "lies outside the pattern's folder".to_owned(),
            "copy the photo itself into the folder; a link that leads out of it is not followed",
        ));
    }
    if !path.is_file() {
        return Err(("is not a file".to_owned(), "name the picture file itself"));
    }
    let mut bytes = Vec::new();
    File::open(&path).and_then(|file| file.take(LARGEST + 1).read_to_end(&mut bytes)).map_err(missing)?;
    if bytes.len() as u64 > LARGEST {
        let help = "save it smaller; 2000 pixels across are plenty for print";
        return Err(("is larger than 10 MB".to_owned(), help));
    }
    check(&photo.path, &bytes)?;
    Ok(bytes)
}

/// Asserts that the file is what its name says, and decodes.
fn check(name: &str, bytes: &[u8]) -> Result<(), Fault> {
    let (wanted, kind) = if name.to_lowercase().ends_with(".png") {
        (ImageFormat::Png, "PNG")
    } else {
        (ImageFormat::Jpeg, "JPEG")
    };
    if image::guess_format(bytes).ok() != Some(wanted) {
        return Err((format!("is not a {kind} file inside"), "save it again as what its name says"));
    }
    let mut reader = ImageReader::with_format(Cursor::new(bytes), wanted);
    let mut limits = Limits::default();
    limits.max_image_width = Some(MOST_PIXELS);
    limits.max_image_height = Some(MOST_PIXELS);
    reader.limits(limits);
    match reader.decode() {
        Ok(_) => Ok(()),
        Err(image::ImageError::Limits(_)) => Err((
            format!("has more than {MOST_PIXELS} pixels along a side, or is too large to hold"),
            "save it smaller; 2000 pixels across are plenty for print",
        )),
        Err(error) => Err((format!("is broken: {error}"), "save or copy it again")),
    }
}

/// Takes the bytes from what all photographs together may have.
fn within(room: &mut usize, bytes: Vec<u8>) -> Result<Vec<u8>, Fault> {
    match room.checked_sub(bytes.len()) {
        Some(left) => {
            *room = left;
            Ok(bytes)
        }
        None => {
            Err(("is one too many: all together have more than 60 MB".to_owned(), "save the photos smaller"))
        }
    }
}
