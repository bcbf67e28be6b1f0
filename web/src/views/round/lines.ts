/** What stands in for the scene where there is no WebGL: the drawing of the stage. */

import { el, fill } from "../../dom/element.ts";
import { Gone } from "../../server/client.ts";
import { Latest } from "../../server/latest.ts";
import type { Bench } from "../../state/bench.ts";
import { t } from "../../words/texts.ts";
import { drawing } from "../drawing.ts";

interface Question {
  readonly source: string;
  readonly name: string;
}

export class LineStage {
  readonly node = el("div", { class: "paper line-stage" });
  readonly #latest: Latest<Question, SVGSVGElement>;

  constructor(private readonly bench: Bench) {
    this.#latest = new Latest(
      ({ source, name }, signal) => drawing(source, name, signal),
      (picture) => fill(this.node, picture),
      (error) => {
        if (error instanceof Gone) bench.onGone();
        else fill(this.node, el("p", {}, t("bench-no-picture")));
      },
    );
  }

  show(source: string, stage: string | undefined): void {
    const names = this.bench.shown.value?.drawings.map(({ name }) => name) ?? [];
    // The bare mould has no drawing of its own; the one with the base on it comes nearest.
    const nearest = stage === "prepared" ? "base-on-mould" : stage;
    const wanted = [`stage-${nearest}`, "stage-finished"].find((name) => names.includes(name));
    if (wanted !== undefined) this.#latest.request({ source, name: wanted });
  }
}
