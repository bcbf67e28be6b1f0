//! Writes charts of ten weaves as SVG and PNG, to be looked at:
//! `cargo run -p drawings --example charts -- FOLDER [FOLDER-OF-FONTS]`.

use std::error::Error;
use std::path::Path;
use std::sync::Arc;

use basket::pattern::Rule;
use basket::pattern::{CoursePattern, Pattern, Until, WeaveKind};
use basket::weave::Face;
use basket::{Basket, Catalogue, Colour, Hand, assemble};
use drawings::{ChartKind, Drawing, chart};
use resvg::{tiny_skia, usvg};
use words::{Language, Words};

const HARBOUR: &str = include_str!("../../../patterns/harbour-bread-basket.toml");

fn main() -> Result<(), Box<dyn Error>> {
    let mut args = std::env::args().skip(1);
    let folder = args.next().ok_or("say into which folder")?;
    let mut options = usvg::Options::default();
    let fonts = Arc::make_mut(&mut options.fontdb);
    fonts.load_system_fonts();
    if let Some(more) = args.next() {
        fonts.load_fonts_dir(more);
    }
    std::fs::create_dir_all(&folder)?;
    for (name, basket) in baskets()? {
        let words = Words::new(Language::English, basket.units);
        let face = if name.ends_with("inside") { Face::Inside } else { Face::Outside };
        let kind = if name.ends_with("grid") { ChartKind::Grid } else { ChartKind::True };
        let start = std::time::Instant::now();
        let drawing = chart(&basket, &words, face, kind);
        let svg = drawing.to_svg();
        println!(
            "{name}: {} staves, {} rows, {} bytes, {:?}",
            basket.body.uprights().count,
            basket.body.weave.rows,
            svg.len(),
            start.elapsed()
        );
        save(&drawing, &svg, &Path::new(&folder).join(name), &options)?;
    }
    Ok(())
}

fn baskets() -> Result<Vec<(&'static str, Basket)>, Box<dyn Error>> {
    let colours = |names: &[&str]| -> Vec<Vec<Colour>> {
        names.iter().filter_map(|name| Colour::built_in(name)).map(|colour| vec![colour]).collect()
    };
    let course = |weave, names: &[&str]| -> Result<CoursePattern, Box<dyn Error>> {
        let material = Catalogue::built_in().material("cane common").ok_or("no such cane")?.clone();
        let until = Until::BelowTop(basket::Length::inches(1.0));
        Ok(CoursePattern { colours: colours(names), ..CoursePattern::new(weave, material, until) })
    };
    let (two_two, plain) = (Rule::new(2, 2), Rule::PLAIN);
    let sequence = |names: &[&str]| vec![colours(names).concat()];
    let banded = CoursePattern { colours: sequence(&["natural", "red"]), ..course(WeaveKind::Plain, &[])? };
    let first = CoursePattern {
        until: Until::Rows(12),
        ..course(WeaveKind::Wale(3), &["brown", "natural", "brown"])?
    };
    let second =
        CoursePattern { until: Until::Rows(18), ..course(WeaveKind::Chase(plain), &["natural", "green"])? };
    let spiral = |face| {
        Ok::<_, Box<dyn Error>>((face, 74, vec![course(WeaveKind::Twill(Rule::new(3, 3)), &["blue"])?]))
    };
    let reversed = CoursePattern { band: Some(8), ..course(WeaveKind::ReversedTwill(two_two), &["brown"])? };
    let slewed = course(WeaveKind::Slew(plain), &["natural", "blue"])?;
    let list = vec![
        ("1-plain", 73, vec![course(WeaveKind::Plain, &["natural"])?]),
        ("2-twill-2-2", 73, vec![course(WeaveKind::Twill(two_two), &["blue"])?]),
        spiral("3-twill-3-3")?,
        spiral("3-twill-3-3-inside")?,
        spiral("3-twill-3-3-grid")?,
        ("4-reversed-twill", 72, vec![reversed]),
        ("5-chase", 72, vec![course(WeaveKind::Chase(plain), &["natural", "blue"])?]),
        ("6-pairing", 73, vec![course(WeaveKind::Pairing, &["natural", "black"])?]),
        ("7-wale-3", 73, vec![course(WeaveKind::Wale(3), &["natural", "blue", "red"])?]),
        ("8-slew", 73, vec![slewed]),
        ("9-bands", 73, vec![banded]),
        ("10-courses", 72, vec![first, second, course(WeaveKind::SkipOne, &["natural"])?]),
    ];
    list.into_iter().map(|(name, count, courses)| Ok((name, basket(count, courses)?))).collect()
}

fn basket(count: u32, courses: Vec<CoursePattern>) -> Result<Basket, Box<dyn Error>> {
    let catalogue = Catalogue::built_in();
    let mut pattern: Pattern =
        basket::pattern::read(HARBOUR, catalogue).map_err(|problems| format!("{problems:?}"))?;
    pattern.staves.count = Some(count);
    pattern.weave.courses = courses;
    Ok(assemble(&pattern, catalogue, &Hand::USUAL))
}

fn save(
    drawing: &Drawing,
    svg: &str,
    place: &Path,
    options: &usvg::Options<'_>,
) -> Result<(), Box<dyn Error>> {
    std::fs::write(place.with_extension("svg"), svg)?;
    let tree = usvg::Tree::from_str(svg, options)?;
    // Eight pixels a millimetre.
    let scale = (drawing.width() * 8.0) as f32 / tree.size().width();
    let pixels = |length: f32| (length * scale).ceil() as u32;
    let mut picture = tiny_skia::Pixmap::new(pixels(tree.size().width()), pixels(tree.size().height()))
        .ok_or("too large")?;
    picture.fill(tiny_skia::Color::WHITE);
    resvg::render(&tree, tiny_skia::Transform::from_scale(scale, scale), &mut picture.as_mut());
    picture.save_png(place.with_extension("png"))?;
    Ok(())
}
