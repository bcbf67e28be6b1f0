/** A table that becomes a list of cards where there is little room. */

import { el, type Child } from "../dom/element.ts";

export interface Column {
  readonly head: string;
  /** Holds figures, which stand at the right. */
  readonly figures?: boolean;
}

/** Roles are named since browsers forget them when rows are laid out as cards. */
export function table(caption: string, columns: readonly Column[], rows: readonly (readonly Child[])[]): HTMLTableElement {
  const head = columns.map(({ head: text, figures }) => el("th", { role: "columnheader", scope: "col", class: figures ? "figure" : null }, text));
  const row = (cells: readonly Child[]): HTMLElement =>
    el(
      "tr",
      { role: "row" },
      ...cells.map((cell, at) => {
        const { head: label = "", figures = false } = columns[at] ?? {};
        const blank = cell === null || cell === undefined || cell === false || cell === "";
        const kind = [figures && "figure", blank && "blank"].filter(Boolean).join(" ") || null;
        return el(at === 0 ? "th" : "td", { role: at === 0 ? "rowheader" : "cell", scope: at === 0 ? "row" : null, class: kind, "data-head": at === 0 ? null : label }, cell);
      }),
    );
  return el(
    "table",
    { role: "table", class: "listed" },
    el("caption", { class: "unseen" }, caption),
    el("thead", { role: "rowgroup" }, el("tr", { role: "row" }, ...head)),
    el("tbody", { role: "rowgroup" }, ...rows.map(row)),
  );
}
