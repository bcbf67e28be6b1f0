//! Setting sheets from templates of the maker's own, which may have no end.

use std::sync::mpsc;
use std::thread;
use std::time::{Duration, Instant};

use basket::limits::SETTING_SECONDS;
use sheets::SheetError;

use crate::failure::Failure;
use crate::progress::Progress;

/// What the thread that sets sheets says.
enum Said<T> {
    Setting(String),
    Done(Result<T, SheetError>),
}

/// Sets sheets within the time that there is. The thread that is still at work then ends with the program.
pub(super) fn within_time<T: Send + 'static>(
    work: impl FnOnce(&mut dyn FnMut(&str)) -> Result<T, SheetError> + Send + 'static,
    progress: &Progress,
) -> Result<T, Failure> {
    let (tell, told) = mpsc::channel();
    thread::spawn(move || {
        // Nobody hears what is said after the time.
        let done = work(&mut |sheet| drop(tell.send(Said::Setting(sheet.to_owned()))));
        drop(tell.send(Said::Done(done)));
    });
    let end = Instant::now() + Duration::from_secs(SETTING_SECONDS);
    loop {
        match told.recv_timeout(end.saturating_duration_since(Instant::now())) {
            Ok(Said::Setting(sheet)) => progress.say(&format!("setting {sheet}")),
            Ok(Said::Done(done)) => return Ok(done?),
            Err(mpsc::RecvTimeoutError::Timeout) => {
                return Err(Failure::plain(
                    format!("the sheets are not set after {SETTING_SECONDS} seconds"),
                    "A template of yours goes round without an end: look at its loops.",
                ));
            }
            Err(mpsc::RecvTimeoutError::Disconnected) => {
                return Err(Failure::plain(
                    "the sheets could not be set",
                    "Draft once without --templates: if that works, the fault is in a template.",
                ));
            }
        }
    }
}
