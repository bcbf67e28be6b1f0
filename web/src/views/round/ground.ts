/** What the basket stands on: a soft shadow, and for scale a ruler and a mark as large as a hand. */

import { Box3, BufferAttribute, BufferGeometry, DoubleSide, Group, Mesh, MeshBasicMaterial, Sphere, Vector3 } from "three";

const ROUND = 48;
/** Into how many parts half a circle is divided. */
const BOW = 16;
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

  /** What the basket and all that lies beside it fill. */
  whole(ball: Sphere): Sphere {
    this.node.updateMatrixWorld(true);
    const beside = new Box3().setFromObject(this.#scale);
    return beside.isEmpty() ? ball.clone() : beside.getBoundingSphere(new Sphere()).union(ball);
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
  const at = (along: number, across: number): readonly [number, number] => [(along - 0.5) * long, away + across * broad];
  const palm = flat([...bow(at(0.08, 0.5), 0.48 * broad, Math.PI / 2), at(0.5, 0), at(0.56, 0.1), at(0.56, 0.9), at(0.5, 1)], PAPER);
  const finger = (from: readonly [number, number], to: readonly [number, number], breadth: number): Mesh => {
    const turn = Math.atan2(to[1] - from[1], to[0] - from[0]);
    return flat([...bow(from, breadth / 2, turn + Math.PI / 2), ...bow(to, breadth / 2, turn - Math.PI / 2)], PAPER);
  };
  const tips = [0.91, 0.99, 0.95, 0.83].map((tip, number) => {
    const across = (number + 0.5) / 4;
    const round = 0.115;
    return finger(at(0.5, across), at(tip - (round * broad) / long, across), 2 * round * broad);
  });
  const whole = new Group();
  whole.add(palm, ...tips, finger(at(0.2, 0.16), at(0.52, -0.22), 0.26 * broad));
  return whole;
}

/** Half a circle round a place, from this angle on. */
function bow([x, z]: readonly [number, number], radius: number, from: number): (readonly [number, number])[] {
  return Array.from({ length: BOW + 1 }, (_, step) => {
    const angle = from + (step / BOW) * Math.PI;
    return [x + radius * Math.cos(angle), z + radius * Math.sin(angle)] as const;
  });
}
