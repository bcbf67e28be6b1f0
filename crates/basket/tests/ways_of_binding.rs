//! A rim that pins alone hold, and what stands in the rim: steps, cut list, tools, cautions, times, stages and words
//! follow it (common practice).

use basket::findings::Grade;
use basket::message::Value;
use basket::pattern::{Every, StepKind, read};
use basket::steps::{Stage, Step};
use basket::{Catalogue, Draft, Hand, Length, Piece};

fn text(lines: &str) -> String {
    format!(
        "title = \"T\"\nunits = \"in\"\n{lines}\nmould = {{ base = \"5\", rim = \"8\", height = \"4\", side = \"bowl\" }}\n\
         staves = {{ stock = \"flat oval reed 1/4 in\" }}\n"
    )
}

fn draft(lines: &str) -> Draft {
    let text = text(lines);
    let pattern = read(&text, Catalogue::built_in()).unwrap_or_else(|problems| panic!("{problems:#?}"));
    Draft::of(pattern, Catalogue::built_in(), &Hand::USUAL)
}

fn step(draft: &Draft, kind: StepKind) -> &Step {
    draft.steps.iter().find(|step| step.kind == kind).unwrap_or_else(|| panic!("no {kind:?}"))
}

fn texts(draft: &Draft, kind: StepKind) -> Vec<&'static str> {
    step(draft, kind).text.iter().map(|text| text.id).collect()
}

fn has_cut(draft: &Draft, piece: Piece) -> bool {
    draft.cuts.iter().any(|cut| cut.piece == piece)
}

const ALONE: &str = "lashing = \"none\"";
const FIXED: &str = "handle = { kind = \"fixed\" }";

#[test]
fn pins_alone_are_the_last_of_the_rim() {
    let (alone, lashed) = (draft(ALONE), draft(""));
    let kinds: Vec<StepKind> = alone.steps.iter().map(|step| step.kind).collect();
    let order = [StepKind::Rim, StepKind::Pins, StepKind::Plug, StepKind::Finish];
    assert_eq!(kinds[kinds.len() - 4..], order);
    assert!(!alone.basket.stages().contains(&Stage::Lashed));
    assert!(lashed.basket.stages().contains(&Stage::Lashed));
    assert_eq!(step(&alone, StepKind::Plug).stage, Stage::Pinned);
    assert_eq!(step(&lashed, StepKind::Plug).stage, Stage::Lashed);
    for piece in [Piece::Lashing, Piece::Fillers] {
        assert!(!has_cut(&alone, piece) && has_cut(&lashed, piece), "{piece:?}");
    }
    // Tips that stay in sight are sanded; nothing is woven in that a sander could tear.
    let pins = step(&alone, StepKind::Pins);
    assert!(texts(&alone, StepKind::Pins).contains(&"step-pins-text-alone"));
    assert!(pins.tools.contains(&"tool-sandpaper") && pins.cautions.contains(&"caution-sanding-dust"));
    let lashed_pins = step(&lashed, StepKind::Pins);
    assert!(!lashed_pins.tools.contains(&"tool-sandpaper"));
    assert!(!lashed_pins.cautions.contains(&"caution-sanding-dust"));
    assert!(texts(&alone, StepKind::Plug).contains(&"step-plug-text-sand-pinned"));
    assert!(texts(&lashed, StepKind::Plug).contains(&"step-plug-text-sand"));
    // More pins take longer, and nothing is wrapped.
    assert_eq!(alone.basket.body.pins().count(), alone.basket.body.uprights().count);
    assert!(pins.work_minutes > lashed_pins.work_minutes);
    let others = |draft: &Draft| {
        let others =
            draft.steps.iter().filter(|step| !matches!(step.kind, StepKind::Pins | StepKind::Lashing));
        others.map(|step| step.work_minutes).sum::<f64>()
    };
    assert!((others(&alone) - others(&lashed)).abs() < 1e-9);
    assert!(alone.findings.iter().all(|finding| finding.grade == Grade::Note), "{:#?}", alone.findings);
}

#[test]
fn what_is_told_of_a_lashing_is_not_told_without_one() {
    let with = |more: &str| draft(&format!("{ALONE}\nfinish-on = [\"rim\"]\n{more}"));
    assert!(texts(&with(""), StepKind::Finish).contains(&"step-finish-text-on-rim-pinned"));
    let handled = with("handle = { kind = \"swing\" }");
    assert!(texts(&handled, StepKind::Plug).contains(&"step-plug-text-sand-handle-pinned"));
    assert_eq!(step(&handled, StepKind::Plug).stage, Stage::Handled);
    assert!(texts(&with(FIXED), StepKind::Handle).contains(&"step-handle-text-held-pinned"));
    let questions = |draft: &Draft| {
        let asked = basket::teaching::questions(&draft.basket);
        asked.iter().any(|question| question.id == "question-lashing")
    };
    assert!(questions(&draft("")) && !questions(&with("")));
    let faults = |draft: &Draft| {
        let faults = basket::teaching::faults(StepKind::Plug, &draft.basket);
        faults.iter().any(|fault| fault.id == "fault-plug-lashing")
    };
    assert!(faults(&draft("")) && !faults(&with("")));
}

/// A handle on the ears of a bare rim has more room than on a lashed one.
#[test]
fn a_bare_rim_leaves_a_handle_more_room() {
    let fold = |lines: &str| {
        let draft = draft(&format!("{lines}\nhandle = {{ kind = \"swing\" }}"));
        format!("{:?}", draft.basket.swing().expect("it swings").fold)
    };
    assert_ne!(fold(ALONE), fold(""));
}

/// A filler lies under the wraps of a lashing.
#[test]
fn a_filler_wants_a_lashing() {
    let filler = "filler = { stock = \"cane common\" }";
    let read = |lines: &str| read(&text(lines), Catalogue::built_in()).map(|_| ());
    assert_eq!(read(filler), Ok(()));
    let problems = read(&format!("{filler}\n{ALONE}")).expect_err("nothing holds the filler");
    assert_eq!(problems.len(), 1, "{problems:#?}");
    assert!(problems[0].message.contains("filler") && problems[0].help.is_some());
    assert_eq!(read(&format!("filler = \"none\"\n{ALONE}")), Ok(()));
}

#[test]
fn another_word_than_none_is_a_problem() {
    let problems = read(&text("lashing = \"no\""), Catalogue::built_in()).expect_err("no such word");
    assert!(problems[0].message.contains("lashing"), "{problems:#?}");
    assert!(problems[0].help.as_ref().is_some_and(|help| help.contains("none")), "{problems:#?}");
}

/// A pattern without a lashing is amended by one of its keys, and one with a lashing keeps the others.
#[test]
fn a_lashing_is_amended_key_by_key() {
    let pattern = |lines: &str| read(&text(lines), Catalogue::built_in()).expect("it reads");
    let amended = |lines: &str, key: &str, value: &str| {
        pattern(lines).amended(key, value, Catalogue::built_in()).expect("it can be amended").lashing
    };
    assert_eq!(amended("", "lashing", "\"none\""), None);
    assert_eq!(amended(ALONE, "rim.lap", "\"3 in\""), None);
    let every = amended(ALONE, "lashing", "{ every = \"stave\" }").expect("it is lashed now");
    assert_eq!(every.every, Some(Every::Stave));
    let kept = amended("lashing = { tail = \"3\" }", "lashing.every", "\"stave\"").expect("it is lashed");
    assert_eq!((kept.every, kept.tail), (Some(Every::Stave), Some(Length::inches(3.0))));
}

/// The ends of a fixed handle stand in the rim as ears do, but nobody calls them ears.
#[test]
fn ends_of_a_handle_are_not_called_ears() {
    let (ears, ends) = (draft("handle = { kind = \"swing\" }"), draft(FIXED));
    let said = |draft: &Draft, kind, id: &str| texts(draft, kind).contains(&id);
    for (kind, of_ears, of_ends) in [
        (StepKind::Pins, "step-pins-text-ears", "step-pins-text-ends"),
        (StepKind::Lashing, "step-lashing-text-filler-ears", "step-lashing-text-filler-ends"),
        (StepKind::Rim, "step-rim-text-ring-clamp-ears", "step-rim-text-ring-clamp-ends"),
    ] {
        assert!(said(&ears, kind, of_ears) && !said(&ears, kind, of_ends), "{of_ears}");
        assert!(said(&ends, kind, of_ends) && !said(&ends, kind, of_ears), "{of_ends}");
    }
    assert!(said(&draft(""), StepKind::Rim, "step-rim-text-ring-clamp"));
    let purposes = |draft: &Draft| -> Vec<&'static str> {
        draft.cuts.iter().filter(|cut| cut.piece == Piece::Pins).map(|cut| cut.purpose.id).collect()
    };
    assert_eq!(purposes(&ears), ["cut-pin-purpose", "cut-pin-ear-purpose"]);
    assert_eq!(purposes(&ends), ["cut-pin-purpose", "cut-pin-end-purpose"]);
    // A lap too long for the half of the rim comes near what stands there.
    let near = |lines: &str| {
        let draft = draft(&format!("{lines}\nrim = {{ lap = \"12 1/4\" }}"));
        let finding = draft.findings.into_iter().find(|finding| finding.code == "scarf-under-ear");
        let finding = finding.expect("it comes near");
        finding.args.into_iter().find(|(name, _)| *name == "end").expect("it is named").1
    };
    assert_eq!(near("handle = { kind = \"swing\" }"), Value::Term("in-rim-ear"));
    assert_eq!(near(FIXED), Value::Term("in-rim-end"));
}

/// A bent handle dries on its form while the basket is woven: nobody waits for it.
#[test]
fn a_handle_on_its_form_holds_nobody_up() {
    let bent = draft("handle = { kind = \"swing\", made = \"bent\" }");
    assert!(step(&bent, StepKind::Bend).wait_minutes.abs() < 1e-9);
    assert!(texts(&bent, StepKind::Bend).contains(&"step-bend-text-dry"));
    let bought = draft("handle = { kind = \"swing\" }");
    let waits = |draft: &Draft| draft.steps.iter().map(|step| step.wait_minutes).sum::<f64>();
    assert!((waits(&bent) - waits(&bought)).abs() < 1e-9);
    let first = |draft: &Draft| basket::teaching::sessions(&draft.steps, 300.0)[0].parts.len();
    assert!(first(&bent) > 1, "the first session does not end with the bending");
}
