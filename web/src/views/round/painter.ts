/**
 * Paints the basket with WebGL, on a canvas of the page or, where the browser can, in a worker: then a picture
 * that takes its time keeps nobody waiting.
 */

import { Color, DirectionalLight, HemisphereLight, PerspectiveCamera, Plane, Raycaster, Scene, Sphere, Vector2, Vector3, WebGLRenderer } from "three";
import { Ground, type Foot } from "./ground.ts";
import { readGlb, type Model } from "./glb.ts";
import { FIELD_OF_VIEW, type Ball, type Inks, type Loaded, type Painting, type Pose, type Size } from "./painting.ts";
import { pick } from "./pick.ts";
import { printable } from "./png.ts";
import { Skin } from "./skin.ts";

/** Light comes from the left of whoever looks, and a little from above: so what is round reads as round. */
const LAMP = { side: 1.05, up: 0.5 };
/** A finger's breadth in metres. */
const FINGER = 0.012;
/** How often is looked whether a picture is finished, and how long at most. */
const POLL_MS = 2;
const LONGEST_DRAWING_MS = 2000;

export class Painter implements Painting {
  readonly software: boolean;
  readonly #renderer: WebGLRenderer;
  readonly #scene = new Scene();
  readonly #camera = new PerspectiveCamera(FIELD_OF_VIEW, 1, 0.01, 10);
  readonly #lamp = new DirectionalLight(0xfff6e6, 2.3);
  /** What the bench throws back, so that a base can be seen from below. */
  readonly #bounce = new DirectionalLight(0xffe9c8, 0.8);
  readonly #target = new Vector3();
  readonly #plane = new Plane(new Vector3(0, 0, -1), 10);
  readonly #skin = new Skin();
  readonly #ground = new Ground();
  #model: Model | undefined;
  #ball = new Sphere(new Vector3(), 0.1);
  #size: Size = { width: 1, height: 1, ratio: 1 };
  #cut = 0;
  #frame = 0;
  /** Whether it was said from where the model is seen: until then an earlier look would show it. */
  #posed = true;
  #waiting: (() => void)[] = [];

  /** Throws where the browser has no WebGL. */
  constructor(private readonly canvas: HTMLCanvasElement | OffscreenCanvas, inks: Inks) {
    this.#renderer = new WebGLRenderer({ canvas, alpha: true, powerPreference: "low-power" });
    this.software = isSoftware(this.#renderer.getContext());
    this.#scene.add(...this.#skin.meshes, this.#ground.node, new HemisphereLight(0xfff4e0, 0xcbb893, 1.35), this.#lamp, this.#bounce);
    this.#bounce.position.set(0, -1, 0);
    // The browser may take the context away, as when a laptop wakes; the scene is drawn anew when it comes back.
    canvas.addEventListener("webglcontextlost", (event: Event) => event.preventDefault());
    canvas.addEventListener("webglcontextrestored", () => this.#draw());
    this.#skin.dye(inks);
  }

  async load(glb: ArrayBuffer): Promise<Loaded> {
    this.#model = readGlb(glb);
    this.#posed = false;
    this.#ball = this.#skin.wear(this.#model);
    this.#ground.lie(this.#ball, foot(this.#model, this.#ball.center));
    this.cut(this.#cut);
    return { pieces: this.#model.pieces, ball: told(this.#ball), whole: this.#whole() };
  }

  pose({ position, target, near, far }: Pose): void {
    this.#camera.position.set(...position);
    this.#target.set(...target);
    this.#camera.near = near;
    this.#camera.far = far;
    this.#camera.lookAt(this.#target);
    this.#camera.updateProjectionMatrix();
    this.#posed = true;
    this.#draw();
  }

  size(size: Size): void {
    this.#size = size;
    this.#resize(size);
    this.#draw();
  }

  /** Cuts away this share of the basket, from the front; the cut shows each part in its own colour. */
  cut(share: number): void {
    this.#cut = share;
    const { center, radius } = this.#ball;
    this.#plane.constant = center.z + radius * (1 - 2 * share);
    this.#renderer.localClippingEnabled = share > 0;
    this.#skin.cut(share > 0 ? this.#plane : null);
    this.#draw();
  }

  mark(marked: readonly number[], pointed: number | undefined): void {
    this.#skin.mark(marked, pointed);
    this.#draw();
  }

  dye(inks: Inks): void {
    this.#skin.dye(inks);
    this.#draw();
  }

  async ruler(units: "in" | "mm" | null): Promise<Ball> {
    this.#ground.measure(units);
    this.#draw();
    return this.#whole();
  }

  #whole(): Ball {
    return told(this.#ground.whole(this.#ball));
  }

  async drawn(): Promise<void> {
    await new Promise<void>((resolve) => {
      this.#waiting.push(resolve);
      this.#draw();
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

  async at(x: number, y: number): Promise<number | undefined> {
    if (!this.#model) return undefined;
    const raycaster = new Raycaster();
    raycaster.setFromCamera(new Vector2(x, y), this.#camera);
    return pick(this.#model, raycaster.ray, (place) => this.#cut > 0 && this.#plane.distanceToPoint(place) < 0);
  }

  async still(width: number): Promise<Blob> {
    const { width: wide, height: high } = this.#size;
    this.#resize({ width, height: Math.round((width * high) / Math.max(1, wide)), ratio: 1 });
    this.#renderer.setClearColor(new Color("#ffffff"), 1);
    this.#render();
    const blob = await picture(this.canvas);
    this.#renderer.setClearColor(new Color("#000000"), 0);
    this.#resize(this.#size);
    this.#render();
    return printable(blob);
  }

  #resize({ width, height, ratio }: Size): void {
    this.#renderer.setPixelRatio(ratio);
    this.#renderer.setSize(width, height, false);
    this.#camera.aspect = width / Math.max(1, height);
    this.#camera.updateProjectionMatrix();
  }

  /** Draws at the next frame. */
  #draw(): void {
    if (this.#frame) return;
    this.#frame = requestAnimationFrame(() => {
      this.#frame = 0;
      if (!this.#posed) return;
      this.#render();
      const drawn = this.#waiting;
      this.#waiting = [];
      for (const tell of drawn) tell();
    });
  }

  #render(): void {
    const arm = this.#camera.position.clone().sub(this.#target);
    const side = Math.atan2(arm.x, arm.z) - LAMP.side;
    const level = Math.max(0.2 * arm.length(), Math.hypot(arm.x, arm.z));
    this.#lamp.position.copy(this.#target).add(new Vector3(Math.sin(side) * level, Math.max(0, arm.y) + LAMP.up * arm.length(), Math.cos(side) * level));
    this.#lamp.target.position.copy(this.#target);
    this.#lamp.target.updateMatrixWorld();
    // From below the ground would hide the base.
    this.#ground.node.visible = this.#camera.position.y > this.#ground.height;
    this.#renderer.render(this.#scene, this.#camera);
  }
}

/** The picture as it was painted last, taken at once: a canvas keeps it no longer. */
async function picture(canvas: HTMLCanvasElement | OffscreenCanvas): Promise<Blob> {
  if (canvas instanceof OffscreenCanvas) return canvas.convertToBlob({ type: "image/png" });
  return new Promise((resolve, reject) => canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error("no picture"))), "image/png"));
}

/** What touches the ground: what lies no higher than a finger's breadth above the lowest corner. */
function foot({ positions }: Model, middle: Vector3): Foot {
  let height = Infinity;
  for (let index = 1; index < positions.length; index += 3) height = Math.min(height, positions[index] ?? height);
  let radius = 0;
  for (let index = 0; index < positions.length; index += 3) {
    const [x = 0, y = 0, z = 0] = positions.subarray(index, index + 3);
    if (y < height + FINGER) radius = Math.max(radius, Math.hypot(x - middle.x, z - middle.z));
  }
  return { height, radius };
}

function isSoftware(context: WebGLRenderingContext | WebGL2RenderingContext): boolean {
  const info = context.getExtension("WEBGL_debug_renderer_info");
  const name = String(context.getParameter(info ? info.UNMASKED_RENDERER_WEBGL : context.RENDERER));
  return /swiftshader|llvmpipe|software|basic render/i.test(name);
}

function told({ center, radius }: Sphere): Ball {
  return [center.x, center.y, center.z, radius];
}
