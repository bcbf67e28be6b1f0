//! Setting sheets from templates of the maker's own, which may have no end.

use std::fs;
use std::sync::mpsc;
use std::thread;
use std::time::{Duration, Instant};

use basket::limits::{SETTING_BYTES, SETTING_SECONDS};
use sheets::SheetError;

use crate::failure::Failure;
use crate::progress::Progress;

/// How long the maker's own templates go unwatched.
const GLANCE: Duration = Duration::from_millis(20);

/// What the thread that sets sheets says.
enum Said<T> {
    Setting(String),
    Done(Result<T, SheetError>),
}

/// Sets sheets within the time and the memory that there are. The thread that is still at work then ends with the program.
pub(super) fn within_limits<T: Send + 'static>(
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
        match told.recv_timeout(GLANCE) {
            Ok(Said::Setting(sheet)) => progress.say(&format!("setting {sheet}")),
            Ok(Said::Done(done)) => return Ok(done?),
            Err(mpsc::RecvTimeoutError::Timeout) if memory() > SETTING_BYTES => {
                return Err(Failure::plain(
                    format!("the sheets take more than {} GB of memory", SETTING_BYTES / 1_000_000_000),
                    "A template of yours makes far too much of something: look at its loops.",
                ));
            }
            Err(mpsc::RecvTimeoutError::Timeout) if Instant::now() < end => {}
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

/// Memory that this process has in use, in bytes; none where the system does not say.
fn memory() -> u64 {
    // `VmRSS:     1234 kB` (Linux manual pages, proc_pid_status(5)).
    let told = fs::read_to_string("/proc/self/status").unwrap_or_default();
    let line = told.lines().find_map(|line| line.strip_prefix("VmRSS:"));
    let kilobytes = line.and_then(|line| line.split_whitespace().next()?.parse::<u64>().ok());
    kilobytes.map_or(0, |kilobytes| kilobytes * 1024)
}
