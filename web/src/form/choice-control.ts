/** Fields in which one word is chosen from several. */

import type { Edit, Field, MaterialName } from "../api/types.ts";
import { el, fill, say } from "../dom/element.ts";
import { t } from "../words/texts.ts";
import type { Control } from "./control.ts";
import { set, type FormContext } from "./context.ts";
import { materialLine } from "./stock-control.ts";

/** The value of the option that stands for no word of the list. */
const NONE = "";
/** The shape of the mould seen from above. */
const SHAPE = "mould.shape";

/** Options for the materials that fit a field, by their kinds. */
export function materialOptions(field: Field, context: FormContext, current: string): HTMLElement[] {
  const fitting = context.materials().filter((material) => field.kinds.length === 0 || field.kinds.includes(material.kind));
  const groups = Map.groupBy(fitting, (material) => material.kind_label);
  const nodes: HTMLElement[] = [...groups].map(([kind, materials]) =>
    el("optgroup", { label: kind }, ...materials.map(materialOption)),
  );
  if (current !== "" && !fitting.some((material) => material.name === current)) {
    nodes.unshift(el("option", { value: current }, current));
  }
  return nodes;
}

/** Another shape of the mould needs other lengths beside it. */
function becoming({ path }: Field, word: string, context: FormContext): readonly Edit[] | undefined {
  return path === SHAPE ? context.shown()?.mould.shapes.find((shape) => shape.word === word)?.edits : undefined;
}

function materialOption(material: MaterialName): HTMLElement {
  return el("option", { value: material.name }, materialLine(material));
}

/** What is chosen is shown as chosen, by whomever; the sign beside the field's name says by whom. */
export function wordControl(first: Field, context: FormContext): Control {
  let field = first;
  let offered = "";
  const none = el("option", { value: NONE });
  const select = el("select");
  select.addEventListener("change", () => {
    const chosen = select.selectedOptions[0]?.textContent ?? select.value;
    if (select.value === NONE) {
      context.edit({ edits: field.give, label: t("bench-did-give", { what: field.label }) });
    } else {
      const label = t("bench-did-set", { what: field.label, value: chosen });
      context.edit({ edits: becoming(field, select.value, context) ?? [set(field.path, select.value)], label });
    }
  });
  return {
    input: select,
    node: select,
    show(next) {
      field = next;
      const current = typeof field.written === "string" ? field.written : (field.used?.word ?? NONE);
      const known = field.options.some(({ word }) => word === current);
      say(none, field.used && !known ? field.used.text : t("bench-left-out"));
      const offer = JSON.stringify([known, field.written, field.options]);
      const options = field.options.map(({ word, label }) => el("option", { value: word }, label));
      const stranger = !known && field.written !== null && el("option", { value: current }, current);
      if (offer !== offered) fill(select, !known && field.written === null && none, stranger, ...options);
      offered = offer;
      select.value = known || field.written !== null ? current : NONE;
    },
  };
}
