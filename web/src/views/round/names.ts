/** What a piece of the picture is called, and which pieces are meant by a word. */

import type { PieceWord, Shown } from "../../api/types.ts";
import { find, t } from "../../words/texts.ts";
import type { Piece } from "./glb.ts";

/** Whether a word means this piece: numbers that it leaves out stand for any. */
export function means(word: PieceWord, piece: PieceWord): boolean {
  const numbered = word.numbers.every((number, index) => piece.numbers[index] === number);
  return word.kind === piece.kind && word.of === piece.of && numbered;
}

/** The name of a piece, with its number, material and length. */
export function describe(piece: Piece, all: readonly Piece[], shown: Shown | undefined): string {
  const { kind, numbers } = piece.word;
  const [number = 0, weaver = 0, strand = 0] = numbers;
  const like = all.filter((other) => means({ ...piece.word, numbers: numbers.slice(0, 1) }, other.word));
  // A weaver or strand that is the only one of its row goes without saying.
  const several = (index: number): boolean => like.some(({ word }) => word.numbers[index] !== numbers[index]);
  const values = { number, weaver: several(1) ? weaver : 0, strand: several(2) ? strand : 0 };
  const what = find(`bench-node-${kind}`, values) ?? kind;
  const length = shown?.lengths.find(({ piece: word }) => means(word, piece.word))?.length;
  const material = piece.material === kind ? "" : piece.material;
  const facts = [what, material, length === undefined ? "" : t("bench-node-length", { length })];
  return facts.filter((fact) => fact !== "").join(" · ");
}
