/** A photograph under the profile, in its scale. It stays in this window, until the page is loaded anew. */

import type { TracedMould } from "../api/types.ts";
import { attribute, el, fill, svg } from "../dom/element.ts";
import { t } from "../words/texts.ts";
import { newId } from "./context.ts";

/** How strongly it is seen at first, in percent. */
const SEEN = 70;

export class Underlay {
  /** What lies under the drawing. */
  readonly picture = svg("g", { "aria-hidden": "true" });
  /** What is said of it, and how strongly it is seen. */
  readonly node = el("div", { class: "underlay", hidden: true });
  #url: string | undefined;

  /** `changed` hears when it comes or goes. */
  constructor(private readonly changed: () => void) {}

  /** Whether there is one. */
  get there(): boolean {
    return this.#url !== undefined;
  }

  lay(photo: Blob, { size, matrix, edges, said }: TracedMould): void {
    this.drop();
    this.#url = URL.createObjectURL(photo);
    const image = svg("image", { href: this.#url, width: size[0], height: size[1], preserveAspectRatio: "none" });
    const lines = edges.map((places) => svg("path", { class: "traced-edge", d: `M${places.map((place) => place.join(" ")).join("L")}` }));
    fill(this.picture, svg("g", { transform: `matrix(${matrix.join(" ")})` }, image, ...lines));
    const range = el("input", { type: "range", min: 0, max: 100, step: 5, id: newId("underlay") });
    range.value = String(SEEN);
    const dim = (): void => attribute(image, "opacity", range.valueAsNumber / 100);
    range.addEventListener("input", dim);
    dim();
    const away = el("button", { type: "button", class: "quiet", onclick: () => this.drop() }, t("bench-underlay-away"));
    fill(
      this.node,
      el("p", { class: "hint", role: "status" }, said.join(" ")),
      el("p", { class: "hint" }, t("bench-underlay")),
      el("div", { class: "row wrap" }, el("label", { for: range.id }, t("bench-underlay-seen")), range, away),
    );
    this.node.hidden = false;
    this.changed();
  }

  drop(): void {
    if (this.#url === undefined) return;
    URL.revokeObjectURL(this.#url);
    this.#url = undefined;
    fill(this.picture);
    fill(this.node);
    this.node.hidden = true;
    this.changed();
  }
}
