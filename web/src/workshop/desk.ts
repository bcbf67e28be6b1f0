/** A plan with what it comes to: worked out anew whenever its text changes. */

import type { LabelWord, Packet, PlanKind, PlanShown } from "../api/types.ts";
import { json } from "../server/client.ts";
import { Job } from "../server/job.ts";
import { Signal } from "../state/signal.ts";
import { language } from "../words/texts.ts";
import type { Frame } from "./frame.ts";
import type { Paper } from "./paper.ts";

export class Desk {
  readonly shown = new Signal<PlanShown | undefined>(undefined);
  /** How far the work is; none where nothing is being worked out. */
  readonly progress = new Signal<Packet | undefined>(undefined);
  /** Why nothing came of it; empty if something did. */
  readonly fault = new Signal<string>("");
  /** Plans and orders that are bought and cut for together with this one. */
  beside: { plans: readonly string[]; orders: readonly string[] } = { plans: [], orders: [] };
  /** Sheets of labels; the usual ones of the paper if none are chosen. */
  labels: LabelWord | null = null;
  /** Seconds after which the best that was found is taken. */
  seconds = 5;
  readonly #showing = new Job();
  readonly #setting = new Job();
  /** The text that was worked out last. */
  #worked = "";

  constructor(
    readonly frame: Frame,
    readonly kind: PlanKind,
    readonly paper: Paper,
  ) {
    paper.sheet.listen(() => void frame.attempt(() => this.work()));
  }

  /** Takes the plan up, and works it out where that was not done yet. */
  async start(): Promise<void> {
    await this.paper.start();
    await this.work();
  }

  /** Works the plan out; `anew` even where its text is the same. */
  async work(anew = false): Promise<void> {
    const sheet = this.paper.sheet.value;
    if (!sheet || (sheet.source === this.#worked && !anew)) return;
    this.#worked = sheet.source;
    if (sheet.problems.length > 0) {
      await this.stop();
      return;
    }
    this.fault.set("");
    const packet = await this.#showing.run("/api/plans/work", this.#order(sheet.source, false), (now) => this.progress.set(now));
    if (!packet) return;
    this.progress.set(undefined);
    if (packet.state === "done") this.shown.set(await json<PlanShown>("GET", `/api/packets/${packet.id}/shown.json`));
    this.fault.set(packet.fault ?? "");
  }

  /** Sets the sheets; nothing if that was stopped. */
  async sheets(heard: (packet: Packet) => void): Promise<Packet | undefined> {
    const sheet = this.paper.sheet.value;
    return sheet && this.#setting.run("/api/plans/work", this.#order(sheet.source, true), heard);
  }

  async stop(): Promise<void> {
    await this.#showing.stop();
    this.progress.set(undefined);
  }

  #order(source: string, sheets: boolean) {
    const { plans, orders } = this.beside;
    return { kind: this.kind, source, sheets, seconds: this.seconds, language: language(), plans, orders, labels: this.labels };
  }
}
