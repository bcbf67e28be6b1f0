use basket::weave::{Face, instructions};
fn main() {
    let text = std::fs::read_to_string(std::env::args().nth(1).unwrap()).unwrap();
    let c = basket::Catalogue::built_in();
    let p = match basket::pattern::read(&text, c) {
        Ok(p) => p,
        Err(e) => {
            for e in e {
                println!("{e:?}");
            }
            return;
        }
    };
    let b = basket::assemble(&p, c);
    println!(
        "staves {} rows {} length {:?} gap {:?}",
        b.staves.count, b.weave.rows, b.weave.length, b.staves.gap_rim
    );
    for course in &b.weave.courses {
        println!(
            "{} rows {} {:?}\n  {:?}\n  {:?}\n  {:?}",
            course.weave,
            course.rows,
            course.take_up,
            course.verdict,
            b.weave.look(course, Face::Outside),
            b.weave.look(course, Face::Inside)
        );
        for w in &course.weavers {
            println!(
                "  {} {:?} len {:.0} cut {:.0} strands {}",
                w.material.name,
                w.colours.iter().map(|c| &c.name).collect::<Vec<_>>(),
                w.length.to_mm(),
                w.cut.to_mm(),
                w.strands.len()
            );
        }
        println!("  {:?}", course.joins.iter().take(6).collect::<Vec<_>>());
    }
    for f in &b.findings {
        println!("{:?} {} {:?} {:?}", f.grade, f.code, f.measured, f.remedies);
    }
    for i in instructions(&b.weave).iter().take(8) {
        println!("{i:?}");
    }
    for c in b.cuts.iter().filter(|c| c.piece == "cut-weaver") {
        println!("{} {} {:?} {:?}", c.material, c.count, c.length, c.shape);
    }
    for c in &b.choices {
        println!("{} {:?}", c.key, c.value);
    }
}
