/** A patch of a colour. */

import { el } from "../dom/element.ts";

export function swatch(hex: string): HTMLElement {
  const patch = el("span", { class: "swatch", "aria-hidden": "true" });
  patch.style.backgroundColor = hex;
  return patch;
}
