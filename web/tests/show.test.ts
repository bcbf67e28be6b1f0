/** Findings by their cause, steps that say what they change, photographs, the front page, stills and the ruler. */

import assert from "node:assert/strict";
import { readFile, stat } from "node:fs/promises";
import { join } from "node:path";
import { after, before, test } from "node:test";
import type { Browser } from "playwright-core";
import { browse, field, figure, open, serve, type, until, type Served } from "./bench.ts";

const NAME = "harbour-bread-basket";
let browser: Browser;
let served: Served;

before(async () => {
  [browser, served] = await Promise.all([browse(), serve(NAME, "channel-marker")]);
});
after(async () => {
  await browser.close();
  await served.end();
});

/** Opens the page with the Harbour bread basket on the bench. */
async function openHarbour() {
  const page = await open(browser, served.url);
  await page.locator(".title").click();
  await page.getByRole("dialog").getByRole("button", { name: `${NAME}.toml` }).click();
  await until("it is open", async () => (await page.locator(".title-text").textContent()) === "Harbour bread basket");
  return page;
}

test("findings of one cause stand under it, and can all be unfolded", async () => {
  const page = await openHarbour();
  await type(page, "staves.count", "66");
  const cause = page.locator(".cause button").filter({ hasText: "Staves: Count" });
  await cause.waitFor();
  const [, count] = /: (\d+) findings/.exec((await cause.textContent()) ?? "") ?? [];
  assert.ok(Number(count) > 1);
  const shown = await page.locator(".finding").count();
  await cause.click();
  await until("all are shown", async () => (await page.locator(".finding").count()) === shown + Number(count) - 1);
  assert.equal(await cause.getAttribute("aria-expanded"), "true");
  assert.equal(await cause.evaluate((button) => button === document.activeElement), true);
  await page.context().close();
});

test("a step says when it changes what the maker wrote, and what else changes with it", async () => {
  const page = await openHarbour();
  await type(page, "staves.count", "66");
  await page.locator(".finding.stop .finding-head").first().click();
  const step = page.locator(".finding.stop .step").filter({ hasText: "Staves: Count" }).first();
  await step.waitFor();
  assert.match((await step.locator("button").textContent()) ?? "", /You wrote 66 for Staves: Count\./);
  await until("what changes is said", async () => /Changes with it: Staves: \d+\./.test((await step.locator(".brings").textContent()) ?? ""));
  const [, promised] = /Staves: (\d+)\./.exec((await step.locator(".brings").textContent()) ?? "") ?? [];
  await step.locator("button").click();
  await until("that is what comes", async () => (await figure(page, "staves")) === promised);
  await page.context().close();
});

test("a number that is too large for inches is asked about", async () => {
  const page = await open(browser, served.url);
  await page.locator(".title").click();
  await page.getByRole("dialog").getByRole("button", { name: /^An empty pattern/ }).click();
  await until("it is open", async () => (await page.locator(".title-text").textContent()) === "New basket");
  await page.locator(".form:not([inert])").waitFor();
  await type(page, "mould.rim", "178");
  const rim = field(page, "mould.rim");
  await rim.getByRole("alert").getByText("Or are millimetres meant?").waitFor();
  assert.match((await rim.locator(".used").textContent()) ?? "", /^7 in/);
  await rim.getByRole("button", { name: "178 mm" }).click();
  await until("it is taken so", async () => /^7 in \(178 mm\)/.test((await rim.locator(".used").textContent()) ?? "") && (await rim.locator("input[type=text]").inputValue()) === "178 mm");
  await page.context().close();
});

test("a photograph is kept beside its pattern and seen on the front page", async () => {
  const page = await openHarbour();
  const png = Buffer.from(await page.evaluate(async () => {
    const canvas = document.createElement("canvas");
    [canvas.width, canvas.height] = [3000, 2000];
    canvas.getContext("2d")?.fillRect(0, 0, 3000, 2000);
    return (canvas.toDataURL("image/png").split(",")[1] ?? "");
  }), "base64");
  const file = join(served.folder, `${NAME}.photo.jpg`);
  await page.getByRole("button", { name: "More", exact: true }).click();
  await page.getByRole("button", { name: "Photograph of the finished basket" }).click();
  const dialog = page.getByRole("dialog");
  await dialog.getByText("None is kept yet.").waitFor();
  await dialog.getByLabel("Choose a photograph").setInputFiles({ name: "basket.png", mimeType: "image/png", buffer: png });
  const image = dialog.getByRole("img", { name: "Harbour bread basket, finished" });
  await image.waitFor();
  await until("it is seen", () => image.evaluate((one: HTMLImageElement) => one.complete && one.naturalWidth === 2000));
  assert.deepEqual([...(await readFile(file)).subarray(0, 3)], [0xff, 0xd8, 0xff]);
  await page.keyboard.press("Escape");
  await page.locator(".title").click();
  const row = dialog.getByRole("button", { name: `${NAME}.toml` });
  await until("the photograph stands there", () => row.locator("img").evaluate((one: HTMLImageElement) => one.naturalWidth > 0));
  await dialog.getByRole("button", { name: "channel-marker.toml" }).locator(".thumb svg path").first().waitFor({ state: "attached" });
  await page.keyboard.press("Escape");
  await page.getByRole("button", { name: "More", exact: true }).click();
  await page.getByRole("button", { name: "Photograph of the finished basket" }).click();
  await dialog.getByRole("button", { name: "Take it away" }).click();
  await dialog.getByText("None is kept yet.").waitFor();
  await assert.rejects(stat(file));
  assert.deepEqual(page.troubles, []);
  await page.context().close();
});

test("the picture is painted in a worker, saved for print, and measured by a ruler", async () => {
  const page = await openHarbour();
  await page.waitForSelector("[data-drawn=page]");
  assert.ok(page.workers().some((worker) => worker.url().endsWith("painter-worker.js")));
  const ruler = page.getByRole("button", { name: "Ruler and hand for scale" });
  await ruler.click();
  await page.getByText("The ruler is 6 in long").waitFor();
  assert.equal(await ruler.getAttribute("aria-pressed"), "true");
  const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "Save the picture for print" }).click()]);
  assert.equal(download.suggestedFilename(), "harbour-bread-basket.png");
  const bytes = await readFile(await download.path());
  assert.equal(bytes.readUInt32BE(16), 1800);
  // Dots a metre at 300 an inch (PNG specification, chunk pHYs).
  const at = bytes.indexOf("pHYs");
  assert.deepEqual([bytes.readUInt32BE(at + 4), bytes.readUInt32BE(at + 8), bytes[at + 12]], [11811, 11811, 1]);
  const image = await page.evaluate(async (data) => {
    const picture = await createImageBitmap(new Blob([Uint8Array.from(atob(data), (sign) => sign.charCodeAt(0))], { type: "image/png" }));
    const canvas = new OffscreenCanvas(picture.width, picture.height);
    const pen = canvas.getContext("2d");
    pen?.drawImage(picture, 0, 0);
    const middle = pen?.getImageData(picture.width / 2, picture.height * 0.45, 1, 1).data;
    return { corner: [...(pen?.getImageData(2, 2, 1, 1).data ?? [])], middle: [...(middle ?? [])] };
  }, bytes.toString("base64"));
  assert.deepEqual(image.corner, [255, 255, 255, 255]);
  assert.notDeepEqual(image.middle, image.corner);
  assert.deepEqual(page.troubles, []);
  await page.context().close();
});

test("what the hand moves shows its numbers although the picture is still being painted", async () => {
  const page = await openHarbour();
  await page.waitForSelector("[data-drawn=page]");
  let held = true;
  let release = (): void => undefined;
  const holding = new Promise<void>((resolve) => (release = resolve));
  await page.route("**/api/picture", async (route) => {
    if (held) await holding;
    await route.continue();
  });
  const before = await figure(page, "staves");
  await field(page, "staves.count").getByRole("button", { name: "Count: more" }).click();
  await until("the numbers are there", async () => (await figure(page, "staves")) !== before);
  held = false;
  const answered = page.waitForResponse((response) => response.url().endsWith("/api/picture"));
  release();
  assert.equal((await answered).status(), 200);
  await page.context().close();
});
