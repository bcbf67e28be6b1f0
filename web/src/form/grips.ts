/** Places of a drawing that a hand takes hold of, by pointer or by arrow keys. */

import type { Edit, Grip, Pull } from "../api/types.ts";
import { attribute, svg } from "../dom/element.ts";
import { t } from "../words/texts.ts";
import { newGesture, set, type FormContext } from "./context.ts";

/** With the shift key a step is so many times as long. */
const FAR = 10;

type Place = readonly [number, number];

interface Held {
  readonly index: number;
  readonly gesture: string;
  /** Where on the screen it was taken hold of. */
  readonly from: Place;
  readonly scale: number;
  readonly values: readonly number[];
}

export class Grips {
  readonly node = svg("g");
  #grips: readonly Grip[] = [];
  #held: Held | undefined;
  /** Values that were asked for and that the program has not answered with a mould: it may never do so. */
  readonly #asked = new Map<number, readonly number[]>();

  /** `scale` says how many mm a pixel of the screen is. */
  constructor(private readonly context: FormContext, private readonly scale: () => number) {}

  /** Whether a hand holds one: the drawing must not be scaled anew meanwhile. */
  get held(): boolean {
    return this.#held !== undefined;
  }

  /** Shows them; `unit` is a hundredth of the drawing's width. */
  show(grips: readonly Grip[], unit: number): void {
    this.#grips = grips;
    // What was asked for after this is still to come, and may be refused.
    if (!this.context.busy()) this.#asked.clear();
    while (this.node.childElementCount > grips.length) this.node.lastElementChild?.remove();
    for (const [index, grip] of grips.entries()) {
      const handle = this.node.children[index] ?? this.node.appendChild(this.#handle(index));
      const [first] = grip.pulls;
      if (index !== this.#held?.index && !this.#asked.has(index)) move(handle, grip.at);
      attribute(handle, "aria-label", grip.name);
      attribute(handle, "aria-valuemin", told(first, first?.least));
      attribute(handle, "aria-valuemax", told(first, first?.most));
      attribute(handle, "aria-valuenow", told(first, first?.value));
      attribute(handle, "aria-valuetext", grip.text);
      const [touch, dot] = handle.children;
      if (touch) attribute(touch, "r", (grips.length > 8 ? 4 : 7.5) * unit);
      if (dot) attribute(dot, "r", 2.2 * unit);
    }
  }

  #handle(index: number): SVGGElement {
    const handle = svg("g", { class: "profile-handle", role: "slider", tabindex: 0 }, svg("circle", { class: "touch" }), svg("circle", { class: "dot" }));
    handle.addEventListener("pointerdown", (event) => {
      if (!this.#grips[index]) return;
      handle.setPointerCapture(event.pointerId);
      handle.focus();
      this.#held = { index, gesture: newGesture(), from: [event.clientX, event.clientY], scale: this.scale(), values: this.#values(index) };
    });
    handle.addEventListener("pointermove", (event) => {
      const held = this.#held;
      const grip = this.#grips[index];
      if (!held || !grip || !handle.hasPointerCapture(event.pointerId)) return;
      // By how far the hand went, and not by where it is: a notice above may push the drawing down meanwhile.
      const [right, up] = [(event.clientX - held.from[0]) * held.scale, (held.from[1] - event.clientY) * held.scale];
      const by = ({ way, per }: Pull): number => (right * way[0] + up * way[1]) * per;
      this.#write(index, grip.pulls.map((pull, at) => (held.values[at] ?? pull.value) + by(pull)), held.gesture);
    });
    const release = (): void => {
      this.#held = undefined;
    };
    handle.addEventListener("pointerup", release);
    handle.addEventListener("pointercancel", release);
    handle.addEventListener("keydown", (event) => this.#press(event, index));
    return handle;
  }

  /** What its values are, or were asked to be. */
  #values(index: number): readonly number[] {
    return this.#asked.get(index) ?? this.#grips[index]?.pulls.map(({ value }) => value) ?? [];
  }

  /** Right and up are more; where two values follow, right is more of the first and up more of the second. */
  #press(event: KeyboardEvent, index: number): void {
    const pulls = this.#grips[index]?.pulls ?? [];
    const upright = pulls.length > 1 ? 1 : 0;
    const keys: Record<string, readonly [number, number]> = {
      ArrowRight: [0, 1],
      ArrowLeft: [0, -1],
      ArrowUp: [upright, 1],
      ArrowDown: [upright, -1],
    };
    const [which, sign] = keys[event.key] ?? [0, 0];
    if (sign === 0) return;
    event.preventDefault();
    const far = sign * (event.shiftKey ? FAR : 1);
    const values = this.#values(index);
    this.#write(index, pulls.map(({ step, value }, at) => (values[at] ?? value) + (at === which ? far * step : 0)), undefined);
  }

  #write(index: number, wanted: readonly number[], gesture: string | undefined): void {
    const grip = this.#grips[index];
    const handle = this.node.children[index];
    if (!grip || !handle) return;
    const before = this.#values(index);
    const values = grip.pulls.map(({ least, most, value }, at) => Math.min(most, Math.max(least, wanted[at] ?? value)));
    this.#asked.set(index, values);
    const edits = grip.pulls.flatMap((pull, at): Edit[] => {
      const value = values[at] ?? pull.value;
      if (Math.abs(value - (before[at] ?? pull.value)) < 1e-6) return [];
      return pull.paths.map((path) => (pull.share ? set(path, Number(value.toFixed(3))) : { do: "measure", path, mm: value }));
    });
    move(handle, grip.pulls.reduce<Place>((at, { value, way, per }, which) => {
      const by = ((values[which] ?? value) - value) / per;
      return [at[0] + way[0] * by, at[1] + way[1] * by];
    }, grip.at));
    const change = { edits, label: t("bench-did-drag", { what: grip.name }) };
    this.context.edit(gesture === undefined ? change : { ...change, gesture });
  }
}

function move(handle: Element, [x, y]: Place): void {
  attribute(handle, "transform", `translate(${x} ${-y})`);
}

/** A value as a slider tells it: whole millimetres, or percent. */
function told(pull: Pull | undefined, value: number | undefined): number {
  return Math.round((value ?? 0) * (pull?.share ? 100 : 1));
}
