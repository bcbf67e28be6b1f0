/** A field that takes one material: what is used, by sight, and a dialog to choose another. */

import type { Field, MaterialName } from "../api/types.ts";
import { el, fill } from "../dom/element.ts";
import { t } from "../words/texts.ts";
import type { Control } from "./control.ts";
import { set, type FormContext } from "./context.ts";
import { cutOf, openStock } from "./stock-dialog.ts";

export function stockControl(first: Field, context: FormContext): Control {
  let field = first;
  let shown = "";
  const button = el("button", { type: "button", class: "quiet stock", "aria-haspopup": "dialog", onclick: () => choose() });
  const current = (): string => (typeof field.written === "string" ? field.written : (field.used?.word ?? ""));
  const choose = (): void => {
    const take = (name: string, label: string, before: readonly ReturnType<typeof set>[]): void =>
      context.edit({ edits: [...before, set(field.path, name)], label: t("bench-did-set", { what: field.label, value: label }) });
    openStock({ heading: field.label, kinds: field.kinds, current: current(), materials: context.materials(), take });
  };
  return {
    input: button,
    node: button,
    show(next) {
      field = next;
      const material = context.materials().find(({ name }) => name === current());
      const stamp = JSON.stringify([current(), material, field.used?.text]);
      if (stamp === shown) return;
      shown = stamp;
      const name = material?.label ?? field.used?.text ?? t("bench-left-out");
      fill(button, material && cutOf(material), el("span", {}, name), material && el("span", { class: "fact" }, material.size));
    },
  };
}

/** The material's name and size on one line, for lists. */
export function materialLine({ label, size }: MaterialName): string {
  return `${label} · ${size}`;
}
