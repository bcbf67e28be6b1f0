/** Tells what a change came to once the hand rests. */

import type { Shown } from "../api/types.ts";
import type { Bench } from "./bench.ts";

/** A hand that drags changes many things a second; what is told is what it came to. */
const SETTLED_MS = 600;

/** Calls `settled` with the basket before and after, and `other` when another pattern lies on the bench. */
export function whenSettled(bench: Bench, settled: (before: Shown, now: Shown) => void, other: () => void = () => undefined): void {
  let told: Shown | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  bench.shown.follow((shown) => {
    clearTimeout(timer);
    if (shown === undefined || told === undefined) {
      told = shown;
      other();
      return;
    }
    timer = setTimeout(() => {
      const before = told;
      told = shown;
      if (before) settled(before, shown);
    }, SETTLED_MS);
  });
}
