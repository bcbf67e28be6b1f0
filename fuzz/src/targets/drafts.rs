//! Readable patterns as whole packets, in a process with limits.

use fastrand::Rng;

use super::Child;
use crate::extreme;
use crate::runner::Target;

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
        let list =
            std::fs::read_to_string(packet.join("checksums.txt")).map_err(|error| error.to_string())?;
        let listed = list.lines().count();
        let files = std::fs::read_dir(&packet).map_err(|error| error.to_string())?.count();
        for file in ["handout.pdf", "bench-card.pdf", "templates.pdf", "basket.json"] {
            if !packet.join(file).is_file() {
                return Err(format!("the packet lacks {file}"));
            }
        }
        // The list itself is not on it.
        if files == listed + 1 { Ok(()) } else { Err(format!("{files} files, and {listed} on the list")) }
    }
}
