// Makes the pictures of the README and the guide anew: a basket, a page of its handout, the bench.
//
//   node scripts/pictures/pictures.mjs PROGRAM
//
// They go into docs/pictures. The program makes the basket and the handout; pdftoppm turns a page of that into a
// picture, and the browser that tests the page shows the bench.

import { execFileSync, spawn } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";

const root = resolve(dirname(fileURLToPath(import.meta.url)), "../..");
const program = resolve(process.argv[2] ?? join(root, "target/debug/stavewright"));
const pictures = join(root, "docs/pictures");
const pattern = join(root, "patterns/channel-marker.toml");
const { chromium } = createRequire(join(root, "web/package.json"))("playwright-core");

/** A finding that says stop (exit status 1) is no reason for no picture. */
function run(command, args) {
  try {
    execFileSync(command, args, { stdio: ["ignore", "ignore", "inherit"] });
  } catch (error) {
    if (command !== program || error.status !== 1) throw error;
  }
}

function basket() {
  const out = join(pictures, "basket.png");
  run(program, ["picture", pattern, "--style", "shaded", "--width", "46 mm", "--out", out]);
}

function handout(folder) {
  const pdf = join(folder, "handout.pdf");
  run(program, ["sheet", "handout", pattern, "--paper", "letter", "--out", pdf]);
  const page = ["-png", "-r", "64", "-f", "1", "-l", "1", "-singlefile", pdf, join(pictures, "handout")];
  run("pdftoppm", page);
}

/** The address that the bench prints once it listens. */
function listening(bench) {
  return new Promise((done, failed) => {
    let said = "";
    bench.stdout.on("data", (part) => {
      said += part;
      const address = said.match(/http:\/\/\S+/);
      if (address) done(address[0]);
    });
    bench.on("exit", (code) => failed(new Error(`the bench ended (${code}): ${said}`)));
  });
}

async function bench() {
  const server = spawn(program, ["bench", pattern, "--no-open"], { stdio: ["ignore", "pipe", "inherit"] });
  const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium", args: [...(process.getuid?.() === 0 ? ["--no-sandbox"] : []), "--enable-unsafe-swiftshader", "--disable-gpu-compositing", "--disable-gpu-rasterization"] });
  try {
    const page = await browser.newPage({ viewport: { width: 1180, height: 740 }, colorScheme: "light" });
    await page.goto(await listening(server));
    await page.locator(".stage canvas").waitFor();
    await page.waitForLoadState("networkidle");
    // Painted at least once after the last answer.
    await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
    await page.screenshot({ path: join(pictures, "bench.jpg"), type: "jpeg", quality: 72 });
  } finally {
    await browser.close();
    server.kill();
  }
}

mkdirSync(pictures, { recursive: true });
const folder = mkdtempSync(join(tmpdir(), "pictures-"));
try {
  basket();
  handout(folder);
  await bench();
} finally {
  rmSync(folder, { recursive: true });
}
