//! Weaving the body, letting it dry, packing it.

use super::ears;
use super::stage::Stage;
use super::step::Step;
use super::step::count;
use super::time;
use crate::basket::Basket;
use crate::message::{Message, Value};
use crate::pattern::{CaneFace, Direction, StepKind, Way, WeaveKind};
use crate::weave::{Course, Join};

pub(super) fn steps(basket: &Basket) -> Vec<Step> {
    let rows = basket.body.weave.rows;
    let [start, half] = [Stage::FirstRows, Stage::HalfWoven].map(|stage| basket.rows_at(stage));
    let mut steps = vec![first_rows(basket, start)];
    if half > start {
        let step = Step::new(StepKind::Half, Stage::HalfWoven)
            .say(Message::new("step-half-text-weave").with("row", half).with("height", top_of(basket, half)));
        steps.push(weave(basket, step, start + 1, half));
    }
    let mut done = (half, Stage::HalfWoven);
    if let Some((ears, woven_in)) = basket.ears.as_ref().and_then(|ears| Some((ears, ears.woven_in?))) {
        let row = woven_in.on_row;
        if row > half {
            let step = Step::new(StepKind::ToEars, Stage::HalfWoven).say(
                Message::new("step-to-ears-text-weave").with("row", row).with("left", woven_in.mould_left),
            );
            steps.push(weave(basket, step, half + 1, row));
        }
        steps.push(ears::ears(basket, ears));
        done = (row, Stage::EarsSet);
    }
    let (done, stage) = done;
    if rows > done {
        let step = Step::new(StepKind::Rest, stage)
            .say(
                Message::new("step-rest-text-weave")
                    .with("rows", rows)
                    .with("height", basket.body.weave.top_height),
            )
            .say(Message::new("step-rest-text-stop"));
        steps.push(weave(basket, step, done + 1, rows));
    }
    steps.push(dry(basket));
    steps
}

/// Height of the upper edge of a row.
fn top_of(basket: &Basket, row: u32) -> crate::Length {
    let below = |length: &&crate::weave::Row| length.number == row;
    basket.body.weave.each_row.iter().find(below).map_or(crate::Length::ZERO, |row| row.height)
}

/// The material of a course's weaver; nothing where there is no course.
fn weaver_of(course: Option<&Course>) -> Value {
    course.map_or_else(|| Value::Name(String::new()), |course| (&course.weaver).into())
}

fn first_rows(basket: &Basket, start: u32) -> Step {
    let course = basket.body.weave.courses.first();
    let kind = course.map_or(WeaveKind::Plain, |course| course.weave);
    let is_plain = kind == WeaveKind::Plain;
    let rows = if is_plain { "step-first-text-weave" } else { "step-first-text-weave-other" };
    let is_odd = basket.body.uprights().count % 2 == 1;
    let face = basket.body.weave.first_face;
    let runs_on = is_odd && course.is_some_and(|course| course.way == Way::Continuous);
    let step = Step::new(StepKind::FirstRows, Stage::FirstRows)
        .say(Message::new("step-first-text-start").with("weaver", weaver_of(course)))
        .say(direction(basket))
        .say_if(face == Some(CaneFace::Dull), || Message::new("step-first-text-face"))
        .say_if(face == Some(CaneFace::Shiny), || Message::new("step-first-text-face-shiny"))
        .say_if(is_plain && runs_on, || Message::new("step-first-text-odd"))
        .say(Message::new(rows).with("rows", start))
        .say(Message::new("step-first-text-hardest"))
        .say(Message::new("step-first-text-check").with("gap", basket.body.staves().gap_rim_wall));
    weave(basket, step, 1, start)
}

fn direction(basket: &Basket) -> Message {
    Message::new(match basket.body.weave.direction {
        Direction::Right => "step-first-text-direction",
        Direction::Left => "step-first-text-direction-left",
    })
}

/// Bands, soak, joins, times and tools of weaving from one row to another, both included.
fn weave(basket: &Basket, step: Step, from: u32, to: u32) -> Step {
    let weave = &basket.body.weave;
    let courses = || {
        weave.courses.iter().filter(move |course| {
            course.rows > 0 && course.first_row <= to && from < course.first_row.saturating_add(course.rows)
        })
    };
    let joins: Vec<Join> = courses().flat_map(|course| joins_within(course, from, to)).collect();
    let (own, dyed): (Vec<Join>, Vec<Join>) = joins.iter().partition(|join| !join.recolour);
    let rows = weave.each_row.iter().filter(|row| (from..=to).contains(&row.number));
    let minutes = rows.map(|row| time::row(basket, row)).sum::<f64>();
    let weavers = courses().flat_map(|course| &course.weavers);
    let materials: Vec<_> = weavers.map(|weaver| &weaver.material).collect();
    let bands = weave.bands_within(from, to).into_iter();
    bands
        .flat_map(|band| band.text)
        .fold(step, Step::say)
        .say_if(!own.is_empty(), || Message::new("step-joins-text-expect").with("joins", count(own.len())))
        .say_if(!dyed.is_empty(), || Message::new("step-joins-text-dyed").with("joins", count(dyed.len())))
        .say_if(!joins.is_empty(), || Message::new("step-joins-text-how"))
        .soak(materials)
        .work(minutes + joins.len() as f64 * basket.hand.pace.join)
        .tools(&["tool-bucket", "tool-towel", "tool-spray", "tool-shears", "tool-packer"])
        .cautions(&["caution-cane-edges", "caution-wet-floor"])
}

fn joins_within(course: &Course, from: u32, to: u32) -> impl Iterator<Item = Join> {
    course.joins.iter().copied().filter(move |join| join.row >= from && join.row <= to)
}

fn dry(basket: &Basket) -> Step {
    let weave = &basket.body.weave;
    let last = weave.courses.last();
    let added =
        weave.each_row.last().map_or(0.0, |row| time::row(basket, row)) * f64::from(weave.rows_to_add);
    Step::new(StepKind::Dry, Stage::Woven)
        .say(Message::new("step-dry-text-wait"))
        .say(Message::new("step-dry-text-pack").with("gap", weave.packing_gap))
        .say_if(weave.rows_to_add > 0, || {
            Message::new("step-dry-text-add").with("rows", weave.rows_to_add).with("weaver", weaver_of(last))
        })
        .say(Message::new("step-dry-text-end"))
        .work(basket.hand.pace.pack + added)
        .wait(time::BODY_DRY)
        .tools(&["tool-band", "tool-packer", "tool-shears"])
        .caution_if(true, "caution-damp")
}
