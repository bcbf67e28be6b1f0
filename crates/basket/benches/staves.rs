//! How long the mould and the solver take: run with `cargo bench -p basket --bench staves`.

use basket::Length;
use basket::base::Base;
use basket::mould::Mould;
use basket::pattern::{BasePattern, Form, Girth, MouldPattern, Outline, StavesPattern};
use basket::staves::{Needs, Staves};
use basket::stock::{Catalogue, Kind, Material, PutUp};
use divan::{Bencher, black_box};

fn main() {
    divan::main();
}

fn pattern() -> MouldPattern {
    let girths = [(0.0, 15.5), (1.0, 19.75), (2.0, 22.25), (3.0, 24.0), (4.25, 25.125)];
    let girth = |(height, girth)| Girth { height: Length::inches(height), girth: Length::inches(girth) };
    MouldPattern { outline: Outline::Round, form: Form::Girths(girths.map(girth).to_vec()) }
}

/// Twenty stocks from 3/16 in to 1 in wide, two or more of a width.
fn stocks() -> Vec<Material> {
    (0..20_u32)
        .map(|number| Material {
            name: format!("stock {number}"),
            aliases: Vec::new(),
            kind: Kind::FlatOvalReed,
            width: Length::inches(0.1875 + 0.0625 * f64::from(number / 2)),
            thickness: Length::mm(if number % 2 == 0 { 1.2 } else { 2.0 }),
            length: None,
            put_up: PutUp { unit: "coil".to_owned(), length: None, strand: None },
            soak_minutes: None,
            bend_limit: None,
            shrink: 0.0,
            sources: std::sync::Arc::default(),
        })
        .collect()
}

fn solve(bencher: Bencher, pattern: &StavesPattern) {
    let mould = Mould::of(&self::pattern());
    let base = Base::of(&BasePattern::default(), None, &mould, &Catalogue::default(), &mut Vec::new());
    let stocks = stocks();
    let holds = |count: u32| count % 2 == 1;
    let wall = mould.arc - Length::inches(1.0);
    let needs =
        Needs { wall, rim: Length::inches(0.375), weaver: Length::mm(1.2), ears: true, holds: &holds };
    bencher
        .bench_local(|| Staves::solve(black_box(pattern), &stocks, &mould, &base, &needs, &mut Vec::new()));
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
    bencher.bench_local(|| Mould::of(black_box(&pattern)));
}

#[divan::bench]
fn thousand_places(bencher: Bencher) {
    let profile = Mould::of(&pattern()).profile;
    bencher.bench_local(|| black_box(&profile).spots(1000).map(|spot| spot.radius).sum::<Length>());
}
