/** The form of a kits file: which patterns, how many students, in which colours; and what prices are reckoned with. */

import type { ColourName, Edit, PatternName } from "../api/types.ts";
import { el } from "../dom/element.ts";
import { t } from "../words/texts.ts";
import type { Choice } from "./fields.ts";
import type { Paper, Sheet } from "./paper.ts";
import { decimal, group, money, plain, whole, type PlanFields } from "./plan-fields.ts";
import { listAt, pairsAt, textAt, textsAt } from "./values.ts";

/** What can lie ready, by its word in the file. */
const READY = ["staves cut", "staves tapered", "rings", "handle", "ears", "base"] as const;

export function readyChoices(): readonly Choice[] {
  return READY.map((word): Choice => [word, t(`bench-plan-ready-${word.replace(" ", "-")}`)]);
}

export function patternChoices(patterns: readonly PatternName[]): readonly Choice[] {
  return patterns.filter(({ reads }) => reads).map(({ name, title }): Choice => [`${name}.toml`, title]);
}

export interface KitsParts {
  readonly paper: Paper;
  readonly fields: PlanFields;
  readonly patterns: () => readonly PatternName[];
  readonly colours: () => readonly ColourName[];
}

export function kitsForm(parts: KitsParts, { values }: Sheet): HTMLElement[] {
  const { fields, paper, patterns } = parts;
  const groups = listAt(values, "students");
  const first = patternChoices(patterns())[0]?.[0] ?? "";
  const add: Edit = { do: "insert", path: "students", at: groups.length + 1, value: { pattern: first, count: 1 } };
  return [
    fields.text(t("bench-plan-title"), "title", textAt(values, "title"), plain),
    fields.text(t("bench-plan-needed"), "needed", textAt(values, "needed"), plain, { type: "date" }),
    ...groups.map((own, place) => students(parts, own, place + 1)),
    fields.act(t("bench-plan-students-add"), "students-add", () => paper.change([add], t("bench-plan-students-add"))),
    el(
      "details",
      { class: "rest" },
      el("summary", {}, t("bench-plan-delivery")),
      fields.text(t("bench-plan-delivery-days"), "delivery_days", textAt(values, "delivery_days"), whole, { placeholder: "7" }),
      fields.text(t("bench-plan-dye-days"), "dye_days", textAt(values, "dye_days"), whole, { placeholder: "7" }),
      fields.text(t("bench-plan-kerf"), "kerf", textAt(values, "kerf"), plain, { placeholder: "1 mm" }),
    ),
  ];
}

function students({ fields, paper, patterns, colours }: KitsParts, own: unknown, number: number): HTMLElement {
  const path = `students[${number}]`;
  const pairs = pairsAt(own, "colours");
  const names = colours().map(({ name, label }): Choice => [name, label]);
  const free = names.find(([name]) => !pairs.some(([from]) => from === name));
  const rest = (without: string): Record<string, string> => Object.fromEntries(pairs.filter(([from]) => from !== without));
  const write = (next: Record<string, string>, label: string): Promise<void> =>
    paper.change([Object.keys(next).length > 0 ? { do: "set", path: `${path}.colours`, value: next } : { do: "remove", path: `${path}.colours` }], label);
  const rows = pairs.map(([from, to], place) => {
    const [one, other] = [[from, t("bench-plan-colour-from")], [to, t("bench-plan-colour-to")]].map(([value = "", label = ""], which) => {
      const select = el("select", { id: `plan-${number}-colour-${place}-${which}`, "aria-label": label }, ...names.map(([name, said]) => el("option", { value: name }, said)));
      if (!names.some(([name]) => name === value)) select.append(el("option", { value }, value));
      select.value = value;
      return select;
    }) as [HTMLSelectElement, HTMLSelectElement];
    const change = (): void => fields.run(() => write({ ...rest(from), [one.value]: other.value }, t("bench-plan-colours")));
    for (const select of [one, other]) select.addEventListener("change", change);
    const drop = fields.act(t("bench-plan-drop"), `${path}-colour-${place}-drop`, () => write(rest(from), t("bench-plan-colours")), { "aria-label": t("bench-plan-colour-drop", { from }) });
    return el("div", { class: "row" }, one, el("span", { "aria-hidden": "true" }, "→"), other, drop);
  });
  const label = t("bench-plan-students", { number });
  return group(
    label,
    fields.choice(t("bench-plan-pattern"), `${path}.pattern`, textAt(own, "pattern"), patternChoices(patterns())),
    fields.text(t("bench-plan-count"), `${path}.count`, textAt(own, "count") || "1", whole, { inputmode: "numeric" }),
    ...rows,
    free && fields.act(t("bench-plan-colour-add"), `${path}-colour-add`, () => write({ ...rest(""), [free[0]]: free[0] }, t("bench-plan-colours"))),
    fields.ticks(t("bench-plan-ready"), `${path}.ready`, textsAt(own, "ready"), readyChoices()),
    fields.act(t("bench-plan-students-drop"), `${path}-drop`, () => paper.change([{ do: "remove", path }], label), { "aria-label": `${t("bench-plan-students-drop")}: ${label}` }),
  );
}

const MONEY = ["wage", "overhead", "mould", "packing", "step", "travel", "room", "target", "fee"] as const;
const SHARES = ["waste", "margin", "retail", "venue"] as const;
const TIMES = ["office_minutes", "kit_minutes", "teaching_hours"] as const;

export function priceForm({ fields }: KitsParts, { values }: Sheet): HTMLElement[] {
  const row = (key: string, read: typeof money): HTMLElement =>
    fields.text(t(`bench-price-${key.replace("_", "-")}`), `price.${key}`, textAt(values, `price.${key}`), read, { inputmode: "decimal" });
  return [
    fields.text(t("bench-price-currency"), "price.currency", textAt(values, "price.currency"), plain),
    group(t("bench-price-money"), ...MONEY.map((key) => row(key, money))),
    group(t("bench-price-shares"), ...SHARES.map((key) => row(key, money))),
    group(t("bench-price-times"), ...TIMES.map((key) => row(key, decimal))),
  ];
}
