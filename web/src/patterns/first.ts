/** A first basket: five questions in plain words, and a pattern made from the answers. */

import type { Edited, FirstMould, FirstRequest, HandleWord, Stock, UnitsWord } from "../api/types.ts";
import { LookPictures } from "../choose/looks.ts";
import { WishView } from "../choose/wish.ts";
import { attribute, el, say } from "../dom/element.ts";
import { newId } from "../form/context.ts";
import { materialLine } from "../form/stock-control.ts";
import { said } from "../form/said.ts";
import { Gone, Refusal, json } from "../server/client.ts";
import { Latest } from "../server/latest.ts";
import { openDialog } from "../shell/dialog.ts";
import { language, t } from "../words/texts.ts";

/** Kinds that staves are cut from. */
const STAVE_KINDS = ["flat oval reed", "flat reed", "binder cane", "splint"];
const HANDLES: readonly HandleWord[] = ["none", "swing", "fixed", "knob"];
const TYPED_MS = 400;

interface Starting {
  readonly stock: Stock;
  /** Takes the pattern on the bench. */
  readonly begin: (source: string) => void;
  /** Other ways to begin. */
  readonly others: () => void;
  readonly gone: () => void;
}

export function openFirst({ stock, begin, others, gone }: Starting): void {
  const title = input(t("bench-new-title"));
  const [across, high] = [input(""), input("")];
  const [base, top, tall] = [input(""), input(""), input("")];
  const how = radios("how", ["guessed", "measured"] as const, (answer) => t(`bench-first-mould-${answer}`), () => change());
  const units = el("select", { id: newId("first"), onchange: () => change() }, ...(["in", "mm"] as const).map((unit) => el("option", { value: unit }, t(`bench-first-${unit}`))));
  units.value = language() === "en" ? "in" : "mm";
  const staves = el("select", { id: newId("first") }, el("option", { value: "" }, t("bench-first-staves-any")));
  for (const material of stock.materials.filter(({ kind }) => STAVE_KINDS.includes(kind))) {
    staves.append(el("option", { value: material.name }, materialLine(material)));
  }
  staves.addEventListener("change", () => change());
  const wish = new WishView(stock.colours, [], () => change());
  const handle = radios("handle", HANDLES, (answer) => t(`bench-first-handle-${answer}`), () => undefined);
  const trouble = el("p", { class: "wrong", role: "alert" });
  const guessed = el("div", { class: "row wrap first-sizes" }, labelled("bench-first-across", across), labelled("bench-first-high", high));
  const measured = el("div", { class: "row wrap first-sizes" }, labelled("bench-first-base", base), labelled("bench-first-top", top), labelled("bench-first-tall", tall));

  const mould = (): FirstMould =>
    how.value() === "measured"
      ? { how: "measured", base: base.value, top: top.value, high: tall.value }
      : { how: "guessed", across: across.value, high: high.value };
  const request = (): FirstRequest => ({
    title: title.value.trim() || t("bench-new-title"),
    typed_in: units.value as UnitsWord,
    mould: mould(),
    staves: staves.value,
    wish: wish.wish,
    handle: handle.value(),
    language: language(),
  });
  const sized = (): boolean => (how.value() === "measured" ? [base, top, tall] : [across]).every(({ value }) => value.trim() !== "");
  const failed = (error: unknown): void => {
    if (error instanceof Gone) gone();
    else if (error instanceof Refusal) say(trouble, error.fault.what);
    else throw error;
  };
  // What the looks come to on a basket of this size, as soon as there is one.
  const looks = new LookPictures((look, way) => wish.picture(look, way), failed);
  const pictures = new Latest<FirstRequest, Edited>(
    (asked, signal) => json<Edited>("POST", "/api/first", { ...asked, wish: { ...asked.wish, look: null } }, signal),
    ({ source, look }, asked) => {
      const courses = look.basket?.courses.each ?? [];
      const longest = courses.toSorted((one, other) => other.rows - one.rows)[0];
      if (longest) looks.request({ source, course: courses.indexOf(longest) + 1, wish: asked.wish, language: language() });
    },
    failed,
  );
  // Side and turns change nothing of these pictures.
  const stamp = (): string => JSON.stringify([mould(), units.value, staves.value, wish.wish.colours]);
  let pictured = "";
  let timer = 0;
  const change = (): void => {
    attribute(guessed, "hidden", how.value() !== "guessed");
    attribute(measured, "hidden", how.value() !== "measured");
    clearTimeout(timer);
    timer = window.setTimeout(() => {
      if (!dialog.isConnected || !sized() || stamp() === pictured) return;
      pictured = stamp();
      pictures.request(request());
    }, TYPED_MS);
  };
  for (const size of [across, high, base, top, tall]) size.addEventListener("input", () => change());

  const make = async (event: SubmitEvent): Promise<void> => {
    event.preventDefault();
    if (!sized()) {
      say(trouble, t("bench-first-no-size"));
      (how.value() === "measured" ? base : across).focus();
      return;
    }
    const asked = request();
    pictures.drop();
    looks.drop();
    try {
      const { source, look } = await json<Edited>("POST", "/api/first", asked);
      const [problem] = look.problems;
      if (problem) {
        say(trouble, said(problem));
        return;
      }
      dialog.close();
      begin(source);
    } catch (error) {
      failed(error);
    }
  };
  const other = (): void => {
    dialog.close();
    others();
  };
  const form = el(
    "form",
    { class: "first", autocomplete: "off", onsubmit: (event: SubmitEvent) => void make(event) },
    question("mould", how.node),
    question("size", guessed, measured, labelled("bench-first-units", units)),
    question("staves", labelled("bench-first-staves-which", staves)),
    question("look", wish.node),
    question("handle", handle.node),
    labelled("bench-first-name", title),
    trouble,
    el("div", { class: "row wrap" }, el("button", { type: "submit" }, t("bench-first-make")), el("button", { type: "button", class: "quiet", onclick: other }, t("bench-first-others"))),
  );
  const dialog = openDialog(t("bench-first"), "wide", el("p", {}, t("bench-first-text")), form);
  dialog.addEventListener("close", () => looks.drop());
  change();
  across.focus();
}

function input(value: string): HTMLInputElement {
  return el("input", { type: "text", id: newId("first"), autocomplete: "off", spellcheck: "false", value });
}

function labelled(label: string, control: HTMLElement): HTMLElement {
  return el("div", { class: "stack tight" }, el("label", { for: control.id }, t(label)), control);
}

function question(id: string, ...content: HTMLElement[]): HTMLElement {
  return el("fieldset", {}, el("legend", {}, t(`bench-first-q-${id}`)), el("p", { class: "hint" }, t(`bench-first-q-${id}-hint`)), ...content);
}

/** One of several answers; the first is the usual one. */
function radios<Answer extends string>(stem: string, answers: readonly Answer[], text: (answer: Answer) => string, changed: () => void) {
  const name = newId(stem);
  const [usual] = answers;
  const boxes = answers.map((answer) => el("input", { type: "radio", id: newId(stem), name, value: answer, checked: answer === usual, onchange: changed }));
  const rows = answers.map((answer, index) => el("div", { class: "row check" }, boxes[index], el("label", { for: boxes[index]?.id }, text(answer))));
  const node = el("div", { class: "radios" }, ...rows);
  const value = (): Answer => answers.find((_, index) => boxes[index]?.checked) ?? (usual as Answer);
  return { node, value };
}
