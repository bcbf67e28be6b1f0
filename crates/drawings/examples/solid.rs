//! Writes a basket in the round as GLB, STL and 3MF, and shaded pictures of it, for looking at.
//!
//! `cargo run --release --example solid -- PATTERN FOLDER [STAGE [AZIMUTH ELEVATION ZOOM [X Y Z]]]`

use std::path::Path;

use basket::steps::Stage;
use drawings::solid::{Detail, Solid, glb, solid, stl, three_mf};
use glam::Vec3;
use resvg::tiny_skia::{ColorU8, Pixmap};

const SIZE: usize = 1100;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let [pattern, folder, rest @ ..] = &arguments[..] else { return Err("PATTERN FOLDER".into()) };
    let catalogue = basket::stock::Catalogue::built_in();
    let read = basket::pattern::read(&std::fs::read_to_string(pattern)?, catalogue);
    let read = read.map_err(|problems| format!("{problems:?}"))?;
    let basket = basket::assemble(&read, catalogue);
    let stage = stage(rest.first().map_or("finished", String::as_str)).ok_or("unknown stage")?;
    let start = std::time::Instant::now();
    let solid = solid(&basket, stage, Detail::Full);
    println!("{} parts, {} triangles, {:?}", solid.parts.len(), solid.triangles(), start.elapsed());
    let folder = Path::new(folder);
    let name =
        Path::new(pattern).file_stem().map_or_else(String::new, |stem| stem.to_string_lossy().into_owned());
    let name = format!("{name}-{stage:?}").to_lowercase();
    for (end, file) in [("glb", glb(&solid)), ("stl", stl(&solid)), ("3mf", three_mf(&solid)?)] {
        println!("{end} {} bytes", file.len());
        std::fs::write(folder.join(format!("{name}.{end}")), file)?;
    }
    let figure =
        |index: usize, usual: f32| rest.get(index).and_then(|text| text.parse().ok()).unwrap_or(usual);
    let to = Vec3::new(figure(4, f32::NAN), figure(5, 0.0), figure(6, 0.0));
    let view = View { azimuth: figure(1, 30.0), elevation: figure(2, 25.0), zoom: figure(3, 1.0), to };
    let picture = view.picture(&solid);
    picture.save_png(folder.join(format!("{name}.png")))?;
    Ok(())
}

fn stage(name: &str) -> Option<Stage> {
    use Stage::{
        BaseOnMould, EarsSet, Finished, FirstRows, HalfWoven, Handled, Lashed, Pinned, Prepared, RimClamped,
        StavesSet, Woven,
    };
    [
        Prepared,
        BaseOnMould,
        StavesSet,
        FirstRows,
        HalfWoven,
        Woven,
        EarsSet,
        RimClamped,
        Pinned,
        Lashed,
        Handled,
        Finished,
    ]
    .into_iter()
    .find(|stage| format!("{stage:?}").to_lowercase() == name)
}

/// A view from far away: degrees round and above, zoom, and the place in the middle (all if not a number).
struct View {
    azimuth: f32,
    elevation: f32,
    zoom: f32,
    to: Vec3,
}

impl View {
    fn picture(&self, solid: &Solid) -> Pixmap {
        let corners =
            || solid.parts.iter().flat_map(|part| part.mesh.positions.iter().map(|at| Vec3::from(*at)));
        let low = corners().fold(Vec3::INFINITY, Vec3::min);
        let high = corners().fold(Vec3::NEG_INFINITY, Vec3::max);
        let middle = if self.to.x.is_nan() { (low + high) / 2.0 } else { self.to };
        let scale = SIZE as f32 / (high - low).length() * 1.15 * self.zoom;
        let (azimuth, elevation) = (self.azimuth.to_radians(), self.elevation.to_radians());
        let toward =
            Vec3::new(elevation.cos() * azimuth.cos(), elevation.cos() * azimuth.sin(), elevation.sin());
        let right = Vec3::Z.cross(toward).normalize_or(Vec3::Y);
        let up = toward.cross(right);
        let light = (toward + up * 0.7 - right * 0.5).normalize();
        let mut depth = vec![f32::NEG_INFINITY; SIZE * SIZE];
        let mut pixels = vec![[255_u8; 3]; SIZE * SIZE];
        let half = SIZE as f32 / 2.0;
        for part in &solid.parts {
            let at = |index: u32| Vec3::from(part.mesh.positions[index as usize]) - middle;
            for triangle in &part.mesh.triangles {
                let [a, b, c] = triangle.map(at);
                let normal = (b - a).cross(c - a).normalize_or_zero();
                // Back faces show up red: a mesh that is inside out is seen at once.
                let front = normal.dot(toward) > 0.0;
                let shade = 0.35 + 0.65 * normal.dot(light).max(0.0);
                let colour = if front {
                    part.colour.map(|figure| (f32::from(figure) * shade) as u8)
                } else {
                    [255, 0, 0]
                };
                let [a, b, c] = [a, b, c].map(|at| {
                    Vec3::new(half + right.dot(at) * scale, half - up.dot(at) * scale, toward.dot(at))
                });
                fill([a, b, c], |index, near| {
                    if near > depth[index] {
                        depth[index] = near;
                        pixels[index] = colour;
                    }
                });
            }
        }
        let mut picture = Pixmap::new(SIZE as u32, SIZE as u32).expect("a picture of fixed size");
        for (pixel, [red, green, blue]) in picture.pixels_mut().iter_mut().zip(pixels) {
            *pixel = ColorU8::from_rgba(red, green, blue, 255).premultiply();
        }
        picture
    }
}

fn fill([a, b, c]: [Vec3; 3], mut pixel: impl FnMut(usize, f32)) {
    let area = (b - a).truncate().perp_dot((c - a).truncate());
    if area == 0.0 {
        return;
    }
    let least = a.min(b).min(c).max(Vec3::ZERO);
    let most = a.max(b).max(c).min(Vec3::splat(SIZE as f32 - 1.0));
    for y in least.y as usize..=most.y.max(0.0) as usize {
        for x in least.x as usize..=most.x.max(0.0) as usize {
            let at = Vec3::new(x as f32 + 0.5, y as f32 + 0.5, 0.0);
            let share =
                |one: Vec3, other: Vec3| (one - at).truncate().perp_dot((other - at).truncate()) / area;
            let (u, v, w) = (share(b, c), share(c, a), share(a, b));
            if u >= 0.0 && v >= 0.0 && w >= 0.0 {
                pixel(y * SIZE + x, a.z * u + b.z * v + c.z * w);
            }
        }
    }
}
