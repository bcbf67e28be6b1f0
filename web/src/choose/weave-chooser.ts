/** The dialog in which the weave of a course is chosen by its look. Each picture was woven by the server on this basket. */

import type { LookWord, Way, Ways, WaysRequest } from "../api/types.ts";
import { el, fill, say } from "../dom/element.ts";
import type { FormContext } from "../form/context.ts";
import { Gone, Refusal, json } from "../server/client.ts";
import { Latest } from "../server/latest.ts";
import { openDialog } from "../shell/dialog.ts";
import { language, t } from "../words/texts.ts";
import { littlePicture } from "./little.ts";
import { LookPictures } from "./looks.ts";
import { WishView } from "./wish.ts";

export interface CourseToChoose {
  /** Counted from 1. */
  readonly number: number;
  /** Names of the colours that it has now. */
  readonly colours: readonly string[];
  /** What is seen of it now. */
  readonly seen: string;
  /** Makes it a weave that is drawn by hand. */
  readonly draw: () => void;
}

export function openWeaveChooser(course: CourseToChoose, context: FormContext): void {
  const found = el("ul", { class: "ways" });
  const told = el("p", { class: "hint", "aria-live": "polite" });
  const wish = new WishView(context.colours(), course.colours, () => ask());
  const take = (way: Way): void => {
    dialog.close();
    context.edit({ edits: way.edits, label: t("bench-did-set", { what: t("bench-course-short", { number: course.number }), value: way.weave }) });
  };
  const failed = (error: unknown): void => {
    if (error instanceof Gone) context.gone();
    else if (error instanceof Refusal) say(told, error.fault.what);
    else throw error;
  };
  const request = (look: LookWord | null): WaysRequest => ({
    source: context.source(),
    course: course.number,
    wish: { ...wish.wish, look },
    language: language(),
  });
  const ways = (body: WaysRequest, signal: AbortSignal): Promise<Ways> => json<Ways>("POST", "/api/ways", body, signal);
  const looks = new LookPictures((look, way) => wish.picture(look, way), failed);
  const proposals = new Latest<WaysRequest, Ways>(
    ways,
    ({ each }) => {
      found.removeAttribute("aria-busy");
      fill(found, ...each.map((way) => el("li", {}, wayButton(way, take))));
      say(told, t("bench-ways-found", { count: each.length }));
      afterwards();
    },
    failed,
  );
  let coloured: string | undefined;
  let afterwards = (): void => undefined;
  const ask = (): void => {
    const { look = null, colours } = wish.wish;
    const again = coloured !== colours.join();
    coloured = colours.join();
    // What is chosen comes first, the other looks after it.
    if (look === null) {
      looks.request(request(null));
      return;
    }
    looks.drop();
    afterwards = again ? () => looks.request(request(null)) : () => undefined;
    found.setAttribute("aria-busy", "true");
    say(told, t("bench-ways-asking"));
    proposals.request(request(look));
  };
  const now = el("p", {}, t("bench-ways-now", { seen: course.seen }));
  const draw = (): void => {
    dialog.close();
    course.draw();
  };
  const own = el("button", { type: "button", class: "quiet", onclick: draw }, t("bench-ways-draw"));
  const dialog = openDialog(t("bench-ways-heading", { number: course.number }), "wide chooser", now, wish.node, told, found, el("div", { class: "row wrap" }, own));
  dialog.addEventListener("close", () => looks.drop());
  ask();
}

/** A way as a button: its picture, what it is and what it changes besides. */
function wayButton(way: Way, take: (way: Way) => void): HTMLButtonElement {
  return el(
    "button",
    { type: "button", class: "quiet way", onclick: () => take(way) },
    littlePicture(way.picture),
    el(
      "span",
      { class: "way-text" },
      el("strong", {}, way.weave),
      el("span", {}, way.seen),
      el("span", { class: "fact" }, t("bench-way-staves", { count: way.staves })),
      ...way.changes.map((change) => el("span", { class: "fact" }, change)),
    ),
  );
}
