//! A drawing as a value: shapes and labels in millimetres of paper, x to the right and y down.

use basket::limits::ELEMENTS;
use kurbo::{Affine, BezPath, Point, Rect, Shape, Vec2};

/// How closely round shapes are approached by curves, in mm.
pub(crate) const TOLERANCE: f64 = 0.01;

/// What a line stands for; decides its weight and dashes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Line {
    /// Outline of what is cut or cut out.
    Outline,
    /// Edge of what is seen.
    Edge,
    /// Edge of a small part among many.
    Fine,
    /// What lies behind or is shown in another position.
    Hidden,
    /// Axis or middle line.
    Centre,
    /// Dimension and pointer.
    Dimension,
}

impl Line {
    /// Weight in mm.
    pub const fn weight(self) -> f64 {
        match self {
            Self::Outline => 0.45,
            Self::Edge => 0.25,
            Self::Fine => 0.1,
            Self::Hidden => 0.2,
            Self::Centre | Self::Dimension => 0.15,
        }
    }
    /// Dashes and gaps in mm; empty for a line without gaps.
    pub(crate) const fn dashes(self) -> &'static str {
        match self {
            Self::Hidden => "1.6 0.9",
            Self::Centre => "4 0.8 0.6 0.8",
            _ => "",
        }
    }
}

/// What fills a shape: greys that stay apart when printed in black and white, or a dye.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Tone {
    /// Paper; covers what lies below.
    White,
    /// Wood that is seen.
    Pale,
    /// Wood that is cut.
    Light,
    /// Shade.
    Mid,
    /// Deep shade.
    Dark,
    /// Ink.
    Black,
    /// A colour of cane or reed: red, green, blue.
    Dyed([u8; 3]),
}

impl Tone {
    /// Red, green, blue.
    pub(crate) const fn rgb(self) -> [u8; 3] {
        match self {
            Self::White => [0xff; 3],
            Self::Pale => [0xee; 3],
            Self::Light => [0xd4; 3],
            Self::Mid => [0xa0; 3],
            Self::Dark => [0x5a; 3],
            Self::Black => [0; 3],
            Self::Dyed(rgb) => rgb,
        }
    }
}

/// Which part of a label lies at its place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Anchor {
    /// Its beginning.
    Start,
    /// Its middle.
    Middle,
    /// Its end.
    End,
}

/// A line of text.
#[derive(Clone, Debug, PartialEq)]
pub struct Label {
    /// What it says.
    pub text: String,
    /// Its place; the label's half height lies here.
    pub at: Point,
    /// Which part of it lies at its place.
    pub anchor: Anchor,
    /// Height of the type in mm.
    pub size: f64,
    /// Turn about its place, in degrees clockwise.
    pub turn: f64,
    /// Whether it is set in bold.
    pub bold: bool,
}

impl Label {
    /// Usual height of type, in mm (8.5 pt).
    pub const SIZE: f64 = 3.0;
    /// Smallest height of type, in mm: 8 pt, the least that is read at the bench without effort (common
    /// practice).
    pub const SMALL: f64 = 2.83;
    /// Height of the type of headings within a drawing, in mm.
    pub const HEADING: f64 = 3.4;
    /// Width of a usual letter as a share of the height of type (from measuring Libertinus Serif).
    const LETTER: f64 = 0.47;
    /// The same of the widest type that stands in where that one is missing (from measuring `DejaVu` Serif, which
    /// browsers fall back on).
    const WIDEST_LETTER: f64 = 0.6;

    /// A label of the usual size, level, that begins at a place.
    pub fn new(text: impl Into<String>, at: impl Into<Point>) -> Self {
        Self {
            text: text.into(),
            at: at.into(),
            anchor: Anchor::Start,
            size: Self::SIZE,
            turn: 0.0,
            bold: false,
        }
    }
    /// The same, anchored otherwise.
    #[must_use]
    pub fn anchored(mut self, anchor: Anchor) -> Self {
        self.anchor = anchor;
        self
    }
    /// The same, with its middle at its place.
    #[must_use]
    pub fn middle(self) -> Self {
        self.anchored(Anchor::Middle)
    }
    /// The same, with its end at its place.
    #[must_use]
    pub fn end(self) -> Self {
        self.anchored(Anchor::End)
    }
    /// The same in another height of type.
    #[must_use]
    pub fn sized(mut self, size: f64) -> Self {
        self.size = size;
        self
    }
    /// The same, turned clockwise by degrees.
    #[must_use]
    pub fn turned(mut self, degrees: f64) -> Self {
        self.turn = degrees;
        self
    }
    /// The same in bold.
    #[must_use]
    pub fn bold(mut self) -> Self {
        self.bold = true;
        self
    }
    /// About how wide the text is, in mm.
    pub fn width(&self) -> f64 {
        self.text.chars().count() as f64 * self.size * Self::LETTER
    }
    /// About what the label covers.
    pub fn bounds(&self) -> Rect {
        self.bounds_of(self.width())
    }
    /// The same in the widest type that may stand in.
    pub(crate) fn reach(&self) -> Rect {
        self.bounds_of(self.width() * Self::WIDEST_LETTER / Self::LETTER)
    }
    fn bounds_of(&self, width: f64) -> Rect {
        let left = match self.anchor {
            Anchor::Start => 0.0,
            Anchor::Middle => -width / 2.0,
            Anchor::End => -width,
        };
        let level = Rect::new(left, -self.size * 0.5, left + width, self.size * 0.5);
        let place = Affine::translate(self.at.to_vec2()) * Affine::rotate(self.turn.to_radians());
        place.transform_rect_bbox(level)
    }
    fn is_placed(&self) -> bool {
        self.at.is_finite() && self.turn.is_finite() && self.size.is_finite()
    }
}

/// A shape or a label.
#[derive(Clone, Debug, PartialEq)]
pub enum Item {
    /// A shape, filled first, then stroked.
    Path {
        /// Its curve.
        path: BezPath,
        /// How its edge is drawn.
        line: Option<Line>,
        /// What fills it.
        tone: Option<Tone>,
    },
    /// A label.
    Label(Label),
}

impl Item {
    /// About what it covers.
    pub fn bounds(&self) -> Rect {
        match self {
            Self::Path { path, line, .. } => {
                let half = line.map_or(0.0, Line::weight) / 2.0;
                path.bounding_box().inflate(half, half)
            }
            Self::Label(label) => label.bounds(),
        }
    }
}

/// A drawing, or a window onto one.
#[derive(Clone, Debug, PartialEq)]
pub struct Drawing {
    /// Short name, fit for a file: `section`, `strip-rim-2`.
    pub name: String,
    /// What it shows, in a few words.
    pub title: String,
    /// What it shows, for those who cannot see it.
    pub description: String,
    pub(crate) frame: Rect,
    pub(crate) upright: Option<f64>,
    pub(crate) items: Vec<Item>,
    /// Points and curves of all shapes, those that were too many among them.
    pub(crate) elements: usize,
}

impl Drawing {
    /// An empty drawing.
    pub fn new(name: impl Into<String>, title: impl Into<String>, description: impl Into<String>) -> Self {
        Self {
            name: name.into(),
            title: title.into(),
            description: description.into(),
            frame: Rect::ZERO,
            upright: None,
            items: Vec::new(),
            elements: 0,
        }
    }
    /// Adds a shape that is filled and stroked.
    pub fn shape(&mut self, shape: impl Shape, tone: Tone, line: Line) {
        self.add_path(shape.to_path(TOLERANCE), Some(line), Some(tone));
    }
    /// Adds a filled shape.
    pub fn fill(&mut self, shape: impl Shape, tone: Tone) {
        self.add_path(shape.to_path(TOLERANCE), None, Some(tone));
    }
    /// Adds a stroked shape.
    pub fn stroke(&mut self, shape: impl Shape, line: Line) {
        self.add_path(shape.to_path(TOLERANCE), Some(line), None);
    }
    /// Adds a straight line.
    pub fn line(&mut self, from: impl Into<Point>, to: impl Into<Point>, line: Line) {
        self.stroke(kurbo::Line::new(from, to), line);
    }
    /// Adds a label; one without text or place is left out.
    pub fn label(&mut self, label: Label) {
        if label.is_placed() && !label.text.is_empty() && !self.is_overfull() {
            self.items.push(Item::Label(label));
        }
    }
    /// Adds all that another drawing shows, moved.
    pub fn add(&mut self, other: Self, by: impl Into<Vec2>) {
        let by = by.into();
        if other.is_overfull() {
            (self.elements, self.items) = (other.elements, Vec::new());
        }
        for item in other.items {
            match item {
                Item::Path { path, line, tone } => {
                    self.add_path(Affine::translate(by) * path, line, tone);
                }
                Item::Label(label) => self.label(Label { at: label.at + by, ..label }),
            }
        }
    }
    /// A shape that a pattern at odds with itself leaves without a place is not drawn.
    fn add_path(&mut self, path: BezPath, line: Option<Line>, tone: Option<Tone>) {
        if path.elements().is_empty() || !path.is_finite() {
            return;
        }
        self.elements = self.elements.saturating_add(path.elements().len());
        if self.is_overfull() {
            self.items = Vec::new();
        } else {
            self.items.push(Item::Path { path, line, tone });
        }
    }
    /// Whether it was to show more than is drawn; then it shows nothing.
    pub(crate) fn is_overfull(&self) -> bool {
        self.elements > ELEMENTS
    }
    /// What it shows, in the order of drawing.
    pub fn items(&self) -> &[Item] {
        &self.items
    }
    /// The same, known to show a basket from the side, to a scale, with the mould's base at the origin.
    #[must_use]
    pub(crate) fn upright(mut self, scale: f64) -> Self {
        self.upright = Some(scale);
        self
    }
    /// To which scale it shows a basket that stands upright with the mould's base at the origin; none if
    /// it shows something else.
    pub fn upright_scale(&self) -> Option<f64> {
        self.upright
    }
    /// The part of the plane that it shows, in mm.
    pub fn frame(&self) -> Rect {
        self.frame
    }
    /// Width in mm.
    pub fn width(&self) -> f64 {
        self.frame.width()
    }
    /// Height in mm.
    pub fn height(&self) -> f64 {
        self.frame.height()
    }
    /// About what all items cover.
    pub fn bounds(&self) -> Rect {
        self.items.iter().map(Item::bounds).reduce(|all, one| all.union(one)).unwrap_or(Rect::ZERO)
    }
    /// The same drawing, its frame set to what it holds and a margin: labels are not cut off at its edge even
    /// in the widest type.
    #[must_use]
    pub fn fitted(mut self, margin: f64) -> Self {
        let reach = |item: &Item| match item {
            Item::Path { .. } => item.bounds(),
            Item::Label(label) => label.reach(),
        };
        let all = self.items.iter().map(reach).reduce(|all, one| all.union(one));
        self.frame = all.unwrap_or(Rect::ZERO).inflate(margin, margin);
        self
    }
    /// What is seen of it through a window; items that lie wholly outside are left out, and so are labels that
    /// its edge would cut.
    #[must_use]
    pub fn window(&self, window: Rect) -> Self {
        let touches = |item: &&Item| match item {
            Item::Path { .. } => window.overlaps(item.bounds()),
            Item::Label(label) => holds(window, label.bounds()),
        };
        Self {
            frame: window,
            items: self.items.iter().filter(touches).cloned().collect(),
            ..self.clone_empty()
        }
    }
    fn clone_empty(&self) -> Self {
        let empty = Self::new(self.name.clone(), self.title.clone(), self.description.clone());
        Self { upright: self.upright, ..empty }
    }
}

/// Whether one rectangle lies wholly within another.
pub(crate) fn holds(outer: Rect, inner: Rect) -> bool {
    outer.union(inner) == outer
}

/// A path through points, left open.
pub(crate) fn open(points: impl IntoIterator<Item = Point>) -> BezPath {
    let mut path = BezPath::new();
    for point in points {
        if path.elements().is_empty() {
            path.move_to(point);
        } else {
            path.line_to(point);
        }
    }
    path
}

/// A path through points and back to the first.
pub(crate) fn closed(points: impl IntoIterator<Item = Point>) -> BezPath {
    let mut path = open(points);
    if !path.elements().is_empty() {
        path.close_path();
    }
    path
}
