//! What all requests share.

use std::net::SocketAddr;
use std::sync::Arc;

use axum::http::StatusCode;
use basket::Catalogue;

use super::compute::Shop;
use super::folder::Folder;
use super::gate::Gate;
use super::jobs::Jobs;
use super::refusal::Refusal;

/// Who may ask, and for what.
#[derive(Clone, Debug)]
pub(crate) struct Access {
    /// Where the server listens.
    pub(crate) address: SocketAddr,
    /// The token without which nobody gets in; none on this machine alone.
    pub(crate) token: Option<String>,
    /// Whether files may be written.
    pub(crate) may_write: bool,
}

/// What all requests share.
pub(crate) struct Bench {
    /// The pattern files.
    pub(crate) folder: Folder,
    /// The materials that patterns may name.
    pub(crate) catalogue: Catalogue,
    /// The packets.
    pub(crate) jobs: Arc<Jobs>,
    /// Turns for work.
    pub(crate) gate: Gate,
    /// Who may ask.
    pub(crate) access: Access,
    /// Name of the pattern to open first.
    pub(crate) open: Option<String>,
    /// Differs from start to start.
    pub(crate) started: String,
}

impl Bench {
    /// A bench over a folder, perhaps with a pattern to open first, and with these materials.
    pub(crate) fn new(
        (folder, open): (Folder, Option<String>),
        catalogue: Catalogue,
        access: Access,
        started: String,
    ) -> Arc<Self> {
        let (jobs, gate) = (Arc::default(), Gate::new());
        Arc::new(Self { folder, catalogue, jobs, gate, access, open, started })
    }

    /// What patterns may name.
    pub(crate) fn shop(&self) -> Shop<'_> {
        Shop { folder: self.folder.path(), catalogue: &self.catalogue }
    }

    /// Refuses where nothing may be written.
    pub(crate) fn may_write(&self) -> Result<(), Refusal> {
        if self.access.may_write {
            return Ok(());
        }
        Err(Refusal::new(
            StatusCode::FORBIDDEN,
            "this bench only shows patterns; nothing is saved",
            "the server",
            "Start it with --studio-write to have patterns saved from other machines.",
        ))
    }
}
