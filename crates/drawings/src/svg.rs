//! Writing a drawing as SVG.

use std::fmt::{self, Display, Write};

use kurbo::{PathEl, Point};

use crate::drawing::{Anchor, Drawing, Item, Label, Line, Tone};

/// Type that the sheets embed, and what stands in for it elsewhere.
const TYPE: &str = "Libertinus Serif, Georgia, serif";
/// Where the middle of a figure lies above the line that it stands on, as a share of its height.
const HALF_FIGURE: f64 = 0.32;

impl Drawing {
    /// A file of its own: SVG at true size, with a title and a description for screen readers.
    pub fn to_svg(&self) -> String {
        self.to_svg_at(1.0)
    }

    /// The same, shown so many times as large; lines and type grow with it.
    pub fn to_svg_at(&self, scale: f64) -> String {
        let mut svg = String::new();
        // Writing to a string cannot fail.
        let _ = self.write(&mut svg, scale);
        svg
    }

    fn write(&self, svg: &mut String, scale: f64) -> fmt::Result {
        let frame = self.frame();
        let (name, width, height) = (Text(&self.name), Number(frame.width()), Number(frame.height()));
        let (x, y) = (Number(frame.x0), Number(frame.y0));
        writeln!(
            svg,
            "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" \
             aria-labelledby=\"{name}-title {name}-desc\" width=\"{}mm\" height=\"{}mm\" \
             viewBox=\"{x} {y} {width} {height}\" font-family=\"{TYPE}\" stroke-linejoin=\"round\"{}>",
            Number(frame.width() * scale),
            Number(frame.height() * scale),
            self.upright_scale().map_or(String::new(), |scale| format!(" data-upright=\"{scale}\"")),
        )?;
        writeln!(svg, "<title id=\"{name}-title\">{}</title>", Text(&self.title))?;
        writeln!(svg, "<desc id=\"{name}-desc\">{}</desc>", Text(&self.description))?;
        writeln!(
            svg,
            "<clipPath id=\"{name}-frame\"><rect x=\"{x}\" y=\"{y}\" width=\"{width}\" height=\"{height}\"/></clipPath>"
        )?;
        writeln!(svg, "<g clip-path=\"url(#{name}-frame)\">")?;
        for item in self.items() {
            match item {
                Item::Path { path, line, tone } => write_path(svg, path.elements(), *line, *tone)?,
                Item::Label(label) => write_label(svg, label)?,
            }
        }
        svg.push_str("</g>\n</svg>\n");
        Ok(())
    }
}

fn write_path(svg: &mut String, path: &[PathEl], line: Option<Line>, tone: Option<Tone>) -> fmt::Result {
    match tone.map(Tone::rgb) {
        None => svg.push_str("<path fill=\"none\""),
        Some([red, green, blue]) => write!(svg, "<path fill=\"#{red:02x}{green:02x}{blue:02x}\"")?,
    }
    if let Some(line) = line {
        write!(svg, " stroke=\"#000\" stroke-width=\"{}\"", Number(line.weight()))?;
        if !line.dashes().is_empty() {
            write!(svg, " stroke-dasharray=\"{}\"", line.dashes())?;
        }
    }
    svg.push_str(" d=\"");
    for element in path {
        match *element {
            PathEl::MoveTo(to) => write!(svg, "M{}", Pair(to))?,
            PathEl::LineTo(to) => write!(svg, "L{}", Pair(to))?,
            PathEl::QuadTo(by, to) => write!(svg, "Q{} {}", Pair(by), Pair(to))?,
            PathEl::CurveTo(by, and, to) => write!(svg, "C{} {} {}", Pair(by), Pair(and), Pair(to))?,
            PathEl::ClosePath => svg.push('Z'),
        }
    }
    svg.push_str("\"/>\n");
    Ok(())
}

fn write_label(svg: &mut String, label: &Label) -> fmt::Result {
    let (x, y) = (label.at.x, label.at.y + label.size * HALF_FIGURE);
    write!(svg, "<text x=\"{}\" y=\"{}\" font-size=\"{}\"", Number(x), Number(y), Number(label.size))?;
    match label.anchor {
        Anchor::Start => {}
        Anchor::Middle => svg.push_str(" text-anchor=\"middle\""),
        Anchor::End => svg.push_str(" text-anchor=\"end\""),
    }
    if label.bold {
        svg.push_str(" font-weight=\"bold\"");
    }
    if label.turn != 0.0 {
        write!(svg, " transform=\"rotate({} {})\"", Number(label.turn), Pair(label.at))?;
    }
    writeln!(svg, ">{}</text>", Text(&label.text))
}

/// A number to a hundredth of a millimetre, finer than any printer.
struct Number(f64);

impl Display for Number {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let hundredths = (self.0 * 100.0).round() as i64;
        if hundredths < 0 {
            f.write_char('-')?;
        }
        let (whole, rest) = (hundredths.unsigned_abs() / 100, hundredths.unsigned_abs() % 100);
        match (rest / 10, rest % 10) {
            (0, 0) => write!(f, "{whole}"),
            (tenths, 0) => write!(f, "{whole}.{tenths}"),
            (tenths, last) => write!(f, "{whole}.{tenths}{last}"),
        }
    }
}

/// The two coordinates of a point.
struct Pair(Point);

impl Display for Pair {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} {}", Number(self.0.x), Number(self.0.y))
    }
}

/// Text that cannot be taken for markup; control characters, which XML does not allow, are left out.
struct Text<'a>(&'a str);

impl Display for Text<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for character in self.0.chars() {
            match character {
                '&' => f.write_str("&amp;")?,
                '<' => f.write_str("&lt;")?,
                '>' => f.write_str("&gt;")?,
                '"' => f.write_str("&quot;")?,
                _ if character.is_control() || matches!(character, '\u{fffe}' | '\u{ffff}') => {}
                _ => f.write_char(character)?,
            }
        }
        Ok(())
    }
}
