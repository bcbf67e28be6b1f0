/** The dialog in which a pattern is opened or begun. */

import type { PatternName, Scenario } from "../api/types.ts";
import { el, fill } from "../dom/element.ts";
import { Gone, json } from "../server/client.ts";
import { openDialog } from "../shell/dialog.ts";
import { t } from "../words/texts.ts";
import type { Files } from "./files.ts";

/** A mould and nothing else: everything that is left out is chosen. */
export function plainPattern(title: string): string {
  return [
    `title = ${JSON.stringify(title)}`,
    'units = "in"',
    "",
    "[mould]",
    'shape = "round"',
    'base = "5"',
    'rim = "7"',
    'height = "4"',
    'side = "bowl"',
    "",
  ].join("\n");
}

export async function openShelf(files: Files, current: string | null, gone: () => void): Promise<void> {
  let names: readonly PatternName[];
  let scenarios: readonly Scenario[];
  try {
    [names, scenarios] = await Promise.all([files.list(), json<Scenario[]>("GET", "/api/scenarios")]);
  } catch (error) {
    if (!(error instanceof Gone)) throw error;
    gone();
    return;
  }
  const leave = (act: () => Promise<void>) => (): void => {
    dialog.close();
    void act();
  };
  const own = el("ul", { class: "shelf" });
  fill(own, ...names.map((pattern) => openRow(pattern, current, leave(() => files.open(pattern.name)))));
  const starts = el("ul", { class: "shelf" });
  fill(
    starts,
    startRow(t("bench-start-plain"), t("bench-start-plain-text"), leave(() => files.begin(plainPattern(t("bench-new-title"))))),
    ...scenarios.map(({ title, source }) =>
      startRow(title, t("bench-start-scenario-text"), leave(() => files.begin(source))),
    ),
  );
  const dialog = openDialog(
    t("bench-patterns"),
    "wide",
    el("h3", {}, t("bench-patterns-here")),
    names.length > 0 ? own : el("p", { class: "hint" }, t("bench-patterns-none")),
    el("h3", {}, t("bench-patterns-start")),
    starts,
  );
}

function openRow(pattern: PatternName, current: string | null, act: () => void): HTMLElement {
  const here = pattern.name === current;
  const facts = [`${pattern.name}.toml`, here && t("bench-pattern-here"), !pattern.reads && t("bench-pattern-broken")];
  return startRow(pattern.title, facts.filter((fact) => fact !== false).join(" · "), act);
}

function startRow(title: string, fact: string, act: () => void): HTMLElement {
  return el(
    "li",
    {},
    el("button", { type: "button", class: "quiet", onclick: act }, el("strong", {}, title), el("span", { class: "fact" }, fact)),
  );
}
