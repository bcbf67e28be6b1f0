//! The sheets that are told in sections: what must and what must not stand on each, in both renderings, and in
//! which order.

use std::path::Path;

use basket::pattern::keys::Declared;
use basket::pattern::{StepKind, keys};
use basket::{Draft, Length, teaching};
use lopdf::{Document, Object, decode_text_string};
use sheets::PacketFile;
use words::Words;

use crate::common::{file, plain, run_on, says, text};

/// The text of the page of HTML, without its markup and drawings.
fn page(packet: &[PacketFile], name: &str) -> String {
    let (_, body) = text(packet, name).split_once("<body>").expect("a body");
    let mut said = String::new();
    for part in body.split("<svg ") {
        said.push_str(part.rsplit_once("</svg>").map_or(part, |(_, after)| after));
    }
    let mut plain_text = String::new();
    for part in said.split('<') {
        plain_text.push(' ');
        plain_text.push_str(part.split_once('>').map_or(part, |(_, text)| text));
    }
    plain(
        &plain_text
            .replace("&amp;", "&")
            .replace("&lt;", "<")
            .replace("&gt;", ">")
            .replace("&quot;", "\"")
            .replace("&#x27;", "'")
            .replace("&#x2f;", "/"),
    )
}

/// The headings of the page of HTML, with their levels.
fn headings_of_page(packet: &[PacketFile], name: &str) -> Vec<(u32, String)> {
    let heading = |rest: &str| {
        let level = rest.chars().next()?.to_digit(10)?;
        let (_, rest) = rest.split_once('>')?;
        Some((level, plain(rest.split_once("</h")?.0)))
    };
    text(packet, name).split("<h").skip(1).filter_map(heading).collect()
}

/// The headings of the PDF in the order in which they are read, with their levels on the page of HTML,
/// where the title comes first.
fn headings_of_pdf(packet: &[PacketFile], name: &str) -> Vec<(u32, String)> {
    let document = Document::load_mem(file(packet, name)).expect("lopdf opens it");
    let catalog = document.catalog().expect("a catalog");
    let mut headings = Vec::new();
    collect(&document, catalog.get(b"StructTreeRoot").expect("a tagged PDF"), &mut headings);
    headings
}

/// Walks the tree of structure elements (ISO 32000-1:2008, 14.7.2): `S` is the kind, `T` the title, `K` the
/// children.
fn collect(document: &Document, element: &Object, headings: &mut Vec<(u32, String)>) {
    match document.dereference(element).map(|(_, object)| object) {
        Ok(Object::Array(children)) => {
            for child in children {
                collect(document, child, headings);
            }
        }
        Ok(Object::Dictionary(element)) => {
            let level = match element.get(b"S").and_then(Object::as_name) {
                Ok(b"H1") => Some(2),
                Ok(b"H2") => Some(3),
                _ => None,
            };
            if let Some(level) = level {
                let title = element.get(b"T").and_then(decode_text_string).expect("a heading has a title");
                headings.push((level, plain(&title)));
            }
            if let Ok(children) = element.get(b"K") {
                collect(document, children, headings);
            }
        }
        _ => {}
    }
}

/// PDF and page have the same headings in the same order.
pub(crate) fn assert_alike(packet: &[PacketFile], draft: &Draft) {
    for sheet in ["handout", "teacher"] {
        let printed = headings_of_pdf(packet, &format!("{sheet}.pdf"));
        let shown = headings_of_page(packet, &format!("{sheet}.html"));
        let (title, shown) = shown.split_first().expect("a title");
        assert_eq!(title, &(1, draft.basket.title.clone()));
        assert_eq!(printed, shown);
        // Five sections at least, and the steps.
        assert!(printed.len() >= 5 + draft.steps.len(), "{printed:?}");
    }
}

/// The text of a sheet as PDF and, where there is one, as page.
fn both(packet: &[PacketFile], sheet: &str, title: &str) -> Vec<(String, String)> {
    let names = [format!("{sheet}.pdf"), format!("{sheet}.html")];
    let there = names.into_iter().filter(|name| packet.iter().any(|file| file.name == name));
    there
        .map(|name| {
            let said = if Path::new(&name).extension().is_some_and(|ending| ending == "pdf") {
                run_on(file(packet, &name), title)
            } else {
                page(packet, &name)
            };
            (name, said)
        })
        .collect()
}

/// The first of what is wanted is the title.
fn assert_says(packet: &[PacketFile], sheet: &str, wanted: &[String]) {
    for (name, said) in both(packet, sheet, &wanted[0]) {
        for text in wanted.iter().map(|text| plain(text)) {
            assert!(says(&said, &text), "{name} does not say: {text}\n{said}");
        }
        assert!(!said.contains("sheet-"), "{name}: a text is missing");
    }
}

/// Each caution stands once, however many steps it holds for.
fn assert_cautions_stand_once(packet: &[PacketFile], sheet: &str, draft: &Draft, words: &Words) {
    for (name, said) in both(packet, sheet, &draft.basket.title) {
        for id in draft.steps.iter().flat_map(|step| &step.cautions) {
            assert_eq!(said.matches(&plain(&words.term(id))).count(), 1, "{id} on {name}");
        }
    }
}

/// What each reader works by stands on that reader's sheet.
pub(crate) fn assert_whole(packet: &[PacketFile], draft: &Draft, words: &Words) {
    let student = wanted_by_students(draft, words);
    assert!(student.len() > 50, "{}", student.len());
    assert_says(packet, "handout", &student);
    assert_cautions_stand_once(packet, "handout", draft, words);
    assert_no_designing(packet, draft, words);
    let teacher = wanted_by_teachers(draft, words);
    assert!(teacher.len() > 80, "{}", teacher.len());
    assert_says(packet, "teacher", &teacher);
    assert_cautions_stand_once(packet, "teacher", draft, words);
    assert_says(packet, "maker", &wanted_by_makers(draft, words));
}

/// No key of the pattern stands on the student's handout, nor why one was chosen, nor what would mend a finding.
fn assert_no_designing(packet: &[PacketFile], draft: &Draft, words: &Words) {
    let keys = keys::every().into_iter().map(Declared::path).filter(|path| path.contains('.'));
    let mut unwanted: Vec<String> = keys.map(str::to_owned).collect();
    assert!(unwanted.len() > 60, "{}", unwanted.len());
    unwanted.extend(draft.basket.choices.iter().map(|choice| words.say(&choice.reason)));
    unwanted.extend(draft.findings.iter().map(|finding| words.finding(finding).remedy));
    for (name, said) in both(packet, "handout", &draft.basket.title) {
        // Of three words at least: others may stand in any sentence.
        for text in
            unwanted.iter().map(|text| plain(text)).filter(|text| text.len() > 15 || text.contains('.'))
        {
            assert!(!said.contains(&text), "{name} tells a student: {text}");
        }
    }
}

fn wanted_by_students(draft: &Draft, words: &Words) -> Vec<String> {
    let mut wanted = vec![draft.basket.title.clone()];
    for cut in &draft.cuts {
        wanted.extend([
            words.cut(cut.of, cut.piece),
            words.say(&cut.purpose),
            words.value(&cut.stock.name()),
        ]);
        wanted.extend(cut.shape.as_ref().map(|shape| words.say(shape)));
        let piece = cut.length.filter(|length| *length < Length::feet(6.0));
        wanted.extend(piece.map(|length| words.length(length)));
    }
    for step in &draft.steps {
        wanted.push(format!("{} {}", step.number, words.name(step.kind)));
        wanted.extend(step.text.iter().map(|paragraph| words.say(paragraph)));
        wanted.extend(step.cautions.iter().chain(&step.tools).map(|id| words.term(id)));
    }
    wanted.extend(draft.basket.notes.iter().filter_map(|note| note.text.clone()));
    wanted
}

fn wanted_by_teachers(draft: &Draft, words: &Words) -> Vec<String> {
    let mut wanted = vec![draft.basket.title.clone()];
    for step in &draft.steps {
        wanted.push(format!("{}. {}", step.number, words.name(step.kind)));
        wanted.extend(step.cautions.iter().chain(&step.tools).map(|id| words.term(id)));
        for fault in teaching::faults(step.kind, &draft.basket) {
            wanted.push(words.say(&fault));
            wanted.push(words.with(&format!("{}.cure", fault.id), &fault.args));
        }
    }
    for question in teaching::questions(&draft.basket) {
        wanted.push(words.say(&question));
        wanted.push(words.with(&format!("{}.answer", question.id), &question.args));
    }
    wanted
}

fn wanted_by_makers(draft: &Draft, words: &Words) -> Vec<String> {
    let mut wanted = vec![draft.basket.title.clone()];
    for course in &draft.basket.body.weave.courses {
        for join in course.joins.iter().filter(|join| join.recolour) {
            wanted.push(format!("{} {} {}", join.row, join.cut_over, join.start_behind));
        }
    }
    for finding in &draft.findings {
        let text = words.finding(finding);
        wanted.extend([text.what, text.place, text.why, text.remedy]);
    }
    let choices = &draft.basket.choices;
    wanted.extend(choices.iter().flat_map(|choice| [choice.key.to_owned(), words.say(&choice.reason)]));
    wanted
}

/// The stave numbers that the steps name are those of the basket.
pub(crate) fn assert_staves_are_named(draft: &Draft, words: &Words) {
    let paragraphs = |kind: StepKind| {
        let step = draft.steps.iter().find(|step| step.kind == kind).expect("the step");
        step.text.iter().map(|paragraph| words.say(paragraph)).collect::<Vec<_>>().join(" ")
    };
    let ears = draft.basket.ears.as_ref().expect("ears");
    for ear in ears.each {
        let said = paragraphs(StepKind::Ears);
        assert!(names(&said, ear.stave), "stave {} in: {said}", ear.stave);
    }
    for stave in &draft.basket.body.pins().ears.as_ref().expect("pins through the ears").staves {
        let said = paragraphs(StepKind::Pins);
        assert!(names(&said, *stave), "stave {stave} in: {said}");
    }
    let said = paragraphs(StepKind::Rim);
    let rim = draft.basket.body.rim();
    for scarf in [rim.outer.scarf, rim.inner.scarf] {
        assert!(names(&said, scarf.from_stave) && names(&said, scarf.to_stave), "{scarf:?} in: {said}");
    }
    for join in &draft.basket.body.lashing().expect("it is lashed").joins {
        let said = paragraphs(StepKind::Lashing);
        assert!(names(&said, *join), "stave {join} in: {said}");
    }
}

/// Whether a number stands in a text.
fn names(said: &str, number: u32) -> bool {
    said.split(|sign: char| !sign.is_ascii_digit()).any(|word| word == number.to_string())
}
