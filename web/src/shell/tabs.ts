/** The views, one at a time. */

import { attribute, el } from "../dom/element.ts";
import { t } from "../words/texts.ts";
import type { View } from "../views/view.ts";

const KEY = "stavewright-view";

export class Tabs {
  readonly node: HTMLElement;
  readonly #tabs: readonly HTMLButtonElement[];
  readonly #panels: readonly HTMLElement[];
  #current = -1;

  constructor(private readonly views: readonly View[]) {
    this.#tabs = views.map((view, index) =>
      el(
        "button",
        { type: "button", role: "tab", id: `tab-${view.id}`, "aria-controls": `view-${view.id}`, onclick: () => this.#go(index) },
        t(`bench-view-${view.id}`),
      ),
    );
    this.#panels = views.map((view) =>
      el("div", { role: "tabpanel", id: `view-${view.id}`, "aria-labelledby": `tab-${view.id}`, class: "panel", tabindex: 0 }, view.node),
    );
    const list = el("div", { role: "tablist", class: "tabs", "aria-label": t("bench-views") }, ...this.#tabs);
    list.addEventListener("keydown", (event) => this.#press(event));
    this.node = el("div", { class: "views" }, list, ...this.#panels);
    for (const panel of this.#panels) panel.hidden = true;
    for (const tab of this.#tabs) attribute(tab, "aria-selected", "false");
  }

  /** Name of the view that is looked at. */
  get current(): string | undefined {
    return this.views[this.#current]?.id;
  }

  /** Begins with the view that was looked at last, or with the first. */
  begin(): void {
    const last = sessionStorage.getItem(KEY);
    this.#go(Math.max(0, this.views.findIndex(({ id }) => id === last)));
  }

  show(id: string): void {
    this.#go(this.views.findIndex((view) => view.id === id));
  }

  #go(index: number): void {
    const view = this.views[index];
    if (!view || index === this.#current) return;
    this.views[this.#current]?.leave();
    this.#current = index;
    for (const [at, tab] of this.#tabs.entries()) {
      attribute(tab, "aria-selected", String(at === index));
      attribute(tab, "tabindex", at === index ? 0 : -1);
    }
    for (const [at, panel] of this.#panels.entries()) panel.hidden = at !== index;
    this.#tabs[index]?.scrollIntoView({ block: "nearest", inline: "nearest" });
    sessionStorage.setItem(KEY, view.id);
    view.enter();
  }

  #press(event: KeyboardEvent): void {
    const count = this.views.length;
    const next: Record<string, number> = {
      ArrowRight: (this.#current + 1) % count,
      ArrowLeft: (this.#current - 1 + count) % count,
      Home: 0,
      End: count - 1,
    };
    const index = next[event.key];
    if (index === undefined) return;
    event.preventDefault();
    this.#go(index);
    this.#tabs[index]?.focus();
  }
}
