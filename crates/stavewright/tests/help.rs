//! The help texts, as a maker reads them.

mod common;

use common::{fits, room, run, stavewright};

fn help(arguments: &[&str]) -> String {
    let said = run(stavewright(room().path()).args(arguments).arg("--help"));
    assert_eq!(said.code, 0, "{}", said.err);
    fits(&said.out);
    said.out
}

#[test]
fn help_of_the_program() {
    insta::assert_snapshot!(help(&[]));
}

#[test]
fn help_of_draft() {
    insta::assert_snapshot!(help(&["draft"]));
}

#[test]
fn help_of_picture() {
    insta::assert_snapshot!(help(&["picture"]));
}

#[test]
fn help_of_solid() {
    insta::assert_snapshot!(help(&["solid"]));
}

#[test]
fn help_of_trace() {
    insta::assert_snapshot!(help(&["trace"]));
}

#[test]
fn help_of_outline() {
    insta::assert_snapshot!(help(&["outline"]));
}

#[test]
fn help_of_mould() {
    insta::assert_snapshot!(help(&["mould"]));
}

#[test]
fn help_of_poster() {
    insta::assert_snapshot!(help(&["poster"]));
}

#[test]
fn help_of_proposal() {
    insta::assert_snapshot!(help(&["proposal"]));
}

#[test]
fn help_of_class() {
    insta::assert_snapshot!(help(&["class"]));
}

#[test]
fn help_of_history() {
    insta::assert_snapshot!(help(&["history"]));
}

#[test]
fn help_of_hand() {
    insta::assert_snapshot!(help(&["hand"]));
}

#[test]
fn help_of_sheet() {
    insta::assert_snapshot!(help(&["sheet"]));
}

#[test]
fn help_of_templates() {
    insta::assert_snapshot!(help(&["templates"]));
}

#[test]
fn help_of_bench() {
    insta::assert_snapshot!(help(&["bench"]));
}

#[test]
fn help_of_check() {
    insta::assert_snapshot!(help(&["check"]));
}

#[test]
fn help_of_licences() {
    insta::assert_snapshot!(help(&["licences"]));
}

#[test]
fn help_of_new() {
    insta::assert_snapshot!(help(&["new"]));
}

#[test]
fn help_of_materials() {
    insta::assert_snapshot!(help(&["materials"]));
}

#[test]
fn help_of_schema() {
    insta::assert_snapshot!(help(&["schema"]));
}

#[test]
fn the_schema_is_the_published_one() {
    let said = run(stavewright(room().path()).arg("schema"));
    assert_eq!(said.code, 0, "{}", said.err);
    assert_eq!(said.out, include_str!("../../../docs/pattern.schema.json"));
    let german = run(stavewright(room().path()).args(["schema", "--language", "de"]));
    assert!(german.out.contains("Vorlage eines Korbs"), "{}", german.out);
}

#[test]
fn help_of_completions() {
    insta::assert_snapshot!(help(&["completions"]));
}

#[test]
fn completions_name_the_commands() {
    for shell in ["bash", "zsh", "fish"] {
        let said = run(stavewright(room().path()).args(["completions", shell]));
        assert_eq!(said.code, 0);
        assert!(said.out.contains("materials") && said.out.contains("no-sheets"), "{shell}");
    }
}

#[test]
fn help_of_shelf() {
    insta::assert_snapshot!(help(&["shelf"]));
}

#[test]
fn help_of_kits() {
    insta::assert_snapshot!(help(&["kits"]));
}

#[test]
fn help_of_buy() {
    insta::assert_snapshot!(help(&["buy"]));
}

#[test]
fn help_of_cutting() {
    insta::assert_snapshot!(help(&["cutting"]));
}

#[test]
fn help_of_price() {
    insta::assert_snapshot!(help(&["price"]));
}

#[test]
fn help_of_backup() {
    insta::assert_snapshot!(help(&["backup"]));
}

#[test]
fn help_of_records() {
    insta::assert_snapshot!(help(&["records"]));
}

#[test]
fn help_of_order() {
    insta::assert_snapshot!(help(&["order"]));
}

#[test]
fn help_of_sizes() {
    insta::assert_snapshot!(help(&["sizes"]));
}
