/** From an empty folder to a packet. */

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { after, before, test } from "node:test";
import type { Browser } from "playwright-core";
import { browse, field, figure, open, serve, type, unfold, until, type Served } from "./bench.ts";

let browser: Browser;
let served: Served;

before(async () => {
  [browser, served] = await Promise.all([browse(), serve()]);
});
after(async () => {
  await browser.close();
  await served.end();
});

test("a basket is designed from an empty pattern and its packet taken away", async () => {
  const page = await open(browser, served.url);
  await page.getByRole("dialog").getByRole("button", { name: "Other ways to begin" }).click();
  await page.getByRole("dialog").getByRole("button", { name: /^An empty pattern/ }).click();
  await until("all is chosen", async () => (await field(page, "staves.count").getAttribute("class"))?.includes("chosen") ?? false);

  await unfold(page, "basket");
  await type(page, "title", "Slipway basket");
  await type(page, "mould.rim", "8 1/2");
  await until("the mould is wider", async () => /216 mm/.test((await field(page, "mould.rim").textContent()) ?? ""));
  await type(page, "staves.count", "57");
  await until("57 staves", async () => (await figure(page, "staves")).startsWith("57"));
  await until("it is not called chosen", async () => (await field(page, "staves.count").locator(".why").textContent()) === "");

  await page.getByRole("button", { name: "Save", exact: true }).click();
  const name = page.getByRole("dialog").getByLabel("Name of the file");
  assert.equal(await name.inputValue(), "slipway-basket");
  await name.press("Enter");
  await until("it is saved", async () => (await page.locator(".title-state").textContent()) === "saved");
  const text = await served.file("slipway-basket");
  assert.match(text, /title = "Slipway basket"/);
  assert.match(text, /count = 57/);

  await page.getByRole("button", { name: "Take away" }).click();
  const dialog = page.getByRole("dialog");
  await dialog.getByLabel("Paper").selectOption("a4");
  await dialog.getByRole("button", { name: "Make the packet" }).click();
  const zip = dialog.getByRole("link", { name: "Download all as ZIP" });
  await zip.waitFor({ timeout: 120_000 });
  const [download] = await Promise.all([page.waitForEvent("download"), zip.click()]);
  assert.match(download.suggestedFilename(), /\.zip$/);
  const bytes = await readFile(await download.path());
  assert.equal(bytes.subarray(0, 2).toString(), "PK");
  for (const file of ["handout.pdf", "teacher.pdf", "maker.pdf", "bench-card.pdf", "templates.pdf", "cuts.csv"]) {
    assert.ok(bytes.includes(file), `the packet lacks ${file}`);
    assert.equal(await dialog.getByRole("link", { name: file, exact: true }).count(), 1);
  }
  const rows = await dialog.locator("li.file").allInnerTexts();
  assert.deepEqual(rows.filter((row) => /\.zip/.test(row)), []);
  assert.deepEqual(rows.filter((row) => row.split(/\s*\n\s*/).length < 3), [], "each file has its name, what it is and its size");
  assert.ok(rows.some((row) => /chart/.test(row)) && rows.some((row) => /\.png|\.svg/.test(row)), "chart and picture are there");
  const pdf = await page.evaluate(async (path) => (await (await fetch(path)).text()).slice(0, 5), await dialog.getByRole("link", { name: "handout.pdf" }).getAttribute("href") ?? "");
  assert.equal(pdf, "%PDF-");

  const row = dialog.getByRole("listitem").filter({ has: page.getByRole("link", { name: "handout.html", exact: true }) });
  // Heard on the context, so that nothing is missed while the new page is not yet at hand.
  page.context().on("console", (message) => message.type() === "error" && page.troubles.push(message.text()));
  const [handout] = await Promise.all([page.waitForEvent("popup"), row.getByRole("link", { name: "Print" }).click()]);
  await handout.locator("h1").waitFor();
  await handout.waitForLoadState();
  // The page's own style holds: without it the list of sections is a list of numbered lines.
  const style = await handout.evaluate(() => getComputedStyle(document.querySelector("nav ol") ?? document.body).display);
  assert.equal(style, "flex");
  // On a phone a wide table becomes a list that names each value, and nothing lies off the screen.
  await handout.setViewportSize({ width: 390, height: 800 });
  await handout.locator("table.wide .head").first().waitFor();
  await handout.waitForFunction(() => document.documentElement.scrollWidth <= 390);
  assert.match(await handout.title(), /Slipway basket/);
  assert.deepEqual(page.troubles, []);
});

test("a packet in the making can be stopped", async () => {
  const page = await open(browser, served.url);
  // No news of the packet comes before it is stopped, however quickly it is made.
  let stopped = (): void => undefined;
  const untilStopped = new Promise<void>((resolve) => (stopped = resolve));
  await page.route(/\/api\/packets\/[^/]+$/, async (route) => {
    if (route.request().method() === "GET") await untilStopped;
    await route.fallback().catch(() => undefined);
  });
  await page.getByRole("button", { name: "Take away" }).click();
  const dialog = page.getByRole("dialog");
  await dialog.getByRole("button", { name: "Make the packet" }).click();
  await dialog.getByRole("button", { name: "Stop" }).click();
  await dialog.getByText("Stopped.").waitFor();
  stopped();
  assert.equal(await dialog.getByRole("link", { name: "Download all as ZIP" }).count(), 0);
  await dialog.getByRole("button", { name: "Make the packet" }).click();
  await dialog.getByRole("link", { name: "Download all as ZIP" }).waitFor({ timeout: 120_000 });
});

test("a packet can be stopped before the program has answered that it begins", async () => {
  const page = await open(browser, served.url);
  let stopped = (): void => undefined;
  const untilStopped = new Promise<void>((resolve) => (stopped = resolve));
  await page.route("**/api/packets", async (route) => {
    await untilStopped;
    await route.fallback().catch(() => undefined);
  });
  const ended = page.waitForRequest((request) => request.method() === "DELETE" && /\/api\/packets\/[^/]+$/.test(request.url()));
  await page.getByRole("button", { name: "Take away" }).click();
  const dialog = page.getByRole("dialog");
  await dialog.getByRole("button", { name: "Make the packet" }).click();
  await dialog.getByRole("button", { name: "Stop" }).click();
  await dialog.getByText("Stopped.").waitFor();
  stopped();
  await ended;
  assert.equal(await dialog.getByRole("link", { name: "Download all as ZIP" }).count(), 0);
});

test("a value is taken over and given back", async () => {
  const page = await open(browser, served.url);
  await unfold(page, "rim");
  const lap = field(page, "rim.lap");
  const chosen = await lap.locator(".used").textContent();
  assert.match((await lap.locator(".why").textContent()) ?? "", /^Chosen by Stavewright: /);
  await lap.getByRole("button", { name: /^Take over/ }).click();
  await until("it is the maker's", async () => (await lap.locator(".why").textContent()) === "");
  assert.notEqual(await lap.locator("input[type=text]").inputValue(), "");
  await lap.getByRole("button", { name: /^Give back/ }).click();
  await until("it is chosen again", async () => /^Chosen/.test((await lap.locator(".why").textContent()) ?? ""));
  assert.equal(await lap.locator(".used").textContent(), chosen);
  assert.equal(await lap.locator("input[type=text]").inputValue(), "");
});

test("a part that Stavewright chose is ticked, and can be taken out and put back", async () => {
  const page = await open(browser, served.url);
  await unfold(page, "rim");
  const filler = field(page, "filler").locator("input[type=checkbox]");
  assert.ok(await filler.isChecked());
  await filler.uncheck();
  await until("the filler is gone", async () => (await page.locator('[data-cut="fillers"]').count()) === 0);
  assert.ok(!(await filler.isChecked()));
  await filler.check();
  await page.locator('[data-cut="fillers"]').waitFor();
});

test("a mistake is said at its field, and the last good basket stays", async () => {
  const page = await open(browser, served.url);
  const before = await figure(page, "staves");
  await type(page, "staves.count", "sixty");
  const count = field(page, "staves.count");
  await until("it is said", async () => ((await count.locator(".wrong").textContent()) ?? "") !== "");
  assert.equal(await count.locator("input[type=text]").getAttribute("aria-invalid"), "true");
  assert.equal(await figure(page, "staves"), before);
  await page.locator("[data-notice=problems]").getByRole("button", { name: "Undo" }).click();
  await until("it is mended", async () => (await page.locator("[data-notice=problems]").count()) === 0);
  await until("nothing is said at the field", async () => (await count.locator(".wrong").textContent()) === "");
});
