//! What kind of plan a file of the folder is.

use serde_json::Value;

use super::api::PlanKind;

/// What kind of plan a text is; none if it is something else, such as a pattern.
pub(crate) fn kind_of(source: &str) -> Option<PlanKind> {
    // Whole files are read only where this stands in them.
    if !source.contains("students") {
        return None;
    }
    let values: Value = toml::from_str(source).ok()?;
    values.get("students")?.as_array()?;
    Some(if values.get("days").is_some() || values.get("zone").is_some() {
        PlanKind::Class
    } else {
        PlanKind::Kits
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn plans_are_told_from_patterns_and_from_each_other() {
        let class = include_str!("../../../../classes/harbour-weekend.toml");
        let kits = "title = \"Autumn\"\n[[students]]\npattern = \"harbour.toml\"\ncount = 4\n";
        let pattern = include_str!("../../../../patterns/harbour-bread-basket.toml");
        assert_eq!(
            [class, kits, pattern, "students = ["].map(kind_of),
            [Some(PlanKind::Class), Some(PlanKind::Kits), None, None]
        );
    }
}
