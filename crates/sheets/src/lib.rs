//! The sheets of a basket: handout, bench card and templates as PDF, cut lists and the computed
//! basket as data.
//!
//! This crate makes bytes and writes no file. It reads no network, no clock and no fonts but its
//! own. What the sheets say comes from the `words` crate, what they show from `drawings`; the
//! templates under `templates/` only lay it out, and a teacher may replace any of them.

mod cards;
mod class;
mod data;
mod error;
mod figures;
mod front;
mod handout;
mod html;
mod labels;
mod mould;
mod mould_pieces;
mod packet;
mod paper;
mod photos;
mod poster;
mod press;
mod proposal;
mod scribe;
mod tables;
mod templates;
pub mod workshop;
mod written;

pub use cards::{Card, Provenance};
pub use class::{
    ClassPlan, Moment, SamplePlan, SessionPlan, StudentPlan, StudentStep, calendar, class_pictures,
    class_plan, class_sheet,
};
pub use error::{Mistake, Position, SheetError};
pub use mould::{MouldSheet, mould_sheet};
pub use mould_pieces::PiecesTold;
pub use packet::{ON_REQUEST, Options, PAGES, PacketFile, SHEETS, data, packet, sheet};
pub use paper::Paper;
pub use photos::Photos;
pub use poster::{Poster, PosterSize, poster};
pub use proposal::Proposal;
pub use templates::Templates;
pub use written::{BasketFile, Finding, basket_json};
