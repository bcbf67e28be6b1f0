/** A field of which any of several words may be chosen, each with a box of its own. */

import type { Field } from "../api/types.ts";
import { el, fill } from "../dom/element.ts";
import { t } from "../words/texts.ts";
import type { Control } from "./control.ts";
import { newId, set, type FormContext } from "./context.ts";

export function wordsControl(first: Field, context: FormContext): Control {
  let field = first;
  let offered = "";
  const node = el("div", { class: "stack", role: "group" });

  const chosen = (): string[] => {
    const { written } = field;
    if (Array.isArray(written)) return written.map(String);
    return typeof written === "string" ? [written] : [];
  };
  const boxes = (): HTMLInputElement[] => [...node.querySelectorAll<HTMLInputElement>("input")];
  const change = (box: HTMLInputElement, what: string): void => {
    const words = boxes().filter(({ checked }) => checked).map(({ value }) => value);
    const label = t(box.checked ? "bench-did-put-in" : "bench-did-take-out", { what });
    context.edit({ edits: words.length > 0 ? [set(field.path, words)] : field.give, label });
  };
  const row = ({ word, label }: { word: string; label: string }): HTMLElement => {
    const id = newId("word");
    const box = el("input", { type: "checkbox", id, value: word, onchange: () => change(box, label) });
    return el("div", { class: "row check" }, box, el("label", { for: id }, label));
  };
  return {
    input: node,
    node,
    show(next) {
      field = next;
      const offer = JSON.stringify(field.options);
      if (offer !== offered) fill(node, ...field.options.map(row));
      offered = offer;
      // A choice that was not taken does not stay.
      for (const box of boxes()) box.checked = chosen().includes(box.value);
    },
  };
}
