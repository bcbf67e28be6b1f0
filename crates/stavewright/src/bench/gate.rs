//! Work that takes the processor: off the server's own threads, and never too much at a time.

use std::sync::Arc;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::Duration;

use axum::http::StatusCode;
use tokio::sync::Semaphore;

use super::refusal::Refusal;

/// Requests that may wait for their turn.
const MOST_WAITING: usize = 512;
/// No answer takes longer; what takes longer is given up.
const LONGEST: Duration = Duration::from_secs(30);

/// Lets in as many as there are processors; the others wait, and leave when their client does.
pub(crate) struct Gate {
    turns: Arc<Semaphore>,
    waiting: AtomicUsize,
}

impl Gate {
    /// As many turns as there are processors, but at least two.
    pub(crate) fn new() -> Self {
        let processors = std::thread::available_parallelism().map_or(2, std::num::NonZero::get).max(2);
        Self { turns: Arc::new(Semaphore::new(processors)), waiting: AtomicUsize::new(0) }
    }

    /// Does a piece of work.
    pub(crate) async fn run<T: Send + 'static>(
        &self,
        work: impl FnOnce() -> Result<T, Refusal> + Send + 'static,
    ) -> Result<T, Refusal> {
        let place = Queued::take(&self.waiting).ok_or_else(busy)?;
        let turn = Arc::clone(&self.turns).acquire_owned().await.map_err(|_| busy())?;
        drop(place);
        // The turn is given back when the work is done, even if nobody waits for it any more.
        let work = tokio::task::spawn_blocking(move || {
            let _turn = turn;
            work()
        });
        match tokio::time::timeout(LONGEST, work).await {
            Ok(Ok(done)) => done,
            Ok(Err(_)) => Err(broken()),
            Err(_) => Err(too_long()),
        }
    }
}

/// A place in the queue; it is free again when it is dropped.
struct Queued<'a>(&'a AtomicUsize);

impl<'a> Queued<'a> {
    fn take(waiting: &'a AtomicUsize) -> Option<Self> {
        if waiting.fetch_add(1, Ordering::Relaxed) < MOST_WAITING {
            return Some(Self(waiting));
        }
        waiting.fetch_sub(1, Ordering::Relaxed);
        None
    }
}

impl Drop for Queued<'_> {
    fn drop(&mut self) {
        self.0.fetch_sub(1, Ordering::Relaxed);
    }
}

fn busy() -> Refusal {
    Refusal::new(
        StatusCode::SERVICE_UNAVAILABLE,
        "too much is being asked at once",
        "the server",
        "Ask again in a moment.",
    )
}

fn too_long() -> Refusal {
    Refusal::new(
        StatusCode::SERVICE_UNAVAILABLE,
        "this takes too long",
        "the pattern",
        "Take fewer staves or rows.",
    )
}

/// The answer to a request whose work ended in a panic.
pub(crate) fn broken() -> Refusal {
    Refusal::new(
        StatusCode::INTERNAL_SERVER_ERROR,
        "this could not be worked out; the fault is Stavewright's",
        "the server",
        "The server goes on and nothing was lost. Undo the last change, and report the pattern that did it.",
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[tokio::test]
    async fn a_panic_is_an_answer_and_the_gate_goes_on() {
        let gate = Gate::new();
        for _ in 0..10 {
            let fell: Result<(), Refusal> = gate.run(|| panic!("on purpose")).await;
            assert_eq!(fell.unwrap_err().status(), 500);
        }
        assert_eq!(gate.run(|| Ok(7)).await.unwrap(), 7);
    }
}
