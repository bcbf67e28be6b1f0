/** The basket's surface: what is rounded is shaded smoothly and has a little gloss, what is flat is not. */

import {
  BackSide,
  BufferAttribute,
  BufferGeometry,
  Color,
  Mesh,
  MeshBasicMaterial,
  MeshLambertMaterial,
  MeshPhongMaterial,
  type Plane,
  Sphere,
  Vector3,
} from "three";
import type { Model, Piece } from "./glb.ts";
import type { Inks } from "./painting.ts";

/** Pieces with edges; all others are rounded. */
const FLAT = new Set(["mould", "base", "plug", "stave", "ear", "band", "clamp"]);
/** How much the grain makes a piece lighter or darker from place to place, and pieces differ from each other. */
const GRAIN = 0.07;
const TINT = 0.05;
/** How far apart the grain's lines lie, in metres. */
const GRAIN_WIDTH = 0.0011;

export class Skin {
  readonly #flat = new MeshLambertMaterial({ vertexColors: true, flatShading: true });
  readonly #round = new MeshPhongMaterial({ vertexColors: true, specular: 0x5a4a30, shininess: 26 });
  readonly #cutFace = new MeshBasicMaterial({ vertexColors: true, side: BackSide, color: 0xd8d0c4 });
  readonly #flatMesh = new Mesh(new BufferGeometry(), this.#flat);
  readonly #roundMesh = new Mesh(new BufferGeometry(), this.#round);
  readonly #cutMesh = new Mesh(new BufferGeometry(), this.#cutFace);
  #model: Model | undefined;
  #inks: Inks = { pointed: "#3f83a8", marked: "#d2401f" };
  #pointed: number | undefined;
  #marked: readonly number[] = [];

  constructor() {
    this.#cutMesh.visible = false;
  }

  get meshes(): readonly Mesh[] {
    return [this.#flatMesh, this.#roundMesh, this.#cutMesh];
  }

  /** Takes up a model; returns the ball that holds it. */
  wear(model: Model): Sphere {
    this.#model = model;
    this.#pointed = undefined;
    this.#marked = [];
    const positions = new BufferAttribute(model.positions, 3);
    const colours = new BufferAttribute(new Float32Array(model.positions.length), 3);
    const all = geometry(positions, colours, model.indices);
    const flat = geometry(positions, colours, triangles(model, ({ word }) => FLAT.has(word.kind)));
    const round = geometry(positions, colours, triangles(model, ({ word }) => !FLAT.has(word.kind)));
    round.setAttribute("normal", new BufferAttribute(normals(model), 3));
    for (const [mesh, made] of [[this.#flatMesh, flat], [this.#roundMesh, round], [this.#cutMesh, all]] as const) {
      mesh.geometry.dispose();
      mesh.geometry = made;
    }
    for (const number of model.pieces.keys()) this.#paint(number);
    all.computeBoundingSphere();
    return all.boundingSphere ?? new Sphere(new Vector3(), 0.1);
  }

  cut(plane: Plane | null): void {
    const planes = plane ? [plane] : [];
    for (const material of [this.#flat, this.#round, this.#cutFace]) material.clippingPlanes = planes;
    this.#cutMesh.visible = plane !== null;
  }

  mark(marked: readonly number[], pointed: number | undefined): void {
    const before = [...this.#marked, ...(this.#pointed === undefined ? [] : [this.#pointed])];
    this.#marked = marked;
    this.#pointed = pointed;
    for (const number of new Set([...before, ...marked, ...(pointed === undefined ? [] : [pointed])])) this.#paint(number);
  }

  dye(inks: Inks): void {
    this.#inks = inks;
    for (const number of this.#model?.pieces.keys() ?? []) this.#paint(number);
  }

  #paint(number: number): void {
    const model = this.#model;
    const piece = model?.pieces[number];
    const colours = this.#flatMesh.geometry.getAttribute("color");
    if (!model || !piece || !(colours instanceof BufferAttribute)) return;
    const strong = this.#marked.includes(number) ? this.#inks.marked : number === this.#pointed ? this.#inks.pointed : null;
    const colour = strong === null ? new Color(...piece.colour) : new Color(strong);
    const tint = strong === null && !piece.metal ? 1 + TINT * wave(number * 1.7) : 1;
    const grain = strong === null && !piece.metal ? GRAIN : 0;
    const { positions } = model;
    const array = colours.array;
    for (let corner = piece.firstCorner * 3; corner < (piece.firstCorner + piece.corners) * 3; corner += 3) {
      const [x = 0, y = 0, z = 0] = [positions[corner], positions[corner + 1], positions[corner + 2]];
      const light = tint * (1 + grain * wave((x * 0.7 + y * 2.3 + z * 0.9) / GRAIN_WIDTH + number));
      array[corner] = colour.r * light;
      array[corner + 1] = colour.g * light;
      array[corner + 2] = colour.b * light;
    }
    colours.needsUpdate = true;
  }
}

/** An uneven wave from -1 to 1. */
function wave(at: number): number {
  return 0.6 * Math.sin(at) + 0.4 * Math.sin(at * 2.63 + 1.3);
}

function geometry(positions: BufferAttribute, colours: BufferAttribute, indices: Uint32Array): BufferGeometry {
  const made = new BufferGeometry();
  made.setAttribute("position", positions);
  made.setAttribute("color", colours);
  made.setIndex(new BufferAttribute(indices, 1));
  return made;
}

/** The triangles of some of the pieces. */
function triangles(model: Model, wanted: (piece: Piece) => boolean): Uint32Array {
  const pieces = model.pieces.filter(wanted);
  const all = new Uint32Array(pieces.reduce((sum, { indices }) => sum + indices, 0));
  let at = 0;
  for (const { firstIndex, indices } of pieces) {
    all.set(model.indices.subarray(firstIndex, firstIndex + indices), at);
    at += indices;
  }
  return all;
}

/** At each corner the middle of the directions of its triangles, the larger ones counting more. */
function normals({ positions, indices }: Model): Float32Array {
  const sum = new Float32Array(positions.length);
  for (let index = 0; index < indices.length; index += 3) {
    const [a = 0, b = 0, c = 0] = [indices[index], indices[index + 1], indices[index + 2]].map((corner) => (corner ?? 0) * 3);
    const at = (corner: number, axis: number): number => positions[corner + axis] as number;
    const [ux, uy, uz] = [at(b, 0) - at(a, 0), at(b, 1) - at(a, 1), at(b, 2) - at(a, 2)];
    const [vx, vy, vz] = [at(c, 0) - at(a, 0), at(c, 1) - at(a, 1), at(c, 2) - at(a, 2)];
    const normal = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
    for (const corner of [a, b, c]) for (let axis = 0; axis < 3; axis += 1) sum[corner + axis] = (sum[corner + axis] as number) + (normal[axis] as number);
  }
  for (let corner = 0; corner < sum.length; corner += 3) {
    const long = Math.hypot(sum[corner] as number, sum[corner + 1] as number, sum[corner + 2] as number) || 1;
    for (let axis = 0; axis < 3; axis += 1) sum[corner + axis] = (sum[corner + axis] as number) / long;
  }
  return sum;
}
