//! Woven baskets to look at.
#![allow(dead_code, missing_docs)]

use basket::pattern::read;
use basket::weave::{Course, Face, Weave};
use basket::{Basket, Catalogue, Draft, Hand};

/// A straight-sided basket 8 in across on this many staves, with these courses.
pub(crate) fn woven(count: u32, courses: &str) -> Basket {
    woven_with(count, courses, "")
}

pub(crate) fn woven_with(count: u32, courses: &str, staves: &str) -> Basket {
    drafted(count, courses, staves).basket
}

pub(crate) fn drafted(count: u32, courses: &str, staves: &str) -> Draft {
    let text = format!(
        "title = \"A basket\"\nunits = \"in\"\n[mould]\nbase = \"8\"\nheight = \"6\"\nside = \"straight\"\nrim = \"8\"\n\
         [staves]\ncount = {count}\nstock = \"flat oval reed 1/4 in\"\n{staves}\n[weave]\ncourses = [{courses}]\n"
    );
    let pattern =
        read(&text, Catalogue::built_in()).unwrap_or_else(|problems| panic!("{problems:#?}\n{text}"));
    Draft::of(pattern, Catalogue::built_in(), &Hand::USUAL)
}

pub(crate) fn course(basket: &Basket) -> &Course {
    &basket.body.weave.courses[0]
}

/// Rows from the bottom upward, the first stave first: `X` where a weaver is seen from outside.
pub(crate) fn cells(basket: &Basket, rows: u32) -> String {
    let sign = |row, stave| if basket.body.weave.cell(row, stave).outside.is_some() { 'X' } else { '.' };
    let row = |row| -> String { (1..=basket.body.uprights().count).map(|stave| sign(row, stave)).collect() };
    (1..=rows).map(row).collect::<Vec<_>>().join(" / ")
}

/// The first letter of each colour seen.
pub(crate) fn colours(weave: &Weave, rows: u32, count: u32, face: Face) -> String {
    let letter = |row, stave| weave.colour(row, stave, face).colour.name.chars().next().unwrap_or('?');
    let row = |row| -> String { (1..=count).map(|stave| letter(row, stave)).collect() };
    (1..=rows).map(row).collect::<Vec<_>>().join(" / ")
}

/// Staves blue, green, black; the weaver red over every other stave.
pub(crate) fn seen() -> String {
    let staves = ['b', 'g', 'b'];
    let row = |over_first: bool| -> String {
        (0..9).map(|stave| if (stave % 2 == 0) == over_first { 'r' } else { staves[stave % 3] }).collect()
    };
    format!("{} / {}", row(true), row(false))
}

pub(crate) fn sum(course: &Course) -> f64 {
    course.weavers.iter().map(|weaver| weaver.length.to_mm()).sum()
}
