//! Readable patterns as whole packets, in a process with limits.

use fastrand::Rng;

use super::Child;
use crate::extreme;
use crate::runner::Target;

/// How many files a whole packet holds.
const FILES: usize = 15;

pub(super) struct Drafts(pub(super) Child);

impl Target for Drafts {
    fn name(&self) -> &'static str {
        "drafts"
    }

    fn case(&mut self, rng: &mut Rng) -> Vec<u8> {
        extreme::pattern(rng.u64(..)).into_bytes()
    }

    fn run(&mut self, case: &[u8]) -> Result<(), String> {
        self.0.write("extreme.toml", case)?;
        self.0.run(&["draft", "extreme.toml"], &[0, 1])?;
        let packet = self.0.room.path().join("out/extreme");
        let files = std::fs::read_dir(packet).map_err(|error| error.to_string())?.count();
        if files == FILES { Ok(()) } else { Err(format!("{files} files in the packet")) }
    }
}
