/** The page Shelf: what lies there, which moulds there are and who has them, what came and went. */

import type { Shelf, ShelfItem, ShelfMould, ShelfMovement, Stock } from "../api/types.ts";
import { attribute, el, fill, say } from "../dom/element.ts";
import { newId } from "../form/context.ts";
import { language, number, t } from "../words/texts.ts";
import type { Frame } from "./frame.ts";
import type { WorkshopPage } from "./pages.ts";
import { TABLE, type ShelfKeeper } from "./shelf.ts";
import { askBooking, askItem, askLending, askMould } from "./shelf-dialogs.ts";
import { table } from "./table.ts";

/** Movements shown before one asks for more. */
const FEW_MOVEMENTS = 10;

export class ShelfPage implements WorkshopPage {
  readonly node = el("div", { class: "shop-body" });
  readonly #undo = el("button", { type: "button", class: "quiet", onclick: () => void this.#back() });
  readonly #find = el("input", { type: "text", id: newId("find"), autocomplete: "off", oninput: () => void this.#look() });
  readonly #items = el("div", { class: "stack" });
  readonly #moulds = el("div", { class: "stack" });
  readonly #movements = el("div", { class: "stack" });
  readonly #file = el("input", { type: "file", accept: ".csv,text/csv", id: newId("csv"), class: "unseen", tabindex: -1, onchange: () => void this.#takeIn() });
  #all = false;

  constructor(
    private readonly frame: Frame,
    private readonly stock: Stock,
    private readonly keeper: ShelfKeeper,
  ) {
    this.keeper.shelf.listen((shelf) => shelf && this.#show(shelf));
    document.addEventListener("keydown", (event) => this.#press(event));
  }

  enter = (): Promise<void> => this.keeper.look();

  #show(shelf: Shelf): void {
    if (!shelf.there) {
      fill(this.node, el("h1", {}, t("bench-shop-shelf")), ...this.#beginning());
      return;
    }
    if (!this.node.contains(this.#items)) this.#lay();
    const last = this.keeper.undoable;
    say(this.#undo, last ? t("bench-undo-step", { step: last.label }) : t("bench-undo"));
    attribute(this.#undo, "disabled", last === undefined);
    this.#list();
    this.#listMoulds(shelf.moulds);
    this.#listMovements(shelf.movements);
  }

  /** There is no shelf; it is made only when that is asked for. */
  #beginning(): HTMLElement[] {
    const make = (): Promise<void> => this.keeper.act({ do: "begin" }, "");
    return [
      el("p", {}, t("bench-shop-none")),
      el("div", { class: "row wrap" }, el("button", { type: "button", onclick: () => void this.frame.attempt(make) }, t("bench-shop-begin"))),
    ];
  }

  #lay(): void {
    const add = (): void => askItem(this.keeper, this.stock, null, this.#colours());
    const mould = (): void => askMould(this.keeper, null);
    fill(
      this.node,
      el("h1", {}, t("bench-shop-shelf")),
      el(
        "div",
        { class: "row wrap" },
        el("button", { type: "button", onclick: add }, t("bench-shop-new")),
        this.#undo,
        el("a", { class: "button quiet", href: TABLE, download: "shelf.csv" }, t("bench-shop-csv-out")),
        el("button", { type: "button", class: "quiet", onclick: () => this.#file.click() }, t("bench-shop-csv-in")),
        el("label", { for: this.#file.id, class: "unseen" }, t("bench-shop-csv-in")),
        this.#file,
      ),
      el("div", { class: "stack tight find" }, el("label", { for: this.#find.id }, t("bench-shop-find")), this.#find),
      this.#items,
      el("h2", {}, t("bench-shop-moulds")),
      el("div", { class: "row wrap" }, el("button", { type: "button", class: "quiet", onclick: mould }, t("bench-shop-mould-new"))),
      this.#moulds,
      el("h2", {}, t("bench-shop-history")),
      this.#movements,
    );
  }

  async #look(): Promise<void> {
    this.keeper.find = this.#find.value;
    await this.frame.attempt(() => this.keeper.look());
  }

  #list(): void {
    const { items, found, all } = this.keeper.shelf.value ?? { items: [], found: 0, all: 0 };
    const columns = [
      { head: t("bench-shop-name") },
      { head: t("bench-shop-material") },
      { head: t("bench-shop-count"), figures: true },
      { head: t("bench-shop-length"), figures: true },
      { head: t("bench-shop-measured") },
      { head: t("bench-shop-bought") },
      { head: t("bench-shop-acts") },
    ];
    const more = found - items.length;
    const said = all === 0 ? t("bench-shop-empty") : t("bench-shop-found", { count: found, all });
    fill(
      this.#items,
      el("p", { class: "hint", role: "status" }, said),
      items.length > 0 && table(t("bench-shop-shelf"), columns, items.map((item) => this.#row(item))),
      more > 0 && el("p", { class: "hint" }, t("bench-shop-more", { count: more })),
    );
  }

  #row(item: ShelfItem) {
    const measured = [item.width_said && t("bench-shop-wide", { width: item.width_said }), item.thickness_said && t("bench-shop-thick", { thickness: item.thickness_said })];
    const removed = t("bench-shop-did-remove", { name: item.name });
    const remove = (): Promise<void> => this.keeper.act({ do: "remove", item: item.name }, removed);
    const acts = el(
      "div",
      { class: "row wrap" },
      act(t("bench-shop-book"), item.name, () => askBooking(this.keeper, item)),
      act(t("bench-shop-change"), item.name, () => askItem(this.keeper, this.stock, item, this.#colours())),
      act(t("bench-shop-remove"), item.name, () => void this.#attempt(remove, removed)),
    );
    return [
      two(item.name, item.note),
      two(item.material_label, item.colour === "natural" ? "" : item.colour_label),
      item.low ? el("span", {}, number(item.count), el("span", { class: "grade care" }, t("bench-shop-low"))) : number(item.count),
      item.length_said ?? t("bench-shop-whole-piece"),
      measured.filter(Boolean).join(", "),
      bought(item),
      acts,
    ];
  }

  #listMoulds(moulds: readonly ShelfMould[]): void {
    const columns = [{ head: t("bench-shop-name") }, { head: t("bench-shop-where") }, { head: t("bench-shop-fits") }, { head: t("bench-shop-acts") }];
    const rows = moulds.map((mould) => {
      const home = (): Promise<void> => this.keeper.act({ do: "back", mould: mould.name }, t("bench-shop-did-back", { name: mould.name }));
      const moved = mould.lent_to === null
        ? act(t("bench-shop-lend"), mould.name, () => askLending(this.keeper, mould))
        : act(t("bench-shop-back-again"), mould.name, () => void this.#attempt(home, t("bench-shop-did-back", { name: mould.name })));
      const removed = t("bench-shop-did-remove", { name: mould.name });
      const remove = (): Promise<void> => this.keeper.act({ do: "remove-mould", mould: mould.name }, removed);
      const acts = el(
        "div",
        { class: "row wrap" },
        moved,
        act(t("bench-shop-change"), mould.name, () => askMould(this.keeper, mould)),
        mould.lent_to === null && act(t("bench-shop-remove"), mould.name, () => void this.#attempt(remove, removed)),
      );
      return [two(mould.name, mould.note), whereabouts(mould), mould.patterns, acts];
    });
    fill(this.#moulds, rows.length > 0 ? table(t("bench-shop-moulds"), columns, rows) : el("p", { class: "hint" }, t("bench-shop-no-moulds")));
  }

  #listMovements(movements: readonly ShelfMovement[]): void {
    const shown = this.#all ? movements : movements.slice(0, FEW_MOVEMENTS);
    const columns = [{ head: t("bench-shop-when") }, { head: t("bench-shop-what") }, { head: t("bench-shop-changes") }, { head: t("bench-shop-for") }, { head: t("bench-shop-acts") }];
    const rows = shown.map((movement) => {
      const label = t("bench-shop-did-undo", { kind: t(`bench-shop-kind-${movement.kind}`), when: when(movement.at) });
      const undo = (): Promise<void> => this.keeper.act({ do: "undo", movement: movement.id }, label);
      const changed = movement.changes.map(({ item, count }) => t("bench-shop-change-of", { item, count: signed(count) }));
      const changes = [movement.mould !== null && t("bench-shop-change-mould", { name: movement.mould }), ...changed].filter(Boolean).join("; ");
      const acts = movement.undone
        ? t("bench-shop-undone")
        : act(t("bench-shop-take-back"), `${t(`bench-shop-kind-${movement.kind}`)}, ${when(movement.at)}`, () => void this.#attempt(undo, label));
      return [when(movement.at), t(`bench-shop-kind-${movement.kind}`), changes, movement.note, acts];
    });
    const all = (): void => {
      this.#all = true;
      this.#listMovements(movements);
    };
    fill(
      this.#movements,
      rows.length > 0 ? table(t("bench-shop-history"), columns, rows) : el("p", { class: "hint" }, t("bench-shop-no-history")),
      shown.length < movements.length && el("button", { type: "button", class: "quiet", onclick: all }, t("bench-shop-history-all", { count: movements.length })),
    );
  }

  #colours(): string[] {
    return [...new Set(["natural", ...this.stock.colours.map(({ name }) => name), ...(this.keeper.shelf.value?.colours ?? [])])];
  }

  async #attempt(work: () => Promise<void>, done: string): Promise<void> {
    if (await this.frame.attempt(work)) this.frame.tell(done);
  }

  #back(): Promise<void> {
    const label = this.keeper.undoable?.label ?? "";
    return this.#attempt(() => this.keeper.undo(), t("bench-shop-took-back", { step: label }));
  }

  async #takeIn(): Promise<void> {
    const [file] = this.#file.files ?? [];
    this.#file.value = "";
    if (!file) return;
    await this.#attempt(async () => this.keeper.act({ do: "take-in", csv: await file.text() }, t("bench-shop-csv-in")), t("bench-shop-taken-in", { name: file.name }));
  }

  #press(event: KeyboardEvent): void {
    const typing = event.target instanceof HTMLInputElement;
    if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z" || typing || !this.node.isConnected) return;
    if (document.querySelector("dialog[open]")) return;
    event.preventDefault();
    void this.#back();
  }
}

function act(label: string, of: string, run: () => void): HTMLButtonElement {
  return el("button", { type: "button", class: "quiet", "aria-label": t("bench-shop-act-of", { act: label, of }), onclick: run }, label);
}

/** A word, and what is said of it below. */
function two(first: string, second: string): HTMLElement {
  return el("span", {}, el("span", { class: "first" }, first), second === "" ? null : el("span", { class: "fact" }, second));
}

function bought(item: ShelfItem): HTMLElement | string {
  if (item.holds === 0) return "";
  const unit = t("bench-shop-unit-of", { unit: item.unit_label, holds: item.holds });
  const priced = item.price === "" ? unit : t("bench-shop-unit-priced", { unit, price: amount(item.price) });
  return two(priced, item.bought_from);
}

/** An amount as its reader writes it; the store keeps it with a point. */
function amount(price: string): string {
  return new Intl.NumberFormat(language(), { minimumFractionDigits: 2 }).format(Number(price));
}

function whereabouts({ place, lent_to, due }: ShelfMould): HTMLElement | string {
  if (lent_to === null) return place === "" ? t("bench-shop-here") : place;
  const back = due === null ? "" : t("bench-shop-due-on", { day: new Date(`${due}T12:00`).toLocaleDateString(language(), { dateStyle: "medium" }) });
  return two(t("bench-shop-lent", { to: lent_to }), back);
}

/** The store writes the time of Greenwich; here it is that of the clock on the wall. */
function when(at: string): string {
  const time = new Date(at);
  return Number.isNaN(time.getTime()) ? at : time.toLocaleString(language(), { dateStyle: "medium", timeStyle: "short" });
}

function signed(count: number): string {
  return count > 0 ? `+${number(count)}` : `−${number(-count)}`;
}
