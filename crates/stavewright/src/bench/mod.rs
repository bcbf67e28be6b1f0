//! The bench: a page on this machine where a basket is designed by looking.

mod api;
