/**
 * Starts the terminal program: `npm run -s athwart -- <arguments>`. Its bundle in dist/terminal is built again when
 * anything it is made of is newer. Plain JavaScript, because it runs before anything has been built.
 */
import { spawnSync } from "node:child_process";
import { mkdirSync, readdirSync, renameSync, rmSync, statSync, utimesSync } from "node:fs";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";

const top = resolve(import.meta.dirname, "../..");
const folder = join(top, "dist/terminal");
const bundle = join(folder, "athwart.js");
const outside = ["package.json", "package-lock.json", "vite.config.ts"].map((name) => join(top, name));

/**
 * Milliseconds since 1970 of the last change in a folder; a file that was removed counts, through its folder's time.
 *
 * @param {string} path
 * @returns {number}
 */
function lastChange(path) {
  let latest = statSync(path).mtimeMs;
  for (const entry of readdirSync(path, { withFileTypes: true })) {
    const inside = join(path, entry.name);
    latest = Math.max(latest, entry.isDirectory() ? lastChange(inside) : statSync(inside).mtimeMs);
  }
  return latest;
}

function isBuilt() {
  const built = statSync(bundle, { throwIfNoEntry: false })?.mtimeMs;
  if (built === undefined) return false;
  return built >= Math.max(lastChange(join(top, "src")), ...outside.map((path) => statSync(path).mtimeMs));
}

/** Builds beside the bundle and then takes its place in one move, so that two starts at once cannot meet half a file. */
function build() {
  const began = new Date();
  const aside = join(top, "dist", `terminal-${process.pid}`);
  const vite = join(top, "node_modules/vite/bin/vite.js");
  try {
    const run = spawnSync(
      process.execPath,
      [vite, "build", "--mode", "terminal", "--outDir", aside, "--logLevel", "warn"],
      { cwd: top, encoding: "utf8" },
    );
    if (run.status !== 0) {
      process.stderr.write(`${run.stdout ?? ""}${run.stderr ?? ""}`);
      process.stderr.write("The terminal program could not be built: run `npm ci`, then read the lines above.\n");
      process.exit(1);
    }
    mkdirSync(folder, { recursive: true });
    // What changed while the build ran must count as newer.
    utimesSync(join(aside, "athwart.js"), began, began);
    renameSync(join(aside, "athwart.js"), bundle);
  } finally {
    rmSync(aside, { recursive: true, force: true });
  }
}

if (!isBuilt()) build();

// npm runs scripts from the top of the project; paths in the arguments count from where the command was typed.
const typedIn = process.env.INIT_CWD;
if (typedIn !== undefined && process.cwd() === top) process.chdir(typedIn);

await import(pathToFileURL(bundle).href);
