//! From where a solid is looked at.

use glam::DVec3;

use crate::lines::PictureError;

/// The names that [`View::named`] knows.
const NAMED: [(&str, f64, f64); 7] = [
    ("front", 0.0, 0.0),
    ("side", 90.0, 0.0),
    ("back", 180.0, 0.0),
    ("top", 0.0, 90.0),
    ("bottom", 0.0, -90.0),
    ("three-quarter", 28.0, 24.0),
    ("three-quarter-below", 28.0, -24.0),
];

/// A part of space that a picture is cut to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Region {
    /// Its middle, in mm.
    pub middle: [f64; 3],
    /// Half its width on the picture, in mm of the basket.
    pub half_width: f64,
    /// Half its height on the picture, in mm of the basket.
    pub half_height: f64,
}

/// A direction to look from, what to look at, and whether far things look smaller.
///
/// Azimuth 0 looks from the front, along y, with the x axis to the right; it rises counter-clockwise
/// seen from above. An elevation of 90 looks straight down.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct View {
    /// Turn about the upright axis, in degrees.
    pub azimuth: f64,
    /// How far from above, in degrees.
    pub elevation: f64,
    /// Distance of the eye from the middle of what is shown, in mm; none draws all things to one scale.
    pub distance: Option<f64>,
    /// The part to show; none shows all.
    pub region: Option<Region>,
    /// Whether the base is drawn at the top, as it stands on the mould. The basket is turned over
    /// about the y axis, so that its front stays in front; the angles are those of the picture.
    pub base_up: bool,
}

impl View {
    /// All from a direction, to one scale. Angles in degrees.
    pub const fn from(azimuth: f64, elevation: f64) -> Self {
        Self { azimuth, elevation, distance: None, region: None, base_up: false }
    }

    /// A view by name: `front`, `side`, `back`, `top`, `bottom`, `three-quarter` or
    /// `three-quarter-below`.
    ///
    /// # Errors
    /// When there is no view of that name; the error lists those there are.
    pub fn named(name: &str) -> Result<Self, PictureError> {
        let found = NAMED.iter().find(|(known, ..)| *known == name);
        found.map(|(_, azimuth, elevation)| Self::from(*azimuth, *elevation)).ok_or_else(|| {
            PictureError::Unknown {
                what: "view",
                name: name.to_owned(),
                known: Self::names().collect::<Vec<_>>().join(", "),
            }
        })
    }

    /// The names of all named views.
    pub fn names() -> impl Iterator<Item = &'static str> {
        NAMED.iter().map(|(name, ..)| *name)
    }

    /// The same with far things smaller, seen from this far, in mm.
    #[must_use]
    pub const fn at_distance(self, distance: f64) -> Self {
        Self { distance: Some(distance), ..self }
    }

    /// The same, cut to a region: a close-up.
    #[must_use]
    pub const fn close_up(self, region: Region) -> Self {
        Self { region: Some(region), ..self }
    }

    /// The same with the base at the top.
    #[must_use]
    pub const fn base_up(self) -> Self {
        Self { base_up: true, ..self }
    }

    /// Right, up and toward the eye.
    pub(crate) fn axes(&self) -> [DVec3; 3] {
        let (azimuth, elevation) = (self.azimuth.to_radians(), self.elevation.to_radians());
        let out = DVec3::new(azimuth.sin(), -azimuth.cos(), 0.0);
        let right = DVec3::new(azimuth.cos(), azimuth.sin(), 0.0);
        let toward = out * elevation.cos() + DVec3::Z * elevation.sin();
        let up = toward.cross(right);
        let turned = |axis: DVec3| if self.base_up { DVec3::new(-axis.x, axis.y, -axis.z) } else { axis };
        [right, up, toward].map(turned)
    }

    /// Whether it can be looked along.
    pub(crate) fn check(&self) -> Result<(), PictureError> {
        if !self.azimuth.is_finite() || !self.elevation.is_finite() {
            return Err(PictureError::View("an angle is not a number"));
        }
        if self.distance.is_some_and(|distance| !distance.is_finite() || distance <= 0.0) {
            return Err(PictureError::View("the distance is not above 0"));
        }
        let Some(region) = self.region else { return Ok(()) };
        let sound = region.middle.iter().all(|place| place.is_finite());
        let positive = |half: f64| half.is_finite() && half > 1e-3;
        if sound && positive(region.half_width) && positive(region.half_height) {
            Ok(())
        } else {
            Err(PictureError::View("the region has no size or place"))
        }
    }
}
