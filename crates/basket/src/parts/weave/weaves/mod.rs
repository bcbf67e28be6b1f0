//! The weaves. Each is one file that answers the same few questions; what else is said of a weave follows
//! from its answers.

mod answers;
mod chase;
mod drawn;
mod level;
mod over_under;
mod reversed;
mod skip_one;
mod spiral;
mod twined;

pub use answers::Cell;
pub(super) use answers::{Answers, Moves};
pub use chase::Chase;
pub use drawn::Chart;
pub(super) use drawn::told;
pub use level::Level;
pub use reversed::Reversed;
pub use skip_one::SkipOne;
pub use spiral::Spiral;
pub use twined::Twined;
