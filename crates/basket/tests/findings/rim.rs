//! Rim, filler, lashing, and stock that must reach.

use basket::Piece;
use basket::findings::Grade::{Care, Stop};

use crate::draft::pattern;
use crate::sides::{basket, beyond_limit, both_sides};

/// A material like another, with one figure changed.
fn like(name: &str, key: &str, value: &str) -> String {
    format!("{{ like = \"{name}\", {key} = {value} }}")
}

#[test]
fn hoop_bent_too_hard() {
    let strain = basket(&pattern(&[])).basket.body.rim().outer.bend_strain;
    let bend = |limit: f64| like("half round reed 3/8 in", "bend", &format!("{limit:.5}"));
    let (stop, care, within) = (bend(strain / 1.6), bend(strain / 1.1), bend(strain * 1.02));
    let stock = ("rim.stock", "\"mine\"");
    both_sides(
        "hoop-bent-too-hard",
        Care,
        &[("materials.mine", &care), stock],
        &[("materials.mine", &within), stock],
    );
    both_sides(
        "hoop-bent-too-hard",
        Stop,
        &[("materials.mine", &stop), stock],
        &[("materials.mine", &within), stock],
    );
}

/// Eight times 3/16 in is 1 1/2 in (*Wood Handbook*, FPL-GTR-190, 2010: 8 to 12 for scarf joints).
#[test]
fn lap_too_short() {
    both_sides("lap-too-short", Care, &[("rim.lap", "\"1 7/16 in\"")], &[("rim.lap", "\"1 1/2 in\"")]);
}

/// A quarter of the rim is about 6 1/4 in: half a lap of 12 in comes within 1/2 in of the ear.
#[test]
fn scarf_under_ear() {
    let finding =
        both_sides("scarf-under-ear", Care, &[("rim.lap", "\"12 in\"")], &[("rim.lap", "\"10 1/2 in\"")]);
    assert_eq!(finding.place.piece, Piece::OuterHoop);
}

/// Without ears the scarfs are half the rim apart, about 12 1/2 in.
#[test]
fn scarfs_together() {
    both_sides("scarfs-together", Care, &[("rim.lap", "\"12 in\"")], &[("rim.lap", "\"11 in\"")]);
}

/// The outer hoop is about 29 3/4 in long.
#[test]
fn stock_cannot_yield() {
    let cut = basket(&pattern(&[])).basket.body.rim().outer.cut.to_inches();
    let strand = |inches: f64| like("half round reed 3/8 in", "strand", &format!("\"{inches:.3} in\""));
    let (beyond, within) = (strand(cut - 0.1), strand(cut + 0.1));
    let stock = ("rim.stock", "\"mine\"");
    both_sides(
        "stock-cannot-yield",
        Stop,
        &[("materials.mine", &beyond), stock],
        &[("materials.mine", &within), stock],
    );
    let short = like("flat oval reed 1/4 in", "strand", "\"4 1/2 in\"");
    let finding =
        beyond_limit("stock-cannot-yield", Stop, &[("materials.mine", &short), ("staves.stock", "\"mine\"")]);
    assert_eq!(finding.place.piece, Piece::Uprights);
}

/// Rings that are bought are bent and closed: nothing is asked of a strip.
#[test]
fn bought_rings_are_not_bent() {
    let bought = ("rim.hoops", "\"bought\"");
    let short = like("half round reed 3/8 in", "strand", "\"4 in\"");
    let stock = ("rim.stock", "\"mine\"");
    both_sides(
        "stock-cannot-yield",
        Stop,
        &[("materials.mine", &short), stock],
        &[("materials.mine", &short), stock, bought],
    );
    both_sides("lap-too-short", Care, &[("rim.lap", "\"1 in\"")], &[("rim.lap", "\"1 in\""), bought]);
    let stiff = like("half round reed 3/8 in", "bend", "0.001");
    both_sides(
        "hoop-bent-too-hard",
        Stop,
        &[("materials.mine", &stiff), stock],
        &[("materials.mine", &stiff), stock, bought],
    );
}

#[test]
fn filler_short() {
    let good = basket(&pattern(&[])).basket;
    let filler = good.body.filler().expect("a filler is chosen");
    let piece = filler.pieces[0].length.to_mm().max(filler.pieces[1].length.to_mm());
    let strand = |mm: f64| like("round reed 4", "strand", &format!("\"{mm} mm\""));
    let (beyond, within) = (strand(piece - 1.0), strand(piece + 1.0));
    let stock = ("filler.stock", "\"mine\"");
    both_sides(
        "filler-short",
        Stop,
        &[("materials.mine", &beyond), stock],
        &[("materials.mine", &within), stock],
    );
}

/// The staves are 1.9 mm thick; round reed 2 is 1.75 mm, round reed 3 2.25 mm.
#[test]
fn filler_too_narrow() {
    both_sides(
        "filler-too-narrow",
        Care,
        &[("filler.stock", "\"round reed 2\"")],
        &[("filler.stock", "\"round reed 3\"")],
    );
}

/// A strand has to do a quarter of the binding between its tails.
#[test]
fn lashing_short() {
    let good = basket(&pattern(&[])).basket;
    let lashing = good.body.lashing().expect("it is lashed");
    let quarter = (lashing.net / 4.0 + lashing.tail * 2.0).to_mm();
    let strand = |mm: f64| like("cane fine-fine", "strand", &format!("\"{mm:.1} mm\""));
    let (beyond, within, stop) = (strand(quarter - 5.0), strand(quarter + 5.0), strand(150.0));
    let weaver = ("lashing.weaver", "\"mine\"");
    both_sides(
        "lashing-short",
        Care,
        &[("materials.mine", &beyond), weaver],
        &[("materials.mine", &within), weaver],
    );
    both_sides(
        "lashing-short",
        Stop,
        &[("materials.mine", &stop), weaver],
        &[("materials.mine", &within), weaver],
    );
}

/// On 57 staves every other one is 25 in · 2 / 57 = 7/8 in from the next: more than 3/4 in. A lashing binds what lies
/// between.
#[test]
fn pins_far_apart() {
    let (few, alone) = (("staves.count", "57"), ("lashing", "\"none\""));
    let sparse = ("pins.every", "\"other-stave\"");
    both_sides("pins-far-apart", Care, &[few, alone, sparse], &[few, alone]);
    both_sides("pins-far-apart", Care, &[few, alone, sparse], &[few, sparse]);
}

/// 2 in of tail hold (a maker's lashing tutorial).
#[test]
fn lashing_tail_short() {
    both_sides(
        "lashing-tail-short",
        Care,
        &[("lashing.tail", "\"1 1/2 in\"")],
        &[("lashing.tail", "\"2 in\"")],
    );
}
