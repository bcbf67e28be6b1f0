//! How the sheets of the workshop reach the maker: on the screen, or as a file.

use std::path::Path;

use basket::Draft;
use sheets::workshop::Leaf;
use words::Words;

use crate::cli::printing::Printing;
use crate::failure::Failure;
use crate::source::Origin;
use crate::{report, screen, single};

/// Prints the sheet, or writes it as PDF.
pub(super) fn leaf(
    leaf: &Leaf,
    out: Option<&Path>,
    (first, words, printing): (Option<&Draft>, &Words, &Printing),
) -> Result<(), Failure> {
    let Some(out) = out else { return Ok(screen::print(&report::leaf::render(leaf))?) };
    ending(out, &["pdf"])?;
    let Some(draft) = first else { return Ok(()) };
    let (paper, templates, leaf) = (printing.paper(&draft.basket), printing.templates()?, leaf.clone());
    let page = printing.set(draft, words, move |_, words, say| {
        say(&leaf.name);
        leaf.pdf(words, paper, &templates)
    })?;
    wrote(out, &page)
}

/// Writes a file and says so.
pub(super) fn wrote(out: &Path, bytes: &[u8]) -> Result<(), Failure> {
    single::write(out, bytes)?;
    Ok(screen::print(&format!("Wrote {}\n", out.display()))?)
}

/// Refuses a file with another ending.
pub(super) fn ending(out: &Path, endings: &[&str]) -> Result<String, Failure> {
    let ending = single::ending(out);
    if endings.contains(&ending.as_str()) {
        return Ok(ending);
    }
    let what = format!("this is written as .{}", endings.join(" or ."));
    Err(Failure::of_file(&Origin::File(out.to_owned()), what, "Give the file such an ending."))
}
