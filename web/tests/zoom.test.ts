/** Every size of window and text: high zoom, small and lying telephones, large text, forced colours; contrast; keyboard alone. */

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import type { Browser, Page } from "playwright-core";
import { browse, field, figure, open, serve, still, until, type Served } from "./bench.ts";
import { spill, wrongs } from "./workshop.ts";

/** A window of 1440 × 900 at 200 % and 400 %; telephones upright and lying; a tablet. */
const WINDOWS = [[720, 450], [360, 225], [320, 640], [390, 844], [844, 390], [640, 360], [768, 1024]] as const;
let browser: Browser;
let served: Served;
let empty: Served;

before(async () => {
  [browser, served, empty] = await Promise.all([browse(), serve("harbour-bread-basket"), serve()]);
});
after(async () => {
  await browser.close();
  await Promise.all([served.end(), empty.end()]);
});

/** How much of an element can be seen, in pixels upward. */
const inSight = (page: Page, selector: string): Promise<number> =>
  page.locator(selector).first().evaluate((element) => {
    const box = element.getBoundingClientRect();
    return Math.min(box.bottom, innerHeight) - Math.max(box.top, 0);
  });

/** What stands under the picture and is covered by what stands before it. */
const overlaps = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const rows = [".stage", ".round > .tools", ".knobs"].map((row) => [row, document.querySelector(row)?.getBoundingClientRect()] as const);
    return rows.slice(1).flatMap(([row, box], index) => (box && box.top < (rows[index]?.[1]?.bottom ?? 0) - 1 ? [row] : []));
  });

for (const [width, height] of WINDOWS) {
  test(`form, picture and findings can be used in a window of ${width} × ${height}`, async () => {
    const page = await open(browser, served.url, { viewport: { width, height } });
    const panes = page.locator(".panes");
    const pane = async (name: string): Promise<void> => {
      if (await panes.isVisible()) await panes.getByRole("button", { name, exact: true }).click();
      await still(page);
    };
    await pane("Form");
    assert.equal(await spill(page), 0);
    const count = field(page, "staves.count").locator("input[type=text]");
    await count.scrollIntoViewIfNeeded();
    await count.fill("69");
    await count.press("Enter");
    await until("69 staves", async () => (await figure(page, "staves")) === "69");
    assert.ok((await inSight(page, '[data-path="staves.count"] input[type=text]')) >= 40, "the field is in sight");
    await pane("Picture");
    await page.waitForSelector("[data-drawn=page]");
    await page.locator(".stage").scrollIntoViewIfNeeded();
    assert.ok((await inSight(page, ".stage")) >= 100, `the picture is ${await inSight(page, ".stage")} px high`);
    assert.deepEqual(await overlaps(page), []);
    assert.equal(await spill(page), 0);
    await pane("Findings");
    const finding = page.locator(".finding-head").first();
    await finding.scrollIntoViewIfNeeded();
    await finding.click();
    await page.locator(".finding-more").first().waitFor();
    assert.equal(await spill(page), 0);
    assert.deepEqual(await wrongs(page), []);
    await page.context().close();
  });
}

test("text twice as large leaves everything in its place", async () => {
  for (const [width, height] of [[1440, 900], [390, 844]] as const) {
    const page = await open(browser, served.url, { viewport: { width, height } });
    await page.evaluate(() => (document.documentElement.style.fontSize = "200%"));
    await still(page);
    assert.equal(await spill(page), 0);
    const cut = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>(".form-pane, .side-pane, .panel, .bar, .tools, .knobs")]
        .filter((part) => part.checkVisibility() && part.scrollWidth > part.clientWidth + 1)
        .map(({ className, scrollWidth, clientWidth }) => `${className} ${scrollWidth} ${clientWidth}`),
    );
    assert.deepEqual(cut, []);
    await page.context().close();
  }
});

/** Colours that carry meaning: as text, or as a line or surface by which something is known. */
const PAIRS: readonly (readonly [string, string, number])[] = [
  ["ink", "paper", 4.5], ["ink", "sheet", 4.5], ["ink", "shade", 4.5],
  ["faint", "paper", 4.5], ["faint", "sheet", 4.5],
  ["stop", "sheet", 4.5], ["stop", "paper", 4.5], ["care", "sheet", 4.5], ["note", "sheet", 4.5],
  ["cane-deep", "sheet", 4.5], ["cane-deep", "paper", 4.5], ["on-cane", "cane-deep", 4.5],
  ["edge", "sheet", 3], ["edge", "paper", 3], ["focus", "sheet", 3], ["focus", "paper", 3], ["focus", "shade", 3],
  ["cane-deep", "shade", 3], ["marked", "sheet", 3], ["pointed", "sheet", 3],
];

test("every colour that carries meaning stands out, in the light and in the dark", async () => {
  for (const colorScheme of ["light", "dark"] as const) {
    const page = await open(browser, served.url, { colorScheme });
    const names = [...new Set(PAIRS.flatMap(([one, other]) => [one, other]))];
    const hexes = await page.evaluate((all) => all.map((name) => getComputedStyle(document.documentElement).getPropertyValue(`--${name}`).trim()), names);
    const bright = new Map(names.map((name, index) => [name, luminance(hexes[index] ?? "")]));
    const weak = PAIRS.flatMap(([one, other, least]) => {
      const [high = 0, low = 0] = [bright.get(one) ?? 0, bright.get(other) ?? 0].toSorted((a, b) => b - a);
      const ratio = (high + 0.05) / (low + 0.05);
      return ratio < least ? [`${one} on ${other}: ${ratio.toFixed(2)}, wanted ${least}`] : [];
    });
    assert.deepEqual(weak, [], colorScheme);
    await page.context().close();
  }
});

/** Relative luminance (WCAG 2.2, definition of relative luminance). */
function luminance(hex: string): number {
  assert.match(hex, /^#[0-9a-f]{6}$/);
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

test("in forced colours what is chosen is still told apart", async () => {
  const page = await open(browser, served.url, { forcedColors: "active" });
  const outline = (selector: string): Promise<string> =>
    page.locator(selector).first().evaluate((element) => `${getComputedStyle(element).borderTopWidth} ${getComputedStyle(element).borderTopColor}`);
  assert.notEqual(await outline("[role=tab][aria-selected=true]"), await outline("[role=tab][aria-selected=false]"));
  await page.getByRole("button", { name: "Choose by look: course 2" }).click();
  await page.getByRole("button", { name: "Spiral", exact: true }).click();
  assert.notEqual(await outline(".look[aria-pressed=true]"), await outline(".look[aria-pressed=false]"));
  const patch = page.locator(".colour .swatch").first();
  assert.match(await patch.evaluate((element) => getComputedStyle(element).backgroundColor), /rgb\(/);
  assert.deepEqual(await wrongs(page), []);
  await page.keyboard.press("Escape");
  await page.setViewportSize({ width: 390, height: 844 });
  assert.notEqual(await outline(".panes > [aria-pressed=true]"), await outline(".panes > [aria-pressed=false]"));
  await page.context().close();
});

test("a whole basket is made and kept by keyboard alone", async () => {
  const page = await open(browser, empty.url);
  const focus = (): Promise<string> =>
    page.evaluate(() => {
      const at = document.activeElement;
      return at?.getAttribute("aria-label") ?? (at instanceof HTMLInputElement ? at.labels?.[0]?.textContent : at?.textContent) ?? "";
    });
  const tabTo = async (wanted: RegExp, key = "Tab"): Promise<void> => {
    for (let step = 0; step < 300; step += 1) {
      if (wanted.test(await focus())) return;
      await page.keyboard.press(key);
    }
    assert.fail(`the focus never came to ${wanted}; it is on ${await focus()}`);
  };
  await tabTo(/^Across at the rim$/);
  await page.keyboard.type("7 1/2");
  await tabTo(/^red$/);
  await page.keyboard.press("Space");
  await tabTo(/^Spiral$/);
  await page.keyboard.press("Space");
  await tabTo(/^To the left$/);
  await page.keyboard.press("Space");
  await tabTo(/^Make the pattern$/);
  await page.keyboard.press("Enter");
  await page.getByRole("dialog").waitFor({ state: "detached" });
  await page.locator(".course .used").filter({ hasText: "spiral to the left" }).waitFor();

  // A count more, the weave of a course by its look, a finding opened, the file kept.
  const before = await figure(page, "staves");
  await tabTo(/^Count: more$/);
  await page.keyboard.press("Enter");
  await until("another count", async () => (await figure(page, "staves")) !== before);
  await page.keyboard.press("Control+z");
  await until("it is back", async () => (await figure(page, "staves")) === before);
  await tabTo(/^Choose by look: course 2$/);
  await page.keyboard.press("Enter");
  await tabTo(/^Columns$/);
  await page.keyboard.press("Enter");
  await page.locator(".way").first().waitFor();
  await tabTo(/\d+ staves/);
  await page.keyboard.press("Enter");
  await page.getByRole("dialog").waitFor({ state: "detached" });
  await page.locator(".course .used").filter({ hasText: "columns" }).waitFor();
  await page.keyboard.press("Control+s");
  await page.getByRole("dialog").waitFor();
  await page.keyboard.type("keyed");
  await page.keyboard.press("Enter");
  await until("it is kept", async () => (await page.locator(".title-state").textContent()) === "saved");
  assert.match(await empty.file("keyed"), /colours/);
  assert.deepEqual(page.troubles, []);
  await page.context().close();
});
