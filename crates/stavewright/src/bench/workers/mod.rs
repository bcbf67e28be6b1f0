//! Processes that work things out, so that whatever goes wrong there ends there.
//!
//! The server reads, checks and answers; it computes nothing from a guest's pattern itself. A worker is this
//! same program, started as `stavewright worker` in the bench's folder. It does one thing at a time, and is
//! killed when nobody waits for it any more.

mod frame;
mod limits;
mod order;
pub(crate) mod serve;
mod tasks;

use std::io;
use std::path::PathBuf;
use std::process::Stdio;
use std::sync::{Mutex, MutexGuard, PoisonError};

use axum::http::StatusCode;
use basket::message::{Message, Value};
use tokio::io::BufReader;
use tokio::process::{Child, ChildStdin, ChildStdout, Command};
use tokio::sync::oneshot;

use super::answer::Answer;
use super::refusal::Refusal;
pub(crate) use order::{Order, Task, Word};

/// What this program is called with to be a worker.
pub(crate) const WORKER: &str = "worker";
/// Workers that are kept for the next order.
const MOST_IDLE: usize = 4;

/// All workers of a server.
pub(crate) struct Workers {
    folder: PathBuf,
    /// Text of the maker's own materials; empty if there are none.
    shelf: String,
    idle: Mutex<Vec<Worker>>,
}

impl Workers {
    /// Workers over a folder, with the text of the maker's own materials.
    pub(crate) fn new(folder: PathBuf, shelf: String) -> Self {
        Self { folder, shelf, idle: Mutex::default() }
    }

    /// Starts two, so that the first ones who ask need not wait for it.
    pub(crate) async fn warm(&self) {
        for _ in 0..2 {
            if let Ok(worker) = self.begin().await {
                self.idle().push(worker);
            }
        }
    }

    /// Has something worked out; `hear` is told what the worker says meanwhile. When what is returned is
    /// dropped, the worker is killed.
    pub(crate) async fn run(
        &self,
        order: Order,
        request: &[u8],
        hear: &mut (dyn FnMut(Word, Vec<u8>) + Send),
    ) -> Result<Answer, Refusal> {
        let mut worker = match self.rested() {
            Some(worker) => worker,
            None => self.begin().await.map_err(|error| no_worker(&error))?,
        };
        let answer = worker.ask(&order, request, hear).await.map_err(|_| died())?;
        // The typesetter keeps what it once set; a worker that made sheets gives its memory back by going.
        if !matches!(order.task, Task::Packet | Task::Plan) {
            let mut idle = self.idle();
            if idle.len() < MOST_IDLE {
                idle.push(worker);
            }
        }
        Ok(answer)
    }

    fn idle(&self) -> MutexGuard<'_, Vec<Worker>> {
        self.idle.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// A worker that has nothing to do and still lives.
    fn rested(&self) -> Option<Worker> {
        loop {
            let worker = self.idle().pop()?;
            if !worker.stay.is_closed() {
                return Some(worker);
            }
        }
    }

    async fn begin(&self) -> io::Result<Worker> {
        let mut child = Command::new(program()?)
            .arg(WORKER)
            .current_dir(&self.folder)
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .kill_on_drop(true)
            .spawn()?;
        let (Some(to), Some(from)) = (child.stdin.take(), child.stdout.take()) else {
            return Err(io::ErrorKind::BrokenPipe.into());
        };
        let (stay, leave) = oneshot::channel();
        tokio::spawn(watch(child, leave));
        let mut worker = Worker { stay, to, from: BufReader::new(from) };
        frame::send(&mut worker.to, &(), self.shelf.as_bytes()).await?;
        Ok(worker)
    }
}

/// Kills a worker that nobody has any more, and takes note of its end.
async fn watch(mut child: Child, leave: oneshot::Receiver<()>) {
    tokio::select! {
        _ = child.wait() => {}
        _ = leave => {
            let _ = child.kill().await;
        }
    }
}

struct Worker {
    /// Closed when its process has ended; its process ends when this is dropped.
    stay: oneshot::Sender<()>,
    to: ChildStdin,
    from: BufReader<ChildStdout>,
}

impl Worker {
    async fn ask(
        &mut self,
        order: &Order,
        request: &[u8],
        hear: &mut (dyn FnMut(Word, Vec<u8>) + Send),
    ) -> io::Result<Answer> {
        frame::send(&mut self.to, order, request).await?;
        loop {
            match frame::receive(&mut self.from).await? {
                (Word::Answer { status, media }, body) => {
                    let status = StatusCode::from_u16(status).map_err(io::Error::other)?;
                    return Ok(Answer { status, media, body: body.into() });
                }
                (word, body) => hear(word, body),
            }
        }
    }
}

/// This program, even where its file was replaced since it was started.
fn program() -> io::Result<PathBuf> {
    if cfg!(target_os = "linux") { Ok("/proc/self/exe".into()) } else { std::env::current_exe() }
}

fn no_worker(error: &io::Error) -> Refusal {
    Refusal::said(
        StatusCode::SERVICE_UNAVAILABLE,
        Message::new("refused-no-worker").with("said", Value::Name(error.to_string())),
        "the server",
    )
}

fn died() -> Refusal {
    Refusal::said(StatusCode::INTERNAL_SERVER_ERROR, Message::new("refused-died"), "the pattern")
}
