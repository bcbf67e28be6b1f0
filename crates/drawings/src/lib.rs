//! Drawings of a basket as SVG, at true size or to a stated scale.
//!
//! A [`Drawing`] is a plain value in millimetres of paper, x to the right and y down; [`Drawing::to_svg`]
//! writes it. This crate computes no part of a basket: it only shows what `basket` computed.
//! [`solid`] is the basket in the round, [`lines`] draws it from any side with hidden lines removed, and
//! [`stages`] draws each stage of the making from it.
//! It lays out no text beyond labels, reads and writes no file, and takes its words from `words`.

#![allow(clippy::trivially_copy_pass_by_ref, reason = "words are handed on by reference in every crate")]

mod around;
mod bail;
mod base_plan;
mod chart;
mod cut;
mod detail;
mod dimension;
mod drawing;
mod dxf;
mod ear;
mod elevation;
pub mod lines;
mod moves;
mod outlines;
mod pieces;
mod plain;
mod plan;
mod rim_shape;
mod scale;
mod scarf;
mod section;
mod sense;
pub mod solid;
pub mod stages;
mod stave;
mod strip;
mod svg;
mod taper_chart;
mod text;
mod tile;
mod timeline;
mod timetable;
mod turning;
mod wall;

pub use base_plan::{base_disc, base_plan};
pub use chart::{ChartKind, chart, numbers_rise_left};
pub use dimension::Dimension;
pub use drawing::{Anchor, Drawing, Item, Label, Line, Tone};
pub use dxf::{outlines_dxf, outlines_svg};
pub use ear::ear_template;
pub use moves::moves;
pub use pieces::mould_plan;
pub use plain::kept;
pub use plan::plan;
pub use scarf::scarf_template;
pub use section::section;
pub use stave::stave_templates;
pub use strip::{At, base_girth, drilling_template, rim_girth, spacing_strip};
pub use taper_chart::taper_chart;
pub use tile::{TileSize, check_bars, tiles};
pub use timeline::{Lane, sample_letter, timeline};
pub use timetable::{Bar, Row, Session, timetable};
pub use turning::{board_outlines, turning_templates};
