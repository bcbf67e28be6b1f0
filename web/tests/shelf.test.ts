/** The page Shelf: made when asked for, everything done by hand and by keyboard, taken back; guests; sizes; axe. */

import assert from "node:assert/strict";
import { after, afterEach, before, beforeEach, test } from "node:test";
import { access, readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Browser, Locator, Page } from "playwright-core";
import { browse, open, serve, serveWith, until, type Served } from "./bench.ts";
import { openWorkshop, spill, wrongs } from "./workshop.ts";

let browser: Browser;
let served: Served;

before(async () => {
  browser = await browse();
});
after(() => browser.close());
beforeEach(async () => {
  served = await serve("harbour-bread-basket");
});
afterEach(() => served.end());

const openShelf = (options = {}): Promise<Page & { troubles: string[] }> => openWorkshop(browser, served.url, "shelf", options);
const row = (page: Page, name: string): Locator => page.getByRole("row").filter({ has: page.getByRole("rowheader", { name }) });

async function begun(options = {}): Promise<Page & { troubles: string[] }> {
  const page = await openShelf(options);
  await page.getByRole("button", { name: "Make a shelf" }).click();
  await page.getByText("Nothing lies here yet.").waitFor();
  return page;
}

async function put(page: Page, name: string, fields: Readonly<Record<string, string>>): Promise<void> {
  await page.getByRole("button", { name: "Put something on the shelf" }).click();
  const dialog = page.getByRole("dialog");
  await dialog.getByLabel("Name", { exact: true }).fill(name);
  await dialog.getByLabel("Material").selectOption("cane fine");
  for (const [label, value] of Object.entries(fields)) await dialog.getByLabel(label, { exact: true }).fill(value);
  await dialog.getByRole("button", { name: "Put it there" }).click();
  await dialog.waitFor({ state: "detached" });
}

test("a shelf is reached from the patterns of the folder, and made only when that is asked for", async () => {
  const page = await open(browser, served.url);
  await page.locator(".title").click();
  await page.getByRole("dialog").getByRole("link", { name: "Shelf" }).click();
  await page.getByRole("heading", { name: "Shelf", level: 1 }).waitFor();
  const made = (): Promise<boolean> => access(join(served.folder, "workshop.db")).then(() => true, () => false);
  assert.equal(await made(), false, "looking makes nothing");
  await page.getByRole("button", { name: "Make a shelf" }).click();
  await page.getByText("Nothing lies here yet.").waitFor();
  assert.equal(await made(), true);
  await page.getByRole("link", { name: "Patterns" }).click();
  await page.waitForSelector(".figures dd", { state: "attached" });
  assert.deepEqual(page.troubles, []);
});

test("something is put there with its own measures, booked, changed and taken back", async () => {
  const page = await begun();
  await put(page, "fine cane, blue", { Colour: "blue", "On hand": "70", "Length of a strand": "12 ft", Width: "2.2 mm", "Bought in": "hank", "Strands or pieces in it": "83", "Price of it": "48", "Buy when below": "60" });
  const cane = row(page, "fine cane, blue");
  await cane.getByText("12 ft").waitFor();
  assert.match((await cane.textContent()) ?? "", /blue70.*2\.2 mm.*wide.*hank of 83 at 48/);

  await cane.getByRole("button", { name: "Book" }).click();
  const dialog = page.getByRole("dialog");
  await dialog.getByLabel("What happened").selectOption("cut");
  await dialog.getByLabel("How many").fill("12");
  await dialog.getByLabel("For what").fill("autumn weekend");
  await dialog.getByRole("button", { name: "Book" }).click();
  await cane.getByText("58", { exact: false }).waitFor();
  await cane.getByText("buy", { exact: true }).waitFor();
  await row(page, "").filter({ hasText: "autumn weekend" }).getByText("fine cane, blue −12").waitFor();

  await cane.getByRole("button", { name: "Change" }).click();
  await dialog.getByLabel("Note").fill("the darker lot");
  await dialog.getByRole("button", { name: "Change", exact: true }).click();
  await cane.getByText("the darker lot").waitFor();
  await page.getByRole("button", { name: "Undo: fine cane, blue changed" }).click();
  await cane.getByText("the darker lot").waitFor({ state: "detached" });
  await page.locator("h1").click();
  await page.keyboard.press("Control+z");
  await cane.getByText("70").waitFor();
  await page.getByText("taken back", { exact: true }).waitFor();
  assert.deepEqual(page.troubles, []);
});

test("what cannot be is said in the dialog, and what was typed stays", async () => {
  const page = await begun();
  await put(page, "hank 1", {});
  await page.getByRole("button", { name: "Put something on the shelf" }).click();
  const dialog = page.getByRole("dialog");
  await dialog.getByLabel("Name", { exact: true }).fill("hank 1");
  await dialog.getByRole("button", { name: "Put it there" }).click();
  await dialog.getByRole("alert").filter({ hasText: "There is “hank 1” on the shelf already." }).waitFor();
  await dialog.getByLabel("Name", { exact: true }).fill("hank 2");
  await dialog.getByLabel("Length of a strand").fill("long");
  await dialog.getByRole("button", { name: "Put it there" }).click();
  await dialog.getByRole("alert").filter({ hasText: "“long” is no length. Write it as 12 ft" }).waitFor();
  assert.equal(await dialog.getByLabel("Name", { exact: true }).inputValue(), "hank 2");
  assert.deepEqual(await wrongs(page), []);
});

test("a mould is written down, lent, and comes back", async () => {
  const page = await begun();
  await page.getByRole("button", { name: "Write a mould down" }).click();
  const dialog = page.getByRole("dialog");
  await dialog.getByLabel("Name", { exact: true }).fill("A");
  await dialog.getByLabel("Kept where").fill("boat shed");
  await dialog.getByLabel("Patterns that fit").fill("harbour-bread-basket");
  await dialog.getByRole("button", { name: "Write it down" }).click();
  const mould = row(page, "A").filter({ hasText: "harbour" });
  await mould.getByText("boat shed").waitFor();
  await mould.getByRole("button", { name: "Lend" }).click();
  await dialog.getByLabel("To whom").fill("student 4");
  await dialog.getByLabel("Due back on").fill("2026-10-18");
  await dialog.getByRole("button", { name: "Lend" }).click();
  await mould.getByText("with student 4").waitFor();
  await mould.getByText("due back Oct 18, 2026").waitFor();
  await mould.getByRole("button", { name: "It is back" }).click();
  await mould.getByText("boat shed").waitFor();
  assert.deepEqual(page.troubles, []);
});

test("items and moulds are taken off the shelf, and come back", async () => {
  const page = await begun();
  await put(page, "old cane", { "On hand": "12" });
  await row(page, "old cane").getByRole("button", { name: "Take off: old cane" }).click();
  await page.getByText("Nothing lies here yet.").waitFor();
  const history = page.getByRole("row").filter({ hasText: "taken off the shelf" });
  await history.filter({ hasText: "old cane −12" }).waitFor();
  await history.getByRole("button", { name: "Take back" }).click();
  await row(page, "old cane").getByText("12").waitFor();
  await page.getByRole("button", { name: "Write a mould down" }).click();
  const dialog = page.getByRole("dialog");
  await dialog.getByLabel("Name", { exact: true }).fill("A");
  await dialog.getByRole("button", { name: "Write it down" }).click();
  await page.getByRole("button", { name: "Take off: A" }).click();
  await page.getByText("No mould is written down.").waitFor();
  await page.locator("h1").click();
  await page.keyboard.press("Control+z");
  await page.getByRole("button", { name: "Take off: A" }).waitFor();
  assert.deepEqual(page.troubles, []);
});

test("the shelf goes out as CSV, and a table counted in a spreadsheet comes in", async () => {
  const page = await begun();
  await put(page, "hank 1", { "On hand": "70", "Length of a strand": "12 ft" });
  const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("link", { name: "Save as CSV" }).click()]);
  const table = await readFile((await download.path()) ?? "", "utf8");
  assert.match(table, /hank 1,cane fine,natural,3657\.6,70/);
  const take = (text: string): Promise<void> =>
    page.locator("input[type=file]").setInputFiles({ name: "shelf.csv", mimeType: "text/csv", buffer: Buffer.from(text) });
  await take(table.replace(",70,", ",61,"));
  await row(page, "hank 1").getByText("61").waitFor();
  await take("name,material,count\nhank 2,cane fine,many\n");
  await page.locator("[data-notice=trouble]", { hasText: "Line 2 of the table" }).waitFor();
  await page.getByRole("button", { name: "Undo" }).click();
  await row(page, "hank 1").getByText("70").waitFor();
});

test("of a large shelf the first items are shown, and the rest is found", async () => {
  const first = await begun();
  await first.context().close();
  const page = await openShelf({ locale: "de-DE" });
  const lots = Array.from({ length: 300 }, (_, number) => `lot ${String(number).padStart(3, "0")},cane fine,blue,${number},4.2`);
  const table = ["name,material,colour,count,price", ...lots].join("\n");
  await page.locator("input[type=file]").setInputFiles({ name: "shelf.csv", mimeType: "text/csv", buffer: Buffer.from(table) });
  await page.getByText("300 von 300").waitFor();
  await row(page, "lot 199").waitFor();
  assert.equal(await row(page, "lot 200").count(), 0);
  await page.getByLabel("Im Regal suchen").fill("blau 29");
  await page.getByText("13 von 300").waitFor();
  await row(page, "lot 299").getByRole("button", { name: "Ändern" }).click();
  await page.getByRole("dialog").getByLabel("Notiz").fill("darker");
  await page.getByRole("dialog").getByRole("button", { name: "Ändern", exact: true }).click();
  await row(page, "lot 299").getByText("darker").waitFor();
  await page.getByText("13 von 300").waitFor();
  assert.deepEqual(page.troubles, []);
});

test("guests of the studio see nothing of it unless they may write", async () => {
  const studio = await serveWith(["--studio"], "harbour-bread-basket");
  try {
    const page = await open(browser, studio.urls.at(-1) ?? "");
    await page.locator(".title").click();
    await page.getByRole("dialog").waitFor();
    assert.equal(await page.getByRole("link", { name: "Shelf" }).count(), 0);
    await page.goto(new URL("/workshop.html#shelf", page.url()).href);
    await page.getByText("this bench does not show it to guests").waitFor();
    assert.equal(await page.getByRole("link", { name: "Shelf" }).count(), 0);
  } finally {
    await studio.end();
  }
});

test("it reads well at every width, light and dark, in German, and by axe", async () => {
  const first = await begun();
  await put(first, "fine cane, blue", { Colour: "blue", "On hand": "70", "Length of a strand": "12 ft", "Bought in": "hank", "Strands or pieces in it": "83", "Price of it": "48", "Buy when below": "80" });
  await first.context().close();
  for (const [width, colorScheme, locale] of [[390, "light", "en-GB"], [768, "dark", "de-DE"], [1440, "light", "de-DE"], [320, "dark", "en-GB"]] as const) {
    const page = await openShelf({ viewport: { width, height: 900 }, colorScheme, locale });
    await row(page, "fine cane, blue").waitFor();
    assert.equal(await spill(page), 0, `${width} px`);
    assert.deepEqual(await wrongs(page), []);
    await page.getByRole("button", { name: locale === "de-DE" ? "Ändern: fine cane, blue" : "Change: fine cane, blue" }).click();
    await page.getByRole("dialog").waitFor();
    assert.equal(await spill(page), 0, `${width} px, dialog`);
    assert.deepEqual(await wrongs(page), []);
    await page.context().close();
  }
});

test("something is put there and booked by keyboard alone", async () => {
  const page = await begun();
  const focus = (): Promise<string> => page.evaluate(() => {
    const at = document.activeElement;
    return at?.getAttribute("aria-label") ?? (at instanceof HTMLInputElement ? at.labels?.[0]?.textContent : at?.textContent) ?? "";
  });
  const tabTo = async (wanted: RegExp): Promise<void> => {
    for (let step = 0; step < 60; step += 1) {
      if (wanted.test(await focus())) return;
      await page.keyboard.press("Tab");
    }
    assert.fail(`the focus never came to ${wanted}; it is on ${await focus()}`);
  };
  await tabTo(/^Put something on the shelf$/);
  await page.keyboard.press("Enter");
  await until("the name is asked", async () => (await focus()) === "Name");
  await page.keyboard.type("hank 1");
  await tabTo(/^On hand$/);
  await page.keyboard.press("Control+a");
  await page.keyboard.type("40");
  await page.keyboard.press("Enter");
  await row(page, "hank 1").getByText("40").waitFor();
  await tabTo(/^Book: hank 1$/);
  await page.keyboard.press("Enter");
  await tabTo(/^How many$/);
  await page.keyboard.press("Control+a");
  await page.keyboard.type("83");
  await page.keyboard.press("Enter");
  await row(page, "hank 1").getByText("123").waitFor();
});
