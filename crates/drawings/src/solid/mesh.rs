//! Closed meshes by sweeping a section along a path.

use glam::Vec3;

use super::Mesh;

/// How a sweep ends.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Ends {
    /// A flat cap on each end.
    Capped,
    /// The last section joins the first.
    Joined,
}

impl Mesh {
    /// A surface through sections of `per` corners each, laid one after the other in `positions`.
    /// Seen from ahead, looking back along the path, each section runs counter-clockwise; capped
    /// sections are convex.
    pub(super) fn swept(positions: Vec<[f32; 3]>, per: usize, ends: Ends) -> Self {
        let sections = positions.len() / per.max(1);
        if per < 3 || sections < 2 {
            return Self::default();
        }
        let spans = if ends == Ends::Joined { sections } else { sections - 1 };
        let mut triangles = Vec::with_capacity(2 * per * spans + 2 * (per - 2));
        for span in 0..spans {
            let (here, next) = ((span * per) as u32, ((span + 1) % sections * per) as u32);
            for corner in 0..per as u32 {
                let after = if corner + 1 == per as u32 { 0 } else { corner + 1 };
                triangles.push([here + corner, here + after, next + after]);
                triangles.push([here + corner, next + after, next + corner]);
            }
        }
        if ends == Ends::Capped {
            let last = ((sections - 1) * per) as u32;
            for corner in 1..per as u32 - 1 {
                triangles.push([0, corner + 1, corner]);
                triangles.push([last, last + corner, last + corner + 1]);
            }
        }
        Self { positions, triangles }
    }

    /// A profile of radii and heights turned round the z axis: upward outside. An open profile is
    /// closed by a flat disc at each end, a joined one runs back to its start inside.
    pub(super) fn lathe(profile: &[[f32; 2]], segments: u32, ends: Ends) -> Self {
        let round = round(segments);
        let ring = |[radius, height]: [f32; 2]| {
            round.iter().map(move |[cos, sin]| [radius * cos, radius * sin, height])
        };
        Self::swept(profile.iter().flat_map(|at| ring(*at)).collect(), round.len(), ends)
    }

    /// The same mesh turned about the z axis by an angle given by its cosine and sine.
    pub(super) fn turned(&self, [cos, sin]: [f32; 2]) -> Self {
        let positions = self.positions.iter().map(|at| turn(*at, [cos, sin])).collect();
        Self { positions, triangles: self.triangles.clone() }
    }

    /// Volume inside, in mm³: the sum of the tetrahedra on the origin.
    pub fn volume(&self) -> f64 {
        let at = |index: u32| self.positions.get(index as usize).map_or(Vec3::ZERO, |at| Vec3::from(*at));
        let six: f64 = self
            .triangles
            .iter()
            .map(|[a, b, c]| {
                let (a, b, c) = (at(*a).as_dvec3(), at(*b).as_dvec3(), at(*c).as_dvec3());
                a.dot(b.cross(c))
            })
            .sum();
        six / 6.0
    }
}

/// A place turned about the z axis by an angle given by its cosine and sine.
pub(super) fn turn([x, y, z]: [f32; 3], [cos, sin]: [f32; 2]) -> [f32; 3] {
    [x * cos - y * sin, x * sin + y * cos, z]
}

/// Cosine and sine of even steps round a circle.
pub(super) fn round(segments: u32) -> Vec<[f32; 2]> {
    let step = std::f32::consts::TAU / segments.max(3) as f32;
    (0..segments.max(3)).map(|number| direction(number as f32 * step)).collect()
}

/// Cosine and sine of an angle.
pub(super) fn direction(angle: f32) -> [f32; 2] {
    let (sin, cos) = angle.sin_cos();
    [cos, sin]
}
