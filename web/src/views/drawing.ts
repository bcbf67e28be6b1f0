/** A drawing from the server, on paper. */

import type { DrawingName, Mould, Place } from "../api/types.ts";
import { attribute, el, fill, say } from "../dom/element.ts";
import { signScrolling } from "../dom/scrolls.ts";
import { band } from "../findings/whereabouts.ts";
import { text } from "../server/client.ts";
import { language, t } from "../words/texts.ts";

/** A drawing so many times as wide as high is long. */
const LONG = 5;
/** The smallest type on drawings, in mm, and in which size it can still be read, in pixels. */
const SMALL_TYPE = { mm: 2.4, px: 8 };

/** Asks for a drawing as SVG. */
export async function drawing(source: string, name: string, signal?: AbortSignal): Promise<SVGSVGElement> {
  const body = { source, name, language: language() };
  return svgOf(await text("/api/drawing", body, signal));
}

/** A drawing from its text. */
export function svgOf(source: string): SVGSVGElement {
  const parsed = new DOMParser().parseFromString(source, "image/svg+xml");
  const root = document.importNode(parsed.documentElement, true);
  if (!(root instanceof SVGSVGElement)) throw new Error("this drawing is not SVG");
  return root;
}

/** A sheet of paper with a drawing and its caption. */
export class Sheet {
  readonly node: HTMLElement;
  readonly #paper = el("div", { class: "paper" });
  readonly #name = el("strong", {});
  readonly #told = el("span", {});
  readonly #sign = signScrolling(this.#paper);
  #source: string | undefined;
  #meant: { readonly mould: Mould; readonly place: Place } | undefined;

  /** `reads` says that its figures are to be read here, not only on paper; `tells`, that its own caption is shown. */
  constructor(readonly name: string, private readonly how: { readonly reads?: boolean; readonly tells?: boolean } = {}) {
    this.node = el("figure", { class: "sheet" }, this.#paper, el("figcaption", {}, this.#name, " ", this.#told));
    new ResizeObserver(() => this.#fit()).observe(this.node);
  }

  label(label: DrawingName["label"]): void {
    say(this.#name, label);
  }

  /** Draws the sheet anew if the pattern changed since. */
  async draw(source: string): Promise<void> {
    if (source === this.#source) return;
    this.node.setAttribute("aria-busy", "true");
    try {
      const picture = await drawing(source, this.name);
      fill(this.#paper, picture);
      if (this.how.tells) say(this.#told, picture.querySelector(":scope > title")?.textContent ?? "");
      this.#fit();
      this.#mark();
      this.#source = source;
    } catch (error) {
      fill(this.#paper, el("p", { class: "wrong" }, t("bench-no-picture")));
      throw error;
    } finally {
      this.node.removeAttribute("aria-busy");
    }
  }

  /** Marks a place, if the drawing shows the basket from the side. */
  mark(meant: { readonly mould: Mould; readonly place: Place } | undefined): void {
    this.#meant = meant;
    this.#mark();
  }

  #mark(): void {
    const picture = this.#paper.querySelector("svg");
    picture?.querySelector(":scope > .mark")?.remove();
    const scale = Number(picture?.dataset["upright"]);
    if (picture && this.#meant && scale > 0) picture.append(band(this.#meant.mould, this.#meant.place, scale));
  }

  /** What could not be read if it were made to fit keeps its size and is scrolled. */
  #fit(): void {
    const picture = this.#paper.querySelector("svg");
    if (!picture) return;
    const { width, height } = picture.viewBox.baseVal;
    const room = this.node.parentElement?.clientWidth ?? 0;
    const type = (room / width) * SMALL_TYPE.mm;
    const long = width > LONG * height || (this.how.reads === true && type < SMALL_TYPE.px);
    this.node.classList.toggle("long", long);
    attribute(this.#paper, "tabindex", long ? 0 : null);
    attribute(this.#paper, "role", long ? "group" : null);
    attribute(this.#paper, "aria-label", long ? this.#name.textContent : null);
    this.#sign();
  }
}
