/** The pattern in several sizes, drawn together, each basket in the next. */

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { after, before, test } from "node:test";
import type { Browser, Page } from "playwright-core";
import { browse, open, serve, until, type Served } from "./bench.ts";

let browser: Browser;
let served: Served;

before(async () => {
  [browser, served] = await Promise.all([browse(), serve("pilot-letter-basket")]);
});
after(async () => {
  await browser.close();
  await served.end();
});

async function ask(page: Page, sizes: string): Promise<void> {
  await page.getByRole("button", { name: "More", exact: true }).click();
  await page.getByRole("dialog").getByRole("button", { name: "Sizes and nest" }).click();
  await page.getByLabel("Across the moulds at the top, or their lengths").fill(sizes);
  await page.keyboard.press("Enter");
}

test("sizes are drawn in each other, with the room between them and one cut list", async () => {
  const page = await open(browser, served.url);
  await ask(page, "10, 7, 8 1/2");
  const dialog = page.getByRole("dialog");
  await dialog.getByRole("img", { name: "The baskets cut through, each standing in the next: 7 in, 8 1/2 in, 10 in" }).waitFor();
  assert.equal(await dialog.locator(".nest-basket").count(), 3);
  const rooms = await dialog.locator(".nest-rooms li").allTextContents();
  assert.equal(rooms.length, 2);
  assert.match(rooms[0] ?? "", /^7 in in 8 1\/2 in (Goes in: least room|7 in (has|is) )/);

  // What is drawn is what is told: walls of sizes that go in do not meet, the largest is outermost.
  const widths = await dialog.locator(".nest-basket").evaluateAll((parts) => parts.map((part) => (part as SVGGElement).getBBox().width));
  assert.deepEqual(widths, widths.toSorted((one, other) => other - one));

  await dialog.locator("summary").filter({ hasText: "The set" }).click();
  assert.match((await dialog.locator(".leaf").textContent()) ?? "", /7 in.*8 1\/2 in.*10 in/s);
  const [download] = await Promise.all([page.waitForEvent("download"), dialog.getByRole("button", { name: "Sheet to print (sizes.pdf)" }).click()]);
  assert.equal(download.suggestedFilename(), "sizes.pdf");
  assert.equal((await readFile(await download.path())).subarray(0, 5).toString(), "%PDF-");
  assert.deepEqual(page.troubles, []);
});

test("sizes that lie too close are told to be too tight, and what is no size gets a reason", async () => {
  const page = await open(browser, served.url);
  await ask(page, "9, 9 1/4");
  const dialog = page.getByRole("dialog");
  await until("it is too tight", async () => /too wide all round for 9 1\/4 in.*(Make the outer mould|No mould a little larger)/.test((await dialog.locator(".nest-rooms .tight").textContent()) ?? ""));
  assert.equal(await dialog.locator(".nest-room.tight").count(), 1);
  const sizes = page.getByLabel("Across the moulds at the top, or their lengths");
  for (const [written, said] of [["large", /“large” is no length/], ["1/4", /no basket has such a size/], [",", /no set of sizes/]] as const) {
    await sizes.fill(written);
    await sizes.press("Enter");
    await until(`${written} is refused`, async () => said.test((await dialog.getByRole("alert").textContent()) ?? ""));
  }
});
