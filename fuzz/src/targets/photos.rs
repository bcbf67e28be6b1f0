//! Photographs, mangled.

use std::io::Cursor;

use fastrand::Rng;
use image::{ImageFormat, RgbImage};

use super::{Child, PATTERN};
use crate::mangle::mangled;
use crate::runner::Target;

pub(super) struct Photos(pub(super) Child);

impl Target for Photos {
    fn name(&self) -> &'static str {
        "photos"
    }

    fn case(&mut self, rng: &mut Rng) -> Vec<u8> {
        let format = if rng.bool() { ImageFormat::Png } else { ImageFormat::Jpeg };
        let mut whole = Vec::new();
        // Writing into memory does not fail.
        let _ = RgbImage::new(24, 16).write_to(&mut Cursor::new(&mut whole), format);
        mangled(&whole, rng)
    }

    fn run(&mut self, case: &[u8]) -> Result<(), String> {
        let name = if case.starts_with(b"\x89P") { "photo.png" } else { "photo.jpg" };
        self.0.write(name, case)?;
        let note = format!("[[note]]\nstep = \"rim\"\nphoto = \"{name}\"\ncaption = \"Both hoops\"\n");
        self.0.write("pattern.toml", format!("{PATTERN}{note}").as_bytes())?;
        self.0.run(&["draft", "pattern.toml", "--no-sheets"], &[0, 1, 2])
    }
}
