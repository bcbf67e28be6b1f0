//! A photograph's size is looked at before anything of it is decoded.

use std::io::Cursor;

use basket::limits::{PHOTO_PIXELS, PHOTO_SIDE, PICTURE_EXTRAS};
use image::error::{LimitError, LimitErrorKind};
use image::{ImageDecoder, ImageError, ImageFormat, ImageReader, ImageResult, Limits};

/// The decoder of a photograph that is not too large and finds room among the pixels that are left.
pub(crate) fn decoder<'a>(
    bytes: &'a [u8],
    format: ImageFormat,
    room: &mut u64,
) -> ImageResult<impl ImageDecoder + 'a> {
    let mut limits = Limits::default();
    limits.max_image_width = Some(PHOTO_SIDE);
    limits.max_image_height = Some(PHOTO_SIDE);
    // For what stands beside the pixels; those have the room that their size says.
    limits.max_alloc = Some(PICTURE_EXTRAS);
    let mut reader = ImageReader::with_format(Cursor::new(bytes), format);
    reader.limits(limits);
    let decoder = reader.into_decoder()?;
    let (width, height) = decoder.dimensions();
    let pixels = u64::from(width) * u64::from(height);
    let left = room.checked_sub(pixels).filter(|_| pixels <= PHOTO_PIXELS);
    *room = left.ok_or_else(too_large)?;
    if decoder.total_bytes() > 4 * PHOTO_PIXELS {
        return Err(too_large());
    }
    Ok(decoder)
}

fn too_large() -> ImageError {
    ImageError::Limits(LimitError::from_kind(LimitErrorKind::DimensionError))
}
