//! A lid that drops in: its size, its ledge, its pieces and steps, and what does not go.

use std::f64::consts::PI;

use basket::findings::Grade;
use basket::lid::{LEAST_DOWN, LidSeat};
use basket::pattern::{StepKind, read};
use basket::{Catalogue, Draft, Hand, Length, Of, Piece};

/// The mould of an oval basket.
const OVAL: &str =
    r#"shape = "oval", length = "9 in", width = "6 in", rim = "10 in", height = "4 in", side = "bowl""#;
const ROUND: &str = r#"base = "6 in", rim = "8 in", height = "4 in", side = "bowl""#;

fn draft(mould: &str, lid: &str) -> Draft {
    let text = format!("title = \"Box\"\nmould = {{ {mould} }}\nlid = {{ {lid} }}\n");
    let pattern = read(&text, Catalogue::built_in()).unwrap();
    Draft::of(pattern, Catalogue::built_in(), &Hand::USUAL)
}

fn problem(lid: &str) -> String {
    let text = format!("title = \"Box\"\nmould = {{ {OVAL} }}\nlid = {lid}\n");
    let problems = read(&text, Catalogue::built_in()).unwrap_err();
    format!("{} {:?}", problems[0], problems[0].help)
}

#[test]
fn it_goes_in_with_the_room_that_is_wanted() {
    for mould in [OVAL, ROUND] {
        for wanted in ["1/16 in", "1/8 in"] {
            let draft = draft(mould, &format!("clearance = \"{wanted}\""));
            let lid = draft.basket.lid.as_ref().unwrap();
            let wanted = Length::parse(wanted, None).unwrap();
            // The mould is drawn to a mark of a rule, smaller rather than larger.
            let over = lid.clearance - wanted;
            assert!(
                over >= Length::mm(-0.02) && over < Length::mm(0.5),
                "{:?} for {wanted:?}",
                lid.clearance
            );
            assert!(
                draft.findings.iter().all(|finding| !finding.code.starts_with("lid-")),
                "{:?}",
                draft.findings
            );
        }
    }
}

#[test]
fn both_rims_lie_at_an_even_distance() {
    // Outlines at an even distance differ by it at both axes and by 2π times it in girth (Jakob Steiner, 1840).
    let draft = draft(OVAL, "");
    let lid = draft.basket.lid.as_ref().unwrap();
    for (mouth, over) in [(lid.opening.length, lid.across.length), (lid.opening.width, lid.across.width)] {
        assert!(((mouth - over) / 2.0 - lid.clearance).abs() < Length::mm(0.02), "{lid:?}");
    }
    let form = &lid.vessel.form;
    let rim = lid.vessel.rim();
    let stack = lid.vessel.uprights().thickness + rim.outer.stock.thickness;
    let cane = lid.vessel.lashing().unwrap().thickness();
    let standing =
        rim.across.width / 2.0 - form.across(rim.along + rim.height / 2.0, Length::ZERO).width / 2.0;
    let width =
        form.across(rim.along + rim.height / 2.0, Length::ZERO).width + (standing + stack + cane) * 2.0;
    assert!((width - lid.across.width).abs() < Length::mm(0.05), "{width:?} {:?}", lid.across);
}

#[test]
fn it_cannot_slip_off_its_ledge() {
    let draft = draft(ROUND, "");
    let (body, lid) = (&draft.basket.body, draft.basket.lid.as_ref().unwrap());
    let LidSeat::Ledge(ledge) = &lid.seat else { panic!("{lid:?}") };
    // Pushed to one side, the lid's other edge lies twice the room away from the rim's lashing.
    let inside = ledge.inside.length;
    assert!(
        (lid.across.length / 2.0 - lid.clearance - inside / 2.0 - ledge.overlap).abs() < Length::mm(1e-6)
    );
    assert!(ledge.overlap >= Length::inches(0.125));
    // Each ring is as long as its middle line and the lap: a ring of half round reed has its middle at the
    // centroid of its section.
    let wall = body.form.girth(ledge.along + ledge.stock.width / 2.0, Length::ZERO) / (2.0 * PI);
    let first = (wall - ledge.stock.centroid()) * (2.0 * PI) + ledge.lap;
    assert!((ledge.rings[0] - first).abs() < Length::mm(1e-6));
    assert!(ledge.rings.windows(2).all(|pair| pair[1] < pair[0]));
}

#[test]
fn a_cap_goes_over_all_that_lies_below_it() {
    let belly =
        r#"girths = [["0 in", "20 in"], ["2 1/2 in", "26 in"], ["4 in", "24 in"]], pieces = "several""#;
    for mould in [OVAL, ROUND, belly] {
        let draft = draft(mould, r#"fit = "cap""#);
        let (body, lid) = (&draft.basket.body, draft.basket.lid.as_ref().unwrap());
        let LidSeat::Over(over) = &lid.seat else { panic!("{lid:?}") };
        let room = lid.clearance - Length::inches(0.0625);
        assert!(room >= Length::mm(-0.02) && room < Length::mm(0.5), "{mould}: {:?}", lid.clearance);
        assert!(over.down > LEAST_DOWN, "{mould}: {over:?}");
        // Where it rests, the wall of the cap inside is as wide as the lashed rim of the basket.
        let cane = body.lashing().unwrap().thickness();
        let rim = body.rim();
        let edge = rim.radius() + body.uprights().thickness + rim.outer.stock.thickness + cane;
        let wall = lid.vessel.form.girth(over.along, Length::ZERO) / (2.0 * PI);
        assert!((wall - edge).abs() < Length::mm(0.01), "{mould}: {wall:?} {edge:?}");
        // As far as it reaches down, it clears the wall too.
        let bottom = body.profile().at(rim.along + rim.height).height - over.down;
        let mut along = Length::ZERO;
        while along < rim.along {
            let spot = body.profile().at(along);
            let out = body.uprights().standing.at(along) + body.uprights().thickness;
            if spot.height > bottom {
                assert!((spot.radius + out) * 2.0 < lid.opening.width.max(lid.opening.length), "{mould}");
            }
            along += Length::mm(1.0);
        }
        assert!(
            draft.findings.iter().all(|finding| !finding.code.starts_with("lid-")),
            "{:?}",
            draft.findings
        );
        assert!(draft.cuts.iter().all(|cut| cut.piece != Piece::Ledge && cut.piece != Piece::Collar));
    }
}

#[test]
fn a_lid_on_the_rim_is_flush_and_held_by_its_collar() {
    for mould in [OVAL, ROUND] {
        let draft = draft(mould, r#"fit = "flush", clearance = "1/16 in""#);
        let (body, lid) = (&draft.basket.body, draft.basket.lid.as_ref().unwrap());
        let LidSeat::Collar(collar) = &lid.seat else { panic!("{lid:?}") };
        assert!(collar.proud.abs() <= Length::inches(1.0 / 128.0) + Length::mm(0.02), "{collar:?}");
        let across = draft.basket.across().length + body.lashing().unwrap().thickness() * 2.0;
        assert!((lid.across.length - across).abs() < Length::mm(0.5), "{across:?} {:?}", lid.across);
        assert!(lid.clearance >= Length::inches(0.0625) - Length::mm(1e-6));
        assert!((lid.opening.length - collar.outside.length - lid.clearance * 2.0).abs() < Length::mm(1e-6));
        // A ring of half round reed, flat side out, has its middle at the centroid of its section.
        let middle = (collar.length - collar.lap) / (2.0 * PI) + collar.stock.centroid();
        let girth = body.form.girth_base() / (2.0 * PI)
            + (collar.outside.length - body.form.across(Length::ZERO, Length::ZERO).length) / 2.0;
        assert!((middle - girth).abs() < Length::mm(1e-6), "{middle:?} {girth:?}");
        let pieces = [Piece::Collar, Piece::Hinge, Piece::Latch, Piece::Peg];
        for piece in pieces {
            assert_eq!(draft.cuts.iter().filter(|cut| cut.of == Of::Lid && cut.piece == piece).count(), 1);
        }
        assert!(
            draft.findings.iter().all(|finding| !finding.code.starts_with("lid-")),
            "{:?}",
            draft.findings
        );
    }
}

#[test]
fn a_hinge_stands_where_the_rim_is_nearly_straight() {
    let hinge = |at: &str| {
        let draft = draft(OVAL, &format!(r#"fit = "flush", hinge = "{at}""#));
        let counts =
            [&draft.basket.body, &draft.basket.lid.as_ref().unwrap().vessel].map(|v| v.uprights().count);
        (draft.basket.lid.unwrap().hinge, counts)
    };
    let (side, [body, lid]) = hinge("side");
    let side = side.unwrap();
    let (end, _) = hinge("end");
    // The loops at the flat side stand farther apart than at the tight end, and as much of the rim stands out.
    let end = end.unwrap();
    assert!(side.apart > end.apart * 1.2, "{side:?} {end:?}");
    for hinge in [&side, &end] {
        assert!(hinge.bulge <= Length::inches(1.0 / 16.0) && hinge.bulge > Length::mm(1.4), "{hinge:?}");
    }
    assert_eq!(hinge("none").0, None);
    // The middle of the loops lies at three quarters of the round, on the far side where numbers rise clockwise, the
    // latch at one; the lid lies the other way round.
    let middle = |[from, to]: [u32; 2], count: u32| {
        let to = if to < from { to + count } else { to };
        (f64::from(from + to) / 2.0 - 1.0) / f64::from(count)
    };
    let near = |turn: f64, wanted: f64, count: u32| {
        let off = (turn - wanted).rem_euclid(1.0);
        off.min(1.0 - off) <= 0.5 / f64::from(count) + 1e-9
    };
    let loops = side.loops.map(|place| [middle(place.body, body), middle(place.lid, lid)]);
    let mean = |at: usize| f64::midpoint(loops[0][at], loops[1][at]);
    assert!(near(mean(0), 0.75, body) && near(mean(1), 0.25, lid), "{side:?} of {body} and {lid}");
    assert!(near(middle(side.latch.body, body), 0.25, body) && near(middle(side.latch.lid, lid), 0.75, lid));
}

#[test]
fn its_pieces_and_steps_stand_apart() {
    let draft = draft(OVAL, "");
    let of_lid =
        |piece: Piece| draft.cuts.iter().filter(|cut| cut.of == Of::Lid && cut.piece == piece).count();
    let lid = draft.basket.lid.as_ref().unwrap();
    let LidSeat::Ledge(ledge) = &lid.seat else { panic!("{lid:?}") };
    assert_eq!(of_lid(Piece::Ledge), ledge.rings.len());
    assert_eq!((of_lid(Piece::Uprights), of_lid(Piece::OuterHoop), of_lid(Piece::Lift)), (1, 1, 1));
    let steps = &draft.steps;
    let first = steps.iter().position(|step| step.of == Of::Lid).unwrap();
    assert!(steps[first..steps.len() - 1].iter().all(|step| step.of == Of::Lid));
    assert_eq!(steps[steps.len() - 2].kind, StepKind::Lid);
    assert_eq!((steps.last().unwrap().kind, steps.last().unwrap().of), (StepKind::Finish, Of::Body));
    // The knob closes the hole; a loop and no lift leave it to the plug.
    let plug = Piece::Floor(basket::piece::FloorPart::Plug);
    assert_eq!(of_lid(plug), 0);
    let bare = self::draft(OVAL, "lift = \"none\"");
    assert_eq!(bare.cuts.iter().filter(|cut| cut.of == Of::Lid && cut.piece == plug).count(), 1);
}

#[test]
fn the_body_is_as_without_it() {
    let with = draft(OVAL, "");
    let text = format!("title = \"Box\"\nmould = {{ {OVAL} }}\n");
    let bare = Draft::of(read(&text, Catalogue::built_in()).unwrap(), Catalogue::built_in(), &Hand::USUAL);
    assert_eq!(with.basket.body, bare.basket.body);
    assert_eq!(bare.basket.lid, None);
    let of_body =
        |draft: &Draft| draft.cuts.iter().filter(|cut| cut.of == Of::Body).cloned().collect::<Vec<_>>();
    assert_eq!(of_body(&with), of_body(&bare));
}

#[test]
fn a_mould_that_is_too_large_is_found_and_mended() {
    let fitting = draft(ROUND, "").basket.lid.unwrap();
    let across = fitting.vessel.form.across(fitting.vessel.form.arc(), Length::ZERO).length;
    let larger = draft(ROUND, &format!("across = \"{} mm\"", across.to_mm() + 8.0));
    let finding =
        larger.findings.iter().find(|finding| finding.code == "lid-clearance").expect("it is found");
    assert_eq!((finding.grade, finding.place.of), (Grade::Stop, Of::Lid));
    let remedy = finding.remedies.first().expect("it is mended");
    assert_eq!(remedy.key, "lid.across");
    let mended = larger.pattern.amended(&remedy.key, &remedy.value, Catalogue::built_in()).unwrap();
    let mended = Draft::of(mended, Catalogue::built_in(), &Hand::USUAL);
    assert!(mended.findings.iter().all(|finding| finding.code != "lid-clearance"));
}

#[test]
fn what_cannot_be_written_is_said() {
    for (lid, told) in [
        ("{ fit = \"sliding\" }", "drop-in"),
        ("{ fit = \"cap\", ledge = \"half round reed 3/8 in\" }", "not a cap"),
        ("{ fit = \"cap\", hinge = \"side\" }", "flush"),
        ("{ way = \"woven\" }", "flat"),
        ("{ lift = \"ribbon\" }", "knob"),
        ("{ plaque = \"9 in\", across = \"8 in\" }", "write less"),
        ("{ hinge = \"brass\" }", "side"),
        ("{ brass = 1 }", "not a known key"),
        ("{ count = 2 }", "lid.count"),
    ] {
        let said = problem(lid);
        assert!(said.contains(told), "{lid}: {said}");
    }
}

/// A scarf that hinge or latch goes round cannot be sanded, and a loop wears its thin end open (common practice).
#[test]
fn scarfs_keep_clear_of_hinge_and_latch() {
    let near = |a: f64, b: f64| (a - b + 0.5).rem_euclid(1.0) - 0.5;
    for mould in [OVAL, ROUND] {
        for at in ["side", "end"] {
            let draft = draft(mould, &format!(r#"fit = "flush", hinge = "{at}""#));
            let lid = draft.basket.lid.as_ref().unwrap();
            let hinge = lid.hinge.as_ref().unwrap();
            for (vessel, of_lid) in [(&draft.basket.body, false), (&lid.vessel, true)] {
                let count = f64::from(vessel.uprights().count);
                for place in hinge.loops.iter().chain([&hinge.latch]) {
                    let [from, _] = if of_lid { place.lid } else { place.body };
                    let turn = (f64::from(from) - 0.5) / count;
                    for scarf in [&vessel.rim().outer.scarf, &vessel.rim().inner.scarf] {
                        let clear = vessel.rim().girth * near(turn, scarf.turn).abs() - scarf.lap / 2.0;
                        assert!(clear > Length::mm(5.0), "{at}: {clear:?} between {place:?} and {scarf:?}");
                    }
                }
            }
        }
    }
}

/// A foot as it was traced, longer than wide and fuller on one side.
const TRACED: &str = r#"shape = "traced", rays = ["4 1/2 in", "4 1/4 in", "3 1/2 in", "3 1/8 in", "3 in", "3 1/8 in", "3 1/2 in", "4 1/4 in", "4 1/2 in", "4 in", "3 3/8 in", "2 7/8 in", "2 3/4 in", "2 7/8 in", "3 3/8 in", "4 in"], rim = "10 in", height = "4 in", side = "bowl""#;

#[test]
fn a_flat_lid_meets_its_basket_as_one_from_a_mould_does() {
    for mould in [OVAL, ROUND, TRACED] {
        for fit in ["drop-in", "cap", "flush"] {
            let draft = draft(mould, &format!(r#"fit = "{fit}", way = "flat""#));
            let lid = draft.basket.lid.as_ref().unwrap();
            let [_, rise] = lid.flat().unwrap();
            assert_eq!(rise, Length::ZERO);
            // The stave runs level from the plaque: a flat ring is as wide as the way along it.
            let profile = lid.vessel.profile();
            let (near, far) = (profile.at(Length::mm(1.0)), profile.at(Length::mm(4.0)));
            assert!((far.radius - near.radius - Length::mm(3.0)).abs() < Length::mm(1e-6));
            assert!(lid.clearance - lid.wanted >= Length::mm(-0.02), "{fit}: {:?}", lid.clearance);
            // Rows at the edge of a board come one by one, and the rim jumps with them: by less than a row.
            let is_lid = |code: &str| code.starts_with("lid-") && code != "lid-not-flush";
            let of_lid: Vec<_> = draft.findings.iter().filter(|finding| is_lid(finding.code)).collect();
            if let LidSeat::Collar(collar) = &lid.seat {
                assert!(collar.proud.abs() < Length::mm(1.2), "{fit}: {:?}", collar.proud);
            }
            assert!(of_lid.is_empty(), "{fit}: {of_lid:?}");
        }
    }
}

#[test]
fn a_wide_flat_lid_wants_a_dome() {
    let wide = r#"base = "12 in", rim = "14 in", height = "4 in""#;
    let codes = |lid: &str| -> Vec<_> {
        draft(wide, lid).findings.into_iter().filter(|finding| finding.code == "lid-too-flat").collect()
    };
    let flat = codes(r#"way = "flat", fit = "flush""#);
    let height = flat[0].remedies[0].value.clone();
    assert_eq!(flat[0].remedies[0].key, "lid.height");
    assert_eq!(codes(&format!(r#"way = "flat", fit = "flush", height = {height}"#)), []);
    assert_eq!(codes(r#"fit = "flush""#), []);
}

/// Outlines at an even distance differ by it square to them (Jakob Steiner, 1840); turned over about the long axis
/// a lid of a foot that is not symmetric is its mirror image.
#[test]
fn a_lid_of_a_traced_mould_lies_on_its_basket() {
    for fit in ["drop-in", "cap", "flush"] {
        let draft = draft(TRACED, &format!(r#"fit = "{fit}""#));
        let (body, lid) = (&draft.basket.body, draft.basket.lid.as_ref().unwrap());
        let level = |vessel: &basket::vessel::Vessel, out: Length| {
            let level = vessel.rim_level(vessel.rim().radius() + out);
            let places = (0..720).map(move |at| level.place(f64::from(at) / 720.0));
            places.collect::<Vec<_>>()
        };
        let out = lid.vessel.rim().radius() - body.rim().radius();
        let (on_body, on_lid) = (level(body, out), level(&lid.vessel, Length::ZERO));
        for [x, y] in on_lid {
            let near = on_body.iter().map(|[bx, by]| (bx - x).hypot(by + y)).fold(f64::MAX, f64::min);
            assert!(near < 1.0, "{fit}: {near} mm off at {x}, {y}");
        }
    }
}
