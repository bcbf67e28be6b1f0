//! What server and page say to each other. The page's types are generated from these
//! (`typescript.rs`), and so is the `OpenAPI` description.
//!
//! Paths name a value of the pattern as findings do: keys joined by dots, entries of lists in
//! brackets and counted from 1: `weave.courses[2].rows`.

mod choose;
mod compare;
mod drawing;
mod edit;
mod fault;
mod form;
mod log;
mod look;
mod mould;
mod nest;
mod packets;
mod patterns;
mod picture;
mod plans;
mod problem;
mod server;
mod shelf;
mod trace;
#[cfg(test)]
mod typescript;
mod units;

pub(crate) use choose::*;
pub(crate) use compare::*;
pub(crate) use drawing::*;
pub(crate) use edit::*;
pub(crate) use fault::*;
pub(crate) use form::*;
pub(crate) use log::*;
pub(crate) use look::*;
pub(crate) use mould::*;
pub(crate) use nest::*;
pub(crate) use packets::*;
pub(crate) use patterns::*;
pub(crate) use picture::*;
pub(crate) use plans::*;
pub(crate) use problem::*;
pub(crate) use server::*;
pub(crate) use shelf::*;
pub(crate) use trace::*;
pub(crate) use units::*;
