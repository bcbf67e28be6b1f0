/** The mould from the side, live; where it was measured, its points can be dragged. */

import type { Edit, Girth, Mould } from "../api/types.ts";
import { attribute, el, say, svg } from "../dom/element.ts";
import { t } from "../words/texts.ts";
import { newGesture, type FormContext } from "./context.ts";

/** What one press of an arrow key adds to a girth or a height, in mm; with the shift key ten times that. */
const KEY_STEP = 1;
const LEAST_GIRTH = 20;

interface Frame {
  /** Units of the drawing, in mm of the mould. */
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export class Profile {
  readonly node: HTMLElement;
  readonly #picture = svg("svg", { class: "profile" });
  readonly #shape = svg("path", { class: "profile-mould" });
  readonly #woven = svg("line", { class: "profile-woven" });
  readonly #axis = svg("line", { class: "profile-axis" });
  readonly #handles = svg("g");
  readonly #hint = el("p", { class: "hint" });
  #mould: Mould | undefined;
  #frame: Frame = { left: -1, top: -1, width: 2, height: 2 };
  #held: { path: string; gesture: string } | undefined;

  constructor(private readonly context: FormContext) {
    this.#picture.append(this.#shape, this.#woven, this.#axis, this.#handles);
    this.node = el("div", { class: "profile-box" }, this.#picture, this.#hint);
  }

  show(mould: Mould): void {
    this.#mould = mould;
    if (!this.#held) this.#fit(mould);
    const points = [...mould.profile, ...mould.profile.toReversed().map(([radius, height]) => [-radius, height] as const)];
    attribute(this.#shape, "d", `M${points.map(([x, height]) => `${x} ${-height}`).join("L")}Z`);
    const top = mould.profile.at(-1)?.[0] ?? 0;
    line(this.#woven, -top * 1.08, -mould.woven_to_mm, top * 1.08, -mould.woven_to_mm);
    line(this.#axis, 0, this.#frame.top, 0, this.#frame.top + this.#frame.height);
    attribute(this.#picture, "role", mould.girths.length > 0 ? "group" : "img");
    attribute(this.#picture, "aria-label", t("bench-profile"));
    say(this.#hint, mould.girths.length > 0 ? t("bench-profile-hint") : "");
    this.#showHandles(mould.girths);
  }

  #fit(mould: Mould): void {
    const widest = Math.max(...mould.profile.map(([radius]) => radius), 10);
    const margin = Math.max(widest, mould.height_mm) * 0.12;
    const height = mould.height_mm + 2 * margin;
    const width = 2 * (widest + margin);
    this.#frame = { left: -width / 2, top: -mould.height_mm - margin, width, height };
    attribute(this.#picture, "viewBox", `${this.#frame.left} ${this.#frame.top} ${width} ${height}`);
  }

  #showHandles(girths: readonly Girth[]): void {
    while (this.#handles.childElementCount > girths.length) this.#handles.lastElementChild?.remove();
    for (const [index, girth] of girths.entries()) {
      const handle = this.#handles.children[index] ?? this.#handles.appendChild(this.#handle(index));
      const radius = girth.girth.mm / (2 * Math.PI);
      attribute(handle, "transform", `translate(${radius} ${-girth.height.mm})`);
      attribute(handle, "aria-label", t("bench-profile-point", { number: index + 1 }));
      attribute(handle, "aria-valuenow", Math.round(girth.girth.mm));
      attribute(handle, "aria-valuetext", t("bench-girth-at", { girth: girth.girth.text, height: girth.height.text }));
      const unit = this.#frame.width / 100;
      const [touch, dot] = handle.children;
      if (touch) attribute(touch, "r", 7.5 * unit);
      if (dot) attribute(dot, "r", 2.2 * unit);
    }
  }

  #handle(index: number): SVGGElement {
    const handle = svg(
      "g",
      { class: "profile-handle", role: "slider", tabindex: 0, "aria-valuemin": LEAST_GIRTH, "aria-valuemax": 5000 },
      svg("circle", { class: "touch" }),
      svg("circle", { class: "dot" }),
    );
    const girth = (): Girth | undefined => this.#mould?.girths[index];
    handle.addEventListener("pointerdown", (event) => {
      const held = girth();
      if (!held) return;
      handle.setPointerCapture(event.pointerId);
      handle.focus();
      this.#held = { path: held.path, gesture: newGesture() };
    });
    handle.addEventListener("pointermove", (event) => {
      const held = girth();
      if (this.#held && held && handle.hasPointerCapture(event.pointerId)) this.#drag(event, held, index);
    });
    const release = (): void => {
      this.#held = undefined;
      if (this.#mould) this.show(this.#mould);
    };
    handle.addEventListener("pointerup", release);
    handle.addEventListener("pointercancel", release);
    handle.addEventListener("keydown", (event) => {
      const held = girth();
      if (held) this.#press(event, held, index);
    });
    return handle;
  }

  #drag(event: PointerEvent, girth: Girth, index: number): void {
    const box = this.#picture.getBoundingClientRect();
    const scale = Math.max(this.#frame.width / box.width, this.#frame.height / box.height);
    const x = (event.clientX - box.left - box.width / 2) * scale;
    const y = (event.clientY - box.top - box.height / 2) * scale + this.#frame.top + this.#frame.height / 2;
    this.#write(girth, index, 2 * Math.PI * Math.abs(x), -y, this.#held?.gesture);
  }

  #press(event: KeyboardEvent, girth: Girth, index: number): void {
    const step = event.shiftKey ? 10 * KEY_STEP : KEY_STEP;
    const steps: Record<string, readonly [number, number]> = {
      ArrowRight: [step, 0],
      ArrowLeft: [-step, 0],
      ArrowUp: [0, step],
      ArrowDown: [0, -step],
    };
    const [wider, higher] = steps[event.key] ?? [0, 0];
    if (wider === 0 && higher === 0) return;
    event.preventDefault();
    this.#write(girth, index, girth.girth.mm + wider, girth.height.mm + higher, undefined);
  }

  /** Writes a point between its neighbours; the lowest stays at the foot. */
  #write(girth: Girth, index: number, wanted: number, wantedHeight: number, gesture: string | undefined): void {
    const girths = this.#mould?.girths ?? [];
    const below = girths[index - 1]?.height.mm ?? 0;
    const above = girths[index + 1]?.height.mm ?? Infinity;
    const height = Math.min(Math.max(wantedHeight, below + 2), above - 2);
    const edits: Edit[] = [];
    const round = Math.max(LEAST_GIRTH, wanted);
    if (Math.abs(round - girth.girth.mm) > 0.01) edits.push({ do: "measure", path: `${girth.path}[2]`, mm: round });
    if (index > 0 && Math.abs(height - girth.height.mm) > 0.5) {
      edits.push({ do: "measure", path: `${girth.path}[1]`, mm: height });
    }
    const change = { edits, label: t("bench-did-drag", { what: t("bench-profile-point", { number: index + 1 }) }) };
    this.context.edit(gesture === undefined ? change : { ...change, gesture });
  }
}

function line(element: SVGLineElement, x1: number, y1: number, x2: number, y2: number): void {
  for (const [name, value] of Object.entries({ x1, y1, x2, y2 })) attribute(element, name, value);
}
