//! Stavewright on the command line: reads a maker's pattern, has the basket computed and writes
//! the packet from which it is made.

mod bench;
mod cli;
mod disk;
mod drawn;
mod drawn_outline;
mod failure;
mod input;
mod kits_file;
mod mould_photo;
mod own;
mod packet;
mod photos;
mod planned;
mod progress;
mod raster;
mod report;
mod screen;
mod signs;
mod single;
mod source;
mod store;

use std::process::ExitCode;

use clap::Parser;

fn main() -> ExitCode {
    let is_worker = std::env::args_os().nth(1).is_some_and(|first| first == bench::WORKER);
    let done = if is_worker { cli::work() } else { cli::run(&cli::Cli::parse()) };
    match done {
        Ok(outcome) => outcome.into(),
        Err(failure) => {
            failure.report();
            ExitCode::from(2)
        }
    }
}
