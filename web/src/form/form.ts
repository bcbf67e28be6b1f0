/** The form, in the order in which a basket is made. */

import type { Group, Problem, Shown } from "../api/types.ts";
import { attribute, el, say } from "../dom/element.ts";
import { t } from "../words/texts.ts";
import { CountStrip } from "../choose/counts.ts";
import { icon } from "../dom/icons.ts";
import { partPicture } from "../help/part-picture.ts";
import type { FormContext } from "./context.ts";
import { CoursesView } from "./courses.ts";
import { Fields } from "./fields.ts";
import { Girths } from "./girths.ts";
import { Plan } from "./plan.ts";
import { Profile } from "./profile.ts";

interface GroupView {
  readonly node: HTMLDetailsElement;
  readonly heading: HTMLElement;
  readonly link: HTMLAnchorElement;
  readonly fields: Fields;
}

/** Groups that are unfolded at first. */
const OPEN = new Set(["mould", "staves", "weave"]);

export class Form {
  readonly node: HTMLElement;
  readonly #order = el("nav", { class: "order" });
  readonly #body = el("div", { class: "form-body" });
  readonly #views = new Map<string, GroupView>();
  readonly #plan: Plan;
  readonly #profile: Profile;
  readonly #girths: Girths;
  readonly #courses: CoursesView;
  readonly #counts: CountStrip;

  constructor(private readonly context: FormContext) {
    this.#plan = new Plan(context);
    this.#profile = new Profile(context);
    this.#girths = new Girths(context);
    this.#courses = new CoursesView(context);
    this.node = el("div", { class: "form" }, this.#order, legend(), this.#body);
    this.#counts = new CountStrip(context);
    attribute(this.#order, "aria-label", t("bench-order"));
    this.#body.addEventListener("submit", (event) => event.preventDefault());
  }

  show(shown: Shown, problems: readonly Problem[]): void {
    for (const group of shown.groups) {
      const view = this.#view(group);
      say(view.heading, group.label);
      say(view.link, group.label);
      view.fields.show(group.fields, problems);
    }
    this.#plan.show(shown.mould, problems);
    this.#profile.show(shown.mould);
    this.#girths.show(shown.mould, problems);
    this.#courses.show(shown.courses, problems);
    this.#counts.look();
  }

  /** Another pattern lies on the bench. */
  forget(): void {
    this.#profile.forget();
  }

  complain(problems: readonly Problem[]): void {
    for (const view of this.#views.values()) view.fields.complain(problems);
    this.#plan.complain(problems);
    this.#girths.complain(problems);
    this.#courses.complain(problems);
  }

  /** Puts the focus on the field of a value; tells whether there is one. */
  focus(path: string): boolean {
    const course = this.#courses.find(path);
    for (const view of this.#views.values()) {
      const field = view.fields.find(path);
      if (!field) continue;
      view.node.open = true;
      field.focus();
      return true;
    }
    if (course) this.#unfold("weave");
    course?.focus();
    return course !== undefined;
  }

  #unfold(id: string): void {
    const view = this.#views.get(id);
    if (view) view.node.open = true;
  }

  #view(group: Group): GroupView {
    const known = this.#views.get(group.id);
    if (known) return known;
    const heading = el("h2", {});
    const fields = new Fields(this.context);
    // Each group is a form of its own: browsers look at all fields of a form anew when one has changed.
    const body = el("form", { autocomplete: "off" });
    if (group.id === "mould") body.append(this.#plan.node, this.#profile.node, fields.node, this.#girths.node);
    else if (group.id === "weave") body.append(this.#courses.node, fields.node);
    else if (group.id === "staves") body.append(this.#counts.node, fields.node);
    else body.append(fields.node);
    body.prepend(meaning(group.id));
    const node = el("details", { id: `part-${group.id}`, class: "part" }, el("summary", {}, heading), body);
    node.open = OPEN.has(group.id);
    const link = el("a", {
      href: `#part-${group.id}`,
      onclick: (event: MouseEvent) => {
        event.preventDefault();
        node.open = true;
        node.scrollIntoView({ block: "start" });
        node.querySelector("summary")?.focus({ preventScroll: true });
      },
    });
    this.#order.append(link);
    this.#body.append(node);
    const view = { node, heading, link, fields };
    this.#views.set(group.id, view);
    return view;
  }
}

/** What the words of a part mean, where they stand, with a picture of the part. */
function meaning(part: string): HTMLElement {
  return el("div", { class: "meaning" }, partPicture(part), el("p", { class: "hint" }, t(`bench-meaning-${part}`)));
}

/** What the sign beside a name says. */
function legend(): HTMLElement {
  const sign = (name: "chosen" | "own", text: string): HTMLElement => el("span", { class: "row" }, icon(name), t(text));
  return el("p", { class: "legend" }, sign("chosen", "bench-legend-chosen"), sign("own", "bench-legend-own"));
}
