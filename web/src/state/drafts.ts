/**
 * Unsaved work, kept in the browser so that it survives a crash of browser or server.
 *
 * Each window keeps its own draft under its own name and holds a lock of that name while it lives; a
 * draft whose window is gone may be taken up by the next window that opens the pattern.
 */

import type { UndoStack } from "./history.ts";

export interface Draft {
  /** Name of the pattern; none if it was never saved. */
  readonly name: string | null;
  readonly source: string;
  /** The text of the file that it grew from, and its hash. */
  readonly saved: string;
  readonly hash: string | null;
  /** The way it came about; a draft is worth keeping without it. */
  readonly undo?: UndoStack;
  /** When it was kept, in milliseconds since 1970. */
  readonly time: number;
}

const PREFIX = "stavewright-draft:";
const WINDOW = "stavewright-window";
/** So many steps back are kept with a draft. */
const KEPT_STEPS = 25;

export class Drafts {
  #key: string;

  constructor(private readonly folder: string) {
    this.#key = this.#name(sessionStorage.getItem(WINDOW) ?? fresh());
  }

  /** Holds this window's lock for as long as it lives; a copied window takes a new name. */
  async settle(): Promise<void> {
    if (!("locks" in navigator)) return;
    if (!(await hold(this.#key))) {
      this.#key = this.#name(fresh());
      await hold(this.#key);
    }
  }

  #name(window: string): string {
    sessionStorage.setItem(WINDOW, window);
    return `${PREFIX}${this.folder}:${window}`;
  }

  put(draft: Omit<Draft, "time">): void {
    const { past, future } = draft.undo ?? { past: [], future: [] };
    const undo: UndoStack = { past: past.slice(-KEPT_STEPS), future: future.slice(-KEPT_STEPS) };
    const text = JSON.stringify({ ...draft, undo, time: Date.now() });
    try {
      localStorage.setItem(this.#key, text);
    } catch {
      // The browser's room is full: keep the text at least, without the way it came about.
      localStorage.removeItem(this.#key);
      localStorage.setItem(this.#key, JSON.stringify({ ...draft, undo: undefined, time: Date.now() }));
    }
  }

  drop(): void {
    localStorage.removeItem(this.#key);
  }

  /** This window's own draft. */
  own(): Draft | undefined {
    return read(this.#key);
  }

  /** Takes the newest unsaved draft of a window that is gone; it is this window's from then on. */
  async orphan(): Promise<Draft | undefined> {
    if (!("locks" in navigator)) return undefined;
    const held = new Set((await navigator.locks.query()).held?.map((lock) => lock.name));
    const keys = Object.keys(localStorage).filter((key) => key.startsWith(`${PREFIX}${this.folder}:`) && !held.has(key));
    const drafts = keys.flatMap((key) => {
      const draft = read(key);
      return draft ? [{ key, draft }] : [];
    });
    const unsaved = drafts.filter(({ draft }) => draft.source !== draft.saved);
    const newest = unsaved.sort((one, other) => other.draft.time - one.draft.time)[0];
    if (!newest) return undefined;
    localStorage.removeItem(newest.key);
    this.put(newest.draft);
    return newest.draft;
  }
}

function fresh(): string {
  return crypto.getRandomValues(new Uint32Array(2)).join("-");
}

/** Takes a lock for good; tells whether it was free. */
function hold(name: string): Promise<boolean> {
  return new Promise((resolve) => {
    void navigator.locks.request(name, { ifAvailable: true }, (lock) => {
      resolve(lock !== null);
      return lock ? new Promise(() => undefined) : undefined;
    });
  });
}

function read(key: string): Draft | undefined {
  try {
    const draft: unknown = JSON.parse(localStorage.getItem(key) ?? "null");
    return isDraft(draft) ? draft : undefined;
  } catch {
    return undefined;
  }
}

function isDraft(draft: unknown): draft is Draft {
  return (
    typeof draft === "object" && draft !== null && "source" in draft && typeof draft.source === "string" &&
    "saved" in draft && typeof draft.saved === "string" && "time" in draft
  );
}
