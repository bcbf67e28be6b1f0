//! How long a large chart takes: 121 staves and 120 rows, written as SVG.

use basket::pattern::Rule;
use basket::pattern::{CoursePattern, Until, WeaveKind};
use basket::weave::Face;
use basket::{Basket, Catalogue, Colour, Hand, assemble};
use drawings::{ChartKind, chart};
use words::{Language, Words};

const PATTERN: &str = "title = \"Large\"\nunits = \"mm\"\n[mould]\nside = \"cone\"\nbase = \"250\"\nrim = \"330\"\nheight = \"300\"\n[staves]\ncount = 121\n";

fn main() {
    divan::main();
}

fn basket() -> Option<Basket> {
    let catalogue = Catalogue::built_in();
    let mut pattern = basket::pattern::read(PATTERN, catalogue).ok()?;
    let cane = catalogue.material("cane fine")?.clone();
    let blue = vec![vec![Colour::built_in("blue")?]];
    let course = CoursePattern::new(WeaveKind::Twill(Rule::new(2, 2)), cane, Until::Rows(120));
    pattern.weave.courses = vec![CoursePattern { colours: blue, ..course }];
    Some(assemble(&pattern, catalogue, &Hand::USUAL))
}

#[divan::bench(args = [ChartKind::True, ChartKind::Grid])]
fn svg(bencher: divan::Bencher<'_, '_>, kind: ChartKind) {
    let Some(basket) = basket() else { return };
    assert_eq!((basket.body.uprights().count, basket.body.weave.rows), (121, 120));
    let words = Words::new(Language::English, basket.units);
    bencher.bench(|| chart(divan::black_box(&basket), &words, Face::Outside, kind).to_svg());
}
