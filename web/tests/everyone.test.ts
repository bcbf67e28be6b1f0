/** For everyone: keyboard, screen reader, narrow and wide, light and dark, both languages, no WebGL. */

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import type { Browser, Page } from "playwright-core";
import { browse, figure, open, serve, still, type, unfold, until, type Served } from "./bench.ts";
import { wrongs } from "./workshop.ts";

const VIEWS = ["round", "side", "chart", "stages", "templates", "compare", "text"];
/** In dark nothing but the colours differs from light. */
const RULES = { light: undefined, dark: ["color-contrast"] };
let browser: Browser;
let served: Served;

before(async () => {
  [browser, served] = await Promise.all([browse(), serve("ferry-egg-basket", "harbour-bread-basket")]);
});
after(async () => {
  await browser.close();
  await served.end();
});

async function settled(page: Page, view: string): Promise<void> {
  if (view === "round") await page.waitForSelector("[data-drawn=page]");
  await until("all is drawn", async () => (await page.locator("[aria-busy]").count()) === 0);
  await still(page);
}

for (const colorScheme of ["light", "dark"] as const) {
  test(`axe-core finds nothing wrong in any view (${colorScheme})`, async () => {
    const page = await open(browser, served.url, { colorScheme });
    for (const part of await page.locator(".part > summary").all()) {
      if ((await part.locator("..").getAttribute("open")) === null) await part.click();
    }
    for (const more of await page.locator(".course summary").all()) await more.click();
    await page.locator(".finding-head").first().click();
    // What has just scrolled under the making order is no target that is too small.
    await page.locator(".form-pane").evaluate((pane) => pane.scrollTo(0, 0));
    for (const view of VIEWS) {
      await page.locator(`#tab-${view}`).click();
      await settled(page, view);
      assert.deepEqual(await wrongs(page, RULES[colorScheme]), [], view);
    }
    for (const button of ["More", "Take away"]) {
      await page.getByRole("button", { name: button, exact: true }).click();
      await page.getByRole("dialog").waitFor();
      await still(page);
      assert.deepEqual(await wrongs(page, RULES[colorScheme]), [], button);
      await page.keyboard.press("Escape");
      await page.getByRole("dialog").waitFor({ state: "detached" });
    }
    const ground = await page.evaluate(() => getComputedStyle(document.body).backgroundColor);
    const bright = (/\d+/.exec(ground)?.[0] ?? "0") > "1" && Number(/\d+/.exec(ground)?.[0]) > 128;
    assert.equal(bright, colorScheme === "light");
    assert.deepEqual(page.troubles, []);
    await page.context().close();
  });
}

test("light and dark can be switched, and the choice stays", async () => {
  const page = await open(browser, served.url, { colorScheme: "light" });
  const dark = (): Promise<boolean> => page.evaluate(() => document.documentElement.dataset["light"] === "dark");
  assert.equal(await dark(), false);
  await page.getByRole("button", { name: "More", exact: true }).click();
  await page.getByRole("button", { name: "Dark", exact: true }).click();
  await until("it is dark", dark);
  await page.reload();
  await page.waitForSelector(".figures dd");
  await until("it is dark still", dark);
});

for (const [width, height] of [[390, 844], [768, 1024], [1440, 900]] as const) {
  test(`at ${width} px nothing is cut off and every target can be touched`, async () => {
    const page = await open(browser, served.url, { viewport: { width, height }, hasTouch: width < 1000 });
    const panes = width < 720 ? ["Form", "Picture", "Findings", "Cuts"] : [""];
    for (const pane of panes) {
      if (pane !== "") await page.getByRole("navigation").getByRole("button", { name: pane, exact: true }).click();
      await still(page);
      const spill = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
      assert.equal(spill, 0, `the page is wider than its window (${pane})`);
      const hidden = await page.evaluate(() =>
        [...document.querySelectorAll(".form-pane, .side-pane, .panel")]
          .filter((pane) => pane.scrollWidth > pane.clientWidth)
          .map((pane) => `${pane.className} ${pane.scrollWidth}`),
      );
      assert.deepEqual(hidden, [], `a pane is cut off at its side (${pane})`);
      const small = await page.evaluate(() =>
        [...document.querySelectorAll("button, select, input:not([type=checkbox]), textarea, summary, .order a")]
          .filter((element) => element.checkVisibility())
          .map((element) => ({ name: element.outerHTML.slice(0, 90), box: element.getBoundingClientRect() }))
          .filter(({ box }) => box.width > 0 && (box.height < 43.5 || box.width < 43.5))
          .map(({ name, box }) => `${name} ${Math.round(box.width)}×${Math.round(box.height)}`),
      );
      assert.deepEqual(small, [], pane);
    }
    const worst = width < 720 ? page.locator(".worst") : page.locator(".finding").first();
    await worst.waitFor();
    await page.context().close();
  });
}

test("everything can be reached and done by keyboard alone", async () => {
  const page = await open(browser, served.url);
  const focus = (): Promise<string> =>
    page.evaluate(() => {
      const element = document.activeElement;
      return element?.getAttribute("aria-label") ?? element?.closest<HTMLElement>("[data-path]")?.dataset["path"] ?? element?.textContent ?? "";
    });
  const tabTo = async (wanted: (name: string) => boolean): Promise<void> => {
    for (let step = 0; step < 250; step += 1) {
      if (wanted(await focus())) return;
      await page.keyboard.press("Tab");
      const seen = await page.evaluate(() => {
        const element = document.activeElement;
        if (!element || element === document.body) return true;
        const style = getComputedStyle(element);
        const inner = getComputedStyle(element.querySelector(".touch") ?? element);
        return style.outlineStyle !== "none" || inner.stroke !== "none";
      });
      assert.ok(seen, `the focus on ${await focus()} can be seen`);
    }
    throw new Error(`the focus never came to ${wanted}; it is on ${await focus()}`);
  };
  const before = Number(await figure(page, "staves"));
  await tabTo((name) => name === "Measurement 2");
  const handle = page.getByRole("slider", { name: "Measurement 2", exact: true });
  const girth = Number(await handle.getAttribute("aria-valuenow"));
  await page.keyboard.press("Shift+ArrowRight");
  await until("the girth grew", async () => Number(await handle.getAttribute("aria-valuenow")) > girth);
  await tabTo((name) => /^Count.*: more$|count.*more/i.test(name));
  await page.keyboard.press("Space");
  await until("a stave more", async () => Number(await figure(page, "staves")) !== before);
  await page.keyboard.press("Control+z");
  await page.keyboard.press("Control+z");
  await until("both taken back", async () => Number(await figure(page, "staves")) === before && Number(await handle.getAttribute("aria-valuenow")) === girth);

  await tabTo((name) => name === "In the round");
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("ArrowRight");
  await page.locator("#tab-chart[aria-selected=true]").waitFor();
  await page.waitForSelector(".chart canvas[aria-label]");
  await tabTo((name) => /^Weave chart of/.test(name));
  const told = page.locator(".chart .part-name");
  await until("the first crossing is told", async () => /^Row 1, stave 1: the weaver passes (over|under)/.test((await told.textContent()) ?? ""));
  await page.keyboard.press("ArrowUp");
  await page.keyboard.press("ArrowLeft");
  await until("the next one too", async () => /^Row 2, stave 2: /.test((await told.textContent()) ?? ""));
  await page.keyboard.press("Shift+Tab");
  assert.deepEqual(page.troubles, []);
});

test("the focus goes where it is needed, and comes back", async () => {
  const page = await open(browser, served.url);
  const focused = (): Promise<string> => page.evaluate(() => document.activeElement?.textContent ?? "");
  await page.getByRole("button", { name: "More", exact: true }).click();
  await until("the menu begins at its first line", async () => (await focused()) === "Patterns");
  await page.keyboard.press("ArrowDown");
  assert.equal(await focused(), "Save under another name");
  await page.keyboard.press("End");
  await page.keyboard.press("ArrowDown");
  assert.equal(await focused(), "Patterns");
  await page.keyboard.press("Escape");

  const count = page.locator('[data-path="staves.count"] input[type=text]');
  await count.fill("sixty");
  await count.press("Enter");
  const notice = page.locator("[data-notice=problems]");
  await notice.waitFor();
  await notice.getByRole("button", { name: "Undo" }).focus();
  await page.keyboard.press("Enter");
  await notice.waitFor({ state: "detached" });
  await until("the focus is back on the field", () => count.evaluate((input) => input === document.activeElement));
});

test("a change is told by the figures and the findings that it touched", async () => {
  const page = await open(browser, served.url);
  const told = page.locator(".page > .unseen[role=status]");
  const count = page.locator('[data-path="staves.count"] input[type=text]');
  await count.fill("40");
  await count.press("Enter");
  await until("the count is told", async () => /Staves: 40\./.test((await told.textContent()) ?? ""));
  assert.match((await told.textContent()) ?? "", /New: (stop|care|note), \S/i);
  await page.keyboard.press("Control+z");
});

test("in the round parts are named with number and length, by hand and by key", async () => {
  const page = await open(browser, served.url);
  await page.waitForSelector("[data-drawn=page]");
  const name = page.locator(".round .part-name");
  const canvas = page.locator(".stage canvas");
  const box = await canvas.boundingBox();
  assert.ok(box);
  await page.mouse.move(box.x + box.width / 2, box.y + box.height * 0.72);
  await until("something is named", async () => /^(Stave|Row) \d+/.test((await name.textContent()) ?? ""));
  await canvas.focus();
  await page.mouse.move(5, 5);
  for (let step = 0; step < 400 && !/^Stave \d+/.test((await name.textContent()) ?? ""); step += 1) await page.keyboard.press("PageUp");
  await until("a stave is named", async () => /^Stave \d+ · .*\d in \([\d.]+ mm\) long$/.test((await name.textContent()) ?? ""));
});

test("the stage slider goes back to the bare mould", async () => {
  const page = await open(browser, served.url);
  await page.waitForSelector("[data-drawn=page]");
  const slider = page.getByRole("slider", { name: "Stage", exact: true });
  const asked = page.waitForRequest((request) => request.url().endsWith("/api/picture") && /base-on-mould|prepared/.test(request.postData() ?? ""));
  await slider.focus();
  await page.keyboard.press("Home");
  await asked;
  await until("the stage is named", async () => (await slider.getAttribute("aria-valuetext")) !== "Finished");
});

for (const colorScheme of ["light", "dark"] as const) {
  test(`axe-core finds nothing wrong in the dialogs (${colorScheme})`, async () => {
    const page = await open(browser, served.url, { colorScheme, viewport: { width: 390, height: 844 } });
    const dialog = page.getByRole("dialog");
    const looked = async (name: string): Promise<void> => {
      await dialog.waitFor();
      await still(page);
      assert.deepEqual(await wrongs(page, RULES[colorScheme]), [], name);
      await page.keyboard.press("Escape");
      await dialog.waitFor({ state: "detached" });
    };
    await page.locator(".title").click();
    await looked("patterns");
    await page.getByRole("button", { name: "More", exact: true }).click();
    await looked("more");
    for (const name of ["Guide to this page", "Photograph of the finished basket", "Take away"]) {
      await page.getByRole("button", { name: "More", exact: true }).click();
      await dialog.getByRole("button", { name, exact: true }).click();
      await looked(name);
    }
    await page.locator("button.stock:visible").first().scrollIntoViewIfNeeded();
    await page.locator("button.stock:visible").first().click();
    await looked("stock");
    await page.context().close();
    const fresh = await serve();
    const first = await open(browser, fresh.url, { colorScheme, viewport: { width: 390, height: 844 } });
    await first.getByRole("dialog").waitFor();
    await still(first);
    assert.deepEqual(await wrongs(first, RULES[colorScheme]), [], "first basket");
    await first.context().close();
    await fresh.end();
  });
}

test("without WebGL the line drawing stands in", async () => {
  const plain = await browse({ webgl: false });
  const page = await open(plain, served.url);
  await page.waitForSelector(".line-stage svg path");
  await page.locator(".round .part-name", { hasText: "no WebGL" }).waitFor();
  const paths = await page.locator(".line-stage svg path").count();
  await page.getByRole("slider", { name: "Stage", exact: true }).focus();
  await page.keyboard.press("Home");
  await until("another stage is drawn", async () => (await page.locator(".line-stage svg path").count()) !== paths);
  await still(page);
  assert.deepEqual(await wrongs(page), []);
  await plain.close();
});

test("both languages are spoken throughout", async (context) => {
  const page = await open(browser, served.url);
  const languages = await page.evaluate(async () => ((await (await fetch("/api/health")).json()) as { languages: { tag: string }[] }).languages.map(({ tag }) => tag));
  if (!languages.includes("de")) {
    context.skip("this program speaks no German");
    return;
  }
  await page.getByRole("button", { name: "More", exact: true }).click();
  await page.getByRole("button", { name: "Deutsch" }).click();
  await page.waitForSelector("html[lang=de] .figures dd");
  await page.getByRole("tab", { name: "Flechtbild" }).waitFor();
  await page.getByRole("heading", { name: "Befunde" }).waitFor();
  const text = await page.evaluate(() => document.body.innerText);
  assert.doesNotMatch(text, /bench-[a-z]|Chosen by Stavewright|\bFindings\b|Cut list/);
  for (const view of ["round", "chart"]) {
    await page.locator(`#tab-${view}`).click();
    await settled(page, view);
    assert.deepEqual(await wrongs(page), [], view);
  }
});

test("a mistake in the pattern is told in German, above the form and beside the text", async () => {
  const page = await open(browser, served.url, { locale: "de-DE" });
  await unfold(page, "basket");
  await type(page, "staves.count", "sechzig");
  const notice = page.locator("[data-notice=problems]");
  await notice.waitFor();
  const told = (await notice.textContent()) ?? "";
  assert.match(told, /Staken: Anzahl: sechzig ist keine ganze Zahl von 3 bis 999\. Hier steht: /);
  assert.doesNotMatch(told, /\.\.|write|expected|whole number/);
  await page.locator("#tab-text").click();
  await page.locator("#view-text li", { hasText: "keine ganze Zahl" }).waitFor();
});
