/**
 * A list of fields that keeps its elements, and with them the focus, from one look to the next. What is usually
 * changed stands first; the rest is folded, with what it was left at.
 */

import type { Field, Problem } from "../api/types.ts";
import { attribute, el, say } from "../dom/element.ts";
import { t } from "../words/texts.ts";
import type { FormContext } from "./context.ts";
import { FieldView } from "./field.ts";

export class Fields {
  readonly node = el("div", { class: "fields" });
  readonly #usual = el("div", { class: "fields-usual" });
  readonly #folded = el("div", { class: "fields-rest" });
  readonly #count = el("span", { class: "rest-count" });
  readonly #left = el("span", { class: "fact rest-left" });
  readonly #rest = el("details", { class: "rest" }, el("summary", {}, this.#count, this.#left), this.#folded);
  #views = new Map<string, FieldView>();

  constructor(private readonly context: FormContext) {
    this.node.append(this.#usual, this.#rest);
  }

  show(fields: readonly Field[], problems: readonly Problem[]): void {
    const before = this.#views;
    this.#views = new Map();
    const rest = fields.filter(({ usual }) => !usual);
    this.#arrange(this.#usual, fields.filter(({ usual }) => usual), before, problems);
    this.#arrange(this.#folded, rest, before, problems);
    for (const gone of before.values()) gone.node.remove();
    attribute(this.#rest, "hidden", rest.length === 0);
    say(this.#count, t("bench-rest", { count: rest.length }));
    const left = rest.filter(({ used }) => used !== null);
    const own = left.filter(({ written }) => written !== null);
    const line = [...own, ...left.filter(({ written }) => written === null)].map(({ label, used }) => `${label}: ${used?.text ?? ""}`);
    say(this.#left, line.join(" · "));
  }

  complain(problems: readonly Problem[]): void {
    for (const [key, view] of this.#views) {
      const path = key.slice(key.indexOf(" ") + 1);
      const problem = problems.find((one) => one.path === path);
      view.complain(problem);
      if (problem && this.#folded.contains(view.node)) this.#rest.open = true;
    }
  }

  /** The field of a value, if it is in this list. */
  find(path: string): FieldView | undefined {
    return [...this.#views].find(([key]) => key.endsWith(` ${path}`))?.[1];
  }

  #arrange(node: HTMLElement, fields: readonly Field[], before: Map<string, FieldView>, problems: readonly Problem[]): void {
    let last: HTMLElement | null = null;
    for (const field of fields) {
      const key = `${field.kind} ${field.path}`;
      const view = before.get(key) ?? new FieldView(field, this.context);
      before.delete(key);
      this.#views.set(key, view);
      view.show(field, problems.find((problem) => problem.path === field.path));
      const place: ChildNode | null = last ? last.nextSibling : node.firstChild;
      if (place !== view.node) node.insertBefore(view.node, place);
      last = view.node;
    }
  }
}
