/** Whether the server is there. */

import type { Health } from "../api/types.ts";
import { Signal } from "../state/signal.ts";
import { json } from "./client.ts";

export type Pulse = "there" | "gone";

const CALM_MS = 5000;
const ANXIOUS_MS = 1000;

/** Follows the server: tells when it goes, when it comes back, and when it is another one. */
export class Heart {
  readonly pulse = new Signal<Pulse>("there");
  readonly health: Signal<Health>;
  #timer = 0;

  constructor(first: Health) {
    this.health = new Signal(first);
    this.#wait(CALM_MS);
  }

  /** A request was not answered: look at once whether the server is gone. */
  doubt(): void {
    clearTimeout(this.#timer);
    void this.#beat();
  }

  async #beat(): Promise<void> {
    try {
      this.health.set(await json<Health>("GET", "/api/health"));
      if (this.pulse.value === "gone") this.pulse.set("there");
    } catch {
      if (this.pulse.value === "there") this.pulse.set("gone");
    }
    this.#wait(this.pulse.value === "there" ? CALM_MS : ANXIOUS_MS);
  }

  #wait(ms: number): void {
    clearTimeout(this.#timer);
    this.#timer = window.setTimeout(() => void this.#beat(), ms);
  }
}
