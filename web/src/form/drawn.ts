/** A weave drawn by hand: rows of signs, the uppermost first; `X` where the weaver passes over. */

import type { Edit } from "../api/types.ts";
import { set } from "./context.ts";

/** The word for such a weave. */
export const DRAWN = "drawn";
/** What only other weaves can have. */
const OTHERS = ["lean", "step", "band", "step-up", "way", "doubled", "chart-file"];
const PLAIN: readonly string[] = ["X.X.", ".X.X", "X.X.", ".X.X"];

/** What makes a course one that is drawn; it begins as plain weave. */
export function drawn(course: string): Edit[] {
  const away = OTHERS.map((key): Edit => ({ do: "remove", path: `${course}.${key}` }));
  return [...away, set(`${course}.weave`, DRAWN), set(`${course}.chart`, [...PLAIN])];
}

export type Cells = readonly (readonly boolean[])[];

export function read(rows: readonly string[]): Cells {
  const width = Math.max(1, ...rows.map((row) => row.length));
  return rows.map((row) => Array.from({ length: width }, (_, column) => /[xX#1]/.test(row[column] ?? ".")));
}

export function write(cells: Cells): string[] {
  return cells.map((row) => row.map((over) => (over ? "X" : ".")).join(""));
}

export const turns = {
  /** Left for right. */
  mirror: (cells: Cells): Cells => cells.map((row) => row.toReversed()),
  /** Upside down. */
  flip: (cells: Cells): Cells => cells.toReversed(),
  /** Over for under. */
  swap: (cells: Cells): Cells => cells.map((row) => row.map((over) => !over)),
  /** One stave on. */
  shift: (cells: Cells): Cells => cells.map((row) => [...row.slice(1), row[0] ?? false]),
  /** Twice as wide, by repeating. */
  repeat: (cells: Cells): Cells => cells.map((row) => [...row, ...row]),
} satisfies Record<string, (cells: Cells) => Cells>;

/** So many columns and rows: what is added repeats what is there. */
export function sized(cells: Cells, width: number, height: number): Cells {
  const rows = Array.from({ length: height }, (_, row) => cells[(cells.length - height + row + 100 * cells.length) % cells.length] ?? []);
  return rows.map((row) => Array.from({ length: width }, (_, column) => row[column % Math.max(1, row.length)] ?? false));
}
