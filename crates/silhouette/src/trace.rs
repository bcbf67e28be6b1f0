//! From a picture to girths.

use std::f64::consts::TAU;

use crate::background::{Difference, Picture};
use crate::edges::{Axis, Edge, Edges};
use crate::failed::Failed;
use crate::shape::Found;
use crate::side::{Profile, View};

/// Times that the scale is found anew: the nearer the eye, the more it depends on the shape.
const ROUNDS: u32 = 8;
/// How far a distance that was not measured may be off.
const GUESSED: f64 = 1.3;
/// How far to trust a good picture, as a share of the diameter: with a taped girth, and without.
const TRUST: [f64; 2] = [0.003, 0.01];
/// An undercut of less than this share of the diameter is the picture's and not the mould's.
const INVENTED: f64 = 0.004;
/// How near the girths' straight connection lies to the side, as a share of the diameter.
const NEAR: f64 = 0.0015;
/// Most girths that are given.
const MOST_GIRTHS: usize = 24;

/// Where the picture was taken from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Camera {
    /// Distance of the lens from the mould's axis, in mm.
    pub distance_mm: f64,
    /// Whether it was measured, or is a guess.
    pub is_measured: bool,
    /// Whether the mould stood on its rim, foot up.
    pub foot_up: bool,
}

/// What is known of the mould's size.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Known {
    /// The girth at its widest place, in mm.
    Girth(f64),
    /// Its height, in mm.
    Height(f64),
}

/// A mould as traced.
#[derive(Clone, Debug, PartialEq)]
pub struct Traced {
    /// Height above the foot and girth there, in mm, from below upward.
    pub girths: Vec<[f64; 2]>,
    /// The side, finely.
    pub side: Side,
    /// How far to trust it, as a share of the diameter.
    pub trust: f64,
    /// By how much both sides of the mould differ in most places, as a share of the diameter.
    pub lopsided: f64,
    /// Whether an undercut too small to be told from the picture's own faults was smoothed away.
    pub smoothed: bool,
    /// The axis in the picture.
    pub axis: Axis,
    /// Its edges in the picture.
    pub edges: Vec<Edge>,
}

/// Radii at even heights from foot to top, in mm.
#[derive(Clone, Debug, PartialEq)]
pub struct Side {
    /// The height.
    pub height: f64,
    /// The radii.
    pub radii: Vec<f64>,
}

/// Traces a mould.
///
/// # Errors
///
/// Says why the picture cannot be traced.
pub fn trace(picture: &Picture<'_>, camera: Camera, known: Known) -> Result<Traced, Failed> {
    let (Known::Girth(size) | Known::Height(size)) = known;
    let sane = |length: f64| (1.0..1e6).contains(&length);
    if !sane(size) || !sane(camera.distance_mm) {
        return Err(Failed::NoSize);
    }
    let difference = Difference::of(picture)?;
    let found = Found::of(&difference)?;
    let edges = Edges::of(&difference, &found)?;
    let middle = [(difference.width - 1) as f64 / 2.0, (difference.height - 1) as f64 / 2.0];
    let up = edges.axis.seen(middle)[0];
    let profile = sized(&edges, (camera.distance_mm, up), known)?;
    let across = 2.0 * profile.widest();
    let doubt =
        if camera.is_measured { 0.0 } else { doubt(&edges, (camera.distance_mm, up), known, &profile)? };
    let profile = if camera.foot_up { profile.turned_over() } else { profile };
    let smoothed = (1e-9..INVENTED * across).contains(&profile.undercut());
    let apart = profile.apart / across;
    let profile = if smoothed { profile.without_undercut() } else { profile };
    let trust = match known {
        Known::Girth(_) => TRUST[0],
        Known::Height(_) => TRUST[1],
    };
    Ok(Traced {
        girths: profile.knots(NEAR * across, MOST_GIRTHS).into_iter().map(|[up, r]| [up, TAU * r]).collect(),
        trust: trust + doubt + apart / 2.0,
        lopsided: apart,
        smoothed,
        axis: edges.axis,
        edges: edges.places,
        side: Side { height: profile.height, radii: profile.radii },
    })
}

/// The side in the size that is known, seen from a distance in mm and a height in pixels.
fn sized(edges: &Edges, (distance, up): (f64, f64), known: Known) -> Result<Profile, Failed> {
    let measured = |profile: &Profile| match known {
        Known::Girth(girth) => girth / (TAU * profile.widest()),
        Known::Height(height) => height / profile.height,
    };
    let mut scale = match known {
        Known::Girth(girth) => {
            girth / TAU / edges.places.iter().flat_map(|edge| edge.sides).fold(1.0, f64::max)
        }
        Known::Height(height) => height / (edges.ends[1] - edges.ends[0]),
    };
    for _ in 0..ROUNDS {
        let profile = Profile::of(edges, View { scale, distance, up }).ok_or(Failed::Nothing)?;
        scale *= measured(&profile);
        if !scale.is_finite() || profile.widest() >= distance / 1.5 {
            return Err(Failed::NoSize);
        }
    }
    Profile::of(edges, View { scale, distance, up }).ok_or(Failed::Nothing)
}

/// How much the side changes, as a share of the diameter, where the camera stood nearer or farther.
fn doubt(edges: &Edges, (distance, up): (f64, f64), known: Known, profile: &Profile) -> Result<f64, Failed> {
    let mut most = 0.0_f64;
    for distance in [distance / GUESSED, distance * GUESSED] {
        let other = sized(edges, (distance, up), known)?;
        let apart = profile.radii.iter().zip(&other.radii).map(|(a, b)| (a - b).abs());
        most = most.max(apart.fold(0.0, f64::max) / (2.0 * profile.widest()));
    }
    Ok(most)
}
