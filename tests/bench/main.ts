import { resolve } from "node:path";
import { kernelBench } from "./kernel";
import { machineLine } from "./measure";

const top = process.env.ATHWART_TOP ?? process.cwd();
const sheets = (name: string) => resolve(top, "sheets", name);
const [only = "kernel", ...more] = process.argv.slice(2);
const quick = more.includes("--quick");

console.log(machineLine());
if (only === "kernel" || only === "all") {
  for (const name of ["three-hulls", "one-hull-three-layouts"]) {
    console.log(`\n== ${name}\n`);
    console.log(kernelBench(sheets(name), { sets: quick ? 200 : 10_000, rounds: quick ? 9 : 11 }));
  }
}
