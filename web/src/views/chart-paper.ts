/** Painting the chart's cells on a canvas. */

import type { Chart } from "../api/types.ts";
import { attribute, el } from "../dom/element.ts";

export interface Cell {
  /** Counted from 1 at the base. */
  readonly row: number;
  readonly stave: number;
}

const LEAST_CELL = 7;
/** Height of a cell as a share of its width, about as rows lie on staves. */
const FLAT = 0.7;
/** How much of a cell is dark on either side of a stave, so that it is not taken for the weaver. */
const STAVE_SIDE = 0.24;
/** Room for the numbers at the edges. */
const EDGE = { left: 34, top: 8, bottom: 22 };

export class ChartPaper {
  readonly canvas = el("canvas", { tabindex: 0, role: "application" });
  chart: Chart | undefined;
  #width = 600;
  #cell = LEAST_CELL;
  #pointed: Cell | undefined;
  #stave: number | undefined;
  #rows: ReadonlySet<number> = new Set();

  show(chart: Chart, width: number): void {
    this.chart = chart;
    this.#pointed = undefined;
    this.#width = width;
    this.paint();
  }

  fit(width: number): void {
    if (width === this.#width || width === 0) return;
    this.#width = width;
    this.paint();
  }

  point(cell: Cell): void {
    this.#pointed = cell;
    this.paint();
  }

  /** Marks a stave and rows. */
  mark(stave: number | undefined, rows: readonly number[]): void {
    this.#stave = stave;
    this.#rows = new Set(rows);
    this.paint();
  }

  /** The cell at a place of the canvas. */
  at(x: number, y: number): Cell | undefined {
    const { chart } = this;
    if (!chart) return undefined;
    const column = Math.floor((x - EDGE.left) / this.#cell);
    const row = chart.rows.length - Math.floor((y - EDGE.top) / (this.#cell * FLAT));
    if (column < 0 || column >= chart.staves || row < 1 || row > chart.rows.length) return undefined;
    return { row, stave: chart.numbers_rise_left ? chart.staves - column : column + 1 };
  }

  /** Scrolls the cell that is pointed at into sight. */
  reveal(scroll: HTMLElement): void {
    if (!this.#pointed) return;
    const [x, y] = this.#corner(this.#pointed);
    const middle = { left: x - scroll.clientWidth / 2, top: y - scroll.clientHeight / 2 };
    scroll.scrollTo({ ...middle, behavior: "instant" });
  }

  paint(): void {
    const { chart, canvas } = this;
    if (!chart) return;
    this.#cell = Math.max(LEAST_CELL, Math.floor((this.#width - EDGE.left - 2) / chart.staves));
    const width = EDGE.left + chart.staves * this.#cell + 1;
    const height = EDGE.top + Math.ceil(chart.rows.length * this.#cell * FLAT) + EDGE.bottom;
    const scale = Math.min(devicePixelRatio, 2);
    attribute(canvas, "width", Math.round(width * scale));
    attribute(canvas, "height", Math.round(height * scale));
    canvas.style.width = `${width}px`;
    canvas.style.height = `${height}px`;
    const pen = canvas.getContext("2d");
    if (!pen) return;
    pen.setTransform(scale, 0, 0, scale, 0, 0);
    pen.clearRect(0, 0, width, height);
    const style = getComputedStyle(canvas);
    this.#cells(pen, chart, style.getPropertyValue("--chart-gap"));
    this.#marks(pen, chart, style.getPropertyValue("--marked"));
    this.#numbers(pen, chart, style);
    this.#cursor(pen, style.getPropertyValue("--ink"));
  }

  #corner({ row, stave }: Cell): [number, number] {
    const count = this.chart?.staves ?? 0;
    const column = this.chart?.numbers_rise_left ? count - stave : stave - 1;
    const rows = this.chart?.rows.length ?? 0;
    return [EDGE.left + column * this.#cell, EDGE.top + (rows - row) * this.#cell * FLAT];
  }

  /** A weaver seen fills its cell from side to side, a stave stands in it from top to bottom. */
  #cells(pen: CanvasRenderingContext2D, chart: Chart, gap: string): void {
    const cell = this.#cell;
    const tall = cell * FLAT;
    const side = Math.max(1.5, cell * STAVE_SIDE);
    pen.fillStyle = gap;
    pen.fillRect(EDGE.left, EDGE.top, chart.staves * cell, chart.rows.length * tall);
    for (const row of chart.rows) {
      for (const [index, kind] of row.cells.entries()) {
        const seen = chart.seen[kind];
        if (!seen) continue;
        const [x, y] = this.#corner({ row: row.number, stave: index + 1 });
        pen.fillStyle = seen.colour.hex;
        if (seen.weaver === null) pen.fillRect(x + side, y, cell - 2 * side, tall);
        else pen.fillRect(x, y + 0.75, cell, tall - 1.5);
      }
    }
  }

  #marks(pen: CanvasRenderingContext2D, chart: Chart, colour: string): void {
    pen.fillStyle = colour;
    pen.globalAlpha = 0.45;
    const tall = this.#cell * FLAT;
    for (const row of this.#rows) {
      const [, y] = this.#corner({ row, stave: 1 });
      pen.fillRect(EDGE.left, y, chart.staves * this.#cell, tall);
    }
    if (this.#stave !== undefined) {
      const [x] = this.#corner({ row: 1, stave: this.#stave });
      pen.fillRect(x, EDGE.top, this.#cell, chart.rows.length * tall);
    }
    pen.globalAlpha = 1;
  }

  #numbers(pen: CanvasRenderingContext2D, chart: Chart, style: CSSStyleDeclaration): void {
    pen.fillStyle = style.getPropertyValue("--ink");
    pen.font = `12px ${style.fontFamily}`;
    const tall = this.#cell * FLAT;
    pen.textAlign = "right";
    pen.textBaseline = "middle";
    const every = Math.max(1, Math.ceil(14 / tall / 5) * 5);
    for (const { number } of chart.rows) {
      if (number !== 1 && number % every !== 0) continue;
      pen.fillText(String(number), EDGE.left - 6, this.#corner({ row: number, stave: 1 })[1] + tall / 2);
    }
    pen.textAlign = "center";
    for (let stave = 1; stave <= chart.staves; stave += 1) {
      if (stave !== 1 && stave % 5 !== 0) continue;
      const [x] = this.#corner({ row: 1, stave });
      pen.fillText(String(stave), x + this.#cell / 2, EDGE.top + chart.rows.length * tall + EDGE.bottom / 2 + 1);
    }
  }

  #cursor(pen: CanvasRenderingContext2D, ink: string): void {
    if (!this.#pointed) return;
    const [x, y] = this.#corner(this.#pointed);
    pen.strokeStyle = ink;
    pen.lineWidth = 2;
    pen.strokeRect(x - 1, y - 1, this.#cell + 2, this.#cell * FLAT + 2);
  }
}
