/** Says when a change made Stavewright choose something else where the maker left it open, and keeps what it was if asked. */

import { chosenAnew, saidAnew, type Anew } from "../findings/anew.ts";
import { set } from "../form/context.ts";
import type { Bench } from "../state/bench.ts";
import { whenSettled } from "../state/settled.ts";
import { t } from "../words/texts.ts";
import type { Notices } from "./notices.ts";

const NAME = "anew";

/** A notice stays until what it says is no longer so. */
export function tellLeftOpen(bench: Bench, notices: Notices): void {
  let told: readonly Anew[] = [];
  whenSettled(
    bench,
    (before, now) => {
      const fresh = chosenAnew(before, now);
      const fields = new Map(now.groups.flatMap((group) => group.fields.map((field) => [field.path, field])));
      const kept = told.flatMap((one): Anew[] => {
        const field = fields.get(one.path);
        const after = field?.written === null ? field.used : null;
        return after && after.word !== one.before.word ? [{ ...one, after }] : [];
      });
      told = [...kept, ...fresh.filter(({ path }) => !told.some((one) => one.path === path))];
      if (told.length === 0) notices.drop(NAME);
      else notices.tell(NAME, told.map(saidAnew).join(" "), told.map((one) => ({ label: t("bench-anew-keep", { before: one.before.text }), run: () => keep(one) })));
    },
    () => {
      told = [];
      notices.drop(NAME);
    },
  );

  function keep({ path, what, before }: Anew): void {
    bench.edit({ edits: [set(path, before.word)], label: t("bench-did-set", { what, value: before.text }) });
  }
}
