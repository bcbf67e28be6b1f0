/** Undo and redo over whole texts of a pattern. */

export interface UndoStep {
  /** The text before the step was taken. */
  readonly source: string;
  /** What the step did, for the button's name. */
  readonly label: string;
}

export interface UndoStack {
  readonly past: readonly UndoStep[];
  readonly future: readonly UndoStep[];
}

/** So many steps can be taken back. */
const MOST_STEPS = 200;

export class History {
  #past: UndoStep[];
  #future: UndoStep[];
  /** Steps of one drag share a gesture and are taken back as one. */
  #gesture: string | null = null;

  constructor(stack: UndoStack = { past: [], future: [] }) {
    this.#past = [...stack.past];
    this.#future = [...stack.future];
  }

  get stack(): UndoStack {
    return { past: this.#past, future: this.#future };
  }

  get undoable(): UndoStep | undefined {
    return this.#past.at(-1);
  }

  get redoable(): UndoStep | undefined {
    return this.#future.at(-1);
  }

  /** Notes that the text was `before` when a step was taken. */
  note(before: string, label: string, gesture: string | null): void {
    this.#future = [];
    if (gesture !== null && gesture === this.#gesture) return;
    this.#gesture = gesture;
    this.#past.push({ source: before, label });
    if (this.#past.length > MOST_STEPS) this.#past.shift();
  }

  /** Takes the last step back: the text to return to, given the text now. */
  undo(now: string): string | undefined {
    return this.#move(this.#past, this.#future, now);
  }

  redo(now: string): string | undefined {
    return this.#move(this.#future, this.#past, now);
  }

  #move(from: UndoStep[], to: UndoStep[], now: string): string | undefined {
    const step = from.pop();
    if (!step) return undefined;
    this.#gesture = null;
    to.push({ source: now, label: step.label });
    return step.source;
  }
}
