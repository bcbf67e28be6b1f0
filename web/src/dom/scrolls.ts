/** A sign at the edges of what can be scrolled sideways: where there is more, it fades. */

import { attribute } from "./element.ts";

/** Call what is returned when the content has changed. */
export function signScrolling(node: HTMLElement, told: (more: boolean) => void = () => undefined): () => void {
  const look = (): void => {
    const { scrollLeft, clientWidth, scrollWidth } = node;
    const sides = [scrollLeft > 1 && "left", scrollLeft + clientWidth < scrollWidth - 1 && "right"].filter((side) => side !== false);
    attribute(node, "data-more", sides.length > 0 ? sides.join(" ") : null);
    told(sides.length > 0);
  };
  node.addEventListener("scroll", look, { passive: true });
  const observer = new ResizeObserver(look);
  observer.observe(node);
  for (const child of node.children) observer.observe(child);
  return look;
}
