//! Photographs that a pattern's notes name: read from beside the pattern, never from elsewhere.

mod extras;

use std::io::{Cursor, Read};
use std::path::Path;

use basket::pattern::{Pattern, Photo, Problem};
use image::codecs::jpeg::JpegEncoder;
use image::codecs::png::PngEncoder;
use image::{DynamicImage, ImageDecoder, ImageEncoder, ImageFormat, ImageReader, ImageResult, Limits};
use sheets::Photos;

use crate::failure::Failure;
use crate::input::{self, Unopened};
use crate::source::Text;

/// The largest photograph that is read, and all together, in bytes.
const LARGEST: u64 = 10_000_000;
const LARGEST_ALL: usize = 60_000_000;
/// Most pixels along a side.
const MOST_PIXELS: u32 = 10_000;
/// Quality in which a JPEG file is saved anew, of 100.
const QUALITY: u8 = 92;

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
    let missing = |error: std::io::Error| {
        let help = "the path starts in the pattern's own folder; check the name and its capitals";
        (format!("cannot be read: {error}"), help)
    };
    let unopened = |unopened: Unopened| match unopened {
        Unopened::Outside => (
            "lies outside the pattern's folder".to_owned(),
            "copy the photo itself into the folder; a link that leads out of it is not followed",
        ),
        Unopened::Odd(_) => ("is not a file".to_owned(), "name the picture file itself"),
        Unopened::Refused(error) => missing(error),
    };
    let file = input::inside(folder, &photo.path).and_then(|path| input::open(&path)).map_err(unopened)?;
    let mut bytes = Vec::new();
    file.take(LARGEST + 1).read_to_end(&mut bytes).map_err(missing)?;
    if bytes.len() as u64 > LARGEST {
        let help = "save it smaller; 2000 pixels across are plenty for print";
        return Err(("is larger than 10 MB".to_owned(), help));
    }
    checked(&photo.path, bytes)
}

/// Asserts that the file is what its name says, and decodes.
fn checked(name: &str, bytes: Vec<u8>) -> Result<Vec<u8>, Fault> {
    let (wanted, kind) = if name.to_lowercase().ends_with(".png") {
        (ImageFormat::Png, "PNG")
    } else {
        (ImageFormat::Jpeg, "JPEG")
    };
    if image::guess_format(&bytes).ok() != Some(wanted) {
        return Err((format!("is not a {kind} file inside"), "save it again as what its name says"));
    }
    match pixels_alone(&bytes, wanted) {
        Ok(anew) => Ok(anew.unwrap_or(bytes)),
        Err(image::ImageError::Limits(_)) => Err((
            format!("has more than {MOST_PIXELS} pixels along a side, or is too large to hold"),
            "save it smaller; 2000 pixels across are plenty for print",
        )),
        Err(error) => Err((format!("is broken: {error}"), "save or copy it again")),
    }
}

/// Decodes a photograph. If its file holds more than pixels (where and when it was taken, with what), it
/// is turned upright and saved anew without that; a sheet that is handed out tells nobody's address.
fn pixels_alone(bytes: &[u8], format: ImageFormat) -> ImageResult<Option<Vec<u8>>> {
    let mut limits = Limits::default();
    limits.max_image_width = Some(MOST_PIXELS);
    limits.max_image_height = Some(MOST_PIXELS);
    let mut reader = ImageReader::with_format(Cursor::new(bytes), format);
    reader.limits(limits.clone());
    let mut decoder = reader.into_decoder()?;
    limits.reserve(decoder.total_bytes())?;
    let (upright, colours) = (decoder.orientation()?, decoder.icc_profile()?);
    let mut image = DynamicImage::from_decoder(decoder)?;
    if !extras::holds_more(bytes, format) {
        return Ok(None);
    }
    image.apply_orientation(upright);
    let mut anew = Vec::new();
    if format == ImageFormat::Png {
        write(&image, PngEncoder::new(&mut anew), colours)?;
    } else {
        write(&image, JpegEncoder::new_with_quality(&mut anew, QUALITY), colours)?;
    }
    Ok(Some(anew))
}

fn write(image: &DynamicImage, mut encoder: impl ImageEncoder, colours: Option<Vec<u8>>) -> ImageResult<()> {
    if let Some(profile) = colours {
        // Both forms can hold a profile; without it the colours are only a little off.
        let _ = encoder.set_icc_profile(profile);
    }
    image.write_with_encoder(encoder)
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

#[cfg(test)]
mod tests {
    use super::*;

    /// The data that a camera adds (Exif 2.32, CIPA DC-008-2019, §4.6): that the picture lies on its
    /// side, turned by a quarter, and a description.
    fn told() -> Vec<u8> {
        let text = b"at the harbour wall\0";
        let mut data = b"II*\0\x08\0\0\0\x02\0".to_vec();
        for (tag, kind, count, value) in [(0x010e_u16, 2_u16, text.len() as u32, 38_u32), (0x0112, 3, 1, 6)] {
            data.extend(tag.to_le_bytes());
            data.extend(kind.to_le_bytes());
            data.extend(count.to_le_bytes());
            data.extend(value.to_le_bytes());
        }
        data.extend([0; 4]);
        data.extend(text);
        data
    }

    const NAMES: [(&str, ImageFormat); 2] = [("rim.png", ImageFormat::Png), ("rim.jpg", ImageFormat::Jpeg)];

    fn photo(format: ImageFormat, told: Option<Vec<u8>>) -> Vec<u8> {
        fn write(mut encoder: impl ImageEncoder, told: Option<Vec<u8>>) {
            if let Some(told) = told {
                encoder.set_exif_metadata(told).unwrap();
            }
            DynamicImage::new_rgb8(16, 8).write_with_encoder(encoder).unwrap();
        }
        let mut bytes = Vec::new();
        if format == ImageFormat::Png {
            write(PngEncoder::new(&mut bytes), told);
        } else {
            write(JpegEncoder::new(&mut bytes), told);
        }
        bytes
    }

    #[test]
    fn a_photo_keeps_its_pixels_upright_and_tells_nothing_else() {
        for (name, format) in NAMES {
            let bytes = photo(format, Some(told()));
            let harbour = |bytes: &[u8]| bytes.windows(7).any(|window| window == b"harbour");
            assert!(harbour(&bytes), "{name}");
            let kept = checked(name, bytes).unwrap();
            assert!(!harbour(&kept), "{name}");
            let image = image::load_from_memory(&kept).unwrap();
            assert_eq!((image.width(), image.height()), (8, 16), "{name}");
        }
    }

    #[test]
    fn a_comment_is_left_out() {
        let comment = [&[0xff, 0xfe, 0, 9][..], b"harbour"].concat();
        let text =
            [&9_u32.to_be_bytes()[..], b"tEXt", b"A\0harbour", &0xefcb_dd53_u32.to_be_bytes()].concat();
        for ((name, format), (at, added)) in NAMES.into_iter().zip([(33, text), (2, comment)]) {
            let mut bytes = photo(format, None);
            bytes.splice(at..at, added);
            let kept = checked(name, bytes).unwrap();
            assert!(!kept.windows(7).any(|window| window == b"harbour"), "{name}");
            let image = image::load_from_memory(&kept).unwrap();
            assert_eq!((image.width(), image.height()), (16, 8), "{name}");
        }
    }

    #[test]
    fn a_photo_that_tells_nothing_stays_as_it_is() {
        for (name, format) in NAMES {
            let bytes = photo(format, None);
            assert_eq!(checked(name, bytes.clone()).unwrap(), bytes, "{name}");
        }
    }
}
