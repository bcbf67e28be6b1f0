//! Reading lengths, numbers, texts and words.

use toml::Spanned;
use toml::de::DeValue;

use super::problem::Fault;
use super::raw::{type_name, type_term, whole_number};
use super::section::{Read, Section, list};
use super::text::{is_inside, is_picture, paragraphs_fault, shorten, title_fault};
use crate::measure::Length;
use crate::message::Value;
use crate::pattern::Word;
use crate::pattern::keys::{Declared, Key, Minutes, Texts};

impl Read for Length {
    fn read(section: &Section, key: &Key<Self>, value: &Spanned<DeValue<'_>>) -> Option<Self> {
        section.context.length_value(key.path, value, key.takes)
    }
}

/// A list of lengths; none when one is wrong.
impl Read for Vec<Length> {
    fn read(section: &Section, key: &Key<Self>, value: &Spanned<DeValue<'_>>) -> Option<Self> {
        let list = list(section.context, key, value, key.takes.most)?;
        let length = |value| section.context.length_value(key.path, value, key.takes.each);
        let lengths: Self = list.iter().filter_map(length).collect();
        (lengths.len() == list.len()).then_some(lengths)
    }
}

/// A count.
impl Read for u32 {
    fn read(section: &Section, key: &Key<Self>, value: &Spanned<DeValue<'_>>) -> Option<Self> {
        let (least, most) = (key.takes.least, key.takes.most);
        let count = whole_number(value.get_ref()).and_then(|number| Self::try_from(number).ok());
        let count = count.filter(|count| (least..=most).contains(count));
        if count.is_none() {
            let (what, found) = match value.get_ref() {
                DeValue::Integer(number) => (shorten(number.as_str()), shorten(number.as_str()).into()),
                DeValue::String(text) => (type_name(value.get_ref()).to_owned(), shorten(text).into()),
                other => (type_name(other).to_owned(), type_term(other)),
            };
            let help = format!("write a whole number from {least} to {most}, without quotes");
            let fault = Fault::new("problem-count", format!("`{}` cannot be {what}", key.path));
            let fault = fault.with("found", found).with("least", least).with("most", most);
            section.problem(key, fault, help);
        }
        count
    }
}

/// A share, written in percent (`"4 %"`) or as a plain number (`0.04`).
impl Read for f64 {
    fn read(section: &Section, key: &Key<Self>, value: &Spanned<DeValue<'_>>) -> Option<Self> {
        let (least, most) = (key.takes.least, key.takes.most);
        let share = match value.get_ref() {
            DeValue::String(text) => percent(text),
            DeValue::Float(number) => number.as_str().parse().ok(),
            other => whole_number(other).map(|number| number as f64),
        };
        let share = share.filter(|share| (least..=most).contains(share));
        if share.is_none() {
            let help =
                format!("write a percentage from \"{:.0} %\" to \"{:.0} %\"", least * 100.0, most * 100.0);
            let message = format!("`{}` is not a share that makes sense here", key.path);
            let limits = [least, most].map(Value::Percent);
            let [least, most] = limits;
            section.problem(
                key,
                Fault::new("problem-share", message).with("least", least).with("most", most),
                help,
            );
        }
        share
    }
}

fn percent(text: &str) -> Option<f64> {
    let number = text.trim().strip_suffix('%')?.trim_end().replace(',', ".");
    let plain = !number.is_empty() && number.chars().all(|sign| sign.is_ascii_digit() || sign == '.');
    number.parse::<f64>().ok().filter(|_| plain).map(|percent| percent / 100.0)
}

/// Minutes: `15`, or shortest and longest as `[10, 15]`.
impl Read for Minutes {
    fn read(section: &Section, key: &Key<Self>, value: &Spanned<DeValue<'_>>) -> Option<Self> {
        let minutes = match value.get_ref() {
            DeValue::Array(list) => match list.as_ref() {
                [least, most] => whole_number(least.get_ref()).zip(whole_number(most.get_ref())),
                _ => None,
            },
            single => whole_number(single).map(|minutes| (minutes, minutes)),
        };
        let longest = i64::from(key.takes);
        let minutes = minutes.filter(|(least, most)| 0 <= *least && least <= most && *most <= longest);
        if minutes.is_none() {
            let name = key.name();
            let help = format!("write {name} = 15, or the shortest and longest as {name} = {}", key.example);
            let fault = Fault::new("problem-minutes", format!("`{}` must be minutes", key.path));
            section.problem(key, fault.with("most", key.takes), help);
        }
        minutes.map(|(least, most)| (least as f64, most as f64))
    }
}

impl Read for bool {
    fn read(section: &Section, key: &Key<Self>, value: &Spanned<DeValue<'_>>) -> Option<Self> {
        let flag = value.get_ref().as_bool();
        if flag.is_none() {
            let message = format!("`{}` cannot be {}", key.path, type_name(value.get_ref()));
            let fault = Fault::new("problem-flag", message).with("found", type_term(value.get_ref()));
            section.problem(key, fault, "write true or false, without quotes");
        }
        flag
    }
}

impl<W: Word + Sync> Read for W {
    fn read(section: &Section, key: &Key<Self>, value: &Spanned<DeValue<'_>>) -> Option<Self> {
        word(section, key.path, value)
    }
}

/// A list of words, or one word for a list of one; none when a word is wrong.
impl<W: Word + Sync> Read for Vec<W> {
    fn read(section: &Section, key: &Key<Self>, value: &Spanned<DeValue<'_>>) -> Option<Self> {
        if value.get_ref().is_str() {
            return Some(vec![word(section, key.path, value)?]);
        }
        let list = list(section.context, key, value, W::ALL.len())?;
        let words: Self = list.iter().filter_map(|value| word(section, key.path, value)).collect();
        (words.len() == list.len()).then_some(words)
    }
}

fn word<W: Word>(section: &Section, path: &str, value: &Spanned<DeValue<'_>>) -> Option<W> {
    let text = section.context.text(path, value)?;
    let found = W::ALL.iter().copied().find(|one| one.word() == text.text);
    if found.is_none() {
        let known: Vec<&str> = W::ALL.iter().map(|one| one.word()).collect();
        section.context.unknown_word(path, &text, &known);
    }
    found
}

impl Read for String {
    fn read(section: &Section, key: &Key<Self>, value: &Spanned<DeValue<'_>>) -> Option<Self> {
        let text = section.context.text(key.path, value)?;
        match key.takes {
            Texts::Line => line(section, key, text.text),
            Texts::Paragraphs(longest) => paragraphs(section, key, text.text, longest),
            Texts::Photo => photo(section, key, text.text),
        }
    }
}

/// A title or a name: not empty, on one line, not endless.
fn line(section: &Section, key: &Key<String>, text: &str) -> Option<String> {
    let title = text.trim();
    let Some(fault) = title_fault(title) else {
        return Some(title.to_owned());
    };
    section.problem(key, fault.of(&format!("`{}`", key.path)), "write one line of at most 120 characters");
    None
}

fn paragraphs(section: &Section, key: &Key<String>, text: &str, longest: usize) -> Option<String> {
    let text = text.trim();
    let Some(fault) = paragraphs_fault(text, longest) else {
        return Some(text.to_owned());
    };
    let help = format!("write at most {longest} characters; leave a line empty between paragraphs");
    section.problem(key, fault.of(&format!("`{}`", key.path)), help);
    None
}

fn photo(section: &Section, key: &Key<String>, path: &str) -> Option<String> {
    if !is_inside(path) {
        let help = format!("write a path from the pattern's own folder downward, such as {}", key.example);
        let fault = Fault::new("problem-path", format!("`{}` cannot be `{}`", key.path, shorten(path)));
        section.problem(key, fault.with("written", shorten(path)), help);
        return None;
    }
    if !is_picture(path) {
        let message = format!("`{}` is not named as a photo", shorten(path));
        let fault = Fault::new("problem-no-photo", message).with("written", shorten(path));
        section.problem(key, fault, "save it as .jpg, .jpeg or .png");
        return None;
    }
    Some(path.to_owned())
}
