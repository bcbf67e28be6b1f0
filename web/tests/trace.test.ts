/** A mould traced from a photograph, which lies under the profile while the outline is corrected by hand. */

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import type { Browser, Page } from "playwright-core";
import { browse, open, serve, until, type Served } from "./bench.ts";

let browser: Browser;
let served: Served;

before(async () => {
  [browser, served] = await Promise.all([browse(), serve("harbour-bread-basket")]);
});
after(async () => {
  await browser.close();
  await served.end();
});

/** A cone seen from very far away: 400 pixels across at the foot, 640 at the top, 400 high; or a blank sheet. */
async function photograph(page: Page, blank = false): Promise<Buffer> {
  const drawn = await page.evaluate((blank) => {
    const canvas = document.createElement("canvas");
    [canvas.width, canvas.height] = [1200, 1000];
    const pen = canvas.getContext("2d");
    if (!pen) throw new Error("no canvas");
    pen.fillStyle = "#e1e1e4";
    pen.fillRect(0, 0, 1200, 1000);
    pen.fillStyle = "#96643c";
    pen.beginPath();
    for (const [x, y] of [[400, 700], [800, 700], [920, 300], [280, 300]] as const) pen.lineTo(x, y);
    if (!blank) pen.fill();
    return canvas.toDataURL("image/png");
  }, blank);
  return Buffer.from(drawn.replace(/^[^,]*,/, ""), "base64");
}

async function ask(page: Page, photo: Buffer, values: Record<string, string>): Promise<void> {
  await page.getByRole("button", { name: "Trace a photograph" }).click();
  const dialog = page.getByRole("dialog");
  await dialog.getByLabel("Choose a photograph").setInputFiles({ name: "mould.png", mimeType: "image/png", buffer: photo });
  for (const [label, value] of Object.entries(values)) await dialog.getByLabel(label, { exact: true }).fill(value);
  await dialog.getByRole("button", { name: "Trace it" }).click();
}

const SIZE = { "Girth at the widest place": "640 mm", "Distance from the lens to the middle of the mould": "500 m" };

test("the photograph lies in scale under the profile, whose points are dragged over it", async () => {
  const page = await open(browser, served.url);
  const asked: string[] = [];
  page.on("request", (request) => asked.push(`${request.method()} ${new URL(request.url()).pathname}`));
  await ask(page, await photograph(page), SIZE);
  const side = page.getByRole("group", { name: "The mould from the side" });
  const image = side.locator("image");
  await image.waitFor({ state: "attached" });
  await page.getByRole("button", { name: "Undo: girths from a photograph", exact: true }).waitFor();
  const grips = side.getByRole("slider");
  const last = grips.last();
  await until("the last girth is what was taped", async () => Math.abs(Number(await last.getAttribute("aria-valuenow")) - 640) <= 4);
  assert.match((await page.locator(".underlay").textContent()) ?? "", /girths were traced, good to about 0\.\d %/);

  // The corner of the cone in the picture, at 920 and 300 pixels, is where the last grip is.
  const apart = await page.evaluate(() => {
    const picture = document.querySelector<SVGImageElement>(".profile image");
    const matrix = picture?.getScreenCTM();
    const dot = [...document.querySelectorAll(".profile:not(.plan) .profile-handle .dot")].at(-1)?.getBoundingClientRect();
    if (!picture || !matrix || !dot) return Infinity;
    const corner = new DOMPoint(920, 300).matrixTransform(matrix);
    return Math.hypot(dot.x + dot.width / 2 - corner.x, dot.y + dot.height / 2 - corner.y);
  });
  assert.ok(apart < 4, `they are ${apart} pixels apart`);

  const before = Number(await last.getAttribute("aria-valuenow"));
  await last.press("Shift+ArrowLeft");
  await until("the outline is corrected", async () => Number(await last.getAttribute("aria-valuenow")) < before - 10);
  assert.equal(await image.count(), 1, "the photograph stays");
  await page.getByLabel("Photograph, from hidden to full").fill("0");
  assert.equal(await image.getAttribute("opacity"), "0");
  await page.getByRole("button", { name: "Take the photograph away" }).click();
  await until("it is gone", async () => (await image.count()) === 0);
  assert.equal(asked.filter((request) => request === "POST /api/trace").length, 1);
  assert.equal(asked.filter((request) => request.startsWith("PUT")).length, 0, "nothing is kept anywhere");
  await page.getByRole("button", { name: /^Undo:/ }).click();
  await page.getByRole("button", { name: "Undo: girths from a photograph", exact: true }).click();
  await page.getByRole("button", { name: "Undo", exact: true, disabled: true }).waitFor();
  assert.deepEqual(page.troubles, []);
});

test("a picture that cannot be traced gets a reason, in German too, and the pattern stays", async () => {
  const page = await open(browser, served.url);
  await ask(page, await photograph(page, true), SIZE);
  const wrong = page.getByRole("dialog").getByRole("alert");
  await until("it is told", async () => /look alike\. Take a background/.test((await wrong.textContent()) ?? ""));
  await page.getByRole("button", { name: "Undo", exact: true, disabled: true }).waitFor();
  await page.context().close();

  const german = await open(browser, served.url, { locale: "de-DE" });
  await german.getByRole("button", { name: "Von einem Foto abnehmen" }).click();
  const dialog = german.getByRole("dialog");
  await dialog.getByRole("button", { name: "Abnehmen" }).click();
  await until("a photograph is asked for", async () => /Wähle zuerst ein Foto/.test((await dialog.getByRole("alert").textContent()) ?? ""));
  await dialog.locator("input[type=file]").setInputFiles({ name: "mould.png", mimeType: "image/png", buffer: await photograph(german) });
  await dialog.getByRole("button", { name: "Abnehmen" }).click();
  await until("a size is asked for", async () => /weder ein Umfang/i.test((await dialog.getByRole("alert").textContent()) ?? ""));
  await dialog.getByLabel("Umfang an der weitesten Stelle").fill("breit");
  await dialog.getByRole("button", { name: "Abnehmen" }).click();
  await until("what is no length is told", async () => /„breit“ ist keine Länge/.test((await dialog.getByRole("alert").textContent()) ?? ""));
});
