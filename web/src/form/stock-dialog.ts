/** Choosing a material by sight: its colour, and its cut at about true size. What fits stands first. */

import type { Edit, EditValue, MaterialName } from "../api/types.ts";
import { el, say } from "../dom/element.ts";
import { fileName, openDialog } from "../shell/dialog.ts";
import { t } from "../words/texts.ts";
import { newId, set } from "./context.ts";

export interface StockQuestion {
  readonly heading: string;
  /** Kinds that fit; none if all do. */
  readonly kinds: readonly string[];
  readonly current: string;
  readonly materials: readonly MaterialName[];
  /** Takes a material by its name; what must be written first comes with it. */
  readonly take: (name: string, label: string, before: readonly Edit[]) => void;
}

/** The cut of a strip at about true size: browsers take 96 pixels for an inch. */
export function cutOf({ width_mm, thickness_mm, round, hex }: MaterialName): HTMLElement {
  const cut = el("span", { class: round ? "cut round" : "cut", "aria-hidden": "true" });
  cut.style.width = `${width_mm}mm`;
  cut.style.height = `${thickness_mm}mm`;
  cut.style.backgroundColor = hex;
  return el("span", { class: "cut-room" }, cut);
}

export function openStock(question: StockQuestion): void {
  const { heading, kinds, current, materials, take } = question;
  const fits = ({ kind }: MaterialName): boolean => kinds.length === 0 || kinds.includes(kind);
  const row = (material: MaterialName): HTMLElement => {
    const pick = (): void => {
      dialog.close();
      take(material.name, material.label, []);
    };
    const here = material.name === current;
    return el(
      "li",
      {},
      el(
        "button",
        { type: "button", class: "quiet stock", "aria-pressed": String(here), onclick: pick },
        cutOf(material),
        el("span", {}, material.label),
        el("span", { class: "fact" }, material.size),
      ),
    );
  };
  const list = (of: readonly MaterialName[]): HTMLElement[] =>
    [...Map.groupBy(of, ({ kind_label }) => kind_label)].map(([kind, each]) => el("section", {}, el("h3", {}, kind), el("ul", { class: "stocks" }, ...each.map(row))));
  const others = materials.filter((material) => !fits(material));
  const rest = el("details", { class: "rest" }, el("summary", {}, t("bench-stock-all", { count: others.length })), ...list(others));
  const own = ownForm(question, () => dialog.close());
  const dialog = openDialog(
    t("bench-stock-heading", { what: heading }),
    "wide",
    el("p", { class: "hint" }, t("bench-stock-hint")),
    ...list(materials.filter(fits)),
    own,
    others.length > 0 ? rest : el("span", {}),
  );
  dialog.querySelector<HTMLElement>("[aria-pressed=true]")?.focus();
}

/** A material of the maker's own, as measured, like one of the catalogue in all else. */
function ownForm({ kinds, current, materials, take }: StockQuestion, close: () => void): HTMLElement {
  const input = (label: string, value: string): readonly [HTMLElement, HTMLInputElement] => {
    const field = el("input", { type: "text", id: newId("own"), autocomplete: "off", spellcheck: "false", value, required: true });
    return [el("div", { class: "stack tight" }, el("label", { for: field.id }, t(label)), field), field];
  };
  const [nameRow, name] = input("bench-own-name", "");
  const [widthRow, width] = input("bench-own-width", "");
  const [thicknessRow, thickness] = input("bench-own-thickness", "");
  const like = el("select", { id: newId("own") });
  for (const material of materials.filter(({ kind }) => kinds.length === 0 || kinds.includes(kind))) {
    like.append(el("option", { value: material.name }, material.label));
  }
  if (materials.some((material) => material.name === current)) like.value = current;
  const trouble = el("p", { class: "wrong", role: "alert" });
  const make = (event: SubmitEvent): void => {
    event.preventDefault();
    const word = fileName(name.value);
    if (materials.some((material) => material.name === word)) {
      say(trouble, t("bench-own-taken", { name: word }));
      return;
    }
    const value: EditValue = { like: like.value, width: width.value.trim(), thickness: thickness.value.trim() };
    close();
    take(word, name.value.trim(), [set(`materials.${word}`, value)]);
  };
  const form = el(
    "form",
    { class: "own-stock", onsubmit: make },
    nameRow,
    el("div", { class: "stack tight" }, el("label", { for: like.id }, t("bench-own-like")), like),
    widthRow,
    thicknessRow,
    trouble,
    el("button", { type: "submit" }, t("bench-own-make")),
  );
  return el("details", { class: "rest" }, el("summary", {}, t("bench-own")), el("p", { class: "hint" }, t("bench-own-hint")), form);
}
