/** Measures the page on the example: dragging, and the way from a cold start to the first picture. */

import { browse, field, open, serve, type Served } from "./bench.ts";
import type { Locator, Page } from "playwright-core";

const STEPS = 120;
/** About as often as a hand's movement is reported. */
const EVERY_MS = 16;

function share(times: readonly number[], part: number): number {
  const sorted = times.toSorted((one, other) => one - other);
  return sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))] ?? Number.NaN;
}

async function report(page: Page, what: string): Promise<void> {
  for (const name of ["numbers", "picture"]) {
    const times = await page.evaluate(
      (kind) => performance.getEntriesByName(kind, "measure").map(({ duration }) => duration),
      name,
    );
    if (times.length === 0) continue;
    const figures = [0.5, 0.95].map((part) => `p${part * 100} ${share(times, part).toFixed(1)} ms`);
    console.log(`${what}, hand to ${name}: ${figures.join(", ")} (${times.length} shown of ${STEPS} moves)`);
  }
  await page.evaluate(() => performance.clearMeasures());
}

/** Moves the pressed pointer to and fro. */
async function drag(page: Page, x: number, y: number, far: number): Promise<void> {
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let step = 1; step <= STEPS; step += 1) {
    await page.mouse.move(x + far * Math.sin(step / 12), y);
    await page.waitForTimeout(EVERY_MS);
  }
  await page.mouse.up();
  await page.waitForTimeout(600);
}

async function middle(selector: Locator): Promise<{ x: number; y: number; width: number }> {
  await selector.scrollIntoViewIfNeeded();
  const box = await selector.boundingBox();
  if (!box) throw new Error("what is to be dragged is out of sight");
  return { x: box.x + box.width / 2, y: box.y + box.height / 2, width: box.width };
}

/** Drags a count and a girth with the picture in sight, and the count once more without it. */
async function measure(page: Page, how: string): Promise<void> {
  const slide = async (what: string): Promise<void> => {
    const slider = await middle(field(page, "staves.count").locator("input[type=range]"));
    await drag(page, slider.x - slider.width * 0.15, slider.y, slider.width * 0.1);
    await report(page, `${how}: ${what}`);
  };
  await slide("warming up");
  await slide("stave count");
  const handle = await middle(page.getByRole("slider", { name: "Measurement 3", exact: true }));
  await drag(page, handle.x, handle.y, 12);
  await report(page, `${how}: girth`);
  // How much of it is the picture's: without a graphics card it takes most of the processor.
  await page.locator("#tab-compare").click();
  await slide("stave count, no picture in sight");
}

const browser = await browse();
const began = performance.now();
const served: Served = await serve("harbour-bread-basket");
const listening = performance.now();
const page = await open(browser, served.url);
const numbers = performance.now();
await page.waitForSelector("[data-drawn=page]");
const picture = performance.now();
console.log(
  `cold start: server listens after ${(listening - began).toFixed(0)} ms, ` +
    `first numbers after ${(numbers - began).toFixed(0)} ms, first picture after ${(picture - began).toFixed(0)} ms`,
);

// What is seen through the debugger waits for the first drawing; the page's own clock does not.
for (const path of ["/api/look", "/api/picture"]) {
  const answered = await page.evaluate((end) => {
    const entries = performance.getEntriesByType("resource") as PerformanceResourceTiming[];
    return entries.find(({ name }) => name.endsWith(end))?.responseEnd;
  }, path);
  console.log(`first answer of ${path}: ${answered?.toFixed(0)} ms after the page was called up`);
}

await measure(page, "picture painted in a worker");
await page.context().close();

// Where the browser cannot do that, the page paints by itself.
const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, locale: "en-GB" });
await context.addInitScript("delete HTMLCanvasElement.prototype.transferControlToOffscreen");
const alone = await context.newPage();
await alone.goto(served.url);
await alone.waitForSelector("[data-drawn=page]");
await measure(alone, "picture painted by the page");
await browser.close();
await served.end();
