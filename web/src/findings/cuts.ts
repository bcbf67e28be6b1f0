/** The cut list and the main figures. */

import type { Cut, Figure } from "../api/types.ts";
import { attribute, el, say } from "../dom/element.ts";
import { List } from "../dom/list.ts";
import type { Bench } from "../state/bench.ts";
import { t } from "../words/texts.ts";

export class CutsView {
  readonly node: HTMLElement;
  readonly #heading = el("h2", { id: "cuts-heading" });

  constructor(bench: Bench) {
    say(this.#heading, t("bench-cuts"));
    const node = el("ul", { class: "cuts" });
    const list = new List(node, item);
    this.node = el("section", { "aria-labelledby": "cuts-heading" }, this.#heading, node);
    bench.shown.follow((shown) => list.show(shown?.cuts ?? []));
  }
}

function item(cut: Cut): HTMLElement {
  const count = cut.spares > 0 ? t("bench-cut-count", { count: cut.count, spares: cut.spares }) : String(cut.count);
  const size = [
    cut.length && t("bench-cut-length", { length: cut.length }),
    cut.width && t("bench-cut-width", { width: cut.width }),
    cut.total && t("bench-cut-total", { total: cut.total }),
  ];
  return el(
    "li",
    { "data-cut": cut.id },
    el("span", { class: "cut-count" }, count),
    el("span", { class: "cut-piece" }, cut.piece),
    el("span", { class: "cut-material" }, cut.material),
    ...size.filter((text) => text !== null && text !== "").map((text) => el("span", { class: "cut-size" }, text)),
    cut.shape !== null && el("span", { class: "cut-shape" }, cut.shape),
    el("span", { class: "cut-purpose" }, cut.purpose),
  );
}

export class FiguresView {
  readonly node: HTMLElement;
  readonly #list = el("dl", { class: "figures" });

  constructor(bench: Bench) {
    this.node = el("section", { "aria-label": t("bench-figures") }, this.#list);
    bench.shown.follow((shown) => this.#show(shown?.figures ?? []));
  }

  /** Keeps the elements, so that only what changed is written anew. */
  #show(figures: readonly Figure[]): void {
    while (this.#list.childElementCount > figures.length) this.#list.lastElementChild?.remove();
    for (const [index, figure] of figures.entries()) {
      const pair = this.#list.children[index] ?? this.#list.appendChild(el("div", {}, el("dt"), el("dd")));
      const [label, value] = pair.children;
      attribute(pair, "data-figure", figure.id);
      if (label) say(label, figure.label);
      if (value) say(value, figure.value);
    }
  }
}
