//! How long a shelf of ten thousand items takes to list and to find one on; the target is 50 ms.

use workshop::{Item, Store};

fn main() {
    divan::main();
}

/// A store with so many items, and the folder that it lies in.
fn filled(count: u32) -> (tempfile::TempDir, Store) {
    let folder = tempfile::tempdir().unwrap();
    let mut store = Store::open(&folder.path().join("workshop.db")).unwrap();
    let item = |at| Item {
        name: format!("hank {at:05}"),
        material: "cane fine".to_owned(),
        colour: "natural".to_owned(),
        count: at % 90,
        ..Item::default()
    };
    store.put_items(&(0..count).map(item).collect::<Vec<_>>()).unwrap();
    (folder, store)
}

#[divan::bench(sample_count = 20)]
fn list_ten_thousand(bencher: divan::Bencher) {
    let (_folder, store) = filled(10_000);
    bencher.bench_local(|| store.items().unwrap().len());
}

#[divan::bench(sample_count = 20)]
fn find_one_of_ten_thousand(bencher: divan::Bencher) {
    let (_folder, store) = filled(10_000);
    bencher.bench_local(|| store.item("hank 07777").unwrap());
}
