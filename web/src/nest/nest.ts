/** The pattern in several sizes, each basket in the next: drawn together, with the room between, and one cut list. */

import type { NestRequest, NestShown } from "../api/types.ts";
import { el, fill, say } from "../dom/element.ts";
import { newId } from "../form/context.ts";
import { Gone, Refusal, bytes, json } from "../server/client.ts";
import { openDialog } from "../shell/dialog.ts";
import type { Bench } from "../state/bench.ts";
import { language, t } from "../words/texts.ts";
import { leafOf } from "../workshop/leaf.ts";
import { nestPicture } from "./picture.ts";

/** Room that is wanted where nothing else is said (common practice). */
const CLEARANCE = { in: "1/8 in", mm: "3 mm" };

export function openNest(bench: Bench): void {
  const sizes = el("input", { type: "text", id: newId("sizes"), spellcheck: "false", required: true });
  const clearance = el("input", { type: "text", id: newId("clearance"), spellcheck: "false", value: CLEARANCE[bench.shown.value?.units ?? "in"] });
  const hint = el("p", { class: "hint", id: newId("hint") }, t("bench-nest-sizes-hint"));
  sizes.setAttribute("aria-describedby", hint.id);
  const trouble = el("p", { class: "wrong", role: "alert" });
  const told = el("p", { class: "hint", role: "status" });
  const shown = el("div", { class: "stack nest" });
  const begin = el("button", { type: "submit" }, t("bench-nest-begin"));
  const asked = (): NestRequest => ({
    source: bench.document.value.source,
    sizes: sizes.value,
    clearance: clearance.value,
    language: language(),
    units: null,
  });
  const act = async (button: HTMLButtonElement, work: () => Promise<void>): Promise<void> => {
    button.disabled = true;
    say(trouble, "");
    say(told, t("bench-nest-busy"));
    try {
      await work();
      say(told, "");
    } catch (error) {
      say(told, "");
      if (error instanceof Gone) bench.onGone();
      else if (error instanceof Refusal) say(trouble, `${error.fault.what}. ${error.fault.how_to_mend}`);
      else throw error;
    } finally {
      button.disabled = false;
    }
  };
  const show = async (): Promise<void> => {
    const request = asked();
    const set = await json<NestShown>("POST", "/api/nest", request);
    const sheet = el("button", { type: "button", class: "quiet", onclick: () => void act(sheet, () => print(request)) }, t("bench-nest-sheet"));
    const rooms = set.rooms.map(({ name, fits, said }) => el("li", { class: fits ? null : "tight" }, el("strong", {}, name), ` ${said}`));
    fill(
      shown,
      nestPicture(set),
      rooms.length > 0 && el("h3", {}, t("bench-nest-rooms")),
      rooms.length > 0 && el("ul", { class: "nest-rooms" }, ...rooms),
      el("div", { class: "row wrap" }, sheet),
      leafOf(set.leaf, true),
    );
  };
  const form = el(
    "form",
    {
      class: "stack",
      autocomplete: "off",
      onsubmit: (event: SubmitEvent) => {
        event.preventDefault();
        void act(begin, show);
      },
    },
    el("p", { class: "hint" }, t("bench-nest-text")),
    el("div", { class: "stack tight" }, el("label", { for: sizes.id }, t("bench-nest-sizes")), sizes, hint),
    el("div", { class: "stack tight" }, el("label", { for: clearance.id }, t("bench-nest-clearance")), clearance),
    el("div", { class: "row wrap" }, begin),
    trouble,
    told,
  );
  openDialog(t("bench-nest"), "wide", form, shown);
}

async function print(request: NestRequest): Promise<void> {
  const url = URL.createObjectURL(new Blob([await bytes("/api/nest/sheet", request)], { type: "application/pdf" }));
  el("a", { href: url, download: "sizes.pdf" }).click();
  setTimeout(() => URL.revokeObjectURL(url), 1000);
}
