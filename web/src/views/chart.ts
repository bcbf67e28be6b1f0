/** The weave chart: the wall unrolled, one cell for each crossing. */

import type { Chart, FaceWord } from "../api/types.ts";
import { attribute, el, fill, say } from "../dom/element.ts";
import { signScrolling } from "../dom/scrolls.ts";
import { Gone, json } from "../server/client.ts";
import { Latest } from "../server/latest.ts";
import type { Bench } from "../state/bench.ts";
import { t } from "../words/texts.ts";
import { ChartPaper, type Cell, type Room } from "./chart-paper.ts";
import { Sheet } from "./drawing.ts";
import { Watch, type View } from "./view.ts";

const FACES: readonly FaceWord[] = ["outside", "inside"];

export class ChartView implements View {
  readonly id = "chart";
  readonly node: HTMLElement;
  readonly #paper = new ChartPaper();
  readonly #scroll: HTMLElement;
  readonly #swipe = el("p", { class: "hint", hidden: true });
  readonly #told = el("p", { class: "part-name", "aria-live": "polite" });
  readonly #faces: readonly HTMLButtonElement[];
  readonly #sheets = el("div", { class: "sheets" });
  readonly #watch: Watch;
  readonly #latest: Latest<{ source: string; face: FaceWord }, Chart>;
  #face: FaceWord = "outside";
  #cell: Cell | undefined;
  #printed = new Map<string, Sheet>();

  constructor(private readonly bench: Bench) {
    this.#faces = FACES.map((face) =>
      el("button", { type: "button", class: "quiet", onclick: () => this.#turn(face) }, t(`bench-chart-${face}`)),
    );
    this.#scroll = el("div", { class: "chart-scroll" }, this.#paper.canvas);
    say(this.#swipe, t("bench-chart-more"));
    const faces = el("div", { class: "row", role: "group", "aria-label": t("bench-chart-side") }, ...this.#faces);
    const printed = el("details", { class: "printed" }, el("summary", {}, t("bench-chart-printed")), this.#sheets);
    printed.addEventListener("toggle", () => printed.open && void this.#print());
    say(this.#told, t("bench-chart-hint"));
    this.node = el("div", { class: "chart" }, faces, this.#told, this.#swipe, this.#scroll, printed);
    this.#latest = new Latest(
      (question, signal) => json<Chart>("POST", "/api/chart", question, signal),
      (chart) => this.#show(chart),
      (error) => {
        if (error instanceof Gone) bench.onGone();
        else say(this.#told, t("bench-no-picture"));
      },
    );
    this.#watch = new Watch(bench, (moving) => {
      this.#ask();
      if (!moving && printed.open) void this.#print();
    });
    bench.place.listen(() => this.#mark());
    this.#listen();
    this.#press();
  }

  enter(): void {
    this.#watch.enter();
    this.#paper.fit(this.#room());
  }

  leave(): void {
    this.#watch.leave();
  }

  dye(): void {
    this.#paper.paint();
  }

  #ask(): void {
    this.#latest.request({ source: this.bench.document.value.source, face: this.#face });
  }

  #turn(face: FaceWord): void {
    this.#face = face;
    this.#press();
    if (this.bench.shown.value) this.#ask();
  }

  #press(): void {
    for (const [index, button] of this.#faces.entries()) attribute(button, "aria-pressed", FACES[index] === this.#face);
  }

  #show(chart: Chart): void {
    this.#paper.show(chart, this.#room());
    const size = { staves: chart.staves, rows: chart.rows.length };
    attribute(this.#paper.canvas, "aria-label", t("bench-chart-label", size));
    this.#mark();
  }

  /** Marks the stave, row or course that a finding means; other places are not on the chart. */
  #mark(): void {
    const place = this.bench.place.value;
    const chart = this.#paper.chart;
    const shown = place?.shown ?? [];
    const stave = shown.find(({ kind }) => kind === "stave")?.numbers[0];
    const woven = shown.filter(({ kind }) => kind === "row");
    const means = (row: number): boolean => woven.some(({ numbers: [only] }) => only === undefined || only === row);
    const rows = chart?.rows.map(({ number }) => number).filter(means) ?? [];
    this.#paper.mark(stave, rows);
    if (place && (stave !== undefined || rows.length > 0)) say(this.#told, t("bench-place-shown", { place: place.label }));
  }

  #listen(): void {
    const { canvas } = this.#paper;
    const point = (event: PointerEvent): void => this.#point(this.#paper.at(event.offsetX, event.offsetY));
    canvas.addEventListener("pointermove", point);
    canvas.addEventListener("pointerdown", point);
    canvas.addEventListener("focus", () => this.#point(this.#cell ?? { row: 1, stave: 1 }));
    canvas.addEventListener("keydown", (event) => this.#step(event));
    matchMedia("print").addEventListener("change", () => this.#paper.paint());
    new ResizeObserver(() => this.#paper.fit(this.#room())).observe(this.#scroll);
    signScrolling(this.#scroll, (more) => attribute(this.#swipe, "hidden", !more));
  }

  #room(): Room {
    return { width: this.#scroll.clientWidth, height: this.#scroll.clientHeight };
  }

  #step(event: KeyboardEvent): void {
    const chart = this.#paper.chart;
    const { row, stave } = this.#cell ?? { row: 1, stave: 1 };
    if (!chart) return;
    const left = chart.numbers_rise_left ? 1 : -1;
    const far = event.shiftKey ? 10 : 1;
    const next: Record<string, Cell> = {
      ArrowUp: { row: row + far, stave },
      ArrowDown: { row: row - far, stave },
      ArrowLeft: { row, stave: stave + left * far },
      ArrowRight: { row, stave: stave - left * far },
      Home: { row, stave: 1 },
      End: { row, stave: chart.staves },
      PageUp: { row: row + 10, stave },
      PageDown: { row: row - 10, stave },
    };
    const cell = event.ctrlKey || event.metaKey || event.altKey ? undefined : next[event.key];
    if (!cell) return;
    event.preventDefault();
    this.#point({
      row: Math.min(chart.rows.length, Math.max(1, cell.row)),
      stave: ((cell.stave - 1 + chart.staves) % chart.staves) + 1,
    });
    this.#paper.reveal(this.#scroll);
  }

  #point(cell: Cell | undefined): void {
    const chart = this.#paper.chart;
    if (!cell || !chart) return;
    this.#cell = cell;
    this.#paper.point(cell);
    say(this.#told, tell(chart, cell));
  }

  async #print(): Promise<void> {
    const names = this.bench.shown.value?.drawings.filter(({ view }) => view === "chart") ?? [];
    const sheets = names.map(({ name, label }) => {
      const sheet = this.#printed.get(name) ?? new Sheet(name);
      sheet.label(label);
      return sheet;
    });
    this.#printed = new Map(sheets.map((sheet) => [sheet.name, sheet]));
    fill(this.#sheets, ...sheets.map(({ node }) => node));
    for (const sheet of sheets) await sheet.draw(this.bench.document.value.source);
  }
}

/** What is at a crossing, in words. */
function tell(chart: Chart, { row, stave }: Cell): string {
  const line = chart.rows[row - 1];
  const seen = chart.seen[line?.cells[stave - 1] ?? -1];
  if (!line || !seen) return "";
  const values = { row, stave, course: line.course, colour: seen.colour.name, weaver: seen.weaver ?? 0 };
  const crossing = t(seen.weaver === null ? "bench-cell-under" : "bench-cell-over", values);
  const join = chart.joins.find((one) => one.row === row && (one.cut_over === stave || one.start_behind === stave));
  return join ? `${crossing} ${t("bench-cell-join", { cut: join.cut_over, start: join.start_behind })}` : crossing;
}
