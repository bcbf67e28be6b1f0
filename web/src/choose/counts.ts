/** A strip of stave counts: what runs on each, which way it leans, how wide the gap is, and what it would change. */

import type { CountOfStaves, Counts } from "../api/types.ts";
import { attribute, el, fill, say } from "../dom/element.ts";
import { icon } from "../dom/icons.ts";
import { newId, type FormContext } from "../form/context.ts";
import { Gone, Refusal, json } from "../server/client.ts";
import { Latest } from "../server/latest.ts";
import { language, t } from "../words/texts.ts";

export class CountStrip {
  readonly node: HTMLDetailsElement;
  readonly #strip = el("div", { class: "counts", role: "group", tabindex: 0, "aria-label": t("bench-counts-label") });
  readonly #told = el("p", { class: "used", id: newId("count"), "aria-live": "polite" });
  readonly #latest: Latest<string, Counts>;
  #asked: string | undefined;
  #now: CountOfStaves | undefined;

  constructor(private readonly context: FormContext) {
    this.node = el("details", { class: "count-strip" }, el("summary", {}, t("bench-counts")), this.#strip, this.#told);
    this.node.addEventListener("toggle", () => this.look());
    this.#latest = new Latest(
      (source, signal) => json<Counts>("POST", "/api/counts", { source, language: language() }, signal),
      (counts) => this.#show(counts),
      (error) => {
        this.#asked = undefined;
        if (error instanceof Gone) context.gone();
        else if (error instanceof Refusal) say(this.#told, error.fault.what);
        else throw error;
      },
    );
  }

  /** Asks anew if the pattern changed; nobody asks for what is folded. */
  look(): void {
    const source = this.context.source();
    if (!this.node.open || source === this.#asked) return;
    this.#asked = source;
    this.#latest.request(source);
  }

  #show({ each }: Counts): void {
    this.#now = each.find(({ now }) => now);
    const held = this.#strip.contains(document.activeElement) ? document.activeElement?.getAttribute("data-count") : null;
    fill(this.#strip, ...each.map((one) => this.#button(one)));
    const present = this.#strip.querySelector<HTMLElement>("[aria-pressed=true]");
    if (present) this.#strip.scrollLeft = present.offsetLeft - (this.#strip.clientWidth - present.offsetWidth) / 2;
    if (this.#now) this.#tell(this.#now);
    if (typeof held === "string") (this.#strip.querySelector<HTMLElement>(`[data-count="${held}"]`) ?? present)?.focus();
  }

  #button(one: CountOfStaves): HTMLButtonElement {
    const { count, runs, now, lean, edits } = one;
    const press = (): void => this.context.edit({ edits, label: t("bench-did-set", { what: t("bench-counts"), value: count }) });
    const sign = runs ? (lean === "left" ? "leanLeft" : lean === "right" ? "leanRight" : "runs") : "close";
    const button = el(
      "button",
      { type: "button", class: runs ? "quiet count-one" : "quiet count-one fails", "data-count": count, "aria-label": describe(one), onclick: press },
      el("strong", {}, String(count)),
      icon(sign),
    );
    attribute(button, "aria-pressed", String(now));
    for (const event of ["focus", "pointerenter"]) button.addEventListener(event, () => this.#tell(one));
    return button;
  }

  /** What the count does, and what of that is otherwise than now. */
  #tell(one: CountOfStaves): void {
    const now = this.#now;
    const other = (key: "seen" | "gap" | "width"): boolean => now !== undefined && !one.now && now[key] !== one[key];
    const changes = (["seen", "gap", "width"] as const).filter(other).map((key) => t(`bench-counts-change-${key}`, { before: now?.[key] ?? "", after: one[key] }));
    say(this.#told, [describe(one), ...changes].join(" "));
  }
}

function describe({ count, runs, seen, gap }: CountOfStaves): string {
  return t(runs ? "bench-counts-runs" : "bench-counts-fails", { count, seen, gap });
}
