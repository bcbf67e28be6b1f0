//! A connection that is given up when its other end takes nothing for a while.

use std::io::{self, IoSlice};
use std::pin::Pin;
use std::sync::Arc;
use std::sync::atomic::{AtomicU64, Ordering};
use std::task::{Context, Poll, ready};
use std::time::{Duration, Instant};

use tokio::io::{AsyncRead, AsyncWrite, ReadBuf};
use tokio::time::{Sleep, sleep};

/// The other end has to take something by then.
const PATIENCE: Duration = Duration::from_secs(10);

/// When something last came through a connection.
pub(crate) struct Heard {
    begun: Instant,
    millis: AtomicU64,
}

impl Heard {
    /// Now.
    pub(crate) fn now() -> Self {
        Self { begun: Instant::now(), millis: AtomicU64::new(0) }
    }

    /// How long nothing has come through.
    pub(crate) fn silence(&self) -> Duration {
        self.begun.elapsed().saturating_sub(Duration::from_millis(self.millis.load(Ordering::Relaxed)))
    }

    fn again(&self) {
        let millis = u64::try_from(self.begun.elapsed().as_millis()).unwrap_or(u64::MAX);
        self.millis.store(millis, Ordering::Relaxed);
    }
}

/// A stream with little patience.
pub(crate) struct Patient<S> {
    stream: S,
    heard: Arc<Heard>,
    /// Runs while the other end takes nothing.
    stuck: Option<Pin<Box<Sleep>>>,
}

impl<S> Patient<S> {
    /// A stream that notes what comes through it.
    pub(crate) fn new(stream: S, heard: Arc<Heard>) -> Self {
        Self { stream, heard, stuck: None }
    }

    fn wrote(
        &mut self,
        written: Poll<io::Result<usize>>,
        context: &mut Context<'_>,
    ) -> Poll<io::Result<usize>> {
        if written.is_ready() {
            self.stuck = None;
            self.heard.again();
            return written;
        }
        let stuck = self.stuck.get_or_insert_with(|| Box::pin(sleep(PATIENCE)));
        ready!(stuck.as_mut().poll(context));
        Poll::Ready(Err(io::ErrorKind::TimedOut.into()))
    }
}

impl<S: AsyncRead + Unpin> AsyncRead for Patient<S> {
    fn poll_read(
        mut self: Pin<&mut Self>,
        context: &mut Context<'_>,
        buffer: &mut ReadBuf<'_>,
    ) -> Poll<io::Result<()>> {
        let before = buffer.filled().len();
        let read = Pin::new(&mut self.stream).poll_read(context, buffer);
        if buffer.filled().len() > before {
            self.heard.again();
        }
        read
    }
}

impl<S: AsyncWrite + Unpin> AsyncWrite for Patient<S> {
    fn poll_write(
        mut self: Pin<&mut Self>,
        context: &mut Context<'_>,
        bytes: &[u8],
    ) -> Poll<io::Result<usize>> {
        let written = Pin::new(&mut self.stream).poll_write(context, bytes);
        self.wrote(written, context)
    }

    fn poll_write_vectored(
        mut self: Pin<&mut Self>,
        context: &mut Context<'_>,
        pieces: &[IoSlice<'_>],
    ) -> Poll<io::Result<usize>> {
        let written = Pin::new(&mut self.stream).poll_write_vectored(context, pieces);
        self.wrote(written, context)
    }

    fn is_write_vectored(&self) -> bool {
        self.stream.is_write_vectored()
    }

    fn poll_flush(mut self: Pin<&mut Self>, context: &mut Context<'_>) -> Poll<io::Result<()>> {
        Pin::new(&mut self.stream).poll_flush(context)
    }

    fn poll_shutdown(mut self: Pin<&mut Self>, context: &mut Context<'_>) -> Poll<io::Result<()>> {
        Pin::new(&mut self.stream).poll_shutdown(context)
    }
}
