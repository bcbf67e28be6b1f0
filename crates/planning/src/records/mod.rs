//! Records of makings, and the maker's own hand that is learned from them.

mod adopted;
mod compared;
mod learned;
mod read;
mod record;

pub use adopted::Adopted;
pub use compared::{Compared, Figure, Mismatch, Work};
pub use learned::{Learned, Own};
pub use read::{key, read, write};
pub use record::Record;
