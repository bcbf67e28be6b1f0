//! Choosing by seeing: whatever is offered was woven on this very basket before.

mod counts;
mod first;
mod little;
#[cfg(test)]
mod tests;
mod trial;
mod ways;

pub(crate) use counts::counts;
pub(crate) use first::first;
pub(crate) use ways::ways;
