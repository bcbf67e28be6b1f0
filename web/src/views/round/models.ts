/** Asking for the picture: one at a time, the newest next. */

import type { DetailWord, LidWord, PictureRequest } from "../../api/types.ts";
import { bytes } from "../../server/client.ts";
import { Latest } from "../../server/latest.ts";

export interface Question {
  readonly source: string;
  readonly stage: string | undefined;
  readonly lid: LidWord;
  readonly detail: DetailWord;
  /** When the hand moved that this answers; none for a picture at rest. */
  readonly asked: number | null;
}

export interface Shot {
  readonly glb: ArrayBuffer;
  readonly question: Question;
}

export class Models {
  readonly #latest: Latest<Question, Shot>;

  /** `shown` settles when the picture is drawn; the next one is asked for after that. */
  constructor(shown: (shot: Shot) => Promise<void>, failed: (error: unknown) => void) {
    this.#latest = new Latest(ask, shown, failed);
  }

  request(question: Question): void {
    this.#latest.request(question);
  }
}

async function ask(question: Question, signal: AbortSignal): Promise<Shot> {
  const { source, detail, lid } = question;
  const body: PictureRequest = { source, detail, lid, stage: question.stage ?? null };
  return { glb: await bytes("/api/picture", body, signal), question };
}
