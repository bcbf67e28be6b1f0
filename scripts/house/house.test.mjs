// Each rule catches a made-up offender, and lets pass what only looks like one.

import assert from "node:assert/strict";
import { test } from "node:test";
import { circles, constructors, idle, knots, lengths } from "./rules.mjs";
import { arrows } from "./rust.mjs";

const crate = (sources) => new Map(Object.entries(sources).map(([file, text]) => [`crates/a/src/${file}`, text]));
const page = (sources) => new Map(Object.entries(sources).map(([file, text]) => [`web/src/${file}`, text]));
const drawn = (sources) => new Set(arrows(crate(sources)).map(({ from, to }) => `${from} ${to}`.replaceAll("crates/a/src/", "")));
const said = (complaints) => complaints.map(({ file, line, message }) => `${file.replace(/^.*\/src\//, "")}:${line}: ${message.trim()}`);

test("a name is followed to the file that defines it", () => {
  const found = drawn({
    "lib.rs": "mod weave; mod top; pub use weave::Row;",
    "weave/mod.rs": "mod row; mod cell; pub use row::Row; pub use cell::*; use crate::top::Top;",
    "weave/row.rs": "use super::Top; pub struct Row(Top);",
    "weave/cell.rs": "pub struct Cell; impl Cell { fn row(self) { let _ = crate::Row::new(); } }",
    "top.rs": "use crate::weave::{self, Cell}; pub struct Top; fn f() -> Row { Part { ..weave::Row::new() } }",
  });
  const wanted = ["weave/mod.rs top.rs", "weave/row.rs top.rs", "weave/cell.rs weave/row.rs", "top.rs weave/cell.rs", "top.rs weave/row.rs"];
  assert.deepEqual(found, new Set(wanted));
});

test("what is passed on counts where it is used", () => {
  const found = drawn({
    "lib.rs": "mod rim; mod hoop; pub use rim::Rim; pub use hoop::*; fn f(hoop: Hoop) {}",
    "rim.rs": "pub struct Rim;",
    "hoop.rs": "pub struct Hoop;",
  });
  assert.deepEqual(found, new Set(["lib.rs hoop.rs"]));
});

test("comments, strings, fields and tests draw no arrow", () => {
  const found = drawn({
    "lib.rs": "mod a; mod b; #[cfg(test)] mod c;",
    "a.rs": `/// See [crate::b::B] and 'x'.
      pub fn a<'b>(at: &'b Rim) { at.b::<u8>(); say("crate::b::B", r#"crate::"b::B"#, '"'); }
      #[cfg(test)] #[allow(dead_code)] mod tests { use crate::b::B; fn f() -> [u8; 2] { B::new() } }`,
    "b.rs": "pub struct B;",
    "c.rs": "use crate::b::B;",
  });
  assert.deepEqual(found, new Set());
});

test("an import inside a function and an inline path draw arrows", () => {
  const found = drawn({
    "lib.rs": "mod a; mod b;",
    "a.rs": "pub enum Kind { One } pub fn f() { use crate::b::g; g(super::b::h) }",
    "b.rs": "pub fn g() {} pub fn h(kind: crate::a::Kind) { use crate::a::Kind::*; }",
  });
  assert.deepEqual(found, new Set(["a.rs b.rs", "b.rs a.rs"]));
});

test("circles are knots, and only those", () => {
  const arrow = (text) => ({ from: text[0], to: text[1] });
  assert.deepEqual(knots(["ab", "bc", "ca", "cd", "de", "ed", "fa"].map(arrow)), [["d", "e"], ["a", "b", "c"]]);
});

test("a circle of two needs a reason, and the reason a circle", () => {
  const files = crate({ "lib.rs": "mod a; mod b;", "a.rs": "\nuse crate::b::B; pub struct A(B);", "b.rs": "pub struct B(crate::a::A);" });
  const pair = { files: ["crates/a/src/b.rs", "crates/a/src/a.rs"], because: "they are halves of one thing" };
  assert.deepEqual(said(circles(files, [])), [
    "a.rs:1: is in an import circle of 2 files:",
    "a.rs:2: B → crates/a/src/b.rs",
    "b.rs:1: A → crates/a/src/a.rs",
  ]);
  assert.deepEqual(circles(files, [pair]), []);
  assert.match(circles(crate({ "lib.rs": "" }), [pair])[0].message, /strike it off/);
});

test("types count in a circle of the page's files", () => {
  const files = page({
    "main.ts": `import { form } from "./form/form.ts";`,
    "form/form.ts": `import {\n  field,\n} from "./field.ts";\nexport interface Form {}`,
    "form/field.ts": `// import "../main.ts"\nimport type { Form } from "./form.ts";\nimport { el } from "three";`,
  });
  assert.deepEqual(said(circles(files, []))[0], "form/field.ts:1: is in an import circle of 2 files:");
  assert.equal(circles(files, []).length, 3);
});

test("a file over 400 lines is caught, a generated one is not", () => {
  const long = "x\n".repeat(401);
  const files = new Map([["crates/a/tests/a.rs", long], ["web/src/b.ts", `// Generated\n${long}`], ["web/src/c.ts", "x\n".repeat(400)]]);
  assert.deepEqual(lengths(files).map(({ file, line }) => [file, line]), [["crates/a/tests/a.rs", 401]]);
});

test("a constructor with more than four arguments is caught", () => {
  const files = crate({
    "lib.rs": `impl<'a> Rim<'a> {
      pub fn of<F: Fn(u8, u8) -> u8>(a: u8, b: (u8, u8), c: Vec<u8>, d: F) -> Self { f(1, 2, 3, 4, 5) }
      pub(crate) fn around(a: u8, b: u8, c: HashMap<u8, u8>, d: u8, e: u8) -> Result<Self, Fault> { }
      fn grown(&self, a: u8, b: u8, c: u8, d: u8, e: u8) -> Self { }
      fn girth(a: u8, b: u8, c: u8, d: u8, e: u8) -> f64 { }
    }
    impl Make for Rim<'_> { fn make(a: u8, b: u8, c: u8, d: u8, e: u8,) -> Option<Rim<'static>> { } }`,
  });
  assert.deepEqual(said(constructors(files)), [
    "lib.rs:3: constructor around takes 5 arguments, more than 4",
    "lib.rs:7: constructor make takes 5 arguments, more than 4",
  ]);
});

test("a public function that only tests call is caught", () => {
  const files = crate({
    "lib.rs": `mod b; pub use b::{idle, busy};
      pub fn recurring() { recurring() }
      /// Like [busy].
      pub fn main() { b::busy(); let quiet = row.quiet; row.loud(); main() }
      #[cfg(test)] mod tests { fn f() { super::idle(); main() } }`,
    "b.rs": `pub fn idle() {} pub const fn busy() {}
      impl Row { pub fn quiet(&self) {} pub fn loud(&self) { main() } pub(crate) fn own(&self) {} }
      impl Weave for Row { fn woven(&self) {} }`,
  });
  assert.deepEqual(said(idle(files)), [
    "lib.rs:2: public function recurring is called by tests at most",
    "b.rs:1: public function idle is called by tests at most",
    "b.rs:2: public function quiet is called by tests at most",
  ]);
});
