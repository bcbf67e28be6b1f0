//! The search for a look: every answer woven again by a weaver who counts staves, and looked at anew.

use basket::weave::fabric::{Follow, Passing};
use basket::weave::find::{Proposal, Wanted, find};
use basket::weave::look::Look;

#[test]
fn try_it() {
    let mut wanted = Wanted::new(Look::Spiral, 2, 73);
    wanted.turns = Some(2.0);
    let start = std::time::Instant::now();
    for p in find(&wanted, 8) {
        println!("{p:?}");
    }
    println!("{:?}", start.elapsed());
    for look in [Look::Plain, Look::Columns, Look::Bands, Look::Checks, Look::Arrows, Look::Spiral] {
        for colours in 1..=3 {
            for p in find(&Wanted::new(look, colours, 73), 5) {
                println!(
                    "{look:?} {colours} {} {:?} {:?} {:?} {}",
                    p.count, p.fabric.passing, p.colouring, p.sighting, p.penalty
                );
            }
        }
    }
    println!("{:?}", start.elapsed());
}
