/** Why something was not done, for the reader. */

import { Gone, Refusal } from "../server/client.ts";
import { t } from "../words/texts.ts";

export function trouble(error: unknown): string {
  if (error instanceof Gone) return t("bench-gone");
  if (error instanceof Refusal) return [error.fault.what, error.fault.how_to_mend].filter(Boolean).join(" ");
  throw error;
}
