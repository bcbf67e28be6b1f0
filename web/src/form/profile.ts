/** The mould from the side, live; the points that it was measured at, or its base and rim, can be dragged. */

import type { Mould } from "../api/types.ts";
import { attribute, el, svg } from "../dom/element.ts";
import { t } from "../words/texts.ts";
import type { FormContext } from "./context.ts";
import { closed, Frame } from "./frame.ts";
import { Grips } from "./grips.ts";

export class Profile {
  readonly node: HTMLElement;
  readonly #picture = svg("svg", { class: "profile", role: "group" });
  readonly #shape = svg("path", { class: "profile-mould" });
  readonly #across = svg("path", { class: "profile-across" });
  readonly #woven = svg("line", { class: "profile-woven" });
  readonly #axis = svg("line", { class: "profile-axis" });
  readonly #lines = el("p", { class: "hint" }, t("bench-profile-lines"));
  readonly #frame = new Frame(this.#picture);
  readonly #grips: Grips;

  constructor(context: FormContext) {
    this.#grips = new Grips(context, (event) => this.#frame.place(event));
    this.#picture.append(this.#shape, this.#across, this.#woven, this.#axis, this.#grips.node);
    attribute(this.#picture, "aria-label", t("bench-profile"));
    this.node = el("div", { class: "profile-box" }, this.#picture, this.#lines, el("p", { class: "hint" }, t("bench-profile-hint")));
  }

  show(mould: Mould): void {
    const { seen } = mould;
    if (!this.#grips.held) this.#frame.fit(Math.max(...seen.map(([half]) => half), 10), 0, mould.height_mm);
    attribute(this.#shape, "d", mirrored(seen.map(([half, , height]) => [half, height])));
    const round = mould.plan === null;
    attribute(this.#across, "d", round ? null : mirrored(seen.map(([, half, height]) => [half, height])));
    this.#lines.hidden = round;
    const top = seen.at(-1)?.[0] ?? 0;
    line(this.#woven, -top * 1.08, -mould.woven_to_mm, top * 1.08, -mould.woven_to_mm);
    line(this.#axis, 0, this.#frame.top, 0, this.#frame.top + this.#frame.height);
    this.#grips.show(mould.grips, this.#frame.width / 100);
  }
}

/** Both sides, from the right one. */
function mirrored(side: readonly (readonly [number, number])[]): string {
  return closed([...side, ...side.toReversed().map(([half, height]) => [-half, height] as const)]);
}

function line(element: SVGLineElement, x1: number, y1: number, x2: number, y2: number): void {
  for (const [name, value] of Object.entries({ x1, y1, x2, y2 })) attribute(element, name, value);
}
