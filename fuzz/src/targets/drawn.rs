//! Readable patterns through every drawing, solid and export.

use basket::pattern::read;
use basket::steps::Stage;
use basket::weave::Face;
use basket::{Basket, Catalogue, Hand, assemble};
use drawings::solid::{self, Detail};
use drawings::stages::{Plate, absent, stage_drawings};
use drawings::{At, ChartKind, Drawing};
use fastrand::Rng;
use words::Words;

use crate::extreme;
use crate::runner::Target;

pub(super) struct Drawn;

impl Drawn {
    /// From now on this process has no more memory than the program is given elsewhere; a case that wants more
    /// ends it, and is left where the runner wrote it.
    pub(super) fn new() -> Self {
        #[cfg(unix)]
        {
            use rustix::process::{Resource, Rlimit, setrlimit};
            let most = Some(crate::trial::MEMORY_KB * 1024);
            let _ = setrlimit(Resource::Data, Rlimit { current: most, maximum: most });
        }
        Self
    }
}

impl Target for Drawn {
    fn name(&self) -> &'static str {
        "drawn"
    }

    fn case(&mut self, rng: &mut Rng) -> Vec<u8> {
        extreme::pattern(rng.u64(..)).into_bytes()
    }

    fn run(&mut self, case: &[u8]) -> Result<(), String> {
        let text = String::from_utf8_lossy(case);
        let Ok(pattern) = read(&text, Catalogue::built_in()) else { return Ok(()) };
        let basket = assemble(&pattern, Catalogue::built_in(), &Hand::USUAL);
        let words = Words::new(basket.language.unwrap_or_default(), basket.units);
        let drawings = all(&basket, &words);
        for drawing in &drawings {
            let svg = drawing.to_svg();
            let frame = drawing.frame();
            if !(frame.is_finite() && frame.width() > 0.0 && frame.height() > 0.0) {
                return Err(format!("{} has the frame {frame:?}", drawing.name));
            }
            if ["NaN", "inf"]
                .iter()
                .any(|word| svg.contains(&format!("\"{word}")) || svg.contains(&format!(" {word} ")))
            {
                return Err(format!("{} has a place that is no number", drawing.name));
            }
        }
        for plate in Plate::ALL {
            if !drawings.iter().any(|drawing| drawing.name == plate.figure()) {
                return Err(format!("there is no {}", plate.figure()));
            }
        }
        for (stage, detail) in [(Stage::Finished, Detail::Full), (Stage::HalfWoven, Detail::Thumbnail)] {
            let solid = solid::solid(&basket, stage, detail);
            let corners = solid.parts.iter().flat_map(|part| &part.mesh.positions);
            if let Some(corner) = corners.flatten().find(|figure| !figure.is_finite()) {
                return Err(format!("a corner of the solid at {corner}"));
            }
            let three_mf = solid::three_mf(&solid).map_err(|error| error.to_string())?;
            if solid::glb(&solid).is_empty() || solid::stl(&solid).is_empty() || three_mf.is_empty() {
                return Err("an empty file of the solid".to_owned());
            }
        }
        Ok(())
    }
}

fn all(basket: &Basket, words: &Words) -> Vec<Drawing> {
    let mut all = vec![
        drawings::section(basket, words),
        drawings::base_plan(basket, words),
        drawings::base_disc(basket, words),
        drawings::taper_chart(basket, words),
        drawings::plan(basket, words),
        drawings::scarf_template(basket, words),
        drawings::drilling_template(basket, words),
        drawings::spacing_strip(basket, words, At::Base),
        drawings::spacing_strip(basket, words, At::Rim),
    ];
    all.extend(drawings::stave_templates(basket, words));
    all.extend(drawings::ear_template(basket, words));
    for face in [Face::Outside, Face::Inside] {
        all.extend([ChartKind::True, ChartKind::Grid].map(|kind| drawings::chart(basket, words, face, kind)));
    }
    all.extend(stage_drawings(basket, words).into_iter().map(|(_, drawing)| drawing));
    let missing = Plate::ALL.into_iter().filter(|plate| !plate.is_of(basket));
    all.extend(missing.map(|plate| absent(basket, words, plate)));
    all
}
