/** Which piece lies under the pointer. */

import { Ray, Vector3 } from "three";
import type { Model } from "./glb.ts";

const scratch = { a: new Vector3(), b: new Vector3(), c: new Vector3(), hit: new Vector3(), middle: new Vector3() };

/** The number of the nearest piece that a ray meets; what `hidden` says of a place is cut away. */
export function pick(model: Model, ray: Ray, hidden: (place: Vector3) => boolean): number | undefined {
  let nearest = Infinity;
  let found: number | undefined;
  for (const [number, piece] of model.pieces.entries()) {
    const [x, y, z, radius] = piece.ball;
    if (ray.distanceSqToPoint(scratch.middle.set(x, y, z)) > radius * radius) continue;
    for (let index = piece.firstIndex; index < piece.firstIndex + piece.indices; index += 3) {
      const hit = meet(model, ray, index);
      if (!hit || hidden(hit)) continue;
      const distance = ray.origin.distanceToSquared(hit);
      if (distance < nearest) {
        nearest = distance;
        found = number;
      }
    }
  }
  return found;
}

function meet(model: Model, ray: Ray, index: number): Vector3 | null {
  const corner = (number: number, to: Vector3) => to.fromArray(model.positions, (model.indices[number] ?? 0) * 3);
  return ray.intersectTriangle(
    corner(index, scratch.a),
    corner(index + 1, scratch.b),
    corner(index + 2, scratch.c),
    false,
    scratch.hit,
  );
}
