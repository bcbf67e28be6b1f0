/** The page's few signs, drawn as lines. */

import { svg } from "./element.ts";

const PATHS = {
  undo: "M9 7 4 12l5 5M4 12h10a6 6 0 0 1 6 6",
  redo: "m15 7 5 5-5 5M20 12H10a6 6 0 0 0-6 6",
  up: "m6 14 6-6 6 6",
  down: "m6 10 6 6 6-6",
  plus: "M12 5v14M5 12h14",
  minus: "M5 12h14",
  close: "m6 6 12 12M18 6 6 18",
  print: "M7 9V4h10v5M7 17H4V9h16v8h-3M7 14h10v6H7z",
  light: "M12 3v2M12 19v2M3 12h2M19 12h2M6 6l1 1M17 17l1 1M18 6l-1 1M7 17l-1 1M12 8a4 4 0 1 1 0 8 4 4 0 0 1 0-8",
  dark: "M20 14A8 8 0 0 1 10 4a8 8 0 1 0 10 10z",
  home: "M4 12a8 8 0 1 0 3-6M4 4v4h4",
} as const;

export type Sign = keyof typeof PATHS;

/** A sign; it says nothing to a screen reader, so its button needs a name. */
export function icon(sign: Sign): SVGSVGElement {
  return svg("svg", { viewBox: "0 0 24 24", class: "icon", "aria-hidden": "true" }, svg("path", { d: PATHS[sign] }));
}
