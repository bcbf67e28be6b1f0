//! Drawings in dots.

use std::sync::Arc;

use drawings::Drawing;
use resvg::{tiny_skia, usvg};

/// Dots in a millimetre of a PNG picture.
pub(crate) const DENSITY: f64 = 8.0;

/// The drawing as PNG, so many times its true size, [`DENSITY`] dots a millimetre; none when that
/// makes no picture.
pub(crate) fn png(drawing: &Drawing, times: f64) -> Option<Vec<u8>> {
    let mut options = usvg::Options::default();
    let fonts = Arc::make_mut(&mut options.fontdb);
    typst_assets::fonts().for_each(|font| fonts.load_font_data(font.to_vec()));
    let tree = usvg::Tree::from_str(&drawing.to_svg(), &options).ok()?;
    let scale = (drawing.width() * times * DENSITY) as f32 / tree.size().width();
    let dots = |length: f32| (length * scale).ceil() as u32;
    let mut picture = tiny_skia::Pixmap::new(dots(tree.size().width()), dots(tree.size().height()))?;
    picture.fill(tiny_skia::Color::WHITE);
    resvg::render(&tree, tiny_skia::Transform::from_scale(scale, scale), &mut picture.as_mut());
    picture.encode_png().ok()
}
