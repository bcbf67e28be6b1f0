/** Painting the chart's cells on a canvas. */

import type { Chart } from "../api/types.ts";
import { attribute, el } from "../dom/element.ts";

export interface Cell {
  /** Counted from 1 at the base. */
  readonly row: number;
  readonly stave: number;
}

const LEAST_CELL = 7;
/** Height of a cell as a share of its width: about as rows lie on staves, and more where there is room. */
const FLAT = { least: 0.7, most: 1.9 };
/** How much of a cell is dark on either side of a stave, so that it is not taken for the weaver. */
const STAVE_SIDE = 0.24;
/** Room for the numbers at the edges. */
const EDGE = { left: 34, top: 8, bottom: 22 };

/** What a chart may take. */
export interface Room {
  readonly width: number;
  readonly height: number;
}

export class ChartPaper {
  readonly canvas = el("canvas", { tabindex: 0, role: "application" });
  chart: Chart | undefined;
  #room: Room = { width: 600, height: 0 };
  #cell = LEAST_CELL;
  #tall = LEAST_CELL * FLAT.least;
  #pointed: Cell | undefined;
  #stave: number | undefined;
  #rows: ReadonlySet<number> = new Set();

  show(chart: Chart, room: Room): void {
    this.chart = chart;
    this.#pointed = undefined;
    this.#room = room;
    this.paint();
  }

  fit(room: Room): void {
    const { width, height } = this.#room;
    if ((room.width === width && room.height === height) || room.width === 0) return;
    this.#room = room;
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
    const row = chart.rows.length - Math.floor((y - EDGE.top) / this.#tall);
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
    this.#cell = Math.max(LEAST_CELL, (this.#room.width - EDGE.left - 2) / chart.staves);
    const high = (this.#room.height - EDGE.top - EDGE.bottom - 2) / chart.rows.length;
    this.#tall = Math.min(this.#cell * FLAT.most, Math.max(this.#cell * FLAT.least, high));
    const [width, height] = [this.#right(chart) + 1, this.#foot(chart) + EDGE.bottom];
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
    return [this.#x(column), this.#y(rows - row)];
  }

  /** Edges of cells lie on whole pixels, so that no seam is seen between two. */
  #x(column: number): number {
    return EDGE.left + Math.round(column * this.#cell);
  }

  #y(line: number): number {
    return EDGE.top + Math.round(line * this.#tall);
  }

  #right(chart: Chart): number {
    return this.#x(chart.staves);
  }

  #foot(chart: Chart): number {
    return this.#y(chart.rows.length);
  }

  /** A weaver seen fills its cell from side to side, a stave stands in it from top to bottom. */
  #cells(pen: CanvasRenderingContext2D, chart: Chart, gap: string): void {
    const side = Math.max(1.5, this.#cell * STAVE_SIDE);
    pen.fillStyle = gap;
    pen.fillRect(EDGE.left, EDGE.top, this.#right(chart) - EDGE.left, this.#foot(chart) - EDGE.top);
    for (const row of chart.rows) {
      const [, below] = this.#corner({ row: row.number - 1, stave: 1 });
      for (const [index, kind] of row.cells.entries()) {
        const seen = chart.seen[kind];
        if (!seen) continue;
        const at = { row: row.number, stave: index + 1 };
        const [x, y] = this.#corner(at);
        const wide = this.#wide(at.stave);
        pen.fillStyle = seen.colour.hex;
        if (seen.weaver === null) pen.fillRect(x + side, y, wide - 2 * side, below - y);
        else pen.fillRect(x, y + 0.75, wide, below - y - 1.5);
      }
    }
  }

  /** Width of the column of a stave, in whole pixels. */
  #wide(stave: number): number {
    const column = this.chart?.numbers_rise_left ? (this.chart?.staves ?? 0) - stave : stave - 1;
    return this.#x(column + 1) - this.#x(column);
  }

  #marks(pen: CanvasRenderingContext2D, chart: Chart, colour: string): void {
    pen.fillStyle = colour;
    pen.globalAlpha = 0.45;
    for (const row of this.#rows) {
      const [, y] = this.#corner({ row, stave: 1 });
      pen.fillRect(EDGE.left, y, this.#right(chart) - EDGE.left, this.#tall);
    }
    if (this.#stave !== undefined) {
      const [x] = this.#corner({ row: 1, stave: this.#stave });
      pen.fillRect(x, EDGE.top, this.#wide(this.#stave), this.#foot(chart) - EDGE.top);
    }
    pen.globalAlpha = 1;
  }

  #numbers(pen: CanvasRenderingContext2D, chart: Chart, style: CSSStyleDeclaration): void {
    pen.fillStyle = style.getPropertyValue("--ink");
    pen.font = `12px ${style.fontFamily}`;
    const tall = this.#tall;
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
      pen.fillText(String(stave), x + this.#cell / 2, this.#foot(chart) + EDGE.bottom / 2 + 1);
    }
  }

  #cursor(pen: CanvasRenderingContext2D, ink: string): void {
    if (!this.#pointed) return;
    const [x, y] = this.#corner(this.#pointed);
    pen.strokeStyle = ink;
    pen.lineWidth = 2;
    pen.strokeRect(x - 1, y - 1, this.#cell + 2, this.#tall + 2);
  }
}
