//! What line drawings show of solids whose pictures are known.

#[path = "common/meshes.rs"]
mod meshes;

use basket::Piece;
use drawings::lines::{PictureError, Style, View, draw, shaded};
use drawings::solid::Solid;
use drawings::{Drawing, Item};
use kurbo::{BezPath, ParamCurve, PathSeg, Point};
use meshes::{DISC, block, cylinder, solid};

fn cube() -> Solid {
    solid([block(DISC, [-10.0; 3], [10.0; 3])])
}

/// The straight pieces that are drawn.
fn pieces(drawing: &Drawing) -> Vec<[Point; 2]> {
    let paths = drawing.items().iter().filter_map(|item| match item {
        Item::Path { path, line: Some(_), .. } => Some(path),
        _ => None,
    });
    let straight = |segment: PathSeg| [segment.eval(0.0), segment.eval(1.0)];
    paths.flat_map(|path| path.segments().map(straight)).collect()
}

/// Where a place of a solid that is shown whole and level from the front lies on paper.
fn from_front(drawing: &Drawing, low: [f64; 2], high: [f64; 2], place: [f64; 2]) -> Point {
    let frame = drawing.frame();
    let scale = (frame.width() - 2.0) / (high[0] - low[0]);
    Point::new((place[0] - low[0]) * scale, (high[1] - place[1]) * scale)
}

fn is_drawn(drawing: &Drawing, at: Point) -> bool {
    pieces(drawing).iter().any(|ends| {
        let along = ends[1] - ends[0];
        let share = ((at - ends[0]).dot(along) / along.hypot2()).clamp(0.0, 1.0);
        at.distance(ends[0] + along * share) < 0.25
    })
}

/// A box shows three of its sides to an eye that looks along none of them: of its twelve edges the
/// three that meet in the hidden corner are hidden (common knowledge of descriptive geometry).
#[test]
fn a_cube_shows_nine_of_its_twelve_edges() {
    let shown: f64 = {
        let drawing = draw(&cube(), &View::from(30.0, 25.0), &Style::plain(60.0, 60.0)).expect("a picture");
        pieces(&drawing).iter().map(|[from, to]| from.distance(*to)).sum()
    };
    // Length on paper of each edge, by its direction, from the same projection worked by hand.
    let (azimuth, elevation) = (30.0_f64.to_radians(), 25.0_f64.to_radians());
    let x = azimuth.cos().hypot(azimuth.sin() * elevation.sin());
    let y = azimuth.sin().hypot(azimuth.cos() * elevation.sin());
    let z = elevation.cos();
    let wide = azimuth.cos() + azimuth.sin();
    let high = (azimuth.cos() + azimuth.sin()) * elevation.sin() + elevation.cos();
    let scale = 58.0 / wide.max(high);
    let nine = 3.0 * (x + y + z) * scale;
    assert!((shown / nine - 1.0).abs() < 0.02, "{shown} mm are drawn, nine edges are {nine} mm");
}

#[test]
fn a_cube_seen_along_an_axis_is_a_square() {
    let drawing = draw(&cube(), &View::from(0.0, 0.0), &Style::plain(42.0, 42.0)).expect("a picture");
    let shown: f64 = pieces(&drawing).iter().map(|[from, to]| from.distance(*to)).sum();
    assert!((shown - 160.0).abs() < 3.0, "{shown} mm");
}

/// Two strips cross; the one nearer to the eye is drawn through, the other is interrupted there.
#[test]
fn of_two_crossing_strips_exactly_the_lower_is_interrupted() {
    for (near, far) in [(-2.0, 0.0), (2.0, 0.0)] {
        let level = block(Piece::Weaving, [-30.0, near, -3.0], [30.0, near + 1.0, 3.0]);
        let upright = block(Piece::Uprights, [-3.0, far, -30.0], [3.0, far + 1.0, 30.0]);
        let drawing = draw(&solid([level, upright]), &View::from(0.0, 0.0), &Style::plain(62.0, 62.0))
            .expect("a picture");
        let at = |x, z| from_front(&drawing, [-30.0, -30.0], [30.0, 30.0], [x, z]);
        let level_is_on_top = near < far;
        for side in [-3.0, 3.0] {
            assert_eq!(is_drawn(&drawing, at(0.0, side)), level_is_on_top, "edge of the level strip");
            assert_eq!(is_drawn(&drawing, at(side, 0.0)), !level_is_on_top, "edge of the upright strip");
            assert!(is_drawn(&drawing, at(20.0, side)) && is_drawn(&drawing, at(side, 20.0)));
        }
    }
}

#[test]
fn what_stands_behind_is_hidden_and_counted_out() {
    // Twelve posts round a drum that hides those behind it.
    let posts = (0..12).map(|post| {
        let (sine, cosine) = (f32::from(post as u8) * 30.0_f32 + 15.0).to_radians().sin_cos();
        cylinder([40.0 * cosine, 40.0 * sine], 2.0, [0.0, 30.0], 24)
    });
    let all = solid(posts.chain([cylinder([0.0, 0.0], 37.0, [0.0, 50.0], 96)]));
    let drawing = draw(&all, &View::from(0.0, 0.0), &Style::plain(86.0, 60.0)).expect("a picture");
    let middle = 25.0;
    let scale = (drawing.frame().width() - 2.0) / (2.0 * (40.0 * 15.0_f64.to_radians().cos() + 2.0));
    let low = drawing.frame().y1 - 1.0;
    let uprights = pieces(&drawing)
        .iter()
        .filter(|[from, to]| (from.x - to.x).abs() < 0.05 && from.distance(*to) > 20.0 * scale)
        .filter(|[from, to]| {
            let (top, bottom) = (from.y.min(to.y), from.y.max(to.y));
            (top..bottom).contains(&(low - middle * scale))
        })
        .count();
    // Six posts in front with two sides each; the drum's own sides run on behind the outer posts.
    assert_eq!(uprights, 12);
}

#[test]
fn the_outline_of_the_whole_is_heavier_than_edges_within() {
    let front = block(DISC, [-5.0, -8.0, -5.0], [5.0, -6.0, 5.0]);
    let back = block(DISC, [-20.0, 0.0, -20.0], [20.0, 2.0, 20.0]);
    let drawing =
        draw(&solid([front, back]), &View::from(0.0, 0.0), &Style::plain(42.0, 42.0)).expect("a picture");
    let length = |wanted| -> f64 {
        let paths = drawing.items().iter().filter_map(|item| match item {
            Item::Path { path, line, .. } if *line == Some(wanted) => Some(path),
            _ => None,
        });
        paths.flat_map(BezPath::segments).map(|piece| piece.eval(0.0).distance(piece.eval(1.0))).sum()
    };
    assert!((length(drawings::Line::Outline) - 160.0).abs() < 3.0, "{}", length(drawings::Line::Outline));
    assert!((length(drawings::Line::Edge) - 40.0).abs() < 2.0, "{}", length(drawings::Line::Edge));
}

#[test]
fn far_things_look_smaller_from_a_distance() {
    let posts = [0.0, 60.0].map(|y| block(DISC, [-5.0 + y, y, 0.0], [5.0 + y, y + 1.0, 30.0]));
    // From 100 mm before the near post: the middle of both lies 30.5 mm behind its face.
    let view = View::from(0.0, 0.0).at_distance(130.5);
    let drawing = draw(&solid(posts), &view, &Style::plain(80.0, 80.0)).expect("a picture");
    let mut uprights: Vec<(f64, f64)> = pieces(&drawing)
        .iter()
        .filter(|[from, to]| (from.x - to.x).abs() < 0.3 && from.distance(*to) > 5.0)
        .map(|[from, to]| (from.x.midpoint(to.x), from.distance(*to)))
        .collect();
    uprights.sort_by(|a, b| a.0.total_cmp(&b.0));
    let (near, far) = (uprights.first().expect("left").1, uprights.last().expect("right").1);
    // Similar triangles: at 160 and 100 mm from the eye, heights are as 100 to 160.
    assert!((near / far - 1.6).abs() < 0.05, "{near} and {far} mm");
}

#[test]
fn pictures_that_cannot_be_drawn_say_why() {
    let style = Style::plain(60.0, 60.0);
    let unknown = View::named("inside-out").expect_err("no such view");
    assert!(unknown.to_string().contains("inside-out") && unknown.to_string().contains("three-quarter"));
    for (width, height) in [(0.0, 60.0), (60.0, 0.0), (-5.0, 60.0), (f64::NAN, 60.0), (1e9, 60.0)] {
        let error = draw(&cube(), &View::from(0.0, 0.0), &Style::plain(width, height)).expect_err("no size");
        assert!(matches!(error, PictureError::Size { .. }), "{error}");
    }
    assert_eq!(draw(&Solid::default(), &View::from(0.0, 0.0), &style), Err(PictureError::Empty));
    assert!(matches!(draw(&cube(), &View::from(f64::NAN, 0.0), &style), Err(PictureError::View(_))));
    let nowhere = View::from(0.0, 0.0).at_distance(0.0);
    assert!(matches!(draw(&cube(), &nowhere, &style), Err(PictureError::View(_))));
    assert!(matches!(shaded(&cube(), &View::from(0.0, 0.0), 0, 100), Err(PictureError::Pixels { .. })));
}

#[test]
fn meshes_with_broken_places_give_finite_drawings() {
    let mut broken = block(DISC, [0.0; 3], [20.0; 3]);
    broken.mesh.positions[3] = [f32::NAN; 3];
    broken.mesh.triangles.push([0, 1, 99]);
    broken.edges.push(vec![[f32::INFINITY; 3], [0.0; 3]]);
    let all = solid([broken, block(DISC, [-30.0; 3], [-10.0; 3])]);
    for name in View::names() {
        let view = View::named(name).expect("a view").at_distance(25.0);
        let svg = draw(&all, &view, &Style::print(60.0, 60.0)).expect("a picture").to_svg();
        assert!(!svg.contains("NaN") && !svg.contains("inf"), "{name}");
    }
}

#[test]
fn a_small_picture_is_written_the_same_every_time() {
    let parts = || {
        solid([
            cylinder([0.0, 0.0], 20.0, [0.0, 5.0], 48),
            block(Piece::Uprights, [18.0, -3.0, 2.0], [20.0, 3.0, 30.0]),
        ])
    };
    let svg =
        || draw(&parts(), &View::from(25.0, 30.0), &Style::print(40.0, 40.0)).expect("a picture").to_svg();
    assert_eq!(svg(), svg());
    insta::assert_snapshot!(svg());
}

#[test]
fn a_shaded_picture_has_colour_where_the_solid_is() {
    let image = shaded(&cube(), &View::from(30.0, 25.0), 200, 200).expect("a picture");
    let pixel = |x: usize, y: usize| &image.pixels[(y * image.width + x) * 4..][..4];
    assert_eq!(pixel(0, 0)[3], 0, "nothing in the corner");
    let middle = pixel(image.width / 2, image.height / 2);
    assert!(middle[3] == 255 && middle[0] > middle[2], "{middle:?} is opaque and brown");
    let decoder = png::Decoder::new(std::io::Cursor::new(image.to_png().expect("a file")));
    let reader = decoder.read_info().expect("sound PNG");
    assert_eq!((reader.info().width as usize, reader.info().height as usize), (image.width, image.height));
}
