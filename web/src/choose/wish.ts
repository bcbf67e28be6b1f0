/** What look is wanted: colours as swatches, looks as pictures, side and turns. */

import type { ColourName, LookWord, SideWord, Way, Wish } from "../api/types.ts";
import { attribute, el, fill } from "../dom/element.ts";
import { newId } from "../form/context.ts";
import { swatch } from "../form/swatch.ts";
import { t } from "../words/texts.ts";
import { littlePicture } from "./little.ts";

export const LOOKS: readonly LookWord[] = ["spiral", "columns", "bands", "checks", "arrows", "plain"];
const SIDES: readonly SideWord[] = ["left", "right"];
/** Beside the staves' own colour so many can be told apart. */
const MOST_COLOURS = 2;
export const NATURAL = "natural";

export class WishView {
  readonly node: HTMLElement;
  readonly #looks = new Map<LookWord, HTMLButtonElement>();
  readonly #sides = new Map<SideWord, HTMLButtonElement>();
  readonly #colours = new Map<string, HTMLButtonElement>();
  readonly #side: HTMLElement;
  readonly #turns = el("input", { type: "text", inputmode: "decimal", autocomplete: "off", id: newId("turns") });
  #look: LookWord | undefined;
  #lean: SideWord | undefined;
  #chosen: string[];

  constructor(colours: readonly ColourName[], chosen: readonly string[], private readonly changed: () => void) {
    this.#chosen = chosen.filter((name) => name !== NATURAL).slice(0, MOST_COLOURS);
    for (const colour of colours.filter(({ name }) => name !== NATURAL)) this.#colours.set(colour.name, this.#swatch(colour));
    for (const look of LOOKS) this.#looks.set(look, this.#lookButton(look));
    for (const side of SIDES) {
      const press = (): void => {
        this.#lean = this.#lean === side ? undefined : side;
        this.#show();
      };
      this.#sides.set(side, el("button", { type: "button", class: "quiet", onclick: press }, t(`bench-side-${side}`)));
    }
    this.#turns.addEventListener("change", () => this.changed());
    this.#side = el(
      "div",
      { class: "row wrap wish-side" },
      el("div", { class: "row", role: "group", "aria-label": t("bench-wish-side") }, ...this.#sides.values()),
      el("label", { for: this.#turns.id }, t("bench-wish-turns")),
      this.#turns,
    );
    this.node = el(
      "div",
      { class: "wish" },
      part("bench-wish-colours", "bench-wish-colours-hint", "swatch-row", this.#colours.values()),
      part("bench-wish-look", null, "look-row", this.#looks.values()),
      this.#side,
    );
    this.#mark();
  }

  get wish(): Wish {
    const turns = Number.parseFloat(this.#turns.value.replace(",", "."));
    const spiral = this.#look === "spiral";
    return {
      look: this.#look ?? null,
      lean: spiral ? (this.#lean ?? null) : null,
      turns: spiral && turns > 0 ? turns : null,
      colours: [NATURAL, ...this.#chosen],
    };
  }

  /** Shows what a look comes to on this basket; one that these colours do not give is faint, and can be asked for. */
  picture(look: LookWord, way: Way | undefined): void {
    const button = this.#looks.get(look);
    if (!button) return;
    fill(button, way ? littlePicture(way.picture) : el("span", { class: "little none" }), el("span", {}, t(`bench-look-${look}`)));
    button.classList.toggle("away", way === undefined);
  }

  #swatch({ name, label, hex }: ColourName): HTMLButtonElement {
    const press = (): void => {
      const had = this.#chosen.includes(name);
      this.#chosen = had ? this.#chosen.filter((one) => one !== name) : [...this.#chosen, name].slice(-MOST_COLOURS);
      this.#show();
    };
    return el("button", { type: "button", class: "quiet colour", onclick: press }, swatch(hex), el("span", {}, label));
  }

  #lookButton(look: LookWord): HTMLButtonElement {
    const press = (): void => {
      this.#look = look;
      this.#show();
    };
    return el("button", { type: "button", class: "quiet look", onclick: press }, el("span", { class: "little none" }), el("span", {}, t(`bench-look-${look}`)));
  }

  #show(): void {
    this.#mark();
    this.changed();
  }

  #mark(): void {
    for (const [look, button] of this.#looks) attribute(button, "aria-pressed", String(look === this.#look));
    for (const [side, button] of this.#sides) attribute(button, "aria-pressed", String(side === this.#lean));
    for (const [name, button] of this.#colours) attribute(button, "aria-pressed", String(this.#chosen.includes(name)));
    attribute(this.#side, "hidden", this.#look !== "spiral");
  }
}

function part(heading: string, hint: string | null, kind: string, buttons: Iterable<HTMLElement>): HTMLElement {
  const id = newId("wish");
  return el(
    "section",
    { "aria-labelledby": id },
    el("h3", { id }, t(heading)),
    hint !== null && el("p", { class: "hint" }, t(hint)),
    el("div", { class: kind }, ...buttons),
  );
}
