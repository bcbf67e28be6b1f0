/** Files: comments are kept, and nothing is overwritten silently or lost. */

import assert from "node:assert/strict";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, afterEach, before, beforeEach, test } from "node:test";
import type { Browser, Page } from "playwright-core";
import { browse, browseIn, example, field, figure, open, serve, type, unfold, until, type Served } from "./bench.ts";

const NAME = "harbour-bread-basket";
let browser: Browser;
let served: Served;

before(async () => {
  browser = await browse();
});
after(() => browser.close());
beforeEach(async () => {
  served = await serve(NAME, "ferry-egg-basket");
});
afterEach(() => served.end());

/** Opens the page and there the harbour bread basket. */
async function openHarbour(): Promise<Page> {
  const page = await open(browser, served.url);
  await page.locator(".title").click();
  await page.getByRole("dialog").getByRole("button", { name: `${NAME}.toml` }).click();
  await until("it is open", async () => (await page.locator(".title-text").textContent()) === "Harbour bread basket");
  return page;
}

const state = (page: Page): Promise<string | null> => page.locator(".title-state").textContent();
const save = (page: Page): Promise<void> => page.getByRole("button", { name: "Save", exact: true }).click();

/** All drafts that the browser keeps, as one text. */
const kept = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open("stavewright", 1);
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    const all = await new Promise((resolve, reject) => {
      const request = database.transaction("drafts").objectStore("drafts").getAll();
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    database.close();
    return JSON.stringify(all);
  });

test("saving keeps the comments and all that was not changed", async () => {
  const page = await openHarbour();
  await type(page, "staves.count", "77");
  await until("77 staves", async () => (await figure(page, "staves")) === "77");
  await until("it is not saved", async () => (await state(page)) === "not saved");
  await page.keyboard.press("Control+s");
  await until("it is saved", async () => (await state(page)) === "saved");
  const [before, after_] = [await example(NAME), await served.file(NAME)];
  assert.match(after_, /^count = 77$/m);
  const lost = before.split("\n").filter((line) => line.trim() !== "" && !after_.includes(line));
  assert.deepEqual(lost, []);
});

test("a file changed outside is taken in when nothing here is unsaved", async () => {
  const page = await openHarbour();
  await served.write(NAME, (await example(NAME)).replace('lap = "4"', 'lap = "5"'));
  await page.locator("[data-notice=outside]", { hasText: "changed outside" }).waitFor();
  await page.getByRole("tab", { name: "Text" }).click();
  await until("the text is the file's", async () => /lap = "5"/.test(await page.getByLabel("The pattern’s text").inputValue()));
  await until("nothing is unsaved", async () => (await state(page)) === "saved");
});

test("a file changed outside is not overwritten by unsaved work", async () => {
  const page = await openHarbour();
  await type(page, "staves.count", "77");
  await until("77 staves", async () => (await figure(page, "staves")) === "77");
  const outside = (await example(NAME)).replace('lap = "4"', 'lap = "5"');
  await served.write(NAME, outside);
  await save(page);
  const notice = page.locator("[data-notice=outside]");
  await notice.getByRole("button", { name: "Keep mine" }).waitFor();
  assert.equal(await served.file(NAME), outside, "the file is as it was changed outside");
  await notice.getByRole("button", { name: "Compare them" }).click();
  await page.locator(".differences tr.differs").first().waitFor();
  await until("both are drawn", async () => (await page.locator(".compare .paper svg").count()) === 2);
  await save(page);
  await until("saved knowingly", async () => (await state(page)) === "saved");
  assert.match(await served.file(NAME), /count = 77/);
});

test("of two windows the second is told, and may take the file's text", async () => {
  const [one, other] = [await openHarbour(), await openHarbour()];
  await type(one, "staves.count", "77");
  await type(other, "staves.count", "69");
  await until("both changed", async () => (await state(one)) === "not saved" && (await state(other)) === "not saved");
  await save(one);
  await until("the first saved", async () => (await state(one)) === "saved");
  await save(other);
  await other.locator("[data-notice=outside]").getByRole("button", { name: "Take the file’s" }).click();
  await until("the other shows the file", async () => (await figure(other, "staves")) === "77");
  assert.match(await served.file(NAME), /count = 77/);
  await other.getByRole("button", { name: /^Undo/ }).click();
  await until("its own work is not lost", async () => (await figure(other, "staves")) === "69");
});

test("unsaved work survives a crash of the browser", async () => {
  const page = await openHarbour();
  const context = page.context();
  await type(page, "staves.count", "77");
  await until("77 staves", async () => (await figure(page, "staves")) === "77");
  await until("it is kept", async () => /count = 77/.test(await kept(page)));
  await page.close({ runBeforeUnload: false });
  const next = await context.newPage();
  await next.goto(served.url);
  await next.locator("[data-notice=restored]").waitFor();
  await until("the work is back", async () => (await figure(next, "staves")) === "77");
  await next.getByRole("button", { name: /^Undo/ }).click();
  await until("and the way back", async () => (await figure(next, "staves")) !== "77");
});

test("what was asked for and what is being typed survive the browser's end", async () => {
  const folder = await mkdtemp(join(tmpdir(), "browser-"));
  try {
    const { page, kill } = await browseIn(folder);
    await page.goto(served.url);
    await page.waitForSelector(".figures dd", { state: "attached" });
    // The server never comes to it.
    await page.route("**/api/edit", () => new Promise(() => undefined));
    await unfold(page, "basket");
    await type(page, "staves.count", "77");
    await field(page, "title").locator("input[type=text]").fill("Half typed");
    const begun = performance.now();
    await until("both are kept", async () => /77.*Half typed/.test(await kept(page)));
    console.log(`kept ${(performance.now() - begun).toFixed(0)} ms after the last key`);
    await kill();

    const next = await browseIn(folder);
    await next.page.goto(served.url);
    await next.page.locator("[data-notice=restored]").waitFor();
    await until("the count is back", async () => (await figure(next.page, "staves")) === "77");
    await until("the title too", async () => (await next.page.locator(".title-text").textContent()) === "Half typed");
    await next.kill();
  } finally {
    await rm(folder, { recursive: true, force: true, maxRetries: 5 });
  }
});

test("a server that is gone is said, and the page goes on when it is back", async () => {
  const page = await openHarbour();
  await served.kill();
  await type(page, "staves.count", "77");
  const notice = page.locator("[data-notice=server]");
  await notice.getByText("does not answer").waitFor();
  await served.again();
  await notice.getByText("is back").waitFor();
  await until("the change was not lost", async () => (await figure(page, "staves")) === "77");
  await save(page);
  await until("it is saved", async () => (await state(page)) === "saved");
});

test("a pattern with a mistake is saved as it is, and that is said", async () => {
  const page = await openHarbour();
  await type(page, "staves.count", "sixty");
  await page.locator("[data-notice=problems]").waitFor();
  await save(page);
  await page.locator("[data-notice=mistakes]", { hasText: "Saved as it is, with the mistake in it." }).waitFor();
  assert.match(await served.file(NAME), /^count = "sixty"$/m);
  await type(page, "staves.count", "73");
  await until("it is mended", async () => (await figure(page, "staves")) === "73");
  await save(page);
  await page.locator("[data-notice=mistakes]").waitFor({ state: "detached" });
  assert.match(await served.file(NAME), /^count = 73$/m);
});

test("half a text is not taken over, and not lost", async () => {
  const page = await openHarbour();
  await page.getByRole("tab", { name: "Text" }).click();
  const text = page.getByLabel("The pattern’s text");
  const before = await text.inputValue();
  await text.fill(before.replace("[rim]", "[ri"));
  await page.getByRole("tab", { name: "In the round" }).click();
  const notice = page.locator("[data-notice=text]");
  await notice.waitFor();
  assert.equal(await page.locator("[data-notice=problems]").count(), 0, "the pattern is as it was");
  await type(page, "staves.count", "77");
  await until("77 staves", async () => (await figure(page, "staves")) === "77");
  await page.getByRole("tab", { name: "Text" }).click();
  await notice.waitFor({ state: "detached" });
  assert.match(await text.inputValue(), /^\[ri$/m);
  await text.fill(before.replace('lap = "4"', 'lap = "3"'));
  await page.getByRole("button", { name: "Take this text" }).click();
  await until("it is taken", async () => /lap = .{1,2}3/.test(await kept(page)) && (await state(page)) === "not saved");
});

test("a name that some systems cannot hold is refused, and why is said", async () => {
  const page = await openHarbour();
  await page.getByRole("button", { name: "More", exact: true }).click();
  await page.getByRole("dialog").getByRole("button", { name: "Rename", exact: true }).click();
  await page.getByRole("dialog").getByLabel("Name of the file").fill("CON");
  await page.keyboard.press("Enter");
  const dialog = page.getByRole("dialog");
  await dialog.getByRole("alert").filter({ hasText: "some systems keep it for a device" }).waitFor();
  assert.equal(await dialog.getByLabel("Name of the file").inputValue(), "CON", "what was typed is still there");
  assert.equal(await served.file(NAME), await example(NAME));
});

test("another pattern is replaced only when that is said", async () => {
  const page = await openHarbour();
  await type(page, "staves.count", "77");
  await until("77 staves", async () => (await figure(page, "staves")) === "77");
  await page.getByRole("button", { name: "More", exact: true }).click();
  await page.getByRole("dialog").getByRole("button", { name: "Save under another name", exact: true }).click();
  const dialog = page.getByRole("dialog");
  await dialog.getByLabel("Name of the file").fill("ferry-egg-basket");
  await page.keyboard.press("Enter");
  await dialog.getByRole("alert").filter({ hasText: "There is a pattern ferry-egg-basket.toml already" }).waitFor();
  assert.equal(await served.file("ferry-egg-basket"), await example("ferry-egg-basket"));
  await dialog.getByRole("button", { name: "Replace it" }).click();
  await dialog.waitFor({ state: "detached" });
  assert.equal(await page.locator(".title-file").textContent(), "ferry-egg-basket.toml");
  assert.match(await served.file("ferry-egg-basket"), /Harbour[^]*count = 77/);
  assert.equal(await served.file(NAME), await example(NAME));
});

test("a pattern is duplicated as it is shown, renamed and begun from an example", async () => {
  const page = await openHarbour();
  const menu = async (item: string): Promise<void> => {
    await page.getByRole("button", { name: "More", exact: true }).click();
    await page.getByRole("dialog").getByRole("button", { name: item, exact: true }).click();
  };
  await type(page, "staves.count", "77");
  await until("77 staves", async () => (await figure(page, "staves")) === "77");
  await menu("Duplicate");
  await page.getByRole("dialog").getByLabel("Name of the file").fill("pier-basket");
  await page.keyboard.press("Enter");
  await until("the copy is there", async () => served.file("pier-basket").then((text) => text !== "", () => false));
  assert.match(await served.file("pier-basket"), /count = 77/);
  assert.equal(await served.file(NAME), await example(NAME));
  await page.getByRole("dialog").waitFor({ state: "detached" });
  await menu("Rename");
  await page.getByRole("dialog").getByLabel("Name of the file").fill("quay-basket");
  await page.keyboard.press("Enter");
  await until("it has the new name", async () => served.file("quay-basket").then((text) => text !== "", () => false));
  await until("the old name is gone", async () => served.file("pier-basket").then(() => false, () => true));
  await page.getByRole("dialog").waitFor({ state: "detached" });
  await page.locator(".title").click();
  await page.getByRole("dialog").getByRole("button", { name: /^Channel marker/ }).click();
  await until("the example is open", async () => (await page.locator(".title-text").textContent()) === "Channel marker");
  await until("it is not saved", async () => (await state(page)) === "not saved");
});
