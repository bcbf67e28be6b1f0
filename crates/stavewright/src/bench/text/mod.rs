//! The text of a pattern: finding values in it and changing them, with comments and layout kept.

mod edit;
mod find;
mod lists;
mod measure;
mod path;
mod rows;
mod set;
mod value;
mod walk;

pub(crate) use edit::edit;
pub(crate) use find::Written;
pub(crate) use measure::marks;
pub(crate) use value::value_of;
