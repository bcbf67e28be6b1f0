/** Reading what is written in a plan, whose form the maker's own text decides. */

function at(value: unknown, key: string): unknown {
  return typeof value === "object" && value !== null && !Array.isArray(value) ? (value as Record<string, unknown>)[key] : undefined;
}

/** What stands under a path of keys. */
export function get(values: unknown, path: string): unknown {
  return path.split(".").reduce(at, values);
}

/** The same as text; empty where nothing stands. */
export function textAt(values: unknown, path: string): string {
  const value = get(values, path);
  return typeof value === "string" || typeof value === "number" ? String(value) : "";
}

/** The entries of a list. */
export function listAt(values: unknown, path: string): readonly unknown[] {
  const value = get(values, path);
  return Array.isArray(value) ? value : [];
}

/** The texts of a list. */
export function textsAt(values: unknown, path: string): readonly string[] {
  return listAt(values, path).filter((entry) => typeof entry === "string");
}

/** Keys and texts of a table. */
export function pairsAt(values: unknown, path: string): readonly (readonly [string, string])[] {
  const value = get(values, path);
  if (typeof value !== "object" || value === null || Array.isArray(value)) return [];
  return Object.entries(value).filter((pair): pair is [string, string] => typeof pair[1] === "string");
}
