/** A list of fields that keeps its elements, and with them the focus, from one look to the next. */

import type { Field, Problem } from "../api/types.ts";
import { el } from "../dom/element.ts";
import type { FormContext } from "./context.ts";
import { FieldView } from "./field.ts";

export class Fields {
  readonly node = el("div", { class: "fields" });
  #views = new Map<string, FieldView>();

  constructor(private readonly context: FormContext) {}

  show(fields: readonly Field[], problems: readonly Problem[]): void {
    const before = this.#views;
    this.#views = new Map();
    let last: HTMLElement | null = null;
    for (const field of fields) {
      const key = `${field.kind} ${field.path}`;
      const view = before.get(key) ?? new FieldView(field, this.context);
      before.delete(key);
      this.#views.set(key, view);
      view.show(field, problems.find((problem) => problem.path === field.path));
      const place: ChildNode | null = last ? last.nextSibling : this.node.firstChild;
      if (place !== view.node) this.node.insertBefore(view.node, place);
      last = view.node;
    }
    for (const gone of before.values()) gone.node.remove();
  }

  complain(problems: readonly Problem[]): void {
    for (const [key, view] of this.#views) {
      const path = key.slice(key.indexOf(" ") + 1);
      view.complain(problems.find((problem) => problem.path === path));
    }
  }

  /** The field of a value, if it is in this list. */
  find(path: string): FieldView | undefined {
    return [...this.#views].find(([key]) => key.endsWith(` ${path}`))?.[1];
  }
}
