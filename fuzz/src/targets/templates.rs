//! Templates of the maker's own, mangled. All sheets but one are set from a line, so that each case is quick.

use std::fs;
use std::io;

use fastrand::Rng;

use super::{Child, PATTERN};
use crate::mangle::mangled;
use crate::runner::Target;

/// The sheets, and a template that sets next to nothing.
const SHEETS: [&str; 6] =
    ["handout.typ", "teacher.typ", "maker.typ", "bench-card.typ", "templates.typ", "demonstration.typ"];
const LINE: &str = "#set document(title: \"x\")\n#set text(lang: \"en\")\nx\n";
/// The sheet whose template is mangled.
const TRIED: &str = "bench-card.typ";

pub(super) struct Templates {
    child: Child,
    whole: Vec<u8>,
}

impl Templates {
    pub(super) fn of(child: Child) -> io::Result<Self> {
        let folder = child.room.path();
        fs::create_dir(folder.join("own"))?;
        for sheet in SHEETS {
            fs::write(folder.join("own").join(sheet), LINE)?;
        }
        fs::write(folder.join("own/page.html"), "<p>{{ title }}</p>")?;
        fs::write(folder.join("pattern.toml"), PATTERN)?;
        let templates = concat!(env!("CARGO_MANIFEST_DIR"), "/../crates/sheets/templates/");
        let whole = fs::read(format!("{templates}{TRIED}"))?;
        Ok(Self { child, whole })
    }
}

impl Target for Templates {
    fn name(&self) -> &'static str {
        "templates"
    }

    fn case(&mut self, rng: &mut Rng) -> Vec<u8> {
        mangled(&self.whole, rng)
    }

    fn run(&mut self, case: &[u8]) -> Result<(), String> {
        self.child.write(&format!("own/{TRIED}"), case)?;
        self.child.run(&["draft", "pattern.toml", "--templates", "own"], &[0, 1, 2])
    }
}
