//! How long moulds take that are not round, and a photograph: `cargo bench -p stavewright --bench moulds`.
//!
//! Pattern to basket over an oval mould: at most 2 ms. A photograph of two megapixels: at most 1 s. Rows cost the same
//! wherever they lie: four times as many take four times as long.

use basket::{Catalogue, Hand, Pattern};
use silhouette::{Camera, Known, Picture};

fn main() {
    divan::main();
}

fn oval(rows: u32) -> Pattern {
    let text = format!(
        "title = \"Oval\"\nunits = \"mm\"\n\
         mould = {{ shape = \"oval\", length = \"230\", width = \"150\", rim = \"260\", height = \"{}\", side = \"cone\" }}\n\
         staves = {{ count = 75, stock = \"flat oval reed 1/4 in\" }}\n\
         weave = {{ courses = [{{ weave = \"plain\", weaver = \"cane fine\", rows = {rows} }}] }}\n",
        rows * 3
    );
    basket::pattern::read(&text, Catalogue::built_in()).expect("the pattern reads")
}

#[divan::bench(args = [20, 40, 80, 160, 320])]
fn oval_pattern_to_basket(bencher: divan::Bencher, rows: u32) {
    let (pattern, catalogue) = (oval(rows), Catalogue::built_in());
    let basket = basket::assemble(&pattern, catalogue, &Hand::USUAL);
    assert_eq!((basket.body.uprights().count, basket.body.weave.rows), (75, rows));
    bencher.bench(|| basket::assemble(divan::black_box(&pattern), catalogue, &Hand::USUAL));
}

/// A cone before a plain sheet, lit from one side, with a little noise.
fn photograph(side: u32) -> Vec<u8> {
    let mut random = fastrand::Rng::with_seed(7);
    let far = f64::from(side);
    let mut colour = |x: u32, y: u32| {
        let (x, y) = (f64::from(x) / far, f64::from(y) / far);
        let half = 0.16 + 0.12 * (0.75 - y) / 0.5;
        let is_mould = (0.25..0.75).contains(&y) && (x - 0.5).abs() < half;
        let light = 1.0 - 0.2 * (x - 0.5) + 0.02 * (random.f64() - 0.5);
        let bare = if is_mould { [168.0, 120.0, 72.0] } else { [226.0, 226.0, 222.0] };
        bare.map(|part: f64| (part * light) as u8)
    };
    (0..side * side).flat_map(|at| colour(at % side, at / side)).collect()
}

#[divan::bench(args = [707, 1414, 2828], sample_count = 10, sample_size = 1)]
fn trace(bencher: divan::Bencher, side: u32) {
    let bytes = photograph(side);
    let picture = Picture::new(side, side, &bytes).expect("as many bytes as pixels");
    let camera = Camera { distance_mm: 1500.0, is_measured: true, foot_up: false };
    bencher.bench(|| {
        silhouette::trace(divan::black_box(&picture), camera, Known::Girth(640.0)).expect("it is traced")
    });
}
