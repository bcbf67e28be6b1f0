/** A step that mends a finding: what it does, what of the maker's own it changes, and what else changes with it. */

import type { Edited, Step } from "../api/types.ts";
import { attribute, el, fill, say } from "../dom/element.ts";
import { newId } from "../form/context.ts";
import { Gone, Refusal, json } from "../server/client.ts";
import type { Bench } from "../state/bench.ts";
import { language, t } from "../words/texts.ts";
import { differences, isWorse } from "./differences.ts";

/** More is not read. */
const MOST = 5;

export function stepView(step: Step, bench: Bench): HTMLElement {
  const id = newId("brings");
  const mend = (): void => bench.edit({ edits: step.edits, label: step.label });
  const undoes = step.undoes.length > 0 && el("span", { class: "undoes" }, step.undoes.join(" "));
  const button = el("button", { type: "button", class: "mend", "aria-describedby": id, onclick: mend }, el("span", {}, step.label), undoes);
  const told = el("p", { id, class: "brings" });
  if (step.brings.length > 0) say(told, t("bench-brings", { cares: step.brings.join(" ") }));
  void tryOut(step, bench, told, button);
  return el("div", { class: "step" }, button, told);
}

/** Has the step tried on the pattern as it is, and tells what comes of it. */
async function tryOut(step: Step, bench: Bench, told: HTMLElement, button: HTMLElement): Promise<void> {
  const { source } = bench.document.value;
  const before = bench.shown.value;
  try {
    const edited = await json<Edited>("POST", "/api/edit", { source, edits: step.edits, language: language() });
    const after = edited.look.basket;
    if (!before || !after || !told.isConnected) return;
    const worse = isWorse(before, after);
    attribute(button, "data-worse", worse);
    const changes = differences(before, after);
    const more = changes.length > MOST ? [t("bench-step-more", { count: changes.length - MOST })] : [];
    fill(
      told,
      worse && el("strong", {}, `${t("bench-step-worse")} `),
      t("bench-step-changes", { changes: [...changes.slice(0, MOST), ...more].join(" ") }),
    );
  } catch (error) {
    if (error instanceof Gone) bench.onGone();
    else if (!(error instanceof Refusal)) throw error;
  }
}
