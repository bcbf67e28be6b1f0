//! Reading one course of `[weave]`.

use toml::Spanned;
use toml::de::DeValue;

use super::colours::Palette;
use super::ends::ends;
use super::keys;
use super::section::{PART, RUN, Section, type_name};
use super::text::{nearest, one_of, shorten};
use super::words::{LEAN, WAY, WEAVER_KINDS};
use crate::Material;
use crate::colour::Colour;
use crate::measure::Length;
use crate::pattern::Rule;
use crate::pattern::drawn::{Drawn, DrawnFault};
use crate::pattern::{CoursePattern, Lean, Way, WeaveKind};

/// More weavers than anyone lays side by side.
const MOST_SLEWED: usize = 6;
const MOST_STRANDS: usize = 500;
const MOST_CHART_ROWS: usize = 2000;
/// The longest float that a rule may ask for.
const LONGEST_FLOAT: u32 = 8;

/// The weaves by the word for them, with the figures that most often follow it.
pub(super) const WEAVES: &[(&str, &str)] = &[
    ("plain", ""),
    ("twill", " 2/2"),
    ("reversed twill", " 2/2"),
    ("chase", ""),
    ("chase twill", " 2/2"),
    ("pairing", ""),
    ("wale", " 3"),
    ("slew", ""),
    ("slew twill", " 2/2"),
    ("skip one", ""),
    ("drawn", ""),
];

/// Reads one course; `top` is the height of the mould.
pub(super) fn course(
    weave: &Section,
    entry: &Spanned<DeValue<'_>>,
    top: Option<Length>,
    palette: &Palette,
) -> Option<CoursePattern> {
    let DeValue::Table(table) = entry.get_ref() else {
        let message =
            format!("each of `weave.courses` must be in braces, not {}", type_name(entry.get_ref()));
        let help = r#"write { weave = "plain", weaver = "cane fine", rows = 4 }"#;
        weave.context.problem(entry.span(), message, help);
        return None;
    };
    let section = Section::open(weave.context, "weave.courses", table, entry.span(), keys::COURSE);
    let kind = if section.has("weave") { kind(&section) } else { Some(WeaveKind::Plain) };
    let weavers = weavers(&section);
    let until = ends(&section, top);
    let chart = chart(&section, kind);
    let read = Course { section: &section, kind };
    let (way, lean, step_up) = (read.way(), read.lean(), read.step_up());
    let step = read.step(way == Some(Way::RowByRow) || step_up);
    let colours = colours(&section, palette);
    let (packing, spaced) = read.spacing();
    let mut weavers = weavers?.into_iter();
    let course = CoursePattern {
        way,
        lean,
        step_up,
        step,
        band: read.only("band", WeaveKind::turns, "a reversed twill", 1..=500),
        start: section.count("start", 1..=999),
        chart,
        chart_file: section.title("chart-file"),
        doubled: read.only("doubled", WeaveKind::is_of_one, "a weave of one weaver", 1..=100).unwrap_or(0),
        strands: strands(&section),
        packing,
        spaced,
        colours: Vec::new(),
        ..CoursePattern::new(kind?, weavers.next()?, until?)
    };
    let course = CoursePattern { others: weavers.collect(), ..course };
    read.check_weavers(&course);
    Some(CoursePattern { colours: read.dealt(&course, colours?), ..course })
}

fn kind(section: &Section) -> Option<WeaveKind> {
    let text = section.text("weave")?.text;
    let kind = parse(text);
    if kind.is_none() {
        let words: Vec<&str> = WEAVES.iter().map(|(word, _)| *word).collect();
        let word = text.trim_end_matches(|sign: char| sign.is_ascii_digit() || " /".contains(sign));
        let figures = |word: &str| WEAVES.iter().find(|known| known.0 == word).map_or("", |known| known.1);
        let help = match (words.contains(&word), nearest(word, words.iter().copied())) {
            (true, _) if word == "wale" => "write \"wale 3\", \"wale 4\" or \"wale 5\"".to_owned(),
            (true, _) if word.ends_with("twill") => {
                format!("write over and under, each from 1 to {LONGEST_FLOAT}: \"{word}{}\"", figures(word))
            }
            (true, _) => format!("write \"{word}\" and nothing behind it"),
            (false, Some(near)) => format!("did you mean `{near}{}`?", figures(near)),
            (false, None) => format!("write {}", one_of(&words)),
        };
        section.problem("weave", format!("`{}` cannot be `{}`", section.name("weave"), shorten(text)), help);
    }
    kind
}

pub(super) fn parse(text: &str) -> Option<WeaveKind> {
    let words: Vec<&str> = text.split_whitespace().collect();
    let kind = match *words.as_slice() {
        ["plain"] => WeaveKind::Plain,
        ["twill", rule] => WeaveKind::Twill(parse_rule(rule)?),
        ["reversed", "twill", rule] => WeaveKind::ReversedTwill(parse_rule(rule)?),
        ["chase"] => WeaveKind::Chase(Rule::PLAIN),
        ["chase", "twill", rule] => WeaveKind::Chase(parse_rule(rule)?),
        ["slew"] => WeaveKind::Slew(Rule::PLAIN),
        ["slew", "twill", rule] => WeaveKind::Slew(parse_rule(rule)?),
        ["pairing"] => WeaveKind::Pairing,
        ["wale", "3"] => WeaveKind::Wale(3),
        ["wale", "4"] => WeaveKind::Wale(4),
        ["wale", "5"] => WeaveKind::Wale(5),
        ["skip", "one"] => WeaveKind::SkipOne,
        ["drawn"] => WeaveKind::Drawn,
        _ => return None,
    };
    Some(kind)
}

fn parse_rule(text: &str) -> Option<Rule> {
    let (over, under) = text.split_once('/')?;
    let figure = |text: &str| text.parse().ok().filter(|figure| (1..=LONGEST_FLOAT).contains(figure));
    Some(Rule::new(figure(over)?, figure(under)?))
}

/// The materials, one or a list.
fn weavers(section: &Section) -> Option<Vec<Material>> {
    match (section.has("weaver"), section.has("weavers")) {
        (true, true) => {
            let message = "`weave.courses` has both weaver and weavers".to_owned();
            section.problem("weavers", message, "keep one of them: weavers names them one by one");
            None
        }
        (false, true) => {
            let list = section.list("weavers", MOST_SLEWED)?;
            if list.is_empty() {
                let message = format!("`{}` names no weaver", section.name("weavers"));
                section.problem("weavers", message, r#"write weavers = ["cane fine", "cane fine"]"#);
                return None;
            }
            let found: Vec<Material> =
                list.iter().filter_map(|value| section.stock_value("weavers", value, WEAVER_KINDS)).collect();
            (found.len() == list.len()).then_some(found)
        }
        (true, false) => section.stock("weaver", WEAVER_KINDS).map(|weaver| vec![weaver]),
        (false, false) => {
            section.missing("weaver", r#"weaver = "cane fine""#);
            None
        }
    }
}

/// Colours as written: none, one for all weavers, or the strands of each weaver.
enum Colours {
    None,
    One(Colour),
    Each(Vec<Vec<Colour>>),
}

fn colours(section: &Section, palette: &Palette) -> Option<Colours> {
    let Some(value) = section.value("colours") else { return Some(Colours::None) };
    let name = section.name("colours");
    if value.get_ref().is_str() {
        return palette.colour(section, &name, value).map(Colours::One);
    }
    let list = section.list("colours", MOST_SLEWED)?;
    let strands = |value: &Spanned<DeValue<'_>>| -> Option<Vec<Colour>> {
        let Some(strands) = value.get_ref().as_array() else {
            return Some(vec![palette.colour(section, &name, value)?]);
        };
        if strands.is_empty() || strands.len() > MOST_STRANDS {
            let message = format!("`{name}` has a weaver with {} colours", strands.len());
            section.context.problem(value.span(), message, "name the colours of its strands in order");
            return None;
        }
        let colours: Vec<Colour> =
            strands.iter().filter_map(|value| palette.colour(section, &name, value)).collect();
        (colours.len() == strands.len()).then_some(colours)
    };
    let each: Vec<Vec<Colour>> = list.iter().filter_map(strands).collect();
    (each.len() == list.len()).then_some(Colours::Each(each))
}

fn strands(section: &Section) -> Vec<Length> {
    let list = section.list("strands", MOST_STRANDS).unwrap_or_default();
    let name = section.name("strands");
    list.iter().filter_map(|value| section.context.length_value(&name, value, RUN)).collect()
}

/// The drawing of a drawn weave; one in a file is loaded by whoever read the pattern.
fn chart(section: &Section, kind: Option<WeaveKind>) -> Option<Drawn> {
    let (here, in_file) = (section.has("chart"), section.has("chart-file"));
    let drawn = kind == Some(WeaveKind::Drawn);
    match (drawn, here, in_file) {
        (true, false, false) => {
            section.missing(
                "chart",
                r#"chart = ["X.X.", ".X.X"], as seen from outside, the uppermost row first"#,
            );
        }
        (false, ..) if here || in_file => {
            let key = if here { "chart" } else { "chart-file" };
            let message = format!("`{}` belongs to a drawn weave", section.name(key));
            section.problem(key, message, r#"write weave = "drawn", or take it out"#);
        }
        _ => {}
    }
    let list = section.list("chart", MOST_CHART_ROWS)?;
    let name = section.name("chart");
    let lines: Vec<&str> =
        list.iter().filter_map(|value| Some(section.context.text(&name, value)?.text)).collect();
    if lines.len() < list.len() {
        return None;
    }
    let drawn = Drawn::read(lines);
    if let Err(fault) = &drawn {
        let line = match fault {
            DrawnFault::Ragged { line, .. } | DrawnFault::Sign { line, .. } => list.get(line - 1),
            _ => None,
        };
        let span = line.or(list.first()).map(Spanned::span);
        match span {
            Some(span) => section.context.problem(span, format!("`{name}`: {fault}"), fault.help()),
            None => section.problem("chart", format!("`{name}`: {fault}"), fault.help()),
        }
    }
    drawn.ok()
}

/// What depends on the weave.
struct Course<'s, 'd> {
    section: &'s Section<'s, 'd>,
    kind: Option<WeaveKind>,
}

impl Course<'_, '_> {
    /// A count that only some weaves know.
    fn only(
        &self,
        key: &str,
        fits: impl Fn(WeaveKind) -> bool,
        what: &str,
        range: std::ops::RangeInclusive<u32>,
    ) -> Option<u32> {
        self.belongs(key, fits, what);
        self.section.count(key, range)
    }

    fn belongs(&self, key: &str, fits: impl Fn(WeaveKind) -> bool, what: &str) {
        if self.section.has(key) && self.kind.is_some_and(|kind| !fits(kind)) {
            let message = format!("`{}` belongs to {what}", self.section.name(key));
            self.section.problem(key, message, "take it out, or choose another weave");
        }
    }

    fn way(&self) -> Option<Way> {
        let way = self.section.word("way", WAY)?;
        let fits = !matches!(
            (self.kind?, way),
            (WeaveKind::ReversedTwill(_), Way::Continuous)
                | (WeaveKind::Chase(_) | WeaveKind::SkipOne, Way::RowByRow)
        );
        if !fits {
            let word = if way == Way::Continuous { "continuous" } else { "row by row" };
            let message = format!("`{}` is not woven {word}", self.kind?);
            self.section.problem("way", message, "take it out: this weave can go only one way");
        }
        fits.then_some(way)
    }

    fn lean(&self) -> Option<Lean> {
        self.belongs("lean", WeaveKind::leans, "a twill");
        self.section.word("lean", LEAN)
    }

    /// Less than half the repeat, so that the diagonal leans as the course says.
    fn step(&self, level: bool) -> Option<u32> {
        self.belongs("step", WeaveKind::leans, "a twill");
        let (WeaveKind::Twill(rule) | WeaveKind::Slew(rule)) = self.kind? else { return None };
        if self.section.has("step") && !level {
            let message = format!("`{}` belongs to a twill woven row by row", self.section.name("step"));
            let help = "write way = \"row by row\", or take it out: how far a twill that runs on steps is decided by the count";
            self.section.problem("step", message, help);
        }
        let step = self.section.count("step", 1..=2 * LONGEST_FLOAT)?;
        let most = (rule.repeat() - 1) / 2;
        if step > most {
            let message = format!(
                "`{}` is {step}, half the repeat of {} or more",
                self.section.name("step"),
                rule.repeat()
            );
            let help = if most == 0 {
                "take it out: over one, under one has no diagonal".to_owned()
            } else {
                format!("write a step of at most {most}, and lean for the side to which it climbs")
            };
            self.section.problem("step", message, help);
        }
        Some(step)
    }

    fn step_up(&self) -> bool {
        self.belongs("step-up", WeaveKind::steps_up, "a weave whose rounds can begin level");
        let Some(value) = self.section.value("step-up") else { return false };
        let flag = value.get_ref().as_bool();
        if flag.is_none() {
            let message =
                format!("`{}` cannot be {}", self.section.name("step-up"), type_name(value.get_ref()));
            self.section.problem("step-up", message, "write true or false, without quotes");
        }
        flag.unwrap_or(false)
    }

    fn spacing(&self) -> (Option<f64>, Option<Length>) {
        let section = self.section;
        if section.has("packing") && section.has("spaced") {
            let message = "`weave.courses` has both packing and spaced".to_owned();
            section.problem("spaced", message, "keep one of them: each says how far apart rows lie");
        }
        (section.share("packing", 0.5..=6.0), section.length_within("spaced", PART))
    }

    /// Whether the weave takes so many weavers.
    fn check_weavers(&self, course: &CoursePattern) {
        let named = course.others.len() as u32 + 1;
        let fits = match course.weave {
            WeaveKind::Chase(_) => named <= 3,
            WeaveKind::Slew(_) => true,
            _ => named == 1 || named == course.weavers(),
        };
        if !fits {
            let takes = if matches!(course.weave, WeaveKind::Chase(_)) { 3 } else { course.weavers() };
            let message = format!("`{}` names {named} weavers", self.section.name("weavers"));
            let help = format!("`{}` takes {}", course.weave, weavers_in_words(takes));
            self.section.problem("weavers", message, help);
        }
    }

    /// The colours of each weaver.
    fn dealt(&self, course: &CoursePattern, colours: Colours) -> Vec<Vec<Colour>> {
        let each = match colours {
            Colours::None => return Vec::new(),
            Colours::One(colour) => return vec![vec![colour]; course.weavers() as usize],
            Colours::Each(each) => each,
        };
        let got = each.len() as u32;
        let fits = match course.weave {
            WeaveKind::Chase(_) | WeaveKind::Slew(_) if course.others.is_empty() => {
                let most = if matches!(course.weave, WeaveKind::Chase(_)) { 3 } else { MOST_SLEWED as u32 };
                (2..=most).contains(&got)
            }
            _ => got == course.weavers(),
        };
        if !fits {
            let section = self.section;
            let message = format!("`{}` names the colours of {got} weavers", section.name("colours"));
            let help = if course.weavers() == 1 {
                "this weave has one weaver: for strands of several colours in turn write \
                 colours = [[\"natural\", \"blue\"]]"
                    .to_owned()
            } else {
                format!("name one for each of the {}", weavers_in_words(course.weavers()))
            };
            section.problem("colours", message, help);
        }
        each
    }
}

fn weavers_in_words(count: u32) -> String {
    if count == 1 { "1 weaver".to_owned() } else { format!("{count} weavers") }
}
