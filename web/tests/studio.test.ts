/** The bench opened to the local network: only with the token, and for looking. */

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import type { Browser } from "playwright-core";
import { browse, figure, open, serveWith, type, unfold, until } from "./bench.ts";

let browser: Browser;

before(async () => {
  browser = await browse();
});
after(() => browser.close());

test("without the token the studio shows nothing, with it others may try but not save", async () => {
  const served = await serveWith(["--studio"], "harbour-bread-basket");
  try {
    // The address for other machines where this one is in a network, else its own.
    const address = served.urls.at(-1) ?? "";
    assert.match(address, /\?token=/);
    const stranger = await (await browser.newContext()).newPage();
    const refused = await stranger.goto(new URL("/", address).href);
    assert.equal(refused?.status(), 401);
    await stranger.locator("body", { hasText: "only with its token" }).waitFor();

    const page = await open(browser, address);
    assert.equal(new URL(page.url()).search, "", "the token does not stay in the address");
    await page.locator(".notices", { hasText: "look and try everything here, but not save" }).waitFor();
    const before = await figure(page, "staves");
    await type(page, "staves.count", "77");
    await until("the trial is computed", async () => (await figure(page, "staves")) !== before);
    assert.ok(await page.locator("button.save").isDisabled());
    assert.deepEqual(page.troubles, []);
    const written = await page.evaluate(async () => {
      const answer = await fetch("/api/patterns/stolen", {
        method: "PUT",
        headers: { "Content-Type": "application/json" },
        body: JSON.stringify({ source: "", base_hash: null }),
      });
      return answer.status;
    });
    assert.equal(written, 403);
    await assert.rejects(served.file("stolen"));
  } finally {
    await served.end();
  }
});

test("with leave to write, the studio saves", async () => {
  const served = await serveWith(["--studio-write"], "harbour-bread-basket");
  try {
    const page = await open(browser, served.urls.at(-1) ?? "");
    await unfold(page, "basket");
    await type(page, "title", "Seen from a tablet");
    await page.locator("button.save:enabled").click();
    await until("it is saved", async () => (await served.file("harbour-bread-basket")).includes("Seen from a tablet"));
    assert.deepEqual(page.troubles, []);
  } finally {
    await served.end();
  }
});
