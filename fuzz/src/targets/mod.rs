//! What is tried.

mod bodies;
mod charts;
mod drafts;
mod drawn;
mod photos;
mod templates;
mod text;

use std::io;
use std::path::{Path, PathBuf};

use tempfile::TempDir;

use crate::runner::Target;
use crate::trial;

/// Names of all targets.
pub const NAMES: [&str; 7] = ["text", "drawn", "drafts", "charts", "photos", "bodies", "templates"];

/// The target of a name; `program` is what is tried in a process of its own.
///
/// # Errors
/// When there is none of the name, or what it needs cannot be set up.
pub fn named(name: &str, program: &Path) -> io::Result<Box<dyn Target>> {
    Ok(match name {
        "text" => Box::new(text::Text::new()?),
        "drawn" => Box::new(drawn::Drawn::new()),
        "drafts" => Box::new(drafts::Drafts(Child::of(program)?)),
        "charts" => Box::new(charts::Charts(Child::of(program)?)),
        "photos" => Box::new(photos::Photos(Child::of(program)?)),
        "bodies" => Box::new(bodies::Bodies::over(program)?),
        "templates" => Box::new(templates::Templates::of(Child::of(program)?)?),
        _ => {
            return Err(io::Error::other(format!(
                "there is no target {name}; there are {}",
                NAMES.join(", ")
            )));
        }
    })
}

/// The program that `cargo build` made beside this one.
///
/// # Errors
/// When this process does not know where it is.
pub fn program() -> io::Result<PathBuf> {
    let own = std::env::current_exe()?;
    let folder = own.ancestors().find(|folder| folder.ends_with("debug") || folder.ends_with("release"));
    Ok(folder.map_or_else(|| PathBuf::from("stavewright"), |folder| folder.join("stavewright")))
}

/// The patterns of the repository.
fn patterns() -> io::Result<Vec<Vec<u8>>> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../patterns");
    let mut paths: Vec<PathBuf> =
        std::fs::read_dir(folder)?.map(|entry| Ok(entry?.path())).collect::<io::Result<_>>()?;
    paths.sort();
    paths.into_iter().map(std::fs::read).collect()
}

/// The program, with a folder to work in.
pub(crate) struct Child {
    program: PathBuf,
    room: TempDir,
}

impl Child {
    fn of(program: &Path) -> io::Result<Self> {
        Ok(Self { program: program.canonicalize()?, room: tempfile::tempdir()? })
    }

    fn write(&self, name: &str, bytes: &[u8]) -> Result<(), String> {
        std::fs::write(self.room.path().join(name), bytes).map_err(|error| error.to_string())
    }

    /// Runs the program; it may end with one of these statuses.
    fn run(&self, arguments: &[&str], may: &[i32]) -> Result<(), String> {
        let run =
            trial::run(&self.program, self.room.path(), arguments).map_err(|error| error.to_string())?;
        match run.end {
            trial::End::Status(status) if may.contains(&status) => Ok(()),
            end => Err(format!(
                "{end:?} after {:?} of work, {} kB: {}",
                run.worked, run.memory_kb, run.complaint
            )),
        }
    }
}

/// A pattern that has a course from a chart, and one that has a note with a photograph.
const PATTERN: &str = "title = \"Fuzz\"\nmould = { base = \"5 in\", rim = \"8 in\", height = \"4 in\" }\n";
