//! Closed meshes by sweeping a section along a path.

/// A closed surface of triangles, counter-clockwise seen from outside.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Mesh {
    /// Corners, in mm.
    pub positions: Vec<[f32; 3]>,
    /// Triangles as indices of their corners.
    pub triangles: Vec<[u32; 3]>,
}

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
        let positions = self.positions.iter().map(|at| rotated(*at, [cos, sin])).collect();
        Self { positions, triangles: self.triangles.clone() }
    }
}

/// A place turned about the z axis by an angle given by its cosine and sine.
pub(super) fn rotated([x, y, z]: [f32; 3], [cos, sin]: [f32; 2]) -> [f32; 3] {
    [x * cos - y * sin, x * sin + y * cos, z]
}

/// Cosine and sine of even steps round a circle.
pub(super) fn round(segments: u32) -> Vec<[f32; 2]> {
    let segments = segments.max(3);
    (0..segments).map(|number| toward(number as f32 / segments as f32)).collect()
}

/// Cosine and sine of the direction in which a share of a turn lies.
pub(super) fn toward(turn: f32) -> [f32; 2] {
    direction(turn * std::f32::consts::TAU)
}

/// Cosine and sine of an angle.
pub(super) fn direction(angle: f32) -> [f32; 2] {
    let (sin, cos) = angle.sin_cos();
    [cos, sin]
}

#[cfg(test)]
mod tests {
    use std::f64::consts::PI;

    use glam::Vec3;

    use super::*;

    /// Volume inside, in mm³: the sum of the tetrahedra on the origin.
    fn volume(mesh: &Mesh) -> f64 {
        let corners =
            |triangle: &[u32; 3]| triangle.map(|at| Vec3::from(mesh.positions[at as usize]).as_dvec3());
        mesh.triangles.iter().map(corners).map(|[a, b, c]| a.dot(b.cross(c))).sum::<f64>() / 6.0
    }

    /// A polygon of n sides turned round has n/2π·sin(2π/n) of the volume (plane geometry: the area of
    /// a regular polygon over that of its circle): 24 sides 0.988 615 93, 64 sides 0.998 394 39.
    #[test]
    fn a_turned_cylinder_misses_its_facets() {
        for (sides, share) in [(24, 0.988_615_93), (64, 0.998_394_39)] {
            let mesh = Mesh::lathe(&[[10.0, 0.0], [10.0, 5.0]], sides, Ends::Capped);
            let whole = PI * 100.0 * 5.0;
            assert!((volume(&mesh) / whole - share).abs() < 1e-6, "{}", volume(&mesh) / whole);
        }
    }

    /// Pappus of Alexandria, *Collection*, book VII: a turned body has the volume of its section times
    /// the way of the section's centroid. A torus of radii 100 and 8 has 126 330.936 mm³.
    #[test]
    fn a_torus_has_the_volume_that_pappus_says() {
        let (tube, sides) = (128, 256);
        let profile: Vec<[f32; 2]> =
            round(tube).iter().map(|[cos, sin]| [100.0 + 8.0 * cos, 8.0 * sin]).collect();
        let mesh = Mesh::lathe(&profile, sides, Ends::Joined);
        let facets = |n: f64| n / (2.0 * PI) * (2.0 * PI / n).sin();
        let wanted = 126_330.936 * facets(f64::from(tube)) * facets(f64::from(sides));
        assert!((volume(&mesh) / wanted - 1.0).abs() < 1e-5, "{} for {wanted}", volume(&mesh));
    }
}
