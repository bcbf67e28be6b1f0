/** The page's texts, from the message files that the server sends. */

import { FluentBundle, FluentResource, type FluentVariable } from "@fluent/bundle";

export type Language = "en" | "de";
export type Values = Record<string, FluentVariable>;

const bundles: FluentBundle[] = [];
let spoken: Language = "en";

/** Speaks a language from now on; what it lacks is said in the fallback's. */
export function speak(language: Language, files: readonly string[]): void {
  bundles.length = 0;
  spoken = language;
  for (const text of files) {
    const bundle = new FluentBundle(language, { useIsolating: false });
    bundle.addResource(new FluentResource(text));
    bundles.push(bundle);
  }
  document.documentElement.lang = language;
}

/** The language spoken. */
export function language(): Language {
  return spoken;
}

/** The text of a message, or its identifier if there is none. */
export function t(id: string, values: Values = {}): string {
  return find(id, values) ?? id;
}

/** The text of a message, if there is one. */
export function find(id: string, values: Values = {}): string | undefined {
  for (const bundle of bundles) {
    const pattern = bundle.getMessage(id)?.value;
    if (pattern) return bundle.formatPattern(pattern, values, []);
  }
  return undefined;
}

/** A number as the language writes it. */
export function number(value: number, decimals = 0): string {
  return new Intl.NumberFormat(spoken, { maximumFractionDigits: decimals }).format(value);
}
