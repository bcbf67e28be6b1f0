/** The lid of a basket, shut, open and off. */

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import type { Browser, Request } from "playwright-core";
import { browse, open, serve, until, type Served } from "./bench.ts";

let browser: Browser;
let served: Served;

before(async () => {
  [browser, served] = await Promise.all([browse(), serve("pilot-letter-basket", "harbour-bread-basket")]);
});
after(async () => {
  await browser.close();
  await served.end();
});

test("the lid is shown shut, open and off, on the finished basket alone", async () => {
  const page = await open(browser, `${served.url}#pilot-letter-basket`);
  const answers = new Map<string, number>();
  page.on("response", (response) => {
    if (!response.url().endsWith("/api/picture")) return;
    const { lid } = (response.request() as Request).postDataJSON() as { lid: string };
    // What is still under way when the page is closed has no body any more.
    response.body().then((body) => answers.set(lid, body.length), () => undefined);
  });
  await page.locator(".title").click();
  await page.getByRole("dialog").getByRole("button", { name: "pilot-letter-basket.toml" }).click();
  const lid = page.getByRole("group", { name: "Lid", exact: true });
  await lid.waitFor();
  for (const pose of ["open", "off", "closed"]) {
    const button = lid.getByRole("button", { name: pose, exact: true });
    await button.focus();
    await page.keyboard.press("Enter");
    await until(`it is drawn ${pose}`, async () => (answers.get(pose) ?? 0) > 1000);
    assert.equal(await button.getAttribute("aria-pressed"), "true");
  }
  const stage = page.getByRole("slider", { name: "Stage", exact: true });
  await stage.fill("0");
  await until("the bare mould has none", async () => !(await lid.isVisible()));
  await stage.fill((await stage.getAttribute("max")) ?? "");
  await until("it is there again", async () => lid.isVisible());

  await page.locator("#tab-side").click();
  for (const name of ["From the side, the lid closed", "From the side, the lid open"]) {
    await page.locator(".gallery.side figure").filter({ hasText: name }).locator("svg").waitFor();
  }
  await page.locator("#tab-round").click();
  await page.locator(".title").click();
  await page.getByRole("dialog").getByRole("button", { name: "harbour-bread-basket.toml" }).click();
  await until("a basket without a lid shows none", async () => !(await lid.isVisible()));
  assert.deepEqual(page.troubles, []);
});
