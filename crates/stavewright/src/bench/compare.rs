//! Two versions side by side: what differs in figures, values, cuts and findings.

use std::collections::BTreeMap;

use basket::pattern::keys;

use super::api::{CompareRequest, Comparison, Cut, Finding, Pair, Shown};
use super::compute::{Shop, draft, words};
use super::look::{self, label_of};
use super::refusal::Refusal;

/// In what two patterns differ.
pub(crate) fn compare(request: &CompareRequest, shop: Shop<'_>) -> Result<Comparison, Refusal> {
    let left = draft(&request.left, shop).map_err(Refusal::misread)?;
    let right = draft(&request.right, shop).map_err(Refusal::misread)?;
    let words = words(request.language.as_deref(), request.units, left.pattern.units)?;
    let left = look::shown((&request.left, &left), &words, shop);
    let right = look::shown((&request.right, &right), &words, shop);
    let (left_findings, _) = part(&left.findings, &right.findings);
    let (right_findings, both_findings) = part(&right.findings, &left.findings);
    let labelled = |path: &str| label_of(path, &words);
    Ok(Comparison {
        figures: pairs(figures(&left), figures(&right)),
        fields: differing(pairs(fields(&left, labelled), fields(&right, labelled))),
        cuts: differing(pairs(cuts(&left), cuts(&right))),
        left_findings,
        right_findings,
        both_findings,
    })
}

/// An entry of one side: id, name and value.
type Entry = (String, String, String);

fn figures(shown: &Shown) -> Vec<Entry> {
    let figures = shown.figures.iter();
    figures.map(|figure| (figure.id.clone(), figure.label.clone(), figure.value.clone())).collect()
}

fn fields(shown: &Shown, label: impl Fn(&str) -> String) -> Vec<Entry> {
    let courses = shown.courses.each.iter().flat_map(|course| &course.fields);
    let fields = shown.groups.iter().flat_map(|group| &group.fields).chain(courses);
    let mut entries: Vec<Entry> = fields
        .filter_map(|field| Some((field.path.clone(), label(&field.path), field.used.as_ref()?.text.clone())))
        .collect();
    for (girth, number) in shown.mould.girths.iter().zip(1..) {
        let value = format!("{}: {}", girth.height.text, girth.girth.text);
        entries.push((girth.path.clone(), format!("{} {number}", label(keys::mould::GIRTHS.path)), value));
    }
    entries
}

/// Lines of the cut list. Of several alike in piece and material, each next one is numbered.
fn cuts(shown: &Shown) -> Vec<Entry> {
    let mut seen: BTreeMap<(&str, &str), u32> = BTreeMap::new();
    let line = |cut: &Cut, number: u32| {
        let label = format!("{}, {}", cut.piece, cut.material);
        let pieces =
            if cut.spares == 0 { cut.count.to_string() } else { format!("{} + {}", cut.count, cut.spares) };
        let sizes = [&cut.length, &cut.width].into_iter().flatten().map(String::as_str);
        let value = std::iter::once(pieces.as_str()).chain(sizes).collect::<Vec<_>>().join(" × ");
        (format!("{} {} {number}", cut.id, cut.material), label, value)
    };
    shown
        .cuts
        .iter()
        .map(|cut| {
            let number = seen.entry((&cut.id, &cut.material)).or_default();
            *number += 1;
            line(cut, *number)
        })
        .collect()
}

/// Entries of both sides by their ids, in the left's order and then what only the right has.
fn pairs(left: Vec<Entry>, right: Vec<Entry>) -> Vec<Pair> {
    let mut others: Vec<Option<Entry>> = right.into_iter().map(Some).collect();
    let mut pairs: Vec<Pair> = left
        .into_iter()
        .map(|(id, label, value)| {
            let other = others.iter_mut().find(|other| other.as_ref().is_some_and(|other| other.0 == id));
            let right = other.and_then(Option::take).map(|(_, _, value)| value);
            Pair { same: right.as_ref() == Some(&value), id, label, left: Some(value), right }
        })
        .collect();
    let rest = others.into_iter().flatten();
    pairs.extend(rest.map(|(id, label, value)| Pair {
        id,
        label,
        left: None,
        right: Some(value),
        same: false,
    }));
    pairs
}

fn differing(pairs: Vec<Pair>) -> Vec<Pair> {
    pairs.into_iter().filter(|pair| !pair.same).collect()
}

/// The findings that the other side has not, and those that it has.
fn part(own: &[Finding], other: &[Finding]) -> (Vec<Finding>, Vec<Finding>) {
    let known = |finding: &Finding| {
        other.iter().any(|other| other.code == finding.code && other.place.label == finding.place.label)
    };
    let (both, alone) = own.iter().cloned().partition(known);
    (alone, both)
}
