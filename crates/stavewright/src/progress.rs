//! A line on the terminal that says what is being done while it takes a moment.

use std::time::Duration;

use indicatif::{ProgressBar, ProgressDrawTarget, ProgressStyle};

/// The line. It shows only on a terminal, and is gone when this is dropped.
pub(crate) struct Progress(ProgressBar);

impl Progress {
    /// Begins.
    pub(crate) fn begin() -> Self {
        let bar = ProgressBar::with_draw_target(None, ProgressDrawTarget::stderr());
        if let Ok(style) = ProgressStyle::with_template("{spinner} {msg}") {
            bar.set_style(style);
        }
        bar.enable_steady_tick(Duration::from_millis(100));
        Self(bar)
    }

    /// Says what is being done now.
    pub(crate) fn say(&self, what: &str) {
        self.0.set_message(what.to_owned());
    }
}

impl Drop for Progress {
    fn drop(&mut self) {
        self.0.finish_and_clear();
    }
}
