//! What all requests share.

use std::net::SocketAddr;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::time::Duration;

use axum::http::StatusCode;
use basket::Catalogue;
use basket::message::Message;
use planning::records::Adopted;
use tokio::sync::Notify;

use super::answer::Answer;
use super::door::Door;
use super::folder::Folder;
use super::gate::Gate;
use super::guest::Guest;
use super::jobs::Jobs;
use super::log;
use super::refusal::Refusal;
use super::shelf::OwnMeasures;
use super::workers::{Order, Task, Workers};
use crate::own::Own;

/// No answer takes longer; what takes longer is given up.
const LONGEST: Duration = Duration::from_secs(30);

/// Who may ask, and for what.
pub(crate) struct Access {
    /// Where the server listens.
    pub(crate) address: SocketAddr,
    /// The door of the studio; none on this machine alone.
    pub(crate) door: Option<Door>,
    /// Whether files may be written.
    pub(crate) may_write: bool,
}

/// The materials that patterns may name.
pub(crate) struct Materials {
    /// All of them.
    pub(crate) catalogue: Catalogue,
    /// The text of the maker's own, for workers; empty if there are none.
    pub(crate) shelf: String,
}

/// What all requests share.
pub(crate) struct Bench {
    /// The pattern files.
    pub(crate) folder: Folder,
    /// The materials that patterns may name.
    pub(crate) catalogue: Catalogue,
    /// What the shelf of the folder says of them.
    pub(crate) measures: Arc<OwnMeasures>,
    /// The packets.
    pub(crate) jobs: Arc<Jobs>,
    /// Those who work things out.
    pub(crate) workers: Arc<Workers>,
    /// Turns for reading and writing files.
    pub(crate) files: Gate,
    /// Turns for what is a matter of a moment, and for the rest.
    quick: Gate,
    slow: Gate,
    /// Who may ask.
    pub(crate) access: Access,
    /// The figures that the workshop took up; none for the usual hand.
    hand: Mutex<Option<Adopted>>,
    /// Name of the pattern to open first.
    pub(crate) open: Option<String>,
    /// Differs from start to start.
    pub(crate) started: String,
}

impl Bench {
    /// A bench over a folder, perhaps with a pattern to open first, and with these materials.
    pub(crate) fn new(
        (folder, open): (Folder, Option<String>),
        materials: Materials,
        access: Access,
        started: String,
    ) -> Arc<Self> {
        let workers = Arc::new(Workers::new(folder.path().to_owned(), materials.shelf));
        let jobs = Arc::new(Jobs::new(Arc::clone(&workers)));
        let [files, quick, slow] = [(); 3].map(|()| Gate::of_processors());
        let catalogue = materials.catalogue;
        let measures = Arc::new(OwnMeasures::of(folder.path()));
        let hand = Mutex::new(log::adopted(&folder));
        Arc::new(Self {
            folder,
            catalogue,
            measures,
            jobs,
            workers,
            files,
            quick,
            slow,
            access,
            hand,
            open,
            started,
        })
    }

    /// Has something worked out for a guest. When what is returned is dropped, the work is stopped.
    pub(crate) async fn work(&self, guest: Guest, task: Task, request: Vec<u8>) -> Result<Answer, Refusal> {
        let gate = if task.is_quick() { &self.quick } else { &self.slow };
        let turn = gate.turn(guest.0).await?;
        let (mut nobody, never) = (|_, _| (), Notify::new());
        let order = self.order(task).await;
        let working = self.workers.run(order, &request, (&mut nobody, &never));
        let answer = tokio::time::timeout(LONGEST, working).await.map_err(|_| too_long())??;
        Ok(answer.holding(turn.done()))
    }

    /// An order with the rights of this bench's guests, what the shelf says of materials and the hand taken up.
    pub(crate) async fn order(&self, task: Task) -> Order {
        let own = self.own().await;
        Order { task, any_file: self.access.may_write, own, hand: self.hand().clone() }
    }

    /// What the shelf says of materials. Whether its file changed is asked at once; it is read aside.
    async fn own(&self) -> Own {
        if let Some(own) = self.measures.known() {
            return Own::clone(&own);
        }
        let (measures, catalogue) = (Arc::clone(&self.measures), self.catalogue.clone());
        let read = tokio::task::spawn_blocking(move || Own::clone(&measures.read(&catalogue)));
        read.await.unwrap_or(Own { unread: true, ..Own::default() })
    }

    /// Works with these figures from now on, or with the usual hand.
    pub(crate) fn take_up(&self, figures: Option<Adopted>) {
        *self.hand() = figures;
    }

    fn hand(&self) -> MutexGuard<'_, Option<Adopted>> {
        self.hand.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Refuses guests who may not write: what lies in the workshop is the maker's own.
    pub(crate) fn may_see_workshop(&self) -> Result<(), Refusal> {
        if self.access.may_write {
            return Ok(());
        }
        Err(Refusal::said(StatusCode::FORBIDDEN, Message::new("refused-workshop"), "the server"))
    }

    /// Refuses where nothing may be written.
    pub(crate) fn may_write(&self) -> Result<(), Refusal> {
        if self.access.may_write {
            return Ok(());
        }
        Err(Refusal::said(StatusCode::FORBIDDEN, Message::new("refused-read-only"), "the server"))
    }
}

fn too_long() -> Refusal {
    Refusal::said(StatusCode::SERVICE_UNAVAILABLE, Message::new("refused-too-long"), "the pattern")
}
