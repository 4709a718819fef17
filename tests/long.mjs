/*
 * Runs the random tests of the notebook for longer than `npm test` does, part after part; takes up to two hours.
 * Which parts: `npm run long -- history`, `tables`, `damaged`, `unfold`; all when none is named.
 */
import { spawnSync } from "node:child_process";
import { join, resolve } from "node:path";

const top = resolve(import.meta.dirname, "..");

/** @type {Record<string, { file: string, runs: Record<string, string>[] }>} */
const parts = {
  tables: { file: "tests/notebook/exchange.test.ts", runs: [{ ATHWART_TABLES: "200000" }] },
  damaged: { file: "tests/notebook/damaged.test.ts", runs: [{ ATHWART_DAMAGED: "50000" }] },
  unfold: { file: "tests/notebook/unfold-engine.test.ts", runs: [{ ATHWART_UNFOLD: "10000" }] },
  history: {
    file: "tests/notebook/history.test.ts",
    runs: [1, 2, 3, 4, 5, 6, 7, 8].map((seed) => ({ ATHWART_HISTORIES: "250", ATHWART_SEED: String(seed) })),
  },
};

const asked = process.argv.slice(2);
for (const [name, { file, runs }] of Object.entries(parts)) {
  if (asked.length > 0 && !asked.includes(name)) continue;
  for (const run of runs) {
    console.log(`${name} ${JSON.stringify(run)}`);
    const { status } = spawnSync(join(top, "node_modules/.bin/vitest"), ["run", "--project", "unit", file], {
      cwd: top,
      env: { ...process.env, ...run },
      stdio: "inherit",
    });
    if (status !== 0) process.exitCode = 1;
  }
}
