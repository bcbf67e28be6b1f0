//! For each way of handle: its steps stand in the order of the trade, and cut list, tools, cautions, times
//! and figures follow it. The order is common practice: a handle on ears comes after the lashing, a fixed one
//! before the hoops, and bending before all weaving.

#[path = "findings/draft.rs"]
mod draft;

use basket::Draft;
use basket::cuts::{Cut, CutStock};
use basket::findings::Grade;
use basket::fittings::Handle;
use basket::measure::Length;
use basket::pattern::StepKind;
use basket::piece::Piece;
use basket::steps::Stage;
use draft::{Changes, pattern, read};

fn of(changes: Changes) -> Draft {
    read(&pattern(changes)).unwrap_or_else(|| panic!("{changes:?} cannot be read"))
}

fn kinds(draft: &Draft) -> Vec<StepKind> {
    draft.steps.iter().map(|step| step.kind).collect()
}

fn place(draft: &Draft, kind: StepKind) -> usize {
    kinds(draft).iter().position(|step| *step == kind).unwrap_or_else(|| panic!("no {kind:?}"))
}

fn texts(draft: &Draft, kind: StepKind) -> Vec<&'static str> {
    draft.steps[place(draft, kind)].text.iter().map(|text| text.id).collect()
}

fn tools(draft: &Draft, kind: StepKind) -> &[&'static str] {
    &draft.steps[place(draft, kind)].tools
}

fn cut(draft: &Draft, piece: Piece) -> &Cut {
    draft.cuts.iter().find(|cut| cut.piece == piece).unwrap_or_else(|| panic!("no {piece:?}"))
}

fn cautions(draft: &Draft) -> Vec<&'static str> {
    draft.steps.iter().flat_map(|step| step.cautions.iter().copied()).collect()
}

const BENT: (&str, &str) = ("handle.made", "\"bent\"");
const FIXED: (&str, &str) = ("handle.kind", "\"fixed\"");
const KNOB: (&str, &str) = ("handle.kind", "\"knob\"");

#[test]
fn a_handle_is_bought_bent() {
    let draft = of(&[]);
    assert!(!kinds(&draft).contains(&StepKind::Bend));
    assert!(place(&draft, StepKind::Lashing) < place(&draft, StepKind::Handle));
    assert!(place(&draft, StepKind::Handle) < place(&draft, StepKind::Plug));
    assert!(!cautions(&draft).contains(&"caution-steam"));
    let handle = cut(&draft, Piece::Handle);
    assert_eq!((&handle.stock, handle.length), (&CutStock::BoughtBow, None));
    let shape = handle.shape.as_ref().expect("it is asked for by its shape");
    assert_eq!(shape.id, "cut-bow-bought");
    let bow = draft.basket.bow().expect("a bow");
    let asked = |name| shape.args.iter().find(|(arg, _)| *arg == name).map(|(_, value)| value.clone());
    assert_eq!(asked("span"), Some((bow.half_span * 2.0).into()));
    assert_eq!(asked("rise"), Some(bow.rise.into()));
    // Set level, marked through the ear, drilled, riveted, clipped and tried.
    assert_eq!(
        texts(&draft, StepKind::Handle)[..6],
        [
            "step-handle-text-bought",
            "step-handle-text-outside",
            "step-handle-text-mark",
            "step-handle-text-drill",
            "step-handle-text-rivet",
            "step-handle-text-clip"
        ]
    );
    assert!(cautions(&draft).contains(&"caution-handle-load"));
}

#[test]
fn a_handle_bent_by_the_maker_is_bent_first_and_dries() {
    let (bought, bent) = (of(&[]), of(&[BENT]));
    assert!(place(&bent, StepKind::Bend) < place(&bent, StepKind::Base));
    let step = &bent.steps[place(&bent, StepKind::Bend)];
    // Overnight on its form, while the basket is woven: nobody waits for it.
    assert!(step.text.iter().any(|text| text.id == "step-bend-text-dry"));
    assert!(step.wait_minutes.abs() < 1e-9);
    assert!(step.cautions.contains(&"caution-steam"));
    assert!(step.tools.contains(&"tool-bending-form") && step.tools.contains(&"tool-steam"));
    let work = |draft: &Draft| draft.steps.iter().map(|step| step.work_minutes).sum::<f64>();
    assert!(work(&bent) > work(&bought));
    let handle = cut(&bent, Piece::Handle);
    assert_eq!((&handle.stock, handle.length), (&CutStock::Bail, bent.basket.bow().map(|bow| bow.cut)));
    assert!(!texts(&bent, StepKind::Handle).contains(&"step-handle-text-bought"));
    // One that lies ready needs no bending.
    let ready = of(&[BENT, ("ready", "[\"handle\"]")]);
    assert!(!kinds(&ready).contains(&StepKind::Bend) && !cautions(&ready).contains(&"caution-steam"));
    assert!(texts(&ready, StepKind::Handle).contains(&"step-handle-text-bought"));
}

/// By hand, with ears of 1/16 in (1.5875 mm), a handle of 3/16 in (4.7625), a washer of 0.8 and burrs of up
/// to 1.6 mm: outside 4.7625 + 1.5875 + 0.8 + 1.6, in a slot 4.7625 + 1.6, between halves
/// 4.7625 + 1.5875 + 1.6; a slot is 0.4 wider than the ear.
#[test]
fn grip_washers_and_span_follow_the_joint() {
    let joint = |joint: &'static str| {
        of(&[("handle.joint", joint), ("handle.thickness", "\"3/16 in\""), ("ears.thickness", "\"1/16 in\"")])
    };
    let wanted = [("\"outside\"", 8.75, 4), ("\"slot\"", 6.3625, 2), ("\"between\"", 7.95, 2)];
    for (word, grip, washers) in wanted {
        let draft = joint(word);
        let rivets = draft.basket.rivets().expect("rivets");
        assert!((rivets.grip.to_mm() - grip).abs() < 1e-9, "{word}: {:?}", rivets.grip);
        assert_eq!((rivets.count, rivets.washers), (2, washers), "{word}");
        assert_eq!(cut(&draft, Piece::Washers).count, washers);
        // What is asked for is no longer than what is bought.
        let bought = cut(&draft, Piece::Rivets).length.expect("a length");
        assert!(bought >= rivets.length, "{word}: {bought:?} for {:?}", rivets.length);
    }
    let span = |word| joint(word).basket.bow().expect("a bow").half_span;
    let nearer = span("\"outside\"") - span("\"slot\"");
    assert!((nearer.to_mm() - (1.5875 / 2.0 + 0.8 + 4.7625 / 2.0)).abs() < 1e-9);
    assert_eq!(span("\"slot\""), span("\"between\""));
    let slotted = joint("\"slot\"");
    let swing = slotted.basket.swing().expect("it swings");
    assert!((swing.slot.expect("a slot").to_mm() - 1.9875).abs() < 1e-9);
    assert!(tools(&slotted, StepKind::Handle).contains(&"tool-saw"));
    assert!(texts(&slotted, StepKind::Handle).contains(&"step-handle-text-slot"));
    assert!(!tools(&joint("\"outside\""), StepKind::Handle).contains(&"tool-saw"));
}

/// A hole 5/8 in above the rim and 1/2 in of wood below it leave 1/8 in; with 1/4 in showing there is
/// 3/8 in of wood.
#[test]
fn what_shows_of_an_ear_is_what_the_end_leaves() {
    let shows = |changes: Changes| {
        let draft = of(changes);
        let swing = draft.basket.swing().expect("it swings").clone();
        (swing.shows.to_inches(), swing.bow.beyond().to_inches())
    };
    let close = |found: (f64, f64), wanted: (f64, f64)| {
        assert!((found.0 - wanted.0).abs() < 1e-9 && (found.1 - wanted.1).abs() < 1e-9, "{found:?}");
    };
    close(shows(&[]), (0.125, 0.5));
    close(shows(&[("handle.shows", "\"1/4 in\"")]), (0.25, 0.375));
}

/// Under 7 in across, holes of 1/8 in (common practice), and a rivet that goes through them and is long
/// enough.
#[test]
fn small_baskets_have_small_rivets() {
    let mould = ("mould", "{ base = \"3 1/2 in\", rim = \"5 in\", height = \"3 1/2 in\" }");
    let small = of(&[mould, ("base.diameter", "\"3 1/4 in\"")]);
    assert!(small.basket.across().length.to_inches() < 7.0);
    let rivets = small.basket.rivets().expect("rivets");
    assert_eq!(rivets.drill, Length::inches(0.125));
    assert!(rivets.stock.width < Length::inches(0.125), "{}", rivets.stock.name);
    assert!(rivets.stock.length.is_some_and(|length| length >= rivets.length));
    assert_eq!(rivets.burr.as_ref().map(|burr| burr.name.as_str()), Some("copper burr 12"));
    assert!(of(&[]).basket.rivets().expect("rivets").drill > Length::inches(0.125));
}

/// Ears of oak 3/8 in thick made the rivet asked for longer than any that was known.
#[test]
fn a_rivet_long_enough_is_found_for_thick_ears() {
    let draft = of(&[("ears.material", "\"oak\"")]);
    let rivets = draft.basket.rivets().expect("rivets");
    assert!(cut(&draft, Piece::Rivets).length.is_some_and(|length| length >= rivets.length));
    assert!(draft.findings.iter().all(|finding| finding.code != "rivet-too-short"));
}

#[test]
fn a_fixed_handle_goes_into_the_rim_before_the_hoops() {
    let draft = of(&[FIXED]);
    assert!(draft.basket.ears.is_none() && draft.basket.rivets().is_none());
    let handle = place(&draft, StepKind::Handle);
    assert!(place(&draft, StepKind::OffMould) < handle && handle < place(&draft, StepKind::Rim));
    assert!(!kinds(&draft).contains(&StepKind::Ears));
    assert!(draft.steps.iter().all(|step| step.stage != Stage::Handled));
    for absent in [Piece::Rivets, Piece::Washers, Piece::Ears] {
        assert!(draft.cuts.iter().all(|cut| cut.piece != absent), "{absent:?}");
    }
    let Some(Handle::Fixed(fixed)) = &draft.basket.handle else { panic!("it is fixed") };
    // Its whole length: the bow above the rim, and twice the rim's height and the part below it.
    let rim = draft.basket.body.rim();
    let leg = rim.height + fixed.ends.tail;
    assert!((fixed.leg - leg).abs() < Length::mm(1e-9));
    assert!((fixed.bow.cut - (fixed.bow.arc + leg * 2.0)).abs() < Length::mm(1e-9));
    assert!((fixed.ends.tail - rim.along / 2.0).abs() < Length::mm(1e-9), "half of the wall");
    // Pins hold its ends: through hoop, end, stave and hoop.
    let pins = draft.basket.body.pins().ears.as_ref().expect("pins through the ends");
    let mut staves = fixed.ends.each.map(|end| end.stave);
    staves.sort_unstable();
    assert_eq!(pins.staves, staves);
    assert!(pins.stack > draft.basket.body.pins().others.stack);
    assert!(cautions(&draft).contains(&"caution-handle-load"));
    assert!(!draft.findings.iter().any(|finding| finding.grade == Grade::Stop), "{:#?}", draft.findings);
    let bent = of(&[FIXED, BENT]);
    assert!(place(&bent, StepKind::Bend) < place(&bent, StepKind::Base));
    assert_eq!(cut(&bent, Piece::Handle).length, bent.basket.bow().map(|bow| bow.cut));
}

/// An ear of 1/16 in, a washer of 0.8 mm, a knob of 1/2 in and a burr of 1.6 mm: 16.69 mm, and for the head
/// of a rivet one and a half diameters more.
#[test]
fn knobs_are_riveted_to_the_ears() {
    let draft = of(&[KNOB, ("ears.thickness", "\"1/16 in\"")]);
    let Some(Handle::Knobs(knobs)) = &draft.basket.handle else { panic!("knobs") };
    assert!((knobs.rivets.grip.to_mm() - (1.5875 + 0.8 + 12.7 + 1.6)).abs() < 1e-9);
    let needed = knobs.rivets.grip + knobs.rivets.stock.width * 1.5;
    assert!((knobs.rivets.length - needed).abs() < Length::mm(1e-9));
    assert!(knobs.rim_room > Length::ZERO);
    assert!(draft.basket.bow().is_none());
    assert!(place(&draft, StepKind::Lashing) < place(&draft, StepKind::Handle));
    assert_eq!(cut(&draft, Piece::Knobs).count, 2);
    assert!(cut(&draft, Piece::Rivets).length.is_some_and(|length| length >= needed));
    assert!(draft.cuts.iter().all(|cut| cut.piece != Piece::Handle));
    let told = texts(&draft, StepKind::Handle);
    assert!(told.contains(&"step-handle-text-knobs") && !told.contains(&"step-handle-text-on-rim"));
    assert!(!draft.findings.iter().any(|finding| finding.grade == Grade::Stop), "{:#?}", draft.findings);
}

#[test]
fn without_a_handle_there_is_none_of_it() {
    let draft = of(&[("handle.kind", "\"none\""), ("ready", "[\"handle\"]")]);
    assert!(!kinds(&draft).contains(&StepKind::Handle) && !kinds(&draft).contains(&StepKind::Bend));
    assert!(!cautions(&draft).contains(&"caution-handle-load"));
    assert!(draft.cuts.iter().all(|cut| !matches!(cut.piece, Piece::Handle | Piece::Rivets)));
}

#[test]
fn what_does_not_belong_to_a_handle_is_refused() {
    let refused = |lines: &str, wanted: &str| {
        let text = format!(
            "title = \"T\"\nunits = \"in\"\nmould = {{ base = \"5\", rim = \"8\", height = \"4\" }}\n{lines}\n"
        );
        let problems = basket::pattern::read(&text, basket::Catalogue::built_in()).expect_err(lines);
        assert!(problems.iter().any(|problem| problem.message.contains(wanted)), "{lines}: {problems:?}");
        assert!(problems.iter().all(|problem| problem.help.is_some() && problem.span.is_some()));
    };
    refused("[handle]\nkind = \"fixed\"\njoint = \"slot\"", "handle.joint");
    refused("[handle]\nkind = \"knob\"\nrise = \"4\"", "handle.rise");
    refused("[handle]\nends = \"2\"", "handle.ends");
    refused("[ears]\nmaterial = \"oak\"\n[handle]\nkind = \"fixed\"", "ears");
}
