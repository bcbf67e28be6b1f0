//! An outline somebody drew: an SVG file, the data of an SVG path, or a list of points.

use basket::Length;
use basket::pattern::{rays_to, spanned};
use resvg::usvg::{self, Node, tiny_skia_path::PathSegment};

/// Millimetres in a pixel: an SVG has 96 to the inch (W3C, *Scalable Vector Graphics 2*, 2018, 7.2, by CSS).
const PIXEL: f64 = 25.4 / 96.0;
/// Pieces into which a curve is cut.
const PIECES: u32 = 48;
/// More corners than this are no drawing by hand.
const CORNERS: usize = 5_000;
/// How far ends of a line that closes may lie apart, and how hollow it may be by the hand that drew it.
const CLOSES: f64 = 0.5;
const HOLLOW: f64 = 1.0;
/// Rays that are written.
const RAYS: usize = 72;
/// An outline smaller than this across is a slip of units.
const LEAST: f64 = 10.0;

/// A foot as it was drawn, in mm.
#[derive(Debug)]
pub(crate) struct DrawnOutline {
    /// From its middle to its edge at even steps of angle, beginning at the end of its length.
    pub(crate) rays: Vec<f64>,
    /// Over all.
    pub(crate) size: [f64; 2],
}

/// Why a drawing is no outline: what, and how to mend it.
pub(crate) type Refusal = (String, &'static str);

/// Reads an outline; its length is as drawn, or as given.
pub(crate) fn read(text: &str, length: Option<Length>) -> Result<DrawnOutline, Refusal> {
    let mut corners = only(lines(text)?)?;
    if let Some([first, last]) = corners.first().zip(corners.last()).map(|(first, last)| [*first, *last])
        && apart(first, last) > CLOSES
    {
        return Err((
            format!("its line is open: {:.1} mm lie between its ends", apart(first, last)),
            "Close the line.",
        ));
    }
    corners.dedup_by(|a, b| apart(*a, *b) < 1e-6);
    crossing(&corners)?;
    let hull = spanned(&corners);
    let size = across(&hull);
    if size[0].min(size[1]) < LEAST {
        return Err((
            format!("it is {:.1} by {:.1} mm across", size[0], size[1]),
            "Draw it in millimetres, or give its length with --length.",
        ));
    }
    let turned = size[1] > size[0];
    let scale = length.map_or(1.0, |length| length.to_mm() / size[0].max(size[1]));
    let laid =
        |at: &[f64; 2]| if turned { [at[1] * scale, -at[0] * scale] } else { at.map(|part| part * scale) };
    let corners: Vec<[f64; 2]> = corners.iter().map(laid).collect();
    let hull: Vec<[f64; 2]> = hull.iter().map(laid).collect();
    if let Some(depth) = hollow(&corners, &hull).filter(|depth| *depth > HOLLOW) {
        return Err((
            format!("it is hollow, {depth:.1} mm deep"),
            "Staves and a tape span a hollow: draw the line that a band round the foot takes.",
        ));
    }
    let [low, high] = bounds(&hull);
    let middle = [f64::midpoint(low[0], high[0]), f64::midpoint(low[1], high[1])];
    let centred: Vec<[f64; 2]> = hull.iter().map(|at| [at[0] - middle[0], at[1] - middle[1]]).collect();
    Ok(DrawnOutline { rays: rays_to(&centred, RAYS), size: across(&centred) })
}

/// All lines of a drawing, each as its corners.
fn lines(text: &str) -> Result<Vec<Vec<[f64; 2]>>, Refusal> {
    let svg = if text.trim_start().starts_with('<') { text.to_owned() } else { as_svg(text)? };
    // A drawing that uses its parts again and again can grow without end.
    if ["<use", "<!ENTITY", "<image"].iter().any(|part| svg.contains(part)) {
        return Err((
            "it uses parts of itself or other files".to_owned(),
            "Save it plain, with the outline as one path and nothing else.",
        ));
    }
    let tree = usvg::Tree::from_str(&svg, &usvg::Options::default()).map_err(|error| {
        (format!("this is no SVG drawing: {error}"), "Write an SVG file, the data of its path, or points.")
    })?;
    let mut lines = Vec::new();
    gather(tree.root(), &mut lines)?;
    Ok(lines)
}

/// An SVG of a path's data in mm, or of points, one a line.
fn as_svg(text: &str) -> Result<String, Refusal> {
    let text = text.trim();
    let begins = text.chars().next().unwrap_or(' ');
    let data = if matches!(begins, 'M' | 'm') {
        text.to_owned()
    } else {
        let points: Option<Vec<String>> =
            text.lines().filter(|line| !line.trim().is_empty()).map(point).collect();
        let help = "Write an SVG file, the data of its path, or a point on each line: 12.5, 40";
        format!(
            "M {} Z",
            points.ok_or_else(|| ("neither a drawing nor points".to_owned(), help))?.join(" L ")
        )
    };
    if data.contains(['"', '<', '&']) {
        return Err(("its path has signs that no path has".to_owned(), "Write only the data of the path."));
    }
    Ok(format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"1000mm\" height=\"1000mm\" viewBox=\"0 0 1000 1000\">\
         <path d=\"{data}\"/></svg>"
    ))
}

/// A point of a list: two numbers in mm.
fn point(line: &str) -> Option<String> {
    let numbers: Vec<f64> = line
        .split([',', ';', ' ', '\t'])
        .filter(|part| !part.trim().is_empty())
        .map(|part| part.trim().parse().ok().filter(|number: &f64| number.is_finite()))
        .collect::<Option<_>>()?;
    if let [x, y] = numbers.as_slice() { Some(format!("{x} {y}")) } else { None }
}

fn gather(group: &usvg::Group, lines: &mut Vec<Vec<[f64; 2]>>) -> Result<(), Refusal> {
    for node in group.children() {
        match node {
            Node::Group(inner) => gather(inner, lines)?,
            Node::Path(path) => {
                let Some(data) = path.data().clone().transform(path.abs_transform()) else { continue };
                cut(data.segments(), lines);
                if lines.iter().map(Vec::len).sum::<usize>() > CORNERS {
                    return Err((
                        "it has too many corners".to_owned(),
                        "Draw the outline with fewer points.",
                    ));
                }
            }
            Node::Image(_) | Node::Text(_) => {}
        }
    }
    Ok(())
}

/// Cuts a path's curves into short straight pieces. An SVG counts downward.
fn cut(segments: impl Iterator<Item = PathSegment>, lines: &mut Vec<Vec<[f64; 2]>>) {
    let mm = |at: usvg::tiny_skia_path::Point| [f64::from(at.x) * PIXEL, -f64::from(at.y) * PIXEL];
    for segment in segments {
        if let PathSegment::MoveTo(at) = segment {
            lines.push(vec![mm(at)]);
            continue;
        }
        let Some(line) = lines.last_mut() else { continue };
        let Some([first, from]) = line.first().zip(line.last()).map(|(first, last)| [*first, *last]) else {
            continue;
        };
        let bezier: Vec<[f64; 2]> = match segment {
            PathSegment::MoveTo(_) => continue,
            PathSegment::Close => vec![from, first],
            PathSegment::LineTo(to) => vec![from, mm(to)],
            PathSegment::QuadTo(by, to) => vec![from, mm(by), mm(to)],
            PathSegment::CubicTo(by, over, to) => vec![from, mm(by), mm(over), mm(to)],
        };
        let pieces = if bezier.len() > 2 { PIECES } else { 1 };
        line.extend((1..=pieces).map(|piece| on_curve(&bezier, f64::from(piece) / f64::from(pieces))));
    }
}

/// The place at a share of a Bézier curve (P. de Casteljau, 1959; cited from memory).
fn on_curve(points: &[[f64; 2]], share: f64) -> [f64; 2] {
    let mut points = points.to_vec();
    while points.len() > 1 {
        let next = points.iter().zip(points.iter().skip(1));
        points = next.map(|(a, b)| [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share]).collect();
    }
    points.first().copied().unwrap_or_default()
}

/// The one line of a drawing.
fn only(lines: Vec<Vec<[f64; 2]>>) -> Result<Vec<[f64; 2]>, Refusal> {
    let mut lines: Vec<_> = lines.into_iter().filter(|line| line.len() > 2).collect();
    match lines.len() {
        0 => Err(("it has no outline".to_owned(), "Draw the foot as one closed line.")),
        1 => Ok(lines.remove(0)),
        count => Err((
            format!("it has {count} lines"),
            "Leave the outline of the foot alone in the drawing: one closed line.",
        )),
    }
}

/// Refuses a line that crosses itself.
fn crossing(corners: &[[f64; 2]]) -> Result<(), Refusal> {
    let edges: Vec<[[f64; 2]; 2]> =
        corners.iter().zip(corners.iter().skip(1)).map(|(a, b)| [*a, *b]).collect();
    let count = edges.len();
    for (number, [from, to]) in edges.iter().enumerate() {
        for (other, [start, end]) in edges.iter().enumerate().skip(number + 2) {
            if number == 0 && other + 1 == count {
                continue;
            }
            let beside = |at: &[f64; 2], [a, b]: [&[f64; 2]; 2]| {
                (b[0] - a[0]) * (at[1] - a[1]) - (b[1] - a[1]) * (at[0] - a[0])
            };
            let crosses = beside(start, [from, to]) * beside(end, [from, to]) < 0.0
                && beside(from, [start, end]) * beside(to, [start, end]) < 0.0;
            if crosses {
                return Err((
                    format!("its line crosses itself near {:.0}, {:.0} mm", from[0], -from[1]),
                    "Draw the outline once round.",
                ));
            }
        }
    }
    Ok(())
}

/// How far the deepest corner lies within the hull.
fn hollow(corners: &[[f64; 2]], hull: &[[f64; 2]]) -> Option<f64> {
    let edges: Vec<_> = hull.iter().zip(hull.iter().cycle().skip(1)).collect();
    let inside = |at: &[f64; 2]| {
        let off = |(from, to): &(&[f64; 2], &[f64; 2])| {
            let chord = [to[0] - from[0], to[1] - from[1]];
            (chord[0] * (at[1] - from[1]) - chord[1] * (at[0] - from[0])) / chord[0].hypot(chord[1]).max(1e-9)
        };
        edges.iter().map(off).fold(f64::INFINITY, f64::min)
    };
    corners.iter().map(inside).reduce(f64::max)
}

fn bounds(places: &[[f64; 2]]) -> [[f64; 2]; 2] {
    let part = |axis: usize, pick: fn(f64, f64) -> f64, start: f64| {
        places.iter().filter_map(|at| at.get(axis).copied()).fold(start, pick)
    };
    [
        [part(0, f64::min, f64::INFINITY), part(1, f64::min, f64::INFINITY)],
        [part(0, f64::max, f64::NEG_INFINITY), part(1, f64::max, f64::NEG_INFINITY)],
    ]
}

fn across(places: &[[f64; 2]]) -> [f64; 2] {
    let [low, high] = bounds(places);
    [high[0] - low[0], high[1] - low[1]]
}

fn apart(a: [f64; 2], b: [f64; 2]) -> f64 {
    (a[0] - b[0]).hypot(a[1] - b[1])
}
