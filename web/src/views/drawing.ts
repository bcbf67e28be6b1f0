/** A drawing from the server, on paper. */

import type { DrawingName } from "../api/types.ts";
import { el, fill } from "../dom/element.ts";
import { text } from "../server/client.ts";
import { language, t } from "../words/texts.ts";

/** Asks for a drawing as SVG. */
export async function drawing(source: string, name: string, signal?: AbortSignal): Promise<SVGSVGElement> {
  const body = { source, name, language: language() };
  const parsed = new DOMParser().parseFromString(await text("/api/drawing", body, signal), "image/svg+xml");
  const root = document.importNode(parsed.documentElement, true);
  if (!(root instanceof SVGSVGElement)) throw new Error(`the drawing ${name} is not SVG`);
  return root;
}

/** A sheet of paper with a drawing and its caption. */
export class Sheet {
  readonly node: HTMLElement;
  readonly #paper = el("div", { class: "paper" });
  readonly #caption = el("figcaption", {});
  #source: string | undefined;

  constructor(readonly name: string) {
    this.node = el("figure", { class: "sheet" }, this.#paper, this.#caption);
  }

  label(label: DrawingName["label"]): void {
    if (this.#caption.textContent !== label) this.#caption.textContent = label;
  }

  /** Draws the sheet anew if the pattern changed since. */
  async draw(source: string): Promise<void> {
    if (source === this.#source) return;
    this.node.setAttribute("aria-busy", "true");
    try {
      fill(this.#paper, await drawing(source, this.name));
      this.#source = source;
    } catch (error) {
      fill(this.#paper, el("p", { class: "wrong" }, t("bench-no-picture")));
      throw error;
    } finally {
      this.node.removeAttribute("aria-busy");
    }
  }
}
