//! An order from the quote to the parcel, moulds of the shelf, and a backup of all of it.

mod common;

use std::fs;
use std::io::{Cursor, Read};
use std::path::Path;

use common::{Said, fits, room, run, stavewright};
use serde_json::Value;

fn said(folder: &Path, arguments: &[&str]) -> Said {
    run(stavewright(folder).args(arguments))
}

fn done(folder: &Path, arguments: &[&str]) -> String {
    let said = said(folder, arguments);
    assert_eq!(said.code, 0, "{arguments:?}: {}", said.err);
    fits(&said.out);
    said.out
}

/// A folder with the Harbour basket's pattern in it.
fn school() -> tempfile::TempDir {
    let room = room();
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../patterns/harbour-bread-basket.toml");
    fs::copy(root, room.path().join("harbour.toml")).unwrap();
    room
}

fn order(folder: &Path) -> Value {
    let all: Value = serde_json::from_str(&done(folder, &["order", "--format", "json"])).unwrap();
    all["orders"][0].clone()
}

fn money(amount: &Value) -> f64 {
    amount.as_str().unwrap().parse().unwrap()
}

const QUOTE: [&str; 12] = [
    "order",
    "quote",
    "bread baskets",
    "harbour.toml",
    "--count",
    "4",
    "--price",
    "180",
    "--from",
    "2027-03-01",
    "--buyer",
    "the harbour cafe",
];

#[test]
fn from_the_quote_to_the_parcel() {
    let room = school();
    let folder = room.path();
    let quoted = done(folder, &[&QUOTE[..], &["--currency", "crowns", "--moulds", "2"]].concat());
    assert!(quoted.contains("720.00") && quoted.contains("216.00") && quoted.contains("504.00"), "{quoted}");
    let first = order(folder);
    assert_eq!((&first["state"], money(&first["deposit"])), (&"quoted".into(), 216.0));
    let promised = first["promised"].as_str().unwrap().to_owned();
    assert!(quoted.contains(&promised) && promised.as_str() > "2027-03-05", "{promised}");

    // With half of the hours it takes longer.
    done(folder, &[&QUOTE[..], &["--moulds", "2", "--hours", "3"]].concat());
    assert!(order(folder)["promised"].as_str().unwrap() > promised.as_str());
    done(folder, &[&QUOTE[..], &["--currency", "crowns", "--moulds", "2"]].concat());

    done(folder, &["order", "accept", "bread baskets", "--deposit", "200"]);
    let accepted = order(folder);
    assert_eq!((&accepted["state"], money(&accepted["deposit"])), (&"ordered".into(), 200.0));
    // What was ordered is not quoted over.
    let refused = said(folder, &QUOTE);
    assert!(refused.code == 2 && refused.err.contains("no longer a quote"), "{}", refused.err);
    let slip = done(folder, &["order", "slip", "bread baskets"]);
    assert!(slip.contains("520.00") && slip.contains("the harbour cafe"), "{slip}");
    assert!(done(folder, &["order", "slip", "bread baskets", "--language", "de"]).contains("Noch zu zahlen"));
    done(folder, &["order", "deliver", "bread baskets"]);
    assert_eq!(order(folder)["state"], "delivered");
    assert_eq!(said(folder, &["order", "slip", "egg baskets"]).code, 2);
}

#[test]
fn a_quote_takes_its_price_from_a_price_plan_and_tells_no_costs() {
    let room = school();
    let folder = room.path();
    let plan = "title = \"Prices\"\n[[students]]\npattern = \"harbour.toml\"\n\
                [price]\ncurrency = \"crowns\"\nwage = \"24\"\nmargin = \"0.15\"\nretail = \"2\"\nstep = \"5\"\n";
    fs::write(folder.join("prices.toml"), plan).unwrap();
    let price: Value =
        serde_json::from_str(&done(folder, &["price", "prices.toml", "--format", "json"])).unwrap();
    let quote = |rest: &[&str]| {
        let quote =
            ["order", "quote", "egg baskets", "harbour.toml", "--count", "2", "--price-plan", "prices.toml"];
        let said = said(folder, &[&quote[..], rest].concat());
        assert_eq!(said.code, 0, "{}", said.err);
        said
    };
    let quoted = quote(&[]);
    let own = order(folder);
    let is_priced =
        |own: &Value, line: &str| (money(&own["price"]) - money(&price["basket"][line])).abs() < 0.001;
    assert!(is_priced(&own, "retail"), "{own} {price}");
    assert_eq!((&own["currency"], &own["price_plan"]), (&"crowns".into(), &"prices.toml".into()));
    assert!(
        quoted.err.contains("No price is known of") && quoted.err.contains("; cane fine;"),
        "{}",
        quoted.err
    );
    for cost in ["margin", "wage", "24.00", "No price"] {
        assert!(!quoted.out.contains(cost), "{cost}: {}", quoted.out);
    }
    quote(&["--to-shop"]);
    assert!(is_priced(&order(folder), "wholesale"), "{price}");
    // A price that is typed goes without a plan; both at once are refused, and so is neither.
    done(folder, &QUOTE);
    assert_eq!(said(folder, &[&QUOTE[..], &["--price-plan", "prices.toml"]].concat()).code, 2);
    assert_eq!(said(folder, &["order", "quote", "egg baskets", "harbour.toml"]).code, 2);
}

#[test]
fn papers_are_written_as_pdf() {
    let room = school();
    let folder = room.path();
    done(folder, &[&QUOTE[..], &["--language", "de", "--out", "quote.pdf"]].concat());
    for (paper, out) in [("slip", "slip.pdf"), ("care", "care.pdf")] {
        done(folder, &["order", paper, "bread baskets", "--language", "de", "--out", out]);
        assert!(fs::read(folder.join(out)).unwrap().starts_with(b"%PDF"), "{out}");
    }
    assert!(fs::read(folder.join("quote.pdf")).unwrap().starts_with(b"%PDF"));
    fs::write(
        folder.join("class.toml"),
        "title = \"Weekend\"\n[[students]]\npattern = \"harbour.toml\"\ncount = 2\n",
    )
    .unwrap();
    done(folder, &["kits", "class.toml", "--checks", "checks.pdf"]);
    assert!(fs::read(folder.join("checks.pdf")).unwrap().starts_with(b"%PDF"));
}

#[test]
fn a_mould_that_is_out_makes_the_order_later() {
    let room = school();
    let folder = room.path();
    let mould = ["shelf", "mould", "A", "--patterns", "harbour.toml", "--measured", "harbour.toml"];
    done(folder, &mould);
    done(folder, &QUOTE);
    let free = order(folder)["promised"].as_str().unwrap().to_owned();
    done(folder, &["shelf", "lend", "A", "--to", "student 4", "--due", "2027-05-03"]);
    done(folder, &QUOTE);
    let late = order(folder)["promised"].as_str().unwrap().to_owned();
    assert!(late > free && late.as_str() > "2027-05-03", "{free} {late}");
    done(folder, &["shelf", "back", "A"]);
    done(folder, &["shelf", "lend", "A", "--to", "student 4"]);
    let refused = said(folder, &QUOTE);
    assert!(refused.code == 2 && refused.err.contains("no mould is free"), "{}", refused.err);

    // Its girths are those of the pattern's mould, from the foot to the top.
    let moulds: Value =
        serde_json::from_str(&done(folder, &["shelf", "--format", "json", "moulds"])).unwrap();
    let profile = moulds["moulds"][0]["profile"].as_array().unwrap();
    let girth = |at: usize| profile[at]["girth_mm"].as_f64().unwrap();
    assert_eq!(profile.len(), 9);
    assert!(girth(8) > girth(0) && profile[0]["height_mm"] == 0.0, "{profile:?}");
}

#[test]
fn a_backup_holds_patterns_photographs_and_the_store() {
    let room = school();
    let folder = room.path();
    done(folder, &QUOTE);
    fs::write(folder.join("rim.jpg"), b"not looked into").unwrap();
    fs::write(folder.join("notes.txt"), b"not taken").unwrap();
    done(folder, &["backup", "all.zip"]);
    let mut zip = zip::ZipArchive::new(Cursor::new(fs::read(folder.join("all.zip")).unwrap())).unwrap();
    let other = room.path().join("unpacked");
    fs::create_dir(&other).unwrap();
    let mut names: Vec<String> = zip.file_names().map(|name| name.unwrap().into_owned()).collect();
    names.sort();
    assert_eq!(names, ["harbour.toml", "rim.jpg", "workshop.db"]);
    for name in &names {
        let mut bytes = Vec::new();
        zip.by_name(name).unwrap().read_to_end(&mut bytes).unwrap();
        fs::write(other.join(name), bytes).unwrap();
    }
    assert_eq!(order(&other), order(folder));
    assert_eq!(fs::read(other.join("harbour.toml")).unwrap(), fs::read(folder.join("harbour.toml")).unwrap());
    assert_eq!(said(folder, &["backup", "all.zip"]).code, 2);
}
