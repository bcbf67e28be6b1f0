/** Two versions side by side. */

import type { Comparison, Finding, Pair, PastVersion, PatternName, PatternText } from "../api/types.ts";
import { el, fill, say } from "../dom/element.ts";
import { newId } from "../form/context.ts";
import { Gone, Refusal, json } from "../server/client.ts";
import { Latest } from "../server/latest.ts";
import type { Bench } from "../state/bench.ts";
import { drawing } from "../views/drawing.ts";
import { Watch, type View } from "../views/view.ts";
import { language, t } from "../words/texts.ts";

/** A version that may be compared. */
interface Version {
  readonly id: string;
  readonly label: string;
  /** In what it differs from the one before it; a list of choices has no room for it. */
  readonly says?: string;
  readonly text: () => string | Promise<string>;
}

interface Sides {
  readonly left: string;
  readonly right: string;
}

export class CompareView implements View {
  readonly id = "compare";
  readonly node: HTMLElement;
  readonly #left = new Side("left", () => void this.#ask());
  readonly #right = new Side("right", () => void this.#ask());
  readonly #table = el("div", { class: "differences" });
  readonly #told = el("p", { class: "hint", "aria-live": "polite" });
  readonly #watch: Watch;
  readonly #latest: Latest<Sides, Comparison>;

  constructor(private readonly bench: Bench, private readonly names: () => Promise<readonly PatternName[]>) {
    const sides = el("div", { class: "sides" }, this.#left.node, this.#right.node);
    const back = el("button", { type: "button", class: "quiet", onclick: () => void this.#goBack() }, t("bench-version-back"));
    this.node = el("div", { class: "compare" }, sides, el("div", { class: "row wrap" }, back), this.#told, this.#table);
    this.#latest = new Latest(
      (sides, signal) => json<Comparison>("POST", "/api/compare", { ...sides, language: language() }, signal),
      (comparison) => this.#show(comparison),
      (error) => this.#fail(error),
    );
    this.#watch = new Watch(bench, (moving) => {
      if (!moving) void this.#ask();
    });
  }

  enter(): void {
    void this.#offer().then(() => this.#watch.enter());
  }

  leave(): void {
    this.#watch.leave();
  }

  async #offer(): Promise<void> {
    const { name } = this.bench.document.value;
    const now: Version = { id: "now", label: t("bench-version-now"), text: () => this.bench.document.value.source };
    const file: Version = { id: "saved", label: t("bench-version-saved"), text: () => this.bench.document.value.saved };
    const steps = this.bench.history.stack.past.toReversed().slice(0, 12).map(
      ({ source, label }, index): Version => ({
        id: `step-${index}`,
        label: t("bench-version-before", { step: label }),
        text: () => source,
      }),
    );
    const others = (await this.names()).map(
      (other): Version => ({
        id: `file-${other.name}`,
        label: t("bench-version-file", { title: other.title, name: other.name }),
        text: async () => (await json<PatternText>("GET", `/api/patterns/${encodeURIComponent(other.name)}`)).source,
      }),
    );
    const past = name === null ? [] : await history(name);
    const before = past.map(
      ({ id, at, says, source }): Version => ({
        id: `past-${id}`,
        label: t("bench-version-past", { at: new Date(at).toLocaleString(language()) }),
        says: says.join("; "),
        text: () => source,
      }),
    );
    const all = [now, ...(name === null ? [] : [file]), ...steps, ...before, ...others];
    this.#left.offer(all, name === null ? (all[1] ?? now).id : "saved");
    this.#right.offer(all, "now");
  }

  /** Takes the left version's text in the place of the one that is worked on; undo goes forward again. */
  async #goBack(): Promise<void> {
    const source = await this.#left.text();
    if (source !== "" && source !== this.bench.document.value.source) this.bench.replace(source, t("bench-version-back"));
  }

  async #ask(): Promise<void> {
    try {
      const [left, right] = await Promise.all([this.#left.text(), this.#right.text()]);
      this.#latest.request({ left, right });
      await this.#left.draw(left);
      await this.#right.draw(right);
    } catch (error) {
      this.#fail(error);
    }
  }

  #fail(error: unknown): void {
    if (error instanceof Gone) this.bench.onGone();
    else if (error instanceof Refusal) {
      say(this.#told, t("bench-compare-cannot"));
      fill(this.#table);
    } else throw error;
  }

  #show(comparison: Comparison): void {
    const { figures, fields, cuts, left_findings, right_findings, both_findings } = comparison;
    const differing = figures.filter(({ same }) => !same);
    const count = differing.length + fields.length + cuts.length + left_findings.length + right_findings.length;
    say(this.#told, t("bench-compare-count", { count }));
    fill(
      this.#table,
      pairs(t("bench-figures"), figures),
      pairs(t("bench-compare-fields"), fields),
      pairs(t("bench-cuts"), cuts),
      findings(t("bench-compare-findings-left"), left_findings),
      findings(t("bench-compare-findings-right"), right_findings),
      findings(t("bench-compare-findings-both"), both_findings),
    );
  }
}

/** One side: which version, and how it looks. */
class Side {
  readonly node: HTMLElement;
  readonly #select: HTMLSelectElement;
  readonly #says = el("p", { class: "hint" });
  readonly #paper = el("div", { class: "paper" });
  #versions: readonly Version[] = [];
  #drawn: string | undefined;

  constructor(side: "left" | "right", changed: () => void) {
    const id = newId("version");
    this.#select = el("select", { id, onchange: changed });
    this.node = el("div", { class: "side" }, el("label", { for: id }, t(`bench-compare-${side}`)), this.#select, this.#says, this.#paper);
  }

  offer(versions: readonly Version[], usual: string): void {
    const chosen = this.#select.value;
    this.#versions = versions;
    fill(this.#select, ...versions.map(({ id, label }) => el("option", { value: id }, label)));
    this.#select.value = versions.some(({ id }) => id === chosen) ? chosen : usual;
  }

  async text(): Promise<string> {
    const version = this.#versions.find(({ id }) => id === this.#select.value);
    say(this.#says, version?.says ?? "");
    return (await version?.text()) ?? "";
  }

  async draw(source: string): Promise<void> {
    if (source === this.#drawn) return;
    this.#drawn = source;
    fill(this.#paper, await drawing(source, "stage-finished"));
  }
}

/** What a pattern was before; nothing for guests, who do not see it, and where the store cannot say. */
async function history(name: string): Promise<readonly PastVersion[]> {
  try {
    return await json<PastVersion[]>("GET", `/api/patterns/${encodeURIComponent(name)}/history?language=${language()}`);
  } catch (error) {
    if (error instanceof Refusal) return [];
    throw error;
  }
}

function pairs(heading: string, list: readonly Pair[]): HTMLElement | null {
  if (list.length === 0) return null;
  const rows = list.map(({ label, left, right, same }) =>
    el(
      "tr",
      { class: same ? "same" : "differs" },
      el("th", { scope: "row" }, label),
      el("td", {}, left ?? t("bench-compare-none")),
      el("td", {}, right ?? t("bench-compare-none")),
    ),
  );
  const heads = ["bench-compare-what", "bench-compare-left", "bench-compare-right"];
  return el(
    "table",
    {},
    el("caption", {}, heading),
    el("thead", {}, el("tr", {}, ...heads.map((id) => el("th", { scope: "col" }, t(id))))),
    el("tbody", {}, ...rows),
  );
}

function findings(heading: string, list: readonly Finding[]): HTMLElement | null {
  if (list.length === 0) return null;
  const items = list.map(({ grade, grade_label, what }) =>
    el("li", {}, el("span", { class: `grade ${grade}` }, grade_label), el("span", { class: "what" }, what)),
  );
  return el("section", {}, el("h3", {}, heading), el("ul", { class: "plain-findings" }, ...items));
}
