//! Lengths and angles: internally millimetres and radians; read and printed as makers write them.

mod angle;
mod length;
mod print;
mod read;
mod unit;

pub use angle::Angle;
pub use length::{Length, MM_PER_INCH};
pub use print::Printing;
pub use read::{LengthError, LengthFault};
pub use unit::Unit;
