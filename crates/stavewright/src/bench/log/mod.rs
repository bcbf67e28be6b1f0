//! The log of makings on the page, the hand that is learned from it, and the history of patterns.

mod history;
mod keep;
mod learn;
mod print;
mod shown;
mod typed;

pub(crate) use history::{Past, differences, told};
pub(crate) use keep::{
    adopt, adopted, export, forget, history, keep_version, log, making, material, nothing_to_learn_from,
    photo, rename, shown_photo,
};
pub(crate) use learn::{Learning, learn};
pub(crate) use print::{Printed, print};
pub(crate) use typed::{Typed, form, read};
