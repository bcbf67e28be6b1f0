//! How long the search for a look takes.

use basket::weave::find::{Wanted, find};
use basket::weave::look::Look;

fn main() {
    divan::main();
}

/// A spiral of two turns in two colours near 73 staves.
#[divan::bench(args = [1, 2, 3])]
fn spiral(bencher: divan::Bencher<'_, '_>, colours: u8) {
    let wanted = Wanted { turns: Some(2.0), ..Wanted::new(Look::Spiral, colours, 73) };
    bencher.bench(|| find(divan::black_box(&wanted), 8));
}

/// A look that nothing gives, so that every way on every count is woven.
#[divan::bench(args = [1, 2, 3])]
fn nothing(bencher: divan::Bencher<'_, '_>, colours: u8) {
    let wanted = Wanted { turns: Some(200.0), ..Wanted::new(Look::Spiral, colours, 73) };
    bencher.bench(|| find(divan::black_box(&wanted), 8));
}
