/** The form in which a making is written down: at the bench, or on a telephone beside it. */

import type { KeptPhoto, LogAct, MakingForm, MakingText, PatternName } from "../api/types.ts";
import { el, fill, say } from "../dom/element.ts";
import { newId } from "../form/context.ts";
import { small } from "../patterns/photo.ts";
import { json } from "../server/client.ts";
import { language, t } from "../words/texts.ts";
import { choiceField, textField, type Field } from "./fields.ts";
import { trouble } from "./trouble.ts";

type Measure = Exclude<keyof MakingText, "learner" | "minutes" | "photos">;

export class RecordForm {
  readonly node = el("form", { class: "asked record", autocomplete: "off", onsubmit: (event: SubmitEvent) => this.#send(event) });
  readonly #wrong = el("p", { class: "wrong", role: "alert" });

  constructor(
    private readonly patterns: readonly PatternName[],
    /** Writes it down, and tells its number. */
    private readonly log: (act: LogAct) => Promise<number | undefined>,
    private readonly told: (text: string) => void,
  ) {
    void this.#choose(patterns.find(({ reads }) => reads)?.name);
  }

  #send(event: SubmitEvent): void {
    event.preventDefault();
    void this.#attempt(this.#keep);
  }

  #keep: () => Promise<void> = () => Promise.resolve();

  async #attempt(act: () => Promise<void>): Promise<void> {
    say(this.#wrong, "");
    try {
      await act();
    } catch (error) {
      say(this.#wrong, error instanceof DOMException ? t("bench-records-photo-unread") : trouble(error));
    }
  }

  /** Shows the fields of a pattern, with what was planned beside them. */
  async #choose(name: string | undefined): Promise<void> {
    if (name === undefined) return;
    const shown = await json<MakingForm>("GET", `/api/log/form/${encodeURIComponent(name)}?language=${language()}`);
    const choices = this.patterns.filter(({ reads }) => reads).map((own) => [own.name, own.title] as const);
    const pattern = choiceField(t("bench-records-pattern"), name, [[null, choices]]);
    const select = pattern.row.querySelector("select");
    select?.addEventListener("change", () => void this.#attempt(() => this.#choose(pattern.value())));
    const measures = measuresOf(shown);
    const learner = el("input", { type: "checkbox", id: newId("learner") });
    const minutes = shown.steps.map(({ step, label, planned }) => [step, textField(label, "", { inputmode: "decimal" }, t("bench-records-planned", { planned }))] as const);
    const photo = el("input", { type: "file", accept: "image/*", id: newId("photo") });
    const all = el("input", { type: "checkbox", id: newId("photo-all") });
    this.#keep = async () => {
      const texts = Object.fromEntries([...measures].map(([key, field]) => [key, field.value()])) as Record<Measure, string>;
      const file = photo.files?.[0];
      const making: MakingText = {
        ...texts,
        learner: learner.checked,
        minutes: minutes.map(([step, field]) => ({ step, minutes: field.value() })).filter((own) => own.minutes !== ""),
        photos: file ? [await sent(file, all.checked)] : [],
      };
      const number = await this.log({ do: "log", pattern: name, making });
      if (number !== undefined) this.told(t("bench-records-kept", { number }));
      await this.#choose(name);
    };
    const rows = (...keys: readonly Measure[]): HTMLElement => el("div", { class: "pairs" }, ...keys.map((key) => measures.get(key)?.row));
    fill(
      this.node,
      pattern.row,
      rows("made", "who"),
      el("label", { class: "tick", for: learner.id }, learner, t("bench-records-learner")),
      el("fieldset", { class: "plan-group took" }, el("legend", {}, t("bench-records-minutes")), ...minutes.map(([, field]) => field.row)),
      el("fieldset", { class: "plan-group" }, el("legend", {}, t("bench-records-measures")), rows("rows", "weaver", "wet", "dry", "girth_wet", "girth_dry", "staves", "spoilt")),
      rows("wood", "went_wrong"),
      el("div", { class: "stack tight" }, el("label", { for: photo.id }, t("bench-records-photo")), photo, el("label", { class: "tick", for: all.id }, all, t("bench-records-photo-all"))),
      this.#wrong,
      el("div", { class: "row wrap" }, el("button", { type: "submit" }, t("bench-records-keep"))),
    );
  }
}

function measuresOf({ rows, weaver, staves }: MakingForm): ReadonlyMap<Measure, Field> {
  const planned = (text: string): string => t("bench-records-planned", { planned: text });
  const number = { inputmode: "numeric" };
  return new Map<Measure, Field>([
    ["made", textField(t("bench-records-made"), new Date().toLocaleDateString("sv-SE"), { type: "date" })],
    ["who", textField(t("bench-records-who"), "")],
    ["rows", textField(t("bench-records-rows"), "", number, planned(rows))],
    ["weaver", textField(t("bench-records-weaver"), "", {}, planned(weaver))],
    ["wet", textField(t("bench-records-wet"), "")],
    ["dry", textField(t("bench-records-dry"), "")],
    ["girth_wet", textField(t("bench-records-girth-wet"), "")],
    ["girth_dry", textField(t("bench-records-girth-dry"), "")],
    ["staves", textField(t("bench-records-staves"), "", number, planned(staves))],
    ["spoilt", textField(t("bench-records-spoilt"), "", number)],
    ["wood", textField(t("bench-records-wood"), "")],
    ["went_wrong", textField(t("bench-records-wrong"), "")],
  ]);
}

/** Sends a photograph: made small and without what else stands in it, or as it is where that is wanted. */
async function sent(file: File, all: boolean): Promise<string> {
  const body = all && file.type === "image/jpeg" ? file : await small(file);
  return (await json<KeptPhoto>("POST", `/api/log/photos${all ? "?all" : ""}`, body)).name;
}
