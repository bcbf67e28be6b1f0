//! Tries extreme patterns on the program: `extreme PROGRAM COMMAND COUNT [FIRST SEED]`; `extreme show SEED`
//! prints a pattern.

use std::path::Path;
use std::process::ExitCode;
use std::time::{Duration, Instant};

use fuzz::extreme::pattern;
use fuzz::trial::{self, End, Run};

/// What is known after some runs.
#[derive(Default)]
struct Tally {
    wrong: Vec<u64>,
    signals: u32,
    too_long: u32,
    refused: u32,
    slowest: (Duration, u64),
    largest: (u64, u64),
}

impl Tally {
    fn add(&mut self, seed: u64, run: &Run) {
        self.slowest = self.slowest.max((run.worked, seed));
        self.largest = self.largest.max((run.memory_kb, seed));
        match run.end {
            End::Signal => self.signals += 1,
            End::TooLong => self.too_long += 1,
            End::Status(_) => self.refused += u32::from(!run.is_right()),
        }
        if !run.is_right() {
            self.wrong.push(seed);
        }
    }
}

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let [program, command, rest @ ..] = arguments.as_slice() else {
        eprintln!("usage: extreme PROGRAM COMMAND COUNT [FIRST SEED]");
        return ExitCode::from(2);
    };
    if program == "show" {
        print!("{}", pattern(command.parse().unwrap_or(1)));
        return ExitCode::SUCCESS;
    }
    let number =
        |place: usize, usual: u64| rest.get(place).and_then(|text| text.parse().ok()).unwrap_or(usual);
    let (count, first) = (number(0, 100), number(1, 1));
    let began = Instant::now();
    let mut tally = Tally::default();
    for seed in first..first + count {
        let room = match tempfile::tempdir() {
            Ok(room) => room,
            Err(error) => return failed(&error),
        };
        if let Err(error) = std::fs::write(room.path().join("extreme.toml"), pattern(seed)) {
            return failed(&error);
        }
        match trial::run(Path::new(program), room.path(), &[command, "extreme.toml"]) {
            Ok(run) => {
                if !run.is_right() {
                    let complaint = run.complaint.split_whitespace().collect::<Vec<_>>().join(" ");
                    let shown: String = complaint.chars().take(160).collect();
                    println!(
                        "{seed}: {:?} after {:.1} s, {} MB: {shown}",
                        run.end,
                        run.worked.as_secs_f64(),
                        run.memory_kb / 1024
                    );
                }
                tally.add(seed, &run);
            }
            Err(error) => return failed(&error),
        }
    }
    let Tally { wrong, signals, too_long, refused, slowest, largest } = &tally;
    println!(
        "{command}: {count} patterns in {:.0} s; {} wrong ({signals} by a signal, {too_long} too long), {refused} otherwise; \
         slowest {:.2} s (seed {}), most memory {} MB (seed {})",
        began.elapsed().as_secs_f64(),
        wrong.len(),
        slowest.0.as_secs_f64(),
        slowest.1,
        largest.0 / 1024,
        largest.1
    );
    ExitCode::from(u8::from(!wrong.is_empty()))
}

fn failed(error: &std::io::Error) -> ExitCode {
    eprintln!("{error}");
    ExitCode::from(2)
}
