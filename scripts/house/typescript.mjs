// Reads which files a TypeScript file imports. An import of types alone counts: whoever reads the file has
// to know the other one all the same.

import { dirname, join } from "node:path/posix";

const IMPORT = /^(import|export)\s[^;]*?from\s+"(\.[^"]*)"|\bimport\s*\(?\s*"(\.[^"]*)"/gm;
/** Comments that take whole lines, in which an import may stand as an example. */
const COMMENT = /^\s*\/\/[^\n]*|^\s*\/\*[\s\S]*?\*\//gm;

/** Arrows from each file to the files that it imports; what a file passes on counts as imported. */
export function arrows(files) {
  const made = [];
  for (const [file, text] of files) {
    const code = text.replace(COMMENT, (comment) => comment.replace(/[^\n]/g, " "));
    for (const match of code.matchAll(IMPORT)) {
      const path = match[2] ?? match[3];
      const to = join(dirname(file), path);
      const line = code.slice(0, match.index).split("\n").length;
      if (files.has(to)) made.push({ from: file, to, name: path, line });
    }
  }
  return made;
}
