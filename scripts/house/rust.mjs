// Reads as much Rust as the rules of the house need: which items a file defines, what it imports, and
// which file defines each name that it mentions.

/** What may stand before an item. */
const KEYWORDS = /^(?:pub(?:\([^)]*\))?\s+)?(?:(?:default|async|unsafe|extern)\s+)*/;
const ITEM = /^(?:const\s+(?=fn\b|unsafe\b))?(?:unsafe\s+)?(fn|struct|enum|union|trait|type|const|static|mod|impl|use|macro_rules!)\s*(?:mut\s+)?([A-Za-z_]\w*)?/;
/** Comments, texts and single signs. */
const NOISE = /\/\/[^\n]*|\/\*[\s\S]*?\*\/|b?r(#*)"[\s\S]*?"\1|b?"(?:\\[\s\S]|[^"\\])*"|'(?:\\(?:u\{[^}]*\}|x..|.)|[^'\\\n])'/g;

const blank = (text) => text.replace(/[^\n]/g, " ");

/** Blanks a stretch of a text, so that every line stays where it was. */
const without = (text, start, end) => text.slice(0, start) + blank(text.slice(start, end)) + text.slice(end);

export const lineAt = (text, index) => text.slice(0, index).split("\n").length;

/** Where the bracket that opens at an index closes. */
function closing(text, open) {
  for (let at = open, depth = 0; at < text.length; at += 1) {
    if ("([{".includes(text[at])) depth += 1;
    if (")]}".includes(text[at]) && (depth -= 1) === 0) return at;
  }
  return text.length;
}

/** Where the item that begins at an index ends: behind its `;` or its block. */
function endOfItem(text, start) {
  for (let at = start; at < text.length; at += 1) {
    if (text[at] === ";") return at + 1;
    if (!"([{".includes(text[at])) continue;
    const block = text[at] === "{";
    at = closing(text, at);
    if (block) return at + 1;
  }
  return text.length;
}

/** The text without comments, strings and what is compiled for tests alone. */
export function bare(text) {
  let code = text.replace(NOISE, blank);
  for (let at = code.indexOf("#[cfg(test)]"); at >= 0; at = code.indexOf("#[cfg(test)]", at)) {
    let start = at;
    while (code[start] === "#") {
      start = closing(code, start) + 1;
      start += code.slice(start).search(/\S|$/);
    }
    code = without(code, at, endOfItem(code, start));
  }
  return code;
}

/** The items between two indices of a bare text: kind, name, whether public to all, from where to where. */
function items(code, from = 0, to = code.length) {
  const found = [];
  for (let at = from; at < to; ) {
    at += code.slice(at, to).search(/\S|$/);
    if (at >= to) break;
    if (code[at] === "#") {
      at = closing(code, at) + 1;
      continue;
    }
    const end = Math.min(endOfItem(code, at), to);
    const text = code.slice(at, end);
    const [, kind, name] = ITEM.exec(text.replace(KEYWORDS, "")) ?? [];
    if (kind) found.push({ kind, name, open: /^pub\s/.test(text), start: at, end });
    at = Math.max(end, at + 1);
  }
  return found;
}

/** The functions of a file, free ones and those of types: arguments, return type and whose they are. */
export function functions(code) {
  return items(code).flatMap((item) => {
    if (item.kind === "fn") return [{ ...item, ...signature(code, item) }];
    if (item.kind !== "impl") return [];
    const body = code.indexOf("{", item.start);
    const type = typeOf(code.slice(item.start, body));
    return items(code, body + 1, item.end - 1)
      .filter(({ kind }) => kind === "fn")
      .map((method) => ({ ...method, ...signature(code, method), type }));
  });
}

/** The type that the header of an `impl` names. */
function typeOf(header) {
  const whole = header.replace(/^impl\s*(?:<(?:[^<>]|<[^<>]*>)*>)?/, "").split(/\sfor\s/).at(-1);
  return /^\s*(?:\w+\s*::\s*)*(\w+)/.exec(whole)?.[1] ?? "Self";
}

/** Arguments and return type of a function. */
function signature(code, { start, end }) {
  const text = code.slice(start, end);
  let open = text.search(/\bfn\b/);
  // A bound in angle brackets may have brackets of its own: `<F: Fn(u8) -> u8>`.
  for (let depth = 0; open < text.length && (text[open] !== "(" || depth > 0); open += 1) {
    if (text[open] === "<") depth += 1;
    if (text[open] === ">" && text[open - 1] !== "-") depth -= 1;
  }
  const close = closing(text, open);
  const returns = /^\s*->\s*([^{;]*)/.exec(text.slice(close + 1))?.[1] ?? "";
  return { args: parts(text.slice(open + 1, close)), returns: returns.trim() };
}

/** Parts of a text between commas that lie in no bracket. */
function parts(text) {
  const found = [""];
  let depth = 0;
  for (const [index, sign] of [...text].entries()) {
    if ("([{<".includes(sign)) depth += 1;
    else if (")]}".includes(sign) || (sign === ">" && text[index - 1] !== "-" && text[index - 1] !== "=")) depth -= 1;
    if (sign === "," && depth === 0) found.push("");
    else found[found.length - 1] += sign;
  }
  return found.map((part) => part.trim()).filter((part) => part !== "");
}

/** The paths that the tree of a `use` names: segments, the name they go by here, whether all of a module. */
function branches(tree, before = []) {
  const open = tree.indexOf("{");
  if (open >= 0) {
    const stem = tree.slice(0, open).split("::").map((part) => part.trim()).filter(Boolean);
    return parts(tree.slice(open + 1, tree.lastIndexOf("}"))).flatMap((part) => branches(part, [...before, ...stem]));
  }
  const [path, alias] = tree.trim().split(/\s+as\s+/);
  const segments = [...before, ...path.split("::").map((part) => part.trim()).filter(Boolean)];
  if (segments.at(-1) === "*") return [{ segments: segments.slice(0, -1), all: true }];
  if (segments.at(-1) === "self") segments.pop();
  return [{ segments, name: alias ?? segments.at(-1) }];
}

/** What a bare text imports, inside functions too. */
function imports(code) {
  return [...code.matchAll(/\b(pub(?:\([^)]*\))?\s+)?use\s+([^;<>]+);/g)].flatMap((match) =>
    branches(match[2]).map((branch) => ({ ...branch, passedOn: match[1] !== undefined, index: match.index })),
  );
}

/** The text without its `use` and `mod` lines. */
export const withoutImports = (code) =>
  code.replace(/\b(?:pub(?:\([^)]*\))?\s+)?(?:use\s+[^;<>]+|mod\s+\w+\s*);/g, blank);

/** The files of a crate by their modules, without those compiled for tests alone. */
function modules(files) {
  const found = new Map();
  for (const [file, text] of files) {
    const inside = file.replace(/^.*?\/src\//, "").replace(/\.rs$/, "").split("/");
    if (["mod", "lib", "main"].includes(inside.at(-1))) inside.pop();
    const code = bare(text);
    const own = new Set(items(code).filter(({ kind }) => !["impl", "use", "mod"].includes(kind)).map(({ name }) => name));
    const used = imports(code);
    const names = new Map(used.filter(({ all }) => !all).map((used) => [used.name, used]));
    found.set(inside.join("::"), { file, code, inside, own, used, names, all: used.filter(({ all }) => all) });
  }
  const reached = ({ inside }) => {
    const parent = found.get(inside.slice(0, -1).join("::"));
    return inside.length === 0 || (parent && new RegExp(`\\bmod\\s+${inside.at(-1)}\\b`).test(parent.code) && reached(parent));
  };
  return new Map([...found].filter(([, module]) => reached(module)));
}

/** Finds what names mean among the modules of a crate. */
class Names {
  constructor(found) {
    this.found = found;
  }

  /** What a path means that stands in a module: a file, a module, or nothing of this crate. */
  resolve(module, segments, seen = new Set()) {
    const key = `${module.file} ${segments.join("::")}`;
    if (seen.has(key)) return undefined;
    seen.add(key);
    let here = module;
    for (const [index, segment] of segments.entries()) {
      if (segment === "self") continue;
      if (segment === "crate") here = this.found.get("");
      else if (segment === "super") here = this.found.get(here.inside.slice(0, -1).join("::"));
      else {
        const meant = this.#step(here, segment, index === segments.length - 1, seen);
        if (!meant?.module) return meant;
        here = meant.module;
      }
      if (!here) return undefined;
    }
    return { module: here };
  }

  /** What a name means that is looked up in a module. A module comes first where more of a path follows. */
  #step(module, name, last, seen) {
    const child = this.found.get([...module.inside, name].join("::"));
    if (child && !last) return { module: child };
    if (module.own.has(name)) return { file: module.file };
    const used = module.names.get(name);
    const meant = used && this.resolve(module, used.segments, seen);
    if (meant) return meant;
    if (child) return { module: child };
    for (const { segments } of module.all) {
      const inside = this.resolve(module, segments, seen);
      const meant = inside?.module && this.#step(inside.module, name, last, seen);
      if (meant) return meant;
    }
    return undefined;
  }
}

/**
 * Arrows of a crate from each file to the files that define the names it mentions. `mod` and `pub use` lines
 * are none by themselves; what is passed on by them is followed to its source.
 */
export function arrows(files) {
  const found = modules(files);
  const names = new Names(found);
  const made = [];
  for (const module of found.values()) {
    const point = (segments, index) => {
      const to = names.resolve(module, segments)?.file;
      if (to && to !== module.file) {
        made.push({ from: module.file, to, name: segments.at(-1), line: lineAt(module.code, index) });
      }
    };
    for (const { segments, passedOn, index } of module.used) if (!passedOn) point(segments, index);
    // A path, but no field behind a dot and no field's name before a colon; `..Path` is one.
    const paths = /(?<![\w:]|(?<!\.)\.)[A-Za-z_]\w*(?:\s*::\s*[A-Za-z_]\w*)*(?!\w|\s*:(?!:))/g;
    for (const match of withoutImports(module.code).matchAll(paths)) {
      const segments = match[0].split("::").map((part) => part.trim());
      if (segments[0] !== "Self" && !module.own.has(segments[0])) point(segments, match.index);
    }
  }
  return made;
}
