/** A field that takes what a maker types. */

import type { Field, Word } from "../api/types.ts";
import { attribute, el, fill } from "../dom/element.ts";
import { t } from "../words/texts.ts";
import type { Change } from "../state/bench.ts";
import type { Control } from "./control.ts";
import { DRAWN, drawn } from "./drawn.ts";
import { newId, set, type FormContext } from "./context.ts";
import { meant, typed } from "./values.ts";

/** So many times what is usual is far beyond it. */
const FAR = 1.5;
const LISTED: Partial<Record<Field["kind"], true>> = { "open-word": true, wood: true, colours: true };

export function textControl(first: Field, context: FormContext): Control {
  let field = first;
  let dirty = false;
  const long = first.kind === "chart";
  const input = long
    ? el("textarea", { rows: 6, spellcheck: "false", class: "chart-text" })
    : el("input", { type: "text", autocomplete: "off", spellcheck: "false" });
  if (first.kind === "count" || first.kind === "share") attribute(input, "inputmode", "decimal");
  const list = LISTED[first.kind] ? el("datalist", { id: newId("list") }) : null;
  if (list) attribute(input, "list", list.id);

  const change = (): Change | undefined => {
    const text = input.value.trim();
    if (text === "" && field.give.length > 0) {
      return { edits: field.give, label: t("bench-did-give", { what: field.label }) };
    }
    if (text === typed(field).trim()) return undefined;
    const label = t("bench-did-set", { what: field.label, value: text });
    // A weave drawn by hand needs its drawing at once.
    if (field.kind === "open-word" && text === DRAWN) return { edits: drawn(field.path.replace(/\.weave$/, "")), label };
    return { edits: [set(field.path, meant(field, input.value))], label };
  };
  const doubt = el("div", { class: "doubt", role: "alert" });
  const commit = (): void => {
    if (!dirty) return;
    if (context.shown()?.units === "in" && isMetric(field, input.value)) {
      ask();
      return;
    }
    settle();
  };
  const settle = (): void => {
    fill(doubt);
    dirty = false;
    const done = change();
    if (done) context.edit(done);
    context.typing(undefined);
  };
  /** A number that makes no sense in inches, and does in millimetres. */
  const ask = (): void => {
    const bare = input.value.trim();
    const take = (value: string): void => {
      input.value = value;
      input.focus();
      settle();
    };
    const answers = [`${bare} mm`, `${bare} in`].map((value) => el("button", { type: "button", class: "quiet", onclick: () => take(value) }, value));
    fill(doubt, el("p", {}, t("bench-doubt", { number: bare })), el("div", { class: "row wrap" }, ...answers));
  };
  input.addEventListener("input", () => {
    dirty = true;
    fill(doubt);
    context.typing(change());
  });
  input.addEventListener("change", commit);
  input.addEventListener("keydown", (event) => {
    if (event instanceof KeyboardEvent && event.key === "Enter" && !long) commit();
    if (event instanceof KeyboardEvent && event.key === "Escape" && dirty) {
      dirty = false;
      fill(doubt);
      input.value = typed(field);
      context.typing(undefined);
    }
  });

  return {
    input,
    node: el("div", { class: "text-control" }, input, list, doubt),
    show(next) {
      field = next;
      if (!dirty) input.value = typed(field);
      attribute(input, "placeholder", field.written === null ? (field.used?.word ?? "") : null);
      if (list && list.childElementCount !== options(field, context).length) {
        fill(list, ...options(field, context).map(({ word, label }) => el("option", { value: word, label })));
      }
    },
  };
}

/** Whether a bare number lies far beyond what is usual in inches, and within that in millimetres. */
function isMetric({ kind, range }: Field, text: string): boolean {
  const number = /^\d+([.,]\d+)?$/.test(text.trim()) ? Number(text.trim().replace(",", ".")) : Number.NaN;
  return kind === "length" && range !== null && number * 25.4 > range.most * FAR && number >= range.least && number <= range.most * FAR;
}

function options(field: Field, context: FormContext): readonly Word[] {
  if (field.kind === "wood") return context.woods();
  if (field.kind === "colours") return context.colours().map(({ name, label }) => ({ word: name, label }));
  return field.options;
}
