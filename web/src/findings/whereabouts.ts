/** Where on the basket a finding is: a small picture, and a band across a drawing of the side. */

import type { Mould, Place } from "../api/types.ts";
import { svg } from "../dom/element.ts";

/** A band is at least so high, as a share of the basket's width, that it is seen. */
const LEAST = 0.03;
/** How far a band reaches beyond the mould on either side, as a share of its radius. */
const BEYOND = 0.2;

/** The side of the mould with a band across at the place. */
export function whereabouts(mould: Mould, place: Place): SVGSVGElement {
  const widest = widestOf(mould);
  const [low, high] = place.span_mm;
  const margin = widest * 0.25;
  const top = Math.max(mould.height_mm, high) + margin;
  const foot = Math.max(0, -low) + margin;
  const outline = [...mould.profile, ...mould.profile.toReversed().map(([radius, height]) => [-radius, height] as const)];
  return svg(
    "svg",
    { class: "whereabouts", "aria-hidden": "true", viewBox: `${-widest - margin} ${-top} ${2 * (widest + margin)} ${top + foot}` },
    svg("path", { class: "profile-mould", d: `M${outline.map(([x, height]) => `${x} ${-height}`).join("L")}Z` }),
    band(mould, place, 1),
  );
}

/** A band across a drawing that shows the basket upright to a scale, its mould's base at the origin. */
export function band(mould: Mould, place: Place, scale: number): SVGRectElement {
  const widest = widestOf(mould) * (1 + BEYOND);
  const [low, high] = place.span_mm;
  const least = 2 * widest * LEAST;
  const height = Math.max(high - low, least);
  const top = (high + low + height) / 2;
  return svg("rect", { class: "mark", x: -widest * scale, y: -top * scale, width: 2 * widest * scale, height: height * scale });
}

function widestOf(mould: Mould): number {
  return Math.max(...mould.profile.map(([radius]) => radius), 10);
}
