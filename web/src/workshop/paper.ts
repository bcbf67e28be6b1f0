/** A plan on the page: its text is the document, as a pattern's is; undo is the earlier text. */

import type { Edit, PatternText, PlanKind, PlanName, PlanText, Problem, Saved } from "../api/types.ts";
import { json } from "../server/client.ts";
import { History, type UndoStack } from "../state/history.ts";
import { Signal } from "../state/signal.ts";
import { language } from "../words/texts.ts";

export interface Sheet {
  /** Name of the file without its ending; none if it was never saved. */
  readonly name: string | null;
  readonly source: string;
  /** The file's text when it was last read or written here, or the text that was begun with. */
  readonly saved: string;
  /** Hash of that text. */
  readonly hash: string | null;
  /** All that is written in it, by its keys. */
  readonly values: unknown;
  readonly problems: readonly Problem[];
}

interface Kept extends Pick<Sheet, "name" | "source" | "saved" | "hash"> {
  readonly undo: UndoStack;
}

export class Paper {
  readonly sheet = new Signal<Sheet | undefined>(undefined);
  #history = new History();
  /** Changes are made one after the other, each in the text that the one before it left. */
  #last: Promise<void> = Promise.resolve();

  constructor(
    private readonly kind: PlanKind,
    /** Whose drafts are kept: the folder's. */
    private readonly folder: string,
    /** The text of a new plan. */
    private readonly fresh: () => Promise<string>,
  ) {}

  get undoable(): string | undefined {
    return this.#history.undoable?.label;
  }

  get redoable(): string | undefined {
    return this.#history.redoable?.label;
  }

  get unsaved(): boolean {
    const { value } = this.sheet;
    return value !== undefined && (value.name === null || value.source !== value.saved);
  }

  /** Takes up what was left here, or the first plan of the folder, or begins one. */
  async start(): Promise<void> {
    if (this.sheet.value) return;
    const kept = this.#kept();
    if (kept) {
      this.#history = new History(kept.undo);
      await this.#show(kept.source, kept);
      return;
    }
    const [first] = await this.list();
    await (first ? this.open(first.name) : this.begin());
  }

  async list(): Promise<PlanName[]> {
    return (await json<PlanName[]>("GET", "/api/plans")).filter(({ kind }) => kind === this.kind);
  }

  async open(name: string): Promise<void> {
    const { source, hash } = await json<PatternText>("GET", place(name));
    this.#history = new History();
    await this.#show(source, { name, saved: source, hash });
  }

  async begin(): Promise<void> {
    const source = await this.fresh();
    this.#history = new History();
    await this.#show(source, { name: null, saved: source, hash: null });
  }

  /** Makes changes in the text; `label` names them for the way back. */
  change(edits: readonly Edit[], label: string): Promise<void> {
    return this.#after(async (sheet) => this.#turn(sheet, sheet.source, edits, label));
  }

  /** Takes another text in the place of this one. */
  replace(source: string, label: string): Promise<void> {
    return this.#after(async (sheet) => this.#turn(sheet, source, [], label));
  }

  undo(): Promise<void> {
    return this.#move((now) => this.#history.undo(now));
  }

  redo(): Promise<void> {
    return this.#move((now) => this.#history.redo(now));
  }

  /** Writes the text to its file, or to a new one of this name; `over` replaces what is there. */
  async save(name: string, over: boolean): Promise<void> {
    const sheet = this.sheet.value;
    if (!sheet) return;
    const base_hash = over ? (await json<PatternText>("GET", place(name))).hash : name === sheet.name ? sheet.hash : null;
    const saved = await json<Saved>("PUT", place(name), { source: sheet.source, base_hash });
    this.#set({ ...sheet, name: saved.name, saved: sheet.source, hash: saved.hash });
  }

  async #turn(sheet: Sheet, source: string, edits: readonly Edit[], label: string): Promise<void> {
    const before = sheet.source;
    const text = await this.#read(source, edits);
    if (text.source === before) return;
    this.#history.note(before, label, null);
    this.#set({ ...sheet, ...text });
  }

  #move(step: (now: string) => string | undefined): Promise<void> {
    return this.#after(async (sheet) => {
      const source = step(sheet.source);
      if (source !== undefined) this.#set({ ...sheet, ...(await this.#read(source, [])) });
    });
  }

  #after(act: (sheet: Sheet) => Promise<void>): Promise<void> {
    const done = this.#last.then(async () => {
      const { value } = this.sheet;
      if (value) await act(value);
    });
    this.#last = done.catch(() => undefined);
    return done;
  }

  async #show(source: string, file: Pick<Sheet, "name" | "saved" | "hash">): Promise<void> {
    this.#set({ ...(await this.#read(source, [])), name: file.name, saved: file.saved, hash: file.hash });
  }

  #read(source: string, edits: readonly Edit[]): Promise<PlanText> {
    return json<PlanText>("POST", "/api/plans", { kind: this.kind, source, edits, language: language() });
  }

  #set(sheet: Sheet): void {
    const { name, source, saved, hash } = sheet;
    const kept: Kept = { name, source, saved, hash, undo: this.#history.stack };
    try {
      localStorage.setItem(this.#key(), JSON.stringify(kept));
    } catch {
      // Where the browser keeps nothing, the work goes on without.
    }
    this.sheet.set(sheet);
  }

  #key(): string {
    return `stavewright-plan:${this.folder}:${this.kind}`;
  }

  #kept(): Kept | undefined {
    try {
      return (JSON.parse(localStorage.getItem(this.#key()) ?? "null") as Kept | null) ?? undefined;
    } catch {
      return undefined;
    }
  }
}

function place(name: string): string {
  return `/api/patterns/${encodeURIComponent(name)}`;
}
