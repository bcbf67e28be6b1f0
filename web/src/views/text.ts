/** The pattern's own text, to be read and mended by hand. */

import type { Problem } from "../api/types.ts";
import { attribute, el, fill } from "../dom/element.ts";
import { newId } from "../form/context.ts";
import type { Notices } from "../shell/notices.ts";
import type { Bench } from "../state/bench.ts";
import { t } from "../words/texts.ts";
import { exactly } from "../form/said.ts";
import type { View } from "./view.ts";

export class TextView implements View {
  readonly id = "text";
  readonly node: HTMLElement;
  readonly #text = el("textarea", { spellcheck: "false", autocomplete: "off", id: newId("text") });
  /** Whether something is typed that is not taken over. */
  #half = false;
  readonly #problems = el("ul", { class: "problems", id: newId("problems") });

  constructor(private readonly bench: Bench, private readonly notices: Notices) {
    const label = el("label", { for: this.#text.id }, t("bench-text-label"));
    const take = el("button", { type: "button", onclick: () => this.#take() }, t("bench-text-take"));
    attribute(this.#text, "aria-describedby", this.#problems.id);
    this.node = el("div", { class: "text-view" }, label, this.#problems, this.#text, el("div", { class: "row" }, take));
    // What is typed here and not taken yet stays, whatever happens to the pattern meanwhile.
    bench.document.follow(() => {
      if (this.#half) bench.typing.set(this.#text.value);
      else this.#show();
    });
    bench.problems.follow((problems) => this.#complain(problems));
    this.#text.addEventListener("input", () => {
      this.#half = true;
      bench.typing.set(this.#text.value);
    });
  }

  enter(): void {
    this.notices.drop("text");
    if (!this.#half) this.#show();
  }

  /** Half a text is not taken over unasked. */
  leave(): void {
    if (!this.#half) return;
    if (this.#text.value === this.bench.document.value.source) this.#drop();
    else {
      this.notices.tell("text", t("bench-text-left"), [
        { label: t("bench-text-take"), run: () => this.#take() },
        { label: t("bench-text-drop"), run: () => this.#drop() },
      ]);
    }
  }

  #show(): void {
    this.#text.value = this.bench.document.value.source;
  }

  #take(): void {
    const text = this.#text.value;
    this.#half = false;
    this.bench.typing.set(undefined);
    this.bench.replace(text, t("bench-did-text"));
  }

  #drop(): void {
    this.#half = false;
    this.bench.typing.set(undefined);
    this.#show();
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
          el("span", {}, exactly(problem)),
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
