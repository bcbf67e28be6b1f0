/** The page Class: whether it fits, its picture, what mends it, its sheets; sizes; axe. */

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
  served = await serve("harbour-bread-basket");
  const weekend = await readFile("../classes/harbour-weekend.toml", "utf8");
  await served.write("harbour-weekend", weekend.replace("../patterns/", ""));
});
afterEach(() => served.end());

const plan = (page: Page): Locator => page.locator("#leaf-class");

async function openClass(options = {}): Promise<Page & { troubles: string[] }> {
  const page = await openWorkshop(browser, served.url, "class", options);
  await plan(page).waitFor();
  return page;
}

async function write(field: Locator, text: string): Promise<void> {
  await field.fill(text);
  await field.press("Tab");
}

test("a weekend for twelve does not fit and says what would mend it; fewer students on more days fit, with a picture", async () => {
  const page = await openClass();
  await plan(page).getByRole("heading", { name: "What would mend it; each was tried" }).waitFor();
  assert.equal(await page.locator(".timetables").count(), 0);
  await write(page.getByLabel("How many"), "2");
  await write(page.getByRole("group", { name: "Day 2" }).getByLabel("So many times"), "6");
  await write(page.getByRole("group", { name: "Day 2" }).getByLabel("Every so many days"), "1");
  await page.locator(".timetables svg").first().waitFor();
  const steps = plan(page).locator("details table").first();
  assert.equal(await steps.isVisible(), false);
  await plan(page).getByRole("heading", { name: /\(learner\)/ }).first().click();
  await steps.waitFor();
  await page.keyboard.press("Control+s");
  await until("it is saved", async () => /times = 6/.test(await served.file("harbour-weekend")));
  assert.match(await served.file("harbour-weekend"), /# the sessions are by the clock on the wall there/);
  assert.deepEqual(page.troubles, []);
});

test("the plan is taken away as PDF and calendar", async () => {
  const page = await openClass();
  await page.getByRole("button", { name: "Sheets to print" }).click();
  await page.locator(".file a").first().waitFor();
  for (const [name, begins] of [["class.pdf", "%PDF"], ["class.ics", "BEGIN:VCALENDAR"]] as const) {
    const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("link", { name }).click()]);
    assert.ok((await readFile((await download.path()) ?? "", "utf8")).startsWith(begins), name);
  }
});

test("a search that goes on is stopped and answers with its best so far", async () => {
  // Students of three kinds for whom the teacher stands by one at a time: a plan is found at once, and whether it is the
  // best stays unknown for as long as it is looked for.
  const kind = (count: number, hand: string, more = ""): string => `[[students]]\ncount = ${count}\nhand = "${hand}"\n${more}`;
  const groups = kind(5, "learner") + kind(4, "practised") + kind(5, "learner", 'ready = ["staves tapered", "rings"]\n');
  const days = '[[days]]\ndate = "2027-04-12"\nevery = 1\ntimes = 30\nhours = ["09:00-12:00", "13:00-17:00"]\n';
  const [head = ""] = (await served.file("harbour-weekend")).split("[[students]]");
  await served.write("harbour-weekend", `${head}${groups}${days}[teacher]\nat_once = 1\nsteps = ["handle", "lashing", "staves"]\n`);
  const page = await openClass();
  await page.getByLabel("Search for at most").selectOption("240");
  const told = page.getByRole("status").filter({ hasText: /so far it ends 2027-\d\d-\d\d \d\d:\d\d/ });
  await told.waitFor();
  const stop = page.getByRole("button", { name: "Stop, and take the best so far" });
  await stop.click();
  // Half of four minutes would be looked for: the answer comes long before, and says how good it is.
  await stop.waitFor({ state: "hidden" });
  await page.locator(".leaves:not([aria-busy]) .timetables svg").first().waitFor();
  await plan(page).getByText(/^It fits: all is done on \w+ 2027-\d\d-\d\d/).waitFor();
  await plan(page).getByText(/^No plan can end before .*; whether this one is the best is not known\.$/).waitFor();
  assert.equal(await page.locator(".wrong:not(:empty)").count(), 0);
  assert.deepEqual(page.troubles, []);
});

test("a mistake is told with its place, and the plan before stays in sight", async () => {
  const page = await openClass();
  await write(page.getByLabel("Time zone"), "America/Nowhere");
  await page.getByRole("alert").filter({ hasText: "there is no time zone" }).waitFor();
  await plan(page).waitFor();
  await page.getByRole("button", { name: /^Undo/ }).click();
  await page.getByRole("alert").filter({ hasText: "there is no time zone" }).waitFor({ state: "detached" });
});

test("a class reads well at every width, light and dark, in German, and by axe", async () => {
  const text = (await served.file("harbour-weekend")).replace("count = 12", "count = 2").replace('date = "2027-04-11"', 'every = 1\ntimes = 6\ndate = "2027-04-11"');
  await served.write("harbour-weekend", text);
  for (const [width, colorScheme, locale] of [[390, "dark", "de-DE"], [768, "light", "en-GB"], [1440, "dark", "de-DE"]] as const) {
    const page = await openClass({ viewport: { width, height: 900 }, colorScheme, locale });
    await page.locator(".timetables svg").first().waitFor();
    assert.equal(await spill(page), 0, `${width} px`);
    assert.deepEqual(await wrongs(page), []);
    await page.context().close();
  }
});
