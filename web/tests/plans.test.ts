/** The pages Kits and buying, and Price: planned, shown, booked, printed, taken back; sizes; axe. */

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { after, afterEach, before, beforeEach, test } from "node:test";
import type { Browser, Locator, Page } from "playwright-core";
import { browse, serve, until, type Served } from "./bench.ts";
import { openWorkshop, spill, wrongs } from "./workshop.ts";

let browser: Browser;
let served: Served;

before(async () => {
  browser = await browse();
});
after(() => browser.close());
beforeEach(async () => {
  served = await serve("harbour-bread-basket", "channel-marker");
});
afterEach(() => served.end());

async function openPlan(name: string, options = {}): Promise<Page & { troubles: string[] }> {
  const page = await openWorkshop(browser, served.url, name, options);
  await page.locator(".leaf").first().waitFor();
  await settled(page);
  return page;
}

const settled = (page: Page): Promise<void> => page.locator(".leaves[aria-busy]").waitFor({ state: "detached" });
const leaf = (page: Page, id: string): Locator => page.locator(`#leaf-${id}`);
const group = (page: Page, number: number): Locator => page.getByRole("group", { name: `Students, group ${number}` });

/** Writes into a field of the plan as a maker does. */
async function write(field: Locator, text: string): Promise<void> {
  await field.fill(text);
  await field.press("Tab");
}

test("kits are planned for two groups in their own colours, saved with their name, and taken back", async () => {
  const page = await openPlan("kits");
  await page.getByLabel("Title").waitFor();
  await write(page.getByLabel("Title"), "Autumn weekend");
  await group(page, 1).getByLabel("Pattern").selectOption({ label: "Channel marker" });
  await write(group(page, 1).getByLabel("How many"), "8");
  await leaf(page, "kits").getByText(/8 × /).first().waitFor();
  await page.getByRole("button", { name: "Add students" }).click();
  await group(page, 2).getByLabel("Pattern").selectOption({ label: "Channel marker" });
  await write(group(page, 2).getByLabel("How many"), "4");
  await group(page, 2).getByRole("button", { name: "Another colour for them" }).click();
  await group(page, 2).getByLabel("In the place of").selectOption("blue");
  await group(page, 2).getByLabel("they have").selectOption("red");
  await leaf(page, "shopping").getByText(/red/).first().waitFor();
  await leaf(page, "cutting").locator(".strand").first().waitFor();

  await page.keyboard.press("Control+s");
  const dialog = page.getByRole("dialog");
  assert.equal(await dialog.getByLabel("Name of the file").inputValue(), "autumn-weekend");
  await page.keyboard.press("Enter");
  await dialog.waitFor({ state: "detached" });
  assert.match(await served.file("autumn-weekend"), /title = "Autumn weekend"[^]*count = 8[^]*count = 4[^]*blue = "red"/);

  await page.locator("h1").click();
  await page.keyboard.press("Control+z");
  await until("red is taken back", async () => (await group(page, 2).getByLabel("they have").inputValue()) !== "red");
  await page.keyboard.press("Control+Shift+z");
  await until("and done again", async () => (await group(page, 2).getByLabel("they have").inputValue()) === "red");
  await page.reload();
  await until("it is still there", async () => (await group(page, 2).getByLabel("How many").inputValue()) === "4");
  assert.deepEqual(page.troubles, []);
});

test("what is bought and cut is booked only when that is said, and taken back", async () => {
  const page = await openPlan("kits");
  await page.getByText("There is no shelf yet").waitFor();
  await page.getByRole("link", { name: "Shelf" }).click();
  await page.getByRole("button", { name: "Make a shelf" }).click();
  await page.getByText("Nothing lies here yet.").waitFor();
  await page.getByRole("link", { name: "Kits and buying" }).click();
  await page.getByRole("button", { name: "All of it was bought: book it" }).click();
  await leaf(page, "shopping").getByText("nothing has to be bought").waitFor();
  await page.getByRole("button", { name: "It was cut so: book it" }).click();
  await page.locator("[data-notice=booked]", { hasText: "taken from the shelf" }).waitFor();
  await page.locator("[data-notice=booked]").getByRole("button", { name: "Take back" }).click();
  await leaf(page, "shopping").getByText("nothing has to be bought").waitFor();
  await page.getByRole("link", { name: "Shelf" }).click();
  await page.getByRole("row").filter({ hasText: "taken back" }).waitFor();
  assert.deepEqual(page.troubles, []);
});

test("other plans and orders are bought for together, and a fault leaves nothing that says it is being worked out", async () => {
  await served.write("autumn", 'title = "Autumn"\n\n[[students]]\npattern = "harbour-bread-basket.toml"\ncount = 2\n');
  await served.write("winter", 'title = "Winter"\n\n[[students]]\npattern = "channel-marker.toml"\ncount = 3\n');
  const page = await openPlan("kits");
  const shopping = leaf(page, "shopping");
  assert.doesNotMatch((await shopping.textContent()) ?? "", /blue/);
  await page.getByRole("group", { name: "Bought for together with" }).getByLabel("Winter").check();
  await shopping.getByText(/blue/).first().waitFor();
  await leaf(page, "kits").getByText(/2 × /).first().waitFor();
  await page.getByRole("group", { name: "Bought for together with" }).getByLabel("Winter").uncheck();
  await until("winter is left out again", async () => !/blue/.test((await shopping.textContent()) ?? ""));
  await page.locator("summary", { hasText: "The plan as text" }).click();
  const text = page.getByRole("textbox", { name: "The plan as text" });
  await text.fill((await text.inputValue()).replace("harbour-bread-basket", "gone"));
  await page.getByRole("button", { name: "Take this text" }).click();
  await page.getByRole("alert").filter({ hasText: "gone" }).waitFor();
  assert.equal(await page.getByText("It is being worked out").count(), 0);
});

test("prices are worked line by line from what is written", async () => {
  const page = await openPlan("price");
  await write(page.getByLabel("Currency"), "crowns");
  await write(page.getByLabel("An hour of work"), "24,50");
  await leaf(page, "price").getByText(/24\.50\scrowns an hour/).first().waitFor();
  await write(page.getByLabel("Margin on the cost"), "0.15");
  await leaf(page, "price").getByText(/margin, 15/).first().waitFor();
  await write(page.getByLabel("An hour of work"), "-3");
  await page.getByRole("alert").filter({ hasText: "`wage` cannot be -3" }).waitFor();
  assert.match(await leaf(page, "price").textContent() ?? "", /24\.50/, "what was worked out last stays");
  await page.getByRole("button", { name: /^Undo/ }).click();
  await page.getByRole("alert").filter({ hasText: "`wage` cannot be -3" }).waitFor({ state: "detached" });
  await page.getByRole("link", { name: "Kits and buying" }).click();
  await leaf(page, "kits").waitFor();
  assert.deepEqual(page.troubles, []);
});

test("sheets are set and saved", async () => {
  const page = await openPlan("kits");
  await page.getByRole("button", { name: "Sheets to print" }).click();
  const links = page.locator(".file a");
  await links.first().waitFor();
  assert.deepEqual(await links.allTextContents(), ["kits.pdf", "shopping.pdf", "cutting.pdf", "price.pdf", "checks.pdf", "labels.pdf", "shopping.csv"]);
  for (const [name, begins] of [["cutting.pdf", "%PDF"], ["shopping.csv", "material,colour,count"]] as const) {
    const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("link", { name }).click()]);
    assert.ok((await readFile((await download.path()) ?? "", "utf8")).startsWith(begins), name);
  }
});

test("a plan that was written by hand keeps its comments, and its mistakes are told", async () => {
  await served.write("autumn", '# Twelve come.\ntitle = "Autumn"\n\n[[students]]\npattern = "channel-marker.toml"\ncount = 2 # friends\n');
  const page = await openPlan("kits");
  assert.equal(await page.getByLabel("Title").inputValue(), "Autumn");
  await write(group(page, 1).getByLabel("How many"), "3");
  await leaf(page, "kits").getByText(/3 × /).first().waitFor();
  await page.keyboard.press("Control+s");
  await until("it is saved", async () => (await served.file("autumn")).includes("count = 3 # friends"));
  assert.match(await served.file("autumn"), /^# Twelve come\.$/m);
  await page.locator("summary", { hasText: "The plan as text" }).click();
  const text = page.getByRole("textbox", { name: "The plan as text" });
  await text.fill((await text.inputValue()).replace("count = 3", "cuont = 3"));
  await page.getByRole("button", { name: "Take this text" }).click();
  await page.getByRole("alert").filter({ hasText: "cuont" }).waitFor();
});

test("plans read well at every width, light and dark, in German, and by axe", async () => {
  for (const [name, width, colorScheme, locale] of [["kits", 390, "dark", "de-DE"], ["kits", 1440, "light", "en-GB"], ["price", 768, "light", "de-DE"], ["price", 320, "dark", "en-GB"]] as const) {
    const page = await openPlan(name, { viewport: { width, height: 900 }, colorScheme, locale });
    assert.equal(await spill(page), 0, `${name} at ${width} px`);
    assert.deepEqual(await wrongs(page), []);
    await page.context().close();
  }
});
