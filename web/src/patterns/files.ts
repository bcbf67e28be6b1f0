/** The pattern files of the folder: opening, saving, naming. */

import type { PatternName, PatternText, Saved } from "../api/types.ts";
import { Gone, Refusal, json, tell } from "../server/client.ts";
import { askName, choose, fileName } from "../shell/dialog.ts";
import type { Notices } from "../shell/notices.ts";
import type { Bench } from "../state/bench.ts";
import { language, t } from "../words/texts.ts";
import { Outside } from "./outside.ts";

const CONFLICT = 409;

/** Where a pattern of a name is. */
function place(name: string, act = ""): string {
  return `/api/patterns/${encodeURIComponent(name)}${act}`;
}

export class Files {
  readonly outside: Outside;

  constructor(
    private readonly bench: Bench,
    private readonly notices: Notices,
    compare: () => void,
  ) {
    this.outside = new Outside(bench, notices, (name) => this.read(name), compare);
  }

  list(): Promise<readonly PatternName[]> {
    return json<PatternName[]>("GET", "/api/patterns");
  }

  read(name: string): Promise<PatternText> {
    return json<PatternText>("GET", place(name));
  }

  /** Opens a pattern, after asking about unsaved work. */
  async open(name: string): Promise<void> {
    if (!(await this.settled())) return;
    await this.#try(async () => {
      const { source, hash } = await this.read(name);
      this.bench.open({ name, source, saved: source, hash });
    });
  }

  /** Begins a new pattern from a text, after asking about unsaved work. */
  async begin(source: string): Promise<void> {
    if (!(await this.settled())) return;
    this.bench.open({ name: null, source, saved: source, hash: null });
  }

  /** Saves; a pattern without a name asks for one first. Tells whether it was saved. */
  async save(): Promise<boolean> {
    const { name } = this.bench.document.value;
    if (name === null) return this.saveAs();
    return this.#write(name, this.bench.document.value.hash);
  }

  /** Saves under a new name. */
  async saveAs(): Promise<boolean> {
    const proposed = fileName(this.bench.shown.value?.title ?? "");
    const name = await askName(t("bench-save-heading"), t("bench-save"), proposed);
    return name !== undefined && this.#write(name, null);
  }

  /** Copies the pattern as it stands on the bench under another name, and goes on with the copy. */
  async duplicate(): Promise<void> {
    const { name } = this.bench.document.value;
    if (name === null) {
      await this.saveAs();
      return;
    }
    const to = await askName(t("bench-duplicate-heading"), t("bench-duplicate"), `${name}-2`);
    if (to === undefined || !(await this.settled())) return;
    await this.#try(async () => {
      await tell("POST", place(name, "/duplicate"), { to, language: language() });
      const { source, hash } = await this.read(to);
      this.bench.open({ name: to, source, saved: source, hash });
    });
  }

  async rename(): Promise<void> {
    const { name } = this.bench.document.value;
    if (name === null) {
      await this.saveAs();
      return;
    }
    const to = await askName(t("bench-rename-heading"), t("bench-rename"), name);
    if (to === undefined || to === name) return;
    await this.#try(async () => {
      await tell("POST", place(name, "/rename"), { to, language: language() });
      const { source, hash } = await this.read(to);
      this.bench.filed(to, source, hash);
    });
  }

  /** Whether the bench may take up something else: nothing is unsaved, or the maker said what becomes of it. */
  async settled(): Promise<boolean> {
    if (!this.bench.unsaved) return true;
    const answer = await choose(t("bench-unsaved-heading"), t("bench-unsaved-text"), [
      ["save", t("bench-save")],
      ["drop", t("bench-unsaved-drop")],
      ["stay", t("bench-unsaved-stay")],
    ]);
    if (answer === "save") return this.save();
    return answer === "drop";
  }

  async #write(name: string, hash: string | null): Promise<boolean> {
    const { source } = this.bench.document.value;
    try {
      const saved = await json<Saved>("PUT", place(name), { source, base_hash: hash, language: language() });
      this.bench.filed(saved.name, source, saved.hash);
      this.notices.drop("trouble");
      const count = saved.problems.length;
      if (count > 0) this.notices.tell("mistakes", t("bench-saved-problems", { count }));
      else this.notices.drop("mistakes");
      this.outside.settled();
      return true;
    } catch (error) {
      if (error instanceof Refusal && error.status === CONFLICT && error.fault.present) {
        this.outside.conflict(error.fault.present);
      } else {
        this.#complain(error);
      }
      return false;
    }
  }

  async #try(act: () => Promise<void>): Promise<void> {
    try {
      await act();
      this.notices.drop("trouble");
    } catch (error) {
      this.#complain(error);
    }
  }

  #complain(error: unknown): void {
    if (error instanceof Gone) {
      this.bench.onGone();
      this.notices.tell("trouble", t("bench-not-saved-gone"), [], "grave");
    } else if (error instanceof Refusal) {
      const { what, how_to_mend } = error.fault;
      this.notices.tell("trouble", [what, how_to_mend].filter(Boolean).join(" "), [], "grave");
    } else throw error;
  }
}
