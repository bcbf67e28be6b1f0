//! What lies ready shortens the making: steps, tools, cautions and times.

use basket::pattern::{Ready, StepKind, read};
use basket::steps::Step;
use basket::{Catalogue, Draft, Hand};

fn draft(ready: &str) -> Draft {
    let text = format!(
        "title = \"T\"\nunits = \"in\"\n{ready}\nmould = {{ base = \"5\", rim = \"8\", height = \"4\" }}\n"
    );
    let pattern = read(&text, Catalogue::built_in()).unwrap_or_else(|problems| panic!("{problems:#?}"));
    Draft::of(pattern, Catalogue::built_in(), &Hand::USUAL)
}

fn step(draft: &Draft, kind: StepKind) -> Option<&Step> {
    draft.steps.iter().find(|step| step.kind == kind)
}

fn says(step: &Step, id: &str) -> bool {
    step.text.iter().any(|message| message.id == id)
}

#[test]
fn tapered_staves_are_cut_and_each_is_named_once() {
    let ready = draft("ready = [\"base\", \"staves tapered\", \"base\"]").basket.ready;
    assert_eq!(ready.each(), [Ready::StavesCut, Ready::StavesTapered, Ready::Base]);
    assert!(!ready.has(Ready::Rings));
    assert_eq!(draft("ready = \"rings\"").basket.ready.each(), [Ready::Rings]);
    assert!(draft("").basket.ready.each().is_empty());
}

#[test]
fn cut_staves_are_tapered_only() {
    let (all, cut) = (draft(""), draft("ready = [\"staves cut\"]"));
    let [all, cut] = [&all, &cut].map(|draft| step(draft, StepKind::Cut).expect("the staves are shaped"));
    assert!(says(all, "step-cut-text-sort") && says(all, "step-cut-text-staves"));
    assert!(!says(cut, "step-cut-text-sort") && !says(cut, "step-cut-text-staves"));
    assert!(says(cut, "step-cut-text-ready") && says(cut, "step-cut-text-taper"));
    assert!(all.tools.contains(&"tool-shears") && !cut.tools.contains(&"tool-shears"));
    assert!(cut.work_minutes < all.work_minutes);
}

#[test]
fn tapered_staves_are_set_at_once() {
    let all = draft("");
    let tapered = draft("ready = [\"staves tapered\"]");
    assert_eq!(step(&tapered, StepKind::Cut), None);
    let kinds: Vec<StepKind> = tapered.steps.iter().map(|step| step.kind).collect();
    assert_eq!(kinds[..4], [StepKind::Seal, StepKind::Base, StepKind::Staves, StepKind::FirstRows]);
    assert_eq!(tapered.steps[0].number, 1);
    assert!(says(&tapered.steps[2], "step-staves-text-ready"));
    // Nobody sands or cuts any more before the rim is scarfed.
    let early = |draft: &Draft, tool: &str| {
        draft
            .steps
            .iter()
            .take_while(|step| step.kind != StepKind::Rim)
            .any(|step| step.tools.contains(&tool))
    };
    assert!(early(&all, "tool-stave-template") && !early(&tapered, "tool-stave-template"));
    let minutes = |draft: &Draft| draft.steps.iter().map(|step| step.work_minutes).sum::<f64>();
    assert!(minutes(&tapered) < minutes(&all));
}

#[test]
fn a_base_that_lies_ready_is_not_sanded_again() {
    let sands = |draft: &Draft| {
        let text = draft.steps.iter().flat_map(|step| &step.text);
        text.into_iter().any(|text| ["step-seal-text-sand", "step-base-text-sand"].contains(&text.id))
    };
    assert!(sands(&draft("")));
    assert!(!sands(&draft("ready = [\"base\"]")));
}
