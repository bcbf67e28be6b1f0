/** The photograph of the finished basket, kept beside its pattern. */

import type { PatternName } from "../api/types.ts";
import { el, fill, say } from "../dom/element.ts";
import { newId } from "../form/context.ts";
import { Gone, Refusal, send, tell } from "../server/client.ts";
import { openDialog } from "../shell/dialog.ts";
import { t } from "../words/texts.ts";

/** The server takes no larger body. */
const MOST_BYTES = 950_000;
/** Longest side in pixels, tried one after the other until the photograph is small enough. */
const SIDES = [2000, 1600, 1200, 800];

export function photoPlace(name: string): string {
  return `/api/patterns/${encodeURIComponent(name)}/photo`;
}

export function openPhoto({ name, title, photo }: Pick<PatternName, "name" | "title" | "photo">, gone: () => void): void {
  const trouble = el("p", { class: "wrong", role: "alert" });
  const picture = el("div", { class: "photo" });
  const file = el("input", { type: "file", accept: "image/*", id: newId("photo") });
  const drop = el("button", { type: "button", class: "quiet", onclick: () => void act(() => tell("DELETE", photoPlace(name)), false) }, t("bench-photo-drop"));
  const show = (there: boolean): void => {
    const alt = t("bench-photo-alt", { title });
    fill(picture, there ? el("img", { src: `${photoPlace(name)}?${Date.now()}`, alt }) : el("p", { class: "hint" }, t("bench-photo-none")));
    drop.hidden = !there;
  };
  const act = async (work: () => Promise<void>, there: boolean): Promise<void> => {
    say(trouble, "");
    try {
      await work();
      show(there);
    } catch (error) {
      if (error instanceof Gone) gone();
      else if (error instanceof Refusal) say(trouble, error.fault.what);
      else say(trouble, t("bench-photo-unread"));
    }
  };
  file.addEventListener("change", () => {
    const [chosen] = file.files ?? [];
    if (chosen) void act(async () => send(photoPlace(name), await small(chosen)), true);
  });
  show(photo);
  openDialog(t("bench-photo"), "small", picture, el("div", { class: "stack tight" }, el("label", { for: file.id }, t("bench-photo-choose")), file), trouble, drop);
}

/** The photograph as JPEG, made smaller where it is large. What is written in it besides, as the place, is left out. */
export async function small(file: Blob, most = MOST_BYTES): Promise<Blob> {
  const image = await createImageBitmap(file);
  for (const side of SIDES) {
    const scale = Math.min(1, side / Math.max(image.width, image.height));
    const canvas = new OffscreenCanvas(Math.max(1, Math.round(image.width * scale)), Math.max(1, Math.round(image.height * scale)));
    canvas.getContext("2d")?.drawImage(image, 0, 0, canvas.width, canvas.height);
    const blob = await canvas.convertToBlob({ type: "image/jpeg", quality: 0.85 });
    if (blob.size <= most) return blob;
  }
  throw new Error("the photograph stays too large");
}
