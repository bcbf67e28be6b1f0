//! The program as a child with limits of memory and time, and what became of it.

use std::fs;
use std::io::{self, Read};
use std::path::Path;
use std::process::{Command, Stdio};
use std::thread;
use std::time::{Duration, Instant};

/// Memory that a run may ask for, in kB: 1 GiB.
pub const MEMORY_KB: u64 = 1 << 20;
/// Time of the processor that a run may take.
pub const WORK: Duration = Duration::from_secs(20);
/// The time that it may take by the clock: others may be at work on the machine, too.
pub const PATIENCE: Duration = Duration::from_mins(3);

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
    /// How long the processor was at work on it, looked at now and then.
    pub worked: Duration,
    /// The most memory that it was seen to hold, in kB; looked at now and then.
    pub memory_kb: u64,
}

impl Run {
    /// Whether it did its work: 0, or 1 for a basket that is stopped.
    pub fn is_right(&self) -> bool {
        matches!(self.end, End::Status(0 | 1))
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
    let process = format!("/proc/{}", child.id());
    let (mut memory_kb, mut worked) = (0, Duration::ZERO);
    let mut pause = Duration::from_millis(2);
    let end = loop {
        memory_kb = memory_kb.max(highest(&process).unwrap_or(0));
        worked = worked.max(work(&process).unwrap_or_default());
        if let Some(status) = child.try_wait()? {
            break status.code().map_or(End::Signal, End::Status);
        }
        if worked > WORK || started.elapsed() > PATIENCE {
            child.kill()?;
            child.wait()?;
            break End::TooLong;
        }
        thread::sleep(pause);
        pause = (pause * 2).min(Duration::from_millis(20));
    };
    let complaint = reader.join().unwrap_or_default();
    Ok(Run { end, complaint, worked, memory_kb })
}

/// The most memory that a process has held so far, in kB.
fn highest(process: &str) -> Option<u64> {
    let text = fs::read_to_string(format!("{process}/status")).ok()?;
    let line = text.lines().find_map(|line| line.strip_prefix("VmHWM:"))?;
    line.trim().trim_end_matches(" kB").parse().ok()
}

/// How long the processor has been at work on a process: the fields `utime` and `stime` of proc(5), in hundredths
/// of a second.
fn work(process: &str) -> Option<Duration> {
    let text = fs::read_to_string(format!("{process}/stat")).ok()?;
    // The name in brackets may hold anything; the state follows it as field 3.
    let fields: Vec<&str> = text.rsplit_once(')')?.1.split_whitespace().collect();
    let ticks = |field: usize| fields.get(field - 3)?.parse::<u64>().ok();
    Some(Duration::from_millis(10 * (ticks(14)? + ticks(15)?)))
}
