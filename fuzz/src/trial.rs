//! The program as a child with limits of memory and time, and what became of it.

use std::fs;
use std::io::{self, Read};
use std::path::Path;
use std::process::{Command, Stdio};
use std::thread;
use std::time::{Duration, Instant};

/// Memory that a run may ask for, in kB: 1 GiB.
pub const MEMORY_KB: u64 = 1 << 20;
/// The time that a run may take.
pub const TIME: Duration = Duration::from_secs(20);

/// How a run ended.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum End {
    /// By itself, with this status.
    Status(i32),
    /// By a signal: it was aborted, or ran out of memory.
    Signal,
    /// It was ended because it took too long.
    TooLong,
}

/// What became of a run.
#[derive(Clone, Debug)]
pub struct Run {
    /// How it ended.
    pub end: End,
    /// What it complained of.
    pub complaint: String,
    /// How long it took.
    pub took: Duration,
    /// The most memory that it was seen to hold, in kB; looked at now and then.
    pub memory_kb: u64,
}

impl Run {
    /// Whether it ended as it should: 0, 1 for a stop, or 2 with a reason that is the user's to mend.
    pub fn is_right(&self) -> bool {
        matches!(self.end, End::Status(0..=2)) && !self.complaint.contains("panicked")
    }
}

/// Runs the program in a folder within the limits.
///
/// # Errors
/// When it cannot be started.
pub fn run(program: &Path, folder: &Path, arguments: &[&str]) -> io::Result<Run> {
    let started = Instant::now();
    let mut child = Command::new("sh")
        .args(["-c", &format!("ulimit -v {MEMORY_KB}; exec \"$0\" \"$@\"")])
        .arg(program)
        .args(arguments)
        .current_dir(folder)
        .stdin(Stdio::null())
        .stdout(Stdio::null())
        .stderr(Stdio::piped())
        .spawn()?;
    let mut errors = child.stderr.take().ok_or_else(|| io::Error::other("no standard error"))?;
    let reader = thread::spawn(move || {
        let mut bytes = Vec::new();
        let _ = errors.read_to_end(&mut bytes);
        String::from_utf8_lossy(&bytes).into_owned()
    });
    let status = format!("/proc/{}/status", child.id());
    let mut memory_kb = 0;
    let mut pause = Duration::from_millis(2);
    let end = loop {
        memory_kb = memory_kb.max(highest(&status).unwrap_or(0));
        if let Some(status) = child.try_wait()? {
            break status.code().map_or(End::Signal, End::Status);
        }
        if started.elapsed() > TIME {
            child.kill()?;
            child.wait()?;
            break End::TooLong;
        }
        thread::sleep(pause);
        pause = (pause * 2).min(Duration::from_millis(20));
    };
    let complaint = reader.join().unwrap_or_default();
    Ok(Run { end, complaint, took: started.elapsed(), memory_kb })
}

/// The most memory that a process has held so far, in kB.
fn highest(status: &str) -> Option<u64> {
    let text = fs::read_to_string(status).ok()?;
    let line = text.lines().find_map(|line| line.strip_prefix("VmHWM:"))?;
    line.trim().trim_end_matches(" kB").parse().ok()
}
