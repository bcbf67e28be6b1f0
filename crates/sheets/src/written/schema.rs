//! The published schema of `basket.json`, made from the written form.

use std::fs;
use std::path::Path;

use schemars::generate::SchemaSettings;

use super::BasketFile;

/// Set to write the file anew.
const UPDATE: &str = "STAVEWRIGHT_UPDATE";

fn generated() -> String {
    let generator = SchemaSettings::draft2020_12().for_serialize().into_generator();
    let schema = generator.into_root_schema_for::<BasketFile>();
    serde_json::to_string_pretty(&schema).unwrap() + "\n"
}

#[test]
fn schema_has_not_drifted() {
    let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../docs/basket.schema.json");
    let generated = generated();
    if std::env::var_os(UPDATE).is_some() {
        fs::write(&file, &generated).unwrap();
    }
    let kept = fs::read_to_string(&file).unwrap_or_default();
    assert!(
        kept == generated,
        "docs/basket.schema.json is not what the sheets write; write it anew with {UPDATE}=1"
    );
}
