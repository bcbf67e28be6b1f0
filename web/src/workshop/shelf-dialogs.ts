/** The dialogs of the shelf: something new or changed, what came and went, moulds and who has them. */

import type { MovementKind, ShelfItem, ShelfMould, Stock } from "../api/types.ts";
import { el } from "../dom/element.ts";
import { newId } from "../form/context.ts";
import { t } from "../words/texts.ts";
import { ask, choiceField, countField, textField, type Choice } from "./fields.ts";
import { textOf, type ShelfKeeper } from "./shelf.ts";

/** Asks for something new on the shelf, or for what is said of something there. */
export function askItem(keeper: ShelfKeeper, stock: Stock, item: ShelfItem | null, colours: readonly string[]): void {
  const text = item ? textOf(item) : { name: "", material: "", colour: "natural", count: 0, length: "", width: "", thickness: "", unit: "", holds: 0, price: "", bought_from: "", reorder: 0, note: "" };
  const groups = [...Map.groupBy(stock.materials, ({ kind_label }) => kind_label)].map(
    ([kind, each]) => [kind, each.map(({ name, label, size }): Choice => [name, `${label} – ${size}`])] as const,
  );
  const known = el("datalist", { id: newId("colours") }, ...colours.map((colour) => el("option", { value: colour })));
  const name = textField(t("bench-shop-name"), text.name, { required: true, readonly: item !== null }, t(item ? "bench-shop-name-kept" : "bench-shop-name-hint"));
  const material = choiceField(t("bench-shop-material"), text.material || (stock.materials[0]?.name ?? ""), groups);
  const colour = textField(t("bench-shop-colour"), text.colour, { list: known.id });
  const count = countField(t("bench-shop-count"), text.count);
  const length = textField(t("bench-shop-length"), text.length, {}, t("bench-shop-length-hint"));
  const width = textField(t("bench-shop-width"), text.width, {}, t("bench-shop-measured-hint"));
  const thickness = textField(t("bench-shop-thickness"), text.thickness);
  const unit = textField(t("bench-shop-unit"), text.unit, {}, t("bench-shop-unit-hint"));
  const holds = countField(t("bench-shop-holds"), text.holds);
  const price = textField(t("bench-shop-unit-price"), text.price, { inputmode: "decimal" });
  const from = textField(t("bench-shop-from"), text.bought_from);
  const reorder = countField(t("bench-shop-reorder"), text.reorder);
  const note = textField(t("bench-shop-note"), text.note);
  const done = (): Promise<void> => {
    const said = {
      name: name.value(), material: material.value(), colour: colour.value(), count: Number(count.value()),
      length: length.value(), width: width.value(), thickness: thickness.value(),
      unit: unit.value(), holds: Number(holds.value()), price: price.value(),
      bought_from: from.value(), reorder: Number(reorder.value()), note: note.value(),
    };
    return keeper.act({ do: "put", item: said, new: item === null }, t(item ? "bench-shop-did-change" : "bench-shop-did-put", { name: said.name }));
  };
  const pair = (...rows: readonly HTMLElement[]): HTMLElement => el("div", { class: "pairs" }, ...rows);
  ask({
    heading: item ? t("bench-shop-change-heading", { name: item.name }) : t("bench-shop-new-heading"),
    button: t(item ? "bench-shop-change" : "bench-shop-put"),
    fields: [
      name.row, material.row, known,
      pair(colour.row, length.row, ...(item ? [] : [count.row])),
      pair(width.row, thickness.row),
      pair(unit.row, holds.row, price.row, from.row, reorder.row),
      note.row,
    ],
    done,
  });
}

const KINDS = ["bought", "cut", "counted"] as const satisfies readonly MovementKind[];

/** Asks what came or went of an item. */
export function askBooking(keeper: ShelfKeeper, { name, count: there }: ShelfItem): void {
  const kind = choiceField(t("bench-shop-what"), "bought", [[null, KINDS.map((own): Choice => [own, t(`bench-shop-kind-${own}`)])]]);
  const count = countField(t("bench-shop-how-many"), 0, t("bench-shop-there-now", { count: there }));
  const note = textField(t("bench-shop-for"), "", {}, t("bench-shop-for-hint"));
  const done = (): Promise<void> => {
    const [own, many] = [kind.value() as MovementKind, Number(count.value())];
    const label = t("bench-shop-did-book", { name });
    if (own === "counted") return keeper.act({ do: "count", item: name, count: many }, label);
    return keeper.act({ do: "book", kind: own, note: note.value(), items: [], changes: [{ item: name, count: own === "cut" ? -many : many }] }, label);
  };
  ask({ heading: t("bench-shop-book-heading", { name }), button: t("bench-shop-book"), fields: [kind.row, count.row, note.row], done });
}

/** Asks for a mould, or for what is said of one. */
export function askMould(keeper: ShelfKeeper, mould: ShelfMould | null): void {
  const name = textField(t("bench-shop-name"), mould?.name ?? "", { required: true, readonly: mould !== null }, t("bench-shop-mould-hint"));
  const place = textField(t("bench-shop-place"), mould?.place ?? "");
  const patterns = textField(t("bench-shop-fits"), mould?.patterns ?? "", {}, t("bench-shop-fits-hint"));
  const note = textField(t("bench-shop-note"), mould?.note ?? "");
  const done = (): Promise<void> =>
    keeper.act(
      { do: "mould", name: name.value(), place: place.value(), patterns: patterns.value(), note: note.value() },
      t("bench-shop-did-change", { name: name.value() }),
    );
  ask({
    heading: mould ? t("bench-shop-change-heading", { name: mould.name }) : t("bench-shop-mould-new"),
    button: t(mould ? "bench-shop-change" : "bench-shop-mould-put"),
    fields: [name.row, place.row, patterns.row, note.row],
    done,
  });
}

/** Asks to whom a mould is lent. */
export function askLending(keeper: ShelfKeeper, { name }: ShelfMould): void {
  const to = textField(t("bench-shop-lend-to"), "", { required: true }, t("bench-shop-lend-hint"));
  const due = textField(t("bench-shop-due"), "", { type: "date" });
  const done = (): Promise<void> => keeper.act({ do: "lend", mould: name, to: to.value(), due: due.value() }, t("bench-shop-did-lend", { name }));
  ask({ heading: t("bench-shop-lend-heading", { name }), button: t("bench-shop-lend"), fields: [to.row, due.row], done });
}
