//! Moulds that are not round.

use basket::findings::Grade::{Care, Stop};

use crate::draft::pattern;
use crate::sides::{basket, both_sides, found};

const BASE: (&str, &str) = ("base.diameter", "\"7 13/16 in\"");

/// Girth of an ellipse of 8 by 6 in: 22.10 in (S. Ramanujan's second formula, 1914). A tape that reads 23 is 4 %
/// off, one that reads 22 less than 1 %.
#[test]
fn outline_girth_contradicts() {
    let mould = |foot: &str| {
        format!(
            r#"{{ shape = "oval", length = "8 in", width = "6 in", girths = [["0", "{foot}"], ["4 1/4", "25"]] }}"#
        )
    };
    let (off, near) = (mould("23"), mould("22"));
    both_sides("oval-girth-contradicts", Stop, &[("mould", &off), BASE], &[("mould", &near), BASE]);
}

#[test]
fn outline_part_not_computed() {
    let oval =
        r#"{ shape = "oval", length = "8 in", width = "6 in", rim = "8 1/2 in", height = "4 1/4 in" }"#;
    let (rings, none) = ((BASE.0, BASE.1), ("base.rings", "\"out\""));
    let code = "oval-part-not-computed";
    let drafted = basket(&pattern(&[("mould", oval), rings, none]));
    let finding = found(&drafted, code);
    assert_eq!(finding.len(), 1);
    assert_eq!(finding[0].grade, Stop);
    // With ears and handle it can be made.
    let drafted = basket(&pattern(&[("mould", oval), BASE]));
    assert_eq!(found(&drafted, code), []);
    assert!(drafted.basket.swing().is_some());
    assert!(!drafted.stops(), "{:#?}", drafted.findings);
}

/// On a mould whose levels are the foot in another size a flat strip that is held straight up is strained the more the
/// wider it is, evenly.
#[test]
fn outline_strains_staves() {
    let mould = r#"{ shape = "oval", length = "9 in", width = "5 in", levels = "scaled", rim = "11 1/2 in", height = "5 in", side = "bowl" }"#;
    let stock = |width: &str| format!(r#""flat reed {width} in""#);
    let (wide, narrow) = (stock("5/8"), stock("3/16"));
    let base = ("base.diameter", "\"8 13/16 in\"");
    let [beyond, within] =
        [&wide, &narrow].map(|stock| [("mould", mould), base, ("staves.stock", stock.as_str())]);
    both_sides("staves-strained", Care, &beyond, &within);
}

/// At the ends of an ellipse of 8 by 6 in (radius 9/4 in) a wall that stands out by 1 1/2 in takes
/// staves 1 + 1.5/2.25 = 1.67 times as far apart, along its sides (radius 16/3 in) 1.28 times.
#[test]
fn outline_ends_gape() {
    let mould = |rim: &str| {
        format!(
            r#"{{ shape = "oval", length = "8 in", width = "6 in", rim = "{rim} in", height = "4 1/4 in" }}"#
        )
    };
    let (flared, upright) = (mould("11"), mould("8"));
    both_sides("oval-ends-gape", Care, &[("mould", &flared), BASE], &[("mould", &upright), BASE]);
    let drafted = basket(&pattern(&[("mould", &flared), BASE]));
    let remedies = found(&drafted, "oval-ends-gape").remove(0).remedies.clone();
    assert!(remedies.iter().any(|remedy| remedy.key == "staves.spacing" && remedy.value == "\"rim\""));
    // Spaced evenly at the rim they do not gape, and lean.
    let rim = ("staves.spacing", "\"rim\"");
    both_sides("staves-lean", Care, &[("mould", &flared), BASE, rim], &[("mould", &upright), BASE, rim]);
    let drafted = basket(&pattern(&[("mould", &flared), BASE, rim]));
    assert_eq!(found(&drafted, "oval-ends-gape"), []);
    // Half the staves at most lean so much: not those at the ends of the axes.
    let leaning = drafted.basket.body.uprights().numbers_of(|path| path.lean.to_degrees().abs() > 3.0);
    assert!(!leaning.is_empty() && !leaning.contains(&1), "{leaning:?}");
}

/// At the ends of an ellipse 9 in by 6 in the radius is 2 in. Pushed out by 2 1/2 in there and not at all at the
/// sides it comes to 2 − 2 1/2 in; with 1 in at the sides to 2 − 2 1/2 + 2 in.
#[test]
fn mould_level_pointed() {
    let mould = |width: &str| {
        format!(
            r#"{{ shape = "oval", length = "9", width = "6", widths = [["4", "{width}"]], rim = "14", height = "4" }}"#
        )
    };
    let (pointed, smooth) = (mould("6"), mould("8"));
    both_sides("mould-level-pointed", Stop, &[("mould", &pointed)], &[("mould", &smooth)]);
}

/// The smallest radius of an ellipse is half its width squared over half its length: 1.9 in for 8 by 5 1/2 in, 3.1 in
/// for 8 by 7 in. Half round reed of 3/8 in that stands 3.5 % bends to a radius between these.
#[test]
fn hoop_bent_too_hard_round_a_tight_end() {
    let mine = ("materials.mine", r#"{ like = "half round reed 3/8 in", bend = 0.035 }"#);
    let oval = |width: &str| {
        format!(
            r#"{{ shape = "oval", length = "8 in", width = "{width} in", rim = "8 1/2 in", height = "4 1/4 in" }}"#
        )
    };
    let (tight, round) = (oval("5 1/2"), oval("7"));
    let on = |mould| [("mould", mould), mine, ("rim.stock", "\"mine\""), BASE];
    let drafted = basket(&pattern(&on(&tight)));
    let finding = found(&drafted, "hoop-bent-too-hard");
    assert!(!finding.is_empty(), "{:#?}", drafted.findings);
    assert!(finding[0].remedies.iter().any(|remedy| remedy.key == "mould.width"), "{finding:#?}");
    assert_eq!(found(&basket(&pattern(&on(&round))), "hoop-bent-too-hard"), []);
}
