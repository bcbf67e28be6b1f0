/** What all pages of the workshop have: the way between them, notices, and how failures are told. */

import type { Health } from "../api/types.ts";
import { attribute, el, fill, say } from "../dom/element.ts";
import { keepLanguage } from "../shell/begin.ts";
import { light, switchLight } from "../shell/light.ts";
import { Notices } from "../shell/notices.ts";
import { language, t } from "../words/texts.ts";
import { WORKSHOP, type PageName, type WorkshopPage } from "./pages.ts";
import { trouble } from "./trouble.ts";

export class Frame {
  readonly notices = new Notices();
  readonly #main = el("main", { class: "shop", tabindex: -1 });
  /** Tells those who do not see the page what was done. */
  readonly #told = el("p", { class: "unseen", role: "status" });
  readonly #links: readonly (readonly [PageName, HTMLAnchorElement])[];

  constructor(health: Health) {
    const mark = el("img", { src: "/assets/mark.svg", alt: "", width: 28, height: 28 });
    const name = el("div", { class: "name" }, mark, el("span", {}, "Stavewright"));
    this.#links = WORKSHOP.map((page) => [page, el("a", { href: `#${page}` }, t(`bench-shop-${page}`))] as const);
    const ways = el(
      "nav",
      { class: "ways", "aria-label": t("bench-shop-ways") },
      el("a", { href: "/" }, t("bench-shop-back")),
      ...(health.may_write ? this.#links.map(([, link]) => link) : []),
    );
    const lamp = el("button", { type: "button", class: "quiet", onclick: switchLight });
    light.follow((now) => say(lamp, t(now === "dark" ? "bench-to-light" : "bench-to-dark")));
    const tongues = health.languages.filter(({ tag }) => tag !== language()).map(({ tag, name: own }) => {
      const change = (): void => {
        keepLanguage(tag);
        location.reload();
      };
      return el("button", { type: "button", class: "quiet", lang: tag, onclick: change }, own);
    });
    const bar = el("header", { class: "bar shop-bar" }, name, ways, el("div", { class: "row acts" }, lamp, ...tongues));
    document.body.replaceChildren(el("div", { class: "shop-page" }, bar, this.notices.node, this.#main, this.#told));
  }

  /** Shows the page that the address names, now and whenever it changes. */
  keep(pages: Readonly<Record<PageName, WorkshopPage>>): void {
    const go = async (moved: boolean): Promise<void> => {
      const wanted = WORKSHOP.find((page) => location.hash === `#${page}`) ?? WORKSHOP[0];
      for (const [page, link] of this.#links) attribute(link, "aria-current", page === wanted ? "page" : null);
      document.title = t("bench-page-title", { title: t(`bench-shop-${wanted}`) });
      fill(this.#main, pages[wanted].node);
      if (moved) this.#main.focus();
      await this.attempt(pages[wanted].enter);
    };
    window.addEventListener("hashchange", () => void go(true));
    void go(false);
  }

  /** Tells what was done to those who do not see it. */
  tell(text: string): void {
    say(this.#told, text);
  }

  /** Does something that may fail, and says why it did. Tells whether it went well. */
  async attempt(act: () => Promise<void>): Promise<boolean> {
    try {
      await act();
      this.notices.drop("trouble");
      return true;
    } catch (error) {
      this.notices.tell("trouble", trouble(error), [], "grave");
      return false;
    }
  }
}
