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
  leanLeft: "M20 20 4 4M4 4v8M4 4h8",
  leanRight: "M4 20 20 4M20 4v8M20 4h-8",
  runs: "m5 13 5 5L20 6",
  ask: "M9 9a3 3 0 1 1 4 3c-1 .5-1 1-1 2M12 17v.5",
  chosen: "M4 8h6M14 8h6M8 4v6M8 14v6M4 16h2M10 16h10M16 4v2M16 10v10",
  own: "m5 19 1-4L16 5l3 3L9 18zM14 7l3 3",
  ruler: "M3 8h18v8H3zM7 8v4M11 8v4M15 8v4M19 8v4",
  camera: "M4 8h4l2-2h4l2 2h4v11H4zM12 10a3.5 3.5 0 1 0 .01 0",
  home: "M4 12a8 8 0 1 0 3-6M4 4v4h4",
} as const;

export type Sign = keyof typeof PATHS;

/** A sign; it says nothing to a screen reader, so its button needs a name. */
export function icon(sign: Sign): SVGSVGElement {
  return svg("svg", { viewBox: "0 0 24 24", class: "icon", "aria-hidden": "true" }, svg("path", { d: PATHS[sign] }));
}
