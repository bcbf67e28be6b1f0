//! 3MF: a zip package with the model as XML (3MF Consortium, *3D Manufacturing Format Core
//! Specification* 1.3). Millimetres; names and colours are carried.

use std::fmt::Write as _;
use std::io::{Cursor, Write as _};

use zip::result::ZipResult;
use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, ZipWriter};

use crate::solid::part::{Part, Solid};

const TYPES: &str = r#"<?xml version="1.0" encoding="UTF-8"?>
<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/></Types>"#;
const RELATIONS: &str = r#"<?xml version="1.0" encoding="UTF-8"?>
<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Target="/3D/3dmodel.model" Id="model" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>"#;

/// The solid as a 3MF file.
///
/// # Errors
/// When the package cannot be put together, which only want of memory or a solid of more than 4 GB
/// brings about.
pub fn three_mf(solid: &Solid) -> std::io::Result<Vec<u8>> {
    package(&model(solid)).map_err(std::io::Error::other)
}

fn package(model: &str) -> ZipResult<Vec<u8>> {
    let options = SimpleFileOptions::default()
        .compression_method(CompressionMethod::Deflated)
        .compression_level(Some(1));
    let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
    for (name, text) in
        [("[Content_Types].xml", TYPES), ("_rels/.rels", RELATIONS), ("3D/3dmodel.model", model)]
    {
        zip.start_file(name, options)?;
        zip.write_all(text.as_bytes())?;
    }
    Ok(zip.finish()?.into_inner())
}

fn model(solid: &Solid) -> String {
    let parts: Vec<&Part> = solid.parts.iter().filter(|part| !part.mesh.triangles.is_empty()).collect();
    let mut materials: Vec<(&str, [u8; 3])> = Vec::new();
    for part in &parts {
        let material = (part.material.as_str(), part.colour);
        if !materials.contains(&material) {
            materials.push(material);
        }
    }
    let mut text = String::from(concat!(
        r#"<?xml version="1.0" encoding="UTF-8"?>"#,
        "\n",
        r#"<model unit="millimeter" xml:lang="en-US" xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02"><resources>"#
    ));
    text.push_str(r#"<basematerials id="1">"#);
    for (name, [red, green, blue]) in &materials {
        put(
            &mut text,
            format_args!(
                r##"<base name="{}" displaycolor="#{red:02X}{green:02X}{blue:02X}"/>"##,
                escaped(name)
            ),
        );
    }
    text.push_str("</basematerials>");
    for (part, number) in parts.iter().zip(2_u32..) {
        let material =
            materials.iter().position(|known| *known == (part.material.as_str(), part.colour)).unwrap_or(0);
        object(&mut text, part, number, material);
    }
    text.push_str("</resources><build>");
    for number in 2..parts.len() + 2 {
        put(&mut text, format_args!(r#"<item objectid="{number}"/>"#));
    }
    text.push_str("</build></model>\n");
    text
}

fn object(text: &mut String, part: &Part, number: u32, material: usize) {
    put(
        text,
        format_args!(
            r#"<object id="{number}" type="model" name="{}" pid="1" pindex="{material}"><mesh><vertices>"#,
            escaped(&part.name())
        ),
    );
    for [x, y, z] in &part.mesh.positions {
        put(text, format_args!(r#"<vertex x="{x}" y="{y}" z="{z}"/>"#));
    }
    text.push_str("</vertices><triangles>");
    for [a, b, c] in &part.mesh.triangles {
        put(text, format_args!(r#"<triangle v1="{a}" v2="{b}" v3="{c}"/>"#));
    }
    text.push_str("</triangles></mesh></object>");
}

/// Writing to a string never fails.
fn put(text: &mut String, words: std::fmt::Arguments<'_>) {
    let _ = text.write_fmt(words);
}

fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('"', "&quot;")
}
