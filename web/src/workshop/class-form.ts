/** The form of a class: students, days with their hours, moulds. */

import type { Edit, PatternName } from "../api/types.ts";
import { el } from "../dom/element.ts";
import { newId } from "../form/context.ts";
import { t } from "../words/texts.ts";
import type { Choice } from "./fields.ts";
import { patternChoices, readyChoices } from "./kits-form.ts";
import type { Paper, Sheet } from "./paper.ts";
import { group, plain, whole, type PlanFields } from "./plan-fields.ts";
import { listAt, textAt, textsAt } from "./values.ts";

export interface ClassParts {
  readonly paper: Paper;
  readonly fields: PlanFields;
  readonly patterns: () => readonly PatternName[];
}

export function classForm(parts: ClassParts, { values }: Sheet): HTMLElement[] {
  const { fields, paper, patterns } = parts;
  const [students, days] = [listAt(values, "students"), listAt(values, "days")];
  const zones = el("datalist", { id: newId("zones") }, ...Intl.supportedValuesOf("timeZone").map((zone) => el("option", { value: zone })));
  const more: Edit = { do: "insert", path: "students", at: students.length + 1, value: { count: 1, hand: "learner" } };
  const last = days.at(-1);
  const day: Edit = { do: "insert", path: "days", at: days.length + 1, value: { date: after(textAt(last, "date")), hours: [...textsAt(last, "hours")] } };
  return [
    fields.text(t("bench-plan-title"), "title", textAt(values, "title"), plain),
    fields.choice(t("bench-plan-pattern"), "pattern", textAt(values, "pattern"), patternChoices(patterns())),
    el(
      "div",
      { class: "pairs" },
      fields.text(t("bench-class-moulds"), "moulds", textAt(values, "moulds"), whole, { inputmode: "numeric" }),
      fields.text(t("bench-class-drills"), "drills", textAt(values, "drills"), whole, { inputmode: "numeric" }),
    ),
    ...students.map((own, place) => studentsGroup(parts, own, place + 1)),
    fields.act(t("bench-plan-students-add"), "students-add", () => paper.change([more], t("bench-plan-students-add"))),
    ...days.map((own, place) => dayGroup(parts, own, place + 1)),
    fields.act(t("bench-class-day-add"), "days-add", () => paper.change([day], t("bench-class-day-add"))),
    zones,
    fields.text(t("bench-class-zone"), "zone", textAt(values, "zone"), plain, { list: zones.id }),
  ];
}

function studentsGroup({ fields, paper }: ClassParts, own: unknown, number: number): HTMLElement {
  const path = `students[${number}]`;
  const label = t("bench-plan-students", { number });
  const hands: Choice[] = [["learner", t("bench-class-learner")], ["practised", t("bench-class-practised")]];
  return group(
    label,
    fields.text(t("bench-plan-count"), `${path}.count`, textAt(own, "count"), whole, { inputmode: "numeric" }),
    fields.choice(t("bench-class-hand"), `${path}.hand`, textAt(own, "hand"), hands),
    fields.text(t("bench-class-from"), `${path}.from`, textAt(own, "from").replace(" ", "T"), (typed) => typed.replace("T", " "), { type: "datetime-local" }),
    fields.ticks(t("bench-plan-ready"), `${path}.ready`, textsAt(own, "ready"), readyChoices()),
    fields.act(t("bench-plan-students-drop"), `${path}-drop`, () => paper.change([{ do: "remove", path }], label), { "aria-label": `${t("bench-plan-students-drop")}: ${label}` }),
  );
}

function dayGroup({ fields, paper }: ClassParts, own: unknown, number: number): HTMLElement {
  const path = `days[${number}]`;
  const label = t("bench-class-day", { number });
  const hours = (typed: string): string[] => typed.split(/[,;]/).map((one) => one.trim().replaceAll("–", "-")).filter(Boolean);
  return group(
    label,
    fields.text(t("bench-class-date"), `${path}.date`, textAt(own, "date"), plain, { type: "date" }),
    fields.text(t("bench-class-hours"), `${path}.hours`, textsAt(own, "hours").join(", "), hours, { placeholder: "09:00-12:00, 13:00-17:00" }),
    el(
      "div",
      { class: "pairs" },
      fields.text(t("bench-class-times"), `${path}.times`, textAt(own, "times"), whole, { inputmode: "numeric", placeholder: "1" }),
      fields.text(t("bench-class-every"), `${path}.every`, textAt(own, "every"), whole, { inputmode: "numeric", placeholder: "7" }),
    ),
    fields.act(t("bench-class-day-drop"), `${path}-drop`, () => paper.change([{ do: "remove", path }], label), { "aria-label": `${t("bench-class-day-drop")}: ${label}` }),
  );
}

/** The day after one, or a day two weeks ahead where there is none. */
export function after(date: string): string {
  const day = new Date(`${date}T12:00:00Z`);
  const next = Number.isNaN(day.getTime()) ? new Date(Date.now() + 14 * 86_400_000) : new Date(day.getTime() + 86_400_000);
  return next.toISOString().slice(0, 10);
}
