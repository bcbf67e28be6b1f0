//! How long the mould and the solver take: run with `cargo bench -p basket --bench staves`.

use basket::base::Base;
use basket::form;
use basket::pattern::{
    BasePattern, Girth, Levels, MouldForm, MouldPattern, MouldPieces, Outline, StavesPattern,
};
use basket::staves::{Needs, Staves};
use basket::stock::{Catalogue, Kind, Material};
use basket::uprights::Standing;
use basket::weave::Running;
use basket::{Hand, Length, Making};
use divan::{Bencher, black_box};

fn main() {
    divan::main();
}

fn pattern() -> MouldPattern {
    let girths = [(0.0, 15.5), (1.0, 19.75), (2.0, 22.25), (3.0, 24.0), (4.25, 25.125)];
    let girth = |(height, girth)| Girth { height: Length::inches(height), girth: Length::inches(girth) };
    MouldPattern {
        outline: Outline::Round,
        form: MouldForm::Girths(girths.map(girth).to_vec()),
        levels: Levels::Even,
        pieces: MouldPieces::One,
    }
}

/// Twenty stocks from 3/16 in to 1 in wide, two or more of a width.
fn stocks() -> Vec<Material> {
    (0..20_u32)
        .map(|number| {
            Material::bare(
                format!("stock {number}"),
                Kind::FlatOvalReed,
                Length::inches(0.1875 + 0.0625 * f64::from(number / 2)),
                Length::mm(if number % 2 == 0 { 1.2 } else { 2.0 }),
            )
        })
        .collect()
}

fn solve(bencher: Bencher, pattern: &StavesPattern) {
    let form = form::Form::on_mould(&self::pattern());
    let catalogue = Catalogue::default();
    let mut making = Making::new(&catalogue, &Hand::USUAL);
    let base = Base::of(&BasePattern::default(), None, &form, &mut making);
    let needs = Needs {
        form: &form,
        stocks: &stocks(),
        wall: form.arc() - Length::inches(1.0),
        rim: Length::inches(0.375),
        weaver: Length::mm(1.2),
        row: Length::mm(2.5),
        behind: &Standing::default(),
        ears: true,
        running: &|count: u32| {
            let runs = count % 2;
            Running { courses: 1, run: runs, hold: runs }
        },
    };
    bencher.bench_local(|| Staves::solve(black_box(pattern), &base, &needs, &mut making));
}

#[divan::bench]
fn given_stock(bencher: Bencher) {
    solve(bencher, &StavesPattern { stock: stocks().into_iter().nth(3), ..StavesPattern::default() });
}

#[divan::bench]
fn given_stock_and_count(bencher: Bencher) {
    let stock = stocks().into_iter().nth(3);
    solve(bencher, &StavesPattern { stock, count: Some(75), ..StavesPattern::default() });
}

#[divan::bench]
fn every_stock(bencher: Bencher) {
    solve(bencher, &StavesPattern::default());
}

#[divan::bench]
fn mould(bencher: Bencher) {
    let pattern = pattern();
    bencher.bench_local(|| form::Form::on_mould(black_box(&pattern)));
}

#[divan::bench]
fn thousand_places(bencher: Bencher) {
    let profile = form::Form::on_mould(&pattern()).profile;
    bencher.bench_local(|| black_box(&profile).spots(1000).map(|spot| spot.radius).sum::<Length>());
}
