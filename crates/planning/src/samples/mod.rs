//! Samples to show or to go on from: one basket for each stage that is shown, each stopped there, and when each has
//! to be begun so that all stand ready in time.
//!
//! Times are minutes before a moment from which all is reckoned: a show, which begins when a working day would, or
//! a session of a class. One pair of hands works in the hours that there are; material soaks and work dries at any
//! hour. The plan is that of a class ([`crate::class::schedule`]), run backward.

mod backward;
mod of_class;
mod prepared;
mod show;
mod span;

pub use of_class::{ClassSample, ClassSamples};
pub use prepared::{Block, Sample};
pub use show::{Day, Demonstration, Show, Task, day_before};
pub use span::{DAY, Span};
