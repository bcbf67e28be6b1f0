//! Setting sheets from templates of the maker's own, which may have no end.

use std::sync::mpsc;
use std::thread;
use std::time::{Duration, Instant};

use basket::Draft;
use basket::limits::SETTING_SECONDS;
use sheets::{Options, PacketFile, SheetError};
use words::Words;

use crate::failure::Failure;
use crate::progress::Progress;

/// What the thread that sets sheets says.
enum Said {
    Setting(String),
    Done(Result<Vec<PacketFile>, SheetError>),
}

/// Makes all files within the time that there is. The thread that is still at work then ends with the program.
pub(super) fn within_time(
    draft: &Draft,
    words: &Words,
    options: Options,
    progress: &Progress,
) -> Result<Vec<PacketFile>, Failure> {
    let (tell, told) = mpsc::channel();
    let (draft, words) = (draft.clone(), Words::new(words.language(), words.units()));
    thread::spawn(move || {
        // Nobody hears what is said after the time.
        let mut setting = |sheet: &str| drop(tell.send(Said::Setting(sheet.to_owned())));
        let done = sheets::packet(&draft, &words, &options, &mut setting);
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
