/** Walks through a task as somebody does who sees the page and knows nothing of it, and counts each click and entry. */

import assert from "node:assert/strict";
import type { Locator, Page } from "playwright-core";
import { until } from "./bench.ts";

export class Walk {
  #steps: string[] = [];

  constructor(private readonly page: Page) {}

  get count(): number {
    return this.#steps.length;
  }

  toString(): string {
    return `${this.count}: ${this.#steps.join(", ")}`;
  }

  async press(what: Locator): Promise<void> {
    await this.#see(what);
    this.#steps.push(`press “${await named(what)}”`);
    await what.click();
  }

  async enter(where: Locator, text: string): Promise<void> {
    await this.#see(where);
    this.#steps.push(`enter ${text}`);
    await where.fill(text);
    await where.press("Tab");
  }

  async choose(where: Locator, label: string): Promise<void> {
    await this.#see(where);
    this.#steps.push(`choose ${label}`);
    await where.selectOption({ label });
  }

  /** Only what can be seen, and reached by scrolling, can be pressed; nothing may lie over it. */
  async #see(what: Locator): Promise<void> {
    await what.waitFor();
    await what.scrollIntoViewIfNeeded();
    const [wide, high] = await this.page.evaluate(() => [innerWidth, innerHeight]);
    await until("it is in sight", async () => {
      const box = await what.boundingBox();
      return box !== null && box.x >= -1 && box.y >= -1 && box.x + box.width <= (wide ?? 0) + 1 && box.y < (high ?? 0);
    });
    assert.ok(await what.isEnabled(), `${await named(what)} can be used`);
  }
}

async function named(what: Locator): Promise<string> {
  return (await what.getAttribute("aria-label")) ?? ((await what.textContent()) ?? "").trim();
}
