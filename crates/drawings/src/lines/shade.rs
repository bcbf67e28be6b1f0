//! A shaded picture in colour.

use crate::lines::buffer::{Buffer, NONE};
use crate::lines::camera::Room;
use crate::lines::light::Light;
use crate::lines::scene::Scene;
use crate::lines::{PictureError, View};
use crate::solid::Solid;

/// Pixels on the raster along the side of a pixel of the picture.
const FINE: usize = 2;
/// Fewest pixels along a side of a picture.
const LEAST: usize = 8;
/// Most pixels along a side of a picture.
const MOST: usize = 2400;
/// Brightness of what the light does not reach.
const AMBIENT: f32 = 0.45;
/// Brightness of a seam between two parts.
const SEAM: f32 = 0.62;

/// A picture in pixels on no ground.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Image {
    /// Pixels across.
    pub width: usize,
    /// Pixels down.
    pub height: usize,
    /// Red, green, blue and opacity of each pixel, in rows from the top.
    pub pixels: Vec<u8>,
}

/// A solid in its materials' colours, lit from the upper left, to fit into so many pixels.
///
/// # Errors
/// When the view looks from nowhere, the picture has no size, or nothing is in sight.
pub fn shaded(solid: &Solid, view: &View, width: usize, height: usize) -> Result<Image, PictureError> {
    let fits = |side: usize| (LEAST..=MOST).contains(&side);
    if !fits(width) || !fits(height) {
        return Err(PictureError::Pixels { width, height, least: LEAST, most: MOST });
    }
    let room = Room { width: width as f64, height: height as f64, density: FINE as f64 };
    let scene = Scene::of(solid.parts.iter().collect(), view, room)?;
    let buffer = Buffer::of(&scene);
    Ok(averaged(&colours(&scene, &buffer), buffer.width, buffer.height))
}

/// Colour and opacity of each pixel of the raster.
fn colours(scene: &Scene<'_>, buffer: &Buffer) -> Vec<[f32; 4]> {
    let light = Light::on(scene);
    let part = |face: u32| scene.faces.get(face as usize).map(|face| face.part);
    let mut colours = Vec::with_capacity(buffer.width * buffer.height);
    for y in 0..buffer.height {
        for x in 0..buffer.width {
            let face = buffer.face(x, y);
            if face == NONE {
                colours.push([0.0; 4]);
                continue;
            }
            let own = part(face);
            let beside = part(buffer.face((x + 1).min(buffer.width - 1), y));
            let below = part(buffer.face(x, (y + 1).min(buffer.height - 1)));
            let seam = if beside == own && below == own { 1.0 } else { SEAM };
            let shade = (AMBIENT + (1.0 - AMBIENT) * light.at(face, x, y).max(0.0)) * seam;
            let [red, green, blue] = own.map_or([0; 3], |part| scene.parts[part as usize].colour);
            let [red, green, blue] = [red, green, blue].map(|colour| f32::from(colour) * shade);
            colours.push([red, green, blue, 255.0]);
        }
    }
    colours
}

/// The mean of each square of pixels.
fn averaged(colours: &[[f32; 4]], width: usize, height: usize) -> Image {
    let (across, down) = (width / FINE, height / FINE);
    let mut pixels = Vec::with_capacity(across * down * 4);
    for y in 0..down {
        for x in 0..across {
            let square = (0..FINE * FINE).map(|at| (y * FINE + at / FINE) * width + x * FINE + at % FINE);
            let sum = square.fold([0.0_f32; 4], |sum, at| [0, 1, 2, 3].map(|i| sum[i] + colours[at][i]));
            let covered = (sum[3] / 255.0).max(1e-6);
            pixels.extend([sum[0], sum[1], sum[2]].map(|colour| (colour / covered) as u8));
            pixels.push((sum[3] / (FINE * FINE) as f32) as u8);
        }
    }
    Image { width: across, height: down, pixels }
}

impl Image {
    /// The picture as a PNG file.
    ///
    /// # Errors
    /// When the picture has no pixels, or not as many as its sides say.
    pub fn to_png(&self) -> Result<Vec<u8>, PictureError> {
        let mut file = Vec::new();
        let mut encoder = png::Encoder::new(&mut file, self.width as u32, self.height as u32);
        encoder.set_color(png::ColorType::Rgba);
        encoder.set_depth(png::BitDepth::Eight);
        let written = encoder.write_header().and_then(|mut writer| writer.write_image_data(&self.pixels));
        written.map_err(|error| PictureError::Writing(error.to_string()))?;
        Ok(file)
    }
}
