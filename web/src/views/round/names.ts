/** What a piece of the picture is called. */

import type { Shown } from "../../api/types.ts";
import { find, t, type Values } from "../../words/texts.ts";

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
  const length = lengthOf(name, kind, shown);
  const facts = [what, material === kind ? "" : material, length === undefined ? "" : t("bench-node-length", { length })];
  return facts.filter((fact) => fact !== "").join(" · ");
}

/** The length of this very piece, or that of all of its like. */
function lengthOf(name: string, kind: string, shown: Shown | undefined): string | undefined {
  const names = [name, name.split(", ")[0], kind.replaceAll("-", " ")];
  for (const wanted of names) {
    const piece = shown?.lengths.find(({ node }) => node === wanted);
    if (piece) return piece.length;
  }
  return undefined;
}
