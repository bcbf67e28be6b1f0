//! Take-up, crossings and the height of twined rows against published geometry, a published wall and
//! figures that were computed independently.

use std::f64::consts::TAU;

use basket::pattern::read;
use basket::stock::Kind;
use basket::weave::taut::StaveSection;
use basket::weave::{Crossing, TakeUp};
use basket::{Basket, Catalogue, Hand, Length, assemble};
use proptest::prelude::*;

fn mm(length: f64) -> Length {
    Length::mm(length)
}

#[track_caller]
fn assert_close(got: f64, wanted: f64, within: f64) {
    assert!((got - wanted).abs() <= within, "got {got}, wanted {wanted} within {within}");
}

fn race_track(width: f64, thickness: f64) -> StaveSection {
    StaveSection::strip(mm(width), mm(thickness), mm(thickness / 2.0))
}

/// Share by which a weaver is longer than the pitch of staves `width` wide, `gap` apart.
fn share(section: StaveSection, width: f64, gap: f64, weaver: f64) -> f64 {
    section.way(mm(gap), mm(weaver)).to_mm() / (width + gap) - 1.0
}

/// Stave's width and thickness, weaver's thickness and gap in mm; then the take-up round a box, a race
/// track, a flat face with half an ellipse on it, and a whole ellipse. Computed independently with offset
/// polygons of a geometry library. The race track is the section of A. Kemp, "An Extension of Peirce's Cloth
/// Geometry to the Treatment of Non-circular Threads", *Journal of the Textile Institute* 49 (1958), T44,
/// with the crossing of F. T. Peirce, "The Geometry of Cloth Structure", the same journal 28 (1937), T45.
const SECTIONS: [([f64; 4], [f64; 4]); 5] = [
    ([6.35, 1.9, 1.2, 1.6], [0.2799, 0.1884, 0.1639, 0.1330]),
    ([6.35, 1.9, 1.2, 2.35], [0.1988, 0.1369, 0.1189, 0.0954]),
    ([6.35, 1.9, 1.2, 4.0], [0.1086, 0.0807, 0.0711, 0.0575]),
    ([4.76, 1.7, 0.9, 1.5], [0.2734, 0.1807, 0.1641, 0.1308]),
    ([12.7, 1.2, 1.2, 3.0], [0.0582, 0.0450, 0.0300, 0.0251]),
];

#[test]
fn the_taut_way_round_four_sections() {
    for ([width, thickness, weaver, gap], wanted) in SECTIONS {
        let (wide, thick) = (mm(width), mm(thickness));
        let sections = [
            StaveSection::strip(wide, thick, Length::ZERO),
            race_track(width, thickness),
            StaveSection::arched(wide, thick, thick),
            StaveSection::ellipse(wide, thick),
        ];
        for (section, wanted) in sections.into_iter().zip(wanted) {
            assert_close(share(section, width, gap, weaver), wanted, 1e-4);
        }
    }
}

/// Flat oval staves take up between the whole ellipse and the half one on its flat face.
#[test]
fn the_range_of_flat_oval_staves() {
    for ([width, thickness, weaver, gap], [.., oval, ellipse]) in SECTIONS {
        let kind = Kind::FlatOvalReed;
        let [width, thickness, weaver, gap] = [width, thickness, weaver, gap].map(mm);
        let take_up = Crossing { kind, width, thickness, gap, weaver }.take_up();
        assert_close(take_up.least, ellipse, 1e-4);
        assert_close(take_up.most, oval, 1e-4);
    }
}

/// Kemp's race track with Peirce's crossing (see [`SECTIONS`]): 16 wide staves, staves and weaver 1.5 thick; 6
/// apart the weaver takes 22.6084 on a pitch of 22, and jammed in a gap of its own thickness 0.0979 more
/// than the pitch. Computed independently by root finding.
#[test]
fn race_track_section() {
    let staves = race_track(16.0, 1.5);
    assert_close(staves.way(mm(6.0), mm(1.5)).to_mm(), 22.6084, 5e-5);
    assert_close(share(staves, 16.0, 6.0, 1.5), 0.0277, 5e-5);
    assert_close(share(staves, 16.0, 1.5, 1.5), 0.0979, 5e-5);
}

/// A jammed thread goes half round the stave: half the perimeter of an ellipse. Half axes and perimeters by the
/// arithmetic-geometric mean, computed independently.
#[test]
fn a_jammed_thread_goes_half_round_an_ellipse() {
    let ellipses = [
        (150.0, 100.0, 793.271_979_464_5),
        (200.0, 100.0, 968.844_822_054_8),
        (250.0, 60.0, 1_067.740_145_365_5),
    ];
    for (long, short, perimeter) in ellipses {
        for (width, thickness) in [(long, short), (short, long)] {
            let stave = StaveSection::ellipse(mm(2.0 * width), mm(2.0 * thickness));
            assert_close(stave.way(Length::ZERO, Length::ZERO).to_mm(), perimeter / 2.0, 1e-6);
        }
    }
}

/// A frustum of radius 100 to 150 mm and 130 mm slant, woven at 1.7 mm a row: a spiral of the true helix
/// is as long as area over pitch says, to parts per million; with 25 staves three quarters of their
/// pitch wide, staves and weaver 1.5 mm thick, on the middle surface of the staves, the take-up round Kemp's
/// race track brings it to 61352.485 mm, 1.543 % more. Computed independently by adaptive quadrature.
#[test]
fn a_whole_basket_of_weaver() {
    let radius = |along: f64| 100.0 + 50.0 * along / 130.0;
    let helix = integral(0.0, 130.0, 200, |along| (1.0 + (TAU * radius(along) / 1.7).powi(2)).sqrt());
    assert_close(helix, 60_060.002_2, 5e-5);
    let area = integral(0.0, 130.0, 200, |along| TAU * radius(along) / 1.7);
    assert_close(area, 60_059.859_6, 5e-5);
    let middle = |along: f64| TAU * (radius(along) + 0.75);
    let woven = integral(0.0, 130.0, 400, |along| {
        let pitch = middle(along) / 25.0;
        middle(along) / 1.7 * (1.0 + share(race_track(0.75 * pitch, 1.5), 0.75 * pitch, 0.25 * pitch, 1.5))
    });
    assert_close(woven, 61_352.485, 5e-4);
    let straight = integral(0.0, 130.0, 200, |along| middle(along) / 1.7);
    assert_close(woven / straight - 1.0, 0.015_43, 5e-6);
}

/// The rows of a basket on that frustum add up to the same integral over the staves as they are cut, with the
/// most take-up.
#[test]
fn rows_add_up_to_the_spiral() {
    let basket = drafted(
        "[mould]\nbase = \"200\"\nrim = \"300\"\nheight = \"120\"\n[staves]\ncount = 25\nstock = \"mine\"\n\
         [weave]\ncourses = [{ weaver = \"strip\", rows = 76 }]\n\
         [materials.mine]\nkind = \"splint\"\nwidth = \"18\"\nthickness = \"1.5\"\n\
         [materials.strip]\nkind = \"splint\"\nwidth = \"1.7\"\nthickness = \"1.5\"\n",
    );
    // From the tenth row, where the bend at the foot tells no more; rows hold the staves 1.5 mm off.
    let (first, count) = (9.0, 67.0);
    let span = |of: &dyn Fn(f64) -> f64| integral(first * 1.7, (first + count) * 1.7, 67 * 40, of);
    let girth = |along: f64| TAU * (100.0 + 50.0 * along / 130.0 + 1.5 + 0.75);
    let spiral = span(&|along| {
        let width = basket.body.uprights().width_at(mm(along));
        let (thickness, gap) = (mm(1.5), mm(girth(along) / 25.0) - width);
        let crossing = Crossing { kind: Kind::Splint, width, thickness, gap, weaver: mm(1.5) };
        girth(along) / 1.7 * (1.0 + crossing.take_up().most)
    });
    let got: f64 = basket.body.weave.each_row[9..].iter().map(|row| row.length.to_mm()).sum();
    assert_close(got / spiral, 1.0, 2e-4);
    let TakeUp { least, most } = basket.body.weave.courses[0].take_up;
    assert!(
        0.0 < least && least < most && most < spiral / span(&|along| girth(along) / 1.7),
        "{least} {most}"
    );
}

/// Two arcs that meet in the middle of a gap: round staves and weaver, 3 thick together on a pitch of 22, bend on
/// 41.0833. Computed independently. In a gap that the weaver fills it bends round half of that thickness.
#[test]
fn the_gentlest_crossing() {
    let [width, thickness, weaver] = [1.5; 3].map(mm);
    let crossing = |gap| Crossing { kind: Kind::RoundReed, width, thickness, gap: mm(gap), weaver };
    assert_close(crossing(20.5).tightest().to_mm(), 41.0833, 5e-5);
    assert_close(crossing(20.5).strain(), 1.5 / (2.0 * 41.0833), 1e-7);
    assert_close(crossing(1.5).tightest().to_mm(), 1.5, 1e-12);
    assert_close(crossing(0.0).tightest().to_mm(), 1.5, 1e-12);
}

proptest! {
    /// Every crossing has a finite length, not shorter than the way round, and a thicker weaver goes no shorter
    /// way.
    #[test]
    fn every_crossing_has_a_length(
        lengths in prop::array::uniform4(prop_oneof![
            4 => 0.0..30.0,
            1 => prop::num::f64::ANY,
        ]),
        kind in prop::sample::select(Kind::ALL.to_vec()),
    ) {
        let [width, thickness, gap, weaver] = lengths.map(mm);
        let crossing = Crossing { kind, width, thickness, gap, weaver };
        let take_up = crossing.take_up();
        prop_assert!(take_up.least >= 0.0 && take_up.least <= take_up.most && take_up.most.is_finite());
        let radius = crossing.tightest().to_mm();
        prop_assert!(radius > 0.0 && radius.is_finite() && crossing.strain().is_finite());
        let way = StaveSection::of(kind, width, thickness).way(gap, weaver).to_mm();
        prop_assert!(way >= 0.0 && way.is_finite());
        let thicker = Crossing { weaver: weaver * 1.1, ..crossing };
        prop_assert!(thicker.take_up().most >= take_up.most - 1e-9);
    }
}

/// The weaver is taut: no way that clears both staves is shorter. The shortest way round the staves' own outlines,
/// offset by half the weaver's thickness, is searched for point by point.
#[test]
fn no_shorter_way_clears_the_staves() {
    let [width, thickness, weaver, gap] = [6.35, 1.9, 1.2, 1.6];
    let (half, pitch, steps) = (width / 2.0, width + gap, 20_000);
    // The arched face of one stave and the flat face of the next, as normals run from upright to level.
    let normal = |step: u32| (f64::from(step) / f64::from(steps) * TAU / 4.0).sin_cos();
    let over = |step: u32| {
        let (sin, cos) = normal(step);
        let support = (half * sin).hypot(thickness * cos);
        (
            half * half * sin / support + weaver / 2.0 * sin,
            thickness * thickness * cos / support + weaver / 2.0 * cos,
        )
    };
    let under = |step: u32| {
        let (sin, cos) = normal(step);
        (pitch - half - weaver / 2.0 * sin, -weaver / 2.0 * cos)
    };
    let apart = |(x, y): (f64, f64), (u, v): (f64, f64)| (x - u).hypot(y - v);
    let (mut so_far, mut shortest) = (0.0, f64::INFINITY);
    for step in 1..=steps {
        so_far += apart(over(step - 1), over(step)) + apart(under(step - 1), under(step));
        // The line that is square to both normals clears both staves where it falls from the one to the other.
        let (sin, cos) = normal(step);
        let ((x, y), (u, v)) = (over(step), under(step));
        let below = (u - x) * sin + (v - y) * cos;
        if below >= 0.0 {
            shortest = half + so_far + apart((x, y), (u, v));
            break;
        }
    }
    let way = StaveSection::arched(mm(width), mm(thickness), mm(thickness)).way(mm(gap), mm(weaver));
    assert_close(way.to_mm(), shortest, 1e-3);
}

/// A pattern writer's free pattern of a market basket, spring 1994: triple twining of 3, 2, 5, 5 and 2 rounds
/// and 10 of pairing in No. 2 round reed (1.75 mm) and a row of 3/8 in flat reed make a wall of 4 1/2 in.
#[test]
fn a_published_wall_of_twined_rows() {
    let basket = drafted(
        "[mould]\nbase = \"300\"\nrim = \"300\"\nheight = \"200\"\nside = \"straight\"\n\
         [staves]\ncount = 44\nstock = \"flat reed 5/8 in\"\n[weave]\ncourses = [\n\
         { weave = \"wale 3\", weaver = \"round reed 2\", rows = 10 },\n\
         { weave = \"pairing\", weaver = \"round reed 2\", rows = 10 },\n\
         { weave = \"wale 3\", weaver = \"round reed 2\", rows = 7 },\n\
         { weave = \"plain\", weaver = \"flat reed 3/8 in\", rows = 1, way = \"row by row\" }]\n",
    );
    let wall = basket.body.weave.top_along.to_inches();
    assert_close(wall, 4.5, 0.02 * 4.5);
}

/// Anna A. Gill, *Practical Basketry* (1916), model 51, p. 127: nine rows of pairing in No. 2 reed (1.75 mm) are
/// half an inch. Each of the two weavers makes a row as it goes round: four and a half rounds. Wales and
/// pairing lie within what is common practice: 2.3 to 2.6 and 1.6 to 2.0 thicknesses a round.
#[test]
fn heights_of_twined_rounds() {
    let thicknesses = |weave: &str, more: &str| {
        let course = format!("{{ weave = \"{weave}\", weaver = \"round reed 2\", rows = 10{more} }}");
        let basket = drafted(&straight(12.0, "flat reed 3/8 in", &course));
        basket.body.weave.courses[0].to.to_mm() / 10.0 / 1.75
    };
    let published = 0.5 * 25.4 / 4.5 / 1.75;
    let pairing = thicknesses("pairing", "");
    assert!((1.6..=2.0).contains(&published) && (1.6..=2.0).contains(&pairing), "{published} {pairing}");
    let wale = thicknesses("wale 3", "");
    assert!((2.3..=2.6).contains(&wale), "{wale}");
    // A test strip overrides.
    assert_close(thicknesses("pairing", ", packing = 1.65"), 1.65, 1e-9);
    assert_close(thicknesses("wale 3", ", packing = 2.3"), 2.3, 1e-9);
}

/// Twined weavers are 1.15 to 1.3 times as long as the way round where staves stand about 8 mm apart, and 1.02 to
/// 1.05 times at 17 mm and wider (from memory of the trade for the first, computed for the second): No. 2
/// reed on usual staves.
#[test]
fn twined_take_up_falls_with_the_pitch() {
    let take_up = |pitch: f64, staves: &str, weave: &str| {
        let course = format!("{{ weave = \"{weave}\", weaver = \"round reed 2\", rows = 10 }}");
        drafted(&straight(pitch, staves, &course)).body.weave.courses[0].take_up
    };
    let wide = ["flat oval reed 1/4 in", "flat oval reed 3/8 in", "flat reed 3/8 in"];
    for weave in ["pairing", "wale 3"] {
        let close = take_up(8.0, "flat oval reed 1/4 in", weave);
        assert!(close.least > 0.15 && close.most < 0.3, "{weave} {close:?}");
        for staves in wide {
            let wide = take_up(17.0, staves, weave);
            assert!(wide.least > 0.02 && wide.most < 0.05, "{weave} {staves} {wide:?}");
        }
    }
}

/// Sixty staves on a straight wall, this far from middle to middle.
fn straight(pitch: f64, staves: &str, course: &str) -> String {
    let thickness = Catalogue::built_in().material(staves).expect("in the catalogue").thickness.to_mm();
    // Rows of No. 2 reed hold the staves off the mould.
    let reed = Catalogue::built_in().material("round reed 2").expect("in the catalogue").thickness.to_mm();
    let across = 60.0 * pitch / TAU * 2.0 - thickness - 2.0 * reed;
    format!(
        "[mould]\nbase = \"{across:.6} mm\"\nrim = \"{across:.6} mm\"\nheight = \"200\"\nside = \"straight\"\n\
         [staves]\ncount = 60\nstock = \"{staves}\"\n[weave]\ncourses = [{course}]\n"
    )
}

fn drafted(rest: &str) -> Basket {
    let text = format!("title = \"A wall\"\nunits = \"mm\"\n{rest}");
    let pattern =
        read(&text, Catalogue::built_in()).unwrap_or_else(|problems| panic!("{problems:#?}\n{text}"));
    assemble(&pattern, Catalogue::built_in(), &Hand::USUAL)
}

/// Simpson's rule on so many slices.
fn integral(from: f64, to: f64, slices: u32, of: impl Fn(f64) -> f64) -> f64 {
    let step = (to - from) / f64::from(slices);
    let slice = |index: u32| {
        let at = from + step * f64::from(index);
        (of(at) + 4.0 * of(at + step / 2.0) + of(at + step)) * step / 6.0
    };
    (0..slices).map(slice).sum()
}
