//! The school's class of two days: planned, taught, written down, learned from, and drafted anew.

mod common;

use std::fs;
use std::path::{Path, PathBuf};

use common::{Said, fits, room, run, stavewright};
use serde_json::Value;

fn beside(path: &str) -> String {
    let root: PathBuf = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    root.join(path).canonicalize().unwrap().to_str().unwrap().to_owned()
}

fn said(folder: &Path, arguments: &[&str]) -> Said {
    run(stavewright(folder).args(arguments))
}

fn done(folder: &Path, arguments: &[&str]) -> String {
    let said = said(folder, arguments);
    assert_eq!(said.code, 0, "{arguments:?}: {}", said.err);
    fits(&said.out);
    said.out
}

fn refused(folder: &Path, arguments: &[&str]) -> String {
    let said = said(folder, arguments);
    assert_eq!(said.code, 2, "{arguments:?}: {}", said.out);
    said.err.split_whitespace().collect::<Vec<_>>().join(" ")
}

fn read(folder: &Path, file: &str) -> Vec<u8> {
    fs::read(folder.join(file)).unwrap()
}

fn work(basket: &Value) -> f64 {
    basket["steps"].as_array().unwrap().iter().map(|step| step["work_minutes"].as_f64().unwrap()).sum()
}

#[test]
fn planned_taught_learned_from_and_drafted_anew() {
    let (room, harbour) = (room(), beside("patterns/harbour-bread-basket.toml"));
    let folder = room.path();
    let (class, makings) =
        (beside("classes/harbour-weekend.toml"), beside("docs/workshop/harbour-records.toml"));

    // As announced it does not fit, and the plan says what would mend it.
    let planned = said(folder, &["class", &class, "--format", "json", "--time-limit", "3"]);
    assert_eq!(planned.code, 1, "{}", planned.err);
    let plan: Value = serde_json::from_str(&planned.out).unwrap();
    assert_eq!(plan["answer"], "does-not-fit");

    // With as many moulds as students and four days more it does: plan, calendar, and what the teacher shows.
    let longer =
        fs::read_to_string(&class).unwrap().replace("../patterns/harbour-bread-basket.toml", &harbour);
    let longer = longer.replace("moulds = 4", "moulds = 12").replace("drills = 2", "drills = 6");
    let longer = longer.replace("date = \"2027-04-11\"", "every = 1\ntimes = 5\ndate = \"2027-04-11\"")
        + "\n[samples]\nstages = [\"staves-set\", \"half-woven\", \"woven\"]\nhours = \"08:00-18:00\"\n";
    fs::write(folder.join("longer.toml"), longer).unwrap();
    let fits = ["class", "longer.toml", "--time-limit", "2", "--sheet", "plan.pdf", "--calendar", "plan.ics"];
    for language in ["de", "en"] {
        done(folder, &[&fits[..], &["--language", language]].concat());
        assert!(read(folder, "plan.pdf").starts_with(b"%PDF"));
    }
    assert_eq!(fs::read_to_string(folder.join("plan.ics")).unwrap().matches("BEGIN:VEVENT").count(), 12);

    // It was taught all the same; what was written down is logged whole.
    let logged = done(folder, &["records", "log", &makings, &harbour]);
    assert_eq!(logged, "Logged: number 1, 2, 3, 4, 5, 6\n");
    assert!(done(folder, &["records"]).contains("student 4"));
    let one = done(folder, &["records", "show", "3"]);
    assert!(one.contains("79, of which 9 spoilt") && one.contains("Version"), "{one}");

    // Log and cards are printed, in both languages.
    for language in ["de", "en"] {
        done(folder, &["records", "sheet", "--out", "log.pdf", "--language", language]);
        let card =
            ["records", "card", "3", &harbour, "--maker", "Tidewater Craft School", "--out", "card.pdf"];
        done(folder, &[&card[..], &["--language", language]].concat());
        assert!(["log.pdf", "card.pdf"].iter().all(|file| read(folder, file).starts_with(b"%PDF")));
    }
    done(folder, &["records", "sheet", "--out", "mine.pdf", "--who", "student 3", "--units", "mm"]);
    assert!(refused(folder, &["records", "sheet", "--who", "nobody"]).contains("no record of"));

    // The hand is shown beside the usual one, and is used only when it is asked for.
    assert!(done(folder, &["hand", "workshop.db", &harbour]).contains("lashing"));
    let drafted = |more: &[&str]| {
        let all = [&["draft", &harbour, "--no-sheets", "--format", "json"], more].concat();
        let said = said(folder, &all);
        assert_eq!(said.code, 0, "{}", said.err);
        (serde_json::from_str::<Value>(&said.out).unwrap(), said.err)
    };
    let (usual, _) = drafted(&[]);
    let (own, told) = drafted(&["--hand", "workshop.db"]);
    assert!(usual["hand"]["whose"].is_null());
    assert_eq!(own["hand"]["whose"], "the workshop\u{2019}s own");
    assert!(told.contains("The basket with these figures"), "{told}");
    assert!(work(&own) > work(&usual), "{} {}", work(&own), work(&usual));
    let (teacher, _) = drafted(&["--hand", "workshop.db", "--hand-of", "teacher"]);
    assert!(work(&teacher) < work(&usual));
    // A learner has figures of one's own, which are neither the teacher's nor everybody's.
    let (learner, told) = drafted(&["--hand", "workshop.db", "--hand-of", "student 2"]);
    assert_eq!(learner["hand"]["whose"], "student 2");
    assert!(![work(&teacher), work(&own), work(&usual)].contains(&work(&learner)), "{told}");
    let (again, _) = drafted(&[]);
    assert_eq!(again, usual);
    let sheet =
        done(folder, &["draft", &harbour, "--no-sheets", "--hand", "workshop.db", "--language", "de"]);
    assert!(sheet.contains("aus Aufzeichnungen gelernt"), "{sheet}");

    // Every sheet is made anew by it, and says whose figures it is drafted by.
    done(folder, &["draft", &harbour, "--hand", "workshop.db", "--out", "own"]);
    let pages = ["handout.html", "teacher.html", "maker.html"].map(|page| folder.join("own").join(page));
    let pages: Vec<String> = pages.iter().filter_map(|page| fs::read_to_string(page).ok()).collect();
    assert!(pages.iter().any(|page| page.contains("learned from records")), "{} pages", pages.len());
    assert!(read(folder, "own/handout.pdf").starts_with(b"%PDF"));

    // The next class is planned with it, and says so.
    let anew =
        said(folder, &["class", &class, "--hand", "workshop.db", "--format", "json", "--time-limit", "3"]);
    assert!(anew.err.contains("Time for lashing"), "{}", anew.err);
    assert_eq!(serde_json::from_str::<Value>(&anew.out).unwrap()["answer"], "does-not-fit");
}

#[test]
fn a_persons_records_are_handed_over_and_forgotten() {
    let (room, harbour) = (room(), beside("patterns/harbour-bread-basket.toml"));
    let folder = room.path();
    done(folder, &["records", "log", &beside("docs/workshop/harbour-records.toml"), &harbour]);
    done(folder, &["records", "export", "mine.toml", "--who", "student 3"]);
    let mine = fs::read_to_string(folder.join("mine.toml")).unwrap();
    assert!(mine.contains("student 3") && !mine.contains("student 4"), "{mine}");

    // Nothing is forgotten before it is said to be.
    let asked = refused(folder, &["records", "delete", "--who", "student 3"]);
    assert!(asked.contains("nothing was changed"), "{asked}");
    assert!(done(folder, &["records"]).contains("student 3"));
    done(folder, &["records", "delete", "--who", "student 3", "--yes"]);
    assert!(!done(folder, &["records"]).contains("student 3"));
    let gone = fs::read(folder.join("workshop.db")).unwrap();
    assert!(!gone.windows(9).any(|bytes| bytes == b"student 3"));
    // What was exported goes back in, under a new number.
    assert_eq!(done(folder, &["records", "log", "mine.toml", &harbour]), "Logged: number 7\n");
    done(folder, &["shelf", "export", "all.toml"]);
    done(folder, &["shelf", "--store", "other.db", "import", "all.toml"]);
    let records = |store: &str| said(folder, &["records", "--store", store, "--format", "json"]).out;
    assert!(records("workshop.db").contains("student 3"));
    assert_eq!(records("workshop.db"), records("other.db"));
}

#[test]
fn a_filled_in_form_is_read_and_what_is_wrong_with_it_is_said() {
    let (room, harbour) = (room(), beside("patterns/harbour-bread-basket.toml"));
    let folder = room.path();
    let form = done(folder, &["records", "form", &harbour]);
    let file = folder.join("making.toml");
    let log = ["records", "log", "making.toml", &harbour];
    fs::write(&file, &form).unwrap();
    assert!(refused(folder, &log).contains("record 1 says nothing but its pattern"));
    // Every line of the form can be filled in.
    let filled: Vec<String> = form
        .lines()
        .skip(2)
        .filter(|line| !line.starts_with("# photos"))
        .map(|line| line.trim_start_matches("# ").replacen("= 0", "= 60", 1).replacen("\"0 ", "\"4 ", 1))
        .collect();
    let filled = filled.join("\n").replacen("weaver = \"4 ft\"", "weaver = \"71 ft\"", 1);
    let filled = filled.replacen("rows = 60", "rows = 36", 1).replacen("spoilt = 60", "spoilt = 2", 1);
    fs::write(&file, filled.replacen("staves = 60", "staves = 75", 1)).unwrap();
    done(folder, &log);

    let wrong = |text: &str| {
        fs::write(&file, text).unwrap();
        refused(folder, &log)
    };
    let other = wrong("[[record]]\npattern = \"Ferry egg basket\"\nrows = 30\n");
    assert!(other.contains("Ferry egg basket") && other.contains("Harbour bread basket"), "{other}");
    let far = wrong("[[record]]\npattern = \"Harbour bread basket\"\nminutes = { cut = 9000 }\n");
    assert!(far.contains("times what was computed"), "{far}");
    let day = wrong("[[record]]\npattern = \"Harbour bread basket\"\nmade = \"last week\"\n");
    assert!(day.contains("no day") && day.contains("making.toml:3"), "{day}");

    // A photograph of 100 megapixels is refused by what its head says, before it is decoded.
    let mut huge = b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR".to_vec();
    huge.extend([0, 0, 0x27, 0x10, 0, 0, 0x27, 0x10, 8, 2, 0, 0, 0]);
    let sum = !huge[12..29].iter().fold(u32::MAX, |sum, byte| {
        (0..8).fold(
            sum ^ u32::from(*byte),
            |sum, _| if sum & 1 == 1 { sum >> 1 ^ 0xedb8_8320 } else { sum >> 1 },
        )
    });
    huge.extend(sum.to_be_bytes());
    huge.extend(b"\0\0\0\0IDAT\x35\xaf\x06\x1e\0\0\0\0IEND\xae\x42\x60\x82");
    fs::write(folder.join("rim.png"), huge).unwrap();
    let photo = wrong("[[record]]\npattern = \"Harbour bread basket\"\nphotos = [\"rim.png\"]\n");
    assert!(photo.contains("rim.png") && photo.contains("40 million"), "{photo}");
    let outside = wrong("[[record]]\npattern = \"Harbour bread basket\"\nphotos = [\"../rim.png\"]\n");
    assert!(outside.contains("../rim.png"), "{outside}");
    assert_eq!(said(folder, &["records", "--format", "json"]).out.matches("\"pattern\"").count(), 1);
}

#[test]
fn the_provenance_card_is_of_the_making_in_both_languages() {
    let (room, harbour) = (room(), beside("patterns/harbour-bread-basket.toml"));
    let folder = room.path();
    done(folder, &["records", "log", &beside("docs/workshop/harbour-records.toml"), &harbour]);
    let card = ["records", "card", "1", &harbour, "--maker", "Tidewater Craft School", "--out", "card.pdf"];
    for language in ["en", "de"] {
        done(folder, &[&card[..], &["--language", language]].concat());
        assert!(fs::read(folder.join("card.pdf")).unwrap().starts_with(b"%PDF"));
    }
    let other = beside("patterns/ferry-egg-basket.toml");
    assert!(refused(folder, &["records", "card", "1", &other]).contains("Ferry egg basket"));
    assert!(refused(folder, &["records", "card", "99", &harbour]).contains("99"));
}

#[test]
fn a_pattern_has_a_history_in_words_and_goes_back() {
    let (room, harbour) = (room(), beside("patterns/harbour-bread-basket.toml"));
    let folder = room.path();
    let file = folder.join("harbour.toml");
    let first = fs::read_to_string(harbour).unwrap();
    fs::write(&file, &first).unwrap();
    assert_eq!(done(folder, &["history", "harbour.toml"]).lines().count(), 1);
    fs::write(&file, first.replacen("[staves]", "[staves]\ncount = 67", 1)).unwrap();
    let told = done(folder, &["history", "harbour.toml"]);
    assert!(told.starts_with("2 ") && told.contains("staves fewer"), "{told}");
    let german = done(folder, &["history", "harbour.toml", "--language", "de"]);
    assert!(german.contains("Staken weniger"), "{german}");
    assert_eq!(done(folder, &["history", "harbour.toml", "--show", "1"]), first);
    done(folder, &["history", "harbour.toml", "--back", "1"]);
    assert_eq!(fs::read_to_string(&file).unwrap(), first);
    let back = done(folder, &["history", "harbour.toml"]);
    assert!(back.starts_with("3 ") && back.contains("staves more"), "{back}");
    assert!(refused(folder, &["history", "harbour.toml", "--back", "9"]).contains("no version 9"));
    // Written out and taken in elsewhere all of it is there again, however long it has become.
    for number in 1..=4 {
        fs::write(&file, format!("{first}# {number}{}\n", " osier".repeat(50_000))).unwrap();
        done(folder, &["history", "harbour.toml", "--show", "1"]);
    }
    done(folder, &["shelf", "export", "all.toml"]);
    assert!(fs::metadata(folder.join("all.toml")).unwrap().len() > 1_000_000);
    let other = folder.join("other");
    fs::create_dir(&other).unwrap();
    fs::copy(&file, other.join("harbour.toml")).unwrap();
    let taken = done(&other, &["shelf", "import", "../all.toml"]);
    assert!(taken.contains("7 versions of patterns"), "{taken}");
    let history = |folder: &Path| done(folder, &["history", "harbour.toml"]);
    assert_eq!(history(&other), history(folder));
    done(&other, &["shelf", "export", "again.toml"]);
    assert!(fs::read(folder.join("all.toml")).unwrap() == fs::read(other.join("again.toml")).unwrap());
    fs::write(&file, &first).unwrap();
    // A broken store is left alone, and the pattern with it.
    fs::write(folder.join("workshop.db"), "this is no store").unwrap();
    refused(folder, &["history", "harbour.toml"]);
    assert_eq!(fs::read_to_string(&file).unwrap(), first);
}
