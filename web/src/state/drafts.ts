/**
 * Unsaved work, kept in the browser so that it survives a crash of browser or server.
 *
 * It lies in the browser's database, which writes it to the disk within milliseconds; its simpler storage
 * takes seconds for that, and what was typed in them would be lost with the browser.
 *
 * Each window keeps its own draft under its own name and holds a lock of that name while it lives; a
 * draft whose window is gone may be taken up by the next window that opens the pattern.
 */

import type { Change } from "./bench.ts";
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
  /** Changes that the server has not made yet. */
  readonly asked?: readonly Change[];
  /** What was being typed: the change or the whole text that it would have been. */
  readonly typing?: Change | string | undefined;
  /** When it was kept, in milliseconds since 1970. */
  readonly time: number;
}

const DATABASE = "stavewright";
const STORE = "drafts";
const WINDOW = "stavewright-window";
/** So many steps back are kept with a draft. */
const KEPT_STEPS = 25;

export class Drafts {
  #key: string;

  private constructor(
    private readonly folder: string,
    /** None where the browser keeps nothing, as some do in private windows. */
    private readonly database: IDBDatabase | undefined,
  ) {
    this.#key = this.#name(sessionStorage.getItem(WINDOW) ?? fresh());
  }

  /** The drafts of a folder. This window holds its lock for as long as it lives; a copied window takes a new name. */
  static async of(folder: string): Promise<Drafts> {
    const drafts = new Drafts(folder, await opened().catch(() => undefined));
    if ("locks" in navigator && !(await hold(drafts.#key))) {
      drafts.#key = drafts.#name(fresh());
      await hold(drafts.#key);
    }
    return drafts;
  }

  #name(window: string): string {
    sessionStorage.setItem(WINDOW, window);
    return `${this.folder}:${window}`;
  }

  /** Keeps a draft; settles when it is safe. */
  async put(draft: Omit<Draft, "time">): Promise<void> {
    const { past, future } = draft.undo ?? { past: [], future: [] };
    const undo: UndoStack = { past: past.slice(-KEPT_STEPS), future: future.slice(-KEPT_STEPS) };
    const kept = { ...draft, time: Date.now() };
    const write = (value: Draft) => this.#do("readwrite", (store) => store.put(value, this.#key));
    // Where the browser's room is full, the text at least is kept, without the way it came about; where it
    // keeps nothing at all, the work goes on without.
    await write({ ...kept, undo })
      .catch(() => write({ ...kept, undo: { past: [], future: [] } }))
      .catch(() => undefined);
  }

  /** This window's own draft. */
  async own(): Promise<Draft | undefined> {
    return this.#get(this.#key);
  }

  /** Takes the newest unsaved draft of a window that is gone; it is this window's from then on. */
  async orphan(): Promise<Draft | undefined> {
    if (!("locks" in navigator)) return undefined;
    const held = new Set((await navigator.locks.query()).held?.map((lock) => lock.name));
    const all = (await this.#do("readonly", (store) => store.getAllKeys())) ?? [];
    const keys = all.map(String).filter((key) => key.startsWith(`${this.folder}:`) && !held.has(key));
    const drafts = await Promise.all(keys.map(async (key) => ({ key, draft: await this.#get(key) })));
    const unsaved = drafts.flatMap(({ key, draft }) => (draft && isUnsaved(draft) ? [{ key, draft }] : []));
    const newest = unsaved.sort((one, other) => other.draft.time - one.draft.time)[0];
    if (!newest) return undefined;
    await this.put(newest.draft);
    await this.#do("readwrite", (store) => store.delete(newest.key));
    return newest.draft;
  }

  async #get(key: string): Promise<Draft | undefined> {
    const draft: unknown = await this.#do("readonly", (store) => store.get(key));
    return isDraft(draft) ? draft : undefined;
  }

  /** Does one thing and waits until it is done for good. */
  async #do<T>(mode: IDBTransactionMode, act: (store: IDBObjectStore) => IDBRequest<T>): Promise<T | undefined> {
    const { database } = this;
    if (!database) return undefined;
    return new Promise((resolve, reject) => {
      const doing = database.transaction(STORE, mode, { durability: "strict" });
      const request = act(doing.objectStore(STORE));
      doing.oncomplete = () => resolve(request.result);
      doing.onabort = () => reject(doing.error ?? new Error("the browser keeps nothing"));
      // The window may be about to close: nothing more is coming.
      doing.commit();
    });
  }
}

function opened(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(DATABASE, 1);
    request.onupgradeneeded = () => request.result.createObjectStore(STORE);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error("the browser keeps nothing"));
  });
}

function isUnsaved({ source, saved, asked, typing }: Draft): boolean {
  return source !== saved || (asked ?? []).length > 0 || typing !== undefined;
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

function isDraft(draft: unknown): draft is Draft {
  return (
    typeof draft === "object" && draft !== null && "source" in draft && typeof draft.source === "string" &&
    "saved" in draft && typeof draft.saved === "string" && "time" in draft
  );
}
