//! The tags by which a reading machine finds its way through a PDF: what PDF/UA-1 (ISO 14289-1) asks and a program
//! can look up. An independent checker may be run besides, as CONTRIBUTING.md says.

use lopdf::{Dictionary, Document, Object};

/// The standard types of structure that sheets may use (ISO 32000-1, 14.8.4).
const STANDARD: [&str; 40] = [
    "Document",
    "Part",
    "Art",
    "Sect",
    "Div",
    "BlockQuote",
    "Caption",
    "Code",
    "TOC",
    "TOCI",
    "Index",
    "NonStruct",
    "P",
    "H",
    "H1",
    "H2",
    "H3",
    "H4",
    "H5",
    "H6",
    "L",
    "LI",
    "Lbl",
    "LBody",
    "Table",
    "TR",
    "TH",
    "TD",
    "THead",
    "TBody",
    "TFoot",
    "Span",
    "Quote",
    "Note",
    "Figure",
    "Formula",
    "Link",
    "Reference",
    "BibEntry",
    "Annot",
];

fn name(dict: &Dictionary, key: &[u8]) -> Option<String> {
    let name = dict.get(key).and_then(Object::as_name).ok()?;
    Some(String::from_utf8_lossy(name).into_owned())
}

/// An entry as a dictionary, be it there or referred to.
fn dict<'a>(document: &'a Document, of: &'a Dictionary, key: &[u8]) -> Option<&'a Dictionary> {
    match of.get(key).ok()? {
        Object::Reference(id) => document.get_dictionary(*id).ok(),
        object => object.as_dict().ok(),
    }
}

/// All elements of structure.
fn elements(document: &Document) -> Vec<&Dictionary> {
    let dicts = document.objects.values().filter_map(|object| object.as_dict().ok());
    dicts
        .filter(|dict| {
            name(dict, b"Type").as_deref() == Some("StructElem") || dict.has(b"S") && dict.has(b"P")
        })
        .collect()
}

/// Marked, with a language, a title that is shown, a tree of structure of known types, and table headers that say
/// of what they are the heads.
pub(crate) fn assert_tagged(pdf: &[u8], of: &str) {
    let document = Document::load_mem(pdf).expect("lopdf opens it");
    let catalog = document.catalog().expect("a catalog");
    let mark = dict(&document, catalog, b"MarkInfo").unwrap_or_else(|| panic!("{of} is not marked"));
    assert!(mark.get(b"Marked").and_then(Object::as_bool).unwrap_or(false), "{of} is not marked");
    let language = catalog.get(b"Lang").and_then(Object::as_str).unwrap_or_default();
    assert!(!language.is_empty(), "{of} has no language");
    let view =
        dict(&document, catalog, b"ViewerPreferences").unwrap_or_else(|| panic!("{of} shows no title"));
    assert!(
        view.get(b"DisplayDocTitle").and_then(Object::as_bool).unwrap_or(false),
        "{of} shows its file's name"
    );
    let root = dict(&document, catalog, b"StructTreeRoot").unwrap_or_else(|| panic!("{of} has no structure"));
    assert!(root.has(b"K") && root.has(b"ParentTree"), "{of} has an empty structure");
    let roles = dict(&document, root, b"RoleMap");
    let elements = elements(&document);
    assert!(elements.len() > 3, "{of} has {} elements", elements.len());
    for element in &elements {
        let Some(kind) = name(element, b"S") else { continue };
        let mapped = roles.and_then(|roles| name(roles, kind.as_bytes()));
        let known =
            STANDARD.contains(&kind.as_str()) || mapped.is_some_and(|to| STANDARD.contains(&to.as_str()));
        assert!(known, "{of}: {kind} is no type of structure");
        if kind == "TH" {
            assert!(element.has(b"A"), "{of}: a table header without its scope");
        }
    }
    let has = |kind: &str| elements.iter().any(|element| name(element, b"S").as_deref() == Some(kind));
    assert!(!has("Table") || has("TH"), "{of}: a table without headers");
    // Pages that repeat for the eye alone what stands before are outside the structure.
    let pages = document.get_pages();
    let first = pages.values().next().and_then(|page| document.get_dictionary(*page).ok());
    assert!(
        first.is_some_and(|page| page.has(b"StructParents")),
        "{of}: the first page is outside the structure"
    );
}
