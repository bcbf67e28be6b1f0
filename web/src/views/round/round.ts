/** The view in the round: the scene with its knobs, or line drawings where there is no WebGL. */

import { attribute, el, fill, say } from "../../dom/element.ts";
import { icon, type Sign } from "../../dom/icons.ts";
import { newId } from "../../form/context.ts";
import { Gone } from "../../server/client.ts";
import type { Bench } from "../../state/bench.ts";
import { t } from "../../words/texts.ts";
import type { View } from "../view.ts";
import { Watch } from "../view.ts";
import { LineStage } from "./lines.ts";
import { Models, type Shot } from "./models.ts";
import { describe, means } from "./names.ts";
import type { Inks, RoundScene } from "./scene.ts";
import { StageSlider } from "./stages.ts";

export class RoundView implements View {
  readonly id = "round";
  readonly node: HTMLElement;
  readonly #stage = el("div", { class: "stage" });
  readonly #name = el("p", { class: "part-name", "aria-live": "polite" });
  readonly #knobs: HTMLElement;
  readonly #cutKnob: HTMLElement;
  readonly #tools: HTMLElement;
  readonly #slider: StageSlider;
  readonly #watch: Watch;
  readonly #models: Models;
  #scene: RoundScene | undefined;
  #lines: LineStage | undefined;
  #starting: Promise<void> | undefined;
  #shot: Shot | undefined;
  #walked = -1;

  constructor(private readonly bench: Bench) {
    this.#slider = new StageSlider(() => this.#ask(false));
    this.#cutKnob = this.#cutSlider();
    this.#tools = el(
      "div",
      { class: "tools row", role: "group", "aria-label": t("bench-turning") },
      this.#tool("minus", "bench-zoom-out", (scene) => scene.zoom(-1)),
      this.#tool("plus", "bench-zoom-in", (scene) => scene.zoom(1)),
      this.#tool("turnLeft", "bench-turn-left", (scene) => scene.turn(-3, 0)),
      this.#tool("turnRight", "bench-turn-right", (scene) => scene.turn(3, 0)),
      this.#tool("home", "bench-turn-home", (scene) => scene.home()),
      el("span", { class: "between", "aria-hidden": "true" }, t("bench-part")),
      this.#tool("left", "bench-part-last", () => this.#walk(-1)),
      this.#tool("right", "bench-part-next", () => this.#walk(1)),
    );
    this.#knobs = el("div", { class: "knobs" }, this.#slider.node, this.#cutKnob);
    this.node = el("div", { class: "round" }, this.#stage, this.#name, this.#tools, this.#knobs);
    this.#watch = new Watch(bench, (moving) => this.#ask(moving));
    this.#models = new Models((shot) => this.#show(shot), (error) => this.#fail(error));
    bench.shown.listen((shown) => shown && this.#slider.show(shown.stages));
    bench.place.listen(() => this.#mark());
  }

  enter(): void {
    this.#starting ??= this.#start();
    void this.#starting.then(() => this.#watch.enter());
  }

  leave(): void {
    this.#watch.leave();
  }

  /** Draws in the colours of the light that the page is in now. */
  dye(): void {
    this.#scene?.dye(inks());
  }

  async #start(): Promise<void> {
    try {
      const { RoundScene } = await import("./scene.ts");
      this.#scene = new RoundScene(this.#stage, inks());
      this.#furnish(this.#scene);
    } catch {
      this.#lines = new LineStage(this.bench);
      fill(this.#stage, this.#lines.node);
      this.#stage.classList.add("lines");
      this.#tools.hidden = true;
      this.#cutKnob.hidden = true;
      say(this.#name, t("bench-no-webgl"));
    }
    const shown = this.bench.shown.value;
    if (shown) this.#slider.show(shown.stages);
  }

  #furnish(scene: RoundScene): void {
    const { canvas } = scene;
    attribute(canvas, "tabindex", 0);
    attribute(canvas, "role", "application");
    attribute(canvas, "aria-label", t("bench-round-label"));
    canvas.addEventListener("keydown", (event) => this.#press(event, scene));
    canvas.addEventListener("pointermove", (event) => {
      if (event.pointerType === "mouse" && event.buttons === 0) this.#point(scene.at(event.offsetX, event.offsetY));
    });
    canvas.addEventListener("pointerleave", () => this.#point(undefined));
    let down: PointerEvent | undefined;
    canvas.addEventListener("pointerdown", (event) => {
      down = event;
    });
    canvas.addEventListener("pointerup", (event) => {
      const still = down && Math.hypot(event.clientX - down.clientX, event.clientY - down.clientY) < 6;
      if (still) this.#point(scene.at(event.offsetX, event.offsetY));
    });
    // The browser may take the context away, as when a laptop wakes; the scene is drawn anew when it comes back.
    canvas.addEventListener("webglcontextlost", (event) => event.preventDefault());
    canvas.addEventListener("webglcontextrestored", () => scene.draw());
  }

  #ask(moving: boolean): void {
    const { source } = this.bench.document.value;
    const stage = this.#slider.stage;
    if (this.#lines) {
      if (!moving) this.#lines.show(source, stage);
      return;
    }
    const { asked } = this.bench.turn;
    this.#models.request({ source, stage, detail: moving ? "thumbnail" : "page", asked: moving ? asked : null });
  }

  async #show(shot: Shot): Promise<void> {
    const scene = this.#scene;
    if (!scene) return;
    this.#shot = shot;
    scene.move(shot.question.detail === "thumbnail");
    scene.show(shot.model);
    this.#walked = -1;
    this.#mark();
    await scene.whenDrawn();
    const { asked, detail } = shot.question;
    if (asked !== null) performance.measure("picture", { start: asked });
    this.#stage.dataset["drawn"] = detail;
  }

  #fail(error: unknown): void {
    if (error instanceof Gone) this.bench.onGone();
    else say(this.#name, t("bench-no-picture"));
  }

  /** Marks the pieces that a finding means. */
  #mark(): void {
    const place = this.bench.place.value;
    const pieces = this.#shot?.model.pieces ?? [];
    const meant = pieces.flatMap(({ word }, number) => (place?.shown.some((part) => means(part, word)) ? [number] : []));
    this.#scene?.mark(meant, matchMedia("(prefers-reduced-motion: reduce)").matches);
    if (place) say(this.#name, t("bench-place-shown", { place: place.label }));
  }

  #point(number: number | undefined): void {
    this.#scene?.point(number);
    const pieces = this.#shot?.model.pieces ?? [];
    const piece = number === undefined ? undefined : pieces[number];
    say(this.#name, piece ? describe(piece, pieces, this.bench.shown.value) : "");
    if (number !== undefined) this.#walked = number;
  }

  /** Points at the next piece or the one before, for those who cannot point with a hand. */
  #walk(way: 1 | -1): void {
    const count = this.#shot?.model.pieces.length ?? 0;
    if (count > 0) this.#point((this.#walked + way + count) % count);
  }

  #press(event: KeyboardEvent, scene: RoundScene): void {
    const acts: Record<string, () => void> = {
      ArrowLeft: () => scene.turn(-1, 0),
      ArrowRight: () => scene.turn(1, 0),
      ArrowUp: () => scene.turn(0, 1),
      ArrowDown: () => scene.turn(0, -1),
      "+": () => scene.zoom(1),
      "=": () => scene.zoom(1),
      "-": () => scene.zoom(-1),
      Home: () => scene.home(),
      PageUp: () => this.#walk(1),
      PageDown: () => this.#walk(-1),
    };
    const act = event.ctrlKey || event.metaKey || event.altKey ? undefined : acts[event.key];
    if (!act) return;
    event.preventDefault();
    act();
  }

  #tool(sign: Sign, name: string, act: (scene: RoundScene) => void): HTMLElement {
    const press = (): void => {
      if (this.#scene) act(this.#scene);
    };
    return el("button", { type: "button", class: "sign", "aria-label": t(name), title: t(name), onclick: press }, icon(sign));
  }

  #cutSlider(): HTMLElement {
    const id = newId("cut");
    const slider = el("input", { type: "range", id, min: 0, max: 100, value: 0 });
    slider.addEventListener("input", () => {
      attribute(slider, "aria-valuetext", t("bench-cut-share", { share: slider.valueAsNumber }));
      this.#scene?.cut(slider.valueAsNumber / 100);
    });
    return el("div", { class: "knob" }, el("label", { for: id }, t("bench-cut-away")), slider);
  }
}

function inks(): Inks {
  const style = getComputedStyle(document.documentElement);
  const ink = (name: string): string => style.getPropertyValue(name).trim();
  return { pointed: ink("--pointed"), marked: ink("--marked"), cut: ink("--raw") };
}
