/** Tells those who do not see the page what a change did: figures that differ, findings that came and went. */

import type { Shown } from "../api/types.ts";
import { el, say } from "../dom/element.ts";
import type { Bench } from "../state/bench.ts";
import { t } from "../words/texts.ts";

/** A hand that drags changes many things a second; what is told is what it came to. */
const SETTLED_MS = 600;
/** More at once is not listened to. */
const MOST = 6;

export class Announcer {
  readonly node = el("p", { class: "unseen", role: "status" });
  #told: Shown | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(private readonly bench: Bench) {
    bench.shown.follow((shown) => {
      clearTimeout(this.#timer);
      // Another pattern is no change of this one.
      if (shown === undefined || this.#told === undefined) this.#told = shown;
      else this.#timer = setTimeout(() => this.#tell(), SETTLED_MS);
    });
  }

  #tell(): void {
    const shown = this.bench.shown.value;
    const before = this.#told;
    this.#told = shown;
    if (shown && before) say(this.node, differences(before, shown).slice(0, MOST).join(" "));
  }
}

function differences(before: Shown, now: Shown): string[] {
  const had = new Map(before.figures.map(({ id, value }) => [id, value]));
  const figures = now.figures.flatMap(({ id, label, value }) =>
    had.has(id) && had.get(id) !== value ? [t("bench-tell-figure", { label, value })] : [],
  );
  const [old, fresh] = [before, now].map(({ findings }) => new Map(findings.map((one) => [one.what, one])));
  const came = now.findings.filter(({ what }) => !old?.has(what));
  const went = before.findings.filter(({ what }) => !fresh?.has(what));
  return [
    ...figures,
    ...came.map(({ grade_label: grade, what }) => t("bench-tell-came", { grade, what })),
    ...went.map(({ what }) => t("bench-tell-went", { what })),
  ];
}
