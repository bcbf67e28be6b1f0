/** What the basket stands on: a soft shadow, and for scale a ruler and a mark as large as a hand. */

import { BufferAttribute, BufferGeometry, DoubleSide, Group, Mesh, MeshBasicMaterial, type Sphere, Vector3 } from "three";

const ROUND = 48;
/** How dark the shadow is under the basket's middle. */
const DARK = 0.42;
/** Lengths of a ruler's marks in metres, and how many there are: 6 in, 160 mm. */
const MARKS = { in: { long: 0.0254, count: 6 }, mm: { long: 0.02, count: 8 } } as const;
const RULER_WIDTH = 0.012;
/** How far before the basket's foot it lies. */
const BEFORE = 0.012;
/** A hand with its fingers closed: length and breadth in metres (common practice: 7 1/2 in and 3 1/4 in). */
const HAND = { long: 0.19, broad: 0.083 };
/** Room for the thumb beside the ruler. */
const THUMB = 0.032;
const [LIGHT, DEEP, PAPER] = [0xfaf3e0, 0x4a3520, 0xcdb894];

/** On what a basket stands: how high, and how far its foot reaches from the middle. */
export interface Foot {
  readonly height: number;
  readonly radius: number;
}

export class Ground {
  readonly node = new Group();
  readonly #shadow = new Mesh(new BufferGeometry(), new MeshBasicMaterial({ vertexColors: true, transparent: true, depthWrite: false }));
  readonly #scale = new Group();
  #ball: Sphere | undefined;
  #units: "in" | "mm" | null = null;
  #foot = 0;
  height = 0;

  constructor() {
    this.node.add(this.#shadow, this.#scale);
  }

  /** Lies under a basket of this size and foot. */
  lie(ball: Sphere, { height, radius }: Foot): void {
    this.#ball = ball;
    this.height = height;
    this.#foot = radius;
    this.node.position.set(ball.center.x, height, ball.center.z);
    this.#shadow.geometry.dispose();
    this.#shadow.geometry = shadow(ball.radius);
    this.#lay();
  }

  /** Lays ruler and hand beside the basket, or takes them away. */
  measure(units: "in" | "mm" | null): void {
    this.#units = units;
    this.#lay();
  }

  #lay(): void {
    this.#scale.clear();
    const [units, ball] = [this.#units, this.#ball];
    if (units === null || !ball) return;
    const { long, count } = MARKS[units];
    const away = this.#foot + BEFORE;
    for (let mark = 0; mark < count; mark += 1) {
      const left = (mark - count / 2) * long;
      this.#scale.add(flat([[left, away], [left + long, away], [left + long, away + RULER_WIDTH], [left, away + RULER_WIDTH]], mark % 2 === 0 ? DEEP : LIGHT));
    }
    this.#scale.add(hand(away + RULER_WIDTH + THUMB));
  }
}

/** Darkest in the middle, nothing at the edge. */
function shadow(radius: number): BufferGeometry {
  const rings: readonly (readonly [number, number])[] = [[0, DARK], [0.45, DARK * 0.8], [0.75, DARK * 0.25], [1.15, 0]];
  const [places, colours, indices]: [number[], number[], number[]] = [[], [], []];
  for (const [far, dark] of rings) {
    for (let step = 0; step < ROUND; step += 1) {
      const angle = (step / ROUND) * 2 * Math.PI;
      places.push(Math.cos(angle) * far * radius, 0.0004, Math.sin(angle) * far * radius);
      colours.push(0.08, 0.05, 0.02, dark);
    }
  }
  for (let ring = 0; ring + 1 < rings.length; ring += 1) {
    for (let step = 0; step < ROUND; step += 1) {
      const [a, b] = [ring * ROUND + step, ring * ROUND + ((step + 1) % ROUND)];
      indices.push(a, b, a + ROUND, b, b + ROUND, a + ROUND);
    }
  }
  const made = new BufferGeometry();
  made.setAttribute("position", new BufferAttribute(new Float32Array(places), 3));
  made.setAttribute("color", new BufferAttribute(new Float32Array(colours), 4));
  made.setIndex(indices);
  return made;
}

/** A flat piece on the ground, its corners to the right and toward whoever looks, in metres. */
function flat(corners: readonly (readonly [number, number])[], colour: number): Mesh {
  const made = new BufferGeometry();
  made.setFromPoints(corners.map(([x, z]) => new Vector3(x, 0.0008, z)));
  made.setIndex(corners.slice(2).flatMap((_, index) => [0, index + 2, index + 1]));
  return new Mesh(made, new MeshBasicMaterial({ color: colour, side: DoubleSide }));
}

/** A palm, four fingers and the thumb, from left to right. */
function hand(away: number): Group {
  const { long, broad } = HAND;
  const box = (from: number, to: number, top: number, bottom: number): Mesh => {
    const [left, right] = [(from - 0.5) * long, (to - 0.5) * long];
    const [near, far] = [away + top * broad, away + bottom * broad];
    const round = 0.12 * broad;
    return flat([[left, near], [right - round, near], [right, near + round], [right, far - round], [right - round, far], [left, far]], PAPER);
  };
  const fingers = [0.92, 1, 0.96, 0.84].map((tip, finger) => box(0.5, tip, finger * 0.25 + 0.02, finger * 0.25 + 0.23));
  const whole = new Group();
  whole.add(box(0, 0.52, 0.02, 0.98), ...fingers, box(0.12, 0.6, -0.3, -0.03));
  return whole;
}
