/** The page: everything in its place. */

import type { Finding, Stock } from "../api/types.ts";
import { CompareView } from "../compare/compare.ts";
import { el } from "../dom/element.ts";
import { CutsView, FiguresView } from "../findings/cuts.ts";
import { FindingsView, Worst } from "../findings/findings.ts";
import { Form } from "../form/form.ts";
import { said } from "../form/said.ts";
import { Files } from "../patterns/files.ts";
import type { Connection } from "../server/connection.ts";
import type { Bench } from "../state/bench.ts";
import { ChartView } from "../views/chart.ts";
import { GalleryView } from "../views/gallery.ts";
import { RoundView } from "../views/round/round.ts";
import { TextView } from "../views/text.ts";
import { language, t } from "../words/texts.ts";
import { Announcer } from "./announcer.ts";
import { Bar } from "./bar.ts";
import { tellLeftOpen } from "./left-open.ts";
import { light } from "./light.ts";
import { Notices } from "./notices.ts";
import { Panes } from "./panes.ts";
import { Tabs } from "./tabs.ts";

/** Views on which the place of a finding is marked. */
const SHOW_PLACES = new Set(["round", "side", "chart"]);

export class Page {
  readonly notices = new Notices();
  readonly files: Files;
  readonly #tabs: Tabs;
  readonly #panes: Panes;
  readonly #form: Form;
  #frame = 0;
  #shelfUnread = false;

  constructor(
    private readonly bench: Bench,
    connection: Connection,
    stock: Stock,
    speak: (language: string) => void,
  ) {
    const body = el("div", { class: "page" });
    const compare = (): void => this.#show("compare");
    this.files = new Files(bench, this.notices, { compare, stock, mayWrite: () => connection.health.value.may_write });
    this.#form = new Form({
      source: () => bench.document.value.source,
      shown: () => bench.shown.value,
      busy: () => bench.busy,
      gone: () => bench.onGone(),
      undo: () => bench.undo(),
      edit: (change) => bench.edit(change),
      typing: (change) => bench.typing.set(change),
      materials: () => {
        const own = bench.shown.value?.materials ?? [];
        return [...own, ...stock.materials.filter(({ name }) => own.every((there) => there.name !== name))];
      },
      woods: () => stock.woods,
      colours: () => bench.shown.value?.colours ?? stock.colours,
    });
    const round = new RoundView(bench);
    const chart = new ChartView(bench);
    this.#tabs = new Tabs([
      round,
      new GalleryView("side", "side", bench, null),
      chart,
      new GalleryView("stages", "stage", bench, null),
      new GalleryView("templates", "template", bench, t("bench-templates-hint")),
      new CompareView(bench, () => this.files.list()),
      new TextView(bench, this.notices),
    ]);
    this.#panes = new Panes(body);
    const findings = new FindingsView(bench, (finding) => this.#showPlace(finding), (path) => this.#showField(path));
    const side = el(
      "aside",
      { class: "side-pane", tabindex: 0, "aria-label": t("bench-side-pane") },
      new FiguresView(bench).node,
      findings.node,
      new CutsView(bench).node,
    );
    const form = el("section", { class: "form-pane", "aria-label": t("bench-form") }, this.#form.node);
    const main = el("main", {}, form, el("section", { class: "view-pane", "aria-label": t("bench-picture") }, this.#tabs.node), side);
    const bar = new Bar({ bench, files: this.files, connection, compare, speak });
    const foot = el("footer", { class: "foot" }, new Worst(bench).node, this.#panes.node);
    body.append(bar.node, this.notices.node, main, foot, new Announcer(bench).node);
    document.body.replaceChildren(body);
    light.listen(() => {
      round.dye();
      chart.dye();
    });
    tellLeftOpen(bench, this.notices);
    this.#listen();
  }

  begin(): void {
    this.#tabs.begin();
  }

  #listen(): void {
    const { bench } = this;
    bench.shown.listen((shown) => {
      // Until a pattern that was opened is computed, the form holds the one before: nothing typed there is meant for this one.
      this.#form.node.inert = !shown;
      if (!shown) this.#form.forget();
      // While a hand moves, the figures come first and the form with the next frame.
      cancelAnimationFrame(this.#frame);
      if (bench.turn.moving) this.#frame = requestAnimationFrame(() => this.#fillIn());
      else this.#fillIn();
      if (shown) this.#tellShelf(shown.shelf_unread);
    });
    bench.problems.listen((problems) => {
      this.#form.complain(problems);
      const first = problems[0];
      if (!first) this.notices.drop("problems");
      else this.notices.tell("problems", t("bench-problems", { count: problems.length, first: language() === "en" ? first.message : said(first).replace(/\.$/, "") }), this.#mends(), "grave");
      if (first && !bench.shown.value) this.#show("text");
    });
    bench.refused.listen((refusal) => {
      if (!refusal) this.notices.drop("refused");
      else this.notices.tell("refused", [refusal.fault.what, refusal.fault.how_to_mend].filter(Boolean).join(" "), [], "grave");
    });
    document.addEventListener("keydown", (event) => this.#press(event));
  }

  #fillIn(): void {
    const shown = this.bench.shown.value;
    if (shown) this.#form.show(shown, this.bench.problems.value);
  }

  /** Says once that the maker's own measures are left out, until they are there again. */
  #tellShelf(unread: boolean): void {
    if (unread === this.#shelfUnread) return;
    this.#shelfUnread = unread;
    if (!unread) this.notices.drop("shelf");
    else this.notices.tell("shelf", t("bench-shop-unread"), [{ label: t("bench-shop-shelf"), run: () => location.assign("/workshop.html#shelf") }]);
  }

  #mends() {
    const undo = { label: t("bench-undo"), run: () => this.bench.undo() };
    const text = { label: t("bench-problems-text"), run: () => this.#show("text") };
    return this.bench.history.undoable ? [undo, text] : [text];
  }

  #show(view: string): void {
    this.#panes.show("picture");
    this.#tabs.show(view);
  }

  #showPlace(finding: Finding): void {
    if (!SHOW_PLACES.has(this.#tabs.current ?? "")) this.#tabs.show("round");
    this.bench.place.set(finding.place);
  }

  #showField(path: string): void {
    this.#panes.show("form");
    this.#form.focus(path);
  }

  #press(event: KeyboardEvent): void {
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
    const typing = event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement;
    const key = event.key.toLowerCase();
    const acts: Record<string, (() => void) | undefined> = {
      s: () => void this.files.save(),
      z: typing ? undefined : () => (event.shiftKey ? this.bench.redo() : this.bench.undo()),
      y: typing ? undefined : () => this.bench.redo(),
    };
    const act = acts[key];
    if (!act) return;
    event.preventDefault();
    act();
  }
}
