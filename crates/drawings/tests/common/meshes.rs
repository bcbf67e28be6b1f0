//! Small solids whose pictures are known beforehand.

use drawings::solid::{Mesh, Part, PartKind, Solid};

/// A closed box from its low to its high corner.
pub(crate) fn block(name: &str, kind: PartKind, low: [f32; 3], high: [f32; 3]) -> Part {
    let corner =
        |index: u32| [0, 1, 2].map(|axis| if index >> axis & 1 == 0 { low[axis] } else { high[axis] });
    let sides: [[u32; 4]; 6] =
        [[0, 2, 3, 1], [4, 5, 7, 6], [0, 1, 5, 4], [2, 6, 7, 3], [0, 4, 6, 2], [1, 3, 7, 5]];
    let triangles = sides.iter().flat_map(|[a, b, c, d]| [[*a, *b, *c], [*a, *c, *d]]).collect();
    let edges = (0..8_u32)
        .flat_map(|from| [1, 2, 4].map(|step| (from, from ^ step)))
        .filter(|(from, to)| from < to)
        .map(|(from, to)| vec![corner(from), corner(to)])
        .collect();
    part(name, kind, Mesh { positions: (0..8).map(corner).collect(), triangles }, edges)
}

/// An upright closed cylinder round a place, of so many sides, with the edges of its ends.
pub(crate) fn cylinder(name: &str, middle: [f32; 2], radius: f32, height: [f32; 2], sides: u32) -> Part {
    let ring = |z: f32| -> Vec<[f32; 3]> {
        (0..sides)
            .map(|side| (side as f32 / sides as f32 * std::f32::consts::TAU).sin_cos())
            .map(|(sine, cosine)| [middle[0] + radius * cosine, middle[1] + radius * sine, z])
            .collect()
    };
    let (low, high) = (ring(height[0]), ring(height[1]));
    let ends = height.map(|z| [middle[0], middle[1], z]);
    let positions: Vec<[f32; 3]> = low.iter().chain(&high).chain(&ends).copied().collect();
    let triangles = (0..sides)
        .flat_map(|side| {
            let (next, foot, top) = ((side + 1) % sides, 2 * sides, 2 * sides + 1);
            let (a, b, c, d) = (side, next, side + sides, next + sides);
            [[a, b, d], [a, d, c], [foot, b, a], [top, c, d]]
        })
        .collect();
    let closed = |mut ring: Vec<[f32; 3]>| {
        ring.push(ring[0]);
        ring
    };
    part(name, PartKind::Base, Mesh { positions, triangles }, vec![closed(low), closed(high)])
}

pub(crate) fn solid(parts: impl IntoIterator<Item = Part>) -> Solid {
    Solid { parts: parts.into_iter().collect(), simplified: None }
}

fn part(name: &str, kind: PartKind, mesh: Mesh, edges: Vec<Vec<[f32; 3]>>) -> Part {
    let (name, material) = (name.to_owned(), "cane".to_owned());
    Part { name, kind, number: None, material, colour: [200, 160, 110], mesh, edges, turned: None }
}
