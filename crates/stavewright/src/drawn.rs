//! Weaves drawn by hand in a file of their own: rows of signs, or a picture with a dot a crossing.

use std::io::{self, Read};
use std::path::{Path, PathBuf};

use basket::pattern::Pattern;
use basket::pattern::drawn::{Drawn, DrawnFault};
use resvg::tiny_skia::{Pixmap, PremultipliedColorU8};

use crate::failure::Failure;
use crate::input::{self, Unopened};
use crate::source::{Origin, Text};

/// The largest picture that is read, in bytes.
const LARGEST: u64 = 8_000_000;
/// A dot of at most this lightness (of 255) is the weaver, one of at least [`LIGHT`] the stave.
const DARK: f64 = 96.0;
const LIGHT: f64 = 160.0;

/// Loads the drawings that a pattern names; they lie beside it.
pub(crate) fn load(pattern: &mut Pattern, folder: &Path) -> Result<(), Failure> {
    for course in &mut pattern.weave.courses {
        if let Some(name) = &course.chart_file {
            course.chart = Some(read(&found(folder, name)?)?);
        }
    }
    Ok(())
}

/// The chart's file as the pattern names it, if it really lies in the pattern's folder or below.
fn found(folder: &Path, name: &str) -> Result<PathBuf, Failure> {
    let path = folder.join(name);
    let origin = Origin::File(path.clone());
    match input::inside(folder, name) {
        Ok(_) => Ok(path),
        Err(Unopened::Refused(error)) if error.kind() == io::ErrorKind::NotFound => Err(Failure::of_file(
            &origin,
            "there is no such file",
            "A chart lies in the pattern's own folder or below; check its name and its capitals.",
        )),
        Err(unopened) => Err(Failure::of_file(
            &origin,
            unopened,
            "Copy the chart itself into the pattern's folder; a link that leads out of it is not followed.",
        )),
    }
}

fn read(path: &Path) -> Result<Drawn, Failure> {
    let origin = Origin::File(path.to_owned());
    let ending = path.extension().and_then(|ending| ending.to_str()).unwrap_or_default().to_lowercase();
    match ending.as_str() {
        "png" => picture(path, &origin),
        "csv" | "txt" => {
            let text = input::read(origin)?;
            Drawn::text(&text.content).map_err(|fault| misdrawn(&text, &fault))
        }
        _ => Err(Failure::of_file(
            &origin,
            "a chart is a .csv, .txt or .png file",
            "Save the drawing as one of them.",
        )),
    }
}

/// The fault at its line and column in the file.
fn misdrawn(text: &Text, fault: &DrawnFault) -> Failure {
    let mut written = text.content.lines().zip(1..).filter(|(line, _)| !line.trim().is_empty());
    let (line, stave) = match fault {
        DrawnFault::Ragged { line, .. } => (*line, None),
        DrawnFault::Sign { line, stave, .. } => (*line, Some(*stave)),
        DrawnFault::Empty | DrawnFault::TooLarge => (1, None),
    };
    let Some((content, line)) = written.nth(line.saturating_sub(1)) else {
        return Failure::of_file(&text.origin, fault, fault.help());
    };
    let signs = content.char_indices().filter(|(_, sign)| !" ,;\t".contains(*sign));
    let column = stave.and_then(|stave| signs.map(|(at, _)| at).nth(stave - 1));
    let column = column.map_or(1, |at| content.get(..at).unwrap_or_default().chars().count() + 1);
    Failure::plain(format!("{}:{line}:{column}: {fault}", text.origin), fault.help())
}

fn picture(path: &Path, origin: &Origin) -> Result<Drawn, Failure> {
    let cannot = |unopened: Unopened| {
        Failure::of_file(origin, unopened, "The chart lies beside the pattern; check its name.")
    };
    let file = input::open(path).map_err(cannot)?;
    let mut bytes = Vec::new();
    file.take(LARGEST + 1).read_to_end(&mut bytes).map_err(|error| cannot(error.into()))?;
    if bytes.len() as u64 > LARGEST {
        return Err(Failure::of_file(
            origin,
            "more than 8 MB, far too large for a chart",
            "Draw one dot a crossing.",
        ));
    }
    let picture = Pixmap::decode_png(&bytes).map_err(|error| {
        Failure::of_file(
            origin,
            format!("not a picture that can be read: {error}"),
            "Save it as PNG, one dot a crossing.",
        )
    })?;
    let width = picture.width() as usize;
    let dots = picture.pixels().iter().enumerate().map(|(index, dot)| {
        over(*dot).ok_or_else(|| unclear(origin, index % width.max(1), index / width.max(1), *dot))
    });
    let dots: Vec<bool> = dots.collect::<Result<_, _>>()?;
    let rows = dots.chunks(width.max(1)).map(<[bool]>::to_vec).collect();
    Drawn::of(rows).map_err(|fault| Failure::of_file(origin, &fault, fault.help()))
}

/// Whether a dot is the weaver; none if it is neither dark nor light. A clear dot is paper.
fn over(dot: PremultipliedColorU8) -> Option<bool> {
    let paper = 255.0 - f64::from(dot.alpha());
    // Lightness as the eye weighs it (Rec. 601).
    let light =
        0.299 * f64::from(dot.red()) + 0.587 * f64::from(dot.green()) + 0.114 * f64::from(dot.blue()) + paper;
    if light <= DARK {
        Some(true)
    } else if light >= LIGHT {
        Some(false)
    } else {
        None
    }
}

fn unclear(origin: &Origin, column: usize, row: usize, dot: PremultipliedColorU8) -> Failure {
    let [red, green, blue] = [dot.red(), dot.green(), dot.blue()];
    Failure::of_file(
        origin,
        format!(
            "the dot {} from the left, {} from the top (#{red:02x}{green:02x}{blue:02x}) is neither dark nor light",
            column + 1,
            row + 1
        ),
        "Draw the weaver black and the stave white, one dot a crossing, without soft edges.",
    )
}
