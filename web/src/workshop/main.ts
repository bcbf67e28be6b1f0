/** Starts the pages of the workshop: one at a time, named behind the # of the address. */

import type { Stock } from "../api/types.ts";
import { json } from "../server/client.ts";
import { begin, failed } from "../shell/begin.ts";
import { keepLight } from "../shell/light.ts";
import { language, t } from "../words/texts.ts";
import { classPage } from "./class-page.ts";
import { Frame } from "./frame.ts";
import { kitsPages } from "./kits-pages.ts";
import { RecordsPage } from "./records-page.ts";
import { ShelfKeeper } from "./shelf.ts";
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
  const keeper = new ShelfKeeper();
  const around = { frame, keeper, stock, folder: health.folder };
  frame.keep({ shelf: new ShelfPage(frame, stock, keeper), ...kitsPages(around), class: classPage(around), records: new RecordsPage(frame) });
}

start().catch(failed);
