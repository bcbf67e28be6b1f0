/** Pictures of all looks on one basket, asked for one after the other, so that each is seen as soon as it is woven. */

import type { LookWord, Way, Ways, WaysRequest } from "../api/types.ts";
import { json } from "../server/client.ts";
import { Latest } from "../server/latest.ts";
import { LOOKS } from "./wish.ts";

export class LookPictures {
  readonly #latest: Latest<WaysRequest, void>;
  #last: WaysRequest | undefined;

  constructor(shown: (look: LookWord, way: Way | undefined) => void, failed: (error: unknown) => void) {
    this.#latest = new Latest(
      async (request, signal) => {
        for (const look of LOOKS) {
          // Another basket or other colours are asked for meanwhile: these pictures would be seen by nobody.
          if (this.#last !== request) return;
          const wish = { ...request.wish, look, lean: null, turns: null };
          const { each } = await json<Ways>("POST", "/api/ways", { ...request, wish, most: 1 }, signal);
          shown(look, each[0]);
        }
      },
      () => undefined,
      failed,
    );
  }

  request(request: WaysRequest): void {
    this.#last = request;
    this.#latest.request(request);
  }

  drop(): void {
    this.#last = undefined;
    this.#latest.drop();
  }
}
