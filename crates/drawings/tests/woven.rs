//! Section, elevation and solid (from which the plan is drawn) weave as the fabric does, in every weave.

mod common;

use std::f64::consts::TAU;

use basket::Basket;
use basket::steps::Stage;
use basket::weave::{Course, Row};
use common::{basket, words};
use drawings::solid::{Detail, solid};
use drawings::{Item, Line, Tone, section};
use kurbo::{BezPath, PathEl, Point, Shape};

/// Each above three rows of pairing, so that its rows are not the basket's.
const WEAVES: [(u32, &str); 9] = [
    (73, "weave = \"plain\""),
    (72, "weave = \"chase\""),
    (72, "weave = \"chase twill 3/2\", colours = [\"natural\", \"natural\", \"blue\"]"),
    (72, "weave = \"plain\", way = \"row by row\""),
    (72, "weave = \"skip one\""),
    (72, "weave = \"wale 3\""),
    (73, "weave = \"wale 4\""),
    (72, "weave = \"reversed twill 2/2\", band = 3"),
    (72, "weave = \"drawn\", chart = [\"X..X..\", \".XX.X.\", \"X.X..X\"]"),
];

fn each(check: impl Fn(&Basket, &str)) {
    for (count, weave) in WEAVES {
        check(
            &basket(&format!(
                "title = \"Straight\"\nunits = \"in\"\n[mould]\nbase = \"8\"\nrim = \"8\"\nheight = \"3\"\nside = \"straight\"\n\
                 [staves]\ncount = {count}\nstock = \"flat oval reed 1/4 in\"\n[weave]\ncourses = [\
                 {{ weave = \"pairing\", weaver = \"cane fine\", rows = 3 }}, {{ {weave}, weaver = \"cane fine\", rows = 11 }}]\n",
            )),
            weave,
        );
    }
}

/// The rows of the upper course.
fn rows(basket: &Basket) -> impl Iterator<Item = (&Course, &Row)> {
    let course = &basket.body.weave.courses[1];
    basket.body.weave.each_row.iter().filter(|row| row.course == 2).map(move |row| (course, row))
}

/// The fine shapes of a section with their tones: those of the half seen from outside, and those of the half
/// that is cut, which are drawn over a sheet of white.
fn fine(items: &[Item]) -> [Vec<(&BezPath, Tone)>; 2] {
    let is_sheet = |item: &Item| matches!(item, Item::Path { line: None, tone: Some(Tone::White), .. });
    let sheet = items.iter().position(is_sheet).expect("the cut half is laid over the other");
    let (seen, cut) = items.split_at(sheet);
    [seen, cut].map(|items| {
        let fine = |item| match item {
            &Item::Path { ref path, line: Some(Line::Fine), tone: Some(tone) } => Some((path, tone)),
            _ => None,
        };
        items.iter().filter_map(fine).collect()
    })
}

/// The outer face of the stave that is cut, from the axis, in mm of paper.
fn face(cut: &[(&BezPath, Tone)]) -> f64 {
    let stave = cut.iter().find(|(_, tone)| *tone == Tone::Mid).expect("a stave is cut");
    stave.0.bounding_box().x1
}

#[test]
fn the_cut_half_weaves_as_the_fabric() {
    each(|basket, weave| {
        let drawing = section(basket, &words(basket));
        let scale = drawing.upright_scale().expect("it stands upright");
        let [_, cut] = fine(drawing.items());
        let face = face(&cut);
        let stave = basket.body.uprights().thickness.to_mm() * scale;
        for (course, row) in rows(basket) {
            let cell = basket.body.weave.cell(row.number, 1);
            let near = course.weaver.thickness.to_mm() * scale * 0.3;
            // Two weavers outside meet in the middle of the row.
            let up = row.height + course.weaver.width / 4.0;
            for (side, x, seen) in
                [("outside", face + near, cell.outside), ("inside", face - stave - near, cell.inside)]
            {
                let at = Point::new(x, -up.to_mm() * scale);
                let drawn = cut.iter().any(|(path, tone)| *tone == Tone::White && path.contains(at));
                assert_eq!(drawn, seen.is_some(), "{weave}: row {}, {side}", row.number);
            }
        }
    });
}

#[test]
fn the_half_from_outside_weaves_as_the_fabric() {
    each(|basket, weave| {
        let drawing = section(basket, &words(basket));
        let scale = drawing.upright_scale().expect("it stands upright");
        let [seen, cut] = fine(drawing.items());
        let face = face(&cut);
        // All that one tone shows of the weaving is one shape.
        let moves = |path: &BezPath| path.iter().filter(|el| matches!(el, PathEl::MoveTo(_))).count();
        let weaving: Vec<&BezPath> =
            seen.iter().map(|(path, _)| *path).filter(|path| moves(path) > 1).collect();
        let mut crossings = 0;
        for (course, row) in rows(basket) {
            for stave in 1..=basket.body.uprights().count {
                // A quarter further round stands at the right, numbers rise to the left in front.
                let direction = (basket.body.uprights().turn(stave) - 0.25).rem_euclid(1.0) * TAU;
                if !(TAU * 0.27..TAU * 0.42).contains(&direction) {
                    continue;
                }
                let out = face + course.weaver.thickness.to_mm() * scale / 2.0;
                let at = Point::new(out * direction.cos(), -row.height.to_mm() * scale);
                let drawn = weaving.iter().any(|path| path.contains(at));
                let cell = basket.body.weave.cell(row.number, stave);
                assert_eq!(drawn, cell.outside.is_some(), "{weave}: row {}, stave {stave}", row.number);
                crossings += 1;
            }
        }
        assert!(crossings > 100, "{crossings}");
    });
}

#[test]
fn the_solid_weaves_as_the_fabric() {
    each(|basket, weave| {
        let solid = solid(basket, Stage::Woven, Detail::Column);
        // The first and the last row are tapered away where they begin and end.
        for (course, row) in rows(basket).skip(3).take(5) {
            for stave in (2..basket.body.uprights().count).step_by(3) {
                let angle = basket.body.uprights().turn(stave) * TAU;
                let parts = solid.parts.iter().filter(|part| part.row() == Some(row.number));
                let lying: Vec<f64> = parts
                    .filter_map(|part| {
                        let at_stave = part.mesh.positions.iter().filter(|at| {
                            // Numbers rise clockwise seen from above.
                            let off = f64::from(-at[1]).atan2(f64::from(at[0])) - angle;
                            (off - TAU * (off / TAU).round()).abs() < 0.003
                        });
                        let radii: Vec<f64> =
                            at_stave.map(|at| f64::from(at[0]).hypot(f64::from(at[1]))).collect();
                        (!radii.is_empty()).then(|| radii.iter().sum::<f64>() / radii.len() as f64)
                    })
                    .collect();
                let cell = basket.body.weave.cell(row.number, stave);
                let lies_on_both = cell.outside.is_some() && cell.inside.is_some();
                assert_eq!(lying.len(), if lies_on_both { course.weavers.len() } else { 1 }, "{weave}");
                // Outside and inside lie a stave's thickness and a weaver's apart.
                let apart = (basket.body.uprights().thickness + course.weaver.thickness).to_mm();
                let middle = lying.iter().copied().fold(f64::NEG_INFINITY, f64::max) - apart / 2.0;
                let outside = if lies_on_both {
                    lying.iter().filter(|radius| **radius > middle).count()
                } else {
                    let wall = basket.body.form.profile.at(row.along).radius
                        + basket.body.uprights().thickness / 2.0;
                    usize::from(lying[0] > wall.to_mm())
                };
                let wanted = match (cell.outside, cell.inside) {
                    (Some(_), Some(_)) => course.weavers.len() - 1,
                    (outside, _) => usize::from(outside.is_some()),
                };
                assert_eq!(outside, wanted, "{weave}: row {}, stave {stave}: {lying:?}", row.number);
            }
        }
    });
}
