/** The painter in a worker: what it is told, and its answers. */

import { Painter } from "./painter.ts";
import type { Inks, Painting } from "./painting.ts";

/** Calls of the painter by name, with a number where an answer is waited for. */
export type Told =
  | { readonly call: "start"; readonly canvas: OffscreenCanvas; readonly inks: Inks }
  | { readonly call: Exclude<keyof Painting, "software">; readonly values: readonly unknown[]; readonly answer?: number };

export type Answer =
  | { readonly started: boolean; readonly software: boolean }
  | { readonly answer: number; readonly value?: unknown; readonly failed?: string };

let painter: Painter | undefined;

self.onmessage = async ({ data }: MessageEvent<Told>): Promise<void> => {
  if (data.call === "start") {
    try {
      painter = new Painter(data.canvas, data.inks);
    } catch {
      painter = undefined;
    }
    say({ started: painter !== undefined, software: painter?.software ?? false });
    return;
  }
  try {
    const act = painter?.[data.call] as ((...values: readonly unknown[]) => unknown) | undefined;
    const value = await act?.apply(painter, [...data.values]);
    if (data.answer !== undefined) say({ answer: data.answer, value });
  } catch (error) {
    if (data.answer === undefined) throw error;
    say({ answer: data.answer, failed: String(error) });
  }
};

function say(answer: Answer): void {
  self.postMessage(answer);
}
