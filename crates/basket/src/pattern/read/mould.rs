//! Reading `[mould]` and `[base]`.

use toml::Spanned;
use toml::de::DeValue;

use super::section::{Context, PART, PLACE, Section, type_name};
use super::text::nearest;
use super::{keys, words};
use crate::pattern::{BasePattern, Form, Girth, MouldPattern, Side};

const MOST_GIRTHS: usize = 500;
const GIRTHS_EXAMPLE: &str = r#"girths = [ ["0", "15 1/2"], ["4", "24"] ], or base, rim, height and side"#;

pub(super) fn mould(file: &Section) -> Option<MouldPattern> {
    if !file.has("mould") {
        file.missing("mould", r#"[mould] and below it girths = [ ["0", "15 1/2"], ["4", "24"] ]"#);
    }
    let section = file.section("mould", "mould", keys::MOULD)?;
    let outline = section.word("shape", words::SHAPE);
    let form = match (section.has("girths"), drawn_key(&section)) {
        (true, None) => girths(&section),
        (true, Some(key)) => {
            let message =
                format!("`mould.{key}` contradicts `mould.girths`: a mould is measured or drawn, not both");
            section.problem(key, message, "keep the girths, or base, rim, height and side");
            None
        }
        (false, Some(_)) => drawn(&section),
        (false, None) => {
            section.missing("girths", GIRTHS_EXAMPLE);
            None
        }
    };
    Some(MouldPattern { outline: outline.unwrap_or_default(), form: form? })
}

fn drawn_key(section: &Section) -> Option<&'static str> {
    ["base", "rim", "height", "side"].into_iter().find(|key| section.has(key))
}

fn girths(section: &Section) -> Option<Form> {
    let list = section.list("girths", MOST_GIRTHS)?;
    if list.len() < 2 {
        let message = "`mould.girths` needs at least two measurements".to_owned();
        section.problem(
            "girths",
            message,
            "measure at the base and at the rim, and between them where the side bends",
        );
        return None;
    }
    let read: Vec<Option<Girth>> = list.iter().map(|entry| girth(section.context, entry)).collect();
    let girths: Vec<Girth> = read.into_iter().collect::<Option<_>>()?;
    in_rising_order(section, list, &girths).then_some(Form::Girths(girths))
}

fn girth(context: Context, entry: &Spanned<DeValue<'_>>) -> Option<Girth> {
    let Some([height, girth]) = entry.get_ref().as_array().map(AsRef::as_ref) else {
        let message = format!("each of `mould.girths` must be a height and a girth, not {}", shape_of(entry));
        context.problem(entry.span(), message, r#"write ["1", "19 3/4"]"#);
        return None;
    };
    let height = context.length_value("mould.girths height", height, PLACE);
    let girth = context.length_value("mould.girths girth", girth, PART);
    Some(Girth { height: height?, girth: girth? })
}

fn shape_of(entry: &Spanned<DeValue<'_>>) -> String {
    match entry.get_ref() {
        DeValue::Array(list) => format!("a list of {}", list.len()),
        other => type_name(other).to_owned(),
    }
}

fn in_rising_order(section: &Section, list: &[Spanned<DeValue<'_>>], girths: &[Girth]) -> bool {
    let mut fine = true;
    if girths.first().is_some_and(|first| first.height.to_mm() > 0.0) {
        let message = "the first of `mould.girths` must be at height 0, the base of the mould".to_owned();
        section.problem("girths", message, "measure the girth at the base too");
        fine = false;
    }
    for (pair, entry) in girths.windows(2).zip(list.iter().skip(1)) {
        let [below, above] = pair else { continue };
        if above.height <= below.height {
            let what = if above.height == below.height { "twice the same height" } else { "out of order" };
            let message = format!("`mould.girths`: {what}");
            section.context.problem(entry.span(), message, "write each height once, from the base upward");
            fine = false;
        }
    }
    fine
}

fn drawn(section: &Section) -> Option<Form> {
    for (key, example) in
        [("base", r#"base = "5 in""#), ("rim", r#"rim = "8 in""#), ("height", r#"height = "4 in""#)]
    {
        if !section.has(key) {
            section.missing(key, example);
        }
    }
    let base = section.length("base");
    let rim = section.length("rim");
    let height = section.length("height");
    let side = section.word("side", words::SIDE);
    if side.is_none() && section.has("side") {
        return None;
    }
    let (base, rim, height, side) = (base?, rim?, height?, side.unwrap_or(Side::Cone));
    if side == Side::Straight && base != rim {
        let message = "`mould.side` is straight, but base and rim differ".to_owned();
        section.problem("side", message, r#"write side = "cone", or give base and rim one diameter"#);
        return None;
    }
    if side == Side::Bowl && base >= rim {
        let message = "`mould.side` is a bowl, but the base is not smaller than the rim".to_owned();
        section.problem("side", message, r#"write side = "cone", or a smaller base"#);
        return None;
    }
    Some(Form::Drawn { base, rim, height, side })
}

pub(super) fn base(file: &Section) -> BasePattern {
    let Some(section) = file.section("base", "base", keys::BASE) else {
        return BasePattern::default();
    };
    let groove = section.section("groove", "base.groove", keys::GROOVE);
    let base = BasePattern {
        diameter: section.length("diameter"),
        thickness: section.length("thickness"),
        groove_depth: groove.as_ref().and_then(|groove| groove.length("depth")),
        groove_width: groove.as_ref().and_then(|groove| groove.length("width")),
        wood: wood(&section),
        screw_hole: section.length("screw"),
    };
    if let Some(groove) = &groove {
        check_groove(groove, &base);
    }
    if let (Some(screw), Some(diameter)) = (base.screw_hole, base.diameter)
        && screw >= diameter
    {
        let message = "`base.screw` is as wide as the base".to_owned();
        section.problem("screw", message, "write the diameter of the hole, such as \"3/16 in\"");
    }
    base
}

fn check_groove(groove: &Section, base: &BasePattern) {
    if let (Some(depth), Some(diameter)) = (base.groove_depth, base.diameter)
        && depth >= diameter / 2.0
    {
        let message = "`base.groove.depth` reaches the middle of the base".to_owned();
        groove.problem("depth", message, "write a depth smaller than half of base.diameter");
    }
    if let (Some(width), Some(thickness)) = (base.groove_width, base.thickness)
        && width >= thickness
    {
        let message = "`base.groove.width` is as wide as the base is thick".to_owned();
        groove.problem("width", message, "write a width smaller than base.thickness");
    }
}

fn wood(section: &Section) -> Option<crate::stock::Wood> {
    let text = section.text("wood")?;
    let catalogue = section.context.catalogue;
    let found = catalogue.wood(text.text).cloned();
    if found.is_none() {
        let names: Vec<&str> = catalogue.woods.iter().map(|wood| wood.name.as_str()).collect();
        let help = match nearest(text.text, names.iter().copied()) {
            Some(near) => format!("did you mean `{near}`?"),
            None => format!("known: {}", names.join(", ")),
        };
        section.problem("wood", format!("`{}` is not a known wood", super::text::shorten(text.text)), help);
    }
    found
}
