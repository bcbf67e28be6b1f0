/** Choosing by seeing: whole tasks by what can be seen alone, each with its number of clicks and entries. */

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import type { Browser, Page } from "playwright-core";
import { browse, field, figure, open, serve, until, type Served } from "./bench.ts";
import { Walk } from "./walk.ts";

let browser: Browser;
let empty: Served;
let served: Served;

before(async () => {
  [browser, empty, served] = await Promise.all([browse(), serve(), serve("harbour-bread-basket")]);
});
after(async () => {
  await browser.close();
  await Promise.all([empty.end(), served.end()]);
});

const text = (page: Page): Promise<string> => page.locator(".text-view textarea").inputValue();
const button = (page: Page, name: string | RegExp) => page.getByRole("button", typeof name === "string" ? { name, exact: true } : { name });

test("a newcomer makes a blue spiral to the right, seven inches across, without typing a rule", async (context) => {
  const page = await open(browser, empty.url);
  const walk = new Walk(page);
  await walk.enter(page.getByLabel("Across at the rim"), "7");
  await walk.press(button(page, "blue"));
  await walk.press(button(page, "Spiral"));
  await walk.press(button(page, "To the right"));
  await walk.press(button(page, "Make the pattern"));
  await page.getByRole("dialog").waitFor({ state: "detached" });
  await until("it is on the bench", async () => /7 in/.test((await field(page, "mould.rim").textContent()) ?? ""));
  const seen = page.locator(".course .used").filter({ hasText: "spiral to the right" });
  await seen.waitFor();
  assert.match(await text(page), /colours = \["blue"\]/);
  assert.equal(await page.locator(".finding.stop").count(), 0);
  context.diagnostic(walk.toString());
  assert.ok(walk.count <= 10, walk.toString());
  assert.deepEqual(page.troubles, []);
  await page.context().close();
});

test("the first basket is asked in German too, and a measured mould is taken", async () => {
  const page = await open(browser, empty.url, { locale: "de-DE" });
  await page.getByLabel("Ja, mit dem Maßband gemessen").check();
  await page.getByLabel("Umfang am Boden").fill("400");
  await page.getByLabel("Umfang oben").fill("600");
  await page.getByLabel("Vom Boden bis oben").fill("sechzig");
  await page.getByLabel("Einer zum Klappen").check();
  await button(page, "Vorlage machen").click();
  const alert = page.getByRole("dialog").getByRole("alert");
  await until("the mistake is said in German", async () => /„sechzig“ ist keine Zahl\./.test((await alert.textContent()) ?? ""));
  await page.getByLabel("Vom Boden bis oben").fill("120");
  await button(page, "Vorlage machen").click();
  await page.getByRole("dialog").waitFor({ state: "detached" });
  await until("it has a handle", async () => /kind = "swing"/.test(await text(page)));
  assert.match(await text(page), /girths = \[\["0", "400"\], \["120", "600"\]\]/);
  await page.context().close();
});

test("two-colour columns are chosen from pictures woven on this basket", async (context) => {
  const page = await open(browser, served.url);
  const walk = new Walk(page);
  await walk.press(button(page, "Choose by look: course 2"));
  await walk.press(button(page, "blue"));
  await walk.press(button(page, "Columns"));
  const way = page.locator(".way").first();
  await way.locator("canvas").waitFor();
  await walk.press(way);
  const course = page.locator(".course").nth(1);
  await until("it is seen so", async () => /columns/.test((await course.textContent()) ?? ""));
  assert.ok(walk.count <= 6, walk.toString());
  context.diagnostic(walk.toString());
  await page.context().close();
});

test("what a way changes besides is said on it, and it changes no more", async () => {
  const page = await open(browser, served.url);
  const before = await figure(page, "staves");
  await button(page, "Choose by look: course 2").click();
  await button(page, "blue").click();
  await button(page, "Spiral").click();
  await page.locator(".way").first().waitFor();
  for (const way of await page.locator(".way").all()) {
    const words = (await way.textContent()) ?? "";
    const [, staves] = /(\d+) staves/.exec(words) ?? [];
    assert.equal(/Staves: \d+ instead of/.test(words), staves !== before, words);
  }
  await page.keyboard.press("Escape");
  assert.equal(await figure(page, "staves"), before);
  await page.context().close();
});

test("two weavers chase on an even count", async (context) => {
  const page = await open(browser, served.url);
  const walk = new Walk(page);
  const count = field(page, "staves.count").locator("input[type=text]");
  await walk.enter(count, "66");
  await until("66 staves", async () => (await figure(page, "staves")) === "66");
  await walk.press(button(page, "Choose by look: course 2"));
  await walk.press(button(page, "Checks"));
  const way = page.locator(".way").filter({ hasText: /chase/i }).first();
  await walk.press(way);
  const course = page.locator(".course").nth(1);
  await until("it chases", async () => /chase/i.test((await course.textContent()) ?? ""));
  assert.equal(await figure(page, "staves"), "66");
  assert.ok(walk.count <= 6, walk.toString());
  context.diagnostic(walk.toString());
  await page.context().close();
});

test("a count that a weave refuses is mended from the strip of counts", async (context) => {
  const page = await open(browser, served.url);
  await field(page, "staves.count").locator("input[type=text]").fill("66");
  await page.keyboard.press("Enter");
  await page.locator(".finding.stop").first().waitFor();
  const walk = new Walk(page);
  await walk.press(page.locator(".count-strip > summary"));
  const good = page.locator('.count-one[data-count="67"]');
  await good.waitFor();
  assert.equal(await page.locator(".count-one[aria-pressed=true]").getAttribute("data-count"), "66");
  assert.match((await good.getAttribute("aria-label")) ?? "", /every course runs; .*gap at the rim/);
  assert.match((await page.locator('.count-one[data-count="66"]').getAttribute("aria-label")) ?? "", /not every course runs/);
  await walk.press(good);
  await until("no stop is left", async () => (await page.locator(".finding.stop").count()) === 0);
  assert.ok(walk.count <= 3, walk.toString());
  context.diagnostic(walk.toString());
  await page.context().close();
});

test("cane as the maker measured it is added and used", async (context) => {
  const page = await open(browser, served.url);
  const walk = new Walk(page);
  await walk.press(page.locator(".course").nth(1).locator("summary").first());
  await walk.press(field(page, "weave.courses[2].weaver").getByRole("button", { name: /^Weaver cane fine/ }));
  const dialog = page.getByRole("dialog");
  // What fits stands first: no rivet among it, and each is drawn.
  assert.equal(await dialog.locator(":scope > section .stock").filter({ hasText: "rivet" }).count(), 0);
  assert.ok((await dialog.locator(":scope > section .cut").count()) > 4);
  await walk.press(dialog.getByText("Add your own, as you measured it"));
  await walk.enter(dialog.getByLabel("What you call it"), "My cane");
  await walk.enter(dialog.getByLabel(/^Width/), "2.6 mm");
  await walk.enter(dialog.getByLabel(/^Thickness/), "1.2 mm");
  await walk.press(button(page, "Add it and use it here"));
  await until("the course is woven with it", async () => /my-cane/.test((await page.locator(".course").nth(1).textContent()) ?? ""));
  assert.match(await text(page), /my-cane = \{.*like = "/);
  assert.ok(walk.count <= 8, walk.toString());
  context.diagnostic(walk.toString());
  await page.context().close();
});

test("the Harbour basket is made six inches across", async (context) => {
  const page = await open(browser, served.url);
  const walk = new Walk(page);
  await walk.press(button(page, "Draw it from base, rim and height instead"));
  await walk.enter(field(page, "mould.base").locator("input[type=text]"), "4");
  await walk.enter(field(page, "mould.rim").locator("input[type=text]"), "6");
  await until("it is six inches across", async () => /^6 in/.test((await field(page, "mould.rim").locator(".used").textContent()) ?? ""));
  assert.ok(walk.count <= 5, walk.toString());
  context.diagnostic(walk.toString());
  await page.context().close();
});

test("a weave is drawn on the page, by hand and by key, and said not to hold as long as it does not", async () => {
  const page = await open(browser, served.url);
  await button(page, "Choose by look: course 2").click();
  await button(page, "Draw it yourself").click();
  const cell = (row: number, column: number) => page.locator(`.draw-cell[data-cell="${row},${column}"]`);
  await cell(3, 0).waitFor();
  assert.match(await text(page), /weave = "drawn"/);
  const verdict = page.locator(".draw-verdict");
  // A whole column over: that stave is never passed behind.
  await cell(0, 0).scrollIntoViewIfNeeded();
  const [from, to] = [await cell(0, 1).boundingBox(), await cell(3, 1).boundingBox()];
  assert.ok(from && to);
  await page.mouse.move(from.x + 8, from.y + 8);
  await page.mouse.down();
  await page.mouse.move(to.x + 8, to.y + 8, { steps: 12 });
  await page.mouse.up();
  await until("the column is drawn", async () => /"XXX\.".*"XXX\.".*|chart = \[\s*"XXX\.",\s*"\.X\.X"/s.test(await text(page)));
  await until("that it does not hold is said", async () => /stop/i.test((await verdict.textContent()) ?? ""));
  await button(page, "Undo").last().click();
  await until("one undo takes the whole stroke back", async () => /"X\.X\.",\s*"\.X\.X",\s*"X\.X\."/.test(await text(page)));
  await cell(0, 0).focus();
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("Space");
  await until("a crossing is turned by key", async () => /"XXX\."/.test(await text(page)));
  await button(page, "Left for right").click();
  await until("it is mirrored", async () => /"\.XXX"/.test(await text(page)));
  await button(page, "One row fewer in the repeat").click();
  await until("it is lower", async () => (await page.locator(".draw-grid [role=row]").count()) === 3);
  assert.deepEqual(page.troubles, []);
  await page.context().close();
});

test("every field says what it is, what it takes and why it was chosen, and its sign says who chose", async () => {
  const page = await open(browser, served.url);
  const every = await page.evaluate(() => [...document.querySelectorAll(".field .help > p:first-child")].map(({ textContent }) => textContent ?? ""));
  assert.ok(every.length > 60);
  assert.deepEqual(every.filter((about) => about.trim().length < 5), []);
  const width = field(page, "staves.width");
  await width.getByRole("button", { name: /^What is this/ }).click();
  await width.locator(".help").getByText(/It takes: /).waitFor();
  await page.locator("#part-base > summary").click();
  const rest = page.locator("#part-base .rest");
  assert.match((await rest.locator("summary").textContent()) ?? "", /\d+ more.*Thickness: /);
  assert.equal(await field(page, "base.thickness").isVisible(), false);
  await rest.locator("summary").click();
  assert.ok(await field(page, "base.thickness").isVisible());
  await page.context().close();
});

test("the guide and the words of the trade are read inside, in both languages", async () => {
  for (const [locale, more, guide, word] of [["en-GB", "More", "Guide to this page", "Scarf"], ["de-DE", "Mehr", "Anleitung zu dieser Seite", "Schäftung"]] as const) {
    const page = await open(browser, served.url, { locale });
    await button(page, more).click();
    await button(page, guide).click();
    const dialog = page.getByRole("dialog");
    await dialog.getByText(word, { exact: true }).waitFor();
    assert.doesNotMatch((await dialog.textContent()) ?? "", /bench-/);
    await dialog.getByRole("link").nth(3).click();
    await until("the chapter has the focus", () => page.evaluate(() => document.activeElement?.id.startsWith("guide-") ?? false));
    await page.context().close();
  }
});
