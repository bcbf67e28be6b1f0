/** Fields that are on or off: a flag, or a part that is there or not. */

import type { Field } from "../api/types.ts";
import { el } from "../dom/element.ts";
import { t } from "../words/texts.ts";
import type { Control } from "./control.ts";
import { set, type FormContext } from "./context.ts";

export function flagControl(first: Field, context: FormContext): Control {
  let field = first;
  const input = el("input", { type: "checkbox" });
  input.addEventListener("change", () => {
    const part = field.kind === "part";
    const on = part ? field.take : [set(field.path, true)];
    const off = part || field.give.length > 0 ? field.give : [set(field.path, false)];
    const label = t(input.checked ? "bench-did-put-in" : "bench-did-take-out", { what: field.label });
    context.edit({ edits: input.checked ? on : off, label });
  });
  return {
    input,
    node: input,
    show(next) {
      field = next;
      input.checked = field.written === null ? field.used?.word === "true" : field.written === true;
    },
  };
}
