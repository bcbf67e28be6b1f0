/** On a narrow page one pane at a time lies under the picture; this is the switch at its foot. */

import { attribute, el } from "../dom/element.ts";
import { t } from "../words/texts.ts";

export const PANES = ["form", "picture", "findings", "cuts"] as const;
export type Pane = (typeof PANES)[number];

export class Panes {
  readonly node: HTMLElement;
  readonly #buttons: readonly HTMLButtonElement[];

  constructor(private readonly page: HTMLElement) {
    this.#buttons = PANES.map((pane) =>
      el("button", { type: "button", class: "quiet", onclick: () => this.show(pane) }, t(`bench-pane-${pane}`)),
    );
    this.node = el("nav", { class: "panes", "aria-label": t("bench-panes") }, ...this.#buttons);
    this.show("form");
  }

  show(pane: Pane): void {
    this.page.dataset["pane"] = pane;
    for (const [index, button] of this.#buttons.entries()) {
      attribute(button, "aria-pressed", String(PANES[index] === pane));
    }
  }
}
