/**
 * Reads the server's GLB (glTF 2.0 in one binary file) into one buffer for one draw call.
 *
 * The file holds nothing but nodes that say which piece they are, with a turn about the upright axis, and meshes of positions,
 * triangles and a plain material. Read into hundreds of separate meshes it would be drawn by as many
 * calls, which a tablet cannot do while a value is dragged.
 */

import type { PieceWord } from "../../api/types.ts";

interface Accessor {
  bufferView: number;
  componentType: number;
  count: number;
}
interface Primitive {
  attributes: { POSITION: number };
  indices: number;
  material: number;
}
interface Gltf {
  nodes: { mesh: number; rotation?: [number, number, number, number]; extras: PieceWord & { material: string } }[];
  meshes: { primitives: Primitive[] }[];
  materials: { pbrMetallicRoughness: { baseColorFactor: number[]; metallicFactor: number } }[];
  accessors: Accessor[];
  bufferViews: { byteOffset?: number; byteLength: number }[];
}

/** One piece of the basket and where it lies in the buffers. */
export interface Piece {
  readonly word: PieceWord;
  /** What it is made of. */
  readonly material: string;
  readonly colour: readonly [number, number, number];
  readonly metal: boolean;
  readonly firstCorner: number;
  readonly corners: number;
  readonly firstIndex: number;
  readonly indices: number;
  /** Middle and radius of a ball that holds it, in metres. */
  readonly ball: readonly [number, number, number, number];
}

export interface Model {
  readonly positions: Float32Array<ArrayBuffer>;
  readonly indices: Uint32Array<ArrayBuffer>;
  readonly pieces: readonly Piece[];
}

const HEADER = 12;
const CHUNK = 8;
const MAGIC = 0x46546c67;
const UNSIGNED_SHORT = 5123;

/** Reads a GLB; throws if it is none. */
export function readGlb(bytes: ArrayBuffer): Model {
  const view = new DataView(bytes);
  if (bytes.byteLength < HEADER + CHUNK || view.getUint32(0, true) !== MAGIC) throw new Error("not a GLB file");
  const jsonLength = view.getUint32(HEADER, true);
  const text = new TextDecoder().decode(new Uint8Array(bytes, HEADER + CHUNK, jsonLength));
  const gltf = JSON.parse(text) as Gltf;
  return new Reader(gltf, bytes, HEADER + CHUNK + jsonLength + CHUNK).read();
}

class Reader {
  constructor(
    private readonly gltf: Gltf,
    private readonly bytes: ArrayBuffer,
    private readonly binary: number,
  ) {}

  read(): Model {
    const primitives = this.gltf.nodes.map((node) => this.gltf.meshes[node.mesh]?.primitives[0]);
    let corners = 0;
    let indices = 0;
    for (const primitive of primitives) {
      corners += this.accessor(primitive?.attributes.POSITION).count;
      indices += this.accessor(primitive?.indices).count;
    }
    const model = { positions: new Float32Array(corners * 3), indices: new Uint32Array(indices), pieces: [] as Piece[] };
    for (const [number, node] of this.gltf.nodes.entries()) {
      const primitive = primitives[number];
      if (primitive) model.pieces.push(this.piece(node, primitive, model));
    }
    return model;
  }

  private piece(node: Gltf["nodes"][number], primitive: Primitive, model: { positions: Float32Array; indices: Uint32Array; pieces: Piece[] }): Piece {
    const before = model.pieces.at(-1);
    const firstCorner = before ? before.firstCorner + before.corners : 0;
    const firstIndex = before ? before.firstIndex + before.indices : 0;
    const from = this.floats(primitive.attributes.POSITION);
    const triangles = this.integers(primitive.indices);
    const turn = 2 * Math.atan2(node.rotation?.[1] ?? 0, node.rotation?.[3] ?? 1);
    const ball = place(from, model.positions, firstCorner * 3, turn);
    for (let index = 0; index < triangles.length; index += 1) {
      model.indices[firstIndex + index] = (triangles[index] ?? 0) + firstCorner;
    }
    const look = this.gltf.materials[primitive.material]?.pbrMetallicRoughness;
    const [red = 0.5, green = 0.5, blue = 0.5] = look?.baseColorFactor ?? [];
    return {
      word: node.extras,
      material: node.extras.material,
      colour: [red, green, blue],
      metal: (look?.metallicFactor ?? 0) > 0.5,
      firstCorner,
      corners: from.length / 3,
      firstIndex,
      indices: triangles.length,
      ball,
    };
  }

  private accessor(number: number | undefined): Accessor {
    const accessor = number === undefined ? undefined : this.gltf.accessors[number];
    if (!accessor) throw new Error("the GLB file names an accessor that it does not hold");
    return accessor;
  }

  private offset(accessor: Accessor): number {
    return this.binary + (this.gltf.bufferViews[accessor.bufferView]?.byteOffset ?? 0);
  }

  private floats(number: number): Float32Array {
    const accessor = this.accessor(number);
    return new Float32Array(this.bytes, this.offset(accessor), accessor.count * 3);
  }

  private integers(number: number): Uint16Array | Uint32Array {
    const accessor = this.accessor(number);
    const kind = accessor.componentType === UNSIGNED_SHORT ? Uint16Array : Uint32Array;
    return new kind(this.bytes, this.offset(accessor), accessor.count);
  }
}

/** Writes corners turned about the y axis into `to`; returns the ball that holds them. */
function place(from: Float32Array, to: Float32Array, at: number, turn: number): [number, number, number, number] {
  const cos = Math.cos(turn);
  const sin = Math.sin(turn);
  let [lowX, lowY, lowZ] = [Infinity, Infinity, Infinity];
  let [highX, highY, highZ] = [-Infinity, -Infinity, -Infinity];
  for (let index = 0; index < from.length; index += 3) {
    const a = from[index] as number;
    const y = from[index + 1] as number;
    const b = from[index + 2] as number;
    const x = cos * a + sin * b;
    const z = cos * b - sin * a;
    to[at + index] = x;
    to[at + index + 1] = y;
    to[at + index + 2] = z;
    lowX = Math.min(lowX, x);
    lowY = Math.min(lowY, y);
    lowZ = Math.min(lowZ, z);
    highX = Math.max(highX, x);
    highY = Math.max(highY, y);
    highZ = Math.max(highZ, z);
  }
  const radius = Math.hypot(highX - lowX, highY - lowY, highZ - lowZ) / 2;
  return [(lowX + highX) / 2, (lowY + highY) / 2, (lowZ + highZ) / 2, radius];
}
