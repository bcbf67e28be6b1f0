/** What a piece of the picture is called. */

import type { Shown } from "../../api/types.ts";
import { find, t, type Values } from "../../words/texts.ts";

/** The piece of the cut list that tells how long a node of the picture is. */
const CUTS: Record<string, string> = {
  stave: "cut-stave",
  "outer-hoop": "cut-outer-hoop",
  "inner-hoop": "cut-inner-hoop",
  filler: "cut-filler",
  wrap: "cut-lashing",
  pin: "cut-pin",
  ear: "cut-ear",
  bail: "cut-bail",
  rivet: "cut-rivet",
};

interface Parsed {
  readonly kind: string;
  readonly values: Values;
}

/** Takes a node's name apart: `stave 12`, `row 3, weaver 2, strand 4`, `pin in stave 7`, `outer hoop`. */
export function parse(name: string): Parsed {
  const pin = /^pin in stave (\d+)/.exec(name);
  if (pin) return { kind: "pin", values: { number: Number(pin[1]) } };
  const [head = "", ...rest] = name.split(", ");
  const numbered = /^(.*?) (\d+)$/.exec(head);
  const values: Values = numbered ? { number: Number(numbered[2]) } : {};
  for (const part of rest) {
    const [what = "", number] = part.split(" ");
    values[what] = Number(number);
  }
  return { kind: (numbered?.[1] ?? head).replaceAll(" ", "-"), values };
}

/** The name of a piece, with its number, material and length. */
export function describe(name: string, material: string, shown: Shown | undefined): string {
  const { kind, values } = parse(name);
  const what = find(`bench-node-${kind}`, { weaver: 0, strand: 0, ...values }) ?? name;
  return [what, ...facts(kind, values, material, shown)].join(" · ");
}

function facts(kind: string, values: Values, material: string, shown: Shown | undefined): string[] {
  if (kind === "row") {
    const row = Number(values.number);
    const course = shown?.courses.each.find(({ first_row, rows }) => row >= first_row && row < first_row + rows);
    return course ? [course.summary] : [material];
  }
  const cut = shown?.cuts.find(({ id }) => id === CUTS[kind]);
  const length = cut?.length ? [t("bench-node-length", { length: cut.length })] : [];
  return [cut?.material ?? material, ...length].filter((fact) => fact !== "" && fact !== kind);
}
