//! How long the sheets take.
#![allow(missing_docs)]

use basket::pattern::Units;
use basket::{Catalogue, Draft, Hand};
use sheets::{Options, Paper, data, packet};
use words::{Language, Words};

fn main() {
    divan::main();
}

fn harbour() -> Draft {
    let catalogue = Catalogue::built_in();
    let text = include_str!("../../../patterns/harbour-bread-basket.toml");
    let pattern = basket::pattern::read(text, catalogue).expect("the pattern can be read");
    Draft::of(pattern, catalogue, &Hand::USUAL)
}

/// The whole packet, as `draft` makes it. Target: 400 ms.
#[divan::bench(args = [Paper::Letter, Paper::A4], sample_count = 20)]
fn whole_packet(bencher: divan::Bencher, paper: Paper) {
    let (draft, words) = (harbour(), Words::new(Language::English, Units::Inches));
    let options = Options { paper, ..Options::default() };
    bencher.bench(|| packet(&draft, &words, &options, &mut |_| ()).expect("the packet can be made"));
}

/// The same with nothing kept from an earlier packet.
#[divan::bench(sample_count = 20)]
fn whole_packet_afresh(bencher: divan::Bencher) {
    let (draft, words) = (harbour(), Words::new(Language::English, Units::Inches));
    bencher
        .with_inputs(|| typst::comemo::evict(0))
        .bench_values(|()| packet(&draft, &words, &Options::default(), &mut |_| ()).expect("it can be made"));
}

/// The packet without its PDFs.
#[divan::bench]
fn data_alone(bencher: divan::Bencher) {
    let (draft, words) = (harbour(), Words::new(Language::English, Units::Inches));
    bencher.bench(|| data(&draft, &words).expect("the data can be written"));
}
