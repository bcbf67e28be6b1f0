/** The view in the round: the scene with its knobs, or line drawings where there is no WebGL. */

import { attribute, el, fill, say } from "../../dom/element.ts";
import { icon, type Sign } from "../../dom/icons.ts";
import { newId } from "../../form/context.ts";
import { Gone } from "../../server/client.ts";
import type { Bench } from "../../state/bench.ts";
import { t } from "../../words/texts.ts";
import { fileName } from "../../shell/dialog.ts";
import type { View } from "../view.ts";
import { Watch } from "../view.ts";
import { LidSwitch } from "./lid.ts";
import { LineStage } from "./lines.ts";
import { Models, type Shot } from "./models.ts";
import { describe, means } from "./names.ts";
import type { Piece } from "./glb.ts";
import type { Inks } from "./painting.ts";
import type { RoundScene } from "./scene.ts";
import { StageSlider } from "./stages.ts";

/** Six inches at 300 dots an inch. */
const STILL_PIXELS = 1800;

export class RoundView implements View {
  readonly id = "round";
  readonly node: HTMLElement;
  readonly #stage = el("div", { class: "stage" });
  readonly #name = el("p", { class: "part-name", "aria-live": "polite" });
  readonly #knobs: HTMLElement;
  readonly #cutKnob: HTMLElement;
  readonly #tools: HTMLElement;
  readonly #ruler: HTMLElement;
  readonly #slider: StageSlider;
  readonly #lid = new LidSwitch(() => this.#ask(false));
  readonly #watch: Watch;
  readonly #models: Models;
  #scene: RoundScene | undefined;
  #lines: LineStage | undefined;
  #starting: Promise<void> | undefined;
  #walked = -1;
  /** Counts where the pointer was. */
  #over = 0;
  #ruled = false;
  #told = "";

  constructor(private readonly bench: Bench) {
    this.#slider = new StageSlider(() => {
      this.#offerLid();
      this.#ask(false);
    });
    this.#cutKnob = this.#cutSlider();
    this.#ruler = this.#tool("ruler", "bench-ruler", (scene) => this.#rule(scene));
    this.#tools = el(
      "div",
      { class: "tools row", role: "group", "aria-label": t("bench-turning") },
      this.#tool("minus", "bench-zoom-out", (scene) => scene.zoom(-1)),
      this.#tool("plus", "bench-zoom-in", (scene) => scene.zoom(1)),
      this.#tool("turnLeft", "bench-turn-left", (scene) => scene.turn(-3, 0)),
      this.#tool("turnRight", "bench-turn-right", (scene) => scene.turn(3, 0)),
      this.#tool("home", "bench-turn-home", (scene) => scene.home()),
      this.#ruler,
      this.#tool("camera", "bench-still", (scene) => void this.#still(scene)),
      el(
        "span",
        { class: "parts" },
        el("span", { class: "between", "aria-hidden": "true" }, t("bench-part")),
        this.#tool("left", "bench-part-last", () => this.#walk(-1)),
        this.#tool("right", "bench-part-next", () => this.#walk(1)),
      ),
    );
    this.#knobs = el("div", { class: "knobs" }, this.#slider.node, this.#cutKnob, this.#lid.node);
    this.node = el("div", { class: "round" }, this.#stage, this.#name, this.#tools, this.#knobs);
    this.#watch = new Watch(bench, (moving) => this.#ask(moving));
    this.#models = new Models((shot) => this.#show(shot), (error) => this.#fail(error));
    bench.shown.listen(() => this.#follow());
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
      this.#scene = await RoundScene.start(this.#stage, inks());
      this.#furnish(this.#scene);
    } catch {
      this.#lines = new LineStage(this.bench);
      fill(this.#stage, this.#lines.node);
      this.#stage.classList.add("lines");
      this.#tools.hidden = true;
      this.#cutKnob.hidden = true;
      say(this.#name, t("bench-no-webgl"));
    }
    this.#follow();
  }

  #follow(): void {
    const shown = this.bench.shown.value;
    if (!shown) return;
    this.#slider.show(shown.stages);
    this.#offerLid();
  }

  /** Line drawings show each stage as the handout does, the lid shut. */
  #offerLid(): void {
    const there = this.bench.shown.value?.lid === true && this.#lines === undefined;
    this.#lid.show(there && this.#slider.finished);
  }

  #furnish(scene: RoundScene): void {
    const { canvas } = scene;
    attribute(canvas, "tabindex", 0);
    attribute(canvas, "role", "application");
    attribute(canvas, "aria-label", t("bench-round-label"));
    canvas.addEventListener("keydown", (event) => this.#press(event, scene));
    canvas.addEventListener("pointermove", (event) => {
      if (event.pointerType === "mouse" && event.buttons === 0) void this.#pointAt(scene, event);
    });
    canvas.addEventListener("pointerleave", () => {
      this.#over += 1;
      this.#point(undefined);
    });
    let down: PointerEvent | undefined;
    canvas.addEventListener("pointerdown", (event) => {
      down = event;
    });
    canvas.addEventListener("pointerup", (event) => {
      const still = down && Math.hypot(event.clientX - down.clientX, event.clientY - down.clientY) < 6;
      if (still) void this.#pointAt(scene, event);
    });
  }

  #ask(moving: boolean): void {
    const { source } = this.bench.document.value;
    const stage = this.#slider.stage;
    if (this.#lines) {
      if (!moving) this.#lines.show(source, stage);
      return;
    }
    const { asked } = this.bench.turn;
    this.#models.request({ source, stage, lid: this.#lid.pose, detail: moving ? "thumbnail" : "page", asked: moving ? asked : null });
  }

  async #show(shot: Shot): Promise<void> {
    const scene = this.#scene;
    if (!scene) return;
    scene.move(shot.question.detail === "thumbnail");
    await scene.show(shot.glb);
    this.#walked = -1;
    this.#mark();
    await scene.whenDrawn();
    const { asked, detail } = shot.question;
    if (asked !== null) performance.measure("picture", { start: asked });
    this.#stage.dataset["drawn"] = detail;
  }

  #fail(error: unknown): void {
    if (error instanceof Gone) this.bench.onGone();
    else this.#tell(t("bench-no-picture"));
  }

  /** Says something that holds until another picture or place comes. */
  #tell(text: string): void {
    this.#told = text;
    say(this.#name, text);
  }

  #untell(): void {
    if (this.#name.textContent === this.#told) say(this.#name, "");
    this.#told = "";
  }

  /** Marks the pieces that a finding means. */
  #mark(): void {
    const place = this.bench.place.value;
    const { pieces } = this;
    const meant = pieces.flatMap(({ word }, number) => (place?.shown.some((part) => means(part, word)) ? [number] : []));
    this.#scene?.mark(meant, isCalm());
    if (place) this.#tell(t("bench-place-shown", { place: place.label }));
    else this.#untell();
  }

  get pieces(): readonly Piece[] {
    return this.#scene?.pieces ?? [];
  }

  /** What lies under the pointer is known a moment later; by then it may be elsewhere. */
  async #pointAt(scene: RoundScene, { offsetX, offsetY }: PointerEvent): Promise<void> {
    this.#over += 1;
    const now = this.#over;
    const number = await scene.at(offsetX, offsetY);
    if (now === this.#over) this.#point(number);
  }

  #point(number: number | undefined): void {
    this.#scene?.point(number);
    const { pieces } = this;
    const piece = number === undefined ? undefined : pieces[number];
    say(this.#name, piece ? describe(piece, pieces, this.bench.shown.value) : "");
    if (number !== undefined) this.#walked = number;
  }

  /** Points at the next piece or the one before, for those who cannot point with a hand. */
  #walk(way: 1 | -1): void {
    const count = this.pieces.length;
    if (count > 0) this.#point((this.#walked + way + count) % count);
  }

  /** Lays a ruler and a mark as large as a hand beside the basket. */
  #rule(scene: RoundScene): void {
    this.#ruled = !this.#ruled;
    const units = this.bench.shown.value?.units ?? "in";
    attribute(this.#ruler, "aria-pressed", String(this.#ruled));
    void scene.ruler(this.#ruled ? units : null);
    say(this.#name, this.#ruled ? t(`bench-ruler-${units}`) : "");
  }

  /** Saves the picture as it is, fine enough to be printed. */
  async #still(scene: RoundScene): Promise<void> {
    const url = URL.createObjectURL(await scene.still(STILL_PIXELS));
    const name = fileName(this.bench.shown.value?.title ?? "");
    el("a", { href: url, download: `${name}.png` }).click();
    setTimeout(() => URL.revokeObjectURL(url), 1000);
    say(this.#name, t("bench-still-saved", { name: `${name}.png` }));
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
      this.#scene?.cut(slider.valueAsNumber / 100, isCalm());
    });
    return el("div", { class: "knob" }, el("label", { for: id }, t("bench-cut-away")), slider);
  }
}

function isCalm(): boolean {
  return matchMedia("(prefers-reduced-motion: reduce)").matches;
}

function inks(): Inks {
  const style = getComputedStyle(document.documentElement);
  const ink = (name: string): string => style.getPropertyValue(name).trim();
  return { pointed: ink("--pointed"), marked: ink("--marked") };
}
