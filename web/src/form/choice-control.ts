/** Fields in which one thing is chosen from several. */

import type { Field, MaterialName } from "../api/types.ts";
import { el, fill, say } from "../dom/element.ts";
import { t } from "../words/texts.ts";
import type { Control } from "./control.ts";
import { set, type FormContext } from "./context.ts";

/** The value of the option that leaves the choice to Stavewright. */
const LEFT = "";

export function wordControl(first: Field, context: FormContext): Control {
  return choice(first, context, (field) => field.options.map(({ word, label }) => el("option", { value: word }, label)));
}

export function materialControl(first: Field, context: FormContext): Control {
  return choice(first, context, (field) => materialOptions(field, context, written(field)));
}

/** Options for the materials that fit a field, by their kinds. */
export function materialOptions(field: Field, context: FormContext, current: string): HTMLElement[] {
  const fitting = context.materials().filter((material) => field.kinds.length === 0 || field.kinds.includes(material.kind));
  const groups = Map.groupBy(fitting, (material) => material.kind);
  const nodes: HTMLElement[] = [...groups].map(([kind, materials]) =>
    el("optgroup", { label: kind }, ...materials.map(materialOption)),
  );
  if (current !== "" && !fitting.some((material) => material.name === current)) {
    nodes.unshift(el("option", { value: current }, current));
  }
  return nodes;
}

function materialOption(material: MaterialName): HTMLElement {
  return el("option", { value: material.name }, `${material.name} · ${material.size}`);
}

function written(field: Field): string {
  return typeof field.written === "string" ? field.written : LEFT;
}

function choice(first: Field, context: FormContext, options: (field: Field) => HTMLElement[]): Control {
  let field = first;
  let offered = "";
  const leave = el("option", { value: LEFT });
  const select = el("select");
  select.addEventListener("change", () => {
    const chosen = select.selectedOptions[0]?.textContent ?? select.value;
    if (select.value === LEFT) {
      context.edit({ edits: field.give, label: t("bench-did-give", { what: field.label }) });
    } else {
      const label = t("bench-did-set", { what: field.label, value: chosen });
      context.edit({ edits: [set(field.path, select.value)], label });
    }
  });
  return {
    input: select,
    node: select,
    show(next) {
      field = next;
      const left = leftTo(field);
      say(leave, left ?? "");
      const offer = JSON.stringify([left !== null, field.written, field.options, field.kinds, context.materials().length]);
      if (offer !== offered) fill(select, left !== null && leave, ...options(field));
      offered = offer;
      select.value = field.written === null ? LEFT : written(field);
    },
  };
}

/** What the option says that leaves the choice to Stavewright, where it may be left. */
function leftTo(field: Field): string | null {
  if (field.give.length === 0 && field.written !== null) return null;
  return field.used ? t("bench-left-to", { value: field.used.text }) : t("bench-left-out");
}
