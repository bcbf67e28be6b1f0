//! How a taut weaver goes round stiff staves: how much longer that makes it, and how hard it bends.
//!
//! The weaver's middle line lies on the outer face of one stave, half the weaver's thickness off it,
//! runs straight across the gap and lies on the inner face of the next stave. Where the straight part
//! leans by φ from the wall it touches both staves, so that with the pitch `p`, the weaver's thickness
//! `t` and the breadth `B(φ)` of a stave's section between two lines of that lean
//!
//! ```text
//! p sin φ = B(φ) + t
//! L = p cos φ + ∫₀^φ (B + t) dψ
//! ```
//!
//! is where it leaves the stave and how long it is from the middle of one stave to the middle of the next
//! (derived here: the arc of a convex outline between two of its normals is the integral of its support
//! function and that function's second derivative, after Cauchy). It does not matter which face of a stave
//! looks out, for a weaver goes over the one as often as over the other.

use std::f64::consts::FRAC_PI_2;

use crate::form::Form;
use crate::measure::Length;
use crate::stock::Kind;
use crate::uprights::Uprights;

/// Radius of a flat strip's edges as a share of its thickness: they are broken by a light sanding and
/// bevelled on the smooth face (L. Day Perry, *Seat Weaving*, 1917, p. 57, for the bevel; the share from
/// memory, low confidence).
const STRIP_EDGE: f64 = 0.25;
/// How much of a cane's thickness its glossy face is arched by (from memory, low confidence).
const CANE_ARCH: f64 = 0.5;
/// No section is thinner or thicker than this many times its width.
const SLENDER: f64 = 1000.0;
/// An arch below this has no length, in mm.
const LEAST_ARCH: f64 = 1e-9;
/// No stave and no weaver of any basket is wider, in mm.
const WIDEST: f64 = 1e5;

/// By how much going over and under lengthens a weaver, as shares of its way round.
///
/// It is the least certain figure of a basket: the hand, the edges of the staves and how wet they are all
/// tell. The upper end is the taut way round the stave's own section; the lower end is round an ellipse as
/// wide and as thick, which staves come to that are thinned at their edges (common practice).
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct TakeUp {
    /// The lower end.
    pub least: f64,
    /// The upper end; amounts and cut lengths are for this one.
    pub most: f64,
}

/// A convex section of a stave, as the sum of a rectangle, a circle and half ellipses, whose breadths add up.
/// Millimetres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StaveSection {
    /// Width and height of the rectangle.
    across: f64,
    upright: f64,
    /// Diameter of the circle.
    round: f64,
    /// How many faces are arched as half an ellipse of this half width and height.
    arched: f64,
    half: f64,
    arch: f64,
}

impl StaveSection {
    /// The section of a stave cut from stock of this kind.
    ///
    /// Flat oval and half round reed have one flat face and the other arched as half an ellipse; so has cane,
    /// but its arch takes only half of its thickness; flat reed and splint are strips with slightly rounded
    /// edges; everything else is round.
    pub fn of(kind: Kind, width: Length, thickness: Length) -> Self {
        match kind {
            Kind::FlatOvalReed | Kind::HalfRoundReed => Self::arched(width, thickness, thickness),
            Kind::ChairCane | Kind::BinderCane => Self::arched(width, thickness, thickness * CANE_ARCH),
            Kind::FlatReed | Kind::Splint => Self::strip(width, thickness, thickness * STRIP_EDGE),
            Kind::RoundReed | Kind::Pin | Kind::Rivet | Kind::Burr => Self::ellipse(width, thickness),
        }
    }

    /// A rectangle whose edges are rounded by a radius, up to half its thickness (a race track).
    pub fn strip(width: Length, thickness: Length, edge: Length) -> Self {
        let (width, thickness) = (sound(width), sound(thickness));
        let round = (2.0 * sound(edge)).min(width).min(thickness);
        let (across, upright) = (width - round, thickness - round);
        Self { across, upright, round, arched: 0.0, half: 0.0, arch: 0.0 }
    }

    /// An ellipse; with equal axes a circle.
    pub fn ellipse(width: Length, thickness: Length) -> Self {
        let (half, arch) = half_axes(sound(width) / 2.0, sound(thickness) / 2.0);
        Self { across: 0.0, upright: 0.0, round: 0.0, arched: 2.0, half, arch }
    }

    /// A flat back, upright edges and a face arched by so much of the thickness as half an ellipse.
    pub fn arched(width: Length, thickness: Length, arch: Length) -> Self {
        let (across, thickness) = (sound(width) / 2.0, sound(thickness));
        let (half, arch) = half_axes(across, sound(arch).min(thickness));
        Self { across, upright: (thickness - arch).max(0.0), round: 0.0, arched: 1.0, half, arch }
    }

    /// Length of a taut weaver from the middle of a stave's outer face to the middle of the next one's inner
    /// face.
    ///
    /// Never shorter than the pitch, and finite for every input: lengths that make no sense count as none, and
    /// so does a gap less than none. In a gap that is narrower than the weaver it is jammed: it turns a
    /// quarter round on each stave and goes straight through the wall.
    pub fn way(&self, gap: Length, weaver: Length) -> Length {
        let (gap, weaver) = (sound(gap), sound(weaver));
        let pitch = self.width() + gap;
        let (lean, sin, cos) = if gap > weaver {
            let slope = self.slope(pitch, weaver);
            let slant = (1.0 + slope * slope).sqrt();
            (libm::atan(slope), slope / slant, 1.0 / slant)
        } else {
            (FRAC_PI_2, 1.0, 0.0)
        };
        let on_faces = self.across * (1.0 - cos) + self.upright * sin + (self.round + weaver) * lean;
        let on_arches = self.arched * under_an_arch(self.half, self.arch, sin, cos);
        Length::mm((pitch * cos + on_faces + on_arches).max(pitch))
    }

    const fn width(&self) -> f64 {
        self.across + self.round + self.arched * self.half
    }

    /// Tangent of the lean at which the weaver crosses a gap wider than itself.
    ///
    /// Divided by cos φ the condition is convex in the tangent and falls from its value at none, so that
    /// Newton's steps from there come to the first root from below and never pass it.
    fn slope(&self, pitch: f64, weaver: f64) -> f64 {
        let steepest = 1e9;
        let (half, turned) = (self.half * self.half, self.round + weaver);
        let mut slope: f64 = 0.0;
        for _ in 0..60 {
            let slant = (1.0 + slope * slope).sqrt();
            let arch = (half * slope * slope + self.arch * self.arch).sqrt().max(f64::MIN_POSITIVE);
            let excess = self.upright + turned * slant + self.arched * arch - (pitch - self.across) * slope;
            let fall = pitch - self.across - (turned / slant + self.arched * half / arch) * slope;
            let step = excess / fall;
            if step <= slope * 1e-12 {
                break;
            }
            slope = (slope + step).min(steepest);
        }
        slope
    }
}

/// A weaver and the pitch of staves that it crosses.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Crossing {
    /// What the staves are cut from.
    pub kind: Kind,
    /// Width of a stave there.
    pub width: Length,
    /// Thickness of a stave.
    pub thickness: Length,
    /// Gap to the next stave; less than none counts as none.
    pub gap: Length,
    /// Thickness of the weaver.
    pub weaver: Length,
}

impl Crossing {
    /// The crossing this far along the mould, on the middle of the staves.
    pub fn at(along: Length, form: &Form, uprights: &Uprights, weaver: Length) -> Self {
        let width = uprights.width_at(along);
        let gap = uprights.pitch(form, along) - width;
        Self { kind: uprights.kind, width, thickness: uprights.thickness, gap, weaver }
    }

    /// By how much a weaver that changes sides in every gap is longer than its way round.
    pub fn take_up(&self) -> TakeUp {
        let pitch = (sound(self.width) + sound(self.gap)).max(1e-6);
        let share =
            |section: StaveSection| (section.way(self.gap, self.weaver).to_mm() / pitch - 1.0).max(0.0);
        let most = share(StaveSection::of(self.kind, self.width, self.thickness));
        TakeUp { least: share(StaveSection::ellipse(self.width, self.thickness)).min(most), most }
    }

    /// Radius of the weaver's middle line where it bends hardest.
    ///
    /// A cane is no thread: it does not follow a sharp edge but takes the gentlest way that there is room for,
    /// two arcs that meet in the middle of the gap, `R = (P² + D²)/(4D)`, where `D` is the thickness of
    /// stave and weaver together and `P` what is left of the pitch when the weaver lies flat on the stave's
    /// width less its thickness: the stave's edges are taken as well rounded. A jammed weaver bends round half
    /// of `D`. Positive and finite for every input. Derived here.
    pub fn tightest(&self) -> Length {
        let (width, thickness) = (sound(self.width), sound(self.thickness));
        let flat = (width - thickness).max(0.0);
        let deep = (thickness + sound(self.weaver)).max(1e-6);
        let across = (width + sound(self.gap) - flat).max(deep);
        Length::mm((across * across + deep * deep) / (4.0 * deep))
    }

    /// Strain of the weaver's outer face at its [tightest](Self::tightest), `t/(2R)`.
    pub fn strain(&self) -> f64 {
        sound(self.weaver) / (2.0 * self.tightest().to_mm())
    }
}

/// A length in mm that makes sense: finite, not negative.
const fn sound(length: Length) -> f64 {
    length.to_mm().max(0.0).min(WIDEST)
}

/// Half axes that are not slender beyond reckoning.
const fn half_axes(half: f64, arch: f64) -> (f64, f64) {
    (half.max(arch / SLENDER), arch.max(half / SLENDER))
}

/// Integral of the support function `√(a² sin² ψ + c² cos² ψ)` of an ellipse over its normals from ψ = 0.
///
/// Legendre's integral of the second kind in symmetric form, by duplication (B. C. Carlson, "Computing
/// Elliptic Integrals by Duplication", *Numerische Mathematik* 33 (1979), 1–16).
fn under_an_arch(half: f64, arch: f64, sin: f64, cos: f64) -> f64 {
    if half.max(arch) < LEAST_ARCH {
        return 0.0;
    }
    let [half, arch] = [half * half, arch * arch];
    let (mut x, mut y, mut z) = (arch * cos * cos, half * sin * sin + arch * cos * cos, arch);
    let (mut sum, mut share) = (0.0, 1.0);
    for _ in 0..60 {
        let shift = (x * y).sqrt() + (y * z).sqrt() + (z * x).sqrt();
        sum += share / (z.sqrt() * (z + shift));
        share /= 4.0;
        (x, y, z) = ((x + shift) / 4.0, (y + shift) / 4.0, (z + shift) / 4.0);
        if (x - z).abs().max((y - z).abs()) < 1e-4 * z {
            break;
        }
    }
    let first = 1.0 / ((x + y + z) / 3.0).sqrt();
    let mean = (x + y + 3.0 * z) / 5.0;
    let second = 3.0 * sum + share / (mean * mean.sqrt());
    arch * sin * (first + (half - arch) * sin * sin * second / 3.0)
}
