//! Tries targets for so long each: `fuzz-long SECONDS [TARGET …]`, all of them where none is named. A case that brings
//! something down is kept in `fuzz/found`; the tests try it again from then on.

use std::process::ExitCode;
use std::time::{Duration, SystemTime};

use fuzz::runner::{self, Until};
use fuzz::targets;

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let Some(seconds) = arguments.first().and_then(|text| text.parse().ok()) else {
        eprintln!("usage: fuzz-long SECONDS [TARGET …]; targets are {}", targets::NAMES.join(", "));
        return ExitCode::from(2);
    };
    let mut names: Vec<&str> = arguments.iter().skip(1).map(String::as_str).collect();
    if names.is_empty() {
        names = targets::NAMES.to_vec();
    }
    let seed = SystemTime::now().duration_since(SystemTime::UNIX_EPOCH).map_or(1, |since| since.as_secs());
    let mut all_well = true;
    for name in names {
        let until = Until { time: Duration::from_secs(seconds), cases: u64::MAX };
        let tally = targets::program()
            .and_then(|program| targets::named(name, &program))
            .and_then(|mut target| runner::run(target.as_mut(), until, seed));
        match tally {
            Ok(tally) => {
                println!("{name}: {} cases in {:.0} s, seed {seed}", tally.cases, tally.took.as_secs_f64());
                if let Some((wrong, kept)) = tally.wrong {
                    println!("{name}: {wrong}\n  kept as {}", kept.display());
                    all_well = false;
                }
            }
            Err(error) => {
                eprintln!("{name}: {error}");
                return ExitCode::from(2);
            }
        }
    }
    ExitCode::from(u8::from(!all_well))
}
