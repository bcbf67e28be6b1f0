/** The shelf as the server has it, what is done with it, and the way back. */

import type { ItemText, Shelf, ShelfAct, ShelfItem, ShelfMould } from "../api/types.ts";
import { json } from "../server/client.ts";
import { Signal } from "../state/signal.ts";
import { language } from "../words/texts.ts";

/** What was done, and what takes it back. */
interface Done {
  readonly label: string;
  readonly back: ShelfAct;
}

/** So many steps can be taken back. */
const MOST_STEPS = 50;

export class ShelfKeeper {
  readonly shelf = new Signal<Shelf | undefined>(undefined);
  /** Words that the items which are shown must hold. The server looks for them: a shelf may hold ten thousand. */
  find = "";
  #done: Done[] = [];

  get undoable(): Done | undefined {
    return this.#done.at(-1);
  }

  async look(): Promise<void> {
    const find = this.find;
    const shelf = await json<Shelf>("GET", this.#place());
    // An answer to what is not looked for any more comes too late.
    if (find === this.find) this.shelf.set(shelf);
  }

  /** Does something; `label` names it for the way back. */
  async act(act: ShelfAct, label: string): Promise<void> {
    const before = this.shelf.value;
    const after = await json<Shelf>("POST", this.#place(), act);
    const back = before && reverse(act, before, after);
    if (back) this.#done = [...this.#done, { label, back }].slice(-MOST_STEPS);
    this.shelf.set(after);
  }

  /** Takes the last step back. */
  async undo(): Promise<void> {
    const last = this.#done.pop();
    if (last) this.shelf.set(await json<Shelf>("POST", this.#place(), last.back));
  }

  #place(): string {
    return `/api/shelf?language=${language()}&find=${encodeURIComponent(this.find)}`;
  }
}

/** Where the table is. */
export const TABLE = "/api/shelf.csv";

/** What takes a step back; nothing where there is nothing to take back. */
function reverse(act: ShelfAct, before: Shelf, after: Shelf): ShelfAct | undefined {
  const newest = after.movements[0]?.id;
  const booked = newest !== undefined && newest !== before.movements[0]?.id;
  switch (act.do) {
    case "put": {
      const own = before.items.find(({ name }) => name === act.item.name);
      return own ? { do: "put", item: textOf(own), new: false } : { do: "remove", item: act.item.name };
    }
    case "book":
    case "count":
    case "remove":
    case "remove-mould":
    case "take-in":
      return booked ? { do: "undo", movement: newest } : undefined;
    case "mould": {
      const own = before.moulds.find(({ name }) => name === act.name);
      if (!own) return { do: "remove-mould", mould: act.name };
      return { do: "mould", name: own.name, place: own.place, patterns: own.patterns, note: own.note };
    }
    case "lend":
      return { do: "back", mould: act.mould };
    case "back": {
      const own = before.moulds.find(({ name }) => name === act.mould);
      return own && lending(own);
    }
    default:
      return undefined;
  }
}

function lending({ name, lent_to, due }: ShelfMould): ShelfAct | undefined {
  return lent_to === null ? undefined : { do: "lend", mould: name, to: lent_to, due: due ?? "" };
}

/** What is said of an item, as it is typed. */
export function textOf(item: ShelfItem): ItemText {
  const { name, material, colour, count, length, width, thickness, unit, holds, price, bought_from, reorder, note } = item;
  return { name, material, colour, count, length, width, thickness, unit, holds, price, bought_from, reorder, note };
}
