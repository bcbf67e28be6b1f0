/** Tells those who do not see the page what a change did: figures that differ, findings that came and went. */

import { el, say } from "../dom/element.ts";
import { differences } from "../findings/differences.ts";
import type { Bench } from "../state/bench.ts";
import { whenSettled } from "../state/settled.ts";

/** More at once is not listened to. */
const MOST = 6;

export class Announcer {
  readonly node = el("p", { class: "unseen", role: "status" });

  constructor(bench: Bench) {
    whenSettled(bench, (before, now) => say(this.node, differences(before, now).slice(0, MOST).join(" ")));
  }
}
