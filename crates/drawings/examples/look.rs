//! Writes every drawing of a pattern as SVG and PNG, to be looked at:
//! `cargo run -p drawings --example look -- PATTERN.toml FOLDER [FOLDER-OF-FONTS]`.

#![allow(clippy::trivially_copy_pass_by_ref, reason = "words are handed on by reference in every crate")]

use std::error::Error;
use std::path::Path;
use std::sync::Arc;

use basket::{Catalogue, Hand, Length, assemble};
use drawings::Drawing;
use resvg::{tiny_skia, usvg};
use words::{Language, Words};

/// Pixels in a millimetre.
const DENSITY: f32 = 8.0;

fn main() -> Result<(), Box<dyn Error>> {
    let mut args = std::env::args().skip(1);
    let (Some(pattern), Some(folder)) = (args.next(), args.next()) else {
        return Err("say which pattern and into which folder".into());
    };
    let mut options = usvg::Options::default();
    let fonts = Arc::make_mut(&mut options.fontdb);
    fonts.load_system_fonts();
    if let Some(more) = args.next() {
        fonts.load_fonts_dir(more);
    }
    let catalogue = Catalogue::built_in();
    let pattern = basket::pattern::read(&std::fs::read_to_string(pattern)?, catalogue)
        .map_err(|problems| format!("{problems:?}"))?;
    let basket = assemble(&pattern, catalogue, &Hand::USUAL);
    let words = Words::new(Language::English, basket.units);
    std::fs::create_dir_all(&folder)?;
    for drawing in all(&basket, &words) {
        let svg = drawing.to_svg();
        let place = Path::new(&folder).join(&drawing.name);
        std::fs::write(place.with_extension("svg"), &svg)?;
        render(&svg, &options)?.save_png(place.with_extension("png"))?;
        println!("{} {:.1} × {:.1} mm, {} bytes", drawing.name, drawing.width(), drawing.height(), svg.len());
    }
    Ok(())
}

fn all(basket: &basket::Basket, words: &Words) -> Vec<Drawing> {
    let [width, height, overlap] = [190.0, 220.0, 12.0].map(Length::mm);
    let size = drawings::TileSize { width, height, overlap };
    let mut all = vec![
        drawings::section(basket, words),
        drawings::base_plan(basket, words),
        drawings::base_disc(basket, words),
        drawings::check_bars(words),
        drawings::taper_chart(basket, words),
        drawings::scarf_template(basket, words),
    ];
    all.extend(drawings::ear_template(basket, words));
    for long in [
        drawings::spacing_strip(basket, words, drawings::At::Base),
        drawings::spacing_strip(basket, words, drawings::At::Rim),
        drawings::drilling_template(basket, words),
    ]
    .into_iter()
    .chain(drawings::stave_templates(basket, words))
    {
        all.extend(drawings::tiles(&long, size, words));
    }
    all
}

fn render(svg: &str, options: &usvg::Options<'_>) -> Result<tiny_skia::Pixmap, Box<dyn Error>> {
    let tree = usvg::Tree::from_str(svg, options)?;
    // One CSS pixel is 1/96 in.
    let scale = DENSITY * 25.4 / 96.0;
    let size = tree.size();
    let pixels = |length: f32| (length * scale).ceil() as u32;
    let mut picture =
        tiny_skia::Pixmap::new(pixels(size.width()), pixels(size.height())).ok_or("too large")?;
    picture.fill(tiny_skia::Color::WHITE);
    resvg::render(&tree, tiny_skia::Transform::from_scale(scale, scale), &mut picture.as_mut());
    Ok(picture)
}
