import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { readFolder } from "../../src/cli/folder";
import { calculateOptions } from "../../src/cli/options";
import { clock } from "../../src/engine/allowance";
import { isFormula } from "../../src/engine/content";
import { Engine } from "../../src/engine/engine";
import { formulaForOption } from "../../src/notebook/edit-options";
import { LiveNotebook } from "../../src/notebook/live";
import { firstOption, isOptionPage, type Notebook } from "../../src/notebook/model";
import { printPage } from "../../src/notebook/page-csv";
import { chainOf } from "../../src/study/kernel/chain";
import { seeded } from "../formula/random-expression";
import { randomInputs, resultsOf, typedText } from "../study/random-inputs";
import { median, short, table } from "./measure";

const base = 1;
const inputColumns = 40;

/** A file of so many boats: forty inputs of the chain behind the page Compare, all numbers. */
function boats(notebook: Notebook, count: number): string {
  const live = new LiveNotebook(notebook);
  const chain = chainOf(live, firstOption + base, resultsOf(notebook, firstOption + base, ["Compare"]));
  live.close();
  const places = chain.inputs.flatMap(({ name, value }, i) =>
    typeof value === "number" && !notebook.about.rows?.[name]?.choices && !name.includes("lead") ? [i] : [],
  );
  const chosen = places.slice(0, inputColumns);
  const random = seeded(count);
  const lines = Array.from({ length: count }, (_, k) => {
    const values = randomInputs(random, notebook, chain, { near: 0.02, whole: 1, picks: false });
    return [`Boat ${k + 1}`, ...chosen.map((i) => typedText(values[i] ?? null))];
  });
  return printPage([["option", ...chosen.map((i) => chain.inputs[i]?.name ?? "")], ...lines]);
}

/** Many options as columns of the notebook, each a copy of the base option with other numbers. */
function asColumns(notebook: Notebook, count: number): { name: string; rows: string[][] }[] {
  const from = firstOption + base;
  return notebook.pages.map((page) => ({
    name: page.name,
    rows: page.rows.map((row, line) => {
      if (!isOptionPage(page)) return [...row];
      const text = row[from] ?? "";
      const added = Array.from({ length: count }, (_, k) => {
        if (line === 0) return `Boat ${k + 1}`;
        return isFormula(text) ? formulaForOption(notebook, page, text, firstOption + 3 + k - from) : text;
      });
      return [...row, ...added];
    }),
  }));
}

interface Run {
  readonly seconds: number;
  readonly mebibytes: number;
  readonly bytes: number;
}

/** Most memory that this process has had, in MiB; what Node tells may be its parent's. */
function peakMemory(): number {
  try {
    return Number(/VmHWM:\s*(\d+) kB/.exec(readFileSync("/proc/self/status", "utf8"))?.[1]) / 1024;
  } catch {
    return process.resourceUsage().maxRSS / 1024;
  }
}

/** Runs in a process of its own, so that its peak memory is its own: prints what it took as JSON. */
export function optionsRun(folder: string, what: string, count: number, file: string): void {
  const notebook = readFolder(folder);
  let bytes = 0;
  let began = performance.now();
  if (what === "columns") {
    const sheets = asColumns(notebook, count);
    // It may take as long as it needs; the program itself would stop it after a minute.
    clock.now = () => 0;
    began = performance.now();
    const engine = new Engine(sheets);
    bytes = sheets.length;
    engine.dispose();
  } else {
    const write = (text: string) => {
      bytes += text.length;
    };
    calculateOptions({ write, path: (typed) => typed, input: async () => "" }, folder, {
      from: file,
      rows: "Compare.*",
      base: notebook.pages.find(isOptionPage)?.rows[0]?.[firstOption + base],
    });
  }
  const seconds = (performance.now() - began) / 1000;
  const run: Run = { seconds, mebibytes: peakMemory(), bytes };
  console.log(JSON.stringify(run));
}

function child(folder: string, what: string, count: number, file: string): Run & { readonly wall: number } {
  const began = performance.now();
  const args = [process.argv[1] ?? "", "options-run", folder, what, String(count), file];
  const { stdout, stderr, status } = spawnSync(process.execPath, args, { encoding: "utf8", env: process.env });
  if (status !== 0) throw new Error(stderr);
  return { ...(JSON.parse(stdout.trim().split("\n").at(-1) ?? "") as Run), wall: (performance.now() - began) / 1000 };
}

/** Seconds of a whole run of the terminal program, its start included. */
function terminalRun(folder: string, file: string): number {
  const began = performance.now();
  const args = [resolve("src/cli/launch.mjs"), "options", folder, "--from", file, "--rows", "Compare.*"];
  const { status, stderr } = spawnSync(process.execPath, args, { encoding: "utf8", maxBuffer: 2 ** 28 });
  if (status !== 0) throw new Error(stderr);
  return (performance.now() - began) / 1000;
}

/** Options from CSV to results in growing numbers, and a thousand of them as formula columns. */
export function optionsBench(folder: string, rounds: number, counts: readonly number[]): string {
  const place = mkdtempSync(join(tmpdir(), "athwart-bench-"));
  try {
    const notebook = readFolder(folder);
    const files = counts.map((count) => {
      const file = join(place, `boats-${count}.csv`);
      writeFileSync(file, boats(notebook, count));
      return file;
    });
    const runs = counts.map((): ReturnType<typeof child>[] => []);
    const columns: ReturnType<typeof child>[] = [];
    const terminal: number[] = [];
    const thousandFile = files[counts.indexOf(1000)] ?? "";
    // The first run builds the program where that is due.
    terminalRun(folder, thousandFile);
    for (let round = 0; round < rounds; round++) {
      for (const [i, count] of counts.entries()) runs[i]?.push(child(folder, "csv", count, files[i] ?? ""));
      terminal.push(terminalRun(folder, thousandFile));
      columns.push(child(folder, "columns", 1000, ""));
    }
    const of = (all: readonly ReturnType<typeof child>[], key: "seconds" | "wall" | "mebibytes") =>
      median(all.map((one) => one[key]));
    const rows = counts.map((count, i) => {
      const own = runs[i] ?? [];
      const before = runs[i - 1];
      const exponent = before
        ? Math.log(of(own, "seconds") / of(before, "seconds")) / Math.log(count / (counts[i - 1] ?? 1))
        : undefined;
      return [
        `${count} options from CSV`,
        `${short(of(own, "seconds"))} s`,
        `${short(of(own, "wall"))} s`,
        `${short(Math.max(...own.map(({ mebibytes }) => mebibytes)))} MiB`,
        exponent === undefined ? "" : exponent.toFixed(2),
      ];
    });
    const thousand = runs[counts.indexOf(1000)] ?? [];
    const built = [
      "1000 options as formula columns, engine built",
      `${short(of(columns, "seconds"))} s`,
      `${short(of(columns, "wall"))} s`,
      `${short(Math.max(...columns.map(({ mebibytes }) => mebibytes)))} MiB`,
      "",
    ];
    const share = median(columns.map(({ seconds }, i) => seconds / (thousand[i]?.seconds ?? 1)));
    const wholeShare = median(columns.map(({ seconds }, i) => seconds / (terminal[i] ?? 1)));
    const lines = [table([["", "work", "whole run", "peak memory", "growth exponent"], ...rows, built])];
    if (thousand.length > 0) {
      lines.push(
        `Columns over CSV for 1000 options: ${short(share)} × (work); building the columns over a whole run of the terminal program (${short(median(terminal))} s, its start included): ${short(wholeShare)} ×`,
      );
    }
    return lines.join("\n");
  } finally {
    rmSync(place, { recursive: true, force: true });
  }
}
