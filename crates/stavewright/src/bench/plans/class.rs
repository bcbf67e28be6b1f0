//! What a class file comes to: whether it fits, who does what when, and what would mend it.

use std::time::{Duration, Instant, SystemTime};

use basket::Draft;
use basket::message::Value;
use planning::class::written as class_file;
use planning::class::{Answer, Doing, Source};
use sheets::{ClassPlan, Templates};
use words::Words;

use super::reading::{Made, Planning, Say, pattern, shown, unset, words};
use super::written::problems;
use crate::bench::api::{LeafSection, LeafTable, PlanLeaf, PlanOrder, PlanShown};
use crate::bench::compute::{Shop, paper};
use crate::bench::refusal::Refusal;
use crate::bench::workers::enough::is_enough;

pub(super) fn work(planning: &Planning, shop: Shop<'_>, say: &mut Say<'_>) -> Result<Vec<Made>, Refusal> {
    let order = &planning.order;
    let class = class_file::read(&order.source)
        .map_err(|faults| Refusal::misread(problems(&order.source, faults, order.language.as_deref())))?;
    let pattern = pattern(&class.pattern, (order, shop))?;
    let words = words(order, pattern.units)?;
    let source = Source { pattern: &pattern, catalogue: shop.catalogue, hand: shop.hand };
    let answer = answer(&class, source, (order, &words), say);
    let draft = Draft::of(pattern.clone(), shop.catalogue, shop.hand);
    let plan = sheets::class_plan(&draft, &answer, &words);
    if order.sheets {
        say("class.pdf".to_owned());
        let paper = paper(order.paper, &words);
        let sheet = sheets::class_sheet((&draft, &answer), &words, paper, &Templates::default());
        let calendar = sheets::calendar(&answer, &plan, &words, now());
        return Ok(vec![
            ("class.pdf", sheet.map_err(|error| unset(&error))?),
            ("class.ics", calendar.into_bytes()),
        ]);
    }
    let all = PlanShown {
        leaves: vec![leaf(&plan, &words)],
        bought: None,
        cut: None,
        pictures: sheets::class_pictures(&answer, &words).iter().map(drawings::Drawing::to_svg).collect(),
    };
    Ok(vec![shown(&all)?])
}

/// Half of the time is for the plan; what would mend it has the rest.
fn answer(
    class: &class_file::Class,
    source: Source,
    (order, words): (&PlanOrder, &Words),
    say: &mut Say<'_>,
) -> Answer {
    let (began, limit) = (Instant::now(), Duration::from_secs(u64::from(order.seconds)));
    let mut last = String::new();
    Answer::of(class, source, &mut |doing| {
        let (step, until) = match doing {
            Doing::Planning(so_far) => {
                let best = so_far.best.map(|best| class.local(best));
                let best = best.map_or("–".to_owned(), |(date, time)| format!("{date} {time}"));
                (words.with("workshop-class-searching", &[("best", Value::Name(best))]), limit / 2)
            }
            Doing::Trying(count) => {
                let count = Value::Count(i64::from(count));
                (words.with("workshop-class-trying", &[("count", count)]), limit)
            }
        };
        if step != last {
            last.clone_from(&step);
            say(step);
        }
        began.elapsed() < until && !is_enough()
    })
}

fn leaf(plan: &ClassPlan, words: &Words) -> PlanLeaf {
    let said = |heading: String, notes: &[String]| LeafSection {
        heading,
        notes: notes.to_vec(),
        ..LeafSection::default()
    };
    let mut sections = vec![said(plan.title.clone(), &plan.says)];
    for (id, notes) in [("mends", &plan.mends), ("waits", &plan.waits), ("chance", &plan.chance)] {
        sections.extend((!notes.is_empty()).then(|| said(words.term(&format!("sheet-class-{id}")), notes)));
    }
    let head = ["sheet-class-when", "sheet-class-step", "sheet-class-then"].map(|id| words.term(id));
    sections.extend(plan.students.iter().map(|student| {
        let rows = student
            .steps
            .iter()
            .map(|step| vec![step.from.day.clone(), step.says.clone(), step.then.clone()]);
        LeafSection {
            heading: format!("{} ({})", student.name, student.hand),
            notes: student.mould.iter().cloned().collect(),
            table: Some(LeafTable { head: head.to_vec(), figures: vec![false; 3], rows: rows.collect() }),
            after: student.due.clone(),
            ..LeafSection::default()
        }
    }));
    if !plan.samples_say.is_empty() || !plan.samples.is_empty() {
        sections.push(said(words.term("sheet-class-samples"), &plan.samples_say));
    }
    let [when, step, _] = head;
    sections.extend(plan.samples.iter().map(|sample| {
        let rows = sample.steps.iter().map(|step| vec![step.from.day.clone(), step.says.clone()]);
        let told = |id: &str, said: &[String]| {
            (!said.is_empty())
                .then(|| format!("{}: {}", words.term(&format!("sheet-class-{id}")), said.join("; ")))
        };
        LeafSection {
            heading: sample.name.clone(),
            notes: sample.says.clone(),
            table: Some(LeafTable {
                head: vec![when.clone(), step.clone()],
                figures: vec![false; 2],
                rows: rows.collect(),
            }),
            after: told("tray", &sample.tray).into_iter().chain(told("say", &sample.tell)).collect(),
            ..LeafSection::default()
        }
    }));
    PlanLeaf { id: "class".to_owned(), name: words.term("sheet-class"), sections }
}

/// Minutes since 1970 began in Greenwich.
fn now() -> i64 {
    let since = SystemTime::now().duration_since(SystemTime::UNIX_EPOCH).unwrap_or_default();
    i64::try_from(since.as_secs() / 60).unwrap_or(0)
}
