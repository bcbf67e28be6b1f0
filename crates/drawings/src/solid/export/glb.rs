//! GLB: glTF 2.0 in one binary file (Khronos Group, *glTF 2.0 Specification*, ISO/IEC 12113:2022).
//!
//! Metres, y up. Each part is a node with its name; parts that are alike but for a turn share a mesh;
//! lists of triangles that are alike are written once.

use basket::Piece;
use std::collections::HashMap;

use serde_json::{Value, json};

use crate::solid::mesh::Mesh;
use crate::solid::part::{Part, Solid};

/// Codes of the format: component types, buffer targets.
const UNSIGNED_SHORT: u32 = 5123;
const UNSIGNED_INT: u32 = 5125;
const FLOAT: u32 = 5126;
const ARRAY_BUFFER: u32 = 34962;
const ELEMENT_ARRAY_BUFFER: u32 = 34963;
/// Magic words of the container and its chunks.
const GLTF: u32 = 0x4654_6C67;
const JSON: u32 = 0x4E4F_534A;
const BIN: u32 = 0x004E_4942;

/// The solid as a GLB file.
pub fn glb(solid: &Solid) -> Vec<u8> {
    let mut writer = Writer::default();
    for (index, part) in solid.parts.iter().enumerate() {
        if !part.mesh.triangles.is_empty() {
            writer.node(index, part);
        }
    }
    writer.finish()
}

#[derive(Default)]
struct Writer<'a> {
    binary: Vec<u8>,
    views: Vec<Value>,
    accessors: Vec<Value>,
    meshes: Vec<Value>,
    nodes: Vec<Value>,
    materials: Vec<Value>,
    material_of: HashMap<(&'a str, [u8; 3]), usize>,
    mesh_of: HashMap<usize, usize>,
    triangles_of: HashMap<&'a [[u32; 3]], usize>,
}

impl<'a> Writer<'a> {
    fn node(&mut self, index: usize, part: &'a Part) {
        let shared = part.turned.and_then(|turned| Some((*self.mesh_of.get(&turned.of)?, turned.angle)));
        let mut node = json!({ "name": part.name() });
        if let Some((mesh, [cos, sin])) = shared {
            node["mesh"] = mesh.into();
            // A turn about z by an angle is one about the file's y axis: half the angle in a quaternion.
            let half = sin.atan2(cos) / 2.0;
            node["rotation"] = json!([0.0, half.sin(), 0.0, half.cos()]);
        } else {
            let mesh = self.mesh(part);
            self.mesh_of.insert(index, mesh);
            node["mesh"] = mesh.into();
        }
        let (kind, numbers) = (part.piece.kind(), part.piece.numbers());
        node["extras"] =
            json!({ "kind": kind, "of": part.of.name(), "numbers": numbers, "material": part.material });
        self.nodes.push(node);
    }

    fn mesh(&mut self, part: &'a Part) -> usize {
        let (position, indices) = (self.positions(&part.mesh), self.triangles(&part.mesh));
        let material = self.material(part);
        self.meshes.push(json!({
            "name": part.name(),
            "primitives": [{ "attributes": { "POSITION": position }, "indices": indices, "material": material }],
        }));
        self.meshes.len() - 1
    }

    fn positions(&mut self, mesh: &Mesh) -> usize {
        let start = self.binary.len();
        let (mut least, mut most) = ([f32::INFINITY; 3], [f32::NEG_INFINITY; 3]);
        for [x, y, z] in &mesh.positions {
            let at = [x / 1000.0, z / 1000.0, -y / 1000.0];
            for (axis, figure) in at.iter().enumerate() {
                least[axis] = least[axis].min(*figure);
                most[axis] = most[axis].max(*figure);
                self.binary.extend(figure.to_le_bytes());
            }
        }
        let view = self.view(start, ARRAY_BUFFER);
        self.accessor(json!({
            "bufferView": view, "componentType": FLOAT, "count": mesh.positions.len(), "type": "VEC3",
            "min": least, "max": most,
        }))
    }

    fn triangles(&mut self, mesh: &'a Mesh) -> usize {
        if let Some(known) = self.triangles_of.get(mesh.triangles.as_slice()) {
            return *known;
        }
        let start = self.binary.len();
        let short = mesh.positions.len() < usize::from(u16::MAX);
        for index in mesh.triangles.iter().flatten() {
            if short {
                self.binary.extend((*index as u16).to_le_bytes());
            } else {
                self.binary.extend(index.to_le_bytes());
            }
        }
        let view = self.view(start, ELEMENT_ARRAY_BUFFER);
        let component = if short { UNSIGNED_SHORT } else { UNSIGNED_INT };
        let accessor = self.accessor(json!({
            "bufferView": view, "componentType": component, "count": 3 * mesh.triangles.len(), "type": "SCALAR",
        }));
        self.triangles_of.insert(&mesh.triangles, accessor);
        accessor
    }

    /// The bytes since `start`, filled up to a multiple of four.
    fn view(&mut self, start: usize, target: u32) -> usize {
        let length = self.binary.len() - start;
        self.binary.resize(self.binary.len().next_multiple_of(4), 0);
        self.views.push(json!({ "buffer": 0, "byteOffset": start, "byteLength": length, "target": target }));
        self.views.len() - 1
    }

    fn accessor(&mut self, accessor: Value) -> usize {
        self.accessors.push(accessor);
        self.accessors.len() - 1
    }

    fn material(&mut self, part: &'a Part) -> usize {
        let next = self.materials.len();
        let number = *self.material_of.entry((&part.material, part.colour)).or_insert(next);
        if number == next {
            let metal = is_metal(part);
            let [red, green, blue] = part.colour.map(linear);
            self.materials.push(json!({
                "name": part.material,
                "pbrMetallicRoughness": {
                    "baseColorFactor": [red, green, blue, 1.0],
                    "metallicFactor": if metal { 0.9 } else { 0.0 },
                    "roughnessFactor": if metal { 0.35 } else { 0.7 },
                },
            }));
        }
        number
    }

    fn finish(self) -> Vec<u8> {
        let nodes: Vec<usize> = (0..self.nodes.len()).collect();
        let tree = json!({
            "asset": { "version": "2.0", "generator": "Stavewright" },
            "scene": 0,
            "scenes": [{ "name": "basket", "nodes": nodes }],
            "nodes": self.nodes,
            "meshes": self.meshes,
            "materials": self.materials,
            "accessors": self.accessors,
            "bufferViews": self.views,
            "buffers": [{ "byteLength": self.binary.len() }],
        });
        let mut text = tree.to_string().into_bytes();
        text.resize(text.len().next_multiple_of(4), b' ');
        let mut file = Vec::with_capacity(28 + text.len() + self.binary.len());
        let whole = 28 + text.len() + self.binary.len();
        let words = [GLTF, 2, whole as u32, text.len() as u32, JSON];
        file.extend(words.iter().flat_map(|word| word.to_le_bytes()));
        file.extend(text);
        file.extend([self.binary.len() as u32, BIN].iter().flat_map(|word| word.to_le_bytes()));
        file.extend(self.binary);
        file
    }
}

/// Whether a part shines like metal.
fn is_metal(part: &Part) -> bool {
    match part.piece.sort() {
        Piece::Pins | Piece::Rivets | Piece::Washers => true,
        Piece::Ears => part.material == "brass",
        _ => false,
    }
}

/// A screen's figure for a colour as a linear one (IEC 61966-2-1:1999).
fn linear(figure: u8) -> f32 {
    let share = f32::from(figure) / 255.0;
    if share <= 0.040_45 { share / 12.92 } else { ((share + 0.055) / 1.055).powf(2.4) }
}
