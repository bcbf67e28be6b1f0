/** The mould from the side, live; the points that it was measured at, or its base and rim, can be dragged. */

import type { Mould } from "../api/types.ts";
import { attribute, el, svg } from "../dom/element.ts";
import { icon } from "../dom/icons.ts";
import { t } from "../words/texts.ts";
import type { FormContext } from "./context.ts";
import { closed, Frame } from "./frame.ts";
import { Grips } from "./grips.ts";
import { openTrace } from "./trace.ts";
import { Underlay } from "./underlay.ts";

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
  readonly #underlay = new Underlay(() => attribute(this.#picture, "data-photo", this.#underlay.there));

  constructor(private readonly context: FormContext) {
    this.#grips = new Grips(context, () => this.#frame.scale());
    this.#picture.append(this.#underlay.picture, this.#shape, this.#across, this.#woven, this.#axis, this.#grips.node);
    attribute(this.#picture, "aria-label", t("bench-profile"));
    const trace = el("button", { type: "button", class: "quiet", onclick: () => this.#trace() }, icon("camera"), t("bench-trace"));
    const drag = el("p", { class: "hint" }, t("bench-profile-hint"));
    this.node = el("div", { class: "profile-box" }, this.#picture, this.#lines, drag, this.#underlay.node, trace);
  }

  /** Another pattern lies on the bench: the photograph was of another mould. */
  forget(): void {
    this.#underlay.drop();
  }

  #trace(): void {
    openTrace(this.context, (photo, mould) => {
      this.context.edit({ edits: mould.edits, label: t("bench-did-trace") });
      this.#underlay.lay(photo, mould);
    });
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
