/** What the page tells of a change: what was left open, lengths to one mark, stages by one word, the whole chart, mistakes exactly. */

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import type { Browser, BrowserContextOptions } from "playwright-core";
import { browse, field, figure, open, serve, still, type, unfold, until, type Served } from "./bench.ts";

const OPEN = 'title = "Left open"\nunits = "in"\n\n[mould]\nbase = "4 15/16"\nrim = "8"\nheight = "4"\nside = "bowl"\n\n[ears]\n';
let browser: Browser;
let served: Served;

before(async () => {
  [browser, served] = await Promise.all([browse(), serve()]);
  await served.write("left-open", OPEN);
});
after(async () => {
  await browser.close();
  await served.end();
});

async function openIt(options: BrowserContextOptions = {}) {
  const page = await open(browser, served.url, options);
  await until("it is open", async () => (await page.locator(".title-text").textContent()) === "Left open");
  return page;
}

test("a count leaves the kind of stock as it was, says what it chose anew, and keeps it if asked", async () => {
  const page = await openIt();
  const stock = field(page, "staves.stock").locator("button.stock > span:not(.fact)").last();
  const before = (await stock.textContent()) ?? "";
  assert.match(before, /^flat oval reed/);
  await type(page, "staves.count", "66");
  const notice = page.locator('[data-notice="anew"]');
  await notice.getByText("Left open and chosen anew: Staves: Stock is flat oval reed").waitFor();
  await notice.getByRole("button", { name: `Keep ${before}` }).click();
  await notice.waitFor({ state: "detached" });
  await until("it is as it was", async () => (await stock.textContent()) === before);
  assert.equal(await figure(page, "staves"), "66");
  // Once it is the maker's own, another count says nothing of it.
  await type(page, "staves.count", "64");
  await until("64 staves", async () => (await figure(page, "staves")) === "64");
  assert.equal(await notice.count(), 0);
  await page.context().close();
});

test("a field and the line below it say a length to the same mark", async () => {
  const page = await openIt();
  for (const part of ["base", "staves", "rim", "handle"]) await unfold(page, part);
  const pairs = await page.locator(".field:has(.slide)").evaluateAll((fields) =>
    fields.flatMap((one) => {
      const written = one.querySelector("input[type=text]")?.getAttribute("placeholder") ?? "";
      const said = one.querySelector(".used")?.textContent ?? "";
      return / (in|mm)$/.test(written) && said !== "" ? [[written, said] as const] : [];
    }),
  );
  assert.ok(pairs.length > 5, `${pairs.length} lengths were chosen`);
  assert.deepEqual(pairs.filter(([written, said]) => !said.startsWith(`${written} (`)), []);
  await type(page, "staves.width", "15/64");
  await until("it is not rounded away", async () => ((await field(page, "staves.width").locator(".used").textContent()) ?? "").startsWith("15/64 in ("));
  await page.context().close();
});

test("a stage is called the same on the slider and under its drawing, which says where the basket is turned over", async () => {
  const page = await openIt();
  await page.waitForSelector("[data-drawn=page]");
  const slider = page.getByRole("slider", { name: "Stage", exact: true });
  const names: string[] = [];
  const count = Number(await slider.getAttribute("max")) + 1;
  await slider.focus();
  await page.keyboard.press("Home");
  for (let at = 0; at < count; at += 1) {
    names.push((await slider.getAttribute("aria-valuetext")) ?? "");
    await page.keyboard.press("ArrowRight");
  }
  await page.locator("#tab-stages").click();
  const caption = (name: string) => page.locator("#view-stages figcaption").filter({ has: page.locator("strong", { hasText: new RegExp(`^${name}$`) }) });
  await caption("Base on the mould").getByText("foot up").waitFor();
  await caption("First rows woven").getByText("the mould now stands on the base").waitFor();
  const drawn = await page.locator("#view-stages figcaption strong").allTextContents();
  const close = ["A join", "Hoops scarfed", "A scarf", "Tips trimmed", "Pin and clinch", "Beginning of the lashing", "End of the lashing", "All parts"];
  assert.deepEqual(drawn.filter((name) => !names.includes(name) && !close.includes(name)), []);
  await page.context().close();
});

test("the chart fills its pane, and on a telephone a sign says that it goes on", async () => {
  const page = await openIt();
  await page.locator("#tab-chart").click();
  await page.waitForSelector(".chart canvas[aria-label]");
  const share = (): Promise<readonly [number, number]> =>
    page.evaluate(() => {
      const [pane, scroll, canvas] = ["#view-chart", ".chart-scroll", ".chart canvas"].map((name) => document.querySelector(name));
      if (!pane || !scroll || !canvas) return [0, 0] as const;
      return [canvas.clientWidth / scroll.clientWidth, scroll.clientHeight / pane.clientHeight] as const;
    });
  await until("it is as wide and as high as there is room", async () => {
    const [wide, high] = await share();
    return wide > 0.97 && high > 0.6;
  });
  assert.equal(await page.locator(".chart-scroll").getAttribute("data-more"), null);
  await page.setViewportSize({ width: 390, height: 844 });
  await page.locator(".panes").getByRole("button", { name: "Picture", exact: true }).click();
  await until("there is more on the right", async () => (await page.locator(".chart-scroll").getAttribute("data-more")) === "right");
  assert.ok(await page.getByText("The chart goes on sideways").isVisible());
  await page.locator(".chart-scroll").evaluate((scroll) => scroll.scrollTo({ left: 1e4, behavior: "instant" }));
  await until("there is more on the left alone", async () => (await page.locator(".chart-scroll").getAttribute("data-more")) === "left");
  await still(page);
  await page.context().close();
});

test("in German a mistake is told as exactly as in English", async () => {
  const page = await openIt({ locale: "de-DE" });
  const wrong = (path: string) => field(page, path).locator(".wrong");
  for (const [path, text, told] of [
    ["staves.count", "viele", "viele ist keine ganze Zahl von 3 bis"],
    ["mould.rim", "8 inn", "„inn“ ist keine Längeneinheit; es gibt in, ft, mm, cm und m. Ist „in“ gemeint?"],
    ["mould.rim", "1,200", "1,200 lässt sich auf zwei Weisen lesen"],
    ["mould.rim", "3", "Die Seite ist eine Schale, aber der Boden ist nicht kleiner als der Rand."],
  ] as const) {
    await type(page, path, text);
    await page.locator(".field .wrong").filter({ hasText: told }).waitFor();
    await page.keyboard.press("Escape");
    await page.getByRole("button", { name: "Rückgängig" }).first().click();
    await until("it is mended", async () => (await page.locator(".field.has-wrong").count()) === 0);
  }
  assert.equal(await wrong("mould.rim").textContent(), "");
  await page.context().close();
});

test("while the hand moves the numbers come without trying what mends; when it rests, that is told too", async () => {
  const page = await openIt();
  const slider = field(page, "staves.count").locator("input[type=range]");
  await slider.scrollIntoViewIfNeeded();
  const box = await slider.boundingBox();
  assert.ok(box);
  const glances: { steps: unknown[] }[][] = [];
  page.on("response", async (response) => {
    if (response.url().endsWith("/api/edit")) glances.push(((await response.json()) as { look: { basket: { findings: { steps: unknown[] }[] } } }).look.basket.findings);
  });
  const before = await figure(page, "staves");
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width * 0.75, box.y + box.height / 2, { steps: 6 });
  await until("the count has changed", async () => (await figure(page, "staves")) !== before);
  const rested = page.waitForResponse((response) => response.url().endsWith("/api/look"));
  await page.mouse.up();
  const looked = (await (await rested).json()) as { basket: { findings: { remedy: string }[] } };
  assert.ok(looked.basket.findings.some(({ remedy }) => remedy !== ""), "what mends is told");
  assert.ok(glances.flat().length > 0);
  assert.deepEqual(glances.flat().flatMap(({ steps }) => steps), []);
  await page.context().close();
});

test("beside an open lean stands to which side the course leans now, and on how many staves it would turn", async () => {
  const page = await openIt();
  await type(page, "staves.count", "73");
  await until("73 staves", async () => (await figure(page, "staves")) === "73");
  await unfold(page, "weave");
  await page.getByRole("button", { name: "Take the courses over" }).click();
  await page.locator(".course summary").first().click();
  const weave = page.locator('.field[data-path$=".weave"]').first().locator("input[type=text]");
  await weave.fill("twill 2/2");
  await weave.press("Enter");
  const lean = page.locator('.field[data-path$=".lean"]').first();
  const leans = (): Promise<string> => lean.locator("select").inputValue();
  await until("it leans to the right", async () => (await leans()) === "right");
  await page.locator(".course").first().getByText(/^Its lean: the count decides; to the other side .*: 71, 75, 67, 79$/).waitFor();
  await type(page, "staves.count", "75");
  await until("it leans to the left", async () => (await leans()) === "left");
  await page.context().close();
});

test("the camera stays for a little more of the basket, and fits it anew when it is another", async () => {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, locale: "en-GB" });
  await context.addInitScript(() => {
    const poses: number[] = [];
    Object.assign(window, { poses });
    const post = Worker.prototype.postMessage;
    Worker.prototype.postMessage = function (this: Worker, ...told: unknown[]): void {
      const [{ call, values }] = told as [{ call?: string; values?: [{ position: number[]; target: number[] }] }];
      const [pose] = values ?? [];
      if (call === "pose" && pose) poses.push(Math.hypot(...pose.position.map((at, axis) => at - (pose.target[axis] ?? 0))));
      Reflect.apply(post, this, told);
    } as Worker["postMessage"];
  });
  const page = await context.newPage();
  await page.goto(served.url);
  await page.waitForSelector("[data-drawn=page]");
  const away = (): Promise<number> => page.evaluate(() => (window as unknown as { poses: number[] }).poses.at(-1) ?? 0);
  const drawn = async (rim: string, seen: RegExp): Promise<void> => {
    await page.locator(".stage").evaluate((stage) => delete (stage as HTMLElement).dataset["drawn"]);
    await type(page, "mould.rim", rim);
    await until(`the rim is ${rim}`, async () => seen.test((await field(page, "mould.rim").textContent()) ?? ""));
    await page.waitForSelector("[data-drawn=page]");
  };
  const first = await away();
  await drawn("8 1/8", /8 1\/8 in \(/);
  assert.ok(Math.abs((await away()) / first - 1) < 1e-6, "a little more changes nothing");
  await drawn("14", /14 in \(/);
  assert.ok((await away()) > first * 1.3, `the camera stands ${await away()} away, ${first} before`);
  await context.close();
});

test("a swipe that begins on the profile, beside its handles, scrolls the form", async () => {
  const page = await openIt({ hasTouch: true, viewport: { width: 390, height: 844 } });
  const profile = page.locator(".profile:not(.plan)");
  await profile.scrollIntoViewIfNeeded();
  const box = await profile.boundingBox();
  assert.ok(box);
  const scrolled = (): Promise<number> => page.locator(".form-pane").evaluate((pane) => pane.scrollTop);
  const before = await scrolled();
  const session = await page.context().newCDPSession(page);
  const finger = { x: box.x + box.width / 2 + 8, y: Math.min(box.y + box.height / 2, 700) };
  await session.send("Input.dispatchTouchEvent", { type: "touchStart", touchPoints: [finger] });
  for (let step = 1; step <= 10; step += 1) {
    await session.send("Input.dispatchTouchEvent", { type: "touchMove", touchPoints: [{ x: finger.x, y: finger.y - 16 * step }] });
  }
  await session.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
  await until("the form has moved", async () => (await scrolled()) > before + 60);
  await page.context().close();
});

test("what was shown of a finding is no longer said when the finding is gone", async () => {
  const page = await openIt();
  await page.waitForSelector("[data-drawn=page]");
  await unfold(page, "weave");
  const place = page.locator(".round .part-name");
  await type(page, "staves.count", "72");
  const stop = page.locator(".finding.stop .finding-head").first();
  await stop.click();
  await until("its place is told", async () => /^Shown: /.test((await place.textContent()) ?? ""));
  await type(page, "staves.count", "73");
  await until("it is gone", async () => (await page.locator(".finding.stop").count()) === 0);
  await until("and its place with it", async () => !/Shown/.test((await place.textContent()) ?? ""));
  await page.context().close();
});
