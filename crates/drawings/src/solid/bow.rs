//! The bow of a handle: a strap swept along its curve, whole, slotted at its ends, or in two halves.

use basket::fittings;
use glam::Vec2;

use super::detail::Detail;
use super::shape::Shape;
use super::stand::Stand;

/// A bow on its feet.
pub(super) struct Bow<'a> {
    pub(super) curve: &'a fittings::Bow,
    pub(super) stand: &'a Stand,
    /// How far above its feet it is straight, so that what bears on it lies flat.
    pub(super) straight: f32,
    pub(super) detail: Detail,
}

/// One layer of a bow.
pub(super) struct Strap<'a> {
    /// Its thickness.
    pub(super) thick: f32,
    /// How far its middle at the feet lies outside what it stands on.
    pub(super) out: f32,
    /// How far it lies outside the bow's middle line, by height above the feet.
    pub(super) offset: &'a dyn Fn(f32) -> f32,
}

/// A place on a bow's middle line: distance from the middle, height, half its width there.
type Place = [f32; 3];

impl Bow<'_> {
    /// One layer from the first end over the top to the other.
    pub(super) fn strap(&self, end: &[Place], strap: &Strap<'_>) -> Shape {
        let mut line = end.to_vec();
        line.extend(self.half());
        self.sweep(&mirrored(line), strap)
    }

    /// A bow with a slot in each end: the bow above the slots, and two cheeks at each foot.
    pub(super) fn slotted(&self, end: &[Place], slot: f32) -> Shape {
        let (span, half) = (self.span(), self.curve.width.to_mm() as f32 / 2.0);
        let thick = self.curve.thickness.to_mm() as f32;
        let cheek = (thick - slot) / 2.0;
        let top = [span, self.straight, half];
        let above: Vec<Place> =
            std::iter::once(top).chain(self.half().filter(|place| place[1] > self.straight)).collect();
        let body = self.sweep(&mirrored(above), &Strap { thick, out: 0.0, offset: &|_| 0.0 });
        let mut foot = end.to_vec();
        foot.extend([[span, 0.0, half], top]);
        let other: Vec<Place> = foot.iter().rev().map(|[x, y, half]| [-x, *y, *half]).collect();
        let aside = f32::midpoint(slot, cheek);
        [(&foot, aside), (&foot, -aside), (&other, aside), (&other, -aside)].into_iter().fold(
            body,
            |whole, (line, aside)| {
                whole.and(self.sweep(line, &Strap { thick: cheek, out: 0.0, offset: &|_| aside }))
            },
        )
    }

    fn span(&self) -> f32 {
        self.curve.half_span.to_mm() as f32
    }

    /// The half of the curve above the first foot, from there to the middle.
    fn half(&self) -> impl Iterator<Item = Place> {
        let steps = match self.detail {
            Detail::Full => 40,
            Detail::Page | Detail::Column => 20,
            Detail::Thumbnail => 10,
        };
        let (span, half, straight) = (self.span(), self.curve.width.to_mm() as f32 / 2.0, self.straight);
        self.curve.bail().into_iter().flat_map(move |bail| {
            (0..=steps).map(move |step| {
                let (x, y) = bail.point(f64::from(step) / f64::from(steps));
                let (x, y) = (x.to_mm() as f32, y.to_mm() as f32);
                [if y < straight { span } else { x }, y, half]
            })
        })
    }

    /// Sections along a line.
    pub(super) fn sections(&self, line: &[Place], strap: &Strap<'_>) -> Vec<[f32; 3]> {
        let section = section(strap.thick, self.detail);
        let at = |index: usize| line[index.min(line.len() - 1)];
        let span = self.span();
        // Feet that do not quite face each other stand nearer than a diameter.
        let shift = self.stand.half + strap.out - span;
        (0..line.len())
            .flat_map(|index| {
                let [before, here, after] = [at(index.saturating_sub(1)), at(index), at(index + 1)];
                let way = Vec2::new(after[0] - before[0], after[1] - before[1]).normalize_or(Vec2::Y);
                // From the middle line outward, away from the basket's middle below.
                let out = Vec2::new(way.y, -way.x);
                let offset = (strap.offset)(here[1]);
                let pull = shift * (here[0] / span.max(1e-3)).clamp(-1.0, 1.0);
                section.iter().map(move |[across, thick]| {
                    let thick = thick + offset;
                    self.stand.point(
                        here[0] + out.x * thick + pull,
                        across * here[2],
                        here[1] + out.y * thick,
                    )
                })
            })
            .collect()
    }

    fn sweep(&self, line: &[Place], strap: &Strap<'_>) -> Shape {
        let per = section(strap.thick, self.detail).len();
        Shape::long(self.sections(line, strap), per)
    }
}

/// A half with its mirror image.
fn mirrored(mut line: Vec<Place>) -> Vec<Place> {
    let other: Vec<Place> = line.iter().rev().skip(1).map(|[x, y, half]| [-x, *y, *half]).collect();
    line.extend(other);
    line
}

/// The rounded end below the first pivot, as distance from the middle, height and half width.
pub(super) fn end(bow: &fittings::Bow) -> Vec<Place> {
    let span = bow.half_span.to_mm() as f32;
    let half = bow.width.to_mm() as f32 / 2.0;
    let below = (bow.beyond().to_mm() as f32).max(0.5);
    let rounding = half.min(below);
    (0..=5_u8)
        .map(|step| {
            let (sin, cos) = (std::f32::consts::FRAC_PI_2 * (0.1 + 0.9 * f32::from(step) / 5.0)).sin_cos();
            [span, -below + rounding * (1.0 - cos), half * sin]
        })
        .collect()
}

/// A strap's section with its edges broken, as (across from −1 to 1, out in mm), counter-clockwise
/// seen from ahead.
fn section(thick: f32, detail: Detail) -> Vec<[f32; 2]> {
    let half = thick / 2.0;
    if detail == Detail::Thumbnail {
        return vec![[-1.0, -half], [-1.0, half], [1.0, half], [1.0, -half]];
    }
    let (inner, outer) = (0.84, 0.6 * half);
    vec![
        [-inner, -half],
        [-1.0, -outer],
        [-1.0, outer],
        [-inner, half],
        [inner, half],
        [1.0, outer],
        [1.0, -outer],
        [inner, -half],
    ]
}
