/** The mould's girths as a small table. */

import type { Edit, Girth, Measured, Mould, Problem } from "../api/types.ts";
import { attribute, el, say } from "../dom/element.ts";
import { icon } from "../dom/icons.ts";
import { t } from "../words/texts.ts";
import { set, type FormContext } from "./context.ts";
import { said } from "./said.ts";

interface Row {
  readonly node: HTMLTableRowElement;
  show(girth: Girth, problems: readonly Problem[]): void;
}

export class Girths {
  readonly node: HTMLElement;
  readonly #body = el("tbody");
  readonly #table: HTMLTableElement;
  readonly #wrong = el("p", { class: "wrong" });
  readonly #add: HTMLButtonElement;
  readonly #other: HTMLButtonElement;
  #rows: Row[] = [];
  #mould: Mould | undefined;

  constructor(private readonly context: FormContext) {
    const heads = el(
      "tr",
      {},
      el("th", { scope: "col" }, t("bench-height-above-base")),
      el("th", { scope: "col" }, t("bench-girth")),
      el("th", { scope: "col" }, el("span", { class: "unseen" }, t("bench-remove"))),
    );
    this.#table = el("table", { class: "girths" }, el("thead", {}, heads), this.#body);
    this.#add = el("button", { type: "button", class: "quiet", onclick: () => this.#insert() }, icon("plus"), t("bench-add-girth"));
    this.#other = el("button", { type: "button", class: "quiet", onclick: () => this.#change() });
    this.node = el("div", { class: "girth-box" }, this.#table, this.#wrong, el("div", { class: "row wrap" }, this.#add, this.#other));
  }

  show(mould: Mould, problems: readonly Problem[]): void {
    this.#mould = mould;
    const { girths } = mould;
    const measured = girths.length > 0;
    attribute(this.#table, "hidden", !measured);
    attribute(this.#add, "hidden", !measured);
    say(this.#other, t(measured ? "bench-mould-draw" : "bench-mould-measure"));
    while (this.#rows.length > girths.length) this.#rows.pop()?.node.remove();
    while (this.#rows.length < girths.length) {
      const row = this.#row(this.#rows.length);
      this.#rows.push(row);
      this.#body.append(row.node);
    }
    for (const [index, one] of girths.entries()) this.#rows[index]?.show(one, problems);
    this.complain(problems);
  }

  complain(problems: readonly Problem[]): void {
    const own = problems.filter((problem) => problem.path?.startsWith("mould.girths"));
    say(this.#wrong, own.map(said).join(" "));
  }

  #change(): void {
    const { measure = [], draw = [] } = this.#mould ?? {};
    const edits = measure.length > 0 ? measure : draw;
    this.context.edit({ edits, label: this.#other.textContent });
  }

  #row(index: number): Row {
    const girth = (): Girth | undefined => this.#mould?.girths[index];
    const height = this.#length(() => girth()?.height, () => `${girth()?.path}[1]`);
    const round = this.#length(() => girth()?.girth, () => `${girth()?.path}[2]`);
    const remove = el(
      "button",
      { type: "button", class: "quiet sign", onclick: () => this.#remove(index) },
      icon("close"),
    );
    return {
      node: el("tr", {}, el("td", {}, height.node), el("td", {}, round.node), el("td", {}, remove)),
      show: (now, problems) => {
        const number = index + 1;
        height.show(now.height, t("bench-height-of", { number }), problems.some(({ path }) => path === `${now.path}[1]`));
        round.show(now.girth, t("bench-girth-of", { number }), problems.some(({ path }) => path === `${now.path}[2]`));
        attribute(remove, "aria-label", t("bench-remove-girth", { number }));
        attribute(remove, "disabled", (this.#mould?.girths.length ?? 0) <= 2);
      },
    };
  }

  #length(now: () => Measured | undefined, path: () => string) {
    const input = el("input", { type: "text", autocomplete: "off", spellcheck: "false" });
    const both = el("span", { class: "used" });
    let dirty = false;
    input.addEventListener("input", () => {
      dirty = true;
    });
    input.addEventListener("change", () => {
      dirty = false;
      const value = input.value.trim();
      if (value === now()?.written) return;
      const label = t("bench-did-set", { what: input.getAttribute("aria-label") ?? "", value });
      this.context.edit({ edits: [set(path(), value)], label });
    });
    return {
      node: el("div", { class: "stack tight" }, input, both),
      show: (length: Measured, name: string, wrong: boolean) => {
        if (!dirty) input.value = length.written;
        say(both, length.text);
        attribute(input, "aria-label", name);
        attribute(input, "aria-invalid", wrong ? "true" : null);
      },
    };
  }

  /** Puts a measurement where the tape left the longest way unmeasured, on the profile as it is. */
  #insert(): void {
    const girths = this.#mould?.girths ?? [];
    const gaps = girths.slice(1).map((girth, index) => girth.height.mm - (girths[index]?.height.mm ?? 0));
    const widest = gaps.indexOf(Math.max(...gaps));
    const [low, high] = [girths[widest], girths[widest + 1]];
    if (!low || !high) return;
    const at = widest + 2;
    const height = (low.height.mm + high.height.mm) / 2;
    const edits: Edit[] = [
      { do: "insert", path: "mould.girths", at, value: [low.height.written, low.girth.written] },
      { do: "measure", path: `mould.girths[${at}][1]`, mm: height },
      { do: "measure", path: `mould.girths[${at}][2]`, mm: 2 * Math.PI * this.#radius(height) },
    ];
    this.context.edit({ edits, label: t("bench-add-girth") });
  }

  #radius(height: number): number {
    const profile = this.#mould?.profile ?? [];
    const above = profile.findIndex((point) => point[1] >= height);
    const [high, low] = [profile[above], profile[above - 1]];
    if (!high || !low) return high?.[0] ?? 50;
    const share = (height - low[1]) / (high[1] - low[1] || 1);
    return low[0] + share * (high[0] - low[0]);
  }

  #remove(index: number): void {
    const girth = this.#mould?.girths[index];
    if (!girth) return;
    const label = t("bench-remove-girth", { number: index + 1 });
    this.context.edit({ edits: [{ do: "remove", path: girth.path }], label });
  }
}
