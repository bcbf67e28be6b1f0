//! A drawing cut into tiles that fit on a page and join by marks in their overlaps; bars that show
//! whether the printer keeps true size.

use basket::Length;
use basket::limits::TILES;
use basket::pattern::Units;
use kurbo::{Point, Rect};
use words::Words;

use crate::drawing::{Drawing, Item, Label, Line, Tone, holds};
use crate::plain::{Why, left_out};

/// Half the length of a cross's arms, in mm.
const ARM: f64 = 2.5;

/// The size of tiles.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TileSize {
    /// Most width.
    pub width: Length,
    /// Most height.
    pub height: Length,
    /// What neighbours share.
    pub overlap: Length,
}

/// A drawing as tiles of at most this size, row by row. The strip that neighbours share carries, in both, the
/// same crosses and the letter of the join. A label that an edge would cut stands whole in the neighbour, or is
/// moved in from the edge. A drawing that fits on one page comes back as it is; in the place of one that would be
/// joined from too many pages stands a plain one that says so.
pub fn tiles(drawing: &Drawing, size: TileSize, words: &Words) -> Vec<Drawing> {
    let overlap = size.overlap.to_mm();
    let columns = Cuts::of(drawing.frame().x0, drawing.width(), size.width.to_mm(), overlap);
    let rows = Cuts::of(drawing.frame().y0, drawing.height(), size.height.to_mm(), overlap);
    let count = columns.count.saturating_mul(rows.count);
    if count == 1 {
        return vec![drawing.clone()];
    }
    if count as usize > TILES {
        return vec![left_out(drawing, words, &Why::Tiles(count))];
    }
    let windows: Vec<Rect> = (0..rows.count)
        .flat_map(|row| (0..columns.count).map(move |column| (row, column)))
        .map(|at| window(&columns, &rows, at))
        .collect();
    let mut marked = marked(drawing, &columns, &rows);
    moved_in(&mut marked, &windows);
    let mut tiles = Vec::new();
    for (window, number) in windows.into_iter().zip(1..) {
        let mut tile = marked.window(window);
        tile.name = format!("{}-{number}", drawing.name);
        tile.title = format!("{} {number}/{count}", drawing.title);
        tiles.push(tile);
    }
    tiles
}

/// What the tile of a row and a column shows.
fn window(columns: &Cuts, rows: &Cuts, (row, column): (u32, u32)) -> Rect {
    let ((x0, x1), (y0, y1)) = (columns.span(column), rows.span(row));
    Rect::new(x0, y0, x1, y1)
}

/// Moves each label that no window would show whole into the one that shows most of it.
fn moved_in(drawing: &mut Drawing, windows: &[Rect]) {
    for item in &mut drawing.items {
        let Item::Label(label) = item else { continue };
        let bounds = label.bounds();
        if windows.iter().any(|window| holds(*window, bounds)) {
            continue;
        }
        let shown = |window: &&Rect| window.intersect(bounds).area();
        let Some(window) = windows.iter().max_by(|a, b| shown(a).total_cmp(&shown(b))) else { continue };
        let by = |from: f64, to: f64, low: f64, high: f64| (low - from).max(0.0) + (high - to).min(0.0);
        label.at.x += by(bounds.x0, bounds.x1, window.x0, window.x1);
        label.at.y += by(bounds.y0, bounds.y1, window.y0, window.y1);
    }
}

/// How one side is cut.
struct Cuts {
    from: f64,
    length: f64,
    most: f64,
    overlap: f64,
    count: u32,
}

impl Cuts {
    fn of(from: f64, length: f64, most: f64, overlap: f64) -> Self {
        let step = most - overlap;
        let needed = if length <= most || step <= 0.0 { 1.0 } else { ((length - overlap) / step).ceil() };
        let count = (needed as u32).max(1);
        Self { from, length, most, overlap, count }
    }
    /// Where a tile begins and ends; all tiles are of one size.
    fn span(&self, tile: u32) -> (f64, f64) {
        let size = if self.count == 1 { self.length } else { self.size() };
        let start = self.from + f64::from(tile) * (size - self.overlap);
        (start, start + size)
    }
    fn size(&self) -> f64 {
        let even = (self.length + f64::from(self.count - 1) * self.overlap) / f64::from(self.count);
        even.min(self.most)
    }
    /// The middle of each overlap.
    fn joins(&self) -> impl Iterator<Item = f64> {
        (1..self.count).map(|tile| self.span(tile).0 + self.overlap / 2.0)
    }
    /// Where crosses stand on a join along this side: in the tile's quarters, so that each tile
    /// has two.
    fn stations(&self) -> impl Iterator<Item = f64> {
        (0..self.count).flat_map(|tile| {
            let (start, end) = self.span(tile);
            [0.2, 0.8].map(|share| start + (end - start) * share)
        })
    }
}

/// The drawing with crosses and letters on its joins.
fn marked(drawing: &Drawing, columns: &Cuts, rows: &Cuts) -> Drawing {
    let mut marked = drawing.clone();
    let mut letters = 0;
    let mut join = |marked: &mut Drawing, crosses: Vec<Point>| {
        for cross in &crosses {
            cross_at(marked, *cross);
        }
        for pair in crosses.chunks_exact(2) {
            if let [from, to] = pair {
                letter_at(marked, from.midpoint(*to), letters);
            }
        }
        letters += 1;
    };
    for x in columns.joins() {
        join(&mut marked, rows.stations().map(|y| Point::new(x, y)).collect());
    }
    for y in rows.joins() {
        join(&mut marked, columns.stations().map(|x| Point::new(x, y)).collect());
    }
    marked
}

fn cross_at(drawing: &mut Drawing, at: Point) {
    drawing.stroke(kurbo::Circle::new(at, ARM * 0.5), Line::Dimension);
    drawing.line((at.x - ARM, at.y), (at.x + ARM, at.y), Line::Dimension);
    drawing.line((at.x, at.y - ARM), (at.x, at.y + ARM), Line::Dimension);
}

/// The letter of a join: A to Z, then AA, AB and on.
fn letter_at(drawing: &mut Drawing, at: Point, number: u32) {
    drawing.shape(kurbo::Circle::new(at, 2.4), Tone::White, Line::Dimension);
    drawing.label(Label::new(letters(number), at).middle().bold());
}

fn letters(number: u32) -> String {
    let last = char::from(b'A' + (number % 26) as u8);
    if number < 26 { last.to_string() } else { format!("{}{last}", letters(number / 26 - 1)) }
}

/// A bar of 100 mm and one of 4 in, to measure after printing.
pub fn check_bars(words: &Words) -> Drawing {
    let mut drawing =
        Drawing::new("check-bars", words.term("drawing-bars"), words.term("drawing-bars-description"));
    let says = |length, units| Words::new(words.language(), units).length(length);
    let (metric, inches) = (Length::mm(100.0), Length::inches(4.0));
    let text = says(metric, Units::Millimetres);
    bar(&mut drawing, 4.0, &Bar { length: metric, parts: 10, text });
    let text = says(inches, Units::Inches);
    bar(&mut drawing, 12.0, &Bar { length: inches, parts: 16, text });
    drawing.fitted(1.0)
}

struct Bar {
    length: Length,
    parts: u32,
    text: String,
}

fn bar(drawing: &mut Drawing, y: f64, bar: &Bar) {
    let length = bar.length.to_mm();
    drawing.line((0.0, y), (length, y), Line::Edge);
    for part in 0..=bar.parts {
        let x = length * f64::from(part) / f64::from(bar.parts);
        let height = match part {
            _ if part == 0 || part == bar.parts => 3.0,
            _ if part % (bar.parts / 4).max(1) == 0 && bar.parts == 16 => 2.0,
            _ if part == 5 && bar.parts == 10 => 2.0,
            _ => 1.2,
        };
        drawing.line((x, y), (x, y - height), Line::Edge);
    }
    drawing.label(Label::new(bar.text.as_str(), (length + 2.0, y - 1.2)));
}
