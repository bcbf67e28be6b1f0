/** A piece of the weaving, painted small: weavers pass over staves as they do on the basket. */

import type { LittleChart } from "../api/types.ts";
import { el } from "../dom/element.ts";

const CELL = { width: 9, height: 7 };
/** How much of a cell is dark on either side of a stave. */
const STAVE_SIDE = 1.75;
const GAP = "#4a3a2a";

/** The picture; it says nothing to a screen reader, for what it shows is told beside it. */
export function littlePicture(chart: LittleChart): HTMLCanvasElement {
  const columns = chart.rows[0]?.length ?? 0;
  const [width, height] = [columns * CELL.width, chart.rows.length * CELL.height];
  const scale = 2;
  const canvas = el("canvas", { class: "little", "aria-hidden": "true", width: width * scale, height: height * scale });
  const pen = canvas.getContext("2d");
  if (!pen) return canvas;
  pen.scale(scale, scale);
  pen.fillStyle = GAP;
  pen.fillRect(0, 0, width, height);
  for (const [row, cells] of chart.rows.entries()) {
    for (const [column, [colour, weaver]] of cells.entries()) {
      const [x, y] = [column * CELL.width, row * CELL.height];
      pen.fillStyle = chart.colours[colour] ?? GAP;
      if (weaver) pen.fillRect(x, y + 0.5, CELL.width, CELL.height - 1);
      else pen.fillRect(x + STAVE_SIDE, y, CELL.width - 2 * STAVE_SIDE, CELL.height);
      shade(pen, x, y, weaver);
    }
  }
  return canvas;
}

/** Light from above on what is rounded: a strip is brightest a third down, and dark at its lower edge. */
function shade(pen: CanvasRenderingContext2D, x: number, y: number, weaver: boolean): void {
  if (!weaver) return;
  pen.fillStyle = "rgb(255 255 255 / 28%)";
  pen.fillRect(x, y + 1.25, CELL.width, 1.5);
  pen.fillStyle = "rgb(0 0 0 / 28%)";
  pen.fillRect(x, y + CELL.height - 1.5, CELL.width, 1);
}
