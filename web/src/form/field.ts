/** One field: its name, its control, what is used, what it means, and who chose it. */

import type { Field, Problem } from "../api/types.ts";
import { attribute, el, fill, say } from "../dom/element.ts";
import { icon } from "../dom/icons.ts";
import { List } from "../dom/list.ts";
import { t } from "../words/texts.ts";
import { newId, type FormContext } from "./context.ts";
import type { Control } from "./control.ts";
import { controlFor } from "./controls.ts";
import { said } from "./said.ts";
import { Slide } from "./slide.ts";
import { swatch } from "./swatch.ts";
import { typed } from "./values.ts";

export class FieldView {
  readonly node: HTMLElement;
  readonly #label: HTMLElement;
  readonly #control: Control;
  readonly #slide: Slide | null;
  readonly #used = el("p", { class: "used" });
  readonly #swatches = el("p", { class: "swatches", "aria-hidden": "true" });
  readonly #patches = new List(this.#swatches, swatch);
  readonly #why = el("p", { class: "why" });
  readonly #about = el("p", {});
  readonly #takes = el("p", { class: "fact" });
  readonly #help: HTMLElement;
  readonly #ask: HTMLButtonElement;
  readonly #wrong = el("p", { class: "wrong" });
  readonly #hand: HTMLButtonElement;
  #field: Field;
  #stamp = "";

  constructor(field: Field, private readonly context: FormContext) {
    this.#field = field;
    const id = newId("field");
    this.#control = controlFor(field, context);
    const grouped = field.kind === "materials" || field.kind === "words";
    this.#label = grouped ? el("span", { id: `${id}-name` }) : el("label", { for: id, id: `${id}-name` });
    this.#control.input.id = id;
    if (grouped) attribute(this.#control.input, "aria-labelledby", `${id}-name`);
    if (field.kind === "material") attribute(this.#control.input, "aria-labelledby", `${id}-name ${id}`);
    this.#slide = field.kind === "length" || field.kind === "count" ? new Slide(field, context) : null;
    this.#used.id = `${id}-used`;
    this.#why.id = `${id}-why`;
    this.#wrong.id = `${id}-wrong`;
    this.#help = el("div", { class: "help", id: `${id}-help`, hidden: true }, this.#about, this.#takes, this.#why);
    attribute(this.#control.input, "aria-describedby", `${this.#wrong.id} ${this.#used.id} ${this.#why.id}`);
    this.#ask = el("button", { type: "button", class: "quiet sign ask", "aria-expanded": "false", "aria-controls": this.#help.id, onclick: () => this.#explain() }, icon("ask"));
    this.#hand = el("button", { type: "button", class: "quiet sign hand", onclick: () => this.#handOver() });
    const checked = field.kind === "flag" || field.kind === "part";
    this.node = el(
      "div",
      { class: checked ? "field checked" : "field", "data-path": field.path },
      el("div", { class: "head" }, this.#label, this.#ask, this.#hand),
      this.#control.node,
      this.#slide?.node,
      this.#wrong,
      this.#used,
      this.#swatches,
      this.#help,
    );
  }

  show(field: Field, problem: Problem | undefined): void {
    this.#field = field;
    this.#control.show(field);
    this.#slide?.show(field);
    this.complain(problem);
    const stamp = JSON.stringify(field);
    if (stamp !== this.#stamp) this.#tell(field);
    this.#stamp = stamp;
    if (field.kind === "colours") this.#showSwatches();
  }

  /** Says what it is and who chose it. */
  #tell(field: Field): void {
    const chosen = field.why !== null;
    say(this.#label, field.label);
    say(this.#about, `${field.about}.`);
    say(this.#takes, t("bench-takes", { takes: field.takes }));
    attribute(this.#ask, "aria-label", t("bench-help-on", { what: field.label }));
    say(this.#used, field.used && !this.#saysItself(field) ? field.used.text : "");
    say(this.#why, field.why === null ? "" : t("bench-chosen", { why: field.why }));
    this.node.classList.toggle("chosen", chosen);
    this.#showHand(field);
  }

  /** Shows what is wrong with what was typed, or that nothing is. */
  complain(problem: Problem | undefined): void {
    say(this.#wrong, problem ? said(problem) : "");
    attribute(this.#control.input, "aria-invalid", problem ? "true" : null);
    this.node.classList.toggle("has-wrong", problem !== undefined);
  }

  focus(): void {
    const folded = this.node.closest<HTMLDetailsElement>("details.rest");
    if (folded) folded.open = true;
    this.node.scrollIntoView({ block: "center" });
    this.#control.input.focus();
  }

  #explain(): void {
    this.#help.hidden = !this.#help.hidden;
    attribute(this.#ask, "aria-expanded", String(!this.#help.hidden));
  }

  /** Whether the control shows the value in use already. */
  #saysItself({ kind, used, written, options }: Field): boolean {
    const chosen = kind === "material" || (kind === "word" && (written !== null || options.some(({ word }) => word === used?.word)));
    if (kind === "part" || kind === "flag" || chosen || (kind !== "word" && used?.text === used?.word)) return true;
    return written !== null && ["materials", "words", "chart", "text"].includes(kind);
  }

  /** One sign says who chose, and pressing it hands the choice over. */
  #showHand(field: Field): void {
    const taking = field.written === null;
    const edits = taking ? field.take : field.give;
    attribute(this.#hand, "hidden", edits.length === 0 || field.kind === "part" || field.kind === "flag");
    const name = t(taking ? "bench-take-which" : "bench-give-which", { what: field.label });
    if (this.#hand.getAttribute("aria-label") === name) return;
    attribute(this.#hand, "aria-label", name);
    attribute(this.#hand, "title", name);
    fill(this.#hand, icon(taking ? "chosen" : "own"));
  }

  #handOver(): void {
    const { written, take, give, label } = this.#field;
    const taking = written === null;
    this.context.edit({
      edits: taking ? take : give,
      label: t(taking ? "bench-did-take" : "bench-did-give", { what: label }),
    });
  }

  #showSwatches(): void {
    const named = typed(this.#field).split(/[,+]/).map((name) => name.trim());
    const known = named.flatMap((name) => this.context.colours().filter((colour) => colour.name === name));
    this.#patches.show(known.map(({ hex }) => hex));
  }
}
