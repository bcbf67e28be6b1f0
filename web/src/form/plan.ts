/** A mould that is not round, seen from above: its outline can be dragged. */

import type { Mould, Problem } from "../api/types.ts";
import { attribute, el, say, svg } from "../dom/element.ts";
import { t } from "../words/texts.ts";
import type { FormContext } from "./context.ts";
import { closed, Frame } from "./frame.ts";
import { Grips } from "./grips.ts";
import { said } from "./said.ts";

/** The shape that is drawn by hand. */
const DRAWN = "traced";
/** The values that the outline is made of. */
const OWN = /^mould\.(shape|length|width|corner|fullness|rays)\b/;

export class Plan {
  readonly node: HTMLElement;
  readonly #picture = svg("svg", { class: "profile plan", role: "group" });
  readonly #foot = svg("path", { class: "profile-mould" });
  readonly #top = svg("path", { class: "profile-across" });
  readonly #frame = new Frame(this.#picture);
  readonly #grips: Grips;
  readonly #wrong = el("p", { class: "wrong", "aria-live": "polite" });
  readonly #many = el("p", { class: "hint" }, t("bench-plan-many"));
  readonly #drag = el("p", { class: "hint" }, t("bench-plan-hint"));
  readonly #hand: HTMLButtonElement;
  #mould: Mould | undefined;

  constructor(private readonly context: FormContext) {
    this.#grips = new Grips(context, () => this.#frame.scale());
    this.#picture.append(this.#top, this.#foot, this.#grips.node);
    attribute(this.#picture, "aria-label", t("bench-plan"));
    this.#hand = el("button", { type: "button", class: "quiet", onclick: () => this.#byHand() });
    this.node = el("div", { class: "profile-box" }, this.#picture, this.#wrong, this.#drag, this.#many, this.#hand);
  }

  show(mould: Mould, problems: readonly Problem[]): void {
    this.#mould = mould;
    const { plan } = mould;
    this.node.hidden = plan === null;
    if (!plan) return;
    const places = [...plan.foot, ...plan.top];
    if (!this.#grips.held) {
      const up = Math.max(...places.map(([, y]) => Math.abs(y)), 10);
      this.#frame.fit(Math.max(...places.map(([x]) => Math.abs(x)), 10), -up, up);
    }
    attribute(this.#foot, "d", closed(plan.foot));
    attribute(this.#top, "d", closed(plan.top));
    this.#grips.show(plan.grips, this.#frame.width / 100);
    const few = plan.grips.length > 0;
    this.#many.hidden = few;
    this.#drag.hidden = !few;
    say(this.#hand, t(few ? "bench-plan-by-hand" : "bench-plan-fewer"));
    this.#hand.hidden = !this.#way();
    this.complain(problems);
  }

  complain(problems: readonly Problem[]): void {
    say(this.#wrong, problems.filter(({ path }) => path && OWN.test(path)).map(said).join(" "));
  }

  #way() {
    return this.#mould?.shapes.find(({ word }) => word === DRAWN);
  }

  #byHand(): void {
    const way = this.#way();
    if (way) this.context.edit({ edits: way.edits, label: this.#hand.textContent });
  }
}
