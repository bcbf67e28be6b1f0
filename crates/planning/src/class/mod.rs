//! A class: students who make the same basket over few moulds, within the hours of the class.

pub mod schedule;
