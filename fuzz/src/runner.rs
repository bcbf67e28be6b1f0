//! Tries case after case on a target, for so long or so many, and keeps what brings it down.

use std::fs;
use std::io;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Path, PathBuf};
use std::sync::mpsc::{self, RecvTimeoutError};
use std::thread;
use std::time::{Duration, Instant};

use fastrand::Rng;

/// The longest that a case may take.
const PATIENCE: Duration = Duration::from_mins(3);

/// Something that takes bytes which others wrote.
pub trait Target {
    /// Its name, and that of the folder with what was found.
    fn name(&self) -> &'static str;
    /// A case.
    fn case(&mut self, rng: &mut Rng) -> Vec<u8>;
    /// Tries a case.
    ///
    /// # Errors
    /// What went wrong. A panic counts, too.
    fn run(&mut self, case: &[u8]) -> Result<(), String>;
}

/// When to stop.
#[derive(Clone, Copy, Debug)]
pub struct Until {
    /// After so long.
    pub time: Duration,
    /// After so many cases.
    pub cases: u64,
}

/// What came of it.
#[derive(Debug)]
pub struct Tally {
    /// How many cases were tried.
    pub cases: u64,
    /// How long that took.
    pub took: Duration,
    /// What went wrong first, and where that case is kept.
    pub wrong: Option<(String, PathBuf)>,
}

/// Where cases that brought something down are kept.
pub fn found(target: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("found").join(target)
}

/// Tries cases on a target.
///
/// # Errors
/// When a case cannot be kept.
pub fn run(target: &mut dyn Target, until: Until, seed: u64) -> io::Result<Tally> {
    let mut rng = Rng::with_seed(seed);
    let began = Instant::now();
    let mut cases = 0;
    // A case that takes the whole process with it is still there afterwards.
    let running = std::env::temp_dir().join(format!("running-{}-{}", target.name(), std::process::id()));
    while cases < until.cases && began.elapsed() < until.time {
        let case = target.case(&mut rng);
        fs::write(&running, &case)?;
        cases += 1;
        if let Err(wrong) = one(target, &case, &running) {
            let folder = found(target.name());
            fs::create_dir_all(&folder)?;
            let kept = folder.join(format!("seed-{seed}-case-{cases}"));
            fs::rename(&running, &kept).or_else(|_| fs::write(&kept, &case))?;
            return Ok(Tally { cases, took: began.elapsed(), wrong: Some((wrong, kept)) });
        }
    }
    fs::remove_file(&running)?;
    Ok(Tally { cases, took: began.elapsed(), wrong: None })
}

/// Tries all cases that were found before.
///
/// # Errors
/// When one cannot be read, or goes wrong again.
pub fn again(target: &mut dyn Target) -> Result<u64, String> {
    let Ok(folder) = fs::read_dir(found(target.name())) else { return Ok(0) };
    let mut tried = 0;
    for entry in folder {
        let path = entry.map_err(|error| error.to_string())?.path();
        let case = fs::read(&path).map_err(|error| error.to_string())?;
        one(target, &case, &path).map_err(|wrong| format!("{}: {wrong}", path.display()))?;
        tried += 1;
    }
    Ok(tried)
}

/// One case, with a watch on its time: what hangs cannot be stopped but with the whole process.
fn one(target: &mut dyn Target, case: &[u8], kept: &Path) -> Result<(), String> {
    let (done, watch) = mpsc::channel::<()>();
    let kept = kept.to_owned();
    let watcher = thread::spawn(move || {
        if watch.recv_timeout(PATIENCE) == Err(RecvTimeoutError::Timeout) {
            eprintln!("a case takes more than {} s; it is kept as {}", PATIENCE.as_secs(), kept.display());
            std::process::exit(1);
        }
    });
    let ended = catch_unwind(AssertUnwindSafe(|| target.run(case)));
    drop(done);
    let _ = watcher.join();
    ended.unwrap_or_else(|panic| {
        let text = panic.downcast_ref::<String>().map(String::as_str);
        Err(format!("panic: {}", text.or(panic.downcast_ref::<&str>().copied()).unwrap_or("without a word")))
    })
}
