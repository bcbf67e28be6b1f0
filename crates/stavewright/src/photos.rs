//! Photographs that a pattern's notes name: read from beside the pattern, never from elsewhere.

mod extras;
pub(crate) mod size;

use std::collections::BTreeSet;
use std::io::Read;
use std::path::Path;

use basket::limits::{PHOTO_BYTES, PHOTO_PIXELS, PHOTO_SIDE, PHOTOS_BYTES, PHOTOS_PIXELS};
use basket::pattern::{Pattern, Problem};
use image::codecs::jpeg::JpegEncoder;
use image::codecs::png::PngEncoder;
use image::metadata::Orientation;
use image::{DynamicImage, ImageDecoder, ImageEncoder, ImageError, ImageFormat, ImageResult};
use sheets::Photos;

use crate::failure::Failure;
use crate::input::{self, Unopened};
use crate::source::Text;

/// Quality in which a JPEG file is saved anew, of 100.
const QUALITY: u8 = 92;

/// Reads and checks all photographs of a pattern that lies in this folder.
pub(crate) fn load(pattern: &Pattern, text: &Text) -> Result<Photos, Failure> {
    let mut photos = Photos::default();
    let mut problems = Vec::new();
    let mut room = Room { bytes: PHOTOS_BYTES, pixels: PHOTOS_PIXELS };
    // One that several notes show is read once.
    let mut seen = BTreeSet::new();
    for photo in pattern.notes.iter().filter_map(|note| note.photo.as_ref()) {
        if !seen.insert(photo.path.as_str()) {
            continue;
        }
        match read(text.origin.folder(), &photo.path, &mut room) {
            Ok(bytes) => photos = photos.with(photo.path.clone(), bytes),
            Err((message, help)) => problems.push(Problem {
                message: format!("the photo `{}` {message}", photo.path),
                span: Some(photo.span.clone()),
                help: Some(help.to_owned()),
                fault: None,
            }),
        }
    }
    if problems.is_empty() { Ok(photos) } else { Err(Failure::Misread { text: text.clone(), problems }) }
}

/// Reads and checks photographs that lie in this folder, by their names.
pub(crate) fn check(folder: &Path, names: &[String]) -> Result<(), Fault> {
    let mut room = Room { bytes: PHOTOS_BYTES, pixels: PHOTOS_PIXELS };
    for name in names {
        let named = |(what, help): Fault| (format!("the photo `{name}` {what}"), help);
        read(folder, name, &mut room).map_err(named)?;
    }
    Ok(())
}

/// Why a photograph of a making is not taken.
pub(crate) enum Unfit {
    /// It is no JPEG file.
    Kind,
    /// It has too many pixels.
    Large,
    /// It cannot be read.
    Broken,
}

/// A JPEG photograph upright and with its pixels alone, or with what the camera tells of it where that is wanted.
pub(crate) fn upright(bytes: Vec<u8>, with_all: bool) -> Result<Vec<u8>, Unfit> {
    if image::guess_format(&bytes).ok() != Some(ImageFormat::Jpeg) {
        return Err(Unfit::Kind);
    }
    let mut room = PHOTOS_PIXELS;
    let anew = if with_all { upright_alone } else { pixels_alone };
    match anew(&bytes, ImageFormat::Jpeg, &mut room) {
        Ok(anew) => Ok(anew.unwrap_or(bytes)),
        Err(ImageError::Limits(_)) => Err(Unfit::Large),
        Err(_) => Err(Unfit::Broken),
    }
}

/// What is left of what all photographs together may have.
struct Room {
    bytes: usize,
    pixels: u64,
}

/// What is wrong with a photograph, and how to mend it.
pub(crate) type Fault = (String, &'static str);

fn read(folder: &Path, name: &str, room: &mut Room) -> Result<Vec<u8>, Fault> {
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
    let file = input::inside(folder, name).and_then(|path| input::open(&path)).map_err(unopened)?;
    let mut bytes = Vec::new();
    file.take(PHOTO_BYTES + 1).read_to_end(&mut bytes).map_err(missing)?;
    if bytes.len() as u64 > PHOTO_BYTES {
        let help = "save it smaller; 2000 pixels across are plenty for print";
        return Err((format!("is larger than {} MB", PHOTO_BYTES / 1_000_000), help));
    }
    checked(name, bytes, room)
}

/// Asserts that the file is what its name says, finds room and decodes.
fn checked(name: &str, bytes: Vec<u8>, room: &mut Room) -> Result<Vec<u8>, Fault> {
    let (wanted, kind) = if name.to_lowercase().ends_with(".png") {
        (ImageFormat::Png, "PNG")
    } else {
        (ImageFormat::Jpeg, "JPEG")
    };
    if image::guess_format(&bytes).ok() != Some(wanted) {
        return Err((format!("is not a {kind} file inside"), "save it again as what its name says"));
    }
    room.bytes = room.bytes.checked_sub(bytes.len()).ok_or_else(|| {
        let fault = format!("is one too many: all together have more than {} MB", PHOTOS_BYTES / 1_000_000);
        (fault, "save the photos smaller")
    })?;
    match pixels_alone(&bytes, wanted, &mut room.pixels) {
        Ok(anew) => Ok(anew.unwrap_or(bytes)),
        Err(ImageError::Limits(_)) => Err((
            format!(
                "has more than {PHOTO_SIDE} pixels along a side or {} million in all, or is one too many: all \
                 together have more than {} million",
                PHOTO_PIXELS / 1_000_000,
                PHOTOS_PIXELS / 1_000_000
            ),
            "save it smaller; 2000 pixels across are plenty for print",
        )),
        Err(error) => Err((format!("is broken: {error}"), "save or copy it again")),
    }
}

/// Decodes a photograph. If its file holds more than pixels (where and when it was taken, with what), it
/// is turned upright and saved anew without that; a sheet that is handed out tells nobody's address.
fn pixels_alone(bytes: &[u8], format: ImageFormat, room: &mut u64) -> ImageResult<Option<Vec<u8>>> {
    let mut decoder = size::decoder(bytes, format, room)?;
    let (upright, colours) = (decoder.orientation()?, decoder.icc_profile()?);
    let mut image = DynamicImage::from_decoder(decoder)?;
    if !extras::holds_more(bytes, format) {
        return Ok(None);
    }
    image.apply_orientation(upright);
    written(&image, format, Beside { colours, told: None }).map(Some)
}

/// Decodes a photograph. If it lies on its side, it is turned and saved anew with what the camera tells of it.
fn upright_alone(bytes: &[u8], format: ImageFormat, room: &mut u64) -> ImageResult<Option<Vec<u8>>> {
    let mut decoder = size::decoder(bytes, format, room)?;
    let (upright, colours) = (decoder.orientation()?, decoder.icc_profile()?);
    let mut told = decoder.exif_metadata()?;
    let mut image = DynamicImage::from_decoder(decoder)?;
    if upright == Orientation::NoTransforms {
        return Ok(None);
    }
    image.apply_orientation(upright);
    if let Some(told) = &mut told {
        // It would be turned once more by whoever looks at it.
        let _ = Orientation::remove_from_exif_chunk(told);
    }
    written(&image, format, Beside { colours, told }).map(Some)
}

/// What a file holds beside the pixels.
struct Beside {
    /// A profile of its colours.
    colours: Option<Vec<u8>>,
    /// What the camera tells of it.
    told: Option<Vec<u8>>,
}

fn written(image: &DynamicImage, format: ImageFormat, beside: Beside) -> ImageResult<Vec<u8>> {
    let mut anew = Vec::new();
    if format == ImageFormat::Png {
        write(image, PngEncoder::new(&mut anew), beside)?;
    } else {
        write(image, JpegEncoder::new_with_quality(&mut anew, QUALITY), beside)?;
    }
    Ok(anew)
}

fn write(image: &DynamicImage, mut encoder: impl ImageEncoder, beside: Beside) -> ImageResult<()> {
    if let Some(profile) = beside.colours {
        // Both forms can hold a profile; without it the colours are only a little off.
        let _ = encoder.set_icc_profile(profile);
    }
    if let Some(told) = beside.told {
        let _ = encoder.set_exif_metadata(told);
    }
    image.write_with_encoder(encoder)
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

    fn room() -> Room {
        Room { bytes: PHOTOS_BYTES, pixels: PHOTOS_PIXELS }
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
            let kept = checked(name, bytes, &mut room()).unwrap();
            assert!(!harbour(&kept), "{name}");
            let image = image::load_from_memory(&kept).unwrap();
            assert_eq!((image.width(), image.height()), (8, 16), "{name}");
        }
    }

    #[test]
    fn a_photo_that_may_tell_all_is_upright_too_and_is_not_turned_twice() {
        let bytes = photo(ImageFormat::Jpeg, Some(told()));
        let harbour = |bytes: &[u8]| bytes.windows(7).any(|window| window == b"harbour");
        for with_all in [true, false] {
            let kept = upright(bytes.clone(), with_all).unwrap_or_else(|_| panic!("{with_all}"));
            assert_eq!(harbour(&kept), with_all);
            let mut room = PHOTOS_PIXELS;
            let mut decoder = size::decoder(&kept, ImageFormat::Jpeg, &mut room).unwrap();
            assert_eq!(decoder.dimensions(), (8, 16));
            assert_eq!(decoder.orientation().unwrap(), Orientation::NoTransforms);
            // What stands upright and may tell all stays as it is.
            drop(decoder);
            assert_eq!(upright(kept.clone(), true).ok(), Some(kept));
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
            let kept = checked(name, bytes, &mut room()).unwrap();
            assert!(!kept.windows(7).any(|window| window == b"harbour"), "{name}");
            let image = image::load_from_memory(&kept).unwrap();
            assert_eq!((image.width(), image.height()), (16, 8), "{name}");
        }
    }

    #[test]
    fn a_photo_that_tells_nothing_stays_as_it_is() {
        for (name, format) in NAMES {
            let bytes = photo(format, None);
            assert_eq!(checked(name, bytes.clone(), &mut room()).unwrap(), bytes, "{name}");
        }
    }

    /// The head of a file says its size (PNG Specification, third edition, W3C 2025, §11.2.1; ITU-T T.81, 1992,
    /// B.2.2); whatever it says, nothing is decoded before that is looked at.
    #[test]
    fn a_photo_that_says_it_is_huge_is_refused_before_it_is_decoded() {
        for (name, format) in NAMES {
            let mut bytes = photo(format, None);
            let at = if format == ImageFormat::Png {
                16
            } else {
                bytes.windows(2).position(|marker| marker == [0xff, 0xc0]).unwrap() + 5
            };
            if format == ImageFormat::Png {
                bytes[at..at + 8].copy_from_slice(&[0, 0, 0x27, 0x10, 0, 0, 0x27, 0x10]);
                let sum = png_sum(&bytes[12..29]);
                bytes[29..33].copy_from_slice(&sum.to_be_bytes());
            } else {
                bytes[at..at + 4].copy_from_slice(&[0x27, 0x10, 0x27, 0x10]);
            }
            // 10000 along each side, as many as may be, but 100 million in all.
            let (message, _) = checked(name, bytes, &mut room()).unwrap_err();
            assert!(message.contains("40 million"), "{name}: {message}");
        }
    }

    /// The checksum of a chunk (PNG Specification, annex D).
    fn png_sum(bytes: &[u8]) -> u32 {
        !bytes.iter().fold(u32::MAX, |sum, byte| {
            (0..8).fold(sum ^ u32::from(*byte), |sum, _| {
                if sum & 1 == 1 { (sum >> 1) ^ 0xedb8_8320 } else { sum >> 1 }
            })
        })
    }

    #[test]
    fn photos_share_their_room() {
        let (name, format) = NAMES[0];
        let mut room = Room { bytes: PHOTOS_BYTES, pixels: 200 };
        assert!(checked(name, photo(format, None), &mut room).is_ok());
        assert_eq!(room.pixels, 200 - 16 * 8);
        assert!(checked(name, photo(format, None), &mut room).is_err());
    }
}
