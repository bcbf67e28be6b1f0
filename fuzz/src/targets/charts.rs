//! Weaves drawn in files of their own, mangled: texts and pictures.

use std::io::Cursor;

use fastrand::Rng;
use image::{GrayImage, ImageFormat, Luma};

use super::{Child, PATTERN};
use crate::mangle::mangled;
use crate::runner::Target;

pub(super) struct Charts(pub(super) Child);

impl Target for Charts {
    fn name(&self) -> &'static str {
        "charts"
    }

    fn case(&mut self, rng: &mut Rng) -> Vec<u8> {
        let whole = if rng.bool() { b"X..X..\n.XX.XX\n".to_vec() } else { picture() };
        mangled(&whole, rng)
    }

    fn run(&mut self, case: &[u8]) -> Result<(), String> {
        let name = if case.starts_with(b"\x89P") { "chart.png" } else { "chart.txt" };
        self.0.write(name, case)?;
        let course =
            format!("{{ weave = \"drawn\", weaver = \"cane fine\", rows = 12, chart-file = \"{name}\" }}");
        self.0.write("pattern.toml", format!("{PATTERN}weave = {{ courses = [{course}] }}\n").as_bytes())?;
        self.0.run(&["check", "pattern.toml"], &[0, 1, 2])
    }
}

/// A weave with a dot a crossing.
fn picture() -> Vec<u8> {
    let dots = GrayImage::from_fn(6, 4, |x, y| Luma([if (x + y) % 2 == 0 { 0 } else { 255 }]));
    let mut bytes = Vec::new();
    // Writing into memory does not fail.
    let _ = dots.write_to(&mut Cursor::new(&mut bytes), ImageFormat::Png);
    bytes
}
