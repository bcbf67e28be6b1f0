//! The page's types, generated from these and kept beside the page.

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

use ts_rs::{Config, TS, TypeVisitor};

use super::*;

/// Set to write the file anew.
const UPDATE: &str = "STAVEWRIGHT_UPDATE";

/// Declarations by name, so that the file has one order.
#[derive(Default)]
struct Declarations {
    config: Config,
    found: BTreeMap<String, String>,
}

impl TypeVisitor for Declarations {
    fn visit<T: TS + 'static + ?Sized>(&mut self) {
        if T::output_path().is_none() {
            return;
        }
        let name = T::ident(&self.config);
        if self.found.contains_key(&name) {
            return;
        }
        let docs = T::docs().unwrap_or_default();
        let declared = format!("{docs}export {}\n", T::decl(&self.config));
        self.found.insert(name, declared);
        T::visit_dependencies(self);
    }
}

fn generated() -> String {
    let mut all = Declarations::default();
    all.visit::<ChartRequest>();
    all.visit::<Chart>();
    all.visit::<CompareRequest>();
    all.visit::<Comparison>();
    all.visit::<CountsRequest>();
    all.visit::<Counts>();
    all.visit::<DrawingRequest>();
    all.visit::<EditRequest>();
    all.visit::<Edited>();
    all.visit::<Fault>();
    all.visit::<FirstRequest>();
    all.visit::<Health>();
    all.visit::<KeptPhoto>();
    all.visit::<LearnedHand>();
    all.visit::<LogAct>();
    all.visit::<LookRequest>();
    all.visit::<Looked>();
    all.visit::<MakingForm>();
    all.visit::<MakingLog>();
    all.visit::<NameRequest>();
    all.visit::<NestRequest>();
    all.visit::<NestShown>();
    all.visit::<PastVersion>();
    all.visit::<PacketRequest>();
    all.visit::<Packet>();
    all.visit::<PatternName>();
    all.visit::<PatternText>();
    all.visit::<PictureRequest>();
    all.visit::<PlanName>();
    all.visit::<PlanOrder>();
    all.visit::<PlanRequest>();
    all.visit::<PlanShown>();
    all.visit::<PlanText>();
    all.visit::<SaveRequest>();
    all.visit::<Saved>();
    all.visit::<Scenario>();
    all.visit::<Shelf>();
    all.visit::<ShelfAct>();
    all.visit::<Stock>();
    all.visit::<TraceRequest>();
    all.visit::<TracedMould>();
    all.visit::<WaysRequest>();
    all.visit::<Ways>();
    let head = "// Generated from crates/stavewright/src/bench/api; do not edit.\n\
                // STAVEWRIGHT_UPDATE=1 cargo test -p stavewright typescript\n\n";
    head.to_owned() + &all.found.into_values().collect::<Vec<_>>().join("\n")
}

#[test]
fn typescript_has_not_drifted() {
    let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../web/src/api/types.ts");
    let generated = generated();
    if std::env::var_os(UPDATE).is_some() {
        fs::create_dir_all(file.parent().unwrap()).unwrap();
        fs::write(&file, &generated).unwrap();
    }
    let kept = fs::read_to_string(&file).unwrap_or_default();
    assert!(
        kept == generated,
        "web/src/api/types.ts is not what the server says; write it anew with {UPDATE}=1"
    );
}
