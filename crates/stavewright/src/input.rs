//! Reading a small text file that somebody else wrote: every way in which that goes wrong has its
//! own message.

mod open;

use std::io::{self, Read};

use basket::pattern::Problem;

pub(crate) use self::open::{Unopened, inside, open};

use crate::failure::Failure;
use crate::source::{Origin, Text};

/// A pattern or a shelf has a few kilobytes; whatever is larger is something else.
const LIMIT: usize = basket::limits::PATTERN_BYTES;

/// Reads a text; never more than one megabyte.
pub(crate) fn read(origin: Origin) -> Result<Text, Failure> {
    read_up_to(LIMIT, origin)
}

/// Reads a text of so many bytes at the most.
pub(crate) fn read_up_to(limit: usize, origin: Origin) -> Result<Text, Failure> {
    let bytes = match &origin {
        Origin::Standard => read_limited(limit, &origin, io::stdin().lock())?,
        Origin::File(path) => {
            let file = open(path).map_err(|unopened| cannot_open(&origin, unopened))?;
            read_limited(limit, &origin, file)?
        }
    };
    let content =
        String::from_utf8(bytes).map_err(|error| not_utf8(&origin, error.as_bytes(), &error.utf8_error()))?;
    let content = content.strip_prefix('\u{feff}').map(str::to_owned).unwrap_or(content);
    if content.trim().is_empty() {
        return Err(Failure::of_file(
            &origin,
            "the file is empty",
            "`stavewright new` writes a pattern to begin with.",
        ));
    }
    Ok(Text { origin, content })
}

fn cannot_open(origin: &Origin, unopened: Unopened) -> Failure {
    let help = match &unopened {
        Unopened::Refused(error) => return cannot_read(origin, error),
        Unopened::Odd("a folder") => "Name the file inside it.",
        Unopened::Odd("a pipe") => "To send a text from another program, name the file - instead.",
        Unopened::Odd(_) | Unopened::Outside => "Name a file.",
    };
    Failure::of_file(origin, unopened, help)
}

fn read_limited(limit: usize, origin: &Origin, source: impl Read) -> Result<Vec<u8>, Failure> {
    let mut bytes = Vec::new();
    source.take(limit as u64 + 1).read_to_end(&mut bytes).map_err(|error| cannot_read(origin, &error))?;
    match bytes.len() {
        length if length <= limit => Ok(bytes),
        _ if limit == LIMIT => Err(too_large(origin)),
        _ => {
            let what = format!("more than {} MB", limit / 1_000_000);
            Err(Failure::of_file(origin, what, "Is this the right file?"))
        }
    }
}

fn cannot_read(origin: &Origin, error: &io::Error) -> Failure {
    match error.kind() {
        io::ErrorKind::NotFound => Failure::of_file(
            origin,
            "there is no such file",
            "Check the name and the folder; `stavewright new FILE` begins a new pattern.",
        ),
        io::ErrorKind::PermissionDenied => Failure::of_file(
            origin,
            "you may not read this file",
            "Ask its owner, or copy it to a folder of your own.",
        ),
        _ => Failure::of_file(origin, format!("cannot be read: {error}"), ""),
    }
}

fn too_large(origin: &Origin) -> Failure {
    Failure::of_file(
        origin,
        "more than 1 MB, far too large for a pattern",
        "A pattern is a page of text; is this the right file?",
    )
}

fn not_utf8(origin: &Origin, bytes: &[u8], error: &std::str::Utf8Error) -> Failure {
    if bytes.starts_with(&[0xff, 0xfe]) || bytes.starts_with(&[0xfe, 0xff]) {
        return Failure::of_file(
            origin,
            "the text is in UTF-16, not UTF-8",
            "Save it again with the encoding UTF-8.",
        );
    }
    let good = String::from_utf8_lossy(&bytes[..error.valid_up_to()]);
    let end = Problem { message: String::new(), span: Some(good.len()..good.len()), help: None, fault: None };
    let (line, column) = end.line_column(&good);
    let byte = bytes[error.valid_up_to()];
    Failure::plain(
        format!("{origin}:{line}:{column}: not UTF-8 text: the byte {byte:#04x} stands here"),
        "Save the file again with the encoding UTF-8, or delete the sign at that place.",
    )
}
