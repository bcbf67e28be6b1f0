/** The front page of the folder: its patterns with their pictures, and ways to begin a new one. */

import type { PatternName, PatternText, Scenario } from "../api/types.ts";
import { el, fill } from "../dom/element.ts";
import { Gone, Refusal, json } from "../server/client.ts";
import { openDialog } from "../shell/dialog.ts";
import { drawing } from "../views/drawing.ts";
import { t } from "../words/texts.ts";
import { WORKSHOP } from "../workshop/pages.ts";
import { photoPlace } from "./photo.ts";

/** What the front page has done. */
interface Acts {
  readonly list: () => Promise<readonly PatternName[]>;
  readonly read: (name: string) => Promise<PatternText>;
  readonly open: (name: string) => Promise<void>;
  readonly begin: (source: string) => Promise<void>;
  readonly first: () => void;
  /** Guests who may not write do not see the workshop. */
  readonly mayWrite: () => boolean;
}

/** The way to the pages of the workshop. */
function workshopLinks(): HTMLElement {
  const links = WORKSHOP.map((page) => el("a", { href: `/workshop.html#${page}`, class: "button quiet" }, t(`bench-shop-${page}`)));
  return el("nav", { class: "row wrap", "aria-label": t("bench-shop-workshop") }, ...links);
}

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

export async function openShelf(files: Acts, current: string | null, gone: () => void): Promise<void> {
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
  const own = el("ul", { class: "shelf pictured" });
  const rows = names.map((pattern) => openRow(pattern, current, leave(() => files.open(pattern.name))));
  fill(own, ...rows.map(({ node }) => node));
  const starts = el("ul", { class: "shelf" });
  const first = async (): Promise<void> => files.first();
  fill(
    starts,
    startRow(t("bench-first"), t("bench-first-fact"), leave(first)),
    startRow(t("bench-start-plain"), t("bench-start-plain-text"), leave(() => files.begin(plainPattern(t("bench-new-title"))))),
    ...scenarios.map(({ title, source }) =>
      startRow(title, t("bench-start-scenario-text"), leave(() => files.begin(source))),
    ),
  );
  const dialog = openDialog(
    t("bench-patterns"),
    "wide",
    ...(files.mayWrite() ? [workshopLinks()] : []),
    el("h3", {}, t("bench-patterns-here")),
    names.length > 0 ? own : el("p", { class: "hint" }, t("bench-patterns-none")),
    el("h3", {}, t("bench-patterns-start")),
    starts,
  );
  // One after the other, and no longer than they are looked at.
  for (const { pattern, picture } of rows) {
    if (!dialog.isConnected) return;
    if (pattern.photo || !pattern.reads) continue;
    try {
      const { source } = await files.read(pattern.name);
      fill(picture, await drawing(source, "stage-finished"));
    } catch (error) {
      if (error instanceof Gone) return gone();
      if (!(error instanceof Refusal)) throw error;
    }
  }
}

function openRow(pattern: PatternName, current: string | null, act: () => void) {
  const here = pattern.name === current;
  const facts = [`${pattern.name}.toml`, here && t("bench-pattern-here"), !pattern.reads && t("bench-pattern-broken")];
  const fact = facts.filter((one) => one !== false).join(" · ");
  const picture = el("span", { class: "thumb", "aria-hidden": "true" });
  if (pattern.photo) fill(picture, el("img", { src: photoPlace(pattern.name), alt: "", loading: "lazy" }));
  return { pattern, picture, node: startRow(pattern.title, fact, act, picture) };
}

function startRow(title: string, fact: string, act: () => void, picture?: HTMLElement): HTMLElement {
  const words = el("span", { class: "shelf-words" }, el("strong", {}, title), el("span", { class: "fact" }, fact));
  return el("li", {}, el("button", { type: "button", class: "quiet", onclick: act }, picture, words));
}
