//! Files of solids, read again by independent readers.

mod common;

use std::io::Cursor;

use basket::steps::Stage;
use common::{FERRY, HARBOUR, basket};
use drawings::solid::{Detail, Part, Solid, glb, solid, stl, three_mf};

fn finished(pattern: &str) -> Solid {
    solid(&basket(pattern), Stage::Finished, Detail::Full)
}

#[test]
fn glb_is_read_by_the_crate_gltf_with_every_part_by_name() {
    let solid = finished(HARBOUR);
    let gltf::Gltf { document, blob } = gltf::Gltf::from_slice(&glb(&solid)).expect("a sound GLB");
    let blob = blob.expect("a binary chunk");
    let names: Vec<&str> = document.nodes().filter_map(|node| node.name()).collect();
    let wanted: Vec<String> = solid.parts.iter().map(Part::name).collect();
    assert_eq!(names, wanted);
    let mut triangles = 0;
    for (node, part) in document.nodes().zip(&solid.parts) {
        let mesh = node.mesh().expect("a mesh");
        let place = glam::Mat4::from_cols_array_2d(&node.transform().matrix());
        for primitive in mesh.primitives() {
            let reader = primitive.reader(|_| Some(&blob));
            let indices: Vec<u32> = reader.read_indices().expect("indices").into_u32().collect();
            triangles += indices.len() / 3;
            // Metres and y up: the file's (x, y, z) is our (x, z, −y) / 1000.
            for (at, own) in reader.read_positions().expect("positions").zip(&part.mesh.positions) {
                let at = place.transform_point3(glam::Vec3::from(at)) * 1000.0;
                let off = glam::Vec3::new(at.x, -at.z, at.y).distance(glam::Vec3::from(*own));
                assert!(off < 0.01, "{}: {off} mm off", part.name());
            }
            let colour = primitive.material().pbr_metallic_roughness().base_color_factor();
            assert!(colour.iter().all(|figure| (0.0..=1.0).contains(figure)));
            assert_eq!(primitive.material().name(), Some(part.material.as_str()));
        }
    }
    assert_eq!(triangles, solid.triangles());
}

#[test]
fn like_staves_share_one_mesh_in_a_glb() {
    let solid = finished(FERRY);
    let gltf::Gltf { document, .. } = gltf::Gltf::from_slice(&glb(&solid)).expect("a sound GLB");
    let mut meshes: Vec<usize> = document
        .nodes()
        .filter(|node| node.name().is_some_and(|name| name.starts_with("stave ")))
        .filter_map(|node| node.mesh().map(|mesh| mesh.index()))
        .collect();
    let staves = meshes.len();
    meshes.sort_unstable();
    meshes.dedup();
    assert!(staves > 20 && meshes.len() < 10, "{} meshes for {staves} staves", meshes.len());
}

/// 84 + 50·F bytes (M. Burns, Automated Fabrication, 1993, section 6.5).
#[test]
fn stl_is_read_by_the_crate_stl_io_with_every_triangle() {
    let solid = finished(FERRY);
    let file = stl(&solid);
    assert_eq!(file.len(), 84 + 50 * solid.triangles());
    let mesh = stl_io::read_stl(&mut Cursor::new(file)).expect("a sound STL");
    assert_eq!(mesh.faces.len(), solid.triangles());
    let highest = mesh.vertices.iter().map(|at| at[2]).fold(f32::NEG_INFINITY, f32::max);
    let own = solid
        .parts
        .iter()
        .flat_map(|part| &part.mesh.positions)
        .map(|at| at[2])
        .fold(f32::NEG_INFINITY, f32::max);
    assert!((highest - own).abs() < 1e-6);
}

#[test]
fn three_mf_is_read_by_the_crate_threemf_with_every_part_by_name() {
    let solid = finished(FERRY);
    let file = three_mf(&solid).expect("a 3MF");
    let models = threemf::read(Cursor::new(file)).expect("a sound 3MF");
    let objects: Vec<_> = models.iter().flat_map(|model| &model.resources.object).collect();
    assert_eq!(objects.len(), solid.parts.len());
    for (object, part) in objects.iter().zip(&solid.parts) {
        let mesh = object.mesh.as_ref().expect("a mesh");
        assert_eq!(mesh.triangles.triangle.len(), part.mesh.triangles.len());
        assert_eq!(mesh.vertices.vertex.len(), part.mesh.positions.len());
        assert_eq!(object.name.as_deref(), Some(part.name().as_str()));
        let (first, own) = (&mesh.vertices.vertex[0], part.mesh.positions[0]);
        assert!((first.x as f32 - own[0]).abs() < 1e-4 && (first.z as f32 - own[2]).abs() < 1e-4);
    }
    assert_eq!(models.iter().map(|model| model.build.item.len()).sum::<usize>(), solid.parts.len());
}

#[test]
fn a_solid_without_parts_gives_files_without_parts() {
    let empty = Solid::default();
    assert_eq!(stl(&empty).len(), 84);
    let models = threemf::read(Cursor::new(three_mf(&empty).expect("a 3MF"))).expect("a sound 3MF");
    assert!(models.iter().all(|model| model.build.item.is_empty()));
    let gltf::Gltf { document, .. } = gltf::Gltf::from_slice(&glb(&empty)).expect("a sound GLB");
    assert_eq!(document.nodes().count(), 0);
}
