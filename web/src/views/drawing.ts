/** A drawing from the server, on paper. */

import type { DrawingName } from "../api/types.ts";
import { attribute, el, fill } from "../dom/element.ts";
import { text } from "../server/client.ts";
import { language, t } from "../words/texts.ts";

/** A drawing so many times as wide as high is long. */
const LONG = 5;

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
      const picture = await drawing(source, this.name);
      fill(this.#paper, picture);
      this.#fit(picture);
      this.#source = source;
    } catch (error) {
      fill(this.#paper, el("p", { class: "wrong" }, t("bench-no-picture")));
      throw error;
    } finally {
      this.node.removeAttribute("aria-busy");
    }
  }

  /** What is too long to be seen when it is made to fit keeps its size and is scrolled. */
  #fit(picture: SVGSVGElement): void {
    const { width, height } = picture.viewBox.baseVal;
    const long = width > LONG * height;
    this.node.classList.toggle("long", long);
    attribute(this.#paper, "tabindex", long ? 0 : null);
    attribute(this.#paper, "role", long ? "group" : null);
    attribute(this.#paper, "aria-label", long ? this.#caption.textContent : null);
  }
}
