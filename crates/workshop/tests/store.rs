//! What a store keeps, and what it says of files that are none.

use std::path::Path;

use basket::message::{Message, Value};
use basket::pattern::StepKind;
use basket::{Catalogue, Length};
use planning::records::Record;
use workshop::{
    Change, Everything, Fault, Girth, Item, Kind, Loan, Mould, Order, State, Store, read_shelf, write_shelf,
};

fn store(folder: &Path) -> Store {
    Store::open(&folder.join("workshop.db")).unwrap()
}

fn hank(name: &str, count: u32) -> Item {
    Item {
        name: name.to_owned(),
        material: "cane fine".to_owned(),
        colour: "natural".to_owned(),
        length_mm: Some(3657.6),
        count,
        unit: "hank".to_owned(),
        holds: 70,
        price: Some("48.00".parse().unwrap()),
        bought_from: "=the cane shed".to_owned(),
        reorder: 20,
        note: "a \"good\" one; tight,\nglossy".to_owned(),
        ..Item::default()
    }
}

fn making(who: Option<&str>) -> Record {
    Record {
        pattern: "Harbour bread basket".to_owned(),
        version: Some("0a1b2c3d4e5f".to_owned()),
        made: Some("2027-04-11".parse().unwrap()),
        who: who.map(str::to_owned),
        learner: who.is_some(),
        minutes: vec![(StepKind::Cut, 220.0), (StepKind::Lashing, 95.5)],
        weaver: Some(Length::feet(161.0)),
        rows: Some(36),
        wet: Some(Length::inches(4.125)),
        dry: Some(Length::mm(98.4)),
        girth_wet: Some(Length::mm(815.0)),
        girth_dry: Some(Length::mm(801.3)),
        staves: Some((71, 4)),
        wood: Some("ash from the harbour wall".to_owned()),
        went_wrong: Some("two staves split at the foot;\n\"damp\" cane".to_owned()),
        photos: vec!["rim.jpg".to_owned(), "foot.jpg".to_owned()],
        ..Record::default()
    }
}

#[test]
fn makings_are_logged_and_forgotten_for_good() {
    let folder = tempfile::tempdir().unwrap();
    let mut store = store(folder.path());
    assert_eq!(store.log(&[making(Some("student 3")), making(Some("student 4"))]).unwrap(), [1, 2]);
    assert_eq!(store.record(2).unwrap(), Record { number: 2, ..making(Some("student 4")) });
    let text = planning::records::write(&store.records().unwrap());
    assert_eq!(planning::records::read(&text).unwrap(), store.records().unwrap());

    // Of a making that names no pattern none is written down, and the others with it.
    let nothing = Record { pattern: " ".to_owned(), ..making(None) };
    assert!(matches!(store.log(&[making(None), nothing]), Err(Fault::Refused(_))));
    assert_eq!(store.records().unwrap().len(), 2);

    assert_eq!(store.forget(&[2, 7]).unwrap(), 1);
    assert!(matches!(store.record(2), Err(Fault::Unknown { what: "record", .. })));
    assert_eq!(store.log(&[making(None)]).unwrap(), [3]);
    // Not even in the bytes of the file is the name left.
    for file in ["workshop.db", "workshop.db-wal"] {
        let bytes = std::fs::read(folder.path().join(file)).unwrap_or_default();
        assert!(!bytes.windows(9).any(|signs| signs == b"student 4"), "{file}");
    }
    let bytes = std::fs::read(folder.path().join("workshop.db")).unwrap();
    assert!(bytes.windows(9).any(|signs| signs == b"student 3"));
}

fn change(item: &str, count: i64) -> Change {
    Change { item: item.to_owned(), count }
}

#[test]
fn movements_are_booked_and_taken_back() {
    let folder = tempfile::tempdir().unwrap();
    let mut store = store(folder.path());
    store.put_items(&[hank("hank 1", 50), hank("offcuts", 0)]).unwrap();
    store.book(Kind::Bought, "one hank", &[change("hank 1", 70)]).unwrap();
    let cut =
        store.book(Kind::Cut, "autumn weekend", &[change("hank 1", -30), change("offcuts", 12)]).unwrap();
    assert_eq!((store.item("hank 1").unwrap().count, store.item("offcuts").unwrap().count), (90, 12));

    // More than there is: nothing at all is booked.
    let refused = store.book(Kind::Cut, "too much", &[change("offcuts", 1), change("hank 1", -91)]);
    assert!(matches!(refused, Err(Fault::TooFew { there: 90, wanted: 91, .. })), "{refused:?}");
    assert_eq!(store.item("offcuts").unwrap().count, 12);
    assert_eq!(store.history(10).unwrap().len(), 2);

    let undone = store.undo(None).unwrap();
    assert_eq!((undone.id, undone.kind, undone.undone), (cut, Kind::Cut, true));
    assert_eq!((store.item("hank 1").unwrap().count, store.item("offcuts").unwrap().count), (120, 0));
    assert!(matches!(store.undo(Some(cut)), Err(Fault::Refused(_))));
    assert!(matches!(store.undo(Some(99)), Err(Fault::Unknown { what: "movement", .. })));
    store.undo(None).unwrap();
    assert!(matches!(store.undo(None), Err(Fault::Refused(_))));
    assert_eq!(store.item("hank 1").unwrap().count, 50);
}

#[test]
fn what_the_maker_measured_goes_before_the_catalogue() {
    let folder = tempfile::tempdir().unwrap();
    let mut store = store(folder.path());
    store.put_items(&[Item { width_mm: Some(2.6), ..hank("hank 1", 5) }]).unwrap();
    let catalogue = workshop::measured(Catalogue::built_in(), &store.measures().unwrap());
    let [own, plain] =
        [&catalogue, Catalogue::built_in()].map(|catalogue| catalogue.material("cane fine").unwrap());
    assert_eq!((own.width, own.thickness), (Length::mm(2.6), plain.thickness));
    assert!(own.is_measured() && !plain.is_measured());
    assert_eq!(own.sources["width"], "measured on the shelf");
    assert_eq!(catalogue.materials.len(), Catalogue::built_in().materials.len());
}

#[test]
fn everything_goes_out_and_back_in_without_loss() {
    let folder = tempfile::tempdir().unwrap();
    let mut from = store(folder.path());
    from.put_items(&[hank("hank 1", 50), Item { length_mm: None, price: None, ..hank("pins", 200) }])
        .unwrap();
    from.book(Kind::Cut, "a basket", &[change("hank 1", -3), change("pins", -13)]).unwrap();
    from.book(Kind::Counted, "", &[change("pins", 1)]).unwrap();
    from.undo(None).unwrap();
    let profile =
        vec![Girth { height_mm: 0.0, girth_mm: 560.0 }, Girth { height_mm: 180.5, girth_mm: 700.25 }];
    let mould = Mould { name: "A".to_owned(), place: "boat shed".to_owned(), profile, ..Mould::default() };
    from.put_mould(&mould).unwrap();
    from.lend("A", &Loan { to: "student 4".to_owned(), due: Some("2026-10-18".to_owned()) }).unwrap();
    let order = Order {
        name: "letter baskets".to_owned(),
        pattern: "channel-marker.toml".to_owned(),
        count: 2,
        price: Some("145.50".parse().unwrap()),
        promised: Some("2026-11-20".to_owned()),
        state: State::Ordered,
        ..Order::default()
    };
    from.put_order(&order).unwrap();
    from.log(&[making(Some("student 3")), making(None)]).unwrap();

    let all = from.everything().unwrap();
    let text = all.to_toml().unwrap();
    assert_eq!(Everything::from_toml(&text).unwrap(), all);
    let mut to = Store::open(&folder.path().join("other.db")).unwrap();
    to.take_in(&all).unwrap();
    assert_eq!(to.everything().unwrap(), all);
    // The numbers go on where they stood, and a full store is not poured over.
    assert_eq!(to.book(Kind::Counted, "", &[]).unwrap(), from.book(Kind::Counted, "", &[]).unwrap());
    assert!(matches!(to.take_in(&all), Err(Fault::Refused(_))));

    // The copy holds the same, and a file that is there is not written over.
    let copy = folder.path().join("copy.db");
    from.copy_to(&copy).unwrap();
    assert_eq!(Store::open(&copy).unwrap().everything().unwrap(), from.everything().unwrap());
    assert!(from.copy_to(&copy).is_err());
}

#[test]
fn the_shelf_goes_through_a_table_without_loss() {
    let items =
        [hank("hank 1", 50), Item { length_mm: None, note: "'quoted".to_owned(), ..hank("-pins", 3) }];
    let signs = ["=", "+", "@", "\t", "\r", "\n", "\u{ff1d}", "\u{ff0b}", "\u{ff0d}", "\u{ff20}", "'", "''="];
    let told = signs.map(|sign| Item { note: format!("{sign}1"), ..hank(&format!("{sign}hank"), 1) });
    let items = [items.as_slice(), &told].concat();
    let table = write_shelf(&items).unwrap();
    assert_eq!(read_shelf(&table).unwrap(), items);
    let text = String::from_utf8(table).unwrap();
    assert!(text.contains("'=the cane shed") && text.contains("'-pins"), "{text}");
}

#[test]
fn tables_of_other_programs_are_read_and_faults_are_named() {
    let read = |text: &str| read_shelf(text.as_bytes());
    let shelf = read("\u{feff}material;name;count;price\r\ncane fine;hank 1;70;48.00\r\n").unwrap();
    assert_eq!((shelf[0].name.as_str(), shelf[0].count, shelf[0].colour.as_str()), ("hank 1", 70, "natural"));
    assert_eq!(shelf[0].price, Some("48".parse().unwrap()));
    let wrong = |bytes: &[u8]| match read_shelf(bytes).unwrap_err() {
        Fault::Row { line, what } => (line, what.id, what.args.first().map(|(_, value)| value.clone())),
        other => panic!("{other:?}"),
    };
    let of = |name: &str| Some(Value::from(name));
    let rows: [(&[u8], _); 8] = [
        (b"name,colour\na,blue\n", (1, "workshop-row-missing", of("material"))),
        (b"name,material,size\na,cane,3\n", (1, "workshop-row-no-column", of("size"))),
        (b"name,material,count\na,cane,3\nb,cane,-2\n", (3, "workshop-row-whole", of("count"))),
        (b"name,material\na,cane,3\n", (2, "workshop-row-cells", of(","))),
        (b"name;material;price\na;cane;dear\n", (2, "workshop-row-amount", of("price"))),
        (b"name,material,length_mm\na,cane,inf\n", (2, "workshop-row-length", of("length_mm"))),
        (b"name,material\n,cane\n", (2, "workshop-row-empty", of("name"))),
        (b"name,material\na,\xff\n", (2, "workshop-row-encoding", None)),
    ];
    for (bytes, expected) in rows {
        assert_eq!(wrong(bytes), expected);
    }
}

#[test]
fn what_is_taken_off_the_shelf_keeps_its_history_and_comes_back() {
    let folder = tempfile::tempdir().unwrap();
    let mut store = store(folder.path());
    store.put_items(&[hank("hank 1", 50), Item { width_mm: Some(2.6), ..hank("hank 2", 7) }]).unwrap();
    store.book(Kind::Cut, "a basket", &[change("hank 2", -3)]).unwrap();
    store.put_mould(&Mould { name: "A".to_owned(), place: "shed".to_owned(), ..Mould::default() }).unwrap();
    let whole = store.everything().unwrap();

    let item = store.remove_item("hank 2").unwrap();
    assert_eq!(store.items().unwrap(), [hank("hank 1", 50)]);
    assert!(store.measures().unwrap().is_empty());
    assert!(matches!(store.remove_item("hank 2"), Err(Fault::Unknown { what: "item", .. })));
    assert!(matches!(store.book(Kind::Bought, "", &[change("hank 2", 1)]), Err(Fault::Unknown { .. })));
    assert!(matches!(store.undo(Some(1)), Err(Fault::Unknown { .. })), "first what was taken off");
    let history = store.history(9).unwrap();
    assert_eq!((history[0].kind, &history[0].changes), (Kind::Removed, &vec![change("hank 2", -4)]));
    assert_eq!(history.len(), 2);

    let loan = Loan { to: "student 4".to_owned(), due: None };
    store.lend("A", &loan).unwrap();
    assert!(matches!(store.remove_mould("A"), Err(Fault::Refused(_))), "somebody has it");
    store.bring_back("A").unwrap();
    let mould = store.remove_mould("A").unwrap();
    assert!(store.moulds().unwrap().is_empty());
    assert!(matches!(store.lend("A", &loan), Err(Fault::Unknown { what: "mould", .. })));

    // All of it goes out and in, and both come back with what was said of them.
    let all = store.everything().unwrap();
    let mut other = Store::open(&folder.path().join("other.db")).unwrap();
    other.take_in(&Everything::from_toml(&all.to_toml().unwrap()).unwrap()).unwrap();
    assert_eq!(other.everything().unwrap(), all);
    for store in [&mut store, &mut other] {
        store.undo(Some(mould)).unwrap();
        store.undo(Some(item)).unwrap();
        let back = store.everything().unwrap();
        assert_eq!((&back.items, &back.moulds), (&whole.items, &whole.moulds));
    }

    // Put there again under its name it is something new, and the removal is not taken back over it.
    let again = store.remove_item("hank 2").unwrap();
    store.put_items(&[hank("hank 2", 12)]).unwrap();
    assert_eq!(store.item("hank 2").unwrap().count, 12);
    assert!(matches!(store.undo(Some(again)), Err(Fault::Refused(_))));
}

#[test]
fn a_mould_is_out_once_and_comes_back() {
    let folder = tempfile::tempdir().unwrap();
    let mut store = store(folder.path());
    let loan = Loan { to: "student 4".to_owned(), due: None };
    assert!(matches!(store.lend("A", &loan), Err(Fault::Unknown { what: "mould", .. })));
    store.put_mould(&Mould { name: "A".to_owned(), ..Mould::default() }).unwrap();
    store.lend("A", &loan).unwrap();
    let Fault::Refused(said) = store.lend("A", &loan).unwrap_err() else { panic!("lent twice") };
    assert_eq!(said, Message::new("workshop-cannot-mould-out").with("name", "A").with("to", "student 4"));
    store.put_mould(&Mould { name: "A".to_owned(), place: "rack".to_owned(), ..Mould::default() }).unwrap();
    assert_eq!(store.moulds().unwrap()[0].loan, Some(loan.clone()));
    store.bring_back("A").unwrap();
    assert!(store.bring_back("A").is_err());
    let wrong = Loan { due: Some("next week".to_owned()), ..loan };
    assert!(matches!(store.lend("A", &wrong), Err(Fault::Refused(_))));
}

#[test]
fn files_that_are_no_store_of_today_are_left_as_they_are() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("workshop.db");
    let opened = |bytes: &[u8]| {
        std::fs::write(&path, bytes).unwrap();
        let fault = Store::open(&path).unwrap_err();
        assert_eq!(std::fs::read(&path).unwrap(), bytes, "{fault}");
        fault
    };
    let fault = opened(
        b"title = \"no store at all\", and rather long so that it fills a page's head of a hundred bytes....",
    );
    assert!(matches!(fault, Fault::NotAStore), "{fault:?}");

    // Another program's database.
    let other = folder.path().join("other.db");
    let foreign = rusqlite::Connection::open(&other).unwrap();
    foreign.execute_batch("CREATE TABLE songs (name TEXT);").unwrap();
    drop(foreign);
    assert!(matches!(opened(&std::fs::read(&other).unwrap()), Fault::NotAStore));

    // A newer program's.
    let newer = folder.path().join("newer.db");
    drop(Store::open(&newer).unwrap());
    let connection = rusqlite::Connection::open(&newer).unwrap();
    connection.pragma_update(None, "user_version", 99).unwrap();
    connection.pragma_update_and_check(None, "journal_mode", "DELETE", |_| Ok(())).unwrap();
    drop(connection);
    let fault = opened(&std::fs::read(&newer).unwrap());
    assert!(matches!(fault, Fault::Newer { found: 99, .. }), "{fault:?}");

    // A damaged one: pages in its middle are overwritten.
    let full = folder.path().join("full.db");
    let mut store = Store::open(&full).unwrap();
    let items: Vec<Item> = (0..500).map(|at| hank(&format!("hank {at}"), 1)).collect();
    store.put_items(&items).unwrap();
    store.copy_to(&folder.path().join("whole.db")).unwrap();
    let mut bytes = std::fs::read(folder.path().join("whole.db")).unwrap();
    let middle = bytes.len() / 2;
    bytes[middle - 6000..middle + 6000].fill(0xa5);
    let fault = opened(&bytes);
    assert!(matches!(fault, Fault::Damaged(_)), "{fault:?}");
}

#[test]
fn ten_thousand_items_are_listed_as_they_were_put() {
    let folder = tempfile::tempdir().unwrap();
    let mut store = store(folder.path());
    let items: Vec<Item> = (0..10_000).map(|at| hank(&format!("hank {at:05}"), at % 90)).collect();
    store.put_items(&items).unwrap();
    // How quick this is, `benches/shelf.rs` measures.
    let listed = store.items().unwrap();
    assert_eq!(listed, items);
    assert_eq!(store.item("hank 07777").unwrap().count, 7777 % 90);
}
