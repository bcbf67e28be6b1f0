/** Has a packet or a plan made, tells how far it is, and stops it. */

import type { Packet } from "../api/types.ts";
import { json, tell } from "./client.ts";

const ASK_MS = 150;

export class Job {
  #id: string | undefined;
  #turn = 0;

  /** What came of it; nothing if it was stopped or another one was begun. */
  async run(path: string, order: object, heard: (packet: Packet) => void): Promise<Packet | undefined> {
    await this.stop();
    this.#turn += 1;
    const turn = this.#turn;
    let packet = await json<Packet>("POST", path, order);
    if (turn !== this.#turn) {
      await tell("DELETE", `/api/packets/${packet.id}`);
      return undefined;
    }
    this.#id = packet.id;
    while (packet.state === "working") {
      heard(packet);
      await new Promise((resolve) => setTimeout(resolve, ASK_MS));
      if (turn !== this.#turn) return undefined;
      packet = await json<Packet>("GET", `/api/packets/${packet.id}`);
      if (turn !== this.#turn) return undefined;
    }
    this.#id = undefined;
    return packet;
  }

  /** Has a search answer with the best it has; `run` tells what came of it. */
  async enough(): Promise<void> {
    if (this.#id !== undefined) await json<Packet>("POST", `/api/packets/${this.#id}/enough`);
  }

  async stop(): Promise<void> {
    const id = this.#id;
    this.#id = undefined;
    this.#turn += 1;
    if (id !== undefined) await tell("DELETE", `/api/packets/${id}`);
  }
}
