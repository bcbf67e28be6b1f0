//! Photographs of moulds: read for tracing, and drawn upon with what was traced.

mod overlay;

use std::fmt::Display;
use std::io::Read;
use std::path::Path;

use basket::limits::{PHOTO_BYTES, PHOTO_PIXELS, PHOTO_SIDE};
use image::imageops::FilterType;
use image::{DynamicImage, ImageDecoder, ImageError, ImageFormat, ImageResult, RgbImage};
use silhouette::Camera;

pub(crate) use overlay::marked;

use crate::failure::Failure;
use crate::input::{self, Unopened};
use crate::photos::size;
use crate::source::Origin;

/// Distance of the camera where it is not said, in mm.
const DISTANCE: f64 = 1500.0;
/// Sides that differ by more than this share of the diameter are worth a look.
pub(crate) const LOPSIDED: f64 = 0.01;
/// Longest side of a picture that is traced: more pixels say nothing more of a mould.
const LONGEST: u32 = 2400;

/// The camera, so far in mm from the mould's middle; where that is not said it is taken, and trusted less.
pub(crate) fn camera(distance: Option<f64>, foot_up: bool) -> Camera {
    Camera { distance_mm: distance.unwrap_or(DISTANCE), is_measured: distance.is_some(), foot_up }
}

/// The photograph as it was held, no larger than tells of the mould.
pub(crate) fn read(path: &Path) -> Result<RgbImage, Failure> {
    let bytes = bytes(path)?;
    if bytes.is_empty() {
        return Err(bad(path, "the file is empty", "Copy the photo again."));
    }
    let format = image::guess_format(&bytes)
        .ok()
        .filter(|format| matches!(format, ImageFormat::Png | ImageFormat::Jpeg));
    let Some(format) = format else {
        return Err(bad(path, "this is neither a PNG nor a JPEG picture", "Save the photo as one of these."));
    };
    let image = decoded(&bytes, format).map_err(|error| match error {
        ImageError::Limits(_) => {
            let most = PHOTO_PIXELS / 1_000_000;
            bad(
                path,
                format!("more than {PHOTO_SIDE} pixels along a side or {most} million in all"),
                "Save it smaller; 2000 pixels across are plenty.",
            )
        }
        error => bad(path, format!("the picture is broken: {error}"), "Save or copy it again."),
    })?;
    Ok(no_larger(image))
}

/// The same of a photograph that was sent.
pub(crate) fn of(bytes: &[u8]) -> ImageResult<RgbImage> {
    decoded(bytes, image::guess_format(bytes)?).map(no_larger)
}

fn no_larger(image: DynamicImage) -> RgbImage {
    let is_large = image.width().max(image.height()) > LONGEST;
    let image = if is_large { image.resize(LONGEST, LONGEST, FilterType::Triangle) } else { image };
    image.into_rgb8()
}

fn decoded(bytes: &[u8], format: ImageFormat) -> ImageResult<DynamicImage> {
    let mut room = PHOTO_PIXELS;
    let mut decoder = size::decoder(bytes, format, &mut room)?;
    let orientation = decoder.orientation()?;
    let mut image = DynamicImage::from_decoder(decoder)?;
    image.apply_orientation(orientation);
    Ok(image)
}

fn bytes(path: &Path) -> Result<Vec<u8>, Failure> {
    let missing = |error: std::io::Error| bad(path, error, "Check the name of the photo.");
    let file = input::open(path).map_err(|unopened| match unopened {
        Unopened::Refused(error) => missing(error),
        Unopened::Odd(_) | Unopened::Outside => bad(path, "this is not a file", "Name the photo itself."),
    })?;
    let mut bytes = Vec::new();
    file.take(PHOTO_BYTES + 1).read_to_end(&mut bytes).map_err(missing)?;
    if bytes.len() as u64 > PHOTO_BYTES {
        let message = format!("the file is larger than {} MB", PHOTO_BYTES / 1_000_000);
        return Err(bad(path, message, "Save the photo smaller; 2000 pixels across are plenty."));
    }
    Ok(bytes)
}

fn bad(path: &Path, message: impl Display, help: &str) -> Failure {
    Failure::of_file(&Origin::File(path.to_owned()), message, help)
}
