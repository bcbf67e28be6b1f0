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
  left: "m14 6-6 6 6 6",
  right: "m10 6 6 6-6 6",
  turnLeft: "M12 6c-5 0-9 2-9 5s4 5 9 5 9-2 9-5M3 11l-1-5M3 11l5-1",
  turnRight: "M12 6c5 0 9 2 9 5s-4 5-9 5-9-2-9-5M21 11l1-5M21 11l-5-1",
  home: "M4 12a8 8 0 1 0 3-6M4 4v4h4",
} as const;

export type Sign = keyof typeof PATHS;

/** A sign; it says nothing to a screen reader, so its button needs a name. */
export function icon(sign: Sign): SVGSVGElement {
  return svg("svg", { viewBox: "0 0 24 24", class: "icon", "aria-hidden": "true" }, svg("path", { d: PATHS[sign] }));
}
