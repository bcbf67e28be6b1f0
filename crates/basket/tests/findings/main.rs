//! Every check on both sides of its limit, and every first remedy put to the proof.
//!
//! The limits and their sources stand beside the checks. Here a good pattern is changed in one
//! place, once just too far and once just not; then what the finding proposes is written into the
//! pattern, which is read again: the finding has to be gone.

mod draft;
mod fittings;
mod form;
mod good;
mod lid;
mod nest;
mod outline;
mod rim;
mod sides;
mod staves;
mod weave;
