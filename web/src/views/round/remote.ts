/** A painter that works in a worker, spoken to from the page. */

import { el } from "../../dom/element.ts";
import { Painter } from "./painter.ts";
import type { Ball, Inks, Loaded, Painting, Pose, Size } from "./painting.ts";
import type { Answer, Told } from "./painter-worker.ts";

const WORKER = "/assets/painter-worker.js";

class RemotePainter implements Painting {
  readonly #waiting = new Map<number, { readonly done: (value: unknown) => void; readonly fail: (error: Error) => void }>();
  #asked = 0;

  constructor(private readonly worker: Worker, readonly software: boolean) {
    worker.onmessage = ({ data }: MessageEvent<Answer>) => {
      if (!("answer" in data)) return;
      const waiting = this.#waiting.get(data.answer);
      this.#waiting.delete(data.answer);
      if (data.failed === undefined) waiting?.done(data.value);
      else waiting?.fail(new Error(data.failed));
    };
  }

  load(glb: ArrayBuffer): Promise<Loaded> {
    return this.#ask("load", [glb], [glb]) as Promise<Loaded>;
  }

  pose(pose: Pose): void {
    this.#tell("pose", [pose]);
  }

  size(size: Size): void {
    this.#tell("size", [size]);
  }

  cut(share: number): void {
    this.#tell("cut", [share]);
  }

  mark(marked: readonly number[], pointed: number | undefined): void {
    this.#tell("mark", [marked, pointed]);
  }

  dye(inks: Inks): void {
    this.#tell("dye", [inks]);
  }

  ruler(units: "in" | "mm" | null): Promise<Ball> {
    return this.#ask("ruler", [units]) as Promise<Ball>;
  }

  drawn(): Promise<void> {
    return this.#ask("drawn", []) as Promise<void>;
  }

  at(x: number, y: number): Promise<number | undefined> {
    return this.#ask("at", [x, y]) as Promise<number | undefined>;
  }

  still(width: number): Promise<Blob> {
    return this.#ask("still", [width]) as Promise<Blob>;
  }

  #tell(call: Exclude<keyof Painting, "software">, values: readonly unknown[]): void {
    this.worker.postMessage({ call, values } satisfies Told);
  }

  #ask(call: Exclude<keyof Painting, "software">, values: readonly unknown[], give: Transferable[] = []): Promise<unknown> {
    this.#asked += 1;
    const answer = this.#asked;
    return new Promise((done, fail) => {
      this.#waiting.set(answer, { done, fail });
      this.worker.postMessage({ call, values, answer } satisfies Told, give);
    });
  }
}

/** A canvas in the host and its painter: in a worker where the browser can, else on the page. Throws without WebGL. */
export async function startPainter(host: HTMLElement, inks: Inks): Promise<{ canvas: HTMLCanvasElement; painter: Painting }> {
  if (!draws()) throw new Error("this browser draws nothing in the round");
  const canvas = el("canvas");
  host.append(canvas);
  const remote = "transferControlToOffscreen" in canvas && typeof Worker === "function" ? await remotely(canvas, inks) : undefined;
  if (remote) return { canvas, painter: remote };
  canvas.remove();
  const own = el("canvas");
  host.append(own);
  try {
    return { canvas: own, painter: new Painter(own, inks) };
  } catch (error) {
    own.remove();
    throw error;
  }
}

/** Whether the page may draw in the round; where that was switched off, a worker could all the same. */
function draws(): boolean {
  const context = el("canvas").getContext("webgl2");
  context?.getExtension("WEBGL_lose_context")?.loseContext();
  return context !== null;
}

/** None where the worker cannot be started, or draws nothing in the round. */
async function remotely(canvas: HTMLCanvasElement, inks: Inks): Promise<RemotePainter | undefined> {
  const worker = new Worker(WORKER, { type: "module" });
  const started = await new Promise<{ started: boolean; software: boolean }>((resolve) => {
    worker.onerror = () => resolve({ started: false, software: false });
    worker.onmessage = ({ data }: MessageEvent<Answer>) => "started" in data && resolve(data);
    const offscreen = canvas.transferControlToOffscreen();
    worker.postMessage({ call: "start", canvas: offscreen, inks } satisfies Told, [offscreen]);
  });
  if (started.started) return new RemotePainter(worker, started.software);
  worker.terminate();
  return undefined;
}
