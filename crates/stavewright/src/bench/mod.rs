//! The bench: a page on this machine where a basket is designed by looking.
//!
//! The document is the text of the pattern. The page holds it, with all its earlier texts; the server
//! works out what it gives and writes files. So a server that was stopped loses nothing when it is
//! started again.

mod api;
mod body;
mod compare;
mod compute;
mod draw;
mod folder;
mod gate;
mod guard;
mod jobs;
mod look;
mod refusal;
mod routes;
mod scenarios;
mod secret;
mod server;
mod studio;
mod text;

pub(crate) use folder::Folder;
pub(crate) use guard::Access;
pub(crate) use secret::random_text;
pub(crate) use server::{Bench, listen, serve};
pub(crate) use studio::{own_address, square};

use std::sync::Arc;

use basket::Catalogue;

impl Bench {
    /// A bench over a folder, with these materials, for those who may ask.
    pub(crate) fn new(
        (folder, open): (Folder, Option<String>),
        catalogue: Catalogue,
        access: Access,
        started: String,
    ) -> Arc<Self> {
        let (jobs, gate) = (Arc::default(), gate::Gate::new());
        Arc::new(Self { folder, catalogue, jobs, gate, access, open, started })
    }
}
