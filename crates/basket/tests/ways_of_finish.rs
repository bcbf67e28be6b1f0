//! The ways of finishing: what on which part, varnish, and how a basket is signed (common practice). Sentences,
//! tools, cautions, times and waits follow it.

use basket::pattern::{StepKind, read};
use basket::steps::{Stage, Step};
use basket::{Catalogue, Draft, Hand};

fn finish(lines: &str) -> Step {
    let text = format!(
        "title = \"T\"\nunits = \"in\"\n{lines}\nmould = {{ base = \"5\", rim = \"8\", height = \"4\" }}\n\
         handle = {{ kind = \"swing\" }}\n"
    );
    let pattern = read(&text, Catalogue::built_in()).unwrap_or_else(|problems| panic!("{problems:#?}"));
    let draft = Draft::of(pattern, Catalogue::built_in(), &Hand::USUAL);
    let last = draft.steps.last().expect("there are steps").clone();
    assert_eq!((last.kind, last.stage), (StepKind::Finish, Stage::Finished), "it is the last step");
    last
}

fn texts(step: &Step) -> Vec<&'static str> {
    step.text.iter().map(|text| text.id).collect()
}

const CHECKED: [&str; 2] = ["step-finish-text-check", "step-finish-text-sign"];

#[test]
fn shellac_goes_on_the_whole_basket_unless_the_pattern_says_otherwise() {
    let usual = finish("");
    let told = ["step-finish-text-on-all", "step-finish-text-shellac", CHECKED[0], CHECKED[1]];
    assert_eq!(texts(&usual), told);
    assert!((usual.work_minutes - 30.0).abs() < 1e-9);
    assert!((usual.wait_minutes - 60.0).abs() < 1e-9);
    assert!(usual.tools.contains(&"tool-brush") && usual.cautions.contains(&"caution-shellac"));
    assert_eq!(texts(&finish("finish-on = [\"all\"]")), told);
    assert_eq!(texts(&finish("finish-on = [\"base\", \"all\"]")), told);
}

#[test]
fn each_part_is_named_and_all_others_are_kept_bare() {
    let parts = finish("finish-on = [\"handle\", \"base\"]");
    assert_eq!(
        texts(&parts)[..4],
        [
            "step-finish-text-on-handle",
            "step-finish-text-on-base",
            "step-finish-text-nowhere-else",
            "step-finish-text-shellac"
        ]
    );
    // Two thirds of two coats of 15 minutes.
    assert!((parts.work_minutes - 20.0).abs() < 1e-9);
    let rim = finish("finish-on = \"rim\"");
    assert_eq!(texts(&rim)[..2], ["step-finish-text-on-rim", "step-finish-text-nowhere-else"]);
    assert!((rim.work_minutes - 10.0).abs() < 1e-9);
}

#[test]
fn varnish_dries_overnight_between_its_coats() {
    let varnish = finish("finish = \"varnish\"");
    assert!(texts(&varnish).contains(&"step-finish-text-varnish"));
    assert!(!texts(&varnish).contains(&"step-finish-text-shellac"));
    assert_eq!((varnish.work_minutes, varnish.wait_minutes), (30.0, 720.0));
    assert!(varnish.tools.contains(&"tool-brush"));
    assert!(varnish.cautions.contains(&"caution-varnish"));
    assert!(!varnish.cautions.contains(&"caution-shellac"));
}

#[test]
fn oil_and_stain_bring_their_cautions() {
    let oil = finish("finish = \"oil\"");
    assert!(texts(&oil).contains(&"step-finish-text-oil"));
    assert!(oil.cautions.contains(&"caution-oily-rags") && oil.tools.contains(&"tool-rag"));
    assert!((oil.wait_minutes - 72.0 * 60.0).abs() < 1e-9);
    let stained = finish("finish = \"stain-and-shellac\"");
    assert!(texts(&stained).contains(&"step-finish-text-stain"));
    assert!(texts(&stained).contains(&"step-finish-text-shellac"));
    assert!(stained.cautions.contains(&"caution-stain") && stained.cautions.contains(&"caution-shellac"));
    assert_eq!((stained.work_minutes, stained.wait_minutes), (45.0, 13.0 * 60.0));
}

#[test]
fn a_bare_basket_is_brushed_and_signed_all_the_same() {
    let bare = finish("finish = \"none\"\nfinish-on = [\"base\"]");
    assert_eq!(texts(&bare), ["step-finish-text-none", CHECKED[0], CHECKED[1]]);
    assert!((bare.wait_minutes - 0.0).abs() < 1e-9);
    assert!(!bare.tools.contains(&"tool-brush") && bare.tools.contains(&"tool-pen"));
    assert!(bare.cautions.contains(&"caution-food") && bare.cautions.contains(&"caution-handle-load"));
}

#[test]
fn a_signature_is_written_out() {
    let signed = finish("signature = \"Tidewater, no. 12\"");
    let sign = signed.text.last().expect("it is signed last");
    assert_eq!(sign.id, "step-finish-text-sign-as");
    assert_eq!(sign.args, [("signature", "Tidewater, no. 12".into())]);
    assert!(signed.tools.contains(&"tool-pen"));
}

#[test]
fn a_finish_on_no_handle_is_a_problem() {
    let text = "title = \"T\"\nunits = \"in\"\nfinish-on = [\"handle\"]\nmould = { base = \"5\", rim = \"8\", height = \"4\" }\n";
    let problems = read(text, Catalogue::built_in()).expect_err("there is no handle");
    assert!(problems[0].message.contains("handle"), "{problems:#?}");
}
