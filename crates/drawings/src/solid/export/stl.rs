//! Binary STL: a header of 80 bytes, the count, then 50 bytes for each triangle (M. Burns, *Automated
//! Fabrication*, 1993, section 6.5).

use glam::Vec3;

use crate::solid::part::Solid;

/// All parts as one binary STL in millimetres; it carries neither names nor colours.
pub fn stl(solid: &Solid) -> Vec<u8> {
    let count = solid.triangles();
    let mut file = Vec::with_capacity(84 + 50 * count);
    let mut header = [b' '; 80];
    let title = b"basket in millimetres";
    header[..title.len()].copy_from_slice(title);
    file.extend(header);
    file.extend((count as u32).to_le_bytes());
    for mesh in solid.parts.iter().map(|part| &part.mesh) {
        for triangle in &mesh.triangles {
            let [a, b, c] = triangle
                .map(|index| mesh.positions.get(index as usize).map_or(Vec3::ZERO, |at| Vec3::from(*at)));
            let normal = (b - a).cross(c - a).normalize_or_zero();
            for figure in [normal, a, b, c].iter().flat_map(Vec3::to_array) {
                file.extend(figure.to_le_bytes());
            }
            file.extend([0, 0]);
        }
    }
    file
}
