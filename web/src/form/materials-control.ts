/** A field that names several materials, one under the other. */

import type { EditValue, Field } from "../api/types.ts";
import { el, fill } from "../dom/element.ts";
import { icon } from "../dom/icons.ts";
import { t } from "../words/texts.ts";
import { materialOptions } from "./choice-control.ts";
import type { Control } from "./control.ts";
import { set, type FormContext } from "./context.ts";

export function materialsControl(first: Field, context: FormContext): Control {
  let field = first;
  let offered = "";
  const node = el("div", { class: "stack", role: "group" });

  const names = (): string[] => {
    const { written } = field;
    if (Array.isArray(written)) return written.map(String);
    return typeof written === "string" ? [written] : [];
  };
  const write = (list: EditValue[]): void => {
    const label = t("bench-did-set", { what: field.label, value: list.join(", ") });
    context.edit({ edits: list.length > 0 ? [set(field.path, list)] : field.give, label });
  };
  const row = (name: string, index: number): HTMLElement => {
    const number = index + 1;
    const select = el(
      "select",
      {
        "aria-label": t("bench-which-of", { what: field.label, number }),
        onchange: () => write(names().map((old, at) => (at === index ? select.value : old))),
      },
      ...materialOptions(field, context, name),
    );
    select.value = name;
    const remove = el(
      "button",
      {
        type: "button",
        class: "quiet sign",
        "aria-label": t("bench-remove-which", { what: t("bench-which-of", { what: field.label, number }) }),
        onclick: () => write(names().filter((_, at) => at !== index)),
      },
      icon("close"),
    );
    return el("div", { class: "row" }, select, remove);
  };
  const add = el("button", { type: "button", class: "quiet", onclick: () => write([...names(), names().at(-1) ?? fallback()]) });
  const fallback = (): string => context.materials().find((material) => field.kinds.includes(material.kind))?.name ?? "";
  return {
    input: node,
    node,
    show(next) {
      field = next;
      const offer = JSON.stringify([field.label, field.written, field.kinds, context.materials().length]);
      if (offer !== offered) {
        fill(add, icon("plus"), t("bench-add-which", { what: field.label }));
        fill(node, ...names().map(row), add);
      }
      offered = offer;
      // A choice that was not taken does not stay.
      for (const [index, select] of node.querySelectorAll("select").entries()) select.value = names()[index] ?? "";
    },
  };
}
