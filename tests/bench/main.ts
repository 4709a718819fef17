import { resolve } from "node:path";
import { auditBench } from "./audit";
import { faultsBench } from "./faults";
import { kernelBench } from "./kernel";
import { machineLine } from "./measure";
import { optionsBench, optionsRun } from "./options";
import { spreadBench } from "./spread";

const sheets = (name: string) => resolve("sheets", name);
const notebooks = ["three-hulls", "one-hull-three-layouts"];

/** Everything that is measured, by name; `--quick` takes fewer sets and sizes, not fewer rounds. */
const parts: Readonly<Record<string, (quick: boolean) => void | Promise<void>>> = {
  kernel: (quick) => {
    for (const name of notebooks) {
      console.log(`\n== Kernel, ${name}\n\n${kernelBench(sheets(name), { sets: quick ? 200 : 10_000, rounds: 11 })}`);
    }
  },
  spread: () => {
    for (const name of notebooks) console.log(`\n== Spread, ${name}\n\n${spreadBench(sheets(name), 9)}`);
  },
  options: (quick) => {
    const counts = quick ? [10, 100, 1000] : [10, 100, 1000, 10_000];
    console.log(`\n== Options in and out, three-hulls\n\n${optionsBench(sheets("three-hulls"), 9, counts)}`);
  },
  audit: (quick) => {
    for (const name of notebooks) console.log(`\n== Audit, ${name}\n\n${auditBench(sheets(name), 50, quick ? 3 : 9)}`);
  },
  faults: (quick) => {
    console.log(`\n== Seeded faults\n\n${faultsBench(notebooks.map(sheets), quick ? 4 : 24)}`);
  },
  browser: async () => {
    // Loaded when it is asked for: it needs a browser and the builder.
    const { browserBench } = await import("./browser");
    console.log(`\n== In Chromium\n\n${await browserBench(9)}`);
  },
};

const [first, ...more] = process.argv.slice(2);
if (first === "options-run") {
  const [folder = "", what = "", count = "", file = ""] = more;
  optionsRun(folder, what, Number(count), file);
} else {
  const named = [first, ...more].filter((word) => word !== undefined && word in parts);
  console.log(machineLine());
  for (const name of named.length > 0 ? named : Object.keys(parts)) {
    await parts[name ?? ""]?.(process.argv.includes("--quick"));
  }
}
