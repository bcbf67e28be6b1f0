//! The bench: a page on this machine where a basket is designed by looking.
//!
//! The document is the text of the pattern. The page holds it, with all its earlier texts; the server
//! works out what it gives and writes files. So a server that was stopped loses nothing when it is
//! started again.

mod answer;
mod api;
mod body;
mod choose;
mod compare;
mod compute;
mod door;
mod draw;
mod folder;
mod gate;
mod guard;
mod guest;
mod jobs;
mod kind;
mod log;
mod look;
mod name;
mod nest;
mod own_page;
mod patient;
mod photo;
mod places;
mod plans;
mod refusal;
mod routes;
mod scenarios;
mod secret;
mod server;
mod shared;
mod shelf;
mod studio;
mod text;
mod traced;
mod workers;

pub(crate) use api::{Edit, PastVersion};
pub(crate) use door::Door;
pub(crate) use folder::Folder;
pub(crate) use log::{Past, differences};
pub(crate) use refusal::Refusal;
pub(crate) use secret::random_text;
pub(crate) use server::{listen, serve};
pub(crate) use shared::{Access, Bench, Materials};
pub(crate) use studio::{own_address, square};
pub(crate) use text::{edit, value_of};
pub(crate) use workers::WORKER;
pub(crate) use workers::serve::serve as work;
