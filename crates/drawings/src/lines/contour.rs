//! Where a surface turns from the eye.
//!
//! In a closed mesh every edge belongs to two triangles, which run along it in opposite directions.
//! An edge along which just one of them faces the eye is part of the contour.

use crate::lines::scene::Scene;

/// No corner.
const NONE: u32 = u32::MAX;

/// The contours of all parts, as runs of corners, each with its part.
pub(crate) fn contours(scene: &Scene<'_>) -> Vec<(u32, Vec<u32>)> {
    chained(scene.corners.len(), &single_edges(scene))
}

/// An edge from corner to corner, in the direction of its face.
#[derive(Clone, Copy)]
struct Edge {
    from: u32,
    to: u32,
    part: u32,
}

/// The edges of faces that no other face runs back along, in the order of their lower corner.
fn single_edges(scene: &Scene<'_>) -> Vec<Edge> {
    let edges = |visit: &mut dyn FnMut(Edge)| {
        for face in &scene.faces {
            let [a, b, c] = face.corners;
            for (from, to) in [(a, b), (b, c), (c, a)] {
                visit(Edge { from, to, part: face.part });
            }
        }
    };
    // A counting sort by the lower corner: edges that may meet come to stand side by side.
    let mut ends = vec![0_u32; scene.corners.len() + 1];
    edges(&mut |edge| ends[edge.from.min(edge.to) as usize + 1] += 1);
    for corner in 1..ends.len() {
        ends[corner] += ends[corner - 1];
    }
    let mut sorted = vec![Edge { from: NONE, to: NONE, part: 0 }; scene.faces.len() * 3];
    edges(&mut |edge| {
        let place = &mut ends[edge.from.min(edge.to) as usize];
        sorted[*place as usize] = edge;
        *place += 1;
    });
    let low = |edge: &Edge| edge.from.min(edge.to);
    let mut single = Vec::new();
    for bucket in sorted.chunk_by(|a, b| low(a) == low(b)) {
        let alone = |edge: &&Edge| !bucket.iter().any(|other| other.from == edge.to && other.to == edge.from);
        single.extend(bucket.iter().filter(alone).copied());
    }
    single
}

/// Edges joined end to end, as far as they run on.
fn chained(corners: usize, edges: &[Edge]) -> Vec<(u32, Vec<u32>)> {
    // The edges that leave a corner, as a list linked through `after`.
    let mut leaving = vec![NONE; corners];
    let mut after = vec![NONE; edges.len()];
    let mut entered = vec![0_u8; corners];
    for (edge, index) in edges.iter().zip(0_u32..) {
        after[index as usize] = std::mem::replace(&mut leaving[edge.from as usize], index);
        entered[edge.to as usize] = entered[edge.to as usize].saturating_add(1);
    }
    let mut used = vec![false; edges.len()];
    let mut runs = Vec::new();
    let starts = edges.iter().filter(|edge| entered[edge.from as usize] == 0);
    for start in starts.chain(edges) {
        loop {
            let run = run_from(start.from, edges, &mut leaving, &after, &mut used);
            if run.len() < 2 {
                break;
            }
            runs.push((start.part, run));
        }
    }
    runs
}

fn run_from(start: u32, edges: &[Edge], leaving: &mut [u32], after: &[u32], used: &mut [bool]) -> Vec<u32> {
    let mut run = vec![start];
    let mut here = start;
    loop {
        let edge = leaving[here as usize];
        if edge == NONE || used[edge as usize] {
            return run;
        }
        used[edge as usize] = true;
        leaving[here as usize] = after[edge as usize];
        here = edges[edge as usize].to;
        run.push(here);
    }
}
