//! The packet as others see it: what its files are, what stands on them, and what they leave out.
//!
//! A packet takes seconds to set. Tests that look at the same one share it, in `whole.rs`; each other file
//! has the questions that are asked of one kind of file.

mod class;
mod common;
mod data;
mod german;
mod handout;
mod html;
mod pdf;
mod tags;
mod true_size;
mod wall;
mod whole;
mod woven;
mod woven_reader;
