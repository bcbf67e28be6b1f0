/** Asks for a photograph of the mould, and has the program take the girths from it. */

import type { TracedMould, TraceRequest } from "../api/types.ts";
import { el, say } from "../dom/element.ts";
import { small } from "../patterns/photo.ts";
import { Gone, Refusal, json } from "../server/client.ts";
import { openDialog } from "../shell/dialog.ts";
import { language, t } from "../words/texts.ts";
import { newId, type FormContext } from "./context.ts";

/** In base64 a photograph is a third longer, and the server takes no body over a megabyte. */
const MOST_BYTES = 700_000;

export function openTrace(context: FormContext, traced: (photo: Blob, mould: TracedMould) => void): void {
  const file = el("input", { type: "file", accept: "image/*", id: newId("mould-photo") });
  const girth = asked("bench-trace-girth", "bench-trace-girth-hint");
  const height = asked("bench-trace-height");
  const distance = asked("bench-trace-distance", "bench-trace-distance-hint");
  const footUp = el("input", { type: "checkbox", id: newId("foot-up") });
  const trouble = el("p", { class: "wrong", role: "alert" });
  const begin = el("button", { type: "submit" }, t("bench-trace-begin"));
  const work = async (): Promise<void> => {
    const [chosen] = file.files ?? [];
    say(trouble, chosen ? "" : t("bench-trace-none"));
    if (!chosen) return;
    begin.disabled = true;
    try {
      const photo = await small(chosen, MOST_BYTES);
      const request: TraceRequest = {
        photo: await inBase64(photo),
        girth: girth.input.value,
        height: height.input.value,
        distance: distance.input.value,
        foot_up: footUp.checked,
        units: context.shown()?.units ?? "in",
        language: language(),
      };
      const mould = await json<TracedMould>("POST", "/api/trace", request);
      dialog.close();
      traced(photo, mould);
    } catch (error) {
      if (error instanceof Gone) context.gone();
      else if (error instanceof Refusal) say(trouble, [error.fault.what, error.fault.how_to_mend].map(sentence).join(" "));
      else say(trouble, t("bench-photo-unread"));
    } finally {
      begin.disabled = false;
    }
  };
  const form = el(
    "form",
    {
      class: "stack",
      autocomplete: "off",
      onsubmit: (event: SubmitEvent) => {
        event.preventDefault();
        void work();
      },
    },
    el("p", { class: "hint" }, t("bench-trace-how")),
    el("div", { class: "stack tight" }, el("label", { for: file.id }, t("bench-photo-choose")), file),
    girth.node,
    height.node,
    distance.node,
    el("div", { class: "row" }, footUp, el("label", { for: footUp.id }, t("bench-trace-foot-up"))),
    el("p", { class: "hint" }, t("bench-trace-kept")),
    trouble,
    el("div", { class: "row wrap" }, begin),
  );
  const dialog = openDialog(t("bench-trace"), "small", form);
}

function asked(label: string, hint?: string): { readonly input: HTMLInputElement; readonly node: HTMLElement } {
  const input = el("input", { type: "text", id: newId("trace"), spellcheck: "false" });
  const told = hint === undefined ? null : el("p", { class: "hint", id: newId("hint") }, t(hint));
  if (told) input.setAttribute("aria-describedby", told.id);
  return { input, node: el("div", { class: "stack tight" }, el("label", { for: input.id }, t(label)), input, told) };
}

function sentence(text: string): string {
  return text.replace(/^./, (first) => first.toUpperCase()).replace(/([^.?!])$/, "$1.");
}

function inBase64(blob: Blob): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.addEventListener("load", () => resolve(String(reader.result).replace(/^[^,]*,/, "")));
    reader.addEventListener("error", () => reject(new Error("the photograph cannot be read", { cause: reader.error })));
    reader.readAsDataURL(blob);
  });
}
