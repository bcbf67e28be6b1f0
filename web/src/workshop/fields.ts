/** Fields of a form in a dialog, and the dialog itself: it stays open until what it asks is done. */

import { el, say, type Properties } from "../dom/element.ts";
import { newId } from "../form/context.ts";
import { openDialog } from "../shell/dialog.ts";
import { t } from "../words/texts.ts";
import { trouble } from "./trouble.ts";

export interface Field {
  readonly row: HTMLElement;
  readonly value: () => string;
}

/** A field for text or a number, with what is said below it. */
export function textField(label: string, value: string, properties: Properties = {}, hint?: string): Field {
  const input = el("input", { type: "text", id: newId("field"), autocomplete: "off", spellcheck: "false", value, ...properties });
  return { row: labelled(label, input, hint), value: () => input.value.trim() };
}

/** A field for a whole number from zero up. */
export function countField(label: string, value: number, hint?: string): Field {
  return textField(label, String(value), { inputmode: "numeric", pattern: "[0-9]{1,9}", required: true, title: t("bench-shop-whole") }, hint);
}

export type Choice = readonly [value: string, label: string];

/** A choice of several, perhaps in groups. */
export function choiceField(label: string, value: string, groups: readonly (readonly [string | null, readonly Choice[]])[]): Field {
  const select = el("select", { id: newId("field") });
  for (const [group, choices] of groups) {
    const options = choices.map(([own, said]) => el("option", { value: own }, said));
    select.append(...(group === null ? options : [el("optgroup", { label: group }, ...options)]));
  }
  select.value = value;
  return { row: labelled(label, select), value: () => select.value };
}

function labelled(label: string, input: HTMLElement, hint?: string): HTMLElement {
  const told = hint === undefined ? undefined : el("span", { class: "hint", id: newId("hint") }, hint);
  if (told) input.setAttribute("aria-describedby", told.id);
  return el("div", { class: "stack tight" }, el("label", { for: input.id }, label), input, told);
}

export interface Asked {
  readonly heading: string;
  readonly button: string;
  readonly fields: readonly HTMLElement[];
  /** Does it; what it throws is said in the dialog, which stays. */
  readonly done: () => Promise<void>;
}

/** Opens a dialog with a form. */
export function ask({ heading, button, fields, done }: Asked): HTMLDialogElement {
  const wrong = el("p", { class: "wrong", role: "alert" });
  const attempt = async (): Promise<void> => {
    say(wrong, "");
    try {
      await done();
      dialog.close();
    } catch (error) {
      say(wrong, trouble(error));
    }
  };
  const form = el(
    "form",
    {
      class: "asked",
      autocomplete: "off",
      onsubmit: (event: SubmitEvent) => {
        event.preventDefault();
        void attempt();
      },
    },
    ...fields,
    wrong,
    el("div", { class: "row wrap" }, el("button", { type: "submit" }, button)),
  );
  const dialog = openDialog(heading, "wide", form);
  return dialog;
}
