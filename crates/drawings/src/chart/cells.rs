//! Staves and weavers of a chart. All that has one colour is one shape, so that large charts stay small.

use basket::weave::{Course, Row};
use kurbo::{BezPath, Point, Rect, Shape};

use super::palette::Palette;
use super::plane::{ChartKind, Plane};
use crate::drawing::{Drawing, Line, Tone, closed};

/// Share of its row that a weaver covers.
const COVERED: f64 = 0.92;

/// The gaps and, before them, the staves, from the foot of the wall to the top of the weaving.
pub(super) fn staves(drawing: &mut Drawing, plane: &Plane<'_>, palette: &Palette<'_>) {
    let edge = |side: f64| {
        plane.rows().flat_map(move |row| row_edge(plane, row, side * plane.girth(row.along) / 2.0))
    };
    let outline = closed(edge(-1.0).chain(edge(1.0).collect::<Vec<_>>().into_iter().rev()));
    drawing.fill(outline, Tone::Mid);
    let mut shapes = vec![BezPath::new(); palette.colours().count()];
    let mut hatches = shapes.clone();
    for stave in 0..plane.count {
        let index = palette.index(plane.basket.body.weave.stave_colour(stave + 1));
        let side = |out: f64| {
            plane.rows().flat_map(move |row| {
                let middle = plane.x(f64::from(stave), plane.girth(row.along));
                row_edge(plane, row, middle + out * plane.half_stave(row))
            })
        };
        let right: Vec<Point> = side(1.0).collect();
        add(&mut shapes, index, closed(side(-1.0).chain(right.into_iter().rev())));
        for row in plane.rows() {
            hatch(&mut hatches, index, stave_cell(plane, row, stave));
        }
    }
    for (index, _) in palette.colours() {
        fill(drawing, shapes.get(index), palette.stave(index));
        fill(drawing, hatches.get(index), Tone::Black);
    }
}

fn row_edge(plane: &Plane<'_>, row: &Row, x: f64) -> [Point; 2] {
    let (bottom, top) = plane.heights(row);
    [Point::new(x, bottom), Point::new(x, top)]
}

fn stave_cell(plane: &Plane<'_>, row: &Row, stave: u32) -> Rect {
    let middle = plane.x(f64::from(stave), plane.girth(row.along));
    let (half, (bottom, top)) = (plane.half_stave(row), plane.heights(row));
    Rect::new(middle - half, top, middle + half, bottom)
}

/// The weavers where they are seen.
pub(super) fn weaving(drawing: &mut Drawing, plane: &Plane<'_>, palette: &Palette<'_>) {
    let mut shapes = vec![BezPath::new(); palette.colours().count()];
    let mut hatches = shapes.clone();
    for row in plane.rows() {
        let Some(course) = plane.basket.body.weave.course_of(row.number) else { continue };
        for run in runs(plane, course, row) {
            lay(plane, palette, course, row, &run, &mut shapes, &mut hatches);
        }
    }
    for (index, _) in palette.colours() {
        if let Some(shape) = shapes.get(index).filter(|shape| !shape.is_empty()) {
            drawing.shape(shape.clone(), palette.tone(index), Line::Fine);
        }
        fill(drawing, hatches.get(index), Tone::Black);
    }
    if plane.kind == ChartKind::Grid {
        grid(drawing, plane);
    }
}

/// Staves in a row, from 0, over which the same is seen.
struct Run {
    first: u32,
    last: u32,
}

/// The stretches of a row along which one weaver in one colour is seen.
fn runs(plane: &Plane<'_>, course: &Course, row: &Row) -> Vec<Run> {
    let weave = &plane.basket.body.weave;
    let seen = |stave: u32| weave.colour(row.number, stave + 1, plane.face);
    let parted = is_twined(course) || plane.kind == ChartKind::Grid;
    let mut runs: Vec<Run> = Vec::new();
    let mut before = None;
    for stave in 0..plane.count {
        let now = seen(stave);
        if now.weaver.is_some() {
            match runs.last_mut().filter(|_| before == Some(now) && !parted) {
                Some(run) => run.last = stave,
                None => runs.push(Run { first: stave, last: stave }),
            }
        }
        before = Some(now);
    }
    runs
}

/// Lays a run of weaver: one band, or several where weavers lie side by side in a row.
fn lay(
    plane: &Plane<'_>,
    palette: &Palette<'_>,
    course: &Course,
    row: &Row,
    run: &Run,
    shapes: &mut [BezPath],
    hatches: &mut [BezPath],
) {
    let within = row.number - course.first_row;
    let colours: Vec<usize> = if is_twined(course) {
        vec![palette.index(plane.basket.body.weave.colour(row.number, run.first + 1, plane.face).colour)]
    } else {
        let side_by_side = course.side_by_side(within, run.first);
        side_by_side.iter().map(|seen| palette.index(seen.colour)).collect()
    };
    let strands = colours.len().max(1) as f64;
    // Spaced rows do not touch.
    let covered = COVERED.min(1.0 - course.space / row.pitch);
    for (number, &index) in colours.iter().enumerate() {
        let strip = |whole: Rect| {
            let height = whole.height() / strands;
            let bottom = whole.y1 - height * number as f64;
            let spare = if plane.kind == ChartKind::Grid { 0.0 } else { height * (1.0 - covered) / 2.0 };
            Rect::new(whole.x0, bottom - height + spare, whole.x1, bottom - spare)
        };
        add(shapes, index, strip(plane.piece(row, run.first, run.last)).to_path(0.01));
        for stave in run.first..=run.last {
            hatch(hatches, index, strip(stave_cell(plane, row, stave)));
        }
    }
}

/// Twined weavers change at each stave.
fn is_twined(course: &Course) -> bool {
    course.fabric.twined() > 1
}

fn grid(drawing: &mut Drawing, plane: &Plane<'_>) {
    let mut lines = BezPath::new();
    let Some(row) = plane.rows().next() else { return };
    let half = plane.girth(row.along) / 2.0;
    for stave in 0..=plane.count {
        let x = plane.x(f64::from(stave) - 0.5, 2.0 * half);
        lines.move_to((x, plane.foot()));
        lines.line_to((x, plane.top()));
    }
    for bottom in plane.rows().map(|row| plane.heights(row).0).chain([plane.top()]) {
        lines.move_to((-half, bottom));
        lines.line_to((half, bottom));
    }
    drawing.stroke(lines, Line::Fine);
}

fn add(shapes: &mut [BezPath], index: usize, shape: BezPath) {
    if let Some(all) = shapes.get_mut(index) {
        all.extend(shape);
    }
}

fn hatch(hatches: &mut [BezPath], index: usize, cell: Rect) {
    if let Some(all) = hatches.get_mut(index) {
        Palette::hatch(index, cell, all);
    }
}

fn fill(drawing: &mut Drawing, shape: Option<&BezPath>, tone: Tone) {
    if let Some(shape) = shape.filter(|shape| !shape.is_empty()) {
        drawing.fill(shape.clone(), tone);
    }
}
