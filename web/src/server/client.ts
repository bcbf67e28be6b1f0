/** Asking the server. */

import type { Fault } from "../api/types.ts";
import { language } from "../words/texts.ts";

/** The server said no, and why. */
export class Refusal extends Error {
  constructor(
    readonly status: number,
    readonly fault: Fault,
  ) {
    super(fault.what);
  }
}

/** The server did not answer at all. */
export class Gone extends Error {}

export type Method = "GET" | "POST" | "PUT" | "DELETE";

/** An answer that may hold anything. */
async function ask(method: Method, path: string, body?: object | Blob, signal?: AbortSignal): Promise<Response> {
  const request: RequestInit = { method, cache: "no-store" };
  if (signal) request.signal = signal;
  const headers: Record<string, string> = { "Accept-Language": language() };
  if (method !== "GET") headers["Content-Type"] = body instanceof Blob ? body.type : "application/json";
  request.headers = headers;
  if (body) request.body = body instanceof Blob ? body : JSON.stringify(body);
  let response: Response;
  try {
    response = await fetch(path, request);
  } catch (error) {
    if (error instanceof DOMException && error.name === "AbortError") throw error;
    throw new Gone(path, { cause: error });
  }
  if (!response.ok) throw new Refusal(response.status, await fault(response));
  return response;
}

async function fault(response: Response): Promise<Fault> {
  const text = await response.text();
  try {
    return JSON.parse(text) as Fault;
  } catch {
    const what = text.trim() || response.statusText || String(response.status);
    return { what, where: response.url, how_to_mend: "", problems: [], present: null };
  }
}

/** Asks for a value; `Answer` is what the server's description promises for the path. */
export async function json<Answer>(method: Method, path: string, body?: object, signal?: AbortSignal): Promise<Answer> {
  return (await (await ask(method, path, body, signal)).json()) as Answer;
}

/** Asks for a file. */
export async function bytes(path: string, body: object, signal?: AbortSignal): Promise<ArrayBuffer> {
  return (await ask("POST", path, body, signal)).arrayBuffer();
}

/** Asks for a text. */
export async function text(path: string, body: object, signal?: AbortSignal): Promise<string> {
  return (await ask("POST", path, body, signal)).text();
}

/** Tells the server something whose answer holds nothing. */
export async function tell(method: Method, path: string, body?: object): Promise<void> {
  await ask(method, path, body);
}

/** Sends a file to be kept. */
export async function send(path: string, file: Blob): Promise<void> {
  await ask("PUT", path, file);
}
