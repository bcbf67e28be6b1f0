//! From the text of a kits file to a class, or to all that is wrong with it.

use std::collections::BTreeMap;

use basket::message::Message;
use basket::pattern::{AllReady, Ready, Word};
use basket::{Colour, limits};
use planning::class::written::Fault;
use toml::Spanned;
use toml::de::{DeTable, DeValue};

use super::file::{Group, KitsFile, PriceTable, WEEK};
use super::table::{Faults, Table, like, short};

/// Students of one class.
const MOST_STUDENTS: u32 = 500;
/// Days for which somebody waits for material.
const MOST_DAYS: u32 = 1000;

/// Reads such a file.
///
/// # Errors
/// Everything that is wrong with it, in the order of the file.
pub(crate) fn read(text: &str) -> Result<KitsFile, Vec<Fault>> {
    if text.len() > limits::PATTERN_BYTES {
        return Err(vec![Fault { says: Message::new("kits-fault-large"), span: None }]);
    }
    let file = DeTable::parse(text).map_err(|error| {
        let span = error.span().map(|span| span.start.min(text.len())..span.end.min(text.len()));
        vec![Fault { says: Message::new("kits-fault-toml"), span }]
    })?;
    let faults = Faults::default();
    let class = class(file.get_ref(), &faults);
    let mut faults = faults.into_inner();
    faults.sort_by_key(|fault| fault.span.as_ref().map_or(0, |span| span.start));
    match class {
        Some(class) if faults.is_empty() => Ok(class),
        _ => Err(faults),
    }
}

fn class(file: &DeTable<'_>, faults: &Faults) -> Option<KitsFile> {
    let keys = ["title", "needed", "delivery_days", "dye_days", "kerf", "students", "price"];
    let file = Table::open(file, 0..0, &keys, faults);
    let title = file.needed("title");
    let (needed, kerf) = (file.day("needed"), file.kerf("kerf"));
    let [delivery_days, dye_days] =
        ["delivery_days", "dye_days"].map(|key| file.whole(key, WEEK, 0..=MOST_DAYS));
    let students = students(&file, faults);
    let price = file.table("price").map(|(table, span)| price(table, span, faults)).unwrap_or_default();
    let title = title?.to_owned();
    Some(KitsFile { title, needed, delivery_days, dye_days, kerf, students, price })
}

fn students(file: &Table, faults: &Faults) -> Vec<Group> {
    let groups = file.list("students").unwrap_or_default();
    let mut all = Vec::new();
    for group in groups {
        match group.get_ref().as_table() {
            Some(table) => all.extend(self::group(table, group, faults)),
            None => file.fault(group.span(), Message::new("kits-fault-group")),
        }
    }
    let count = all.iter().fold(0_u32, |sum, group: &Group| sum.saturating_add(group.count));
    if groups.is_empty() && !faults.borrow().iter().any(|fault| fault.says.id == "kits-fault-list") {
        file.fault(file.span("students"), Message::new("kits-fault-nobody"));
    } else if count > MOST_STUDENTS {
        let says = Message::new("kits-fault-students").with("count", count).with("most", MOST_STUDENTS);
        file.fault(file.span("students"), says);
    }
    all
}

fn group(table: &DeTable<'_>, place: &Spanned<DeValue<'_>>, faults: &Faults) -> Option<Group> {
    let table = Table::open(table, place.span(), &["pattern", "count", "name", "colours", "ready"], faults);
    let pattern = table.needed("pattern");
    let colours = colours(&table);
    let ready = table.list("ready").map(|words| AllReady::of(ready(&table, words)));
    let count = table.whole("count", 1, 1..=MOST_STUDENTS);
    Some(Group {
        count,
        name: table.any_text("name").filter(|name| !name.trim().is_empty()).map(str::to_owned),
        pattern: pattern?.to_owned(),
        colours,
        ready,
    })
}

/// Colours in the place of others: a known one, or one of the screen such as `#3366aa`.
fn colours(table: &Table) -> BTreeMap<String, Colour> {
    let Some((pairs, _)) = table.table("colours") else { return BTreeMap::new() };
    let one = |(from, to): (&Spanned<_>, &Spanned<DeValue<'_>>)| {
        let name = to.get_ref().as_str().unwrap_or_default();
        let colour = Colour::built_in(name).or_else(|| Colour::hex(name, name));
        if colour.is_none() {
            let known = basket::colour::BUILT_IN.iter().map(|(name, _)| *name);
            let says = like(["kits-fault-colour-near", "kits-fault-colour"], name, known);
            table.fault(to.span(), says.with("colour", short(name)));
        }
        let from: &Spanned<std::borrow::Cow<'_, str>> = from;
        Some((from.get_ref().to_string(), colour?))
    };
    pairs.iter().filter_map(one).collect()
}

fn ready(table: &Table, words: &[Spanned<DeValue<'_>>]) -> Vec<Ready> {
    let one = |word: &Spanned<DeValue<'_>>| {
        let text = word.get_ref().as_str().unwrap_or_default();
        let found = Ready::ALL.iter().copied().find(|ready| ready.word() == text);
        if found.is_none() {
            let known = Ready::ALL.iter().map(|ready| ready.word());
            let says = like(["class-fault-ready-near", "class-fault-ready"], text, known);
            table.fault(word.span(), says.with("word", short(text)));
        }
        found
    };
    words.iter().filter_map(one).collect()
}

fn price(table: &DeTable<'_>, span: std::ops::Range<usize>, faults: &Faults) -> PriceTable {
    let keys = [
        "currency",
        "wage",
        "overhead",
        "waste",
        "mould",
        "packing",
        "margin",
        "retail",
        "step",
        "office_minutes",
        "kit_minutes",
        "teaching_hours",
        "travel",
        "room",
        "venue",
        "target",
        "fee",
    ];
    let table = Table::open(table, span, &keys, faults);
    let amount = |key| table.amount(key).unwrap_or_default();
    PriceTable {
        currency: table.any_text("currency").unwrap_or_default().to_owned(),
        wage: amount("wage"),
        overhead: amount("overhead"),
        waste: amount("waste"),
        mould: amount("mould"),
        packing: amount("packing"),
        margin: amount("margin"),
        retail: table.amount("retail"),
        step: amount("step"),
        office_minutes: table.time("office_minutes"),
        kit_minutes: table.time("kit_minutes"),
        teaching_hours: table.time("teaching_hours"),
        travel: amount("travel"),
        room: amount("room"),
        venue: amount("venue"),
        target: table.amount("target"),
        fee: table.amount("fee"),
    }
}

#[cfg(test)]
mod tests {
    use basket::pattern::Units;
    use words::{Language, Words};

    use super::*;

    fn told(text: &str, language: Language) -> Vec<(String, usize)> {
        let words = Words::new(language, Units::default());
        let one = |fault: Fault| {
            let problem = fault.told(|id, args| words.with(id, args));
            assert!(problem.help.as_ref().is_some_and(|help| !help.contains("kits-fault")), "{problem:?}");
            assert!(!problem.message.contains("kits-fault"), "{problem:?}");
            (problem.message.clone(), problem.line_column(text).0)
        };
        read(text).unwrap_err().into_iter().map(one).collect()
    }

    #[test]
    fn a_whole_file_is_read() {
        let file = read(include_str!("../../../../docs/workshop/autumn-weekend.toml")).unwrap();
        assert_eq!((file.students.len(), file.delivery_days, file.needed.unwrap().day()), (3, 5, 17));
        assert_eq!(file.students[2].colours["blue"], Colour::built_in("red").unwrap());
        assert_eq!(file.price.overhead.to_string(), "4.50");
    }

    #[test]
    fn all_that_is_wrong_is_said_at_its_line_in_both_languages() {
        let text = "titel = \"x\"\nneeded = \"soon\"\ndye_days = -1\nkerf = \"9 in\"\n[[students]]\n\
            patern = \"p.toml\"\ncount = \"many\"\ncolours = { blue = \"mauve\", red = \"bleu\" }\n\
            ready = [\"everything\"]\n[price]\nwage = \"-3\"\nkit_minutes = \"long\"\nfee = 12\n";
        let english = told(text, Language::English);
        let lines: Vec<usize> = english.iter().map(|(_, line)| *line).collect();
        assert_eq!(lines, [1, 1, 2, 3, 4, 5, 6, 7, 8, 8, 9, 11, 12, 13], "{english:?}");
        let german = told(text, Language::German);
        for ((english, _), (german, _)) in english.iter().zip(&german) {
            assert_ne!(english, german);
        }
        assert_eq!(german[2].0, "\u{201e}soon\u{201c} ist kein Tag.");
        for (text, line) in [
            ("title = \"x\"\nstudents = []\n", 2),
            ("title = \"x\"\nstudents = \"all\"\n", 2),
            ("title = \"x\"\nstudents = [3]\n", 2),
            ("title = \"x\"\n", 1),
            ("title = \"x\n", 1),
            ("title = \"x\"\n[[students]]\npattern = \"p\"\ncount = 4000000000\n", 4),
            (
                "title = \"x\"\n[[students]]\npattern = \"p\"\ncount = 300\n[[students]]\npattern = \"p\"\ncount = 300\n",
                2,
            ),
            ("title = \"x\"\nprice = 3\n[[students]]\npattern = \"p\"\n", 2),
        ] {
            let found = told(text, Language::German);
            assert_eq!((found.len(), found[0].1), (1, line), "{text}: {found:?}");
        }
    }
}
