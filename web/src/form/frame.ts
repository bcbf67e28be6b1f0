/** The part of a mould that a drawing shows, in mm; up on the mould is up on the drawing. */

import { attribute } from "../dom/element.ts";

export class Frame {
  left = -1;
  top = -1;
  width = 2;
  height = 2;

  constructor(private readonly picture: SVGSVGElement) {}

  /** Shows what lies so far to both sides of the middle, and from one height to another. */
  fit(aside: number, low: number, high: number): void {
    const margin = Math.max(aside, high - low) * 0.12;
    this.width = 2 * (aside + margin);
    this.height = high - low + 2 * margin;
    this.left = -this.width / 2;
    this.top = -high - margin;
    attribute(this.picture, "viewBox", `${this.left} ${this.top} ${this.width} ${this.height}`);
  }

  /** How many mm a pixel of the screen is. */
  scale(): number {
    const box = this.picture.getBoundingClientRect();
    return Math.max(this.width / box.width, this.height / box.height);
  }
}

/** A closed line through places, in mm to the right and up. */
export function closed(places: readonly (readonly [number, number])[]): string {
  return `M${places.map(([x, y]) => `${x} ${-y}`).join("L")}Z`;
}
