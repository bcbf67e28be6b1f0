// Checks the rules of the house (rules.mjs) on all sources, says what is wrong where, and ends with status
// 1 if anything is. `node scripts/house/house.mjs`, or `make house`.

import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { RULES } from "./rules.mjs";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
/** Folders that hold sources, and what lies in them but is none of ours. */
const FOLDERS = ["crates", "fuzz", "scripts", "web"];
const NOT_OURS = new Set(["node_modules", "dist", ".tests", "target"]);

function sources(folder) {
  return readdirSync(join(ROOT, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = `${folder}/${entry.name}`;
    if (NOT_OURS.has(entry.name)) return [];
    if (entry.isDirectory()) return sources(path);
    return /\.(rs|ts|mjs|typ|html|css|ftl)$/.test(path) ? [[path, readFileSync(join(ROOT, path), "utf8")]] : [];
  });
}

const files = new Map(FOLDERS.flatMap(sources).sort(([a], [b]) => (a < b ? -1 : 1)));
const complaints = RULES.flatMap((rule) => rule(files));
for (const { file, line, message } of complaints) console.error(`${file}:${line}: ${message}`);
if (complaints.length > 0) process.exitCode = 1;
