//! Sets one template with the data and drawings of a folder: `proof NAME FOLDER`.
#![allow(missing_docs, clippy::unwrap_used)]
fn main() {
    let args: Vec<String> = std::env::args().collect();
    let mut templates = sheets::Templates::default();
    for name in ["house", "handout", "bench-card", "templates"] {
        let name = format!("{name}.typ");
        templates = templates.with(name.clone(), std::fs::read_to_string(format!("crates/sheets/templates/{name}")).unwrap());
    }
    let mut files = sheets::Files::new();
    for entry in std::fs::read_dir(&args[2]).unwrap() {
        let entry = entry.unwrap();
        files.insert(entry.file_name().into_string().unwrap(), std::fs::read(entry.path()).unwrap());
    }
    let start = std::time::Instant::now();
    match sheets::print(&args[1], &templates, &files) {
        Ok(sheet) => {
            std::fs::write(format!("/tmp/proof-{}.pdf", args[1]), sheet.pdf).unwrap();
            println!("{} pages {:?}", sheet.pages, start.elapsed());
        }
        Err(error) => println!("{error}"),
    }
}
