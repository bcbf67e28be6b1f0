/** Files that change outside this window: noticed, and never overwritten silently. */

import type { PatternName, PatternText } from "../api/types.ts";
import { Gone, Refusal, json } from "../server/client.ts";
import type { Notices } from "../shell/notices.ts";
import type { Bench } from "../state/bench.ts";
import { t } from "../words/texts.ts";

const EVERY_MS = 2500;
const NOTICE = "outside";

export class Outside {
  /** Hash of the outside text that the maker was told of. */
  #told: string | undefined;

  constructor(
    private readonly bench: Bench,
    private readonly notices: Notices,
    private readonly read: (name: string) => Promise<PatternText>,
    private readonly compare: () => void,
  ) {}

  /** Looks now and then, and whenever the window is looked at again. */
  watch(): void {
    setInterval(() => {
      if (document.visibilityState === "visible") void this.look();
    }, EVERY_MS);
    window.addEventListener("focus", () => void this.look());
  }

  async look(): Promise<void> {
    const { name, hash } = this.bench.document.value;
    if (name === null || hash === null) return;
    try {
      const names = await json<PatternName[]>("GET", "/api/patterns");
      const file = names.find((one) => one.name === name);
      // What was asked about may have been saved or left while the server answered.
      const now = this.bench.document.value;
      if (now.name !== name || now.hash !== hash) return;
      if (!file) this.#missing(name);
      else if (file.hash !== hash && file.hash !== this.#told) await this.#changed(name);
    } catch (error) {
      if (error instanceof Gone) this.bench.onGone();
      else if (!(error instanceof Refusal)) throw error;
    }
  }

  /** The file was saved here: whatever was said of it no longer holds. */
  settled(): void {
    this.#told = undefined;
    this.notices.drop(NOTICE);
  }

  /** The file is another than the one that the work here grew from. */
  conflict(present: PatternText): void {
    this.#told = present.hash;
    const take = (): void => this.#take(present);
    const keep = (): void => this.bench.filed(present.name, present.source, present.hash);
    const compare = (): void => {
      keep();
      this.compare();
    };
    this.notices.tell(
      NOTICE,
      t("bench-outside-conflict", { name: present.name }),
      [
        { label: t("bench-outside-keep"), run: keep },
        { label: t("bench-outside-take"), run: take },
        { label: t("bench-outside-compare"), run: compare },
      ],
      "grave",
    );
  }

  async #changed(name: string): Promise<void> {
    const present = await this.read(name);
    if (present.source === this.bench.document.value.source) {
      this.bench.filed(name, present.source, present.hash);
    } else if (this.bench.unsaved) {
      this.conflict(present);
    } else {
      this.#take(present);
      this.notices.tell(NOTICE, t("bench-outside-taken", { name }));
    }
  }

  /** Takes the file's text as a step that can be taken back. */
  #take(present: PatternText): void {
    this.bench.replace(present.source, t("bench-did-take-file"));
    this.bench.filed(present.name, present.source, present.hash);
  }

  #missing(name: string): void {
    this.bench.document.set({ ...this.bench.document.value, hash: null, saved: "" });
    this.notices.tell(NOTICE, t("bench-outside-missing", { name }), [], "grave");
  }
}
