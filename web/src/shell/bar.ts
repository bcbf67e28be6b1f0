/** The bar at the top: what is on the bench, undo and redo, saving, and what else there is to do. */

import type { Health } from "../api/types.ts";
import { attribute, el, fill, say } from "../dom/element.ts";
import { icon, type Sign } from "../dom/icons.ts";
import { openGuide } from "../help/guide.ts";
import { openNest } from "../nest/nest.ts";
import { openPacket } from "../packet/packet.ts";
import type { Files } from "../patterns/files.ts";
import { openShelf } from "../patterns/shelf.ts";
import type { Connection } from "../server/connection.ts";
import type { Bench } from "../state/bench.ts";
import { language, t } from "../words/texts.ts";
import { openDialog } from "./dialog.ts";
import { light, switchLight } from "./light.ts";

export interface BarParts {
  readonly bench: Bench;
  readonly files: Files;
  readonly connection: Connection;
  readonly compare: () => void;
  readonly speak: (language: string) => void;
}

interface Item {
  readonly label: string;
  readonly run: () => void;
  readonly language?: string;
}

export class Bar {
  readonly node: HTMLElement;
  readonly #title = el("span", { class: "title-text" });
  readonly #file = el("span", { class: "title-file" });
  readonly #state = el("span", { class: "title-state" });
  readonly #undo: HTMLButtonElement;
  readonly #redo: HTMLButtonElement;
  readonly #save: HTMLButtonElement;

  constructor(private readonly parts: BarParts) {
    const { bench, files, connection } = parts;
    this.#undo = sign("undo", () => bench.undo());
    this.#redo = sign("redo", () => bench.redo());
    this.#save = el("button", { type: "button", class: "save", onclick: () => void files.save() }, t("bench-save"));
    const title = el("button", { type: "button", class: "title", onclick: () => this.#shelf() }, this.#title, el("span", { class: "title-below" }, this.#file, this.#state));
    attribute(title, "aria-haspopup", "dialog");
    const wide = el(
      "div",
      { class: "wide-only row" },
      el("button", { type: "button", class: "quiet", onclick: () => openPacket(bench) }, t("bench-take-away")),
    );
    const more = el(
      "button",
      { type: "button", class: "quiet", "aria-haspopup": "dialog", onclick: () => this.#more() },
      t("bench-more"),
    );
    const mark = el("img", { src: "/assets/mark.svg", alt: "", width: 28, height: 28 });
    const name = el("h1", { class: "name" }, mark, el("span", {}, "Stavewright"));
    this.node = el("header", { class: "bar" }, name, title, el("div", { class: "row acts" }, this.#undo, this.#redo, this.#save, wide, more));
    for (const signal of [bench.document, bench.shown, connection.health]) signal.listen(() => this.#show());
    this.#show();
  }

  #show(): void {
    const { bench, connection } = this.parts;
    const { name } = bench.document.value;
    const title = bench.shown.value?.title ?? name ?? t("bench-new-title");
    say(this.#title, title);
    say(this.#file, name === null ? "" : `${name}.toml`);
    say(this.#state, t(bench.onFile ? "bench-state-saved" : "bench-state-unsaved"));
    document.title = t("bench-page-title", { title });
    const { undoable, redoable } = bench.history;
    nameOf(this.#undo, undoable ? t("bench-undo-step", { step: undoable.label }) : t("bench-undo"), undoable !== undefined);
    nameOf(this.#redo, redoable ? t("bench-redo-step", { step: redoable.label }) : t("bench-redo"), redoable !== undefined);
    const { may_write } = connection.health.value;
    attribute(this.#save, "disabled", !may_write || bench.onFile);
    attribute(this.#save, "title", may_write ? null : t("bench-read-only"));
  }

  #shelf(): void {
    const { bench, files } = this.parts;
    void openShelf(files, bench.document.value.name, bench.onGone);
  }

  /** Everything that has no room in the bar. */
  #more(): void {
    const { bench, files, connection, compare } = this.parts;
    const writes: Item[] = [
      { label: t("bench-save-as"), run: () => void files.saveAs() },
      { label: t("bench-duplicate"), run: () => void files.duplicate() },
      { label: t("bench-rename"), run: () => void files.rename() },
    ];
    const items: Item[] = [
      { label: t("bench-patterns"), run: () => this.#shelf() },
      ...(connection.health.value.may_write ? writes : []),
      ...(connection.health.value.may_write ? [{ label: t("bench-photo"), run: () => void files.photo() }] : []),
      { label: t("bench-compare"), run: compare },
      { label: t("bench-nest"), run: () => openNest(bench) },
      { label: t("bench-take-away"), run: () => openPacket(bench) },
      { label: t("bench-print"), run: () => window.print() },
      { label: t("bench-guide"), run: openGuide },
      { label: t(light.value === "dark" ? "bench-to-light" : "bench-to-dark"), run: switchLight },
      ...this.#languages(connection.health.value),
    ];
    const list = el("ul", { class: "menu" });
    fill(
      list,
      ...items.map(({ label, run, language: lang }) => {
        const press = (): void => {
          dialog.close();
          run();
        };
        return el("li", {}, el("button", { type: "button", class: "quiet", lang, onclick: press }, label));
      }),
    );
    list.addEventListener("keydown", (event) => walk(event, [...list.querySelectorAll("button")]));
    const dialog = openDialog(t("bench-more"), "menu-dialog", list);
  }

  #languages(health: Health): Item[] {
    return health.languages
      .filter(({ tag }) => tag !== language())
      .map(({ tag, name }) => ({ label: name, language: tag, run: () => this.parts.speak(tag) }));
  }
}

function sign(which: Sign, act: () => void): HTMLButtonElement {
  return el("button", { type: "button", class: "quiet sign", onclick: act }, icon(which));
}

function nameOf(button: HTMLButtonElement, name: string, able: boolean): void {
  attribute(button, "aria-label", name);
  attribute(button, "title", name);
  attribute(button, "disabled", !able);
}

/** The arrow keys go through a list of buttons. */
function walk(event: KeyboardEvent, buttons: readonly HTMLButtonElement[]): void {
  const at = buttons.findIndex((button) => button === document.activeElement);
  const count = buttons.length;
  const places: Record<string, number> = { ArrowDown: (at + 1) % count, ArrowUp: (at + count - 1) % count, Home: 0, End: count - 1 };
  const place = places[event.key];
  if (place === undefined) return;
  event.preventDefault();
  buttons[place]?.focus();
}
