//! Courses, joins, and how high the weaving should stand after so many rows.

use basket::weave::{Course, Join};
use basket::{Basket, Length};
use serde::Serialize;

use crate::scribe::{Scribe, name};

/// Every so many rows there is a checkpoint.
const CHECK_EVERY: u32 = 5;

#[derive(Serialize)]
pub(crate) struct CourseLine {
    number: String,
    weave: String,
    weaver: String,
    rows: String,
    pitch: String,
    cut: String,
    strands: String,
}

#[derive(Serialize)]
pub(crate) struct Checkpoint {
    row: u32,
    height: String,
    used: String,
}

pub(crate) fn courses(basket: &Basket, scribe: &Scribe<'_>) -> Vec<CourseLine> {
    let line = |(index, course): (usize, &Course)| CourseLine {
        number: (index + 1).to_string(),
        weave: scribe.words.say(&course.weave.name()),
        weaver: scribe.words.material(&course.weaver.name),
        rows: rows(course),
        pitch: scribe.fine(course.pitch),
        cut: scribe.line(course.cut),
        strands: course.strands.to_string(),
    };
    basket.body.weave.courses.iter().enumerate().map(line).collect()
}

/// The rows of a course, such as `1–4`.
pub(crate) fn rows(course: &Course) -> String {
    let last = (course.first_row + course.rows).saturating_sub(1);
    if last > course.first_row {
        format!("{}–{last}", course.first_row)
    } else {
        course.first_row.to_string()
    }
}

pub(crate) fn notes(basket: &Basket, scribe: &Scribe<'_>) -> Vec<String> {
    let weave = &basket.body.weave;
    let packing = (weave.rows_to_add > 0).then(|| {
        let args = [("gap", weave.packing_gap.into()), ("rows", weave.rows_to_add.into())];
        scribe.text("packing-note", &args)
    });
    take_up(basket, scribe).into_iter().chain(packing).collect()
}

/// By how much going over and under lengthens the weavers of each course that has rows.
fn take_up(basket: &Basket, scribe: &Scribe<'_>) -> Option<String> {
    let one = |(course, number): (&Course, u32)| {
        let takes = scribe.words.shares(course.take_up.least, course.take_up.most);
        scribe.text("take-up-course", &[("takes", name(takes)), ("course", number.into())])
    };
    let woven = basket.body.weave.courses.iter().zip(1..).filter(|(course, _)| course.rows > 0);
    let courses: Vec<String> = woven.map(one).collect();
    (!courses.is_empty()).then(|| scribe.text("take-up-note", &[("courses", name(courses.join(", ")))]))
}

/// All joins, in weaving order.
pub(crate) fn joins(basket: &Basket) -> Vec<Join> {
    basket.body.weave.courses.iter().flat_map(|course| course.joins.iter().copied()).collect()
}

/// Height and length used at every fifth row and at the end of each course.
pub(crate) fn checkpoints(basket: &Basket, scribe: &Scribe<'_>) -> Vec<Checkpoint> {
    let weave = &basket.body.weave;
    let ends: Vec<u32> =
        weave.courses.iter().map(|course| (course.first_row + course.rows).saturating_sub(1)).collect();
    let mut used = Length::ZERO;
    let mut points = Vec::new();
    for row in &weave.each_row {
        used += row.length;
        if row.number % CHECK_EVERY == 0 || ends.contains(&row.number) {
            let course = weave.courses.get((row.course as usize).saturating_sub(1));
            let half = course.map_or(Length::ZERO, |course| course.pitch / 2.0);
            let height = basket.body.form.profile.at(row.along + half).height;
            points.push(Checkpoint {
                row: row.number,
                height: scribe.words.both(height),
                used: scribe.line(used),
            });
        }
    }
    points
}
