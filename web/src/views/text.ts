/** The pattern's own text, to be read and mended by hand. */

import type { Problem } from "../api/types.ts";
import { attribute, el, fill } from "../dom/element.ts";
import { newId } from "../form/context.ts";
import type { Bench } from "../state/bench.ts";
import { t } from "../words/texts.ts";
import type { View } from "./view.ts";

export class TextView implements View {
  readonly id = "text";
  readonly node: HTMLElement;
  readonly #text = el("textarea", { spellcheck: "false", autocomplete: "off", id: newId("text") });
  readonly #problems = el("ul", { class: "problems", id: newId("problems") });

  constructor(private readonly bench: Bench) {
    const label = el("label", { for: this.#text.id }, t("bench-text-label"));
    const take = el("button", { type: "button", onclick: () => this.#take() }, t("bench-text-take"));
    attribute(this.#text, "aria-describedby", this.#problems.id);
    this.node = el("div", { class: "text-view" }, label, this.#problems, this.#text, el("div", { class: "row" }, take));
    bench.document.follow(({ source }) => {
      this.#text.value = source;
    });
    bench.problems.follow((problems) => this.#complain(problems));
    this.#text.addEventListener("input", () => bench.typing.set(this.#text.value));
    this.#text.addEventListener("change", () => this.#take());
  }

  enter(): void {
    this.#text.value = this.bench.document.value.source;
  }

  leave(): void {
    this.#take();
  }

  #take(): void {
    this.bench.replace(this.#text.value, t("bench-did-text"));
    this.bench.typing.set(undefined);
  }

  #complain(problems: readonly Problem[]): void {
    attribute(this.#text, "aria-invalid", problems.length > 0 ? "true" : null);
    fill(
      this.#problems,
      ...problems.map((problem) =>
        el(
          "li",
          {},
          el("button", { type: "button", class: "quiet", onclick: () => this.#goTo(problem) }, t("bench-text-at", { line: problem.line, column: problem.column })),
          el("span", {}, [problem.message, problem.help].filter(Boolean).join(". ")),
        ),
      ),
    );
  }

  #goTo({ line, column }: Problem): void {
    const lines = this.#text.value.split("\n");
    const start = lines.slice(0, line - 1).reduce((sum, text) => sum + text.length + 1, 0) + column - 1;
    this.#text.focus();
    this.#text.setSelectionRange(start, start + Math.max(1, (lines[line - 1]?.length ?? 0) - column + 1));
  }
}
