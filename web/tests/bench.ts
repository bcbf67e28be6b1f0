/** Starts the built program on a folder of its own, and a browser that looks at it. */

import { spawn, type ChildProcess } from "node:child_process";
import { mkdtemp, readFile, readlink, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium, type Browser, type BrowserContextOptions, type Page } from "playwright-core";

export const PROGRAM = process.env["STAVEWRIGHT"] ?? "../target/debug/stavewright";
const CHROMIUM = process.env["CHROMIUM"] ?? "/usr/bin/chromium";
const PATTERNS = "../patterns";
/** Each window of Chromium loads a page of its own for its address bar, which takes longer than ours. */
const ARGS = [
  "--disable-features=WebUIOmniboxPopup,WebUIOmniboxAimPopup",
  ...(process.getuid?.() === 0 ? ["--no-sandbox"] : []),
];
/** A loaded machine may take its time. */
export const PATIENCE = 30_000;

export interface Served {
  readonly url: string;
  /** All addresses that the program named: this machine's, then those for others. */
  readonly urls: readonly string[];
  readonly folder: string;
  readonly file: (name: string) => Promise<string>;
  readonly write: (name: string, text: string) => Promise<void>;
  /** Kills the server without a word, as a crash would. */
  readonly kill: () => Promise<void>;
  /** Starts it again where it was. */
  readonly again: () => Promise<void>;
  readonly end: () => Promise<void>;
}

/** The text of an example pattern. */
export function example(name: string): Promise<string> {
  return readFile(join(PATTERNS, `${name}.toml`), "utf8");
}

/** Serves a folder that holds copies of the named examples. */
export function serve(...examples: readonly string[]): Promise<Served> {
  return serveWith([], ...examples);
}

/** The same, the program being started with these flags. */
export async function serveWith(flags: readonly string[], ...examples: readonly string[]): Promise<Served> {
  const folder = await mkdtemp(join(tmpdir(), "bench-"));
  const path = (name: string): string => join(folder, `${name}.toml`);
  for (const name of examples) await writeFile(path(name), await example(name));
  let [child, urls] = await run(folder, 0, flags);
  return {
    get url() {
      return urls[0] ?? "";
    },
    get urls() {
      return urls;
    },
    folder,
    file: (name) => readFile(path(name), "utf8"),
    write: (name, text) => writeFile(path(name), text),
    kill: () => stop(child),
    again: async () => {
      [child, urls] = await run(folder, Number(new URL(urls[0] ?? "").port), flags);
    },
    end: async () => {
      await stop(child);
      await rm(folder, { recursive: true, force: true });
    },
  };
}

function run(folder: string, port: number, flags: readonly string[]): Promise<[ChildProcess, string[]]> {
  const args = ["bench", folder, "--no-open", "--port", String(port), ...flags];
  const child = spawn(PROGRAM, args, { stdio: ["ignore", "pipe", "pipe"] });
  return new Promise((resolve, reject) => {
    let said = "";
    const hear = (data: Buffer): void => {
      said += data.toString();
      if (said.includes("Ctrl-C")) resolve([child, said.match(/http:\/\/\S+/g) ?? []]);
    };
    child.stdout?.on("data", hear);
    child.stderr?.on("data", hear);
    child.on("error", reject);
    child.on("exit", (code) => reject(new Error(`the server ended with ${code}: ${said}`)));
  });
}

async function stop(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const ended = new Promise((resolve) => child.once("exit", resolve));
  child.kill("SIGKILL");
  await ended;
}

/** A browser; without `webgl` as on a machine that has none. */
export function browse({ webgl = true } = {}): Promise<Browser> {
  const drawing = webgl
    ? ["--enable-unsafe-swiftshader", "--disable-gpu-compositing", "--disable-gpu-rasterization"]
    : ["--disable-3d-apis", "--disable-gpu"];
  return chromium.launch({ executablePath: CHROMIUM, args: [...drawing, ...ARGS] });
}

/** A browser that keeps what it keeps in this folder, and that can be ended as a loss of power would. */
export async function browseIn(folder: string): Promise<{ page: Page; kill: () => Promise<void> }> {
  const context = await chromium.launchPersistentContext(folder, { executablePath: CHROMIUM, args: [...ARGS], locale: "en-GB" });
  const page = context.pages()[0] ?? (await context.newPage());
  page.setDefaultTimeout(PATIENCE);
  const kill = async (): Promise<void> => {
    const ended = new Promise((resolve) => context.once("close", resolve));
    // Chromium says on its folder's lock whose it is: host, dash, number of the process.
    process.kill(Number((await readlink(join(folder, "SingletonLock"))).split("-").at(-1)), "SIGKILL");
    await ended;
    // The lock outlives the process, and says nothing any more.
    await rm(join(folder, "SingletonLock"), { force: true });
  };
  return { page, kill };
}

/** Opens the page and waits for its first numbers. What the page complains of fails the test through `troubles`. */
export async function open(
  browser: Browser,
  url: string,
  options: BrowserContextOptions = {},
): Promise<Page & { troubles: string[] }> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, locale: "en-GB", ...options });
  const page = Object.assign(await context.newPage(), { troubles: [] as string[] });
  page.setDefaultTimeout(PATIENCE);
  page.on("pageerror", (error) => page.troubles.push(String(error)));
  page.on("console", (message) => {
    if (message.type() === "error" && !/net::ERR|status of (409|422)/.test(message.text())) page.troubles.push(message.text());
  });
  await page.goto(url);
  await page.waitForSelector(".figures dd", { state: "attached" });
  return page;
}

/** A main figure of the basket, as it stands on the page. */
export async function figure(page: Page, id: string): Promise<string> {
  return (await page.locator(`[data-figure="${id}"] dd`).textContent()) ?? "";
}

/** Waits until something holds. */
export async function until(what: string, holds: () => Promise<boolean>): Promise<void> {
  const end = Date.now() + PATIENCE;
  while (!(await holds())) {
    if (Date.now() > end) throw new Error(`waited in vain: ${what}`);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

/** Waits until nothing moves or fades any more and what was asked for is painted. */
export async function still(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const ends = document.getAnimations().filter((moving) => moving.effect?.getComputedTiming().endTime !== Infinity);
    await Promise.allSettled(ends.map((moving) => moving.finished));
    for (let frame = 0; frame < 2; frame += 1) await new Promise((resolve) => requestAnimationFrame(resolve));
  });
}

/** A field of the form by the path of its value. */
export function field(page: Page, path: string) {
  return page.locator(`.field[data-path="${path}"]`);
}

/** Unfolds a part of the form, with what is rarely changed. */
export async function unfold(page: Page, id: string): Promise<void> {
  const part = page.locator(`#part-${id}`);
  if ((await part.getAttribute("open")) === null) await part.locator("> summary").click();
  const rest = part.locator("> form > .fields > .rest");
  if ((await rest.isVisible()) && (await rest.getAttribute("open")) === null) await rest.locator("> summary").click();
}

/** Types into a field as a maker does. */
export async function type(page: Page, path: string, text: string): Promise<void> {
  const input = field(page, path).locator("input[type=text]");
  await input.fill(text);
  await input.press("Enter");
}
