/** What the page has to say, until it is read or no longer true. */

import { el, fill } from "../dom/element.ts";
import { icon } from "../dom/icons.ts";
import { t } from "../words/texts.ts";

export interface Act {
  readonly label: string;
  readonly run: () => void;
}

export class Notices {
  readonly node = el("div", { class: "notices", role: "status" });
  readonly #known = new Map<string, HTMLElement>();
  /** Where the focus was before it went to a notice. */
  #from: Element | null = null;

  constructor() {
    this.node.addEventListener("focusin", ({ relatedTarget }) => {
      if (relatedTarget instanceof Element && !this.node.contains(relatedTarget)) this.#from = relatedTarget;
    });
  }

  /** Says something under a name; a later notice of that name takes its place. */
  tell(name: string, text: string, acts: readonly Act[] = [], weight: "plain" | "grave" = "plain"): void {
    const buttons = acts.map(({ label, run }) => {
      const press = (): void => {
        this.drop(name);
        run();
      };
      return el("button", { type: "button", onclick: press }, label);
    });
    const close = el(
      "button",
      { type: "button", class: "quiet sign", "aria-label": t("bench-close-notice"), onclick: () => this.drop(name) },
      icon("close"),
    );
    const notice = this.#known.get(name) ?? el("div", {});
    notice.className = `notice ${weight}`;
    notice.dataset["notice"] = name;
    fill(notice, el("p", {}, text), el("div", { class: "row wrap" }, ...buttons, close));
    this.#known.set(name, notice);
    this.node.append(notice);
  }

  /** Takes a notice away; the focus, if it was on it, goes back to where it came from. */
  drop(name: string): void {
    const notice = this.#known.get(name);
    const held = notice?.contains(document.activeElement) ?? false;
    notice?.remove();
    this.#known.delete(name);
    if (!held) return;
    const back = this.#from?.isConnected ? this.#from : document.querySelector("main button, main input");
    if (back instanceof HTMLElement) back.focus();
  }
}
