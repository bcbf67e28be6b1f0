/** In what two looks at a basket differ, in words: figures, what was left open, and findings that came and went. */

import type { Finding, Shown } from "../api/types.ts";
import { t } from "../words/texts.ts";
import { chosenAnew, saidAnew } from "./anew.ts";

export function differences(before: Shown, now: Shown): string[] {
  const had = new Map(before.figures.map(({ id, value }) => [id, value]));
  const figures = now.figures.flatMap(({ id, label, value }) =>
    had.has(id) && had.get(id) !== value ? [t("bench-tell-figure", { label, value })] : [],
  );
  const [old, fresh] = [before, now].map(({ findings }) => new Map(findings.map((one) => [one.what, one])));
  const came = now.findings.filter(({ what }) => !old?.has(what));
  const went = before.findings.filter(({ what }) => !fresh?.has(what));
  return [
    ...figures,
    ...chosenAnew(before, now).map(saidAnew),
    ...came.map(({ grade_label: grade, what }) => t("bench-tell-came", { grade, what })),
    ...went.map(({ what }) => t("bench-tell-went", { what })),
  ];
}

/** Whether there is more that weighs: more stops, or as many and more cares. */
export function isWorse(before: Shown, now: Shown): boolean {
  const count = ({ findings }: Shown, grade: Finding["grade"]): number => findings.filter((one) => one.grade === grade).length;
  const [stops, cares] = (["stop", "care"] as const).map((grade) => count(now, grade) - count(before, grade));
  return (stops ?? 0) > 0 || (stops === 0 && (cares ?? 0) > 0);
}
