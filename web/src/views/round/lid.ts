/** How the lid is shown: shut, open, or off the basket. */

import type { LidWord } from "../../api/types.ts";
import { attribute, el } from "../../dom/element.ts";
import { newId } from "../../form/context.ts";
import { t } from "../../words/texts.ts";

const POSES: readonly LidWord[] = ["closed", "open", "off"];

export class LidSwitch {
  readonly node: HTMLElement;
  readonly #buttons: readonly HTMLButtonElement[];
  #pose: LidWord = "closed";

  constructor(private readonly changed: () => void) {
    const label = el("span", { id: newId("lid"), class: "knob-name" }, t("bench-lid"));
    this.#buttons = POSES.map((pose) =>
      el("button", { type: "button", class: "quiet", onclick: () => this.#choose(pose) }, t(`bench-lid-${pose}`)),
    );
    this.node = el("div", { class: "knob lid-switch", role: "group", "aria-labelledby": label.id }, label, ...this.#buttons);
    this.#tell();
  }

  get pose(): LidWord {
    return this.#pose;
  }

  /** A basket without a lid, and one that is not finished, has none to show. */
  show(there: boolean): void {
    this.node.hidden = !there;
  }

  #choose(pose: LidWord): void {
    if (pose === this.#pose) return;
    this.#pose = pose;
    this.#tell();
    this.changed();
  }

  #tell(): void {
    for (const [index, button] of this.#buttons.entries()) attribute(button, "aria-pressed", String(POSES[index] === this.#pose));
  }
}
