/** What a painter is told and answers, wherever it works. */

import type { Piece } from "./glb.ts";

export const FIELD_OF_VIEW = 32;

/** Colours of the page that the scene takes up: a piece pointed at, and one that a finding means. */
export interface Inks {
  readonly pointed: string;
  readonly marked: string;
}

/** From where the basket is seen. */
export interface Pose {
  readonly position: readonly [number, number, number];
  readonly target: readonly [number, number, number];
  readonly near: number;
  readonly far: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
  /** Pixels drawn for one of the page. */
  readonly ratio: number;
}

/** Middle and radius of a ball that holds something, in metres. */
export type Ball = readonly [number, number, number, number];

/** What is known of a model that was taken up. */
export interface Loaded {
  readonly pieces: readonly Piece[];
  readonly ball: Ball;
  /** Holds also what lies beside it for scale. */
  readonly whole: Ball;
}

/** What a painter does, wherever it works. */
export interface Painting {
  /** Whether pictures are computed by the processor, for want of a graphics card. */
  readonly software: boolean;
  load(glb: ArrayBuffer): Promise<Loaded>;
  pose(pose: Pose): void;
  size(size: Size): void;
  cut(share: number): void;
  mark(marked: readonly number[], pointed: number | undefined): void;
  dye(inks: Inks): void;
  /** Lays a ruler and a hand beside the basket, or takes them away; answers what all of it fills. */
  ruler(units: "in" | "mm" | null): Promise<Ball>;
  /** Settles when the scene as it is has been drawn, to the last pixel. */
  drawn(): Promise<void>;
  /** The piece at a place of the picture, from -1 to 1 to the right and upward. */
  at(x: number, y: number): Promise<number | undefined>;
  /** A picture so many pixels wide, for print. */
  still(width: number): Promise<Blob>;
}
