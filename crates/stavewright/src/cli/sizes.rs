//! `stavewright sizes`.

mod written;

use std::collections::BTreeMap;
use std::path::PathBuf;

use basket::Length;
use basket::findings::in_a_nest;
use basket::sizes::{Nest, serving, to_the_mark};
use planning::kits::{Kits, Student};
use sheets::workshop::{Size, Sizes, Standing};

use self::written::Written;
use super::outcome::Outcome;
use super::printing::Printing;
use super::reading::{Read, Reading, words};
use crate::failure::Failure;
use crate::source::Origin;
use crate::{report, screen, single};

/// More sizes at once are a mistake.
const MOST: usize = 12;

/// Make one basket in several sizes, each to stand in the next.
///
/// The pattern's mould keeps its proportions in each size, or is one that another pattern describes.
/// Staves and weavers come from stock of the same kind in the size that is nearest to the
/// proportion, so that the set looks related; what follows from them is computed anew. The answer
/// shows the set, how much room each basket has in the next, one cut list for all, and what was
/// changed; a pattern for each size and the sheet are written.
#[derive(Debug, clap::Args)]
#[command(after_help = "Examples:
  stavewright sizes harbour.toml --across 5,6,7,8
  stavewright sizes ferry.toml --across \"5 in,6 in\" --clearance \"1/4 in\"
  stavewright sizes ferry.toml --mould mould-c.toml --mould mould-d.toml

A file for --mould is any pattern; its [mould] is taken, and nothing else.

Exit status: 0 when all can be woven and each goes into the next, 1 when a
finding says stop or one does not go in (all is written all the same), 2 when
a pattern cannot be read or a file cannot be written.")]
pub(super) struct Args {
    #[command(flatten)]
    reading: Reading,

    /// Diameters, or lengths, of the moulds at the top, parted by commas; bare numbers are in
    /// the pattern's units.
    #[arg(long, value_name = "LENGTHS", value_delimiter = ',', required_unless_present = "mould")]
    across: Vec<String>,

    /// A pattern whose mould is one of them; may be given several times.
    #[arg(long, value_name = "FILE", conflicts_with = "across")]
    mould: Vec<PathBuf>,

    /// Room that is wanted all round between one basket and the next.
    #[arg(long, value_name = "LENGTH", default_value = "1/8 in")]
    clearance: String,

    /// The folder to write; it must not be there yet [default: the pattern's name and -sizes].
    #[arg(long, value_name = "DIR")]
    out: Option<PathBuf>,

    #[command(flatten)]
    printing: Printing,
}

pub(super) fn run(args: &Args) -> Result<Outcome, Failure> {
    let read = args.reading.read()?;
    let wanted = length("--clearance", &args.clearance, None)?;
    let mut each = written_sizes(args, &read)?;
    each.sort_by(|a, b| a.across.to_mm().total_cmp(&b.across.to_mm()));
    if let Some([same, _]) = each.windows(2).find(|pair| matches!(pair, [a, b] if a.name == b.name)) {
        return Err(Failure::plain(
            format!("there are two sizes of {}", same.name),
            "Name each size once; a mould's size is its diameter, or its length, at the top.",
        ));
    }
    let out = folder(args)?;
    let texts: Vec<(String, String)> =
        each.iter().map(|size| (size.file.clone(), size.text.clone())).collect();
    let sizes = together(args, &read, each, wanted)?;
    let Some(first) = sizes.each.first().map(|size| size.draft.clone()) else { return Ok(Outcome::Fine) };
    let words = words(&first.basket);
    let title = read.said().0.title.clone();
    let leaf = sheets::workshop::sizes(&title, &sizes, &words);
    let (paper, templates, page) =
        (args.printing.paper(&first.basket), args.printing.templates()?, leaf.clone());
    let sheet = args.printing.set(&first, &words, move |_, words, say| {
        say(&page.name);
        page.pdf(words, paper, &templates)
    })?;
    std::fs::create_dir(&out).map_err(|error| {
        Failure::of_file(&Origin::File(out.clone()), error, "Name a folder that can be made with --out.")
    })?;
    for (file, text) in &texts {
        single::write(&out.join(file), text.as_bytes())?;
    }
    single::write(&out.join("sizes.pdf"), &sheet)?;
    let files: Vec<&str> = texts.iter().map(|(file, _)| file.as_str()).chain(["sizes.pdf"]).collect();
    let wrote = format!("\nWrote {}\n{}\n", out.display(), screen::wrap(&files.join(", "), "  ", "  "));
    screen::print(&(report::leaf::render(&leaf) + &wrote))?;
    Ok(outcome(&sizes))
}

fn outcome(sizes: &Sizes) -> Outcome {
    let stops = sizes.each.iter().any(|size| size.draft.stops());
    let tight = sizes.nests.iter().any(|one| one.finding.is_some());
    if stops || tight { Outcome::Stopped } else { Outcome::Fine }
}

fn length(key: &str, written: &str, unit: Option<basket::measure::Unit>) -> Result<Length, Failure> {
    let length = Length::parse(written, unit)
        .map_err(|error| Failure::plain(format!("{key} {written}: {error}"), error.help()))?;
    let (least, most) = (Length::ZERO, basket::limits::PART);
    if length < least || length > most {
        let what = format!("{key} {written}: no basket has such a size");
        return Err(Failure::plain(what, "Write a length from 0 to 5000 mm."));
    }
    Ok(length)
}

fn written_sizes(args: &Args, read: &Read) -> Result<Vec<Written>, Failure> {
    let count = args.across.len().max(args.mould.len());
    if count > MOST {
        let what = format!("{count} sizes at once are too many");
        return Err(Failure::plain(what, format!("Write at most {MOST}.")));
    }
    let unit = read.said().0.units.unit();
    let scaled = args.across.iter().map(|text| {
        let to = length("--across", text, Some(unit))?;
        if to < Length::mm(20.0) {
            let what = format!("--across {text}: nobody weaves over so small a mould");
            return Err(Failure::plain(what, "Write a size of at least 20 mm (13/16 in)."));
        }
        Written::scaled(&args.reading, read, to)
    });
    let owned = args.mould.iter().map(|path| Written::over(&args.reading, read, path));
    scaled.chain(owned).collect()
}

/// `--out`, or the pattern's name and `-sizes`; a folder that is there is left alone.
fn folder(args: &Args) -> Result<PathBuf, Failure> {
    let out = args.out.clone().unwrap_or_else(|| single::named(args.reading.file(), "sizes"));
    if out.symlink_metadata().is_ok() {
        return Err(Failure::plain(
            format!("{}: there is something of this name already", out.display()),
            "Name another folder with --out; patterns are never written over.",
        ));
    }
    Ok(out)
}

fn together(args: &Args, read: &Read, each: Vec<Written>, wanted: Length) -> Result<Sizes, Failure> {
    let mut nests = Vec::new();
    for pair in each.windows(2) {
        let [inner, outer] = pair else { continue };
        let nest = Nest::of(&inner.draft.basket, &outer.draft.basket);
        let names = [inner.name.clone(), outer.name.clone()];
        let scaled = |to: Length| {
            let to = to_the_mark(to, read.said().0.units);
            Written::scaled(&args.reading, read, to).map(|written| written.draft)
        };
        let serves = if nest.fits(wanted) {
            None
        } else {
            serving(&inner.draft.basket, (outer.across, nest), wanted, scaled)?
        };
        let finding = in_a_nest(&nest, names.each_ref().map(String::as_str), wanted, serves);
        nests.push(Standing { names, nest, finding });
    }
    let students: Vec<Student> = each
        .iter()
        .map(|size| Student { name: size.name.clone(), draft: &size.draft, colours: BTreeMap::default() })
        .collect();
    let kits = Kits::of(&students);
    let each =
        each.into_iter().map(|size| Size { name: size.name, draft: size.draft, changes: size.changes });
    Ok(Sizes { each: each.collect(), nests, wanted, kits })
}
