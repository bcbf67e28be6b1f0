//! A class: students who make the same basket over few moulds, within the hours of the class.

mod answer;
mod asked;
mod chance;
pub mod ics;
mod lesson;
mod mends;
pub mod network;
pub mod schedule;
mod told;
pub mod written;

pub use answer::{Answer, Found, Outcome, Refusal, TooLong};
pub use asked::{Days, DaysNeeded, Doing};
pub use chance::Chance;
pub use lesson::{Lesson, Source};
pub use mends::{Change, Mend};
pub use told::{Due, Lack, Waiting};
