import { resolve } from "node:path";
import { auditBench } from "./audit";
import type { BrowserBench } from "./browser/served";
import { faultsBench } from "./faults";
import { kernelBench } from "./kernel";
import { machineLine } from "./measure";
import { optionsBench, optionsRun } from "./options";
import { spreadBench } from "./spread";

const sheets = (name: string) => resolve("sheets", name);
const notebooks = ["three-hulls", "one-hull-three-layouts"];
const rounds = 9;

/** Everything that is measured, by name; `--quick` takes fewer sets and sizes, not fewer rounds. */
const parts: Readonly<Record<string, (quick: boolean) => void | Promise<void>>> = {
  kernel: (quick) => {
    for (const name of notebooks) {
      console.log(`\n== Kernel, ${name}\n\n${kernelBench(sheets(name), { sets: quick ? 200 : 10_000, rounds: 11 })}`);
    }
  },
  spread: () => {
    for (const name of notebooks) console.log(`\n== Spread, ${name}\n\n${spreadBench(sheets(name), rounds)}`);
  },
  options: (quick) => {
    const counts = quick ? [10, 100, 1000] : [10, 100, 1000, 10_000];
    console.log(`\n== Options in and out, three-hulls\n\n${optionsBench(sheets("three-hulls"), rounds, counts)}`);
  },
  kill: async (quick) => {
    const { killBench } = await import("./kill");
    // `npm run bench kill 50` kills it so often.
    const count = Number(process.argv.find((word) => /^\d+$/.test(word)) ?? (quick ? 5 : 100));
    console.log(`\n== The browser killed\n\n${await killBench(count)}`);
  },
  audit: (quick) => {
    for (const name of notebooks)
      console.log(`\n== Audit, ${name}\n\n${auditBench(sheets(name), 50, quick ? 3 : rounds)}`);
  },
  faults: (quick) => {
    console.log(`\n== Seeded faults\n\n${faultsBench(notebooks.map(sheets), quick ? 4 : 24)}`);
  },
  others: async (quick) => {
    const { othersBench } = await import("./others/others");
    console.log(
      `\n== Other engines, three-hulls\n\n${await othersBench(sheets("three-hulls"), quick ? 3 : 20, quick ? 3 : rounds)}`,
    );
  },
  study: () => browser("A study beside key presses, in Chromium", (one) => one.studyBench),
  edits: () => browser("Edits, in Chromium", (one) => one.editsBench),
  opening: () => browser("Opening, in Chromium", (one) => one.openingBench),
};

/** Not about speed, or long: done only when they are named. */
const onlyNamed = ["audit", "faults", "kill"];

type BrowserParts = typeof import("./browser/parts");

/** Loaded when it is asked for: it needs a browser and the builder. */
async function browser(title: string, which: (parts: BrowserParts) => BrowserBench): Promise<void> {
  const parts = await import("./browser/parts");
  console.log(`\n== ${title}\n\n${await parts.inBrowser((benched) => which(parts)(benched, rounds))}`);
}

const [first, ...more] = process.argv.slice(2);
if (first === "options-run") {
  const [folder = "", what = "", count = "", file = ""] = more;
  optionsRun(folder, what, Number(count), file);
} else {
  const named = [first, ...more].filter((word) => word !== undefined && word in parts);
  console.log(machineLine());
  const usual = Object.keys(parts).filter((name) => !onlyNamed.includes(name));
  for (const name of named.length > 0 ? named : usual) {
    await parts[name ?? ""]?.(process.argv.includes("--quick"));
  }
}
