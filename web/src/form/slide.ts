/** Slider and stepper beside a field: dragging changes the pattern while the hand moves. */

import type { Edit, Field } from "../api/types.ts";
import { attribute, el } from "../dom/element.ts";
import { icon } from "../dom/icons.ts";
import { t } from "../words/texts.ts";
import { newGesture, set, type FormContext } from "./context.ts";

export class Slide {
  readonly node: HTMLElement;
  readonly #slider = el("input", { type: "range" });
  readonly #less: HTMLButtonElement;
  readonly #more: HTMLButtonElement;
  #field: Field;
  #named = "";
  #gesture: string | null = null;
  /** Where the stepper stands while its presses are not answered yet. */
  #stepped: number | null = null;

  constructor(field: Field, private readonly context: FormContext) {
    this.#field = field;
    this.#less = this.#stepper("minus", -1);
    this.#more = this.#stepper("plus", 1);
    this.node = el("div", { class: "slide" }, this.#less, this.#slider, this.#more);
    this.#slider.addEventListener("input", () => {
      this.#gesture ??= newGesture();
      this.#write(this.#slider.valueAsNumber, this.#gesture);
    });
    this.#slider.addEventListener("change", () => {
      this.#gesture = null;
    });
  }

  show(field: Field): void {
    if (field.label !== this.#named) this.#name(field.label);
    this.#field = field;
    this.#stepped = null;
    const { range, used } = field;
    const number = used?.number ?? null;
    attribute(this.node, "hidden", range === null || number === null);
    if (range === null || number === null) return;
    attribute(this.#slider, "aria-valuetext", used?.text);
    if (this.#gesture !== null) return;
    attribute(this.#slider, "min", range.least);
    attribute(this.#slider, "max", range.most);
    attribute(this.#slider, "step", field.kind === "count" ? range.step : "any");
    this.#slider.value = String(number);
  }

  #name(what: string): void {
    this.#named = what;
    attribute(this.#slider, "aria-label", t("bench-slider", { what }));
    attribute(this.#less, "aria-label", t("bench-slide-less", { what }));
    attribute(this.#more, "aria-label", t("bench-slide-more", { what }));
  }

  #stepper(sign: "minus" | "plus", way: number): HTMLButtonElement {
    const step = (): void => {
      const { range, used } = this.#field;
      const now = this.#stepped ?? used?.number;
      if (!range || now === null || now === undefined) return;
      const next = Math.min(range.most, Math.max(range.least, now + way * range.step));
      if (next === now) return;
      this.#stepped = next;
      this.#write(next, undefined);
    };
    return el("button", { type: "button", class: "quiet sign", onclick: step }, icon(sign));
  }

  #write(number: number, gesture: string | undefined): void {
    const { kind, path, label } = this.#field;
    const edit: Edit = kind === "count" ? set(path, Math.round(number)) : { do: "measure", path, mm: number };
    const change = { edits: [edit], label: t("bench-did-drag", { what: label }) };
    this.context.edit(gesture === undefined ? change : { ...change, gesture });
  }
}
