/** Every text of the page is there in every language. */

import assert from "node:assert/strict";
import { readdir, readFile } from "node:fs/promises";
import { test } from "node:test";
import { FluentBundle, FluentResource } from "@fluent/bundle";

const MESSAGES = "../crates/words/messages";

async function ids(language: string): Promise<Map<string, Set<string>>> {
  const files = (await readdir(`${MESSAGES}/${language}`)).filter((name) => /^bench(-\w+)?\.ftl$/.test(name));
  const text = (await Promise.all(files.map((name) => readFile(`${MESSAGES}/${language}/${name}`, "utf8")))).join("\n");
  const bundle = new FluentBundle(language);
  assert.deepEqual(bundle.addResource(new FluentResource(text)), []);
  const found = [...text.matchAll(/^([a-z0-9-]+) =([^]*?)(?=^[a-z#]|$(?![^]))/gm)];
  return new Map(found.map(([, id = "", body = ""]) => [id, new Set([...body.matchAll(/\$([a-z_]+)/g)].map(([, name = ""]) => name))]));
}

test("the languages have the same messages with the same values", async () => {
  const english = await ids("en");
  assert.ok(english.size > 100);
  for (const language of await readdir(MESSAGES)) assert.deepEqual(await ids(language), english, language);
});

test("every message that the page asks for is there", async () => {
  const english = await ids("en");
  const files = (await readdir("src", { recursive: true })).filter((name) => name.endsWith(".ts"));
  const source = (await Promise.all(files.map((name) => readFile(`src/${name}`, "utf8")))).join("\n");
  const asked = [...source.matchAll(/"(bench-[a-z0-9-]+)"/g)].map(([, id = ""]) => id);
  const stems = [...source.matchAll(/`(bench-[a-z-]+-)\$/g)].map(([, stem = ""]) => stem);
  assert.ok(asked.length > 100);
  assert.deepEqual(asked.filter((id) => !english.has(id)), []);
  const unused = [...english.keys()].filter((id) => !asked.includes(id) && !stems.some((stem) => id.startsWith(stem)));
  assert.deepEqual(unused, []);
});
