//! True size, from the PDF's own numbers: 1 pt is 1/72 in (ISO 32000-1:2008, 8.3.2.3), so that
//! 100 mm are 283.465 pt and 4 in are 288 pt.

use basket::Length;
use lopdf::content::Content;
use lopdf::{Dictionary, Document, Object};

const POINTS_PER_MM: f64 = 72.0 / 25.4;

/// `[a b c d e f]` as PDF writes it.
type Matrix = [f64; 6];

/// Steps in which a curve is followed.
const STEPS: u32 = 100;

const IDENTITY: Matrix = [1.0, 0.0, 0.0, 1.0, 0.0, 0.0];

fn times(m: Matrix, n: Matrix) -> Matrix {
    [
        m[0] * n[0] + m[1] * n[2],
        m[0] * n[1] + m[1] * n[3],
        m[2] * n[0] + m[3] * n[2],
        m[2] * n[1] + m[3] * n[3],
        m[4] * n[0] + m[5] * n[2] + n[4],
        m[4] * n[1] + m[5] * n[3] + n[5],
    ]
}

fn apply(m: Matrix, (x, y): (f64, f64)) -> (f64, f64) {
    (m[0] * x + m[2] * y + m[4], m[1] * x + m[3] * y + m[5])
}

/// Everything drawn on a page, as width and height of each path in points on the paper.
#[derive(Default)]
struct Paths {
    boxes: Vec<(f64, f64)>,
}

impl Paths {
    fn walk(&mut self, document: &Document, resources: &Dictionary, content: &[u8], start: Matrix) {
        let content = Content::decode(content).expect("the content stream can be read");
        let (mut now, mut stack, mut points) = (start, Vec::new(), Vec::new());
        for operation in content.operations {
            let numbers: Vec<f64> =
                operation.operands.iter().filter_map(|o| o.as_float().ok()).map(f64::from).collect();
            match operation.operator.as_str() {
                "q" => stack.push(now),
                "Q" => now = stack.pop().expect("Q has its q"),
                "cm" => now = times(numbers.try_into().expect("six numbers"), now),
                "m" | "l" => points.push(apply(now, (numbers[0], numbers[1]))),
                "c" => {
                    let start = *points.last().expect("a curve starts somewhere");
                    let [a, b, c] = [0, 2, 4].map(|at| apply(now, (numbers[at], numbers[at + 1])));
                    points.extend((1..=STEPS).map(|step| cubic([start, a, b, c], step)));
                }
                "re" => {
                    let (x, y) = (numbers[0], numbers[1]);
                    points.extend([apply(now, (x, y)), apply(now, (x + numbers[2], y + numbers[3]))]);
                }
                "S" | "s" | "f" | "f*" | "B" | "B*" | "b" | "n" => self.close(&mut points),
                "Do" => self.form(document, resources, &operation.operands[0], now),
                _ => {}
            }
        }
    }

    fn close(&mut self, points: &mut Vec<(f64, f64)>) {
        let span = |pick: fn(&(f64, f64)) -> f64| {
            let low = points.iter().map(pick).fold(f64::INFINITY, f64::min);
            points.iter().map(pick).fold(f64::NEG_INFINITY, f64::max) - low
        };
        if !points.is_empty() {
            self.boxes.push((span(|point| point.0), span(|point| point.1)));
        }
        points.clear();
    }

    fn form(&mut self, document: &Document, resources: &Dictionary, name: &Object, now: Matrix) {
        let forms = dictionary(document, resources.get(b"XObject").expect("forms"));
        let form = forms.get(name.as_name().expect("a name")).expect("the form is there");
        let form = document.dereference(form).expect("it is an object").1.as_stream().expect("a stream");
        if form.dict.get(b"Subtype").and_then(Object::as_name).ok() != Some(b"Form") {
            return;
        }
        let matrix = form.dict.get(b"Matrix").and_then(Object::as_array).map_or(IDENTITY, |array| {
            let numbers: Vec<f64> = array.iter().filter_map(|o| o.as_float().ok()).map(f64::from).collect();
            numbers.try_into().expect("six numbers")
        });
        let own = form.dict.get(b"Resources").map(|object| dictionary(document, object));
        let content = form.decompressed_content().unwrap_or_else(|_| form.content.clone());
        self.walk(document, own.unwrap_or(resources), &content, times(matrix, now));
    }

    /// Whether something of this width and height is drawn, to `within` points.
    fn has(&self, width: f64, height: f64, within: f64) -> bool {
        self.boxes.iter().any(|(w, h)| (w - width).abs() < within && (h - height).abs() < within)
    }
}

/// A point of a Bézier curve.
fn cubic(points: [(f64, f64); 4], step: u32) -> (f64, f64) {
    let t = f64::from(step) / f64::from(STEPS);
    let s = 1.0 - t;
    let weights = [s * s * s, 3.0 * s * s * t, 3.0 * s * t * t, t * t * t];
    let sum = |pick: fn(&(f64, f64)) -> f64| points.iter().zip(weights).map(|(p, w)| pick(p) * w).sum();
    (sum(|point| point.0), sum(|point| point.1))
}

fn dictionary<'a>(document: &'a Document, object: &'a Object) -> &'a Dictionary {
    document.dereference(object).expect("the object is there").1.as_dict().expect("a dictionary")
}

/// Widths and heights of all paths, page by page.
fn pages(pdf: &[u8]) -> Vec<Paths> {
    let document = Document::load_mem(pdf).expect("lopdf opens it");
    let page = |id| {
        let dict = document.get_dictionary(id).expect("a page");
        assert!(dict.get(b"UserUnit").is_err(), "1 unit is 1 pt");
        let resources = dictionary(&document, dict.get(b"Resources").expect("resources"));
        let mut paths = Paths::default();
        let content = document.get_page_content(id);
        paths.walk(&document, resources, &content, IDENTITY);
        paths
    };
    document.get_pages().into_values().map(page).collect()
}

/// The bars to measure are true on every page.
pub(crate) fn assert_bars(templates: &[u8]) {
    let pages = pages(templates);
    assert!(!pages.is_empty());
    for (page, number) in pages.iter().zip(1..) {
        assert!(page.has(100.0 * POINTS_PER_MM, 0.0, 0.02), "page {number} has no bar of 100 mm");
        assert!(page.has(4.0 * 72.0, 0.0, 0.02), "page {number} has no bar of 4 in");
    }
}

/// The disc of the base is true. Four hundredths of a millimetre are left to the curves that stand for the
/// circle.
pub(crate) fn assert_disc(templates: &[u8], diameter: Length) {
    let points = diameter.to_mm() * POINTS_PER_MM;
    assert!(pages(templates).iter().any(|page| page.has(points, points, 0.1)), "no circle of {points} pt");
}
