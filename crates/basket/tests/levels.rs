//! Levels that do not lie at an even distance from their foot: the foot in another size, and sides that run otherwise
//! along the long sides than at the ends. Each figure is checked against sums over many places, which know nothing of
//! how the program reaches it, and the bulging mould against values computed independently.

use std::f64::consts::{PI, TAU};

use basket::Length;
use basket::form::{Form, WallPoint};
use basket::pattern::{
    FootSize, Girth, Levels, MouldForm, MouldPattern, MouldPieces, Outline, Side, WidthAt,
};

const ROUND: u32 = 3_000;

fn mm(length: f64) -> Length {
    Length::mm(length)
}

fn mould(outline: Outline, form: MouldForm, levels: Levels) -> Form {
    Form::on_mould(&MouldPattern { outline, form, levels, pieces: MouldPieces::One })
}

fn oval(length: f64, width: f64) -> Outline {
    Outline::Oval { size: FootSize { length: mm(length), width: mm(width) }, fullness: 0.0 }
}

fn drawn(base: f64, rim: f64, height: f64, side: Side) -> MouldForm {
    MouldForm::Drawn { base: mm(base), rim: mm(rim), height: mm(height), side }
}

fn close(found: f64, wanted: f64, allowance: f64) {
    assert!((found - wanted).abs() <= allowance, "{found} is not {wanted} within {allowance}");
}

/// The form's level at a height as many places.
fn level(form: &Form, height: f64) -> Vec<[f64; 2]> {
    let along = form.profile.along_at_height(mm(height));
    let place = |number: u32| form.at(along, f64::from(number) / f64::from(ROUND), Length::ZERO).point;
    (0..ROUND).map(place).map(|[x, y, _]| [x.to_mm(), y.to_mm()]).collect()
}

fn perimeter(places: &[[f64; 2]]) -> f64 {
    let next = places.iter().cycle().skip(1);
    places.iter().zip(next).map(|(a, b)| (a[0] - b[0]).hypot(a[1] - b[1])).sum()
}

fn area(places: &[[f64; 2]]) -> f64 {
    let next = places.iter().cycle().skip(1);
    places.iter().zip(next).map(|(a, b)| (a[0] * b[1] - a[1] * b[0]) / 2.0).sum()
}

/// Forms of every way in which levels follow from a foot that is not round.
fn forms() -> Vec<Form> {
    let size = FootSize { length: mm(240.0), width: mm(150.0) };
    let outlines = [
        oval(240.0, 150.0),
        Outline::Oval { size, fullness: 0.3 },
        Outline::Rectangle { size, corner: mm(50.0) },
        Outline::Stadium(size),
        Outline::Traced([120.0, 100.0, 80.0, 95.0, 118.0, 92.0, 70.0, 90.0].map(mm).to_vec()),
    ];
    let widths =
        vec![WidthAt { height: mm(60.0), width: mm(190.0) }, WidthAt { height: mm(140.0), width: mm(205.0) }];
    let mut forms = Vec::new();
    for outline in outlines {
        for levels in [Levels::Scaled, Levels::Widths(widths.clone())] {
            for side in [Side::Cone, Side::Bowl] {
                forms.push(mould(outline.clone(), drawn(240.0, 290.0, 140.0, side), levels.clone()));
            }
        }
    }
    forms
}

/// Source: the ellipse's perimeter by quadrature of its own arc; similar figures.
#[test]
fn scaled_levels_are_the_foot_in_another_size() {
    let form = mould(oval(240.0, 140.0), drawn(240.0, 324.0, 150.0, Side::Cone), Levels::Scaled);
    for height in [0.0, 75.0, 150.0] {
        let scale = 1.0 + 0.35 * height / 150.0;
        let along = form.profile.along_at_height(mm(height));
        let across = form.across(along, Length::ZERO);
        close(across.length.to_mm(), 240.0 * scale, 1e-6);
        close(across.width.to_mm(), 140.0 * scale, 1e-6);
        for [x, y] in level(&form, height) {
            close((x / 120.0 / scale).powi(2) + (y / 70.0 / scale).powi(2), 1.0, 1e-6);
        }
    }
}

#[test]
fn a_mould_is_as_wide_as_was_measured_and_as_long_as_was_drawn() {
    let widths =
        vec![WidthAt { height: mm(60.0), width: mm(170.0) }, WidthAt { height: mm(140.0), width: mm(205.0) }];
    let form = mould(oval(240.0, 150.0), drawn(240.0, 300.0, 140.0, Side::Cone), Levels::Widths(widths));
    for (height, length, width) in [(0.0, 240.0, 150.0), (140.0, 300.0, 205.0)] {
        let across = form.across(form.profile.along_at_height(mm(height)), Length::ZERO);
        close(across.length.to_mm(), length, 1e-6);
        close(across.width.to_mm(), width, 1e-6);
    }
    let between = form.across(form.profile.along_at_height(mm(60.0)), Length::ZERO);
    close(between.width.to_mm(), 170.0, 1e-3);
    close(between.length.to_mm(), 240.0 + 60.0 * 60.0 / 140.0, 1e-3);
}

/// A tape and a rule: girths say what both axes do together, widths what the shorter one does.
#[test]
fn girths_and_widths_together_give_the_length() {
    let foot = mould(oval(240.0, 150.0), drawn(240.0, 240.0, 100.0, Side::Straight), Levels::Even);
    let girth = foot.girth_base();
    let girths = vec![
        Girth { height: Length::ZERO, girth },
        Girth { height: mm(100.0), girth: girth + mm(60.0 * PI) },
    ];
    let widths = vec![WidthAt { height: mm(100.0), width: mm(190.0) }];
    let form = mould(oval(240.0, 150.0), MouldForm::Girths(girths), Levels::Widths(widths));
    let across = form.across(form.arc(), Length::ZERO);
    close(across.width.to_mm(), 190.0, 1e-6);
    // A curve pushed out by `a` along one axis and `b` along the other grows by `π(a + b)`: here 20 and 40 a side.
    close(across.length.to_mm(), 240.0 + 80.0, 1e-6);
    close(form.girth_top().to_mm(), perimeter(&level(&form, 100.0)), 1e-3);
}

#[test]
fn girths_and_litres_are_those_of_the_places() {
    for form in forms() {
        let mut litres = 0.0;
        let steps = 20_u32;
        for step in 0..=steps {
            let height = form.height().to_mm() * f64::from(step) / f64::from(steps);
            let places = level(&form, height);
            let along = form.profile.along_at_height(mm(height));
            close(form.girth(along, Length::ZERO).to_mm(), perimeter(&places), 0.05);
            let weight = if step == 0 || step == steps { 1.0 } else { 2.0 + 2.0 * f64::from(step % 2) };
            litres += weight * area(&places) * form.height().to_mm() / f64::from(steps) / 3.0 / 1e6;
        }
        close(form.litres() / litres, 1.0, 1e-4);
    }
}

#[test]
fn a_place_faces_away_from_the_wall() {
    let step = 1e-4;
    for form in forms() {
        for number in 0..23 {
            let turn = (f64::from(number) + 0.31) / 23.0;
            let along = mm(20.0 + 5.0 * f64::from(number));
            let at = |along: Length, turn: f64| form.at(along, turn, Length::ZERO).point.map(Length::to_mm);
            let WallPoint { outward, along: up, curvature, .. } = form.at(along, turn, Length::ZERO);
            let less = |a: [f64; 3], b: [f64; 3]| [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
            let dot = |a: [f64; 3], b: [f64; 3]| a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
            let round = less(at(along, turn + step), at(along, turn - step));
            let rising = less(at(along + mm(0.01), turn), at(along - mm(0.01), turn));
            for way in [round, rising] {
                close(dot(way, outward) / dot(way, way).sqrt(), 0.0, 2e-4);
            }
            close(dot(up, outward), 0.0, 1e-9);
            close(dot(up, up), 1.0, 1e-9);
            let ahead = form.at(along, turn + step, Length::ZERO).outward;
            let back = form.at(along, turn - step, Length::ZERO).outward;
            let angle = |way: [f64; 3]| way[1].atan2(way[0]);
            let turned = (angle(ahead) - angle(back) + PI).rem_euclid(TAU) - PI;
            let bend = turned / dot(round, round).sqrt();
            // Where two arcs meet, the way of the difference lies on both.
            assert!(
                (bend - curvature).abs() <= 1e-4 || is_joint(&form, turn, step),
                "{bend} is not {curvature}"
            );
        }
    }
}

/// Whether the foot's bend changes at once about here.
fn is_joint(form: &Form, turn: f64, step: f64) -> bool {
    let bend = |turn: f64| form.at(Length::ZERO, turn, Length::ZERO).curvature;
    (bend(turn - step) - bend(turn + step)).abs() > 1e-5
}

#[test]
fn the_tightest_bend_is_that_of_the_places() {
    for form in forms() {
        for height in [0.0, 70.0, 140.0] {
            let along = form.profile.along_at_height(mm(height));
            let turns = (0..4000).map(|number| f64::from(number) / 4000.0);
            let most = turns.map(|turn| form.at(along, turn, Length::ZERO).curvature).fold(0.0, f64::max);
            close(form.tightest(along, Length::ZERO).to_mm() * most, 1.0, 3e-3);
        }
    }
}

/// What narrows along one axis alone holds the basket all the same.
#[test]
fn an_undercut_of_one_axis_is_found() {
    let widths =
        vec![WidthAt { height: mm(60.0), width: mm(180.0) }, WidthAt { height: mm(120.0), width: mm(160.0) }];
    let form = mould(oval(240.0, 150.0), drawn(240.0, 320.0, 120.0, Side::Cone), Levels::Widths(widths));
    let undercut = form.mould().undercut;
    close(undercut.depth.to_mm(), 10.0, 0.01);
    close(undercut.wide_at.to_mm(), 60.0, 1.0);
    assert!(form.mould().draft.to_degrees() < 0.0);
}
