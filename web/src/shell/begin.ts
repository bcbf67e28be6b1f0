/** What every page begins with: the server's health, and texts in the reader's language. */

import type { Health } from "../api/types.ts";
import { el } from "../dom/element.ts";
import { json } from "../server/client.ts";
import { speak, type Language } from "../words/texts.ts";

const LANGUAGE = "stavewright-language";

/** Asks whether the server is there, and speaks the reader's language from then on. */
export async function begin(): Promise<Health> {
  const health = await json<Health>("GET", "/api/health");
  const spoken = wanted(health);
  speak(spoken, await texts(spoken));
  return health;
}

/** The language in which pages speak from the next start on. */
export function keepLanguage(language: string): void {
  localStorage.setItem(LANGUAGE, language);
}

function wanted(health: Health): Language {
  const known = (tag: string | null): tag is Language => health.languages.some((language) => language.tag === tag);
  const own = localStorage.getItem(LANGUAGE);
  if (known(own)) return own;
  const system = navigator.languages.map((tag) => tag.slice(0, 2)).find(known);
  return system ?? "en";
}

/** The message files, the language's own first. */
async function texts(spoken: Language): Promise<string[]> {
  const tags = spoken === "en" ? ["en"] : [spoken, "en"];
  return Promise.all(
    tags.map(async (tag) => (await fetch(`/api/messages?language=${tag}`, { cache: "no-store" })).text()),
  );
}

/** Says that the page could not be started, and lets the error be seen. */
export function failed(error: unknown): never {
  document.body.replaceChildren(
    el("p", { class: "failed", role: "alert" }, "The bench could not be started. Is the program still running? Load the page again to try once more."),
  );
  throw error;
}
