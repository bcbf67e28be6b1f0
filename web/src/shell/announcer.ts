/** Tells those who do not see the page what a change did: figures that differ, findings that came and went. */

import type { Shown } from "../api/types.ts";
import { el, say } from "../dom/element.ts";
import { differences } from "../findings/differences.ts";
import type { Bench } from "../state/bench.ts";

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
