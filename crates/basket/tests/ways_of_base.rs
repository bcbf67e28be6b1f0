//! For each way of base and mould: steps, cut list, tools, cautions, times and findings follow it.

#[path = "findings/draft.rs"]
mod draft;

use basket::Draft;
use basket::cuts::CutStock;
use basket::measure::Length;
use basket::message::Value;
use basket::pattern::{Rings, StepKind};
use basket::piece::{FloorPart, Piece};
use basket::steps::Step;
use draft::{Changes, pattern, read};

fn of(changes: Changes) -> Draft {
    read(&pattern(changes)).unwrap_or_else(|| panic!("{changes:?} cannot be read"))
}

fn step(draft: &Draft, kind: StepKind) -> &Step {
    draft.steps.iter().find(|step| step.kind == kind).unwrap_or_else(|| panic!("no {kind:?}"))
}

fn says(draft: &Draft, kind: StepKind, id: &str) -> bool {
    step(draft, kind).text.iter().any(|text| text.id == id)
}

fn shape_mentions(draft: &Draft, name: &str) -> Value {
    let disc = Piece::Floor(FloorPart::Disc);
    let cut = draft.cuts.iter().find(|cut| cut.piece == disc).expect("a disc");
    let args = &cut.shape.as_ref().expect("a shape").args;
    args.iter().find(|(arg, _)| *arg == name).expect("it is mentioned").1.clone()
}

/// Sealed before the weaving (common practice): sanded and coated before it goes on the mould, with the wait
/// of a coat of shellac; left bare, it is only sanded, and the sheet says to guard it.
#[test]
fn a_base_is_sealed_before_it_goes_on_the_mould() {
    let sealed = of(&[]);
    let seal = step(&sealed, StepKind::Seal);
    assert!(seal.number < step(&sealed, StepKind::Base).number);
    assert!(seal.wait_minutes > 0.0 && seal.work_minutes > 0.0);
    assert!(seal.tools.contains(&"tool-brush") && seal.cautions.contains(&"caution-shellac"));
    assert!(says(&sealed, StepKind::Base, "step-base-text-guard"));
    assert!(!says(&sealed, StepKind::Base, "step-base-text-sand"));

    let bare = of(&[("base.sealed", "false")]);
    assert!(bare.steps.iter().all(|step| step.kind != StepKind::Seal));
    assert!(says(&bare, StepKind::Base, "step-base-text-sand"));
    assert!(says(&bare, StepKind::Base, "step-base-text-guard-bare"));
    assert!(step(&bare, StepKind::Base).cautions.contains(&"caution-sanding-dust"));

    // A base that lies ready is neither sanded nor sealed again.
    for changes in [&[("ready", "[\"base\"]")][..], &[("ready", "[\"base\"]"), ("base.sealed", "false")]] {
        let ready = of(changes);
        assert!(ready.steps.iter().all(|step| step.kind != StepKind::Seal));
        assert!(!says(&ready, StepKind::Base, "step-base-text-sand"));
    }
}

#[test]
fn a_plug_is_cut_flush_inside_and_out_and_the_lashing_is_not_sanded() {
    let draft = of(&[]);
    let plug = step(&draft, StepKind::Plug);
    assert!(says(&draft, StepKind::Plug, "step-plug-text-plug"));
    assert!(says(&draft, StepKind::Plug, "step-plug-text-sand-handle"));
    assert!(plug.tools.contains(&"tool-saw") && plug.cautions.contains(&"caution-glue"));
    assert!(step(&draft, StepKind::Lashing).number < plug.number);
    let bare = of(&[("handle.kind", "\"none\"")]);
    assert!(says(&bare, StepKind::Plug, "step-plug-text-sand"));
}

/// Rings stand where the pattern wants them, and nowhere else: half way from plug to groove, two together,
/// and one beside the groove.
#[test]
fn turned_rings_follow_the_pattern() {
    let none = of(&[]);
    assert_eq!((none.basket.body.base().rings, none.basket.body.base().ring_radii().len()), (Rings::None, 0));
    assert_eq!(shape_mentions(&none, "rings"), Value::Name(String::new()));
    for (word, told) in [("\"out\"", "step-base-text-rings-out"), ("\"in\"", "step-base-text-rings-in")] {
        let draft = of(&[("base.rings", word)]);
        let base = draft.basket.body.base();
        let radii = base.ring_radii();
        assert!(radii.len() > 1 && radii.is_sorted());
        let within = |radius: &Length| base.plug_diameter / 2.0 < *radius && *radius < base.groove_radius();
        assert!(radii.iter().all(within), "{radii:?}");
        assert!(says(&draft, StepKind::Base, told));
        assert!(matches!(shape_mentions(&draft, "rings"), Value::Said(_)));
    }
}

/// USDA Forest Products Laboratory, *Wood Handbook*, FPL-GTR-190 (2010), tables 4-3: cherry shrinks by 7.1 %
/// across the grain, walnut by 7.8 %. Two strips of one and one of the other, each a third of 4 5/8 in, move
/// by (2 · 0.071 + 0.078)/3 of it, times 6/30.
#[test]
fn strips_of_several_woods_move_together() {
    let draft = of(&[("base.wood", "[\"cherry\", \"walnut\", \"cherry\"]")]);
    let base = draft.basket.body.base();
    let mean = (2.0 * 0.071 + 0.078) / 3.0;
    let wanted = Length::inches(4.625 * mean * 6.0 / 30.0);
    assert!((base.movement - wanted).abs() < Length::mm(1e-9));
    assert_eq!(base.wood.name, "walnut", "the middle one, of which the plug is made too");
    assert!((base.strip_width() - base.diameter / 3.0).abs() < Length::mm(1e-9));
    let lines: Vec<f64> = base.glue_lines().map(Length::to_inches).collect();
    let sixth = 4.625 / 6.0;
    assert!(lines.len() == 2 && (lines[0] + sixth).abs() < 1e-9 && (lines[1] - sixth).abs() < 1e-9);
    let stocks: Vec<_> = draft.cuts.iter().map(|cut| &cut.stock).collect();
    let strips = |stock: &&CutStock| matches!(stock, CutStock::Strips(woods) if woods.len() == 3);
    assert!(stocks.into_iter().any(|stock| strips(&stock)));
    assert!(says(&draft, StepKind::Base, "step-base-text-strips"));
    assert!(!says(&of(&[]), StepKind::Base, "step-base-text-strips"));
}

/// Radius 3.82 in at 3 in, 3.58 in at the top: 6 mm of undercut. Its core has to let a segment move in by
/// that and a quarter inch on each side.
#[test]
fn a_mould_in_pieces_comes_out_core_first() {
    let girths = r#"[["0", "15 1/2"], ["1", "19 3/4"], ["2", "22 1/4"], ["3", "24"], ["3 1/2", "22 1/2"]]"#;
    let until = ("weave.courses[2].until", "\"3/8 below mould top\"");
    let draft = of(&[("mould.girths", girths), until, ("mould.pieces", "\"several\"")]);
    assert!(!draft.stops(), "{:#?}", draft.findings);
    let mould = draft.basket.body.form.mould();
    let wanted = 2.0 * (mould.undercut.depth + Length::inches(0.25));
    assert!(mould.undercut.depth.to_mm() > 5.0);
    assert_eq!(mould.core(), Some(wanted));
    let told: Vec<&str> = draft.steps.iter().flat_map(|step| step.text.iter().map(|text| text.id)).collect();
    let place = |id: &str| told.iter().position(|text| *text == id);
    assert!(place("step-base-text-pieces") < place("step-off-text-pieces"));
    assert!(place("step-off-text-pieces").is_some() && place("step-off-text-screw").is_none());
    assert!(step(&draft, StepKind::Base).tools.contains(&"tool-band"));
    let one = of(&[]);
    assert_eq!(one.basket.body.form.mould().core(), None);
    assert!(one.steps.iter().any(|step| step.text.iter().any(|text| text.id == "step-off-text-screw")));
}
