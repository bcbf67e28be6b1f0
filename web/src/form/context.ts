/** What every field of the form may ask for. */

import type { ColourName, Edit, MaterialName, Shown, Word } from "../api/types.ts";
import type { Change } from "../state/bench.ts";

export interface FormContext {
  /** The text as it is. */
  readonly source: () => string;
  readonly shown: () => Shown | undefined;
  /** Whether a change was asked for that is not answered yet. */
  readonly busy: () => boolean;
  /** The server did not answer. */
  readonly gone: () => void;
  /** Takes the last change back. */
  readonly undo: () => void;
  /** Changes the pattern. */
  readonly edit: (change: Change) => void;
  /** Notes what a field will change when it is left; nothing if it will change nothing. */
  readonly typing: (change: Change | undefined) => void;
  /** The materials that may be named: the pattern's own and the catalogue's. */
  readonly materials: () => readonly MaterialName[];
  readonly woods: () => readonly Word[];
  readonly colours: () => readonly ColourName[];
}

let gestures = 0;

/** A name for a drag that begins. */
export function newGesture(): string {
  gestures += 1;
  return `drag-${gestures}`;
}

let names = 0;

/** An identifier for an element that another one refers to. */
export function newId(stem: string): string {
  names += 1;
  return `${stem}-${names}`;
}

export function set(path: string, value: Extract<Edit, { do: "set" }>["value"]): Edit {
  return { do: "set", path, value };
}
