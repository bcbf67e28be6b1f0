/** Starts the page. */

import type { Health, PatternName, PatternText, Stock } from "./api/types.ts";
import { plainPattern } from "./patterns/shelf.ts";
import { json } from "./server/client.ts";
import { Connection } from "./server/connection.ts";
import { begin, failed, keepLanguage } from "./shell/begin.ts";
import { keepLight } from "./shell/light.ts";
import { Page } from "./shell/page.ts";
import { Bench, type Document } from "./state/bench.ts";
import { Drafts, type Draft } from "./state/drafts.ts";
import { language, t } from "./words/texts.ts";

/** What is done is kept so soon, and while a hand moves as often. */
const KEEP_MS = 50;

interface Beginning {
  readonly document: Document;
  readonly draft?: Draft;
  /** The draft comes from a window that is gone. */
  readonly orphan?: true;
  /** There was nothing to open. */
  readonly fresh?: true;
}

async function start(): Promise<void> {
  keepLight();
  const health = await begin();
  const stock = await json<Stock>("GET", `/api/stock?language=${language()}`);
  const drafts = await Drafts.of(health.folder);
  const beginning = await takenUp(drafts, health);
  const bench = new Bench(beginning.document, beginning.draft?.undo);
  const connection = new Connection(health);
  const page = new Page(bench, connection, stock, (language) => {
    keepLanguage(language);
    void keep().finally(() => location.reload());
  });

  let timer: number | undefined;
  const keep = (): Promise<void> => {
    clearTimeout(timer);
    timer = undefined;
    const [asked, typing] = [bench.asked.value, bench.typing.value];
    return drafts.put({ ...bench.document.value, undo: bench.history.stack, asked, typing });
  };
  const soon = (): void => {
    timer ??= window.setTimeout(() => void keep(), KEEP_MS);
  };
  window.addEventListener("pagehide", () => void keep());

  bench.onGone = () => connection.check();
  connection.presence.listen((presence) => {
    if (presence === "gone") page.notices.tell("server", t("bench-gone"), [], "grave");
    else {
      page.notices.tell("server", t("bench-back"));
      page.notices.drop("trouble");
      bench.look();
    }
  });

  page.begin();
  bench.look();
  takeUp(bench, beginning);
  for (const changing of [bench.document, bench.asked, bench.typing]) changing.listen(soon);
  void keep();
  page.files.outside.watch();
  void page.files.outside.look();
  welcome(page, bench, beginning);
  if (!health.may_write) page.notices.tell("read-only", t("bench-read-only"));
}

/** Does what was asked for or typed when the window was lost. */
function takeUp(bench: Bench, { draft }: Beginning): void {
  if (typeof draft?.typing === "string") bench.replace(draft.typing, t("bench-did-text"));
  for (const change of draft?.asked ?? []) bench.edit(change);
  if (typeof draft?.typing === "object") bench.edit(draft.typing);
}

/** Says what was taken up, or offers what can be begun. */
function welcome(page: Page, bench: Bench, { document, orphan, fresh }: Beginning): void {
  if (orphan) {
    const drop = (): void => bench.replace(document.saved, t("bench-did-take-file"));
    const acts = document.name === null ? [] : [{ label: t("bench-restored-drop"), run: drop }];
    page.notices.tell("restored", t("bench-restored"), acts);
  }
  if (fresh) page.files.first();
}

/** What this window had, what a crashed one left, the pattern that was asked for, or the first one. */
async function takenUp(drafts: Drafts, health: Health): Promise<Beginning> {
  const own = await drafts.own();
  if (own) return { document: own, draft: own };
  const orphan = await drafts.orphan();
  if (orphan) return { document: orphan, draft: orphan, orphan: true };
  const names = await json<PatternName[]>("GET", "/api/patterns");
  const name = health.open ?? names[0]?.name;
  if (name === undefined) {
    const source = plainPattern(t("bench-new-title"));
    return { document: { name: null, source, saved: source, hash: null }, fresh: true };
  }
  const { source, hash } = await json<PatternText>("GET", `/api/patterns/${encodeURIComponent(name)}`);
  return { document: { name, source, saved: source, hash } };
}

start().catch(failed);
