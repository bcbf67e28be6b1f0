/** The page Records: a making on a telephone, its photograph, the hand it tells of, forgetting; and the history of a pattern. */

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { readFile, readdir } from "node:fs/promises";
import { join, resolve } from "node:path";
import { after, afterEach, before, beforeEach, test } from "node:test";
import type { Browser, Page } from "playwright-core";
import { PROGRAM, browse, example, open, serve, until, type Served } from "./bench.ts";
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

/** Opens the page, with the form of the first pattern in it. */
async function openRecords(options = {}): Promise<Page & { troubles: string[] }> {
  const page = await openWorkshop(browser, served.url, "records", options);
  await page.locator("form.asked button[type=submit]").waitFor();
  return page;
}

/** The makings of the school's weekend, as the command takes them in. */
function taught(): void {
  const records = resolve("../docs/workshop/harbour-records.toml");
  execFileSync(resolve(PROGRAM), ["records", "log", records, "harbour-bread-basket.toml"], { cwd: served.folder });
}

test("a making is written down on a telephone with its photograph, taken away and forgotten", async () => {
  const page = await openRecords({ viewport: { width: 390, height: 844 } });
  await page.getByLabel("Who (a name need not be given)").fill("student 1");
  await page.getByLabel("Rows", { exact: true }).fill("36");
  await page.getByLabel("Girth at the widest, wet").fill("24 3/4 in");
  await page.getByLabel("What went wrong").fill("two staves split");
  const photo = await page.evaluate(async () => {
    const canvas = new OffscreenCanvas(64, 32);
    canvas.getContext("2d")?.fillRect(0, 0, 32, 32);
    return [...new Uint8Array(await (await canvas.convertToBlob({ type: "image/jpeg" })).arrayBuffer())];
  });
  await page.getByLabel("Photograph", { exact: true }).setInputFiles({ name: "rim.jpg", mimeType: "image/jpeg", buffer: Buffer.from(photo) });
  await page.getByRole("button", { name: "Write it down" }).click();
  await page.getByRole("row").filter({ hasText: "two staves split" }).waitFor();
  assert.equal(await spill(page), 0);
  const kept = async (): Promise<string[]> => (await readdir(served.folder)).filter((name) => /^making-[0-9a-f]{16}\.jpg$/.test(name));
  assert.equal((await kept()).length, 1);
  await page.getByLabel("Of whom").selectOption("student 1");
  const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("link", { name: "Take them away as a file" }).click()]);
  assert.match(await readFile((await download.path()) ?? "", "utf8"), /girth-wet = "628\.65 mm"/);
  await page.getByRole("button", { name: "Forget all of student 1" }).click();
  await page.getByRole("dialog").getByRole("button", { name: "Forget", exact: true }).click();
  await page.getByText("Nothing was written down yet.").waitFor();
  assert.deepEqual(await kept(), []);
  assert.deepEqual(page.troubles, []);
});

test("a photograph of a hundred million pixels is refused with a clear answer, and what was typed stays", async () => {
  const page = await openRecords();
  await page.getByLabel("Rows", { exact: true }).fill("36");
  const photo = await page.evaluate(async () => {
    const canvas = new OffscreenCanvas(64, 32);
    canvas.getContext("2d")?.fillRect(0, 0, 32, 32);
    return [...new Uint8Array(await (await canvas.convertToBlob({ type: "image/jpeg" })).arrayBuffer())];
  });
  // The frame's head (ITU-T T.81, 1992, B.2.2) says 10000 by 10000.
  const at = photo.findIndex((byte, place) => byte === 0xff && photo[place + 1] === 0xc0) + 5;
  photo.splice(at, 4, 0x27, 0x10, 0x27, 0x10);
  await page.getByLabel("Photograph", { exact: true }).setInputFiles({ name: "huge.jpg", mimeType: "image/jpeg", buffer: Buffer.from(photo) });
  await page.getByLabel("Leave place and time in the photograph").check();
  await page.getByRole("button", { name: "Write it down" }).click();
  await page.getByRole("alert").filter({ hasText: "more than 40 million pixels" }).waitFor();
  assert.equal(await page.getByLabel("Rows", { exact: true }).inputValue(), "36");
  await page.getByText("Nothing was written down yet.").waitFor();
  assert.deepEqual((await readdir(served.folder)).filter((name) => name.endsWith(".jpg")), []);
  // Without it the making is taken.
  await page.getByLabel("Photograph", { exact: true }).setInputFiles([]);
  await page.getByRole("button", { name: "Write it down" }).click();
  await page.getByRole("row").filter({ hasText: "36 rows" }).waitFor();
});

test("what makes no sense is said in the reader's language, and nothing typed is lost", async () => {
  const page = await openRecords({ locale: "de-DE" });
  await page.getByLabel("Reihen", { exact: true }).fill("36");
  await page.getByLabel("Höhe des Geflechts, nass").fill("lang");
  await page.getByRole("button", { name: "Notieren" }).click();
  await page.getByRole("alert").filter({ hasText: "lang" }).waitFor();
  assert.equal(await page.getByLabel("Reihen", { exact: true }).inputValue(), "36");
  await page.getByLabel("Höhe des Geflechts, nass").fill("300 in");
  await page.getByRole("button", { name: "Notieren" }).click();
  await page.getByRole("alert").filter({ hasText: "So weit weicht keine Hand" }).waitFor();
});

test("the hand that the log tells of is shown, taken up, said by the pattern, and taken back", async () => {
  taught();
  const page = await openRecords();
  await page.getByText("with 95 % certainty").first().waitFor();
  await page.getByText("The workshop works with the usual figures.").waitFor();
  await page.getByRole("button", { name: "Work with these figures" }).click();
  await page.getByText("The workshop works with figures of its own").waitFor();
  const bench = await open(browser, served.url);
  await bench.locator('[data-figure="hand"]').filter({ hasText: "learned from records" }).waitFor();
  await page.getByRole("button", { name: "Work with the usual figures again" }).click();
  await page.getByText("The workshop works with the usual figures.").waitFor();
  const again = await open(browser, served.url);
  assert.equal(await again.locator('[data-figure="hand"]').count(), 0);
});

test("every saved pattern has a history in words, and a broken store keeps nothing from being saved", async () => {
  const text = await example("harbour-bread-basket");
  const place = new URL("/api/patterns/harbour-bread-basket", served.url).href;
  const ask = async (method: string, path: string, body?: object): Promise<Record<string, string>> => {
    const headers = { "Content-Type": "application/json", Origin: new URL(served.url).origin };
    const response = await fetch(path, { method, headers, ...(body && { body: JSON.stringify(body) }) });
    assert.equal(response.status, 200, await response.clone().text());
    return (await response.json()) as Record<string, string>;
  };
  const { hash } = await ask("GET", place);
  const fewer = text.replace("[staves]", "[staves]\ncount = 67");
  const saved = await ask("PUT", place, { source: fewer, base_hash: hash });
  assert.equal(saved["history"], "");
  const [last, first] = (await ask("GET", `${place}/history`)) as unknown as { source: string; says: string[] }[];
  assert.equal(last?.source, fewer);
  assert.equal(first?.source, text);
  assert.match(last?.says.join("; ") ?? "", /staves? (fewer|more)/);
  assert.deepEqual(first?.says, []);

  const page = await open(browser, served.url);
  await page.getByRole("tab", { name: "Compare" }).click();
  const left = page.getByLabel("Left", { exact: true });
  await until("the history is offered", async () => (await left.locator("option", { hasText: /^Saved / }).count()) === 2);
  await left.selectOption({ index: (await left.locator("option").allTextContents()).findIndex((label) => /^Saved \d/.test(label)) });
  await page.locator(".side .hint").filter({ hasText: /staves? (fewer|more)/ }).waitFor();
  await left.selectOption({ index: (await left.locator("option").allTextContents()).findLastIndex((label) => /^Saved \d/.test(label)) });
  await page.getByRole("button", { name: "Go back to the left version" }).click();
  await page.keyboard.press("Control+s");
  await until("the first text is there again", async () => (await served.file("harbour-bread-basket")) === text);
  // What is still being kept would be written into the store that is broken now.
  const kept = async (): Promise<number> => ((await ask("GET", `${place}/history`)) as unknown as object[]).length;
  await until("and kept", async () => (await kept()) === 3);

  const { writeFile, rm } = await import("node:fs/promises");
  for (const ending of ["", "-wal", "-shm"]) await rm(join(served.folder, `workshop.db${ending}`), { force: true });
  await writeFile(join(served.folder, "workshop.db"), "this is no store");
  const now = await ask("GET", place);
  const unkept = await ask("PUT", place, { source: fewer, base_hash: now["hash"] });
  assert.match(unkept["history"] ?? "", /^Saved\. What the pattern was before is not kept/);
  assert.equal(await served.file("harbour-bread-basket"), fewer);
});

test("records read well at every width, light and dark, in German, and by axe", async () => {
  taught();
  for (const [width, colorScheme, locale] of [[390, "dark", "de-DE"], [768, "light", "en-GB"], [1440, "dark", "de-DE"]] as const) {
    const page = await openRecords({ viewport: { width, height: 900 }, colorScheme, locale });
    await page.locator(".listed tbody tr").nth(5).waitFor();
    assert.equal(await spill(page), 0, `${width} px`);
    assert.deepEqual(await wrongs(page), []);
    await page.context().close();
  }
});
