/** The pattern files of the folder: opening, saving, naming. */

import type { PatternName, PatternText, Saved, Stock } from "../api/types.ts";
import { Gone, Refusal, json } from "../server/client.ts";
import { askName, type Outcome } from "../shell/ask-name.ts";
import { choose, fileName } from "../shell/dialog.ts";
import type { Notices } from "../shell/notices.ts";
import type { Bench } from "../state/bench.ts";
import { language, t } from "../words/texts.ts";
import { openFirst } from "./first.ts";
import { Outside } from "./outside.ts";
import { openPhoto } from "./photo.ts";
import { openShelf } from "./shelf.ts";

const CONFLICT = 409;

/** Where a pattern of a name is. */
function place(name: string, act = ""): string {
  return `/api/patterns/${encodeURIComponent(name)}${act}`;
}

/** What the server said against something, and what can be done. */
function refusal({ fault }: Refusal): string {
  return [fault.what, fault.how_to_mend].filter(Boolean).join(" ");
}

/** What the files need of the page around them. */
interface Around {
  readonly compare: () => void;
  readonly stock: Stock;
  /** Guests of the studio may not, unless they are let. */
  readonly mayWrite: () => boolean;
}

export class Files {
  readonly outside: Outside;

  constructor(
    private readonly bench: Bench,
    private readonly notices: Notices,
    private readonly around: Around,
  ) {
    this.outside = new Outside(bench, notices, (name) => this.read(name), around.compare);
  }

  mayWrite(): boolean {
    return this.around.mayWrite();
  }

  /** Asks for a first basket, in plain words. */
  first(): void {
    const { bench } = this;
    const others = (): void => void openShelf(this, bench.document.value.name, bench.onGone);
    openFirst({ stock: this.around.stock, begin: (source) => void this.begin(source), others, gone: () => bench.onGone() });
  }

  /** The photograph beside the pattern on the bench. */
  async photo(): Promise<void> {
    const { name } = this.bench.document.value;
    if (name === null) {
      this.notices.tell("photo", t("bench-photo-unsaved"));
      return;
    }
    await this.#try(async () => {
      const pattern = (await this.list()).find((one) => one.name === name);
      if (pattern) openPhoto(pattern, this.bench.onGone);
    });
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

  /** Saves under another name; a pattern that has it already is replaced only when the maker says so. */
  async saveAs(): Promise<boolean> {
    return this.#keepAs("bench-save-heading", "bench-save", fileName(this.bench.shown.value?.title ?? ""));
  }

  /** Keeps the pattern as it stands on the bench under another name, and goes on with the copy. */
  async duplicate(): Promise<boolean> {
    const { name } = this.bench.document.value;
    return name === null ? this.saveAs() : this.#keepAs("bench-duplicate-heading", "bench-duplicate", `${name}-2`);
  }

  async rename(): Promise<boolean> {
    const { name } = this.bench.document.value;
    if (name === null) return this.saveAs();
    const give = async (to: string): Promise<void> => {
      if (to === name) return;
      await json<Saved>("POST", place(name, "/rename"), { to });
      const { source, hash } = await this.read(to);
      this.bench.filed(to, source, hash);
    };
    return askName({
      heading: t("bench-rename-heading"),
      button: t("bench-rename"),
      proposed: name,
      give: async (to) => {
        const outcome = await this.#outcome(give(to));
        return outcome === "taken" ? { refused: t("bench-name-taken", { name: to }) } : outcome;
      },
    });
  }

  async #keepAs(heading: string, button: string, proposed: string): Promise<boolean> {
    const give = async (name: string, over: boolean): Promise<void> => this.#put(name, over ? (await this.read(name)).hash : null);
    return askName({
      heading: t(heading),
      button: t(button),
      proposed,
      give: (name, over) => this.#outcome(give(name, over)),
    });
  }

  /** What became of a name, for the dialog that asked for it. */
  async #outcome(act: Promise<void>): Promise<Outcome> {
    try {
      await act;
      return "done";
    } catch (error) {
      if (error instanceof Gone) {
        this.bench.onGone();
        return { refused: t("bench-not-saved-gone") };
      }
      if (!(error instanceof Refusal)) throw error;
      return error.status === CONFLICT ? "taken" : { refused: refusal(error) };
    }
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
    try {
      await this.#put(name, hash);
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

  /** Writes the text to a file of this name: a new one, or the one whose text has this hash. */
  async #put(name: string, hash: string | null): Promise<void> {
    const { source } = this.bench.document.value;
    const saved = await json<Saved>("PUT", place(name), { source, base_hash: hash, language: language() });
    if (saved.history !== "") this.notices.tell("history", saved.history);
    this.bench.filed(saved.name, source, saved.hash);
    this.notices.drop("trouble");
    const count = saved.problems.length;
    if (count > 0) this.notices.tell("mistakes", t("bench-saved-problems", { count }));
    else this.notices.drop("mistakes");
    this.outside.settled();
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
      this.notices.tell("trouble", refusal(error), [], "grave");
    } else throw error;
  }
}
