/** The basket in the round, drawn by WebGL whenever something changed and never otherwise. */

import {
  BackSide,
  BufferAttribute,
  BufferGeometry,
  Color,
  DirectionalLight,
  HemisphereLight,
  Mesh,
  MeshBasicMaterial,
  MeshLambertMaterial,
  PerspectiveCamera,
  Plane,
  Raycaster,
  Scene,
  Sphere,
  Vector2,
  Vector3,
  WebGLRenderer,
} from "three";
import { OrbitControls } from "three/addons/controls/OrbitControls.js";
import type { Model } from "./glb.ts";
import { pick } from "./pick.ts";

/** Colours of the page that the scene takes up: a piece pointed at, and one that a finding means. */
export interface Inks {
  readonly pointed: string;
  readonly marked: string;
  /** The raw inside of what is cut. */
  readonly cut: string;
}

const FIELD_OF_VIEW = 32;
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
/** How often is looked whether a picture is finished, and how long at most. */
const POLL_MS = 2;
const LONGEST_DRAWING_MS = 2000;

export class RoundScene {
  readonly canvas: HTMLCanvasElement;
  readonly #renderer: WebGLRenderer;
  readonly #scene = new Scene();
  readonly #camera = new PerspectiveCamera(FIELD_OF_VIEW, 1, 0.01, 10);
  readonly #lamp = new DirectionalLight(0xffffff, 2.1);
  readonly #controls: OrbitControls;
  readonly #plane = new Plane(new Vector3(0, 0, -1), 10);
  readonly #skin = new MeshLambertMaterial({ vertexColors: true, flatShading: true });
  readonly #inside = new MeshBasicMaterial({ side: BackSide });
  readonly #outer: Mesh;
  readonly #inner: Mesh;
  #model: Model | undefined;
  #ball = new Sphere(new Vector3(), 0.1);
  /** What the camera was last fitted to. */
  #fitted = new Sphere(new Vector3(), 0);
  #cut = 0;
  #pointed: number | undefined;
  #marked: readonly number[] = [];
  #frame = 0;
  #drawn: (() => void)[] = [];
  readonly #quick: number;
  #moving = false;

  /** Throws where the browser has no WebGL. */
  constructor(host: HTMLElement, private inks: Inks) {
    this.#renderer = new WebGLRenderer({ alpha: true, powerPreference: "low-power" });
    this.canvas = this.#renderer.domElement;
    this.#quick = isSoftware(this.#renderer.getContext()) ? COARSE : Math.min(devicePixelRatio, FINE);
    this.#renderer.setPixelRatio(FINE);
    host.append(this.canvas);
    const geometry = new BufferGeometry();
    this.#outer = new Mesh(geometry, this.#skin);
    this.#inner = new Mesh(geometry, this.#inside);
    this.#inner.visible = false;
    this.#scene.add(this.#outer, this.#inner, new HemisphereLight(0xfff4e0, 0x6b5a45, 1.5), this.#lamp);
    this.#controls = new OrbitControls(this.#camera, this.canvas);
    this.#controls.enablePan = false;
    this.#controls.addEventListener("change", () => this.draw());
    this.#controls.addEventListener("start", () => this.move(true));
    this.#controls.addEventListener("end", () => this.move(false));
    new ResizeObserver(() => this.#resize(host)).observe(host);
    this.dye(inks);
  }

  /** Shows a model from where the last one was seen; one that is much larger, smaller or elsewhere is fitted in. */
  show(model: Model): void {
    const first = this.#model === undefined;
    this.#model = model;
    const geometry = new BufferGeometry();
    geometry.setAttribute("position", new BufferAttribute(model.positions, 3));
    geometry.setAttribute("color", new BufferAttribute(new Float32Array(model.positions.length), 3));
    geometry.setIndex(new BufferAttribute(model.indices, 1));
    geometry.computeBoundingSphere();
    this.#outer.geometry.dispose();
    this.#outer.geometry = geometry;
    this.#inner.geometry = geometry;
    this.#ball = geometry.boundingSphere ?? this.#ball;
    this.#pointed = undefined;
    this.#marked = [];
    for (const number of model.pieces.keys()) this.#paint(number);
    this.cut(this.#cut);
    if (first) this.home();
    else if (this.#isElsewhere()) this.#fit(this.#camera.position.clone().sub(this.#controls.target));
    this.draw();
  }

  /** Sees the whole basket again. */
  home(): void {
    this.#fit(FIRST_LOOK.clone());
  }

  #isElsewhere(): boolean {
    const { center, radius } = this.#fitted;
    const most = radius * LOOK_ANEW;
    return Math.abs(this.#ball.radius - radius) > most || this.#ball.center.distanceTo(center) > most;
  }

  /** Fits the whole basket in, seen from this direction. */
  #fit(direction: Vector3): void {
    this.#fitted.copy(this.#ball);
    this.#controls.target.copy(this.#ball.center);
    this.#place(direction.normalize());
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

  /** Cuts away this share of the basket, from the front. */
  cut(share: number): void {
    this.#cut = share;
    const { center, radius } = this.#ball;
    this.#plane.constant = center.z + radius * (1 - 2 * share);
    const planes = share > 0 ? [this.#plane] : [];
    this.#renderer.localClippingEnabled = share > 0;
    this.#skin.clippingPlanes = planes;
    this.#inside.clippingPlanes = planes;
    this.#inner.visible = share > 0;
    this.draw();
  }

  /** Marks pieces, and turns to the first of them. */
  mark(pieces: readonly number[], calm: boolean): void {
    const before = this.#marked;
    this.#marked = pieces;
    for (const number of [...before, ...pieces]) this.#paint(number);
    const middle = this.#middle(pieces);
    if (middle) this.#face(middle, calm);
    this.draw();
  }

  /** Points at a piece. */
  point(number: number | undefined): void {
    if (number === this.#pointed) return;
    const before = this.#pointed;
    this.#pointed = number;
    if (before !== undefined) this.#paint(before);
    if (number !== undefined) this.#paint(number);
    this.draw();
  }

  /** The piece at a place of the canvas, in pixels from its corner. */
  at(x: number, y: number): number | undefined {
    if (!this.#model) return undefined;
    const { clientWidth, clientHeight } = this.canvas;
    const raycaster = new Raycaster();
    raycaster.setFromCamera(new Vector2((2 * x) / clientWidth - 1, 1 - (2 * y) / clientHeight), this.#camera);
    return pick(this.#model, raycaster.ray, (place) => this.#cut > 0 && this.#plane.distanceToPoint(place) < 0);
  }

  /** Takes up the page's colours. */
  dye(inks: Inks): void {
    this.inks = inks;
    this.#inside.color.set(inks.cut);
    for (const number of this.#model?.pieces.keys() ?? []) this.#paint(number);
    this.draw();
  }

  /** Says whether something is in motion, so that many pictures serve better than fine ones. */
  move(moving: boolean): void {
    if (moving === this.#moving) return;
    this.#moving = moving;
    this.#renderer.setPixelRatio(moving ? this.#quick : FINE);
    this.draw();
  }

  /** Draws at the next frame. */
  draw(): void {
    if (this.#frame) return;
    this.#frame = requestAnimationFrame(() => {
      this.#frame = 0;
      this.#lamp.position.copy(this.#camera.position).add(new Vector3(-0.3, 0.5, 0));
      this.#lamp.target.position.copy(this.#controls.target);
      this.#lamp.target.updateMatrixWorld();
      this.#renderer.render(this.#scene, this.#camera);
      const drawn = this.#drawn;
      this.#drawn = [];
      for (const tell of drawn) tell();
    });
  }

  /** Settles when the scene as it is has been drawn, to the last pixel; at once where nothing can be seen. */
  async whenDrawn(): Promise<void> {
    if (document.visibilityState === "hidden") return;
    await new Promise<void>((resolve) => {
      this.#drawn.push(resolve);
      this.draw();
    });
    const context = this.#renderer.getContext();
    if (!(context instanceof WebGL2RenderingContext)) return;
    const fence = context.fenceSync(context.SYNC_GPU_COMMANDS_COMPLETE, 0);
    context.flush();
    const end = performance.now() + LONGEST_DRAWING_MS;
    while (fence && context.getSyncParameter(fence, context.SYNC_STATUS) === context.UNSIGNALED && performance.now() < end) {
      await new Promise((resolve) => setTimeout(resolve, POLL_MS));
    }
    context.deleteSync(fence);
  }

  #resize(host: HTMLElement): void {
    const { clientWidth, clientHeight } = host;
    if (clientWidth === 0 || clientHeight === 0) return;
    this.#renderer.setSize(clientWidth, clientHeight);
    this.#camera.aspect = clientWidth / clientHeight;
    this.#camera.updateProjectionMatrix();
    this.draw();
  }

  #place(direction: Vector3, distance = this.#far()): void {
    this.#camera.position.copy(this.#controls.target).addScaledVector(direction, distance);
    this.#camera.near = distance / 50;
    this.#camera.far = distance + this.#ball.radius * 6;
    this.#camera.updateProjectionMatrix();
    this.#controls.update();
    this.draw();
  }

  /** How far away the whole basket fits into the picture. */
  #far(): number {
    const half = (FIELD_OF_VIEW / 2) * (Math.PI / 180);
    const across = Math.atan(Math.tan(half) * this.#camera.aspect);
    return (this.#ball.radius * 1.04) / Math.sin(Math.min(half, across));
  }

  #middle(pieces: readonly number[]): Vector3 | undefined {
    const ball = pieces.length === 1 ? this.#model?.pieces[pieces[0] ?? 0]?.ball : undefined;
    return ball && new Vector3(ball[0], ball[1], ball[2]);
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

  #paint(number: number): void {
    const piece = this.#model?.pieces[number];
    const colours = this.#outer.geometry.getAttribute("color");
    if (!piece || !(colours instanceof BufferAttribute)) return;
    const colour = new Color(...piece.colour);
    if (this.#marked.includes(number)) colour.set(this.inks.marked);
    else if (number === this.#pointed) colour.set(this.inks.pointed);
    const array = colours.array;
    for (let corner = piece.firstCorner * 3; corner < (piece.firstCorner + piece.corners) * 3; corner += 3) {
      array[corner] = colour.r;
      array[corner + 1] = colour.g;
      array[corner + 2] = colour.b;
    }
    colours.needsUpdate = true;
  }
}

/** Whether the pictures are computed by the processor, for want of a graphics card. */
function isSoftware(context: WebGLRenderingContext | WebGL2RenderingContext): boolean {
  const info = context.getExtension("WEBGL_debug_renderer_info");
  const name = String(context.getParameter(info ? info.UNMASKED_RENDERER_WEBGL : context.RENDERER));
  return /swiftshader|llvmpipe|software|basic render/i.test(name);
}
