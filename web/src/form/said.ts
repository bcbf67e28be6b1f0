/** What is wrong with a value, as those who fill in the form are told. */

import type { Problem } from "../api/types.ts";
import { language } from "../words/texts.ts";

/** The same for those who look for it in the text: what the reader of patterns says, or in another language what it comes to. */
export function exactly(problem: Problem): string {
  const { message, help } = problem;
  return language() === "en" ? [message, help].filter(Boolean).join(". ") : said(problem);
}

export function said({ told, message, help }: Problem): string {
  return told || [message, help].filter(Boolean).join(". ");
}
