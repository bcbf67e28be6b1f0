/** The basket in the round as one looks at it: camera, turning, pointing. What is seen is painted elsewhere. */

import { PerspectiveCamera, Sphere, Vector3 } from "three";
import { OrbitControls } from "three/addons/controls/OrbitControls.js";
import type { Piece } from "./glb.ts";
import { FIELD_OF_VIEW, type Ball, type Inks, type Painting } from "./painting.ts";
import { startPainter } from "./remote.ts";

/** From where the basket is seen at first: a little from above. */
const FIRST_LOOK = new Vector3(0.35, 0.55, 1);
const STEP = Math.PI / 24;
const ZOOM = 1.15;
/** At rest each pixel is drawn this often in either direction, which smooths its edges. */
const FINE = 2;
/** In motion without a graphics card: fewer pixels, more pictures. */
const COARSE = 0.5;
const TURN_MS = 350;
/** By which share of its size a basket may change or move before the camera fits it anew. */
const LOOK_ANEW = 0.12;

export class RoundScene {
  pieces: readonly Piece[] = [];
  readonly #camera = new PerspectiveCamera(FIELD_OF_VIEW, 1, 0.01, 10);
  readonly #controls: OrbitControls;
  readonly #quick: number;
  #ball = new Sphere(new Vector3(), 0.1);
  /** With what lies beside it for scale. */
  #whole = new Sphere(new Vector3(), 0.1);
  /** What the camera was last fitted to. */
  #fitted = new Sphere(new Vector3(), 0);
  #shown = false;
  #cut = 0;
  #pointed: number | undefined;
  #marked: readonly number[] = [];
  #moving = false;

  private constructor(private readonly host: HTMLElement, readonly canvas: HTMLCanvasElement, private readonly painter: Painting) {
    this.#quick = painter.software ? COARSE : Math.min(devicePixelRatio, FINE);
    this.#controls = new OrbitControls(this.#camera, canvas);
    this.#controls.enablePan = false;
    this.#controls.addEventListener("change", () => this.#pose());
    this.#controls.addEventListener("start", () => this.move(true));
    this.#controls.addEventListener("end", () => this.move(false));
    new ResizeObserver(() => this.#resize()).observe(host);
  }

  /** Throws where the browser has no WebGL. */
  static async start(host: HTMLElement, inks: Inks): Promise<RoundScene> {
    const { canvas, painter } = await startPainter(host, inks);
    return new RoundScene(host, canvas, painter);
  }

  /** Shows a model from where the last one was seen; one that is much larger, smaller or elsewhere is fitted in. */
  async show(glb: ArrayBuffer): Promise<void> {
    const { pieces, ball, whole } = await this.painter.load(glb);
    this.pieces = pieces;
    this.#ball = sphere(ball);
    this.#whole = sphere(whole);
    this.#pointed = undefined;
    this.#marked = [];
    if (!this.#shown) this.home();
    else if (this.#isElsewhere()) this.#fit(this.#camera.position.clone().sub(this.#controls.target));
    else this.#pose();
    this.#shown = true;
  }

  /** Sees the whole basket again. */
  home(): void {
    this.#fit(FIRST_LOOK.clone());
  }

  /** Turns by so many steps to the left and upward. */
  turn(left: number, up: number): void {
    const arm = this.#camera.position.clone().sub(this.#controls.target);
    const side = Math.atan2(arm.x, arm.z) + left * STEP;
    const height = Math.asin(Math.min(1, Math.max(-1, arm.y / arm.length()))) + up * STEP;
    const held = Math.min(Math.PI / 2 - 0.02, Math.max(-Math.PI / 2 + 0.02, height));
    const level = Math.cos(held);
    this.#place(new Vector3(Math.sin(side) * level, Math.sin(held), Math.cos(side) * level), arm.length());
  }

  zoom(steps: number): void {
    const arm = this.#camera.position.clone().sub(this.#controls.target);
    const distance = Math.min(Math.max(arm.length() / ZOOM ** steps, this.#ball.radius * 0.3), this.#ball.radius * 12);
    this.#place(arm.normalize(), distance);
  }

  /** Cuts away this share of the basket, from the front, and turns to the cut when it begins. */
  cut(share: number, calm: boolean): void {
    const { center, radius } = this.#ball;
    if (this.#cut === 0 && share > 0) this.#face(new Vector3(center.x, center.y, center.z + radius), calm);
    this.#cut = share;
    this.painter.cut(share);
  }

  /** Marks pieces, and turns to the first of them. */
  mark(pieces: readonly number[], calm: boolean): void {
    this.#marked = pieces;
    this.painter.mark(pieces, this.#pointed);
    const ball = pieces.length === 1 ? this.pieces[pieces[0] ?? 0]?.ball : undefined;
    if (ball) this.#face(new Vector3(ball[0], ball[1], ball[2]), calm);
  }

  /** Points at a piece. */
  point(number: number | undefined): void {
    if (number === this.#pointed) return;
    this.#pointed = number;
    this.painter.mark(this.#marked, number);
  }

  /** The piece at a place of the canvas, in pixels from its corner. */
  at(x: number, y: number): Promise<number | undefined> {
    const { clientWidth, clientHeight } = this.canvas;
    return this.painter.at((2 * x) / clientWidth - 1, 1 - (2 * y) / clientHeight);
  }

  /** Takes up the page's colours. */
  dye(inks: Inks): void {
    this.painter.dye(inks);
  }

  /** Lays a ruler and a hand before the basket, and sees both. */
  async ruler(units: "in" | "mm" | null): Promise<void> {
    this.#whole = sphere(await this.painter.ruler(units));
    this.home();
  }

  still(width: number): Promise<Blob> {
    return this.painter.still(width);
  }

  /** Says whether something is in motion, so that many pictures serve better than fine ones. */
  move(moving: boolean): void {
    if (moving === this.#moving) return;
    this.#moving = moving;
    this.#resize();
  }

  /** Settles when the scene as it is has been drawn, to the last pixel; at once where nothing can be seen. */
  async whenDrawn(): Promise<void> {
    if (document.visibilityState !== "hidden") await this.painter.drawn();
  }

  #isElsewhere(): boolean {
    const { center, radius } = this.#fitted;
    const most = radius * LOOK_ANEW;
    return Math.abs(this.#ball.radius - radius) > most || this.#ball.center.distanceTo(center) > most;
  }

  /** Fits the whole basket in, seen from this direction. */
  #fit(direction: Vector3): void {
    this.#fitted.copy(this.#ball);
    this.#controls.target.copy(this.#whole.center);
    this.#place(direction.normalize());
  }

  #resize(): void {
    const { clientWidth: width, clientHeight: height } = this.host;
    if (width === 0 || height === 0) return;
    this.#camera.aspect = width / height;
    this.canvas.style.width = `${width}px`;
    this.canvas.style.height = `${height}px`;
    this.painter.size({ width, height, ratio: this.#moving ? this.#quick : FINE });
  }

  #place(direction: Vector3, distance = this.#far()): void {
    this.#camera.position.copy(this.#controls.target).addScaledVector(direction, distance);
    this.#camera.near = distance / 50;
    this.#camera.far = distance + this.#ball.radius * 6;
    this.#controls.update();
    this.#pose();
  }

  #pose(): void {
    const { position, near, far } = this.#camera;
    this.painter.pose({ position: position.toArray(), target: this.#controls.target.toArray(), near, far });
  }

  /** How far away the whole basket fits into the picture. */
  #far(): number {
    const half = (FIELD_OF_VIEW / 2) * (Math.PI / 180);
    const across = Math.atan(Math.tan(half) * this.#camera.aspect);
    return (this.#whole.radius * 1.04) / Math.sin(Math.min(half, across));
  }

  /** Turns about the upright axis until a place is in front; what lies round the axis needs no turn. */
  #face(place: Vector3, calm: boolean): void {
    const arm = this.#camera.position.clone().sub(this.#controls.target);
    if (Math.hypot(place.x, place.z) < this.#ball.radius * 0.1) return;
    const from = Math.atan2(arm.x, arm.z);
    const full = Math.PI * 2;
    const way = ((Math.atan2(place.x, place.z) - from + Math.PI + full) % full) - Math.PI;
    const began = performance.now();
    const level = Math.hypot(arm.x, arm.z);
    const move = (now: number): void => {
      const share = calm ? 1 : Math.min(1, (now - began) / TURN_MS);
      const side = from + way * (share * (2 - share));
      this.#place(new Vector3(Math.sin(side) * level, arm.y, Math.cos(side) * level).normalize(), arm.length());
      if (share < 1) requestAnimationFrame(move);
    };
    move(began);
  }
}

function sphere([x, y, z, radius]: Ball): Sphere {
  return new Sphere(new Vector3(x, y, z), radius);
}
