//! Checks a plan against the rules of a class, and knows nothing of how it was found.

use planning::class::schedule::{Plan, Problem, Task, Window};

/// Fails where a plan breaks a rule.
pub fn check(problem: &Problem, plan: &Plan) {
    assert_eq!(plan.students.len(), problem.students() as usize);
    let mut on_mould = Vec::new();
    let mut drilling = Vec::new();
    let mut at_tables = Vec::new();
    let mut at_hand = Vec::new();
    let mut last = 0;
    for (group, count) in problem.groups.iter().enumerate().map(|(group, of)| (group, of.students)) {
        let of_group = plan.students.iter().filter(|turn| turn.group == group).count();
        assert_eq!(of_group, count as usize);
    }
    for turn in &plan.students {
        let group = &problem.groups[turn.group];
        assert_eq!(turn.steps.len(), group.tasks.len());
        let mut ready = group.from;
        let mut mould: Option<Window> = None;
        for (task, placed) in group.tasks.iter().zip(&turn.steps) {
            let stretches = &placed.work;
            let (from, to) = (stretches[0].from, stretches.last().expect("work").to);
            assert!(from >= ready, "begun at {from}, before the wait ends at {ready}");
            assert_eq!((placed.span.from, placed.span.to), (from, to));
            work_is_whole(problem, task, stretches);
            ready = to + task.wait;
            assert_eq!(placed.until, ready);
            last = last.max(to);
            if task.mould {
                mould = Some(Window { from: mould.map_or(from, |held| held.from), to: ready });
            }
            if task.drill {
                drilling.push(Window { from, to });
            }
            if task.table {
                at_tables.push(Window { from, to });
            }
            if task.hands {
                at_hand.push(Window { from, to });
            }
        }
        assert_eq!(turn.mould.map(|(_, held)| held), mould);
        on_mould.extend(turn.mould);
    }
    assert_eq!(plan.end, last);
    for (number, held) in &on_mould {
        assert!(*number < problem.moulds, "there is no mould {number}");
        let same = on_mould.iter().filter(|(other, span)| other == number && overlap(span, held));
        assert_eq!(same.count(), 1, "mould {number} is held twice");
    }
    never_more_than(problem.drills, &drilling);
    never_more_than(problem.tables, &at_tables);
    never_more_than(problem.hands, &at_hand);
}

fn overlap(a: &Window, b: &Window) -> bool {
    a.from < b.to && b.from < a.to
}

/// All of the work lies in hours, in order, and is broken off only where pieces end.
fn work_is_whole(problem: &Problem, task: &Task, stretches: &[Window]) {
    let minutes: i64 = stretches.iter().map(|stretch| stretch.to - stretch.from).sum();
    assert_eq!(minutes, task.work);
    assert!(stretches.windows(2).all(|pair| pair[0].to <= pair[1].from));
    let inside = |stretch: &Window, hours: &[Window]| {
        hours.iter().any(|window| window.from <= stretch.from && stretch.to <= window.to)
    };
    for stretch in stretches {
        assert!(stretch.from < stretch.to);
        assert!(
            inside(stretch, &problem.sessions) || (task.home && inside(stretch, &problem.home)),
            "{stretch:?} lies outside the hours"
        );
    }
    let mut done = 0;
    for stretch in &stretches[..stretches.len() - 1] {
        done += stretch.to - stretch.from;
        // A piece ends in the minute that it fills.
        let ends = (1..i64::from(task.pieces))
            .any(|piece| (piece * task.work + i64::from(task.pieces) - 1) / i64::from(task.pieces) == done);
        assert!(ends, "broken off after {done} of {} min in {} pieces", task.work, task.pieces);
    }
}

/// Taken at the beginning of each: so many at the most.
fn never_more_than(many: u32, taken: &[Window]) {
    for one in taken {
        let at_once = taken.iter().filter(|other| other.from <= one.from && one.from < other.to).count();
        assert!(at_once <= many as usize, "{at_once} at once, and there are {many}");
    }
}
