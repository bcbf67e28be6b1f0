//! Outlines that are not round: perimeters, areas, places and offsets, against published formulas and against a
//! general geometry library.

use std::f64::consts::{FRAC_PI_2, PI, TAU};

use basket::Length;
use basket::form::{Arcs, Form, Outline, OutlinePoint, Oval, Shape};
use basket::pattern::{self, FootSize, Levels, MouldForm, MouldPattern, MouldPieces, Side};
use geo::buffer::{BufferStyle, LineJoin};
use geo::{Area, Buffer, Coord, Euclidean, Length as _, LineString, Polygon};
use proptest::prelude::*;

#[track_caller]
fn close(found: f64, wanted: f64, allowance: f64) {
    assert!((found - wanted).abs() <= allowance, "{found} is not {wanted} within {allowance}");
}

fn area(outline: &impl Outline) -> f64 {
    let radius = outline.girth() / TAU;
    PI * radius * radius - outline.short_of_circle()
}

/// Source: complete elliptic integrals of the second kind by the arithmetic-geometric mean (M. Abramowitz and
/// I. A. Stegun, *Handbook of Mathematical Functions*, 1964, 17.6), computed independently; the area is `πab`.
#[test]
fn ellipses_have_their_perimeter_to_the_digits() {
    let known = [
        (150.0, 100.0, 793.271_979_464_5),
        (200.0, 100.0, 968.844_822_054_8),
        (250.0, 60.0, 1_067.740_145_365_5),
    ];
    for (a, b, girth) in known {
        let oval = Oval::new([a, b], 2.0);
        close(oval.girth(), girth, 5e-10);
        close(area(&oval), PI * a * b, 1e-6);
        close(oval.tightest(), b * b / a, 1e-9);
    }
}

/// Source: adaptive quadrature, computed independently; the area of a superellipse is
/// `4ab·Γ(1+1/p)²/Γ(1+2/p)`.
#[test]
fn superellipses_have_their_perimeter_and_area() {
    for (power, girth, enclosed) in [(2.5, 824.574_166_6, 50_714.030_4), (4.0, 881.055_748_1, 55_622.240_3)] {
        let oval = Oval::new([150.0, 100.0], power);
        close(oval.girth(), girth, 1e-6);
        close(area(&oval), enclosed, 1e-4);
    }
}

/// Source: plane geometry: four quarter circles and four straight sides.
#[test]
fn rectangles_and_stadiums_have_their_perimeter_and_area() {
    let rectangle = Arcs::rectangle([300.0, 200.0], 60.0);
    close(rectangle.girth(), 896.991_118_4, 1e-7);
    close(area(&rectangle), 56_909.733_6, 1e-4);
    close(rectangle.tightest(), 60.0, 1e-12);
    let stadium = Arcs::rectangle([300.0, 200.0], 100.0);
    close(stadium.girth(), 828.318_530_7, 1e-7);
    close(area(&stadium), PI * 10_000.0 + 20_000.0, 1e-6);
}

/// Source: root finding on the ellipse 150 × 100 for 25 staves, computed independently: parameters 0, 0.311 252 1,
/// 0.595 765 8, 0.850 872 6, 1.084 479 8.
#[test]
fn places_lie_at_equal_shares_of_the_outline() {
    let oval = Oval::new([150.0, 100.0], 2.0);
    close(oval.girth() / 25.0, 31.730_879_2, 5e-8);
    let parameters = [0.0_f64, 0.311_252_1, 0.595_765_8, 0.850_872_6, 1.084_479_8];
    for (number, parameter) in parameters.into_iter().enumerate() {
        let [x, y] = oval.at(number as f64 / 25.0).point;
        close(x, 150.0 * parameter.cos(), 1e-5);
        close(y, 100.0 * parameter.sin(), 1e-5);
    }
}

/// Source: A. A. Gill, *Practical Basketry*, 1916, model 53, p. 126: an oval tray of 20 × 14 in with 52 holes about
/// 1 in apart.
#[test]
fn a_published_oval_tray_has_its_holes_an_inch_apart() {
    let outline = pattern::Outline::Oval {
        size: FootSize { length: inches(20.0), width: inches(14.0) },
        fullness: 0.0,
    };
    let form = form(outline, inches(20.0), inches(1.0));
    let apart = form.girth_base().to_inches() / 52.0;
    close(apart, 1.0, 0.04);
}

/// Source: the stave of an ellipse 120 × 70 whose wall lies 30 mm farther out: the pitch grows by `1 + dκ`, by
/// 1.7347 at the ends and 1.1458 at the sides (differential geometry).
#[test]
fn gaps_grow_most_at_the_ends() {
    let oval = Oval::new([120.0, 70.0], 2.0);
    close(1.0 + 30.0 * oval.at(0.0).curvature, 1.734_7, 5e-5);
    close(1.0 + 30.0 * oval.at(0.25).curvature, 1.145_8, 5e-5);
}

/// Source: Jakob Steiner, 1840: at the distance `d` outside, `2πd` more perimeter and `P·d + πd²` more area.
#[test]
fn levels_are_the_outline_at_a_distance() {
    let size = FootSize { length: Length::mm(300.0), width: Length::mm(200.0) };
    let form = form(pattern::Outline::Oval { size, fullness: 0.0 }, Length::mm(360.0), Length::mm(120.0));
    close(form.girth_base().to_mm(), 793.271_979_464_5, 1e-8);
    close(form.girth(form.arc(), Length::mm(2.0)).to_mm(), 793.271_979_464_5 + TAU * 32.0, 1e-8);
    let across = form.across(form.arc(), Length::ZERO);
    close(across.length.to_mm(), 360.0, 1e-9);
    close(across.width.to_mm(), 260.0, 1e-9);
    close(form.tightest(form.arc(), Length::mm(5.0)).to_mm(), 100.0 * 100.0 / 150.0 + 35.0, 1e-8);
    // The area over the height, by Simpson's rule, which is exact for a wall that leans evenly.
    let at = |out: f64| PI * 150.0 * 100.0 + 793.271_979_464_5 * out + PI * out * out;
    close(form.litres(), 120.0 * (at(0.0) + 4.0 * at(15.0) + at(30.0)) / 6.0 / 1e6, 1e-9);
    let lean = (30.0_f64 / 120.0).atan();
    for step in 0..16 {
        let turn = f64::from(step) / 16.0;
        let (foot, top) = (form.outline.at(turn), form.at(form.arc(), turn, Length::ZERO));
        let [x, y, height] = top.point.map(Length::to_mm);
        close((x - foot.point[0]).hypot(y - foot.point[1]), 30.0, 1e-9);
        close(height, 120.0, 1e-9);
        let dot: f64 = top.outward.iter().zip(top.along).map(|(out, up)| out * up).sum();
        close(dot, 0.0, 1e-12);
        close(top.along[2].acos(), lean, 1e-9);
        close(top.outward[2], -(FRAC_PI_2 - lean).cos(), 1e-9);
    }
}

/// A tape knows better than a rule how large a foot is: the shape is taken from length and width.
#[test]
fn taped_girths_give_the_size() {
    let size = FootSize { length: Length::mm(300.0), width: Length::mm(200.0) };
    let girth =
        |height: f64, girth: f64| pattern::Girth { height: Length::mm(height), girth: Length::mm(girth) };
    let form = Form::on_mould(&MouldPattern {
        outline: pattern::Outline::Stadium(size),
        form: MouldForm::Girths(vec![girth(0.0, 830.0), girth(100.0, 900.0)]),
        levels: Levels::Even,
        pieces: MouldPieces::One,
    });
    close(form.girth_base().to_mm(), 830.0, 1e-9);
    close(form.outline.girth(), 830.0, 1e-9);
    close(form.across(Length::ZERO, Length::ZERO).length.to_mm(), 300.0 * 830.0 / 828.318_530_7, 1e-6);
}

fn inches(inches: f64) -> Length {
    Length::inches(inches)
}

fn form(outline: pattern::Outline, rim: Length, height: Length) -> Form {
    let base = match &outline {
        pattern::Outline::Oval { size, .. } | pattern::Outline::Stadium(size) => size.length,
        other => panic!("{other:?}"),
    };
    let form = MouldForm::Drawn { base, rim, height, side: Side::Cone };
    Form::on_mould(&MouldPattern { outline, form, levels: Levels::Even, pieces: MouldPieces::One })
}

/// Corners of the polygon that stands for an outline, and for the curve so far outside it.
const CORNERS: u32 = 600;

fn polygon(outline: &impl Outline, out: f64) -> Polygon {
    let corner = |number: u32| {
        let OutlinePoint { point: [x, y], outward: [dx, dy], .. } =
            outline.at(f64::from(number) / f64::from(CORNERS));
        Coord { x: x + dx * out, y: y + dy * out }
    };
    Polygon::new((0..CORNERS).map(corner).collect::<LineString>(), Vec::new())
}

fn any_outline() -> impl Strategy<Value = Shape> {
    let sizes = (40.0..400.0_f64, 0.25..1.0_f64).prop_map(|(length, share)| [length, length * share]);
    let oval = (sizes.clone(), 2.0..8.0_f64)
        .prop_map(|(size, power)| Shape::Oval(Oval::new(size.map(|side| side / 2.0), power)));
    let rectangle = (sizes.clone(), 0.05..0.5_f64)
        .prop_map(|(size, corner)| Shape::Arcs(Arcs::rectangle(size, size[1] * corner)));
    // The rays of an ellipse that somebody laid askew and off the middle: convex, and not symmetric.
    let traced =
        (sizes, -0.3..0.3_f64, -0.3..0.3_f64, 12_usize..72).prop_map(|(size, aside, askew, count)| {
            let [a, b] = size.map(|side| side / 2.0);
            let ends: Vec<[f64; 2]> = (0..count)
                .map(|number| {
                    let angle = TAU * number as f64 / count as f64;
                    let (sin, cos) = (angle + askew).sin_cos();
                    let (u, v, w) = (cos / a, sin / b, aside);
                    // |offset + ray| = 1 in the ellipse's own measure.
                    let ray = (-u * w + ((u * w).powi(2) + (u * u + v * v) * (1.0 - w * w)).sqrt())
                        / (u * u + v * v);
                    [ray * angle.cos(), ray * angle.sin()]
                })
                .collect();
            Shape::Arcs(Arcs::through(&ends).expect("at least twelve corners"))
        });
    prop_oneof![oval, rectangle, traced]
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 200, max_shrink_iters: 20, ..ProptestConfig::default() })]

    /// Perimeter, area, offset and even spacing, against polygons of the `geo` library. A polygon inscribed in a
    /// smooth curve of girth `P` with `n` corners is shorter by about `∫κ² ds·(P/n)²/24`.
    #[test]
    fn any_outline_agrees_with_a_geometry_library(outline in any_outline(), out in 1.0..60.0_f64) {
        let near = polygon(&outline, 0.0);
        let girth = outline.girth();
        let sagging = |tightest: f64, girth: f64| {
            let step = girth / f64::from(CORNERS);
            girth * (step / tightest).powi(2)
        };
        let allowed = 1e-6 + sagging(outline.tightest(), girth);
        let length = Euclidean.length(near.exterior());
        prop_assert!((length - girth).abs() <= allowed, "{length} for {girth}");
        let enclosed = near.unsigned_area();
        prop_assert!((enclosed - area(&outline)).abs() <= allowed * girth, "{enclosed}");

        let round = BufferStyle::new(out).line_join(LineJoin::Round(0.05));
        let wide = near.buffer_with_style(round);
        let steiner = [girth + TAU * out, area(&outline) + girth * out + PI * out * out];
        let found: f64 = wide.iter().map(|part| Euclidean.length(part.exterior())).sum();
        prop_assert!((found / steiner[0] - 1.0).abs() < 1e-3, "{found} for {}", steiner[0]);
        prop_assert!((wide.unsigned_area() / steiner[1] - 1.0).abs() < 1e-3, "{}", wide.unsigned_area());
        // A chord that turns by an angle cuts off a segment of its arc: a share of the square of the angle.
        let cut_off = (girth / f64::from(CORNERS) / outline.tightest()).powi(2);
        let ours = polygon(&outline, out);
        prop_assert!((ours.unsigned_area() / wide.unsigned_area() - 1.0).abs() < 1e-3 + cut_off);

        // The places lie evenly, and the outline turns once round without turning back.
        let step = girth / f64::from(CORNERS);
        for line in near.exterior().lines() {
            let chord = Euclidean.length(&line);
            let bend = (step / outline.tightest()).powi(2) * step;
            prop_assert!(chord <= step + 1e-7 && chord >= step - bend - 1e-7, "{chord} for {step}");
        }
        for number in 0..CORNERS {
            let [here, next] = [number, number + 1].map(|at| outline.at(f64::from(at) / f64::from(CORNERS)).outward);
            prop_assert!(here[0] * next[1] - here[1] * next[0] >= -1e-9, "{here:?} {next:?}");
        }
    }
}
