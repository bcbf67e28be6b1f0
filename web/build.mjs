// Builds the page into dist/ (and, with --tests, the browser tests into .tests/).
import { cp, mkdir, readdir, readFile, rm } from "node:fs/promises";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";

/** The page's scripts may weigh this much, compressed. */
const MOST_SCRIPT = 400_000;

const tests = process.argv.includes("--tests");
if (tests) {
  await rm(".tests", { recursive: true, force: true });
  const files = (await readdir("tests")).filter((name) => name.endsWith(".test.ts") || name === "measure.ts");
  await build({
    entryPoints: files.map((name) => `tests/${name}`),
    outdir: ".tests",
    outExtension: { ".js": ".mjs" },
    bundle: true,
    packages: "external",
    format: "esm",
    platform: "node",
    target: "node20",
  });
} else {
  await rm("dist", { recursive: true, force: true });
  await mkdir("dist/assets", { recursive: true });
  for (const page of ["index.html", "workshop.html"]) await cp(`src/${page}`, `dist/${page}`);
  await cp("src/mark.svg", "dist/assets/mark.svg");
  await build({
    entryPoints: { page: "src/main.ts", workshop: "src/workshop/main.ts", "painter-worker": "src/views/round/painter-worker.ts", style: "src/styles/page.css" },
    outdir: "dist/assets",
    bundle: true,
    splitting: true,
    minify: true,
    format: "esm",
    target: "es2023",
    chunkNames: "[name]-[hash]",
    legalComments: "none",
  });
  let weight = 0;
  for (const name of await readdir("dist/assets")) {
    if (name.endsWith(".js")) weight += gzipSync(await readFile(`dist/assets/${name}`)).length;
  }
  console.log(`scripts: ${Math.round(weight / 1000)} kB compressed`);
  if (weight > MOST_SCRIPT) {
    console.error(`the scripts may weigh ${MOST_SCRIPT / 1000} kB at most`);
    process.exit(1);
  }
}
