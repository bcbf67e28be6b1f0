/** Dragging changes numbers and picture; a remedy is one step; steps can be taken back. */

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import type { Browser, Page } from "playwright-core";
import { browse, field, figure, open, serve, type, until, type Served } from "./bench.ts";

let browser: Browser;
let served: Served;

before(async () => {
  [browser, served] = await Promise.all([browse(), serve("harbour-bread-basket")]);
});
after(async () => {
  await browser.close();
  await served.end();
});

const source = async (page: Page): Promise<string> => {
  await page.getByRole("tab", { name: "Text" }).click();
  return page.getByLabel("The pattern’s text").inputValue();
};

test("dragging the stave count changes the number and the picture, and is one step back", async () => {
  const page = await open(browser, served.url);
  await page.waitForSelector("[data-drawn=page]");
  const before = await figure(page, "staves");
  const slider = field(page, "staves.count").locator("input[type=range]");
  await slider.scrollIntoViewIfNeeded();
  const box = await slider.boundingBox();
  assert.ok(box);
  const asked = page.waitForResponse((response) => response.url().endsWith("/api/picture"));
  await page.mouse.move(box.x + box.width * 0.4, box.y + box.height / 2);
  await page.mouse.down();
  for (let step = 1; step <= 8; step += 1) await page.mouse.move(box.x + box.width * (0.4 - 0.02 * step), box.y + box.height / 2);
  // While it is held the slider stands where the hand left it, and not where an answer was.
  const count = await slider.inputValue();
  await page.mouse.up();
  assert.equal((await asked).status(), 200);
  await until("the figure follows", async () => (await figure(page, "staves")) === count);
  assert.notEqual(count, before);
  await page.getByRole("button", { name: /^Undo:/ }).click();
  await until("it is back in one step", async () => (await figure(page, "staves")) === before);
  await page.getByRole("button", { name: "Undo", exact: true, disabled: true }).waitFor();
  await page.getByRole("button", { name: /^Redo:/ }).click();
  await until("and forth", async () => (await figure(page, "staves")) === count);
  assert.deepEqual(page.troubles, []);
});

test("dragging a point of the profile writes its girth and height", async () => {
  const page = await open(browser, served.url);
  await page.getByRole("slider", { name: "Measurement 4", exact: true }).scrollIntoViewIfNeeded();
  const handle = page.getByRole("slider", { name: "Measurement 4", exact: true });
  const before = Number(await handle.getAttribute("aria-valuenow"));
  const box = await handle.boundingBox();
  assert.ok(box);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let step = 1; step <= 6; step += 1) await page.mouse.move(x - 2 * step, y);
  await page.mouse.up();
  await until("the girth is less", async () => Number(await handle.getAttribute("aria-valuenow")) < before - 20);
  // Moves that the hand has made may still be under way: text and field agree when the last is answered.
  const girth = page.getByLabel("Girth of measurement 4");
  await until("the text says what the field says", async () => {
    const text = await source(page);
    const typed = await girth.inputValue();
    return typed !== "" && text.includes(`"${typed}"]`);
  });
  assert.match(await girth.inputValue(), /^\d+( \d+\/\d+)?( in)?$/, "the girth is written as a maker reads a tape");
});

test("a remedy is one step, and can be taken back", async () => {
  const page = await open(browser, served.url);
  await type(page, "staves.count", "72");
  const finding = page.locator(".finding[data-code=weave-does-not-lock]").first();
  await finding.waitFor();
  assert.match((await page.locator(".finding").first().getAttribute("class")) ?? "", /stop/, "the worst stands first");
  await finding.locator(".finding-head").click();
  const mend = finding.locator(".mend").first();
  const label = (await mend.locator("span").first().textContent()) ?? "";
  const count = /\d+/.exec(label)?.[0];
  assert.ok(count, `the remedy "${label}" names a count`);
  await mend.click();
  await until("the count is mended", async () => (await figure(page, "staves")) === count);
  await until("the finding is gone", async () => (await page.locator(".finding[data-code=weave-does-not-lock]").count()) === 0);
  await page.getByRole("button", { name: `Undo: ${label}`, exact: true }).click();
  await until("it is back", async () => (await page.locator(".finding[data-code=weave-does-not-lock]").count()) > 0);
  await until("and 72 staves", async () => (await figure(page, "staves")) === "72");
});

test("a finding shows its place on the picture and leads to its field", async () => {
  const page = await open(browser, served.url);
  await page.waitForSelector("[data-drawn=page]");
  const head = page.locator(".finding-head").first();
  await head.click();
  await until("the place is told", async () => /^Shown: /.test((await page.locator(".round .part-name").textContent()) ?? ""));
  await until("it is unfolded", async () => (await head.getAttribute("aria-expanded")) === "true");
  await page.locator("#tab-side").click();
  const mark = page.locator(".gallery.side svg[data-upright] > .mark");
  await mark.waitFor();
  await head.click();
  await until("the mark is gone", async () => (await mark.count()) === 0);
  await head.click();
  await mark.waitFor();
  const lead = page.locator(".finding-more").getByRole("button", { name: "Go to the field" });
  await lead.first().click();
  const focused = (): Promise<string | undefined> =>
    page.evaluate(() => document.activeElement?.closest<HTMLElement>(".field")?.dataset["path"]);
  await until("a field has the focus", async () => (await focused()) !== undefined);
});

test("courses are added, moved and removed", async () => {
  const page = await open(browser, served.url);
  const summaries = async (): Promise<string[]> => page.locator(".course-summary").allTextContents();
  const before = await summaries();
  assert.equal(before.length, 2);
  await page.getByRole("button", { name: "Add a course" }).click();
  await until("three courses", async () => (await summaries()).length === 3);
  await page.getByRole("button", { name: "Weave course 2 one place earlier, nearer the base" }).click();
  await until("the second is first", async () => {
    const [first] = await summaries();
    return first !== undefined && /cane fine(?!-fine)/.test(first);
  });
  await page.getByRole("button", { name: "Remove course 3" }).click();
  await until("two courses", async () => (await summaries()).length === 2);
  for (let step = 0; step < 3; step += 1) {
    const undo = page.getByRole("button", { name: /^Undo/ });
    const label = await undo.getAttribute("aria-label");
    await undo.click();
    await until("a step back", async () => (await undo.getAttribute("aria-label")) !== label);
  }
  await until("as before", async () => JSON.stringify(await summaries()) === JSON.stringify(before));
});
