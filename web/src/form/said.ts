/** What is wrong with a value, as those who fill in the form are told. */

import type { Problem } from "../api/types.ts";

export function said({ told, message, help }: Problem): string {
  return told || [message, help].filter(Boolean).join(". ");
}
