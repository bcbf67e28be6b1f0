// Copies the licence texts of all parts of the program into a folder, one folder a part: what each part
// brings along. `node scripts/dist/texts.mjs FOLDER`; the parts are those of crates/stavewright/licences.txt.

import { execFileSync } from "node:child_process";
import { copyFileSync, existsSync, mkdirSync, readFileSync, readdirSync, statSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const TEXT = /^(licen[cs]es?|copying|copyright|notice|unlicense)\b/i;

const run = (program, ...words) => execFileSync(program, words, { cwd: ROOT, encoding: "utf8", maxBuffer: 1 << 28 });
const metadata = JSON.parse(run("cargo", "metadata", "--format-version", "1", "--locked"));
const crates = new Map(metadata.packages.map((part) => [`${part.name} ${part.version}`, dirname(part.manifest_path)]));
const sysroot = run("rustc", "--print", "sysroot").trim();

/** Where the files of a part lie. */
function folder(part) {
  if (part === "the Rust standard library") return join(sysroot, "share/doc/rust");
  const script = join(ROOT, "web/node_modules", part.replace(/ \S+$/, ""));
  return crates.get(part) ?? (existsSync(script) ? script : undefined);
}

const [, , to] = process.argv;
const lines = readFileSync(join(ROOT, "crates/stavewright/licences.txt"), "utf8").split("\n");
const parts = lines.slice(1, lines.indexOf("Fonts")).filter((line) => line.includes(": ")).map((line) => line.split(": "));
const without = [];
for (const [part, licence] of parts) {
  const from = folder(part);
  if (!from) throw new Error(`${part} is not there; build the program and the page first`);
  const texts = existsSync(from) ? readdirSync(from).filter((name) => TEXT.test(name) && statSync(join(from, name)).isFile()) : [];
  if (texts.length === 0) without.push(`${part}: ${licence}`);
  const place = join(to, part.replaceAll("/", "-").replaceAll(" ", "-"));
  if (texts.length > 0) mkdirSync(place, { recursive: true });
  for (const name of texts) copyFileSync(join(from, name), join(place, name));
}
writeFileSync(
  join(to, "README.txt"),
  `The licence texts that the parts of Stavewright bring along, as LICENCES.txt names them. The fonts' are in
typst-assets. These parts bring none; the usual texts of their licences are LICENSE-MIT and LICENSE-APACHE
beside the program, or those that other parts bring along:

${without.join("\n")}
`,
);
console.log(`licence texts of ${parts.length - without.length} parts; ${without.length} bring none`);
