/** The guide of this page, readable where there is no network. */

import { el } from "../dom/element.ts";
import { openDialog } from "../shell/dialog.ts";
import { find, t } from "../words/texts.ts";

const CHAPTERS = ["begin", "mould", "staves", "weave", "drawn", "rim", "handle", "chosen", "findings", "pictures", "files", "away", "keys"] as const;
const WORDS = ["stave", "weaver", "course", "twill", "chase", "pairing", "wale", "float", "groove", "taper", "hoop", "scarf", "filler", "lashing", "ear", "join"] as const;

export function openGuide(): void {
  const links = el("ol", { class: "guide-links" });
  const chapters = CHAPTERS.map((name) => {
    const heading = el("h3", { id: `guide-${name}`, tabindex: -1 }, t(`bench-guide-${name}`));
    const go = (event: MouseEvent): void => {
      event.preventDefault();
      heading.scrollIntoView({ block: "start" });
      heading.focus({ preventScroll: true });
    };
    links.append(el("li", {}, el("a", { href: `#guide-${name}`, onclick: go }, t(`bench-guide-${name}`))));
    return el("section", {}, heading, el("p", {}, t(`bench-guide-${name}-text`)));
  });
  const words = el("dl", { class: "words" });
  for (const word of WORDS) words.append(el("dt", {}, t(`bench-word-${word}`)), el("dd", {}, find(`bench-word-${word}-means`) ?? ""));
  openDialog(t("bench-guide"), "wide guide", links, ...chapters, el("section", {}, el("h3", {}, t("bench-words")), words));
}
