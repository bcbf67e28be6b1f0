//! Line drawings of a basket of 75 staves and 80 rows, finished and at its stages.

mod shared;

use divan::counter::ItemsCount;
use drawings::lines::{Style, View, draw, shaded};
use drawings::solid::Detail;
use drawings::stages::{Plate, stage_drawing, stage_drawings};
use shared::{basket, finished};
use words::{Language, Words};

/// Width and height of a picture, in mm.
const SIZE: [f64; 2] = [70.0, 72.0];

fn main() {
    for detail in [Detail::Full, Detail::Page, Detail::Column] {
        let solid = finished(detail);
        let drawing = draw(&solid, &VIEW, &Style::print(SIZE[0], SIZE[1])).expect("a picture");
        println!("{detail:?}: {} triangles, SVG {} bytes", solid.triangles(), drawing.to_svg().len());
    }
    divan::main();
}

const VIEW: View = View::from(24.0, 26.0);

#[divan::bench(args = [Detail::Full, Detail::Page, Detail::Column])]
fn line_drawing(bencher: divan::Bencher<'_, '_>, detail: Detail) {
    let solid = finished(detail);
    bencher
        .counter(ItemsCount::new(solid.triangles()))
        .bench(|| draw(&solid, &VIEW, &Style::print(SIZE[0], SIZE[1])));
}

#[divan::bench(sample_count = 20)]
fn shaded_picture(bencher: divan::Bencher<'_, '_>) {
    let solid = finished(Detail::Full);
    bencher.bench(|| shaded(&solid, &VIEW, 800, 800));
}

#[divan::bench(args = [Plate::Finished, Plate::HalfWoven, Plate::Join, Plate::Exploded, Plate::Cover], sample_count = 10)]
fn stage(bencher: divan::Bencher<'_, '_>, plate: Plate) {
    let basket = basket();
    let words = Words::new(Language::English, basket.units);
    bencher.bench(|| stage_drawing(&basket, &words, plate));
}

/// Solids, all drawings and their captions.
#[divan::bench(sample_count = 10)]
fn all_stages(bencher: divan::Bencher<'_, '_>) {
    let basket = basket();
    let words = Words::new(Language::English, basket.units);
    bencher.bench(|| stage_drawings(&basket, &words));
}
