/** What the views have in common. */

import { REST_MS, type Bench } from "../state/bench.ts";

export interface View {
  readonly id: string;
  readonly node: HTMLElement;
  /** The view is looked at from now on. */
  enter(): void;
  /** The view is out of sight. */
  leave(): void;
}

/** Calls back when the pattern changes while the view is looked at, and once on entering. */
export class Watch {
  #seen: string | undefined;
  #looking = false;
  #rest = 0;

  /** `changed` hears whether a drag is under way; a last call without follows when the hand rests. */
  constructor(private readonly bench: Bench, private readonly changed: (moving: boolean) => void) {
    bench.document.listen(() => this.#check());
    bench.shown.listen(() => this.#check());
  }

  enter(): void {
    this.#looking = true;
    this.#check();
  }

  leave(): void {
    this.#looking = false;
  }

  #check(): void {
    const { source } = this.bench.document.value;
    if (!this.#looking || source === this.#seen || !this.bench.shown.value || this.bench.problems.value.length > 0) return;
    this.#seen = source;
    const { moving } = this.bench.turn;
    this.changed(moving);
    clearTimeout(this.#rest);
    if (moving) this.#rest = window.setTimeout(() => this.changed(false), REST_MS);
  }
}
