/** The pattern on the bench: its text, what it gives, and the way back. */

import type { Edit, Edited, Looked, Place, Problem, Shown } from "../api/types.ts";
import { Gone, Refusal, json } from "../server/client.ts";
import { Latest } from "../server/latest.ts";
import { language } from "../words/texts.ts";
import { History, type UndoStack } from "./history.ts";
import { Signal } from "./signal.ts";

/** The pattern's text and the file that it belongs to. */
export interface Document {
  /** Name of the file without its ending; none if it was never saved. */
  readonly name: string | null;
  readonly source: string;
  /** The file's text when it was last read or written here, or the text that was begun with. */
  readonly saved: string;
  /** Hash of that text. */
  readonly hash: string | null;
}

/** A change that was asked for. */
export interface Change {
  readonly edits: readonly Edit[];
  /** What it does, in words. */
  readonly label: string;
  /** Name of the drag that it is part of. */
  readonly gesture?: string;
}

interface Pending extends Change {
  readonly asked: number;
}

/** How the text came to be as it is now. */
export interface Turn {
  /** Whether a drag is under way, so that quick pictures serve better than fine ones. */
  readonly moving: boolean;
  /** When the hand moved, on the browser's clock; none if the change was no drag. */
  readonly asked: number | null;
}

/** After a drag so long without a change the hand counts as resting: what takes longer is asked for then. */
export const REST_MS = 180;

export class Bench {
  readonly document: Signal<Document>;
  readonly shown = new Signal<Shown | undefined>(undefined);
  readonly problems = new Signal<readonly Problem[]>([]);
  /** The place that a finding means, while it is looked at. */
  readonly place = new Signal<Place | undefined>(undefined);
  /** Changes that were asked for and that the server has not made yet. */
  readonly asked = new Signal<readonly Change[]>([]);
  /** What is being typed and not taken over yet: the change or the whole text that it will be. */
  readonly typing = new Signal<Change | string | undefined>(undefined);
  /** What the server would not do. */
  readonly refused = new Signal<Refusal | undefined>(undefined);
  /** Called when the server did not answer. */
  onGone: () => void = () => undefined;
  turn: Turn = { moving: false, asked: null };

  #history = new History();
  #pending: Pending[] = [];
  #sent: Pending | undefined;
  #busy = false;
  #generation = 0;
  #rest = 0;
  readonly #looks: Latest<string, Looked>;

  constructor(document: Document, stack?: UndoStack) {
    this.document = new Signal(document);
    this.#history = new History(stack);
    this.#looks = new Latest(
      (source, signal) => json<Looked>("POST", "/api/look", { source, language: language() }, signal),
      (look) => this.#take(look),
      (error) => this.#fail(error),
    );
  }

  get history(): Pick<History, "undoable" | "redoable" | "stack"> {
    return this.#history;
  }

  /** Whether there is work that would be lost. */
  get unsaved(): boolean {
    return this.document.value.source !== this.document.value.saved;
  }

  /** Whether the text stands in a file as it is here. */
  get onFile(): boolean {
    return this.document.value.name !== null && !this.unsaved;
  }

  /** Whether something was asked for that is not answered yet. */
  get busy(): boolean {
    return this.#pending.length > 0 || this.#sent !== undefined;
  }

  /** Looks at the text anew: after it was opened, after the language changed, when the server is back. */
  look(): void {
    this.#looks.request(this.document.value.source);
    void this.#work();
  }

  /** Changes the text. Changes of one gesture that have not been sent yet replace each other. */
  edit(change: Change): void {
    if (change.edits.length === 0) return;
    const last = this.#pending.at(-1);
    if (change.gesture !== undefined && last?.gesture === change.gesture) this.#pending.pop();
    this.#pending.push({ ...change, asked: performance.now() });
    this.#tellAsked();
    void this.#work();
  }

  undo(): void {
    this.#jump(this.#history.undo(this.document.value.source));
  }

  redo(): void {
    this.#jump(this.#history.redo(this.document.value.source));
  }

  /** Puts a whole text in place of this one, as a step that can be taken back. */
  replace(source: string, label: string): void {
    if (source === this.document.value.source) return;
    this.#history.note(this.document.value.source, label, null);
    this.#jump(source);
  }

  /** Takes another pattern on the bench. */
  open(document: Document, stack?: UndoStack): void {
    this.#history = new History(stack);
    this.shown.set(undefined);
    this.problems.set([]);
    this.place.set(undefined);
    this.#forget();
    this.document.set(document);
    this.look();
  }

  /** Notes what the file holds now: it was saved, renamed or changed outside. */
  filed(name: string, saved: string, hash: string): void {
    this.document.set({ ...this.document.value, name, saved, hash });
  }

  #forget(): void {
    clearTimeout(this.#rest);
    this.#generation += 1;
    this.#pending = [];
    this.#sent = undefined;
    this.#tellAsked();
    this.typing.set(undefined);
    this.#looks.drop();
    this.turn = { moving: false, asked: null };
  }

  #tellAsked(): void {
    const all = this.#sent ? [this.#sent, ...this.#pending] : this.#pending;
    this.asked.set(all.map(({ edits, label }) => ({ edits, label })));
  }

  #jump(source: string | undefined): void {
    if (source === undefined) return;
    this.#forget();
    this.document.set({ ...this.document.value, source });
    this.look();
  }

  async #work(): Promise<void> {
    if (this.#busy) return;
    const change = this.#pending[0];
    if (!change) return;
    this.#busy = true;
    const generation = this.#generation;
    const before = this.document.value.source;
    this.#pending.shift();
    this.#sent = change;
    try {
      const body = { source: before, edits: change.edits, glance: change.gesture !== undefined, language: language() };
      const edited = await json<Edited>("POST", "/api/edit", body);
      if (generation === this.#generation) this.#done(before, change, edited);
    } catch (error) {
      if (generation === this.#generation) {
        this.#sent = undefined;
        if (error instanceof Gone) this.#pending.unshift(change);
        this.#tellAsked();
        this.#fail(error);
        this.#busy = false;
        if (error instanceof Gone) return;
      }
    }
    this.#busy = false;
    void this.#work();
  }

  #done(before: string, change: Pending, edited: Edited): void {
    this.#looks.drop();
    clearTimeout(this.#rest);
    if (change.gesture !== undefined) this.#rest = window.setTimeout(() => this.look(), REST_MS);
    if (edited.source !== before) this.#history.note(before, change.label, change.gesture ?? null);
    this.refused.set(undefined);
    this.turn = change.gesture === undefined ? { moving: false, asked: null } : { moving: true, asked: change.asked };
    this.#sent = undefined;
    this.#take(edited.look);
    this.document.set({ ...this.document.value, source: edited.source });
    this.#tellAsked();
    if (this.turn.asked !== null) performance.measure("numbers", { start: this.turn.asked });
  }

  #take(look: Looked): void {
    this.problems.set(look.problems);
    if (look.basket) this.shown.set(look.basket);
  }

  #fail(error: unknown): void {
    if (error instanceof Gone) this.onGone();
    else if (error instanceof Refusal) this.refused.set(error);
    else throw error;
  }
}
