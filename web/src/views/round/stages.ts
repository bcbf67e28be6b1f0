/** The slider from the bare mould to the finished basket. */

import type { Word } from "../../api/types.ts";
import { attribute, el, say } from "../../dom/element.ts";
import { newId } from "../../form/context.ts";
import { t } from "../../words/texts.ts";

export class StageSlider {
  readonly node: HTMLElement;
  readonly #slider = el("input", { type: "range", min: 0, step: 1, id: newId("stage") });
  readonly #name = el("output", {});
  #stages: readonly Word[] = [];
  #chosen: string | undefined;

  constructor(changed: () => void) {
    const label = el("label", { for: this.#slider.id }, t("bench-stage"));
    attribute(this.#name, "for", this.#slider.id);
    this.node = el("div", { class: "knob" }, label, this.#slider, this.#name);
    this.#slider.addEventListener("input", () => {
      this.#chosen = this.#stages[this.#slider.valueAsNumber]?.word;
      this.#tell();
      changed();
    });
  }

  /** The stage that the slider stands at; none for the finished basket. */
  get stage(): string | undefined {
    return this.#stages.some(({ word }) => word === this.#chosen) ? this.#chosen : undefined;
  }

  /** Whether it stands at the finished basket. */
  get finished(): boolean {
    return this.#slider.valueAsNumber === this.#stages.length - 1;
  }

  show(stages: readonly Word[]): void {
    this.#stages = stages;
    const at = stages.findIndex(({ word }) => word === this.#chosen);
    attribute(this.#slider, "max", stages.length - 1);
    this.#slider.value = String(at < 0 ? stages.length - 1 : at);
    this.#tell();
  }

  #tell(): void {
    const label = this.#stages[this.#slider.valueAsNumber]?.label ?? "";
    say(this.#name, label);
    attribute(this.#slider, "aria-valuetext", label);
  }
}
