/** The page Records: what was made, and the hand that it tells of. */

import type { LearnedHand, LogAct, Making, MakingLog, PatternName } from "../api/types.ts";
import { el, fill } from "../dom/element.ts";
import { newId } from "../form/context.ts";
import { json } from "../server/client.ts";
import { choose } from "../shell/dialog.ts";
import { language, t } from "../words/texts.ts";
import type { Frame } from "./frame.ts";
import type { WorkshopPage } from "./pages.ts";
import { RecordForm } from "./records-form.ts";
import { table } from "./table.ts";

export class RecordsPage implements WorkshopPage {
  readonly node = el("div", { class: "shop-body" });
  readonly #form = el("section", { class: "stack", "aria-label": t("bench-records-log") });
  readonly #log = el("div", { class: "stack" });
  readonly #hand = el("section", { class: "stack", "aria-label": t("bench-records-hand") });
  readonly #who = el("select", { id: newId("who"), onchange: () => void this.#renew() });
  #shown: MakingLog = { makings: [], makers: [], adopted: null };

  constructor(private readonly frame: Frame) {
    fill(
      this.node,
      el("h1", {}, t("bench-records-heading")),
      el("div", { class: "plan records" }, this.#form, el("section", { class: "stack" }, el("div", { class: "row wrap" }, el("label", { for: this.#who.id }, t("bench-records-of")), this.#who), this.#log, this.#hand)),
    );
  }

  enter = async (): Promise<void> => {
    const patterns = await json<PatternName[]>("GET", "/api/patterns");
    const form = new RecordForm(
      patterns,
      async (act) => {
        await this.#act(act);
        return this.#shown.makings[0]?.number;
      },
      (text) => this.frame.tell(text),
    );
    fill(this.#form, el("h2", {}, t("bench-records-log")), form.node);
    this.#shown = await json<MakingLog>("GET", place());
    await this.#renew();
  };

  async #act(act: LogAct): Promise<void> {
    this.#shown = await json<MakingLog>("POST", place(), act);
    await this.#renew();
  }

  async #renew(): Promise<void> {
    const { makings, makers } = this.#shown;
    const who = makers.includes(this.#who.value) ? this.#who.value : "";
    fill(this.#who, el("option", { value: "" }, t("bench-records-everybody")), ...makers.map((maker) => el("option", { value: maker }, maker)));
    this.#who.value = who;
    const own = makings.filter((making) => who === "" || making.who === who);
    fill(this.#log, ...this.#list(own, who));
    const learned = await json<LearnedHand>("GET", `/api/log/hand?language=${language()}${whose(who, "&")}`);
    fill(this.#hand, ...this.#learned(learned, who));
  }

  #list(makings: readonly Making[], who: string): readonly (HTMLElement | null)[] {
    if (makings.length === 0) return [el("p", { class: "hint" }, t("bench-records-none"))];
    const photographed = makings.some(({ photos }) => photos.length > 0);
    const all = ["bench-records-number", "bench-records-pattern", "bench-records-made", "bench-records-maker", "bench-records-measured", "bench-records-wrong", "bench-records-photo", "bench-records-act"];
    const columns = all.filter((id) => photographed || id !== "bench-records-photo");
    const forgetAll = async (): Promise<void> => {
      const sure = await choose(t("bench-records-forget-all", { who }), t("bench-records-forget-all-ask", { who, count: makings.length }), FORGET());
      if (sure) await this.#act({ do: "forget", numbers: makings.map(({ number }) => number) });
    };
    return [
      table(t("bench-records-heading"), columns.map((id, at) => ({ head: t(id), figures: at === 0 })), makings.map((making) => this.#row(making, photographed))),
      el(
        "div",
        { class: "row wrap" },
        el("a", { class: "button quiet", href: `/api/log.pdf?language=${language()}${whose(who, "&")}`, download: "makings.pdf" }, t("bench-records-print")),
        el("a", { class: "button quiet", href: `/api/log.toml${whose(who, "?")}`, download: "records.toml" }, t("bench-records-export")),
        who === "" ? null : el("button", { type: "button", class: "quiet", onclick: () => void this.frame.attempt(forgetAll) }, t("bench-records-forget-all", { who })),
      ),
    ];
  }

  #row({ number, pattern, made, who, says, went_wrong, photos }: Making, photographed: boolean): readonly (HTMLElement | string | false)[] {
    const forget = async (): Promise<void> => {
      const sure = await choose(t("bench-records-forget-one", { number }), t("bench-records-forget-ask", { number }), FORGET());
      if (sure) await this.#act({ do: "forget", numbers: [number] });
    };
    const alt = t("bench-records-photo-alt", { number });
    const pictures = photos.map((photo) => el("a", { href: photoPlace(photo), target: "_blank", rel: "noopener" }, el("img", { src: photoPlace(photo), alt, loading: "lazy", class: "making" })));
    return [
      String(number), pattern, made, who, says.join("; "), went_wrong,
      ...(photographed ? [pictures.length > 0 && el("span", {}, ...pictures)] : []),
      el(
        "span",
        { class: "row wrap" },
        el("a", { class: "button quiet", href: `/api/log/${number}/card.pdf?language=${language()}`, download: `card-${number}.pdf`, "aria-label": t("bench-records-card-of", { number }) }, t("bench-records-card")),
        el("button", { type: "button", class: "quiet", "aria-label": t("bench-records-forget-one", { number }), onclick: () => void this.frame.attempt(forget) }, t("bench-records-forget")),
      ),
    ];
  }

  #learned({ makings, left_out, figures, pattern, drafted }: LearnedHand, who: string): readonly (HTMLElement | false)[] {
    const { adopted } = this.#shown;
    const adopt = (): Promise<void> => this.#act(who === "" ? { do: "adopt" } : { do: "adopt", who });
    const takeBack = (): Promise<void> => this.#act({ do: "take-back" });
    const button = (text: string, act: () => Promise<void>): HTMLElement => el("button", { type: "button", class: "quiet", onclick: () => void this.frame.attempt(act) }, text);
    const list = (lines: readonly string[]): HTMLElement => el("ul", {}, ...lines.map((line) => el("li", {}, line)));
    return [
      el("h2", {}, t("bench-records-hand")),
      el("p", { role: "status" }, adopted === null ? t("bench-records-usual") : t("bench-records-adopted", { whose: adopted })),
      adopted !== null && button(t("bench-records-take-back"), takeBack),
      left_out > 0 && el("p", { class: "hint" }, t("bench-records-hand-left", { count: left_out })),
      makings === 0 && el("p", { class: "hint" }, t("bench-records-hand-none")),
      makings > 0 && el("p", {}, t("bench-records-hand-from", { count: makings })),
      makings > 0 && list(figures),
      makings > 0 && el("p", {}, t("bench-records-hand-drafted", { pattern })),
      makings > 0 && list(drafted),
      makings > 0 && button(t("bench-records-adopt"), adopt),
    ];
  }
}

const FORGET = (): readonly (readonly ["forget", string])[] => [["forget", t("bench-records-forget")]];

function place(): string {
  return `/api/log?language=${language()}`;
}

function photoPlace(name: string): string {
  return `/api/log/photos/${encodeURIComponent(name)}`;
}

function whose(who: string, begins: "?" | "&"): string {
  return who === "" ? "" : `${begins}who=${encodeURIComponent(who)}`;
}
