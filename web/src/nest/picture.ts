/** Baskets cut through along their length, each standing in the next. */

import type { NestShown } from "../api/types.ts";
import { el, svg } from "../dom/element.ts";
import { t } from "../words/texts.ts";

export function nestPicture({ baskets, rooms }: NestShown): HTMLElement {
  const places = baskets.flatMap(({ wall, rim, base }) => [...wall, ...rim, ...base]);
  const aside = Math.max(...places.map(([x]) => x), 10);
  const [low, high] = [Math.min(...places.map(([, y]) => y)), Math.max(...places.map(([, y]) => y))];
  const margin = aside * 0.06;
  const names = baskets.map(({ name }) => name).join(", ");
  const picture = svg("svg", {
    class: "nest-picture",
    role: "img",
    "aria-label": t("bench-nest-picture", { names }),
    viewBox: `${-aside - margin} ${-high - margin} ${2 * (aside + margin)} ${high - low + 2 * margin}`,
  });
  for (const { wall, rim, base } of baskets.toReversed()) {
    const part = svg("g", { class: "nest-basket" });
    for (const [shape, kind] of [[base, "nest-base"], [wall, "nest-wall"], [rim, "nest-rim"]] as const) {
      for (const side of [1, -1]) part.append(svg("path", { class: kind, d: `M${shape.map(([x, y]) => `${side * x} ${-y}`).join("L")}Z` }));
    }
    picture.append(part);
  }
  for (const { fits, at_mm } of rooms) {
    picture.append(svg("line", { class: fits ? "nest-room" : "nest-room tight", x1: -aside, x2: aside, y1: -at_mm, y2: -at_mm }));
  }
  return el("figure", { class: "sheet" }, el("div", { class: "paper" }, picture));
}
