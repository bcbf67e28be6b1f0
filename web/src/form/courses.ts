/** The weaving, course by course from the base upward. */

import type { Course, Courses, Problem } from "../api/types.ts";
import { attribute, el, say } from "../dom/element.ts";
import { List } from "../dom/list.ts";
import { icon, type Sign } from "../dom/icons.ts";
import { t } from "../words/texts.ts";
import { openWeaveChooser } from "../choose/weave-chooser.ts";
import type { FormContext } from "./context.ts";
import { Fields } from "./fields.ts";
import type { FieldView } from "./field.ts";
import { drawn } from "./drawn.ts";
import { said } from "./said.ts";
import { swatch } from "./swatch.ts";

const LIST = "weave.courses";

export class CoursesView {
  readonly node: HTMLElement;
  readonly #list = el("ol", { class: "courses" });
  readonly #why = el("p", { class: "why" });
  readonly #wrong = el("p", { class: "wrong" });
  readonly #hand: HTMLButtonElement;
  readonly #add: HTMLButtonElement;
  #rows: CourseRow[] = [];
  #courses: Courses | undefined;

  constructor(private readonly context: FormContext) {
    this.#hand = el("button", { type: "button", class: "quiet hand", onclick: () => this.#handOver() });
    this.#add = el("button", { type: "button", class: "quiet", onclick: () => this.#insert() }, icon("plus"), t("bench-course-add"));
    this.node = el("div", { class: "course-box" }, this.#why, this.#list, this.#wrong, el("div", { class: "row wrap" }, this.#add, this.#hand));
  }

  show(courses: Courses, problems: readonly Problem[]): void {
    this.#courses = courses;
    const chosen = courses.take.length > 0;
    say(this.#why, courses.why === null ? "" : t("bench-chosen", { why: courses.why }));
    say(this.#hand, t(chosen ? "bench-courses-take" : "bench-courses-give"));
    attribute(this.#hand, "hidden", !chosen && courses.give.length === 0);
    attribute(this.#add, "hidden", chosen);
    const held = this.node.contains(document.activeElement);
    while (this.#rows.length > courses.each.length) this.#rows.pop()?.node.remove();
    if (held && !this.node.contains(document.activeElement)) this.#rows.at(-1)?.focus();
    while (this.#rows.length < courses.each.length) {
      const row = new CourseRow(this.#rows.length, this.context);
      this.#rows.push(row);
      this.#list.append(row.node);
    }
    for (const [index, course] of courses.each.entries()) {
      this.#rows[index]?.show(course, courses.each.length, problems);
    }
    this.complain(problems);
  }

  complain(problems: readonly Problem[]): void {
    for (const row of this.#rows) row.fields.complain(problems);
    const own = problems.filter(({ path }) => path === LIST || (path !== null && /^weave\.courses(\[\d+\])?$/.test(path)));
    say(this.#wrong, own.map(said).join(" "));
  }

  find(path: string): FieldView | undefined {
    for (const row of this.#rows) {
      const view = row.fields.find(path);
      if (view) {
        row.open();
        return view;
      }
    }
    return undefined;
  }

  #handOver(): void {
    const { take = [], give = [] } = this.#courses ?? {};
    const label = this.#hand.textContent;
    this.context.edit({ edits: take.length > 0 ? take : give, label });
  }

  #insert(): void {
    const courses = this.#courses;
    if (!courses) return;
    const edits = [{ do: "insert" as const, path: LIST, at: courses.each.length + 1, value: courses.fresh }];
    this.context.edit({ edits, label: t("bench-course-add") });
  }
}

class CourseRow {
  readonly node: HTMLLIElement;
  readonly fields: Fields;
  readonly #summary = el("span", { class: "course-summary" });
  readonly #swatches = el("span", { class: "swatches" });
  readonly #colours = new List(this.#swatches, swatch);
  readonly #seen = el("p", { class: "used" });
  readonly #lean = el("p", { class: "used" });
  readonly #length = el("p", { class: "used" });
  readonly #choose: HTMLButtonElement;
  #course: Course | undefined;
  readonly #runs = el("p", { class: "wrong" });
  readonly #more: HTMLDetailsElement;
  readonly #up: HTMLButtonElement;
  readonly #down: HTMLButtonElement;
  readonly #remove: HTMLButtonElement;

  constructor(private readonly index: number, private readonly context: FormContext) {
    this.fields = new Fields(context);
    this.#up = this.#button("up", () => this.#move(-1));
    this.#down = this.#button("down", () => this.#move(1));
    this.#remove = this.#button("close", () => this.#takeOut());
    this.#more = el("details", {}, el("summary", {}, this.#summary, this.#swatches), this.fields.node);
    this.#choose = el("button", { type: "button", class: "choose", "aria-haspopup": "dialog", onclick: () => this.#byLook() });
    const tools = el("div", { class: "row tools" }, this.#choose, this.#up, this.#down, this.#remove);
    this.node = el("li", { class: "course" }, this.#more, this.#seen, this.#lean, this.#length, this.#runs, tools);
  }

  show(course: Course, count: number, problems: readonly Problem[]): void {
    const number = this.index + 1;
    this.#course = course;
    say(this.#choose, t("bench-course-choose"));
    attribute(this.#choose, "aria-label", t("bench-course-choose-which", { number }));
    say(this.#seen, t("bench-course-seen", { seen: course.seen }));
    say(this.#lean, course.lean === null ? "" : t("bench-course-lean", { why: course.lean }));
    say(this.#summary, t("bench-course", { number, summary: course.summary }));
    this.#colours.show([...new Set(course.colours)]);
    const rows = { first: course.first_row, last: course.first_row + course.rows - 1, length: course.length };
    say(this.#length, course.rows > 0 ? t("bench-course-takes", rows) : "");
    say(this.#runs, course.runs ? "" : t("bench-course-does-not-run"));
    this.fields.show(course.fields, problems);
    const fixed = course.path === null;
    for (const button of [this.#up, this.#down, this.#remove]) attribute(button, "hidden", fixed);
    attribute(this.#up, "disabled", this.index === 0);
    attribute(this.#down, "disabled", number === count);
    attribute(this.#remove, "disabled", count === 1);
    attribute(this.#up, "aria-label", t("bench-course-up", { number }));
    attribute(this.#down, "aria-label", t("bench-course-down", { number }));
    attribute(this.#remove, "aria-label", t("bench-course-remove", { number }));
  }

  open(): void {
    this.#more.open = true;
  }

  focus(): void {
    this.#more.querySelector("summary")?.focus();
  }

  #button(sign: Sign, act: () => void): HTMLButtonElement {
    return el("button", { type: "button", class: "quiet sign", onclick: act }, icon(sign));
  }

  #byLook(): void {
    const course = this.#course;
    if (!course) return;
    const known = this.context.colours();
    const colours = course.colours.flatMap((hex) => known.find((one) => one.hex === hex)?.name ?? []);
    openWeaveChooser({ number: this.index + 1, colours, seen: course.seen, draw: () => this.#draw() }, this.context);
  }

  /** A weave drawn by hand begins as plain weave. */
  #draw(): void {
    const path = `${LIST}[${this.index + 1}]`;
    const edits = [...(this.context.shown()?.courses.take ?? []), ...drawn(path)];
    this.context.edit({ edits, label: t("bench-did-draw", { number: this.index + 1 }) });
    this.open();
  }

  #move(way: -1 | 1): void {
    const from = this.index + 1;
    const label = t(way < 0 ? "bench-course-up" : "bench-course-down", { number: from });
    this.context.edit({ edits: [{ do: "move", path: LIST, from, to: from + way }], label });
  }

  #takeOut(): void {
    const label = t("bench-course-remove", { number: this.index + 1 });
    this.context.edit({ edits: [{ do: "remove", path: `${LIST}[${this.index + 1}]` }], label });
  }
}
