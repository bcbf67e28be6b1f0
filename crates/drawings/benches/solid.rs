//! The full solid of a basket of 75 staves and 80 rows, and its files.

use basket::steps::Stage;
use basket::{Basket, Catalogue, assemble};
use divan::counter::ItemsCount;
use drawings::solid::{Detail, Solid, glb, solid, stl, three_mf};

const PATTERN: &str = "title = \"Bench\"\nunits = \"mm\"\n[mould]\nside = \"bowl\"\nbase = \"140\"\nrim = \"260\"\nheight = \"205\"\n[staves]\nstock = \"flat oval reed 3/8 in\"\ncount = 75\n[weave]\ncourses = [{ weave = \"plain\", weaver = \"cane fine\", rows = 80 }]\n[ears]\n[handle]\n";

fn main() {
    let solid = solid(&basket(), Stage::Finished, Detail::Full);
    println!("{} parts, {} triangles, GLB {} bytes", solid.parts.len(), solid.triangles(), glb(&solid).len());
    divan::main();
}

fn basket() -> Basket {
    let catalogue = Catalogue::built_in();
    let pattern = basket::pattern::read(PATTERN, catalogue).expect("the pattern can be read");
    let basket = assemble(&pattern, catalogue);
    assert_eq!((basket.staves.count, basket.weave.rows), (75, 80));
    basket
}

fn finished(detail: Detail) -> Solid {
    solid(&basket(), Stage::Finished, detail)
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
