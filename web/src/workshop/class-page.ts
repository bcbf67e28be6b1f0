/** The page Class: who comes when, whether it fits, who does what on which mould, what would mend it. */

import type { PatternName, PlanShown } from "../api/types.ts";
import { el, type Child } from "../dom/element.ts";
import { json } from "../server/client.ts";
import { t } from "../words/texts.ts";
import { svgOf } from "../views/drawing.ts";
import { after, classForm } from "./class-form.ts";
import { Desk } from "./desk.ts";
import { patternChoices } from "./kits-form.ts";
import type { Around } from "./kits-pages.ts";
import { Paper } from "./paper.ts";
import { PlanFields } from "./plan-fields.ts";
import { PlanPage } from "./plan-page.ts";

export function classPage({ frame, folder }: Around): PlanPage {
  let patterns: readonly PatternName[] = [];
  const ready = async (): Promise<void> => {
    patterns = await json<PatternName[]>("GET", "/api/patterns");
  };
  const fresh = async (): Promise<string> => {
    const [first] = patternChoices(patterns)[0] ?? ["pattern.toml"];
    const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
    return [
      `title = ${JSON.stringify(t("bench-class-new"))}`,
      `pattern = ${JSON.stringify(first)}`,
      `zone = ${JSON.stringify(zone)}`,
      "moulds = 6",
      "",
      "[[students]]",
      "count = 6",
      'hand = "learner"',
      "",
      "[[days]]",
      `date = "${after("")}"`,
      'hours = ["09:00-12:00", "13:00-17:00"]',
      "times = 6",
      "every = 1",
      "",
    ].join("\n");
  };
  const paper = new Paper("class", folder, fresh);
  const desk = new Desk(frame, "class", paper);
  const fields = new PlanFields(paper, (act) => void frame.attempt(act));
  const parts = { paper, fields, patterns: () => patterns };
  return new PlanPage(desk, {
    heading: t("bench-shop-class"),
    form: (sheet) => classForm(parts, sheet),
    leaves: ["class"],
    searches: true,
    folded: true,
    first: pictures,
    ready,
  });
}

function pictures({ pictures: all }: PlanShown): Child[] {
  return all.length === 0 ? [] : [el("div", { class: "timetables", tabindex: 0, role: "group", "aria-label": t("bench-class-pictures") }, ...all.map(svgOf))];
}
