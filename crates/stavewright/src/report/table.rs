//! Tables: a head, a rule under it, and rows whose words wrap within their column.

use comfy_table::{
    CellAlignment, ColumnConstraint, ContentArrangement, ContentLineStyle, LineStyle, Table, TableStyle,
};

use crate::screen;

const LOOK: TableStyle = TableStyle::new()
    .header_lines(ContentLineStyle::none().junction(' '))
    .header_separator(LineStyle::none().fill('─').junction(' '))
    .content_lines(ContentLineStyle::none().junction(' '));

/// How a column is set.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Set {
    /// Words: may wrap.
    Words,
    /// Figures: at the right, never broken.
    Figures,
}

/// A table that fits the screen.
pub(crate) fn table(columns: &[(&str, Set)], rows: impl IntoIterator<Item = Vec<String>>) -> String {
    let mut table = Table::new();
    table
        .load_style(LOOK)
        .set_content_arrangement(ContentArrangement::Dynamic)
        .set_width(u16::try_from(screen::WIDTH).unwrap_or(u16::MAX))
        .set_header(columns.iter().map(|(head, _)| *head))
        .add_rows(rows);
    for (column, (_, set)) in table.column_iter_mut().zip(columns) {
        column.set_padding((0, 0));
        if *set == Set::Figures {
            column.set_cell_alignment(CellAlignment::Right);
            column.set_constraint(ColumnConstraint::ContentWidth);
        }
    }
    table.trim_fmt() + "\n"
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_wrap_and_figures_do_not() {
        let columns = [("What", Set::Words), ("How long", Set::Figures)];
        let drawn = table(&columns, [vec!["long words ".repeat(12), "161 ft (49.1 m)".to_owned()]]);
        assert!(drawn.lines().all(|line| line.chars().count() <= screen::WIDTH), "{drawn}");
        assert!(drawn.contains("161 ft (49.1 m)"), "{drawn}");
        assert!(drawn.lines().count() > 3, "{drawn}");
    }
}
