/** Findings, worst first: what, why, where, and the step that mends it. */

import type { Finding, Mould } from "../api/types.ts";
import { attribute, el, say } from "../dom/element.ts";
import { List } from "../dom/list.ts";
import type { Bench } from "../state/bench.ts";
import { t } from "../words/texts.ts";
import { stepView } from "./step.ts";
import { whereabouts } from "./whereabouts.ts";

const GRADES = ["stop", "care", "note"] satisfies Finding["grade"][];

/** The first of several findings of one cause says how many there are; the others can be unfolded. */
interface Cause {
  readonly cause: string;
  readonly count: number;
  readonly open: boolean;
}

interface Item {
  readonly finding: Finding;
  /** Name by which it is known again after a change. */
  readonly key: string;
  /** What its place is shown on; none while it is folded. */
  readonly mould: Mould | null;
}

export class FindingsView {
  readonly node: HTMLElement;
  readonly #heading = el("h2", { id: "findings-heading" });
  readonly #count = el("p", { class: "count" });
  readonly #list = el("ul", { class: "findings" });
  readonly #items = new List<Item | Cause>(this.#list, (item) => ("cause" in item ? this.#cause(item) : this.#item(item)));
  #open: string | undefined;
  /** Causes whose findings are all shown. */
  readonly #unfolded = new Set<string>();

  /** `show` brings a finding's place into the picture, `field` the focus to its field. */
  constructor(
    private readonly bench: Bench,
    private readonly show: (finding: Finding) => void,
    private readonly field: (path: string) => void,
  ) {
    say(this.#heading, t("bench-findings"));
    this.node = el("section", { "aria-labelledby": "findings-heading" }, this.#heading, this.#count, this.#list);
    bench.shown.follow((shown) => this.#show(shown?.findings ?? []));
  }

  #show(findings: readonly Finding[]): void {
    const held = this.node.contains(document.activeElement) ? document.activeElement?.closest("li")?.dataset["key"] : undefined;
    const keys = findings.map(key);
    if (!keys.some((one) => one === this.#open)) this.#close();
    say(this.#count, counted(findings));
    const mould = this.bench.shown.value?.mould ?? null;
    const items = findings.map((finding, index): Item => {
      const name = keys[index] ?? "";
      return { finding, key: name, mould: name === this.#open ? mould : null };
    });
    const causes = [...Map.groupBy(items, ({ finding }) => finding.place.cause ?? finding.code)];
    this.#items.show(causes.flatMap(([cause, of]) => this.#grouped(cause, of)));
    if (held === undefined || this.#list.contains(document.activeElement)) return;
    const again = this.#list.querySelector<HTMLElement>(`li[data-key="${CSS.escape(held)}"] button`);
    (again ?? this.#list.querySelector("button"))?.focus();
  }

  /** Findings of one cause, the heaviest first; one that stands alone needs no heading. */
  #grouped(cause: string, items: readonly Item[]): readonly (Item | Cause)[] {
    if (items.length === 1) return items;
    const open = this.#unfolded.has(cause);
    const shown = items.filter((item, index) => open || index === 0 || item.mould !== null);
    return [{ cause, count: items.length, open }, ...shown];
  }

  #cause({ cause, count, open }: Cause): HTMLElement {
    const press = (): void => {
      if (open) this.#unfolded.delete(cause);
      else this.#unfolded.add(cause);
      this.#show(this.bench.shown.value?.findings ?? []);
    };
    const button = el("button", { type: "button", class: "quiet", "aria-expanded": String(open), onclick: press }, t("bench-cause", { cause, count }));
    return el("li", { class: "cause", "data-key": `cause-${cause}` }, button);
  }

  #item({ finding, key: name, mould }: Item): HTMLElement {
    const open = mould !== null;
    const head = el(
      "button",
      { type: "button", class: "finding-head", "aria-expanded": String(open), onclick: () => this.#toggle(finding, name) },
      el("span", { class: `grade ${finding.grade}` }, finding.grade_label),
      el("span", { class: "what" }, finding.what),
    );
    const more = mould && this.#more(finding, mould);
    return el("li", { class: `finding ${finding.grade}`, "data-key": name, "data-code": finding.code }, head, more);
  }

  #more(finding: Finding, mould: Mould): HTMLElement {
    const { path, label } = finding.place;
    const known = path !== null;
    return el(
      "div",
      { class: "finding-more" },
      el("div", { class: "finding-where" }, whereabouts(mould, finding.place), el("p", {}, t("bench-where", { place: label }))),
      el("p", {}, finding.why),
      finding.remedy !== "" && el("p", { class: "remedy" }, finding.remedy),
      el(
        "div",
        { class: "row wrap" },
        ...finding.steps.map((step) => stepView(step, this.bench)),
        known && el("button", { type: "button", class: "quiet", onclick: () => this.field(path) }, t("bench-go-to-field")),
      ),
    );
  }

  #toggle(finding: Finding, name: string): void {
    if (this.#open === name) this.#close();
    else {
      this.#open = name;
      this.bench.place.set(finding.place);
      this.show(finding);
    }
    this.#show(this.bench.shown.value?.findings ?? []);
  }

  #close(): void {
    if (this.#open === undefined) return;
    this.#open = undefined;
    this.bench.place.set(undefined);
  }
}

/** Names a finding so that it is known again after a change. */
function key(finding: Finding, index: number, all: readonly Finding[]): string {
  const before = all.slice(0, index).filter(({ code }) => code === finding.code).length;
  return `${finding.code}-${before}`;
}

/** How many there are of each grade, in words. */
function counted(findings: readonly Finding[]): string {
  if (findings.length === 0) return t("bench-findings-none");
  const counts = GRADES.flatMap((grade) => {
    const count = findings.filter((finding) => finding.grade === grade).length;
    return count > 0 ? [t(`bench-count-${grade}`, { count })] : [];
  });
  return counts.join(", ");
}

/** One line that is always in sight: the worst finding. */
export class Worst {
  readonly #grade = el("span");
  readonly #what = el("span", { class: "what" });
  readonly node = el("p", { class: "worst" }, this.#grade, this.#what);

  constructor(bench: Bench) {
    bench.shown.follow((shown) => {
      const worst = shown?.findings[0];
      attribute(this.#grade, "class", `grade ${worst?.grade ?? "none"}`);
      say(this.#grade, worst?.grade_label ?? "");
      say(this.#what, worst?.what ?? t("bench-findings-none"));
      attribute(this.node, "data-grade", worst?.grade ?? "none");
    });
  }
}
