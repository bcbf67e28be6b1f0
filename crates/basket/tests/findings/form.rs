//! Mould, base and groove.

use basket::findings::Grade::{Care, Note, Stop};

use crate::draft::pattern;
use crate::sides::{basket, beyond_limit, both_sides, found};

/// Radius 15 1/2 / 2π = 2.467 in at the foot. Narrowing the top by 1 in of girth takes 4.04 mm off
/// the radius, by 0.3 in 1.2 mm, by 1/8 in 0.5 mm.
#[test]
fn mould_undercut() {
    let top = |girth: &str| {
        format!(r#"[["0", "15 1/2"], ["1", "19 3/4"], ["2", "22 1/4"], ["3", "24"], ["3 1/2", "{girth}"]]"#)
    };
    let (stop, care, within) = (top("22 1/2"), top("23 1/2"), top("23 15/16"));
    let full = ("weave.courses[2].until", "\"3/8 below mould top\"");
    both_sides("mould-undercut", Stop, &[("mould.girths", &stop), full], &[("mould.girths", &within), full]);
    both_sides("mould-undercut", Care, &[("mould.girths", &care), full], &[("mould.girths", &within), full]);
}

/// A mould in pieces comes out of a basket that one in a piece would hold.
#[test]
fn an_undercut_is_no_stop_on_a_mould_in_pieces() {
    let girths = r#"[["0", "15 1/2"], ["1", "19 3/4"], ["2", "22 1/4"], ["3", "24"], ["3 1/2", "22 1/2"]]"#;
    let full = ("weave.courses[2].until", "\"3/8 below mould top\"");
    let bulge = [("mould.girths", girths), full];
    let several = [bulge[0], full, ("mould.pieces", "\"several\"")];
    let finding = both_sides("mould-undercut", Stop, &bulge, &several);
    let offered = finding.remedies.iter().map(|remedy| (remedy.key.as_str(), remedy.value.as_str()));
    assert!(offered.into_iter().any(|remedy| remedy == ("mould.pieces", "\"several\"")));
}

/// A neck of a girth of 6 in is about 2 in across: 3/4 in of wood on each side leave no core that holds a screw. One of
/// 20 in lets all out.
#[test]
fn mould_does_not_come_apart() {
    let girths =
        |neck: &str| format!(r#"[["0", "15 1/2"], ["1", "19 3/4"], ["2", "22 1/4"], ["4", "{neck}"]]"#);
    let (narrow, wide) = (girths("6"), girths("20"));
    let rest = [("weave.courses[2].until", "\"3/8 below mould top\""), ("mould.pieces", "\"several\"")];
    let on = |girths| [&[("mould.girths", girths)][..], &rest].concat();
    let finding = both_sides("mould-does-not-come-apart", Stop, &on(narrow.as_str()), &on(&wide));
    assert!(finding.remedies.iter().any(|remedy| remedy.key == "mould.girths"), "{finding:?}");
}

/// What would not come out in pieces either is not offered in pieces.
#[test]
fn an_undercut_that_no_mould_serves_is_not_offered_one() {
    let girths = r#"[["0", "15 1/2"], ["1", "19 3/4"], ["2", "22 1/4"], ["4", "6"]]"#;
    let full = ("weave.courses[2].until", "\"3/8 below mould top\"");
    let drafted = basket(&pattern(&[("mould.girths", girths), full]));
    let found = found(&drafted, "mould-undercut");
    assert_eq!(found.len(), 1, "{:#?}", drafted.findings);
    assert!(found[0].remedies.iter().all(|remedy| remedy.key != "mould.pieces"), "{found:#?}");
}

/// A cone 4 in high, base 8 in across: with a rim of 1/4 in 67 staves have no room, with one of 5 in they
/// have. (Staves 2 mm thick need 67 · 2/2π = 21 mm of radius; at its end the cone has 3 mm.)
#[test]
fn wall_closes() {
    let cone =
        |rim: &str| format!("{{ base = \"8 in\", rim = \"{rim}\", height = \"4 in\", side = \"cone\" }}");
    let (closed, open) = (cone("1/4 in"), cone("5 in"));
    let base = ("base.diameter", "\"7 7/8 in\"");
    let full = [base, ("staves.count", "67"), ("weave.courses[2].until", "\"3/8 below mould top\"")];
    let on = |mould| [&[("mould", mould)][..], &full].concat();
    both_sides("wall-closes", Stop, &on(closed.as_str()), &on(&open));
}

/// A hundred rows on a mould of 4 in that narrows run on to where the cone has its point.
#[test]
fn rows_past_the_end_of_a_narrowing_mould_close_the_wall() {
    let mould = ("mould", "{ base = \"8 in\", rim = \"5 in\", height = \"4 in\" }");
    let base = ("base.diameter", "\"7 7/8 in\"");
    let rows = |rows: &'static str| ("weave.courses", rows);
    let many = rows("[{ weaver = \"cane fine\", rows = 200 }]");
    let few = rows("[{ weaver = \"cane fine\", rows = 20 }]");
    let finding = both_sides("wall-closes", Stop, &[mould, base, many], &[mould, base, few]);
    assert_eq!(finding.remedies[0].key, "weave.courses[1].rows");
}

/// What narrows above the rim of the basket does not hold it.
#[test]
fn undercut_above_the_basket_is_harmless() {
    let girths = r#"[["0", "15 1/2"], ["1", "19 3/4"], ["2", "22 1/4"], ["3", "24"], ["4", "20"]]"#;
    let top = ("mould.girths", girths);
    both_sides(
        "mould-undercut",
        Stop,
        &[top, ("weave.courses[2].until", "\"height 3 in\"")],
        &[top, ("weave.courses[2].until", "\"height 2 in\"")],
    );
}

#[test]
fn drawn_mould_is_mended_at_its_rim() {
    let drawn =
        |rim: &str| format!("{{ base = \"6 in\", rim = \"{rim}\", height = \"4 in\", side = \"cone\" }}");
    let (narrow, wide) = (drawn("5 1/2 in"), drawn("6 in"));
    let base = ("base.diameter", "\"5 7/8 in\"");
    let finding = both_sides("mould-undercut", Stop, &[("mould", &narrow), base], &[("mould", &wide), base]);
    assert!(finding.remedies.iter().any(|remedy| remedy.key == "mould.rim"), "{finding:?}");
}

/// The mould's foot is 4.934 in across: 1/32 in more on the radius is 4.996 in.
#[test]
fn base_wider_than_mould() {
    both_sides(
        "base-wider-than-mould",
        Care,
        &[("base.diameter", "\"5 1/16 in\"")],
        &[("base.diameter", "\"4.99 in\"")],
    );
}

/// 1/2 in less on the radius is 3.934 in.
#[test]
fn base_smaller_than_mould() {
    both_sides(
        "base-smaller-than-mould",
        Care,
        &[("base.diameter", "\"3 7/8 in\"")],
        &[("base.diameter", "\"4 in\"")],
    );
}

/// Half of a groove 1/8 in deep is 1.6 mm. The disc of 4 5/8 in moves by more in sugar maple,
/// whose tangential shrinkage is 9.9 % (from memory); a small disc hardly moves.
#[test]
fn base_wood_moves() {
    let shallow = ("base.groove.depth", "\"1/8 in\"");
    let maple = ("base.wood", "\"sugar maple\"");
    let finding = beyond_limit("base-wood-moves", Care, &[shallow, maple]);
    assert!(finding.remedies.iter().any(|remedy| remedy.key == "base.groove.depth"));
    let deep = found(&basket(&pattern(&[maple])), "base-wood-moves");
    assert!(deep.iter().all(|finding| finding.grade == Note), "{deep:#?}");
    both_sides(
        "base-wood-moves",
        Care,
        &[shallow, maple],
        &[("mould.girths", r#"[["0", "5"], ["1", "6"], ["2", "6"]]"#), ("base.diameter", "\"1 1/4 in\"")],
    );
}

/// Flat oval reed of 1/4 in is 1.9 mm thick in the catalogue.
#[test]
fn groove_too_narrow() {
    both_sides(
        "groove-too-narrow",
        Stop,
        &[("base.groove.width", "\"1.8 mm\"")],
        &[("base.groove.width", "\"1.9 mm\"")],
    );
}

/// 1.9 mm and 1 mm.
#[test]
fn groove_too_wide() {
    both_sides(
        "groove-too-wide",
        Care,
        &[("base.groove.width", "\"3 mm\"")],
        &[("base.groove.width", "\"2.85 mm\"")],
    );
}

#[test]
fn groove_too_shallow() {
    both_sides(
        "groove-too-shallow",
        Care,
        &[("base.groove.depth", "\"5/32 in\"")],
        &[("base.groove.depth", "\"3/16 in\"")],
    );
}

/// The disc has a radius of 2 7/16 in, the plug one of 3/16 in: a groove of 2 1/16 in would leave
/// 3/16 in, one of 1 15/16 in leaves 5/16 in. A groove that reaches the plug stops the work.
#[test]
fn groove_too_deep() {
    let thick = ("base.thickness", "\"2 in\"");
    let few = ("staves.count", "7");
    let disc = ("base.diameter", "\"4 7/8 in\"");
    let depth = |depth| [thick, few, disc, ("base.groove.depth", depth)];
    both_sides("groove-too-deep", Care, &depth("\"2 1/16 in\""), &depth("\"1 15/16 in\""));
    both_sides("groove-too-deep", Stop, &depth("\"2 3/8 in\""), &depth("\"1 15/16 in\""));
}

/// A groove of 3/32 in in a disc of 3/8 in leaves cheeks of 9/64 in, in one of 1/4 in 5/64 in; a
/// groove 1/4 in deep wants 1/12 in.
#[test]
fn groove_cheek_thin() {
    both_sides(
        "groove-cheek-thin",
        Care,
        &[("base.thickness", "\"1/4 in\"")],
        &[("base.thickness", "\"9/32 in\"")],
    );
}
