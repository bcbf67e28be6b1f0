//! Baskets to try weaves on.

#![allow(dead_code, reason = "each test file uses a part of this")]

use basket::pattern::read;
use basket::weave::Course;
use basket::{Basket, Catalogue, assemble};

/// A straight-sided basket 8 in across on this many staves, with these courses.
pub(crate) fn woven(count: u32, courses: &str) -> Basket {
    woven_with(count, courses, "")
}

/// The same with more said of its staves.
pub(crate) fn woven_with(count: u32, courses: &str, staves: &str) -> Basket {
    let text = format!(
        "title = \"A basket\"\nunits = \"in\"\n[mould]\nbase = \"8\"\nheight = \"6\"\nside = \"straight\"\nrim = \"8\"\n\
         [staves]\ncount = {count}\nstock = \"flat oval reed 1/4 in\"\n{staves}\n[weave]\ncourses = [{courses}]\n"
    );
    let pattern =
        read(&text, Catalogue::built_in()).unwrap_or_else(|problems| panic!("{problems:#?}\n{text}"));
    assemble(&pattern, Catalogue::built_in())
}

/// Its first course.
pub(crate) fn course(basket: &Basket) -> &Course {
    &basket.weave.courses[0]
}
