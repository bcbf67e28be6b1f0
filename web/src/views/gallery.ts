/** A view of drawings, drawn one after the other when the hand rests. */

import type { DrawingView } from "../api/types.ts";
import { el } from "../dom/element.ts";
import { Gone } from "../server/client.ts";
import type { Bench } from "../state/bench.ts";
import { Sheet } from "./drawing.ts";
import { Watch, type View } from "./view.ts";

export class GalleryView implements View {
  readonly node: HTMLElement;
  readonly #sheets = el("div", { class: "sheets" });
  readonly #watch: Watch;
  #known = new Map<string, Sheet>();
  #busy = false;
  #again = false;

  constructor(
    readonly id: string,
    private readonly kind: DrawingView,
    private readonly bench: Bench,
    note: string | null,
  ) {
    this.node = el("div", { class: `gallery ${id}` }, note !== null && el("p", { class: "hint" }, note), this.#sheets);
    this.#watch = new Watch(bench, (moving) => {
      if (!moving || kind === "side") void this.#draw();
    });
    bench.place.listen(() => this.#mark());
  }

  enter(): void {
    this.#watch.enter();
  }

  leave(): void {
    this.#watch.leave();
  }

  /** Draws the sheets one by one; a change meanwhile begins with the first again. */
  async #draw(): Promise<void> {
    this.#arrange();
    this.#again = this.#busy;
    if (this.#busy) return;
    this.#busy = true;
    do {
      this.#again = false;
      for (const sheet of this.#known.values()) {
        await this.#sheet(sheet);
        if (this.#again) break;
      }
    } while (this.#again);
    this.#busy = false;
  }

  async #sheet(sheet: Sheet): Promise<void> {
    try {
      await sheet.draw(this.bench.document.value.source);
    } catch (error) {
      if (error instanceof Gone) this.bench.onGone();
      else throw error;
    }
  }

  /** Marks the place that a finding means. */
  #mark(): void {
    const mould = this.bench.shown.value?.mould;
    const place = this.bench.place.value;
    for (const sheet of this.#known.values()) sheet.mark(mould && place && { mould, place });
  }

  /** One sheet for each drawing that there is. */
  #arrange(): void {
    const names = this.bench.shown.value?.drawings.filter(({ view }) => view === this.kind) ?? [];
    const before = this.#known;
    this.#known = new Map();
    for (const { name, label } of names) {
      const sheet = before.get(name) ?? new Sheet(name, { reads: this.kind === "side" && !name.startsWith("lid-"), tells: this.kind === "stage" });
      before.delete(name);
      sheet.label(label);
      this.#known.set(name, sheet);
      this.#sheets.append(sheet.node);
    }
    for (const gone of before.values()) gone.node.remove();
    this.#mark();
  }
}
