//! The autumn weekend of the school by command line: shelf, kits, buying, cutting, price.

mod common;

use std::fs;
use std::path::{Path, PathBuf};

use common::{Said, fits, room, run, stavewright};
use serde_json::Value;

fn example(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../docs/workshop").join(name).canonicalize().unwrap()
}

fn said(folder: &Path, arguments: &[&str]) -> Said {
    run(stavewright(folder).args(arguments))
}

/// Runs what must do its work, and fits on a screen.
fn done(folder: &Path, arguments: &[&str]) -> String {
    let said = said(folder, arguments);
    assert_eq!(said.code, 0, "{arguments:?}: {}", said.err);
    fits(&said.out);
    said.out
}

fn json(folder: &Path, arguments: &[&str]) -> Value {
    let said = said(folder, &[arguments, &["--format", "json"]].concat());
    assert_eq!(said.code, 0, "{arguments:?}: {}", said.err);
    serde_json::from_str(&said.out).unwrap()
}

/// A folder with the shelf of the example in its store.
fn school() -> (tempfile::TempDir, String) {
    let room = room();
    let shelf = example("shelf.csv");
    done(room.path(), &["shelf", "import", shelf.to_str().unwrap()]);
    (room, example("autumn-weekend.toml").to_str().unwrap().to_owned())
}

fn count(folder: &Path, item: &str) -> i64 {
    let shelf = json(folder, &["shelf"]);
    let items = shelf["items"].as_array().unwrap();
    items.iter().find(|own| own["name"] == item).unwrap()["count"].as_i64().unwrap()
}

#[test]
fn from_the_shelf_to_the_price() {
    let (room, class) = school();
    let folder = room.path();

    let kits = json(folder, &["kits", &class]);
    let class_of_twelve = &kits["classes"][0];
    assert_eq!(class_of_twelve["bags"].as_array().unwrap().len(), 12);
    assert!(class_of_twelve["batches"].as_array().unwrap().iter().any(|batch| batch["colour"] == "red"));

    // What is on the list covers what is needed: once it was bought, there is nothing more to buy.
    let before = count(folder, "fine cane");
    let list = json(folder, &["buy", &class]);
    let buy = |list: &Value| -> usize {
        list["materials"].as_array().unwrap().iter().map(|line| line["buy"].as_array().unwrap().len()).sum()
    };
    assert!(buy(&list) > 0);
    let cane =
        list["materials"].as_array().unwrap().iter().find(|line| line["material"] == "flat oval reed 1/4 in");
    assert_eq!(cane.unwrap()["order_by"], "2026-10-12");
    let refused = said(folder, &["cutting", &class, "--cut"]);
    assert_eq!(refused.code, 2);
    assert!(refused.err.contains("nothing was booked"), "{}", refused.err);
    assert_eq!(count(folder, "fine cane"), before);
    done(folder, &["buy", &class, "--bought"]);
    assert_eq!(buy(&json(folder, &["buy", &class])), 0);

    // Every plan is proven; cut, the strands are gone, and taken back they are there again.
    let plans = json(folder, &["cutting", &class]);
    let plans = plans["materials"].as_array().unwrap();
    assert!(plans.iter().all(|plan| plan["proven"] == true && plan["least_stock"] == true));
    let there = count(folder, "fine cane");
    done(folder, &["cutting", &class, "--cut"]);
    let opened: i64 = plans
        .iter()
        .flat_map(|plan| plan["strands"].as_array().unwrap())
        .filter(|strand| strand["item"] == "fine cane")
        .map(|strand| strand["times"].as_i64().unwrap())
        .sum();
    assert!(opened > 0);
    assert_eq!(count(folder, "fine cane"), there - opened);
    done(folder, &["shelf", "undo"]);
    assert_eq!(count(folder, "fine cane"), there);

    let price = json(folder, &["price", &class]);
    let amount = |line: &str| price["basket"][line].as_str().unwrap().parse::<f64>().unwrap();
    let sum = amount("materials")
        + amount("waste")
        + amount("labour")
        + amount("overhead")
        + amount("mould")
        + amount("packing");
    assert!((sum - amount("cost")).abs() < 0.001);
    assert!((amount("retail") - 2.0 * amount("wholesale")).abs() < 0.001);
}

/// A coil of half round reed is 16.00; the few strands that are needed cost less by the foot at 0.20.
#[test]
fn lengths_are_ordered_where_the_footage_costs_less() {
    let (room, class) = school();
    let folder = room.path();
    let reed = |list: &Value| {
        let all = list["materials"].as_array().unwrap();
        all.iter().find(|line| line["material"] == "half round reed 3/8 in").unwrap().clone()
    };
    assert_eq!(reed(&json(folder, &["buy", &class]))["cost"], "16.00");
    let put = |price: &str, holds: &str| {
        let what = ["shelf", "put", "reed by the foot", "--material", "half round reed 3/8 in"];
        let unit = ["--length", "1 ft", "--unit", "foot", "--holds", holds, "--price", price];
        said(folder, &[&what[..], &unit[..]].concat())
    };
    let refused = put("0.20", "12");
    assert_eq!(refused.code, 2);
    assert!(refused.err.contains("one unit holds 1"), "{}", refused.err);

    // At 0.50 the whole coil stays cheaper.
    assert_eq!(put("0.50", "1").code, 0);
    assert_eq!(reed(&json(folder, &["buy", &class]))["buy"][0]["unit"], "coil of 1 lb");
    assert_eq!(put("0.20", "1").code, 0);
    let line = reed(&json(folder, &["buy", &class]));
    let feet: Vec<u64> =
        line["buy"][0]["lengths"].as_array().unwrap().iter().map(|feet| feet.as_u64().unwrap()).collect();
    let sum: u64 = feet.iter().sum();
    assert_eq!((line["buy"].as_array().unwrap().len(), &line["buy"][0]["unit"]), (1, &"foot".into()));
    assert_eq!((&line["buy"][0]["count"], &line["stays_whole"]), (&sum.into(), &0.into()));
    let cost: f64 = line["cost"].as_str().unwrap().parse().unwrap();
    assert!((cost - 0.2 * sum as f64).abs() < 0.001 && cost < 16.0, "{cost} for {sum} ft");

    // The sheet and the table say in which lengths, in both languages.
    let english = done(folder, &["buy", &class]);
    assert!(english.contains(&format!("{sum}\u{a0}ft, in lengths of")), "{english}");
    let german = done(folder, &["buy", &class, "--language", "de"]);
    assert!(german.contains(&format!("{sum}\u{a0}Fuß, in Längen")), "{german}");
    done(folder, &["buy", &class, "--out", "buy.csv"]);
    let lengths = feet.iter().map(u64::to_string).collect::<Vec<_>>().join("; ");
    let table = fs::read_to_string(folder.join("buy.csv")).unwrap();
    assert!(table.contains(&format!(",{sum},foot,0.20,{cost:.2},2026-10-12,,{lengths}\n")), "{table}");

    // Booked, they lie there as strands of these lengths, and nothing more is to be bought.
    done(folder, &["buy", &class, "--bought"]);
    for long in &feet {
        let there = feet.iter().filter(|other| *other == long).count() as i64;
        assert_eq!(count(folder, &format!("half round reed 3/8 in, {long} ft")), there);
    }
    assert_eq!(count(folder, "reed by the foot"), 0);
    assert_eq!(reed(&json(folder, &["buy", &class]))["buy"].as_array().unwrap().len(), 0);
    done(folder, &["cutting", &class, "--cut"]);
}

#[test]
fn all_is_said_on_the_screen_in_both_languages() {
    let (room, class) = school();
    for command in ["kits", "buy", "cutting", "price"] {
        let english = done(room.path(), &[command, &class]);
        let german = done(room.path(), &[command, &class, "--language", "de"]);
        assert!(!english.contains("workshop-") && !german.contains("workshop-"), "{english}{german}");
        assert_ne!(english, german);
    }
    for list in ["history", "moulds"] {
        done(room.path(), &["shelf", list]);
    }
}

#[test]
fn sheets_are_written_as_pdf_and_table() {
    let (room, class) = school();
    let folder = room.path();
    for (command, out) in
        [("kits", "kits.pdf"), ("buy", "buy.pdf"), ("cutting", "cutting.pdf"), ("price", "price.pdf")]
    {
        done(folder, &[command, &class, "--out", out, "--language", "de", "--paper", "a4"]);
        assert!(fs::read(folder.join(out)).unwrap().starts_with(b"%PDF"), "{out}");
    }
    for size in ["4x2in", "4x3in", "4x2in-a4", "105x57mm", "99x68mm", "64x72mm"] {
        done(folder, &["kits", &class, "--labels", "labels.pdf", "--label-size", size]);
        assert!(fs::read(folder.join("labels.pdf")).unwrap().starts_with(b"%PDF"));
    }
    done(folder, &["buy", &class, "--out", "buy.csv"]);
    let table = fs::read_to_string(folder.join("buy.csv")).unwrap();
    assert!(table.starts_with("material,colour,count,unit,price,cost,order_by,from,lengths\n"), "{table}");
    let refused = said(folder, &["kits", &class, "--out", "kits.doc"]);
    assert_eq!(refused.code, 2, "{}", refused.err);
}

#[test]
fn moulds_are_lent_and_everything_goes_out_and_in() {
    let (room, _) = school();
    let folder = room.path();
    done(folder, &["shelf", "mould", "A", "--place", "boat shed"]);
    done(folder, &["shelf", "lend", "A", "--to", "student 4", "--due", "2026-10-18"]);
    assert!(done(folder, &["shelf", "moulds"]).contains("student 4"));
    assert_eq!(said(folder, &["shelf", "lend", "A", "--to", "student 5"]).code, 2);
    done(folder, &["shelf", "export", "all.toml"]);
    done(folder, &["shelf", "--store", "other.db", "import", "all.toml"]);
    done(folder, &["shelf", "--store", "other.db", "export", "again.toml"]);
    let read = |name: &str| fs::read_to_string(folder.join(name)).unwrap();
    assert_eq!(read("all.toml"), read("again.toml"));
    done(folder, &["backup", "copy.db"]);
    assert_eq!(json(folder, &["shelf", "--store", "copy.db"]), json(folder, &["shelf"]));
    let again = said(folder, &["backup", "copy.db"]);
    assert!(again.code == 2 && again.err.contains("is left as it is"), "{}", again.err);
}

#[test]
fn what_is_taken_off_the_shelf_stands_in_its_history_and_comes_back() {
    let (room, _) = school();
    let folder = room.path();
    done(folder, &["shelf", "remove", "fine cane"]);
    assert!(!done(folder, &["shelf"]).lines().any(|line| line.starts_with("fine cane ")));
    assert!(done(folder, &["shelf", "history"]).contains("-64 fine cane"));
    assert_eq!(said(folder, &["shelf", "remove", "fine cane"]).code, 2);
    done(folder, &["shelf", "undo"]);
    assert_eq!(count(folder, "fine cane"), 64);
    done(folder, &["shelf", "mould", "A"]);
    done(folder, &["shelf", "remove", "A", "--mould"]);
    assert!(done(folder, &["shelf", "moulds"]).contains("No mould"));
    assert!(done(folder, &["shelf", "history"]).contains("mould A"));
    done(folder, &["shelf", "undo"]);
    assert!(done(folder, &["shelf", "moulds"]).contains('A'));
}

#[test]
fn classes_and_orders_are_bought_for_together() {
    let (room, class) = school();
    let folder = room.path();
    fs::copy(common::pattern("harbour-bread-basket.toml"), folder.join("harbour.toml")).unwrap();
    let quote = ["order", "quote", "bread", "harbour.toml", "--count", "4", "--price", "180"];
    done(folder, &[&quote[..], &["--needed", "2026-09-10"]].concat());
    let pins = |list: &Value| -> i64 {
        let all = list["materials"].as_array().unwrap().iter();
        all.flat_map(|line| line["from_shelf"].as_array().unwrap())
            .filter(|taken| taken["item"] == "rim pins")
            .map(|taken| taken["count"].as_i64().unwrap())
            .sum()
    };
    let alone = pins(&json(folder, &["buy", &class]));
    let order = pins(&json(folder, &["buy", "--order", "bread"]));
    let together = pins(&json(folder, &["buy", &class, "--order", "bread"]));
    assert!(order > 0 && together == (alone + order).min(150), "{alone} {order} {together}");
    // The order needs its material before the class does, which has dyed cane besides.
    let due = json(folder, &["buy", &class, "--order", "bread"])["due"].clone();
    let days = |due: &Value| {
        ["for", "needed", "order_by", "order_dyed_by"].map(|key| due[key].as_str().unwrap_or("-").to_owned())
    };
    assert_eq!(days(&due[0]), ["bread", "2026-09-10", "2026-09-03", "-"]);
    assert_eq!(days(&due[1]), ["Autumn weekend", "2026-10-17", "2026-10-12", "2026-10-05"]);
    let list = done(folder, &["buy", &class, "--order", "bread"]);
    let (first, second) = (list.find("2026-09-03"), list.find("2026-10-05"));
    assert!(list.contains("When to order") && first.is_some() && first < second, "{list}");
    done(folder, &["order", "accept", "bread", "--needed", "2026-12-01"]);
    assert!(done(folder, &["order"]).contains("2026-12-01"));
    assert_eq!(json(folder, &["buy", &class, "--order", "bread"])["due"][1]["for"], "bread");
    assert_eq!(said(folder, &["buy", &class, "--order", "none"]).code, 2);
    assert_eq!(said(folder, &["price", "--order", "bread"]).code, 2);
    assert_eq!(said(folder, &["buy"]).code, 2);
}

#[test]
fn bad_files_are_said_as_what_they_are() {
    let room = room();
    let folder = room.path();
    let class = |text: &str| {
        fs::write(folder.join("class.toml"), text).unwrap();
        let said = said(folder, &["kits", "class.toml"]);
        assert_eq!(said.code, 2, "{text}");
        said.err
    };
    let told = class("title = \"x\"\nneeded = \"soon\"\n[[students]]\npattern = \"p.toml\"\n");
    assert!(told.contains("class.toml:2") && told.contains("no day"), "{told}");
    assert!(
        class("title = \"x\"\n[[students]]\npatern = \"p.toml\"\n").contains("`patern` is not known here")
    );
    assert!(class("title = \"x\"\n[[students]]\npattern = \"none.toml\"\n").contains("none.toml"));
    assert!(class("title = \"x\"\nstudents = []\n").contains("0 students"));
    let of = |rest: &str| {
        format!("title = \"x\"\n[[students]]\npattern = {:?}\n{rest}", common::pattern("channel-marker.toml"))
    };
    assert!(class(&of("colours = { blue = \"mauve\" }\n")).contains("there is no colour `mauve`"));
    assert!(class(&of("ready = [\"everything\"]\n")).contains("\"everything\" is no thing"));
    assert!(class(&of("[price]\nwage = \"-3\"\n")).contains("`wage` cannot be -3"));
    assert!(class(&of("count = 4000000000\n")).contains("from 1 to 500"));

    fs::write(folder.join("workshop.db"), "no store").unwrap();
    let told = said(folder, &["shelf"]);
    assert!(told.code == 2 && told.err.contains("is no shelf"), "{}", told.err);
    assert_eq!(fs::read(folder.join("workshop.db")).unwrap(), b"no store");
    fs::remove_file(folder.join("workshop.db")).unwrap();
    fs::write(folder.join("shelf.csv"), "name;material\na;cane\nb;\n").unwrap();
    let told = said(folder, &["shelf", "import", "shelf.csv"]);
    assert!(told.code == 2 && told.err.contains("Line 3"), "{}", told.err);
}
