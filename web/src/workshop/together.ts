/** What is bought and cut for together with a plan: other plans of the folder, and orders. */

import type { LabelWord, PlanName, ShelfOrder } from "../api/types.ts";
import { el } from "../dom/element.ts";
import { newId } from "../form/context.ts";
import { t } from "../words/texts.ts";
import type { Desk } from "./desk.ts";
import { group } from "./plan-fields.ts";

/** Boxes to tick; nothing where there is nothing else to plan for. */
export function together(desk: Desk, plans: readonly PlanName[], orders: readonly ShelfOrder[]): HTMLElement | undefined {
  const others = plans.filter(({ name }) => name !== desk.paper.sheet.value?.name);
  const here = { plans: others.map(({ name }) => name), orders: orders.map(({ name }) => name) };
  // What is gone from the folder, or is now the plan itself, is not planned for any more.
  const kept = (kind: keyof typeof here): string[] => desk.beside[kind].filter((name) => here[kind].includes(name));
  desk.beside = { plans: kept("plans"), orders: kept("orders") };
  const tick = (kind: keyof typeof here, name: string, said: string): HTMLElement => {
    const box = el("input", { type: "checkbox", id: `beside-${kind}-${here[kind].indexOf(name)}`, checked: desk.beside[kind].includes(name) });
    box.addEventListener("change", () => {
      const rest = desk.beside[kind].filter((own) => own !== name);
      desk.beside = { ...desk.beside, [kind]: box.checked ? [...rest, name] : rest };
      void desk.frame.attempt(() => desk.work(true));
    });
    return el("label", { class: "tick" }, box, said);
  };
  const boxes = [
    ...others.map(({ name, title }) => tick("plans", name, title)),
    ...orders.map((order) => tick("orders", order.name, told(order))),
  ];
  return boxes.length > 0 ? group(t("bench-plan-together"), el("p", { class: "hint" }, t("bench-plan-together-hint")), ...boxes) : undefined;
}

/** An order, with the day on which its material is needed if it has one. */
function told({ name, count, needed }: ShelfOrder): string {
  const order = t("bench-plan-order", { name, count });
  return needed === null ? order : t("bench-plan-order-needed", { order, day: needed });
}

const LABELS = ["letter-10", "letter-6", "a4-4x2in", "a4-10", "a4-8", "a4-12"] as const satisfies readonly LabelWord[];

/** Which sheets of labels are set with the others. */
export function labelChoice(desk: Desk): HTMLElement {
  const usual = el("option", { value: "" }, t("bench-plan-labels-usual"));
  const select = el("select", { id: newId("labels") }, usual, ...LABELS.map((word) => el("option", { value: word }, t(`bench-plan-labels-${word}`))));
  select.addEventListener("change", () => {
    desk.labels = LABELS.find((word) => word === select.value) ?? null;
  });
  return el("div", { class: "row" }, el("label", { for: select.id }, t("bench-plan-labels")), select);
}
