/** A leaf of a plan on the screen: the same sections that are printed. */

import type { LeafSection, LeafStrip, LeafTable, PlanLeaf } from "../api/types.ts";
import { el, type Child } from "../dom/element.ts";
import { table } from "./table.ts";

/** Pieces that are a smaller share of the longest strand have no room for their length. */
const LABELLED = 0.08;

/** `folded`: sections with a table open when their heading is pressed. */
export function leafOf(leaf: PlanLeaf, folded = false): HTMLElement {
  const shown = (own: LeafSection): HTMLElement => (folded && own.table ? fold(own) : el("section", { class: "stack" }, el("h3", {}, own.heading), ...inside(own)));
  return el("section", { class: "leaf", id: `leaf-${leaf.id}`, "aria-label": leaf.name }, el("h2", {}, leaf.name), ...leaf.sections.map(shown));
}

function fold(own: LeafSection): HTMLElement {
  return el("details", { class: "rest" }, el("summary", {}, el("h3", {}, own.heading)), ...inside(own));
}

function inside({ heading, notes, table: shown, strips, after }: LeafSection): Child[] {
  const longest = Math.max(1, ...strips.map(({ length_mm }) => length_mm));
  return [
    ...notes.map((note) => el("p", {}, note)),
    shown && tableOf(heading, shown),
    strips.length > 0 && el("div", { class: "strips", "aria-hidden": "true" }, ...strips.map((strip) => stripOf(strip, longest))),
    ...after.map((note) => el("p", {}, note)),
  ];
}

function tableOf(caption: string, { head, figures, rows }: LeafTable): HTMLElement {
  return table(caption, head.map((text, place) => ({ head: text, figures: figures[place] ?? false })), rows);
}

/** A strand with its pieces, at one scale with the others; the table above says the same in figures. */
function stripOf({ name, length_mm, pieces }: LeafStrip, longest: number): HTMLElement {
  const strand = el(
    "div",
    { class: "strand" },
    ...pieces.map(({ length_mm: length, label }) => {
      const piece = el("span", { class: "strand-piece" }, length / longest > LABELLED && el("span", {}, label));
      piece.style.width = `${(100 * length) / length_mm}%`;
      return piece;
    }),
  );
  strand.style.width = `${(100 * length_mm) / longest}%`;
  return el("div", { class: "stack tight" }, el("span", { class: "fact" }, name), strand);
}
