/** Fields of a plan: each stands for one value of its text. */

import type { EditValue } from "../api/types.ts";
import { el, type Child, type Properties } from "../dom/element.ts";
import { t } from "../words/texts.ts";
import type { Choice } from "./fields.ts";
import type { Paper } from "./paper.ts";

/** Fields that write into a plan. */
export class PlanFields {
  constructor(
    private readonly paper: Paper,
    /** Says why a change was not made. */
    private readonly attempt: (act: () => Promise<void>) => void,
  ) {}

  /** A field whose text is read to a value; nothing takes the value out. */
  text(label: string, path: string, value: string, read: (typed: string) => EditValue | undefined, properties: Properties = {}): HTMLElement {
    const input = el("input", { type: "text", id: idOf(path), autocomplete: "off", spellcheck: "false", value, ...properties });
    input.addEventListener("change", () => {
      const typed = input.value.trim();
      this.set(label, path, typed === "" ? undefined : read(typed));
    });
    return labelled(label, input);
  }

  choice(label: string, path: string, value: string, choices: readonly Choice[]): HTMLElement {
    const select = el("select", { id: idOf(path) }, ...choices.map(([own, said]) => el("option", { value: own }, said)));
    // What the text names and nobody offers is shown all the same.
    if (!choices.some(([own]) => own === value)) select.append(el("option", { value }, value === "" ? "–" : value));
    select.value = value;
    select.addEventListener("change", () => this.set(label, path, select.value));
    return labelled(label, select);
  }

  /** Boxes to tick, each for one word of a list. */
  ticks(label: string, path: string, ticked: readonly string[], choices: readonly Choice[]): HTMLElement {
    const boxes = choices.map(([word, said]) => {
      const box = el("input", { type: "checkbox", id: idOf(`${path}-${word}`), checked: ticked.includes(word) });
      box.addEventListener("change", () => {
        const next = choices.map(([own]) => own).filter((own) => (own === word ? box.checked : ticked.includes(own)));
        this.set(label, path, next.length > 0 ? next : undefined);
      });
      return el("label", { class: "tick" }, box, said);
    });
    return el("fieldset", { class: "ticks" }, el("legend", {}, label), ...boxes);
  }

  /** A button that does something to the text. */
  act(label: string, id: string, run: () => Promise<void>, properties: Properties = {}): HTMLElement {
    return el("button", { type: "button", class: "quiet", id: idOf(id), onclick: () => this.attempt(run), ...properties }, label);
  }

  /** Does something to the text that may fail. */
  run(act: () => Promise<void>): void {
    this.attempt(act);
  }

  set(label: string, path: string, value: EditValue | undefined): void {
    const edit = value === undefined ? { do: "remove" as const, path } : { do: "set" as const, path, value };
    this.attempt(() => this.paper.change([edit], t("bench-plan-did-set", { field: label })));
  }
}

/** A part of the form, under its name. */
export function group(heading: string, ...rows: readonly Child[]): HTMLElement {
  return el("fieldset", { class: "plan-group" }, el("legend", {}, heading), ...rows);
}

export function whole(typed: string): EditValue {
  return /^\d{1,6}$/.test(typed) ? Number(typed) : typed;
}

export function decimal(typed: string): EditValue {
  const number = Number(typed.replace(",", "."));
  return Number.isFinite(number) ? number : typed;
}

/** Money and shares are text in the file, so that they stay decimal. */
export function money(typed: string): EditValue {
  return typed.replace(",", ".");
}

export function plain(typed: string): EditValue {
  return typed;
}

function idOf(path: string): string {
  return `plan-${path.replace(/[^A-Za-z0-9]+/g, "-")}`;
}

function labelled(label: string, input: HTMLElement): HTMLElement {
  return el("div", { class: "stack tight" }, el("label", { for: input.id }, label), input);
}
