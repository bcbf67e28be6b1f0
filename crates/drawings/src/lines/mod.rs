//! Line drawings of a solid from any side, hidden lines removed.
//!
//! A raster of depths says what is nearest to the eye; the lines themselves are never rasters: the
//! contour of every part comes from its mesh, its other edges from [`Part::edges`](crate::solid::Part),
//! and each is kept where it is seen. So the picture is sharp at any size.

mod both;
mod buffer;
mod camera;
mod contour;
pub(crate) mod hue;
mod light;
mod outline;
mod problem;
mod region;
mod scene;
mod shade;
mod sight;
mod simplify;
mod style;
mod thin;
mod view;

use glam::{DVec3, Vec3};
use kurbo::{BezPath, Point, Rect};

use crate::drawing::{Drawing, Line, Tone, open};
use crate::lines::both::both;
use crate::lines::buffer::Buffer;
use crate::lines::camera::Room;
use crate::lines::scene::Scene;
use crate::lines::sight::Sight;
use crate::lines::simplify::simplified;
use crate::lines::thin::Drawn;
use crate::solid::{Part, Solid};
pub use problem::PictureError;
pub use shade::{Image, shaded};
pub use style::{PartStyle, Style};
pub use view::{Region, View};

/// How far a line may leave its true course, in mm of paper.
const TOLERANCE: f64 = 0.025;
/// The same for the outline, which comes in steps of a pixel, in pixels.
const OUTLINE_TOLERANCE: f64 = 0.8;
/// Least size of a patch of tone, in square mm of paper.
const LEAST_PATCH: f64 = 0.08;

/// A solid in lines: its outline heavy, contours and edges by the weight of their part, in light
/// tones where the style has them.
///
/// The same solid, view and style give the same drawing to the bit. It has no name, title or
/// description yet.
///
/// # Errors
/// When the view looks from nowhere, the picture has no size, or nothing is in sight.
pub fn draw(solid: &Solid, view: &View, style: &Style) -> Result<Drawing, PictureError> {
    picture(solid, view, style).map(|(drawing, _)| drawing)
}

/// Where places of a solid lie on a drawing of it.
pub struct Placed {
    plane: camera::Plane,
    camera: camera::Camera,
    buffer: Buffer,
}

impl Placed {
    /// Where a point of the basket lies on the drawing, and whether it is seen; none for one behind
    /// the eye.
    pub fn find(&self, point: [f64; 3]) -> Option<(Point, bool)> {
        let place = self.plane.place(DVec3::from(point).as_vec3())?;
        let pixel = self.camera.pixel_of(place);
        let seen = self.buffer.sees(pixel, 0.5);
        Some((self.camera.paper(pixel.x, pixel.y), seen))
    }
}

/// The same, and where things lie on it: for labels and pointers.
///
/// # Errors
/// As [`draw`].
pub fn picture(solid: &Solid, view: &View, style: &Style) -> Result<(Drawing, Placed), PictureError> {
    picture_of(solid.parts.iter().collect(), view, style)
}

/// Paper left free round a picture at a density of its raster, in mm.
pub(crate) fn margin(density: f64) -> f64 {
    camera::BORDER / density
}

/// The same of parts that may belong to several solids.
pub(crate) fn picture_of(
    parts: Vec<&Part>,
    view: &View,
    style: &Style,
) -> Result<(Drawing, Placed), PictureError> {
    style.check()?;
    let margin = margin(style.density);
    let room = Room {
        width: (style.width - 2.0 * margin).max(1.0),
        height: (style.height - 2.0 * margin).max(1.0),
        density: style.density,
    };
    let scene = Scene::of(parts, view, room)?;
    let looks: Vec<PartStyle> = scene.parts.iter().map(|part| (style.look)(part)).collect();
    let (buffer, contours) = both(|| Buffer::of(&scene), || contour::contours(&scene));
    let (tones, lines) =
        both(|| tones(&scene, &buffer, &looks), || lines(&scene, &buffer, &looks, &contours, style));
    let mut drawing = Drawing::new("picture", "", "");
    for (path, tone) in tones {
        drawing.fill(path, tone);
    }
    for (path, line) in lines {
        drawing.stroke(path, line);
    }
    let (width, height) = (scene.camera.width, scene.camera.height);
    let corners = [scene.camera.paper(0.0, 0.0), scene.camera.paper(width as f32, height as f32)];
    drawing.frame = Rect::from_points(corners[0], corners[1]);
    if drawing.items.is_empty() && !drawing.is_overfull() {
        return Err(PictureError::Empty);
    }
    let (plane, camera) = (scene.plane, scene.camera);
    Ok((drawing, Placed { plane, camera, buffer }))
}

fn tones(scene: &Scene<'_>, buffer: &Buffer, looks: &[PartStyle]) -> Vec<(BezPath, Tone)> {
    let mut palette: Vec<Tone> = Vec::new();
    for tone in looks.iter().flat_map(|look| [look.lit, look.shaded]).flatten() {
        if !palette.contains(&tone) {
            palette.push(tone);
        }
    }
    if palette.is_empty() {
        return Vec::new();
    }
    let classes = light::tones(scene, buffer, looks, &palette);
    let cell = light::cell();
    let least = LEAST_PATCH / (cell * scene.camera.pixel).powi(2);
    let place = |x: f64, y: f64| scene.camera.paper((x * cell) as f32, (y * cell) as f32);
    let common = classes.most_common().filter(|_| palette.len() > 1);
    let common = common.and_then(|class| palette.get(usize::from(class) - 1));
    let ground = common.map(|tone| (classes.whole().regions(1, least, place), *tone));
    let regions = palette.iter().zip(1..=u8::MAX);
    let regions = regions.map(|(tone, class)| (classes.regions(class, least, place), *tone));
    ground.into_iter().chain(regions).filter(|(path, _)| !path.elements().is_empty()).collect()
}

fn lines(
    scene: &Scene<'_>,
    buffer: &Buffer,
    looks: &[PartStyle],
    contours: &[(u32, Vec<u32>)],
    style: &Style,
) -> Vec<(BezPath, Line)> {
    let sight = Sight::of(buffer, scene.camera);
    let mut strokes = Strokes::of(scene, style.clear);
    for piece in outline::outline(buffer, scene.camera) {
        strokes.add(style.outline, OUTLINE_TOLERANCE * scene.camera.pixel, &piece);
    }
    let contours = || -> Vec<(Line, Vec<Point>)> {
        let runs = contours.iter().flat_map(|(part, corners)| {
            let line: Vec<Vec3> = corners.iter().map(|corner| scene.corners[*corner as usize]).collect();
            let weight = looks[*part as usize].edge.unwrap_or(Line::Edge);
            sight.contour(&line, scene).into_iter().map(move |run| (weight, run))
        });
        runs.collect()
    };
    let edges = || -> Vec<(Line, Vec<Point>)> {
        let drawn = scene.parts.iter().zip(looks).filter_map(|(part, look)| Some((part, look.edge?)));
        let lines = drawn.flat_map(|(part, weight)| part.edges.iter().map(move |edge| (edge, weight)));
        let runs = lines.flat_map(|(edge, weight)| {
            let line: Vec<Vec3> = edge.iter().map(|at| scene.pixel(*at)).collect();
            sight.runs(&line).into_iter().map(move |run| (weight, run))
        });
        runs.collect()
    };
    let (mut inner, edges) = both(contours, edges);
    inner.extend(edges);
    // Heavier and longer lines first: where lines crowd, they are the ones to stay.
    inner.sort_by_key(|(_, run)| std::cmp::Reverse(run.len()));
    for weight in [Line::Edge, Line::Fine] {
        for (line, run) in inner.iter().filter(|(line, _)| *line == weight) {
            strokes.add(*line, TOLERANCE, run);
        }
    }
    strokes.paths.into_iter().filter(|(path, _)| !path.elements().is_empty()).collect()
}

/// What has been drawn, by weight from light to heavy.
struct Strokes {
    drawn: Drawn,
    paths: [(BezPath, Line); 3],
}

impl Strokes {
    fn of(scene: &Scene<'_>, clear: f64) -> Self {
        let camera = &scene.camera;
        let size = (camera.width as f64 * camera.pixel, camera.height as f64 * camera.pixel);
        let drawn = Drawn::keeping(clear, camera.paper(0.0, 0.0), size);
        Self { drawn, paths: [Line::Fine, Line::Edge, Line::Outline].map(|line| (BezPath::new(), line)) }
    }

    /// Adds the parts of a line that keep clear of what has been drawn.
    fn add(&mut self, line: Line, tolerance: f64, points: &[Point]) {
        for part in self.drawn.admit(points) {
            if let Some((path, _)) = self.paths.iter_mut().find(|(_, weight)| *weight == line) {
                path.extend(open(simplified(&part, tolerance)));
            }
        }
    }
}
