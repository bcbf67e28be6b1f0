/** The dialog that asks under which name a file is to be kept. It stays open until that is done. */

import { el, say } from "../dom/element.ts";
import { newId } from "../form/context.ts";
import { t } from "../words/texts.ts";
import { openDialog } from "./dialog.ts";

/** What became of a name: it serves, it belongs to another file that may be replaced, or it was refused. */
export type Outcome = "done" | "taken" | { readonly refused: string };

export interface Question {
  readonly heading: string;
  /** The word on the button that does it. */
  readonly button: string;
  readonly proposed: string;
  /** Tries a name; `over` says that the file of that name is to be replaced. */
  readonly give: (name: string, over: boolean) => Promise<Outcome>;
}

/** Asks for a name. Settles with whether something came of it. */
export function askName({ heading, button, proposed, give }: Question): Promise<boolean> {
  return new Promise((resolve) => {
    const id = newId("name");
    const trouble = el("p", { class: "wrong", role: "alert", id: newId("trouble") });
    const input = el("input", {
      type: "text",
      id,
      value: proposed,
      required: true,
      autocomplete: "off",
      spellcheck: "false",
      "aria-describedby": trouble.id,
    });
    const replace = el("button", { type: "button", class: "quiet", hidden: true, onclick: () => void attempt(true) }, t("bench-replace"));
    let done = false;
    const complain = (text: string, replaceable: boolean): void => {
      say(trouble, text);
      replace.hidden = !replaceable;
    };
    const attempt = async (over: boolean): Promise<void> => {
      const name = input.value.trim();
      if (name === "") return;
      const outcome = await give(name, over);
      if (outcome === "done") {
        done = true;
        dialog.close();
      } else if (outcome === "taken") complain(t("bench-name-taken", { name }), true);
      else complain(outcome.refused, false);
    };
    input.addEventListener("input", () => complain("", false));
    const form = el(
      "form",
      {
        class: "stack",
        onsubmit: (event: SubmitEvent) => {
          event.preventDefault();
          void attempt(false);
        },
      },
      el("label", { for: id }, t("bench-name")),
      input,
      el("p", { class: "hint" }, t("bench-name-hint")),
      trouble,
      el("div", { class: "row wrap" }, el("button", { type: "submit" }, button), replace),
    );
    const dialog = openDialog(heading, "small", form);
    dialog.addEventListener("close", () => resolve(done));
    input.select();
  });
}
