//! To which side a twill leans: one answer, whoever is asked, and the one that the eye gives.

use std::f64::consts::PI;

use basket::pattern::{Lean, Rule, read};
use basket::weave::look::{Eye, ROWS_READ, USUAL_PROPORTION};
use basket::weave::sights::Sights;
use basket::weave::{Chase, Fabric, Face, Level, Passing, Spiral};
use basket::{Catalogue, Hand, assemble};

/// Every rule up to over five, under five.
fn rules() -> impl Iterator<Item = Rule> {
    (1..=5).flat_map(|over| (1..=5).map(move |under| Rule::new(over, under)))
}

/// What the eye makes of the cells, weaver and stave told apart.
fn seen(fabric: &Fabric, eye: Eye) -> Option<Lean> {
    let cell = |row, stave| u8::from(fabric.is_over(row, stave));
    Sights::of(eye.rows.min(ROWS_READ), fabric.count, cell).read(eye.proportion).lean()
}

#[track_caller]
fn agree(passing: Passing, count: u32, eye: Eye) {
    let fabric = Fabric::new(passing, count);
    assert_eq!(fabric.diagonal(eye).lean(), seen(&fabric, eye), "{:?} on {count}, {eye:?}", fabric.passing);
}

/// The verdict, reckoned from count and rule, and the look, read off the cells.
#[test]
fn verdict_and_look_lean_alike() {
    for rule in rules() {
        for count in 21..=121 {
            agree(Passing::Spiral(Spiral { rule }), count, Eye::USUAL);
            for weavers in [2, 3] {
                let chase = Chase { rule, weavers };
                // Weavers that do not step alike have no one diagonal.
                if Fabric::new(Passing::Chase(chase), count).closes() {
                    agree(Passing::Chase(chase), count, Eye::USUAL);
                }
            }
        }
        for step in (1..=rule.repeat() as i32 / 2).flat_map(|step| [step, -step]) {
            agree(Passing::Level(Level { rule, step }), 60, Eye::USUAL);
        }
    }
}

/// The same over few rows and many, of other proportions.
#[test]
fn they_agree_however_they_are_looked_at() {
    for rule in rules() {
        for count in 60..60 + rule.repeat() {
            for rows in [2, 3, 4, 5, 9, 14, 40] {
                for proportion in [0.8, 1.3, USUAL_PROPORTION, 3.4, 6.0] {
                    agree(Passing::Spiral(Spiral { rule }), count, Eye { rows, proportion });
                }
            }
        }
    }
}

/// The lean of the strongest grating that a weave shows, as contrast over frequency; none where it stands or
/// lies. A rule whose rows step on by `c` repeats under moves by `(c, 1)` and `(k, 0)` in staves and rows, so
/// it is a sum of gratings of `m / k` waves a stave and `n − m c / k` waves a row. A run of `w` like cells
/// gives each the contrast `sinc(w m / k) · sinc(n − m c / k)`; the eye sees coarse gratings best (derived
/// here).
fn strongest(rule: Rule, step: i32) -> Option<Lean> {
    let sinc = |x: f64| if x.abs() < 1e-12 { 1.0 } else { (PI * x).sin() / (PI * x) };
    let (repeat, run) = (f64::from(rule.repeat()), f64::from(rule.over().min(rule.under())));
    let waves = (1..=3 * rule.repeat()).flat_map(|m| (-12..=12).map(move |n| (m, n)));
    let strength = |(m, n): (u32, i32)| {
        let (round, up) = (f64::from(m) / repeat, f64::from(n) - f64::from(m) * f64::from(step) / repeat);
        let contrast = (sinc(run * round) * sinc(up)).abs();
        (contrast / (round / USUAL_PROPORTION).hypot(up), round, up)
    };
    let (_, round, up) = waves.map(strength).max_by(|a, b| a.0.total_cmp(&b.0))?;
    // Its lines climb where it changes both round and up.
    let slope = -up / round;
    (slope.abs() > 1e-9).then_some(if slope > 0.0 { Lean::Left } else { Lean::Right })
}

#[test]
fn the_eye_follows_the_strongest_grating() {
    let mut leaning = 0;
    for rule in rules() {
        for count in 60..60 + rule.repeat() {
            let fabric = Fabric::new(Passing::Spiral(Spiral { rule }), count);
            let remainder = count % rule.repeat();
            if !fabric.holds() || 2 * remainder == rule.repeat() {
                continue;
            }
            let lean = fabric.diagonal(Eye::USUAL).lean();
            assert_eq!(lean, strongest(rule, -(remainder as i32)), "{rule} on {count}");
            leaning += u32::from(lean.is_some());
        }
    }
    assert!(leaning > 90, "{leaning}");
}

/// In a basket the look takes colours and proportion from what is woven, and so does the verdict.
#[test]
fn a_course_and_its_look_lean_alike() {
    for (count, weave) in
        [(72, "twill 3/2"), (73, "twill 4/3"), (74, "twill 4/2"), (73, "twill 4/1"), (71, "twill 2/5")]
    {
        for (rows, weaver) in [(3, "cane fine"), (20, "cane superfine"), (20, "cane common")] {
            let text = format!(
                "title = \"A basket\"\nunits = \"in\"\n[mould]\nbase = \"8\"\nheight = \"6\"\nside = \"straight\"\nrim = \"8\"\n\
                 [staves]\ncount = {count}\nstock = \"flat oval reed 1/4 in\"\n[weave]\ncourses = [{{ weave = \"{weave}\", \
                 weaver = \"{weaver}\", colours = \"blue\", rows = {rows} }}]\n"
            );
            let pattern = read(&text, Catalogue::built_in()).expect("the pattern reads");
            let weave = &assemble(&pattern, Catalogue::built_in(), &Hand::USUAL).body.weave;
            let course = &weave.courses[0];
            let lean = course.verdict.diagonal.lean();
            assert_eq!(
                lean,
                weave.look(course, Face::Outside).lean,
                "{count}, {}, {rows} rows",
                course.weave
            );
        }
    }
}
