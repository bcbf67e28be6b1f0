/** What was left open and is chosen otherwise than before: a material, a wood, a way. Lengths and counts follow anyway. */

import type { Field, Shown, Used } from "../api/types.ts";
import { t } from "../words/texts.ts";

export interface Anew {
  readonly path: string;
  /** Name of the value with its part. */
  readonly what: string;
  readonly before: Used;
  readonly after: Used;
}

const KINDS = new Set<Field["kind"]>(["material", "wood", "word", "open-word"]);

export function chosenAnew(before: Shown, now: Shown): Anew[] {
  const old = left(before);
  return [...left(now)].flatMap(([path, [what, after]]) => {
    const was = old.get(path)?.[1];
    return was === undefined || was.word === after.word ? [] : [{ path, what, before: was, after }];
  });
}

export function saidAnew({ what, before, after }: Anew): string {
  return t("bench-anew", { what, before: before.text, after: after.text });
}

/** What is used where nothing is written, by its path, with its name. */
function left(shown: Shown): Map<string, [string, Used]> {
  return new Map(
    shown.groups.flatMap(({ label: part, fields }) =>
      fields.flatMap(({ path, label, kind, written, used }): [string, [string, Used]][] =>
        written === null && used !== null && KINDS.has(kind) ? [[path, [t("bench-in-part", { part, what: label }), used]]] : [],
      ),
    ),
  );
}
