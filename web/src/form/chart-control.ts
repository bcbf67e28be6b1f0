/** A weave drawn on the page: crossings are clicked or dragged over, and what does not hold is said at once. */

import type { Field } from "../api/types.ts";
import { attribute, el, fill, say } from "../dom/element.ts";
import { icon } from "../dom/icons.ts";
import { t } from "../words/texts.ts";
import type { Control } from "./control.ts";
import { newGesture, set, type FormContext } from "./context.ts";
import { read, sized, turns, write, type Cells } from "./drawn.ts";

/** More crossings are not drawn by hand. */
const MOST = 48;
const TURNS = ["mirror", "flip", "swap", "shift", "repeat"] as const;

export function chartControl(first: Field, context: FormContext): Control {
  let field = first;
  let cells: Cells = [[true]];
  let at: readonly [number, number] = [0, 0];
  /** Whether the hand draws over or under, while it draws. */
  let drawing: { readonly over: boolean; readonly gesture: string } | undefined;
  const grid = el("div", { class: "draw-grid", role: "grid", "aria-label": t("bench-draw-grid") });
  const verdict = el("ul", { class: "draw-verdict", "aria-live": "polite" });
  const told = el("p", { class: "unseen", role: "status" });

  const commit = (next: Cells, gesture?: string): void => {
    cells = next;
    paint();
    const change = { edits: [set(field.path, write(next))], label: t("bench-did-drag", { what: field.label }) };
    context.edit(gesture === undefined ? change : { ...change, gesture });
  };
  const put = (row: number, column: number, over: boolean, gesture?: string): void => {
    if (cells[row]?.[column] === undefined || cells[row]?.[column] === over) return;
    commit(cells.map((line, index) => (index === row ? line.map((old, place) => (place === column ? over : old)) : line)), gesture);
  };
  const cellOf = (target: EventTarget | null): readonly [number, number] | undefined => {
    const cell = target instanceof Element ? target.closest<HTMLElement>("[data-cell]") : null;
    const [row, column] = cell?.dataset["cell"]?.split(",").map(Number) ?? [];
    return row === undefined || column === undefined ? undefined : [row, column];
  };
  const paint = (): void => {
    const [rows, columns] = [cells.length, cells[0]?.length ?? 0];
    at = [Math.min(at[0], rows - 1), Math.min(at[1], columns - 1)];
    if (grid.children.length !== rows || grid.firstElementChild?.children.length !== columns) {
      const line = (_: unknown, row: number): HTMLElement =>
        el("div", { role: "row" }, ...Array.from({ length: columns }, (__, column) => el("div", { role: "gridcell", class: "draw-cell", "data-cell": `${row},${column}` })));
      fill(grid, ...Array.from({ length: rows }, line));
    }
    for (const cell of grid.querySelectorAll<HTMLElement>("[data-cell]")) {
      const [row, column] = cellOf(cell) ?? [0, 0];
      const over = cells[row]?.[column] ?? false;
      attribute(cell, "aria-label", t(over ? "bench-draw-over" : "bench-draw-under", { row: rows - row, stave: column + 1 }));
      cell.classList.toggle("over", over);
      attribute(cell, "tabindex", row === at[0] && column === at[1] ? 0 : -1);
    }
  };
  const go = (row: number, column: number): void => {
    at = [(row + cells.length) % cells.length, (column + (cells[0]?.length ?? 1)) % (cells[0]?.length ?? 1)];
    paint();
    grid.querySelector<HTMLElement>(`[data-cell="${at[0]},${at[1]}"]`)?.focus();
  };
  grid.addEventListener("pointerdown", (event) => {
    const place = cellOf(event.target);
    if (!place) return;
    event.preventDefault();
    drawing = { over: !cells[place[0]]?.[place[1]], gesture: newGesture() };
    go(...place);
    put(...place, drawing.over, drawing.gesture);
  });
  grid.addEventListener("pointermove", (event) => {
    if (!drawing || event.buttons === 0) return;
    const place = cellOf(document.elementFromPoint(event.clientX, event.clientY));
    if (place) put(...place, drawing.over, drawing.gesture);
  });
  for (const end of ["pointerup", "pointercancel"]) window.addEventListener(end, () => (drawing = undefined));
  grid.addEventListener("focusin", (event) => {
    at = cellOf(event.target) ?? at;
  });
  grid.addEventListener("keydown", (event) => {
    const [row, column] = at;
    const steps: Record<string, () => void> = {
      ArrowUp: () => go(row - 1, column),
      ArrowDown: () => go(row + 1, column),
      ArrowLeft: () => go(row, column - 1),
      ArrowRight: () => go(row, column + 1),
      " ": () => put(row, column, !cells[row]?.[column]),
      Enter: () => put(row, column, !cells[row]?.[column]),
    };
    const step = event.ctrlKey || event.metaKey || event.altKey ? undefined : steps[event.key];
    if (!step) return;
    event.preventDefault();
    step();
    say(told, grid.querySelector(`[data-cell="${at[0]},${at[1]}"]`)?.getAttribute("aria-label") ?? "");
  });

  const size = (what: "width" | "height"): HTMLElement => {
    const by = (step: number): void => {
      const [width, height] = [cells[0]?.length ?? 1, cells.length];
      const [wide, high] = what === "width" ? [width + step, height] : [width, height + step];
      if (wide >= 1 && high >= 1 && wide <= MOST && high <= MOST) commit(sized(cells, wide, high));
    };
    const button = (sign: "minus" | "plus", step: number): HTMLElement =>
      el("button", { type: "button", class: "quiet sign", "aria-label": t(`bench-draw-${what}-${sign}`), onclick: () => by(step) }, icon(sign));
    return el("div", { class: "row" }, button("minus", -1), el("span", {}, t(`bench-draw-${what}`)), button("plus", 1));
  };
  const tools = TURNS.map((turn) => {
    const press = (): void => {
      const next = turns[turn](cells);
      if ((next[0]?.length ?? 0) <= MOST) commit(next);
    };
    return el("button", { type: "button", class: "quiet", onclick: press }, t(`bench-draw-${turn}`));
  });
  const undo = el("button", { type: "button", class: "quiet", onclick: () => context.undo() }, icon("undo"), t("bench-undo"));
  const sizes = el("div", { class: "row wrap" }, size("width"), size("height"));
  const node = el("div", { class: "draw", role: "group" }, el("p", { class: "hint" }, t("bench-draw-hint")), sizes, el("div", { class: "draw-scroll" }, grid), verdict, el("div", { class: "row wrap" }, ...tools, undo), told);

  return {
    input: node,
    node,
    show(next) {
      field = next;
      if (Array.isArray(field.written) && drawing === undefined) cells = read(field.written.map(String));
      paint();
      fill(verdict, ...verdicts(field.path, context).map((text) => el("li", {}, text)));
    },
  };
}

/** What is found of the weaving of this course: whether it holds, and its floats. */
function verdicts(path: string, context: FormContext): readonly string[] {
  const course = path.replace(/\.chart$/, "");
  const findings = context.shown()?.findings ?? [];
  const own = findings.filter(({ code, place }) => place.path?.startsWith(course) === true || /^weave|float/.test(code));
  return own.length > 0 ? own.map(({ grade_label, what }) => `${grade_label}: ${what}`) : [t("bench-draw-holds")];
}
