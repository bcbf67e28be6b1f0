//! Weaves drawn by hand in a file of their own: rows of signs, or a picture with a dot a crossing.

use std::io::{self, Cursor, Read};
use std::path::{Path, PathBuf};

use basket::limits::{CHART_BYTES, CHART_SIDE, PICTURE_EXTRAS};
use basket::pattern::Pattern;
use basket::pattern::drawn::{Drawn, DrawnFault};
use image::{DynamicImage, ImageError, ImageFormat, ImageReader, ImageResult, Limits, Rgba, RgbaImage};

use crate::failure::Failure;
use crate::input::{self, Unopened};
use crate::source::{Origin, Text};

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
    file.take(CHART_BYTES + 1).read_to_end(&mut bytes).map_err(|error| cannot(error.into()))?;
    if bytes.len() as u64 > CHART_BYTES {
        return Err(Failure::of_file(
            origin,
            "more than 8 MB, far too large for a chart",
            "Draw one dot a crossing.",
        ));
    }
    let picture = decoded(&bytes).map_err(|error| match error {
        ImageError::Limits(_) => Failure::of_file(
            origin,
            format!("more than {CHART_SIDE} dots along a side, or too large to hold"),
            "Draw one repeat, one dot a crossing: it is repeated round and upward.",
        ),
        error => Failure::of_file(
            origin,
            format!("not a picture that can be read: {error}"),
            "Save it as PNG, one dot a crossing.",
        ),
    })?;
    let width = picture.width() as usize;
    let dots = picture.pixels().enumerate().map(|(index, dot)| {
        over(*dot).ok_or_else(|| unclear(origin, index % width.max(1), index / width.max(1), *dot))
    });
    let dots: Vec<bool> = dots.collect::<Result<_, _>>()?;
    let rows = dots.chunks(width.max(1)).map(<[bool]>::to_vec).collect();
    Drawn::of(rows).map_err(|fault| Failure::of_file(origin, &fault, fault.help()))
}

/// The dots of a picture, whose size is looked at before any of them.
fn decoded(bytes: &[u8]) -> ImageResult<RgbaImage> {
    let mut limits = Limits::default();
    limits.max_image_width = Some(CHART_SIDE);
    limits.max_image_height = Some(CHART_SIDE);
    // For what stands beside the dots; those have the room that their size says.
    limits.max_alloc = Some(PICTURE_EXTRAS);
    let mut reader = ImageReader::with_format(Cursor::new(bytes), ImageFormat::Png);
    reader.limits(limits);
    Ok(DynamicImage::from_decoder(reader.into_decoder()?)?.into_rgba8())
}

/// Whether a dot is the weaver; none if it is neither dark nor light. A clear dot is paper.
fn over(Rgba([red, green, blue, alpha]): Rgba<u8>) -> Option<bool> {
    // Lightness as the eye weighs it (Rec. 601).
    let ink = 0.299 * f64::from(red) + 0.587 * f64::from(green) + 0.114 * f64::from(blue);
    let light = 255.0 + (ink - 255.0) * f64::from(alpha) / 255.0;
    if light <= DARK {
        Some(true)
    } else if light >= LIGHT {
        Some(false)
    } else {
        None
    }
}

fn unclear(origin: &Origin, column: usize, row: usize, Rgba([red, green, blue, _]): Rgba<u8>) -> Failure {
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
