/** Starts the pages of the workshop: one at a time, named behind the # of the address. */

import type { Stock } from "../api/types.ts";
import { json } from "../server/client.ts";
import { begin, failed } from "../shell/begin.ts";
import { keepLight } from "../shell/light.ts";
import { language, t } from "../words/texts.ts";
import { Frame } from "./frame.ts";
import { ShelfPage } from "./shelf-page.ts";

async function start(): Promise<void> {
  keepLight();
  const health = await begin();
  const frame = new Frame(health);
  if (!health.may_write) {
    frame.notices.tell("closed", t("bench-shop-closed"));
    return;
  }
  const stock = await json<Stock>("GET", `/api/stock?language=${language()}`);
  frame.keep({ shelf: new ShelfPage(frame, stock) });
}

start().catch(failed);
