/** Whether the server is there. */

import type { Health } from "../api/types.ts";
import { Signal } from "../state/signal.ts";
import { json } from "./client.ts";

export type Presence = "there" | "gone";

const THERE_MS = 5000;
const GONE_MS = 1000;

/** Follows the server: tells when it goes, when it comes back, and when it is another one. */
export class Connection {
  readonly presence = new Signal<Presence>("there");
  readonly health: Signal<Health>;
  #timer = 0;

  constructor(first: Health) {
    this.health = new Signal(first);
    this.#wait(THERE_MS);
  }

  /** A request was not answered: look at once whether the server is gone. */
  check(): void {
    clearTimeout(this.#timer);
    void this.#ask();
  }

  async #ask(): Promise<void> {
    try {
      this.health.set(await json<Health>("GET", "/api/health"));
      if (this.presence.value === "gone") this.presence.set("there");
    } catch {
      if (this.presence.value === "there") this.presence.set("gone");
    }
    this.#wait(this.presence.value === "there" ? THERE_MS : GONE_MS);
  }

  #wait(ms: number): void {
    clearTimeout(this.#timer);
    this.#timer = window.setTimeout(() => void this.#ask(), ms);
  }
}
