//! The list of parts and their licences against what cargo and npm know, and against `deny.toml`.
//!
//! `STAVEWRIGHT_UPDATE=1 cargo test -p stavewright --test licences` writes the list anew.

mod common;

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use common::{fits, room, run, stavewright};
use resvg::usvg::fontdb::Database;
use serde_json::Value;
use toml_edit::DocumentMut;

/// The fonts that the typesetter's crate carries: family and licence, as its file NOTICE says.
const FONTS: [(&str, &str); 4] = [
    ("DejaVu Sans Mono", "Bitstream-Vera"),
    ("Libertinus Serif", "OFL-1.1"),
    ("NewComputerModern", "LPPL-1.3c"),
    ("NewComputerModern Math", "LPPL-1.3c"),
];

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..").canonicalize().unwrap()
}

/// What cargo says of all packages in the lock file.
fn metadata() -> Value {
    let cargo = std::env::var("CARGO").unwrap_or_else(|_| "cargo".to_owned());
    let output = Command::new(cargo)
        .args(["metadata", "--format-version", "1", "--locked", "--all-features"])
        .current_dir(root())
        .output()
        .unwrap();
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    serde_json::from_slice(&output.stdout).unwrap()
}

fn text<'a>(value: &'a Value, key: &str) -> &'a str {
    value[key].as_str().unwrap_or_else(|| panic!("{key} in {value}"))
}

fn list<'a>(value: &'a Value, key: &str) -> &'a [Value] {
    value[key].as_array().unwrap_or_else(|| panic!("{key} in {value}"))
}

/// Packages by identifier.
fn packages(metadata: &Value) -> BTreeMap<&str, &Value> {
    list(metadata, "packages").iter().map(|package| (text(package, "id"), package)).collect()
}

fn is_macro(package: &Value) -> bool {
    list(package, "targets").iter().any(|target| list(target, "kind").contains(&"proc-macro".into()))
}

/// Identifiers of all packages that are built into the program on some system: no tools of the build
/// and none of the tests.
fn inside<'a>(metadata: &'a Value, packages: &BTreeMap<&'a str, &Value>) -> BTreeSet<&'a str> {
    let nodes: BTreeMap<_, _> =
        list(&metadata["resolve"], "nodes").iter().map(|node| (text(node, "id"), node)).collect();
    let mut found = BTreeSet::new();
    let mut open: Vec<&str> =
        packages.keys().copied().filter(|id| text(packages[id], "name") == "stavewright").collect();
    while let Some(id) = open.pop() {
        if is_macro(packages[id]) || !found.insert(id) {
            continue;
        }
        for other in list(nodes[id], "deps") {
            if list(other, "dep_kinds").iter().any(|kind| kind["kind"].is_null()) {
                open.push(text(other, "pkg"));
            }
        }
    }
    found
}

fn crates() -> BTreeSet<String> {
    let metadata = metadata();
    let packages = packages(&metadata);
    let inside = inside(&metadata, &packages).into_iter().map(|id| packages[id]);
    let others = inside.filter(|package| !package["source"].is_null());
    others
        .map(|package| {
            format!("{} {}: {}", text(package, "name"), text(package, "version"), text(package, "license"))
        })
        .collect()
}

/// What the page is built from.
fn scripts() -> BTreeSet<String> {
    let lock = fs::read_to_string(root().join("web/package-lock.json")).unwrap();
    let lock: Value = serde_json::from_str(&lock).unwrap();
    let parts = lock["packages"].as_object().unwrap().iter();
    let inside = parts.filter(|(path, part)| !path.is_empty() && part["dev"].is_null());
    inside
        .map(|(path, part)| {
            let name = path.trim_start_matches("node_modules/");
            format!("{name} {}: {}", text(part, "version"), text(part, "license"))
        })
        .collect()
}

fn families() -> BTreeSet<String> {
    let mut fonts = Database::new();
    for font in typst_assets::fonts() {
        fonts.load_font_data(font.to_vec());
    }
    fonts.faces().flat_map(|face| face.families.iter().map(|(family, _)| family.clone())).collect()
}

fn written() -> String {
    let mut said = format!(
        "Stavewright {}: MIT OR Apache-2.0\n\nIt is built from these parts.\n\nCrates\n\n",
        env!("CARGO_PKG_VERSION")
    );
    let all = |parts: &BTreeSet<String>| parts.iter().fold(String::new(), |said, part| said + part + "\n");
    said += &all(&crates());
    said += "the Rust standard library: MIT OR Apache-2.0\n";
    let _ = write!(said, "\nThe bench's page\n\n{}\nFonts\n\n", all(&scripts()));
    for (family, licence) in FONTS {
        let _ = writeln!(said, "{family}: {licence}");
    }
    said
}

#[test]
fn the_list_names_all_parts() {
    let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("licences.txt");
    let written = written();
    if std::env::var_os("STAVEWRIGHT_UPDATE").is_some() {
        fs::write(&file, &written).unwrap();
    }
    let kept = fs::read_to_string(&file).unwrap();
    assert_eq!(
        kept, written,
        "write the list anew: STAVEWRIGHT_UPDATE=1 cargo test -p stavewright --test licences"
    );
    for part in ["typst 0.15", "three 0.", "axum 0.", "rustix 1."] {
        assert!(kept.lines().any(|line| line.starts_with(part)), "{part}");
    }
    for tool in ["insta ", "esbuild ", "clap_derive "] {
        assert!(!kept.lines().any(|line| line.starts_with(tool)), "{tool} is no part of the program");
    }
}

#[test]
fn the_fonts_are_those_inside_the_program() {
    let named: BTreeSet<String> = FONTS.iter().map(|(family, _)| (*family).to_owned()).collect();
    assert_eq!(families(), named);
}

#[test]
fn the_program_prints_the_list() {
    let said = run(stavewright(room().path()).arg("licences"));
    assert_eq!(said.code, 0, "{}", said.err);
    fits(&said.out);
    let joined = said.out.replace("\n    ", " ");
    assert_eq!(
        joined,
        fs::read_to_string(Path::new(env!("CARGO_MANIFEST_DIR")).join("licences.txt")).unwrap()
    );
}

fn rules() -> DocumentMut {
    fs::read_to_string(root().join("deny.toml")).unwrap().parse().unwrap()
}

/// Whether an SPDX expression can be met with allowed licences alone. `/` is an older way to write OR.
fn is_met(expression: &str, allowed: &BTreeSet<String>) -> bool {
    let spaced = expression.replace('(', " ( ").replace(')', " ) ").replace('/', " OR ");
    let words: Vec<&str> = spaced.split_whitespace().collect();
    let mut at = 0;
    let met = any(&words, &mut at, allowed);
    assert_eq!(at, words.len(), "{expression}");
    met
}

fn any(words: &[&str], at: &mut usize, allowed: &BTreeSet<String>) -> bool {
    let mut met = all(words, at, allowed);
    while words.get(*at) == Some(&"OR") {
        *at += 1;
        met |= all(words, at, allowed);
    }
    met
}

fn all(words: &[&str], at: &mut usize, allowed: &BTreeSet<String>) -> bool {
    let mut met = one(words, at, allowed);
    while words.get(*at) == Some(&"AND") {
        *at += 1;
        met &= one(words, at, allowed);
    }
    met
}

fn one(words: &[&str], at: &mut usize, allowed: &BTreeSet<String>) -> bool {
    let word = words[*at];
    *at += 1;
    if word == "(" {
        let met = any(words, at, allowed);
        assert_eq!(words[*at], ")");
        *at += 1;
        return met;
    }
    if words.get(*at) == Some(&"WITH") {
        *at += 2;
        return allowed.contains(&format!("{word} WITH {}", words[*at - 1]));
    }
    allowed.contains(word)
}

#[test]
fn expressions_are_read_as_spdx_has_them() {
    let allowed = BTreeSet::from(["MIT".to_owned(), "A WITH x".to_owned()]);
    for met in
        ["MIT", "GPL-2.0 OR MIT", "Apache-2.0/MIT", "(GPL OR MIT) AND MIT", "A WITH x", "GPL AND X OR MIT"]
    {
        assert!(is_met(met, &allowed), "{met}");
    }
    for unmet in ["GPL", "MIT AND GPL", "A", "A WITH y", "MIT AND (GPL OR X)"] {
        assert!(!is_met(unmet, &allowed), "{unmet}");
    }
}

#[test]
fn every_crate_is_such_as_deny_toml_allows() {
    let rules = rules();
    let allowed: BTreeSet<String> = rules["licenses"]["allow"]
        .as_array()
        .unwrap()
        .iter()
        .map(|licence| licence.as_str().unwrap().to_owned())
        .collect();
    let banned: BTreeSet<&str> = rules["bans"]["deny"]
        .as_array()
        .unwrap()
        .iter()
        .map(|ban| ban.as_inline_table().unwrap()["crate"].as_str().unwrap())
        .collect();
    let metadata = metadata();
    let packages = packages(&metadata);
    assert!(packages.len() > 300, "{}", packages.len());
    for package in packages.values() {
        let (name, licence) = (text(package, "name"), text(package, "license"));
        assert!(is_met(licence, &allowed), "{name}: {licence}");
        assert!(!banned.contains(name), "{name} is banned");
        let source = &package["source"];
        let usual = "registry+https://github.com/rust-lang/crates.io-index";
        assert!(source.is_null() || source == usual, "{name} comes from {source}");
    }
    let inside = scripts();
    assert!(inside.iter().all(|part| is_met(part.split_once(": ").unwrap().1, &allowed)), "{inside:?}");
}
