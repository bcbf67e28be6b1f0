//! Small classes whose plans can be found by hand, or by trying everything.

mod checker;

use planning::class::schedule::{Answer, Group, Minute, Plan, Problem, Task, Window, solve};
use proptest::prelude::*;

const TASK: Task = Task {
    work: 60,
    wait: 0,
    pieces: 1,
    mould: false,
    drill: false,
    table: false,
    hands: false,
    home: false,
};

fn end(problem: &Problem) -> Option<Minute> {
    match solve(problem, &mut |_| true) {
        Answer::Plan { plan, bound } => {
            checker::check(problem, &plan);
            assert_eq!(plan.end, bound, "proven");
            Some(plan.end)
        }
        Answer::NoPlan => None,
        Answer::Unknown => panic!("nobody stopped it"),
    }
}

/// Six hours of weaving and twelve of drying on the mould, three of finishing.
fn baskets(students: u32, moulds: u32, sessions: Vec<Window>) -> Problem {
    let weave = Task { work: 360, wait: 720, mould: true, ..TASK };
    let finish = Task { work: 180, ..TASK };
    let groups = vec![Group { students, from: 0, on_mould: false, tasks: vec![weave, finish] }];
    Problem { groups, sessions, home: Vec::new(), moulds, drills: 9, tables: 9, hands: 9 }
}

#[test]
fn five_classes_end_when_reckoning_by_hand_says() {
    // By hand: two moulds take two baskets on the first day and two on the second, whose finishing is the
    // first work of the third, at 48 h + 3 h; and so on.
    let days = |day: i64| Window { from: day * 1440, to: day * 1440 + 480 };
    for (students, moulds, hours) in [(4, 2, 51), (6, 2, 75), (6, 3, 51), (6, 6, 27)] {
        let problem = baskets(students, moulds, (0..9).map(days).collect());
        assert_eq!(end(&problem), Some(hours * 60), "{students} baskets on {moulds} moulds");
    }
    // At any hour: 6 + 12, again 6 + 12, and 3.
    assert_eq!(end(&baskets(4, 2, vec![Window { from: 0, to: 99_999 }])), Some(39 * 60));
}

#[test]
fn a_search_that_is_stopped_says_so() {
    let mut problem = baskets(6, 3, vec![Window { from: 0, to: 99_999 }]);
    problem.drills = 1;
    problem.groups[0].tasks.push(Task { drill: true, ..TASK });
    assert_eq!(solve(&problem, &mut |_| false), solve(&problem, &mut |_| false));
    let mut asked = 0;
    let answer = solve(&problem, &mut |progress| {
        asked += 1;
        progress.best.is_none()
    });
    assert!(matches!(answer, Answer::Plan { .. }), "{answer:?} after {asked}");
}

#[test]
fn work_may_be_done_at_home_where_that_is_allowed() {
    let task = Task { work: 120, home: true, ..TASK };
    let problem = Problem {
        groups: vec![Group { students: 1, from: 0, on_mould: false, tasks: vec![task, TASK] }],
        sessions: vec![Window { from: 0, to: 100 }, Window { from: 1000, to: 1100 }],
        home: vec![Window { from: 500, to: 700 }],
        moulds: 1,
        drills: 1,
        tables: 1,
        hands: 1,
    };
    assert_eq!(end(&problem), Some(1060));
}

/// Everything in order of its beginning, each student for itself: no turns, no bounds, nothing let go.
fn by_trying(problem: &Problem) -> Option<Minute> {
    let students: Vec<&Group> =
        problem.groups.iter().flat_map(|group| (0..group.students).map(move |_| group)).collect();
    let mut best = None;
    try_on(problem, &students, &mut vec![Vec::new(); students.len()], 0, &mut best);
    best
}

fn try_on(
    problem: &Problem,
    students: &[&Group],
    done: &mut Vec<Vec<Window>>,
    now: Minute,
    best: &mut Option<Minute>,
) {
    if students.iter().zip(&*done).all(|(group, done)| done.len() == group.tasks.len()) {
        let end = done.iter().flatten().map(|span| span.to).max().expect("work");
        *best = Some(best.map_or(end, |best| best.min(end)));
        return;
    }
    for student in 0..students.len() {
        let (group, next) = (students[student], done[student].len());
        let Some(task) = group.tasks.get(next) else { continue };
        let ready =
            next.checked_sub(1).map_or(group.from, |last| done[student][last].to + group.tasks[last].wait);
        let begins = problem.sessions.iter().flat_map(|session| session.from..=session.to - task.work);
        let free = |at: &Minute| {
            let busy = |takes: fn(&Task) -> bool| {
                let spans =
                    students.iter().zip(&*done).flat_map(|(group, done)| group.tasks.iter().zip(done));
                spans.filter(|(task, span)| takes(task) && span.from <= *at && *at < span.to).count()
            };
            let first = group.tasks.iter().position(|task| task.mould) == Some(next);
            (!task.drill || busy(|task| task.drill) < problem.drills as usize)
                && (!task.table || busy(|task| task.table) < problem.tables as usize)
                && (!task.hands || busy(|task| task.hands) < problem.hands as usize)
                && (!first || held(students, done, *at) < problem.moulds as usize)
        };
        let Some(from) = begins.filter(|at| *at >= ready.max(now)).find(free) else { continue };
        done[student].push(Window { from, to: from + task.work });
        try_on(problem, students, done, from, best);
        done[student].pop();
    }
}

/// How many moulds are held at a moment.
fn held(students: &[&Group], done: &[Vec<Window>], at: Minute) -> usize {
    let holds = |(group, done): (&&Group, &Vec<Window>)| {
        let first = group.tasks.iter().position(|task| task.mould)?;
        let last = group.tasks.iter().rposition(|task| task.mould)?;
        let over = done.get(last).is_some_and(|span| span.to + group.tasks[last].wait <= at);
        (done.len() > first && !over).then_some(())
    };
    students.iter().zip(done).filter_map(holds).count()
}

fn tasks() -> impl Strategy<Value = Vec<Task>> {
    let task = (1..5_i64, 0..9_i64, any::<[bool; 4]>());
    let task = task.prop_map(|(work, wait, [mould, drill, table, hands])| Task {
        work,
        wait,
        mould,
        drill,
        table,
        hands,
        ..TASK
    });
    prop::collection::vec(task, 1..=3)
}

fn problems() -> impl Strategy<Value = Problem> {
    let group = |students: u32| {
        (1..=students, 0..6_i64, tasks()).prop_map(|(students, from, tasks)| Group {
            students,
            from,
            on_mould: false,
            tasks,
        })
    };
    let groups = prop_oneof![
        group(3).prop_map(|one| vec![one]),
        (group(2), group(1)).prop_map(|(one, other)| vec![one, other]),
    ];
    let there = (1..3_u32, 1..3_u32, 1..3_u32, 1..3_u32);
    (groups, there, 4..12_i64).prop_map(|(groups, (moulds, drills, tables, hands), long)| {
        let sessions = (0..5).map(|day| Window { from: day * 13, to: day * 13 + long }).collect();
        Problem { groups, sessions, home: Vec::new(), moulds, drills, tables, hands }
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]
    #[test]
    fn no_order_of_the_steps_ends_earlier(problem in problems()) {
        prop_assert_eq!(end(&problem), by_trying(&problem));
    }
}

#[test]
fn like_problems_have_like_plans() {
    let problem =
        baskets(6, 3, (0..9).map(|day| Window { from: day * 1440, to: day * 1440 + 480 }).collect());
    let plan =
        |answer| -> Option<Plan> { if let Answer::Plan { plan, .. } = answer { Some(plan) } else { None } };
    assert_eq!(plan(solve(&problem, &mut |_| true)), plan(solve(&problem, &mut |_| true)));
}
