//! The full solid of a basket of 75 staves and 80 rows, and its files.

mod shared;

use basket::steps::Stage;
use divan::counter::ItemsCount;
use drawings::solid::{Detail, glb, solid, stl, three_mf};
use shared::{basket, finished};

fn main() {
    let solid = finished(Detail::Full);
    println!("{} parts, {} triangles, GLB {} bytes", solid.parts.len(), solid.triangles(), glb(&solid).len());
    divan::main();
}

#[divan::bench(args = [Detail::Full, Detail::Page, Detail::Thumbnail])]
fn mesh(bencher: divan::Bencher<'_, '_>, detail: Detail) {
    let basket = basket();
    let triangles = solid(&basket, Stage::Finished, detail).triangles();
    bencher.counter(ItemsCount::new(triangles)).bench(|| solid(&basket, Stage::Finished, detail));
}

#[divan::bench]
fn write_glb(bencher: divan::Bencher<'_, '_>) {
    let solid = finished(Detail::Full);
    bencher.bench(|| glb(&solid));
}

#[divan::bench]
fn write_stl(bencher: divan::Bencher<'_, '_>) {
    let solid = finished(Detail::Full);
    bencher.bench(|| stl(&solid));
}

#[divan::bench(sample_count = 3)]
fn write_three_mf(bencher: divan::Bencher<'_, '_>) {
    let solid = finished(Detail::Full);
    bencher.bench(|| three_mf(&solid));
}
