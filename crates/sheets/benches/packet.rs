//! How long the sheets take.
#![allow(missing_docs)]

use basket::pattern::Units;
use basket::{Basket, Catalogue, Hand, assemble};
use sheets::{Options, Paper, data, packet};
use words::{Language, Words};

fn main() {
    divan::main();
}

fn harbour() -> Basket {
    let catalogue = Catalogue::built_in();
    let text = include_str!("../../../patterns/harbour-bread-basket.toml");
    let pattern = basket::pattern::read(text, catalogue).expect("the pattern can be read");
    assemble(&pattern, catalogue, &Hand::USUAL)
}

/// The whole packet, as `draft` makes it. Target: 400 ms.
#[divan::bench(args = [Paper::Letter, Paper::A4], sample_count = 20)]
fn whole_packet(bencher: divan::Bencher, paper: Paper) {
    let (basket, words) = (harbour(), Words::new(Language::English, Units::Inches));
    let options = Options { paper, ..Options::default() };
    bencher.bench(|| packet(&basket, &words, &options, &mut |_| ()).expect("the packet can be made"));
}

/// The same with nothing kept from an earlier packet.
#[divan::bench(sample_count = 20)]
fn whole_packet_afresh(bencher: divan::Bencher) {
    let (basket, words) = (harbour(), Words::new(Language::English, Units::Inches));
    bencher.with_inputs(|| typst::comemo::evict(0)).bench_values(|()| {
        packet(&basket, &words, &Options::default(), &mut |_| ()).expect("it can be made")
    });
}

/// The packet without its PDFs.
#[divan::bench]
fn data_alone(bencher: divan::Bencher) {
    let (basket, words) = (harbour(), Words::new(Language::English, Units::Inches));
    bencher.bench(|| data(&basket, &words).expect("the data can be written"));
}
