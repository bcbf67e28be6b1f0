/** Dialogs over the page. */

import { el } from "../dom/element.ts";
import { icon } from "../dom/icons.ts";
import { newId } from "../form/context.ts";
import { t } from "../words/texts.ts";

const ASKING = "input:enabled, select:enabled, textarea:enabled, button:enabled, a[href]";

/** Opens a dialog with the focus on what it asks; it is gone when it is closed. */
export function openDialog(heading: string, kind: string, ...content: Node[]): HTMLDialogElement {
  const id = newId("dialog");
  const close = el(
    "button",
    { type: "button", class: "quiet sign", "aria-label": t("bench-close"), onclick: () => dialog.close() },
    icon("close"),
  );
  const head = el("div", { class: "dialog-head" }, el("h2", { id }, heading), close);
  const dialog = el("dialog", { class: kind, "aria-labelledby": id }, head, ...content);
  dialog.addEventListener("close", () => dialog.remove());
  document.body.append(dialog);
  dialog.showModal();
  const asked = content.flatMap((node) => (node instanceof Element ? [...node.querySelectorAll<HTMLElement>(ASKING)] : []))[0];
  asked?.focus();
  return dialog;
}

/** Asks for one of several answers. Settles with nothing when the dialog is closed. */
export function choose<Answer extends string>(
  heading: string,
  text: string,
  answers: readonly (readonly [Answer, string])[],
): Promise<Answer | undefined> {
  return new Promise((resolve) => {
    let chosen: Answer | undefined;
    const buttons = answers.map(([answer, label], index) =>
      el(
        "button",
        {
          type: "button",
          class: index === 0 ? "" : "quiet",
          onclick: () => {
            chosen = answer;
            dialog.close();
          },
        },
        label,
      ),
    );
    const dialog = openDialog(heading, "small", el("p", {}, text), el("div", { class: "row wrap" }, ...buttons));
    dialog.addEventListener("close", () => resolve(chosen));
  });
}

/** A name fit for a file, from a title. */
export function fileName(title: string): string {
  return (
    title.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-+|-+$/g, "") ||
    "basket"
  );
}
