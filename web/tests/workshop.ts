/** What the tests of the workshop's pages have in common. */

import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { PATIENCE } from "./bench.ts";

const AXE = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** Opens a page of the workshop. What it complains of fails the test through `troubles`. */
export async function openWorkshop(browser: Browser, url: string, name: string, options: BrowserContextOptions = {}): Promise<Page & { troubles: string[] }> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, locale: "en-GB", ...options });
  const page = Object.assign(await context.newPage(), { troubles: [] as string[] });
  page.setDefaultTimeout(PATIENCE);
  page.on("pageerror", (error) => page.troubles.push(String(error)));
  page.on("console", (message) => {
    if (message.type() === "error" && !/net::ERR|status of (404|409|422)/.test(message.text())) page.troubles.push(message.text());
  });
  await page.goto(new URL(`/workshop.html#${name}`, url).href);
  await page.locator("main h1").waitFor();
  return page;
}

const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/** What axe finds wrong by WCAG 2.2 AA and good practice; or by these rules only. */
export async function wrongs(page: Page, rules: readonly string[] = RULES): Promise<string[]> {
  // The page's policy forbids inline scripts; this one comes from the debugger, past the policy.
  if (!(await page.evaluate("typeof axe === 'object'"))) await page.evaluate(AXE);
  const run = `axe.run(document, { runOnly: ${JSON.stringify(rules)} }).then((result) => result.violations.map(({ id, nodes }) => id + ": " + nodes.map(({ html, failureSummary }) => html + failureSummary).join("; ")))`;
  return (await page.evaluate(run)) as string[];
}

/** By how many pixels the page is wider than its window. */
export const spill = (page: Page): Promise<number> => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
