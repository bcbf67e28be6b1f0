//! A teacher's own templates, from a folder.

use std::fs;
use std::io::{self, Read};
use std::path::Path;

use basket::limits::TEMPLATE_BYTES;
use sheets::Templates;

use crate::failure::Failure;
use crate::input;
use crate::source::Origin;

/// The built-in templates, those in the folder in the place of theirs.
pub(super) fn read(folder: &Path) -> Result<Templates, Failure> {
    let mut templates = Templates::default();
    let mut found = 0;
    for name in names(folder)? {
        if templates.text(&name).is_none() {
            return Err(unknown(&folder.join(&name), &templates));
        }
        let text = text(&folder.join(&name))?;
        templates = templates.with(name, text);
        found += 1;
    }
    if found > 0 { Ok(templates) } else { Err(none(folder)) }
}

/// The files of a folder in order; hidden ones and what file managers leave behind do not count.
fn names(folder: &Path) -> Result<Vec<String>, Failure> {
    let origin = Origin::File(folder.to_owned());
    let cannot = |error: io::Error| {
        let help = "Name a folder of templates; `stavewright templates` writes one to begin with.";
        Failure::of_file(&origin, format!("this folder of templates cannot be read: {error}"), help)
    };
    let mut names = Vec::new();
    for entry in fs::read_dir(folder).map_err(cannot)? {
        let name = entry.map_err(cannot)?.file_name().to_string_lossy().into_owned();
        if !name.starts_with('.') && !["Thumbs.db", "desktop.ini"].contains(&name.as_str()) {
            names.push(name);
        }
    }
    names.sort();
    Ok(names)
}

fn text(path: &Path) -> Result<String, Failure> {
    let origin = Origin::File(path.to_owned());
    let refuse = |message: String, help: &str| Failure::of_file(&origin, message, help);
    let mut bytes = Vec::new();
    input::open(path)
        .and_then(|file| Ok(file.take(TEMPLATE_BYTES + 1).read_to_end(&mut bytes)?))
        .map_err(|unopened| refuse(unopened.to_string(), "A template is a text file."))?;
    if bytes.len() as u64 > TEMPLATE_BYTES {
        return Err(refuse(
            "more than 1 MB, far too large for a template".to_owned(),
            "Is this the right file?",
        ));
    }
    String::from_utf8(bytes)
        .map_err(|_| refuse("not UTF-8 text".to_owned(), "Save it again with the encoding UTF-8."))
}

fn unknown(path: &Path, templates: &Templates) -> Failure {
    let known: Vec<_> = templates.names().collect();
    Failure::of_file(
        &Origin::File(path.to_owned()),
        "no sheet is set from a file of this name",
        format!("Templates are called {}. Rename the file or move it elsewhere.", known.join(", ")),
    )
}

fn none(folder: &Path) -> Failure {
    Failure::of_file(
        &Origin::File(folder.to_owned()),
        "there is no template in this folder",
        "`stavewright templates` writes the built-in ones to begin with.",
    )
}
