/** Between what a maker types and what a pattern holds. */

import type { EditValue, Field } from "../api/types.ts";

/** A written value as it stands in its text field. */
export function typed(field: Field): string {
  const { written } = field;
  if (written === null) return "";
  if (field.kind === "share" && typeof written === "number") return String(+(written * 100).toFixed(4));
  if (field.kind === "colours") return coloursTyped(written);
  if (field.kind === "chart" && Array.isArray(written)) return written.map(plain).join("\n");
  return Array.isArray(written) ? written.map(plain).join(", ") : plain(written);
}

/** What to write for a text. What makes no sense is written as it is typed; the server says why not. */
export function meant(field: Field, text: string): EditValue {
  const trimmed = text.trim();
  switch (field.kind) {
    case "count":
      return /^\d{1,9}$/.test(trimmed) ? Number(trimmed) : trimmed;
    case "share":
      return share(trimmed);
    case "lengths":
      return split(trimmed, ",");
    case "chart":
      return text.replace(/\s+$/, "").split("\n");
    case "colours":
      return coloursMeant(trimmed);
    case "wood":
      return trimmed.includes(",") ? split(trimmed, ",") : trimmed;
    default:
      return trimmed;
  }
}

function plain(value: EditValue): string {
  return typeof value === "object" ? JSON.stringify(value) : String(value);
}

function share(text: string): EditValue {
  const percent = Number(text.replace("%", "").replace(",", ".").trim());
  return text === "" || Number.isNaN(percent) ? text : +(percent / 100).toFixed(6);
}

function split(text: string, at: string): string[] {
  return text.split(at).map((part) => part.trim()).filter((part) => part !== "");
}

/** One weaver's colours in turn are joined by `+`, the weavers by commas. */
function coloursTyped(value: EditValue): string {
  if (!Array.isArray(value)) return plain(value);
  return value.map((one) => (Array.isArray(one) ? one.map(plain).join(" + ") : plain(one))).join(", ");
}

function coloursMeant(text: string): EditValue {
  const weavers = split(text, ",").map((weaver): EditValue => {
    const strands = split(weaver, "+");
    return strands.length > 1 ? strands : (strands[0] ?? weaver);
  });
  const only = weavers[0];
  return weavers.length === 1 && typeof only === "string" ? only : weavers;
}
