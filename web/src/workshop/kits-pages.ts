/** The pages Kits and buying, and Price: both work on one kits file. */

import type { PatternName, PlanBooking, PlanName, PlanShown, Stock } from "../api/types.ts";
import { el, type Child } from "../dom/element.ts";
import { json } from "../server/client.ts";
import { t } from "../words/texts.ts";
import { Desk } from "./desk.ts";
import type { Frame } from "./frame.ts";
import { kitsForm, patternChoices, priceForm } from "./kits-form.ts";
import { Paper } from "./paper.ts";
import { PlanFields } from "./plan-fields.ts";
import { PlanPage } from "./plan-page.ts";
import type { ShelfKeeper } from "./shelf.ts";
import { labelChoice, together } from "./together.ts";
import { textAt } from "./values.ts";

/** What the pages of plans stand on. */
export interface Around {
  readonly frame: Frame;
  readonly keeper: ShelfKeeper;
  readonly stock: Stock;
  /** Whose drafts the browser keeps. */
  readonly folder: string;
}

export function kitsPages({ frame, keeper, stock, folder }: Around): { kits: PlanPage; price: PlanPage } {
  let patterns: readonly PatternName[] = [];
  let plans: readonly PlanName[] = [];
  const ready = async (): Promise<void> => {
    [patterns, plans] = await Promise.all([json<PatternName[]>("GET", "/api/patterns"), paper.list(), keeper.look()]);
  };
  const fresh = async (): Promise<string> => {
    const [first] = patternChoices(patterns)[0] ?? ["pattern.toml"];
    return [`title = ${JSON.stringify(t("bench-plan-new-kits"))}`, "", "[[students]]", `pattern = ${JSON.stringify(first)}`, "count = 6", ""].join("\n");
  };
  const paper = new Paper("kits", folder, fresh);
  const desk = new Desk(frame, "kits", paper);
  const fields = new PlanFields(paper, (act) => void frame.attempt(act));
  const parts = { paper, fields, patterns: () => patterns, colours: () => [...stock.colours] };
  const kits = new PlanPage(desk, {
    heading: t("bench-shop-kits"),
    form: (sheet) => [...kitsForm(parts, sheet), together(desk, plans, keeper.shelf.value?.orders ?? [])].filter((row) => row !== undefined),
    sheets: [labelChoice(desk)],
    leaves: ["kits", "shopping", "cutting"],
    first: (shown) => booking(shown, { frame, keeper, desk }),
    ready,
  });
  const price = new PlanPage(desk, { heading: t("bench-shop-price"), form: (sheet) => priceForm(parts, sheet), leaves: ["price"], ready });
  return { kits, price };
}

/** What was bought or cut is booked when the maker says so, and not before. */
function booking({ bought, cut }: PlanShown, { frame, keeper, desk }: { frame: Frame; keeper: ShelfKeeper; desk: Desk }): Child[] {
  if (!keeper.shelf.value?.there) return [el("p", { class: "hint" }, t("bench-plan-no-shelf"))];
  const book = (kind: "bought" | "cut", { items, changes }: PlanBooking) => async (): Promise<void> => {
    const note = textAt(desk.paper.sheet.value?.values, "title");
    await keeper.act({ do: "book", kind, note, items, changes }, t(`bench-shop-kind-${kind}`));
    await desk.work(true);
    const back = (): void => void frame.attempt(async () => {
      await keeper.undo();
      await desk.work(true);
    });
    frame.notices.tell("booked", t(`bench-plan-booked-${kind}`), [{ label: t("bench-shop-take-back"), run: back }]);
  };
  const press = (kind: "bought" | "cut", what: PlanBooking): HTMLElement =>
    el("button", { type: "button", class: "quiet", onclick: () => void frame.attempt(book(kind, what)) }, t(`bench-plan-book-${kind}`));
  return [el("div", { class: "row wrap" }, bought && press("bought", bought), cut && press("cut", cut))];
}
