//! Text of labels.

use kurbo::Point;

use crate::drawing::Label;

/// Heights for labels that want to stand at `wanted` (rising order) but need `room` each: each
/// keeps its height or moves down just as far as it must.
pub(crate) fn spread(wanted: &[f64], room: f64) -> Vec<f64> {
    let mut last = f64::NEG_INFINITY;
    wanted
        .iter()
        .map(|&height| {
            last = height.max(last + room);
            last
        })
        .collect()
}

/// A text in lines no wider than so many mm in type of this height, even in the widest that may stand in.
pub(crate) fn wrapped(text: &str, width: f64, size: f64) -> Vec<String> {
    let mut lines = vec![String::new()];
    for word in text.split_whitespace() {
        let longer = lines.last().map_or_else(String::new, |line| format!("{line} {word}").trim().to_owned());
        let fits = Label::new(longer.as_str(), Point::ZERO).sized(size).reach().width() <= width;
        match lines.last_mut() {
            Some(line) if fits => *line = longer,
            _ => lines.push(word.to_owned()),
        }
    }
    lines
}

#[cfg(test)]
mod tests {
    use super::spread;

    #[test]
    fn labels_keep_their_distance() {
        assert_eq!(spread(&[0.0, 1.0, 10.0], 4.0), [0.0, 4.0, 10.0]);
    }
}
