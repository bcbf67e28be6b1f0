/** A basket cut through, with the part that is spoken of drawn strongly. */

import { svg } from "../dom/element.ts";

/** Which lines show which part of the form. */
const PARTS: Record<string, readonly string[]> = {
  mould: ["M22 74 14 28H86L78 74Z"],
  base: ["M24 74H76V80H24Z"],
  staves: ["M24 76 13 22", "M76 76 87 22", "M38 76 33 22", "M50 76V22", "M62 76 67 22"],
  weave: ["M21 68H79", "M20 60H80", "M19 52H81", "M17 44H83", "M16 36H84"],
  rim: ["M11 30V22H89V30Z"],
  lashing: ["M16 31 20 21", "M28 31 32 21", "M40 31 44 21", "M52 31 56 21", "M64 31 68 21", "M76 31 80 21"],
  lid: ["M13 20C28 10 72 10 87 20", "M46 12C46 6 54 6 54 12"],
  handle: ["M14 26C14-8 86-8 86 26", "M14 21V34", "M86 21V34"],
};

export function partPicture(part: string): SVGSVGElement | null {
  if (!(part in PARTS)) return null;
  const lines = Object.entries(PARTS).flatMap(([name, paths]) =>
    paths.map((d) => svg("path", { d, class: name === part ? "part-line on" : "part-line" })),
  );
  return svg("svg", { viewBox: "6 -4 88 88", class: "part-picture", "aria-hidden": "true" }, ...lines.toSorted((one, other) => Number(one.classList.contains("on")) - Number(other.classList.contains("on"))));
}
