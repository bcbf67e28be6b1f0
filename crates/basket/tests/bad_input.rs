//! Everything that is wrong in a pattern is named, with its place and how to mend it.

use basket::Catalogue;
use basket::limits::{PATTERN_BYTES, ROWS};
use basket::pattern::{Problem, read};

/// A small sound pattern with more lines after it.
fn with(lines: &str) -> String {
    format!(
        "title = \"T\"\nunits = \"in\"\nmould = {{ base = \"5\", rim = \"8\", height = \"4\" }}\n{lines}\n"
    )
}

fn report(name: &str, text: &str) -> String {
    let Err(problems) = read(text, Catalogue::built_in()) else { panic!("{name} should not read") };
    let lines: Vec<String> = problems.iter().map(|problem| show(problem, text)).collect();
    format!("# {name}\n{}\n", lines.join("\n"))
}

fn show(problem: &Problem, text: &str) -> String {
    let (line, column) = problem.line_column(text);
    let help = problem.help.as_ref().expect("every problem says how to mend it");
    assert!(problem.fault.is_some(), "“{}” is told in no other words", problem.message);
    format!("{line}:{column} {}\n    {help}", problem.message)
}

fn in_staves(line: &str) -> String {
    with(&format!("[staves]\n{line}"))
}

fn in_mould(lines: &str) -> String {
    format!("title = \"T\"\nunits = \"in\"\n[mould]\n{lines}\n")
}

fn in_weave(course: &str) -> String {
    with(&format!("[weave]\ncourses = [\n  {course},\n]"))
}

#[track_caller]
fn explain(snapshot: &str, cases: &[(&str, String)]) {
    let reports: Vec<String> = cases.iter().map(|(name, text)| report(name, text)).collect();
    insta::assert_snapshot!(snapshot, reports.join("\n"));
}

#[test]
fn bad_file_is_explained() {
    explain(
        "file",
        &[
            ("empty", String::new()),
            ("only spaces", "  \n\n".to_owned()),
            ("only a comment", "# nothing yet\n".to_owned()),
            ("not TOML", "title = Harbour\n[mould\n".to_owned()),
            ("key twice", with("finish = \"oil\"\nfinish = \"none\"")),
            ("nothing such lies ready", with("ready = [\"rings\", \"staves tapred\"]")),
            ("finish on no handle", with("finish-on = [\"base\", \"handle\"]")),
            ("ready is a flag", with("ready = true")),
            ("open quote", "title = \"Harbour\n".to_owned()),
            (
                "no units",
                "title = \"T\"\n[mould]\nbase = \"5\"\nrim = \"8 in\"\nheight = \"4 in\"\n".to_owned(),
            ),
            (
                "unknown units",
                "title = \"T\"\nunits = \"inch\"\nmould = { base = \"5\", rim = \"8\", height = \"4\" }"
                    .to_owned(),
            ),
            (
                "title is a number",
                "title = 5\nmould = { base = \"5 in\", rim = \"8 in\", height = \"4 in\" }".to_owned(),
            ),
            (
                "title is empty",
                "title = \" \"\nmould = { base = \"5 in\", rim = \"8 in\", height = \"4 in\" }".to_owned(),
            ),
            ("unknown section", with("[handel]\nkind = \"swing\"")),
            ("unknown key", with("[base]\ndiametre = \"5\"")),
            ("strange key", with("[base]\nzzz = \"5\"")),
            ("section is a text", with("staves = \"many\"")),
            ("section is a list", with("[[staves]]\ncount = 5")),
        ],
    );
}

#[test]
fn bad_staves_is_explained() {
    explain(
        "staves",
        &[
            ("unknown unit", in_staves("width = \"6 nm\"")),
            ("trailing rubbish", in_staves("width = \"1/8 in about\"")),
            ("zero denominator", in_staves("width = \"1/0\"")),
            ("bare number", in_staves("width = 6")),
            ("bare decimal", in_staves("width = 0.25")),
            ("negative", in_staves("width = \"-1/4\"")),
            ("zero", in_staves("width = \"0\"")),
            ("not a number", in_staves("width = \"nan\"")),
            ("TOML nan", in_staves("width = nan")),
            ("infinite", in_staves("width = \"inf\"")),
            ("enormous", in_staves("length = \"6 m\"")),
            ("far too large", in_staves(&format!("length = \"{}\"", "9".repeat(400)))),
            ("tiny", in_staves("width = \"0.01 mm\"")),
            ("ambiguous comma", in_staves("length = \"1,200 mm\"")),
            ("unicode before the place", in_staves("width = \"⅝ zoll\" # ⅝")),
            ("count too small", in_staves("count = 2")),
            ("count too large", in_staves("count = 1000")),
            ("count negative", in_staves("count = -5")),
            ("count huge", in_staves("count = 99999999999999999999")),
            ("count in quotes", in_staves("count = \"67\"")),
            ("count with decimals", in_staves("count = 67.5")),
            ("unknown stock", in_staves("stock = \"flat oval reed 1/4\"")),
            ("strange stock", in_staves("stock = \"moonbeam\"")),
            ("stock of the wrong kind", in_staves("stock = \"brass pin 18 x 1/2 in\"")),
            ("oval word", in_staves("oval = \"outside\"")),
            ("width wider than the stock", in_staves("stock = \"flat reed 1/4 in\"\nwidth = \"1/2\"")),
            (
                "taper wider than the stave",
                in_staves("stock = \"flat reed 1/4 in\"\ntaper = { from = \"1\", foot = \"3/8\" }"),
            ),
            ("taper without foot", in_staves("taper = { from = \"1\" }")),
        ],
    );
}

#[test]
fn bad_form_is_explained() {
    explain(
        "form",
        &[
            ("no mould", "title = \"T\"\n".to_owned()),
            ("mould without form", in_mould("shape = \"round\"")),
            ("oval with a base", in_mould("shape = \"oval\"\nbase = \"5\"\nrim = \"8\"\nheight = \"4\"")),
            (
                "oval wider than long",
                in_mould("shape = \"oval\"\nlength = \"5\"\nwidth = \"6\"\nrim = \"8\"\nheight = \"4\""),
            ),
            ("round with a width", in_mould("width = \"6\"\nbase = \"5\"\nrim = \"8\"\nheight = \"4\"")),
            (
                "stadium with a fullness",
                in_mould(
                    "shape = \"stadium\"\nlength = \"8\"\nwidth = \"6\"\nfullness = \"20 %\"\nrim = \"8\"\nheight = \"4\"",
                ),
            ),
            (
                "rectangle without corners",
                in_mould("shape = \"rectangle\"\nlength = \"8\"\nwidth = \"6\"\nrim = \"8\"\nheight = \"4\""),
            ),
            (
                "corner too large",
                in_mould(
                    "shape = \"rectangle\"\nlength = \"8\"\nwidth = \"6\"\ncorner = \"4\"\nrim = \"8\"\nheight = \"4\"",
                ),
            ),
            (
                "few rays",
                in_mould("shape = \"traced\"\nrays = [\"4\", \"3\", \"4\"]\nrim = \"8\"\nheight = \"4\""),
            ),
            (
                "hollow outline",
                in_mould(
                    "shape = \"traced\"\nrays = [\"4\", \"4\", \"4\", \"2\", \"4\", \"4\", \"4\", \"4\"]\nrim = \"8\"\nheight = \"4\"",
                ),
            ),
            (
                "tiny outline",
                in_mould("shape = \"oval\"\nlength = \"0\"\nwidth = \"0\"\nrim = \"8\"\nheight = \"4\""),
            ),
            ("unknown shape", in_mould("shape = \"egg\"\nbase = \"5\"\nrim = \"8\"\nheight = \"4\"")),
            ("girths and rim", in_mould("girths = [[\"0\", \"15\"], [\"1\", \"16\"]]\nrim = \"8\"")),
            ("one girth", in_mould("girths = [[\"0\", \"15\"]]")),
            ("girths out of order", in_mould("girths = [[\"0\", \"15\"], [\"2\", \"16\"], [\"1\", \"17\"]]")),
            ("girths twice", in_mould("girths = [[\"0\", \"15\"], [\"1\", \"16\"], [\"1\", \"17\"]]")),
            ("girths not from the base", in_mould("girths = [[\"1\", \"15\"], [\"2\", \"16\"]]")),
            ("girth of three", in_mould("girths = [[\"0\", \"15\"], [\"1\", \"16\", \"17\"], \"18\"]")),
            ("girth numbers", in_mould("girths = [[0, 15.5], [1, 16]]")),
            ("girths flat", in_mould("girths = \"15\"")),
            (
                "straight but unequal",
                in_mould("base = \"5\"\nrim = \"8\"\nheight = \"4\"\nside = \"straight\""),
            ),
            ("bowl but narrowing", in_mould("base = \"8\"\nrim = \"5\"\nheight = \"4\"\nside = \"bowl\"")),
            ("drawn but incomplete", in_mould("rim = \"5\"")),
            (
                "groove too deep",
                with("[base]\ndiameter = \"4\"\ngroove = { depth = \"2\", width = \"3/32\" }"),
            ),
            (
                "groove too wide",
                with("[base]\nthickness = \"3/8\"\ngroove = { depth = \"1/4\", width = \"1/2\" }"),
            ),
            ("groove as a text", with("[base]\ngroove = \"1/4\"")),
            ("screw as wide as the base", with("[base]\ndiameter = \"4\"\nscrew = \"4\"")),
            ("unknown wood", with("[base]\nwood = \"chery\"")),
            ("strange wood", with("[base]\nwood = \"plywood\"")),
        ],
    );
}

#[test]
fn bad_weave_and_rim_is_explained() {
    explain("weave_and_rim", &[        ("course without weaver", in_weave("{ weave = \"plain\", rows = 4 }")),
        ("course without end", in_weave("{ weave = \"plain\", weaver = \"cane fine\" }")),
        ("rows and until", in_weave("{ weaver = \"cane fine\", rows = 4, until = \"mould top\" }")),
        ("no rows", in_weave("{ weaver = \"cane fine\", rows = 0 }")),
        ("too many rows", in_weave("{ weaver = \"cane fine\", rows = 2001 }")),
        ("unknown weave", in_weave("{ weave = \"plane\", weaver = \"cane fine\", rows = 4 }")),
        ("unknown weaver", in_weave("{ weaver = \"cane fine fin\", rows = 4 }")),
        ("until nowhere", in_weave("{ weaver = \"cane fine\", until = \"the end\" }")),
        ("until a bad length", in_weave("{ weaver = \"cane fine\", until = \"1 inn below mould top\" }")),
        ("until above the mould", in_weave("{ weaver = \"cane fine\", until = \"height 4 1/8\" }")),
        ("until below the mould", in_weave("{ weaver = \"cane fine\", until = \"5 below mould top\" }")),
        ("course is a text", in_weave("\"plain\"")),
        ("shrink of 40 %", with("[weave]\nshrink = \"40 %\"")),
        ("shrink as 4", with("[weave]\nshrink = 4")),
        ("packing in words", with("[weave]\ncourses = [{ weaver = \"cane fine\", rows = 4, packing = \"tight\" }]")),
        ("filler word", with("filler = \"nothing\"")),
        ("filler number", with("filler = 5")),
        ("every word", with("[lashing]\nevery = \"other stave\"")),
        ("corner on a semicircle", with("[handle]\ncurve = \"semicircle\"\ncorner = \"1\"")),
        ("rise of a semicircle", with("[handle]\ncurve = \"semicircle\"\nrise = \"3\"")),
        ("handle word", with("[handle]\nkind = \"swinging\"")),
        ("date", with("[handle]\nkind = 2026-01-01")),
        ("new material without size", with("[materials.\"my reed\"]\nkind = \"flat reed\"")),
        ("material like nothing", with("[materials.\"my reed\"]\nlike = \"flat reeds 1/4 in\"")),
        ("material of no kind", with("[materials.\"my reed\"]\nkind = \"flat\"\nwidth = \"6 mm\"\nthickness = \"1 mm\"")),
        ("material soak", with("[materials.\"cane fine\"]\nsoak = [20, 5]")),
        ("material is a number", with("[materials]\nreed = 5")),
        ("material without name", with("[materials.\"\"]\nlike = \"cane fine\"")),
        (
            "many at once",
            "title = \"\"\nunits = \"inches\"\n[mould]\nbase = \"0\"\n[staves]\ncount = 1\nstok = \"x\"\n[ears]\nmaterial = \"tin\"\n"
                .to_owned(),
        ),
    ]);
}

#[test]
fn bad_notes_are_explained() {
    let photo =
        |photo: &str| with(&format!("[[note]]\nstep = \"rim\"\nphoto = \"{photo}\"\ncaption = \"Hoops\""));
    explain(
        "notes",
        &[
            ("one bracket", with("[note]\nstep = \"rim\"\ntext = \"x\"")),
            ("a text", "note = \"x\"\n".to_owned() + &with("")),
            ("a list of texts", "note = [\"x\"]\n".to_owned() + &with("")),
            ("empty", with("[[note]]")),
            ("no step", with("[[note]]\ntext = \"x\"")),
            ("unknown step", with("[[note]]\nstep = \"lashings\"\ntext = \"x\"")),
            ("strange step", with("[[note]]\nstep = \"paint\"\ntext = \"x\"")),
            ("unknown key", with("[[note]]\nstep = \"rim\"\ntxt = \"x\"")),
            ("empty text", with("[[note]]\nstep = \"rim\"\ntext = \" \"")),
            ("bell", with("[[note]]\nstep = \"rim\"\ntext = \"a\\u0007\"")),
            ("photo without caption", with("[[note]]\nstep = \"rim\"\nphoto = \"a.jpg\"")),
            ("caption without photo", with("[[note]]\nstep = \"rim\"\ntext = \"x\"\ncaption = \"y\"")),
            ("photo outside", photo("../a.jpg")),
            ("photo from the root", photo("/etc/a.jpg")),
            ("photo on a drive", photo("C:/a.jpg")),
            ("photo with backslash", photo("a\\\\b.jpg")),
            ("photo without name", photo("")),
            ("photo of another kind", photo("a.gif")),
        ],
    );
}

#[test]
fn a_file_over_the_limit_is_refused() {
    let text = format!("title = \"{}\"", "x".repeat(PATTERN_BYTES));
    let problems = read(&text, Catalogue::built_in()).unwrap_err();
    assert_eq!(problems.len(), 1);
    assert_eq!(
        (problems[0].message.as_str(), problems[0].line_column(&text)),
        ("the file is larger than 1 MB", (1, 1))
    );
}

#[test]
fn more_rows_than_any_basket_has_are_refused_at_the_courses() {
    let course = |rows: u32| format!("{{ weaver = \"cane fine\", rows = {rows} }}");
    let weave = |last: u32| {
        let all = [course(2000), course(2000), course(last)].join(", ");
        with(&format!("[weave]\ncourses = [{all}]"))
    };
    assert!(read(&weave(ROWS - 4000), Catalogue::built_in()).is_ok());
    let text = weave(ROWS - 3999);
    let problems = read(&text, Catalogue::built_in()).unwrap_err();
    assert_eq!(problems.len(), 1);
    assert_eq!(problems[0].line_column(&text), (5, 11));
    assert_eq!(
        problems[0].to_string(),
        "`weave.courses` have 5001 rows together (write at most 5000 rows in all)"
    );
}

#[test]
fn of_very_many_problems_the_first_are_told() {
    let lines: Vec<String> = (0..40_000).map(|number| format!("key-number-{number} = 1")).collect();
    let problems = read(&lines.join("\n"), Catalogue::built_in()).unwrap_err();
    assert_eq!(problems.len(), 51);
    assert_eq!(problems[50].message, "39952 more problems are not shown");
}

#[test]
fn deep_nesting_is_refused() {
    let text = with(&format!("filler = {}{}", "[".repeat(100_000), "]".repeat(100_000)));
    assert!(!read(&text, Catalogue::built_in()).unwrap_err().is_empty());
}

#[test]
fn columns_are_counted_in_characters() {
    let text = "title = \"ööö\"\nä = 1\n";
    let problem = Problem {
        message: String::new(),
        span: Some(text.find('1').unwrap()..text.len()),
        help: None,
        fault: None,
    };
    assert_eq!(problem.line_column(text), (2, 5));
}
