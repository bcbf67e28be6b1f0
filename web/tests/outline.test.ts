/** The outline and the side of a mould that is not round, drawn and dragged. */

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import type { Browser, Locator, Page } from "playwright-core";
import { browse, example, field, open, serve, unfold, until, type Served } from "./bench.ts";

let browser: Browser;
let served: Served;

before(async () => {
  [browser, served] = await Promise.all([browse(), serve("pilot-letter-basket")]);
  // A lid goes on no mould that was drawn by hand.
  await served.write("pilot-letter-basket", (await example("pilot-letter-basket")).replace(/^\[lid\][\s\S]*/m, ""));
});
after(async () => {
  await browser.close();
  await served.end();
});

const source = async (page: Page): Promise<string> => {
  await page.getByRole("tab", { name: "Text" }).click();
  return page.getByLabel("The pattern’s text").inputValue();
};

const says = (page: Page, what: string, text: RegExp): Promise<void> => until(what, async () => text.test(await source(page)));

const grip = (page: Page, drawing: string, name: string | RegExp): Locator =>
  page.getByRole("group", { name: drawing }).getByRole("slider", { name, exact: true });

/** Drags a grip so far on the screen. */
async function drag(page: Page, handle: Locator, right: number, down: number): Promise<void> {
  await handle.scrollIntoViewIfNeeded();
  const box = await handle.boundingBox();
  assert.ok(box);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let step = 1; step <= 5; step += 1) await page.mouse.move(x + (right * step) / 5, y + (down * step) / 5);
  await page.mouse.up();
}

const now = async (handle: Locator): Promise<number> => Number(await handle.getAttribute("aria-valuenow"));
const FROM_ABOVE = "The mould from above";
const FROM_THE_SIDE = "The mould from the side";

test("length, width and fullness of an oval are dragged, and each drag is one step back", async () => {
  const page = await open(browser, served.url);
  const length = grip(page, FROM_ABOVE, "Length of the foot");
  assert.equal(await now(length), 229);
  await drag(page, length, 12, 0);
  await until("it is longer", async () => (await now(length)) > 235);
  await page.getByRole("button", { name: "Undo: Length of the foot", exact: true }).waitFor();
  await page.getByRole("button", { name: /^Undo:/ }).click();
  await until("it is as it was", async () => (await now(length)) === 229);
  await drag(page, grip(page, FROM_ABOVE, "Fullness"), 6, -4);
  await says(page, "the fullness is written", /^fullness = 0\.\d+/m);
  await drag(page, grip(page, FROM_ABOVE, "Width of the foot"), 0, 8);
  await says(page, "the width is written", /^width = "5( \d+\/\d+)? in"/m);
  assert.equal(await field(page, "mould.base").count(), 0, "an oval has no diameter at the base");
  assert.deepEqual(page.troubles, []);
});

test("arrow keys move a grip by the marks of a rule", async () => {
  const page = await open(browser, served.url);
  await grip(page, FROM_ABOVE, "Length of the foot").press("ArrowRight");
  await says(page, "a sixteenth longer", /^length = "9 1\/16 in"/m);
  await grip(page, FROM_ABOVE, "Length of the foot").press("Shift+ArrowDown");
  await says(page, "ten sixteenths shorter", /^length = "8 7\/16 in"/m);
});

test("base and rim of the side are dragged", async () => {
  const page = await open(browser, served.url);
  const rim = grip(page, FROM_THE_SIDE, "Rim");
  const before = await now(rim);
  await drag(page, rim, 10, -10);
  await until("the rim is wider", async () => (await now(rim)) > before + 3);
  await says(page, "and higher", /^height = "4 \d+\/\d+ in"/m);
  await drag(page, grip(page, FROM_THE_SIDE, "Length of the foot"), -8, 0);
  await says(page, "the foot is shorter", /^length = "8( \d+\/\d+)? in"/m);
});

test("an oval is drawn by hand through points; a hollow is answered, and nothing lost", async () => {
  const page = await open(browser, served.url);
  await page.getByRole("button", { name: "Draw its outline by hand" }).click();
  const ray = grip(page, FROM_ABOVE, "Ray 5 of 16");
  await ray.waitFor();
  await says(page, "it is traced", /^shape = "traced"[\s\S]*^rays = \[/m);
  assert.doesNotMatch(await source(page), /^(length|width) =/m);
  const before = await now(ray);
  await drag(page, ray, 0, -3);
  await until("the ray is longer", async () => (await now(ray)) > before);
  await drag(page, ray, 0, 40);
  const wrong = page.locator(".profile-box .wrong");
  await until("the hollow is told", async () => /hollow/.test((await wrong.textContent()) ?? ""));
  // The value that was refused stands in the text; a step outward goes on from there.
  await until("the hand's last move is written", async () => /^rays = \[("[^"]*", ){4}"1 /m.test(await source(page)));
  const refused = /^rays = .*$/m.exec(await source(page))?.[0];
  await ray.press("Shift+ArrowUp");
  await until("the text goes on", async () => /^rays = .*$/m.exec(await source(page))?.[0] !== refused);
  for (let step = 0; step < 2; step += 1) {
    const undo = page.getByRole("button", { name: /^Undo:/ });
    const text = await source(page);
    await undo.click();
    await until("a step back", async () => (await source(page)) !== text);
  }
  await until("nothing is wrong", async () => ((await wrong.textContent()) ?? "") === "");
  assert.ok((await now(ray)) > before, "the drag before is still there");
  assert.deepEqual(page.troubles, []);
});

test("another shape brings the lengths that it needs", async () => {
  const page = await open(browser, served.url);
  await unfold(page, "mould");
  const shape = field(page, "mould.shape").locator("select");
  for (const [word, expected] of [
    ["rectangle", /^corner = "1 1\/2 in"/m],
    ["round", /^base = "8 3\/4 in"/m],
    ["stadium", /^length = [\s\S]*^width = /m],
  ] as const) {
    await shape.selectOption(word);
    await says(page, `it is ${word}`, new RegExp(`^shape = "${word}"`, "m"));
    await says(page, "its lengths are written", expected);
    await until("it can be woven", async () => (await page.locator(".notice", { hasText: "Line" }).count()) === 0);
  }
  assert.equal(await page.locator(".profile-box .wrong").textContent(), "");
  await grip(page, FROM_ABOVE, "Width of the foot").waitFor();
});

test("girths of an oval are dragged as those of a round mould", async () => {
  const page = await open(browser, served.url);
  await page.getByRole("button", { name: "Measure it by girths instead" }).click();
  const third = grip(page, FROM_THE_SIDE, "Measurement 3");
  await third.waitFor();
  const before = await now(third);
  await drag(page, third, 6, 0);
  await until("the girth is more", async () => (await now(third)) > before + 10);
});
