// The rules of the house. Each takes the files by their paths and gives complaints: file, line, message.

import { arrows as rustArrows, bare, functions, lineAt, withoutImports } from "./rust.mjs";
import { arrows as scriptArrows } from "./typescript.mjs";

/** Circles of two files that may be, each with its reason. */
export const ALLOWED_PAIRS = [];

const MOST_LINES = 400;
const MOST_ARGUMENTS = 4;

function grouped(items, key) {
  const groups = new Map();
  for (const item of items) groups.set(key(item), [...(groups.get(key(item)) ?? []), item]);
  return groups;
}

const pick = (files, pattern) => new Map([...files].filter(([file]) => pattern.test(file)));
const crateOf = (file) => /^crates\/([^/]+)\//.exec(file)?.[1];
const SOURCE_OF_CRATE = /^crates\/[^/]+\/src\/.*\.rs$/;

/** Sets of files that all reach each other (R. E. Tarjan's strongly connected components). */
export function knots(made) {
  const next = grouped(made, ({ from }) => from);
  const number = new Map();
  const low = new Map();
  const open = [];
  const found = [];
  const visit = (file) => {
    number.set(file, number.size);
    low.set(file, number.get(file));
    open.push(file);
    for (const { to } of next.get(file) ?? []) {
      if (!number.has(to)) visit(to);
      if (open.includes(to)) low.set(file, Math.min(low.get(file), low.get(to)));
    }
    if (low.get(file) === number.get(file)) {
      const knot = open.splice(open.indexOf(file));
      if (knot.length > 1) found.push(knot.sort());
    }
  };
  for (const file of next.keys()) if (!number.has(file)) visit(file);
  return found;
}

/** No circle of imports, counted to the file that defines a name; two files only where it is allowed. */
export function circles(files, allowed = ALLOWED_PAIRS) {
  const crates = grouped(pick(files, SOURCE_OF_CRATE), ([file]) => crateOf(file));
  const made = [...crates.values()].flatMap((own) => rustArrows(new Map(own)));
  made.push(...scriptArrows(pick(files, /^web\/src\/.*\.ts$/)));
  const found = knots(made);
  const same = (pair) => (knot) => knot.join() === [...pair.files].sort().join();
  const complaints = found
    .filter((knot) => !allowed.some((pair) => same(pair)(knot)))
    .flatMap((knot) => complaintsOf(knot, made));
  const idle = allowed.filter((pair) => !found.some(same(pair)));
  for (const { files: pair } of idle) {
    complaints.push({ file: pair[0], line: 1, message: `is allowed a circle with ${pair[1]} but is in none: strike it off` });
  }
  return complaints;
}

/** One complaint for a knot, and one for the first arrow from each of its files to another. */
function complaintsOf(knot, made) {
  const within = made.filter(({ from, to }) => knot.includes(from) && knot.includes(to));
  const pairs = [...grouped(within, ({ from, to }) => `${from} ${to}`).values()];
  const lines = pairs.map(([{ from, to, name, line }]) => ({ file: from, line, message: `  ${name} → ${to}` }));
  const key = ({ file, line }) => `${file}:${String(line).padStart(6)}`;
  lines.sort((a, b) => (key(a) < key(b) ? -1 : 1));
  return [{ file: knot[0], line: 1, message: `is in an import circle of ${knot.length} files:` }, ...lines];
}

/** No source file over 400 lines. What a tool wrote is no source; such a file says so in its first line. */
export function lengths(files) {
  return [...pick(files, /\.(rs|ts|mjs|typ|html|css|ftl)$/)]
    .map(([file, text]) => ({ file, text, lines: text.split("\n").length - 1 }))
    .filter(({ text, lines }) => lines > MOST_LINES && !text.startsWith("// Generated"))
    .map(({ file, lines }) => ({ file, line: MOST_LINES + 1, message: `has ${lines} lines, more than ${MOST_LINES}` }));
}

/** No constructor with more than four arguments. */
export function constructors(files) {
  return [...pick(files, SOURCE_OF_CRATE)].flatMap(([file, text]) => {
    const code = bare(text);
    const made = functions(code).filter(({ type, args, returns }) => {
      const makes = type && new RegExp(`^(?:(?:Result|Option)\\s*<\\s*)?(?:Self|${type})\\b`).test(returns);
      return makes && !/^[^:]*\bself\b/.test(args[0]) && args.length > MOST_ARGUMENTS;
    });
    const message = ({ name, args }) => `constructor ${name} takes ${args.length} arguments, more than ${MOST_ARGUMENTS}`;
    return made.map((found) => ({ file, line: lineAt(code, found.start), message: message(found) }));
  });
}

/**
 * No public function that nothing but tests, benchmarks and examples call: its name stands somewhere in a
 * `src`, outside its own body and outside imports; a method's behind a dot or a path.
 */
export function idle(files) {
  const sources = [...pick(files, SOURCE_OF_CRATE)].map(([file, text]) => [file, withoutImports(bare(text))]);
  const complaints = [];
  for (const [file, code] of sources) {
    for (const { name, type, open, start, end } of functions(code)) {
      if (!open) continue;
      const use = new RegExp(type ? `(?:\\.\\s*${name}\\s*(?:\\(|::)|::\\s*${name}\\b)` : `(?<!\\bfn\\s+)\\b${name}\\b`, "g");
      const elsewhere = ([other, text]) =>
        [...text.matchAll(use)].some(({ index }) => other !== file || index < start || index >= end);
      if (!sources.some(elsewhere)) {
        complaints.push({ file, line: lineAt(code, start), message: `public function ${name} is called by tests at most` });
      }
    }
  }
  return complaints;
}

export const RULES = [circles, lengths, constructors, idle];
