//! What a photograph's file holds beside its pixels and what it takes to show them.

use image::ImageFormat;

/// Chunks that show a PNG file's pixels (PNG Specification, third edition, W3C 2025, §11).
const PNG_PIXELS: [&[u8; 4]; 14] = [
    b"IHDR", b"PLTE", b"IDAT", b"IEND", b"tRNS", b"cHRM", b"gAMA", b"iCCP", b"sBIT", b"sRGB", b"cICP",
    b"bKGD", b"pHYs", b"hIST",
];

/// Whether the file holds more: what a camera or a program adds. What cannot be followed holds more.
pub(super) fn holds_more(bytes: &[u8], format: ImageFormat) -> bool {
    let pixels_alone = if format == ImageFormat::Png { png(bytes) } else { jpeg(bytes) };
    pixels_alone.is_none()
}

/// Something if each chunk up to the end of the file is for the pixels.
fn png(bytes: &[u8]) -> Option<()> {
    let mut rest = bytes.get(8..)?;
    while !rest.is_empty() {
        let (length, after) = rest.split_first_chunk()?;
        let (kind, after) = after.split_first_chunk()?;
        PNG_PIXELS.contains(&kind).then_some(())?;
        // After the data stands a checksum of four bytes.
        rest = after.get(usize::try_from(u32::from_be_bytes(*length)).ok()?..)?.get(4..)?;
    }
    Some(())
}

/// Something if each segment up to the pixels is for them, and nothing stands behind their end. Of the
/// segments APP0 to APP15 and COM (ITU-T T.81, 1992, table B.1) that are JFIF's, Adobe's and a profile
/// of colours.
fn jpeg(bytes: &[u8]) -> Option<()> {
    let mut rest = bytes.strip_suffix(&[0xff, 0xd9])?.get(2..)?;
    loop {
        let (&[mark, marker, high, low], after) = rest.split_first_chunk()?;
        let length = usize::from(u16::from_be_bytes([high, low])).checked_sub(2)?;
        let (segment, after) = after.split_at_checked(length)?;
        let is_for_pixels = match marker {
            0xe0 => segment.starts_with(b"JFIF\0"),
            0xe2 => segment.starts_with(b"ICC_PROFILE\0"),
            0xee => segment.starts_with(b"Adobe"),
            0xe1..=0xef | 0xfe => false,
            _ => true,
        };
        (mark == 0xff && is_for_pixels).then_some(())?;
        if marker == 0xda {
            return Some(());
        }
        rest = after;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A file with this put in at the place where its first own part ends.
    fn with(bytes: &[u8], at: usize, added: &[u8]) -> Vec<u8> {
        [&bytes[..at], added, &bytes[at..]].concat()
    }

    fn plain(format: ImageFormat) -> Vec<u8> {
        let mut bytes = std::io::Cursor::new(Vec::new());
        image::DynamicImage::new_rgb8(16, 8).write_to(&mut bytes, format).unwrap();
        bytes.into_inner()
    }

    #[test]
    fn pixels_alone_hold_no_more() {
        for format in [ImageFormat::Png, ImageFormat::Jpeg] {
            assert!(!holds_more(&plain(format), format), "{format:?}");
        }
    }

    #[test]
    fn texts_and_times_of_a_png_are_more() {
        for kind in [b"tEXt", b"iTXt", b"zTXt", b"eXIf", b"tIME"] {
            let chunk = [&3_u32.to_be_bytes()[..], kind, b"A\0b", &[0; 4]].concat();
            // Behind the signature (8 bytes) and IHDR (25).
            assert!(holds_more(&with(&plain(ImageFormat::Png), 33, &chunk), ImageFormat::Png), "{kind:?}");
        }
    }

    #[test]
    fn comments_and_application_data_of_a_jpeg_are_more() {
        for marker in [0xe1, 0xe2, 0xed, 0xef, 0xfe] {
            let segment = [&[0xff, marker, 0, 9][..], b"harbour"].concat();
            let more = with(&plain(ImageFormat::Jpeg), 2, &segment);
            assert!(holds_more(&more, ImageFormat::Jpeg), "{marker:x}");
        }
        let profile = [&[0xff, 0xe2, 0, 16][..], b"ICC_PROFILE\0\x01\x01"].concat();
        assert!(!holds_more(&with(&plain(ImageFormat::Jpeg), 2, &profile), ImageFormat::Jpeg));
    }

    #[test]
    fn what_stands_behind_the_end_or_breaks_off_is_more() {
        for format in [ImageFormat::Png, ImageFormat::Jpeg] {
            let plain = plain(format);
            assert!(holds_more(&[&plain[..], b"harbour"].concat(), format), "{format:?}");
            assert!(holds_more(&plain[..plain.len() - 1], format), "{format:?}");
        }
    }
}
