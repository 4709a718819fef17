import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { readFolder } from "../../../src/cli/folder";
import { setCells } from "../../../src/notebook/edit-cells";
import { firstOption, type Notebook, type Position, pageById, textAt } from "../../../src/notebook/model";
import { resultsOf } from "../../study/random-inputs";
import { alternate, median, ratio, short, table } from "../measure";
import { type HeldWorkbook, ownEngine, wasmEngine } from "./engines";
import { convert, hasHeadless, shownBy } from "./headless";
import { type PlainWorkbook, plainWorkbook } from "./plain-workbook";

/** Six digits are what the least exact of them shows. */
const alike = (a: string, b: string): boolean =>
  a === b || Math.abs(Number(a) - Number(b)) <= 1e-6 * Math.max(1e-3, Math.abs(Number(a)));

/** In how many of all number results of the last option another engine shows the same as the program's. */
function agreement(
  results: readonly Position[],
  own: (at: Position) => string,
  other: (at: Position) => string,
): string {
  const numbers = results.filter((at) => Number.isFinite(Number(own(at))));
  return `${numbers.filter((at) => alike(own(at), other(at))).length} of ${numbers.length}`;
}

/** Nudges a number, so that no engine can rest on the last one. */
function* nudged(notebook: Notebook, at: Position): Generator<number, never, void> {
  const page = pageById(notebook, at.page);
  const value = page ? Number(textAt(page, at.row, at.column)) : 0;
  for (let i = 1; ; i++) yield value * (1 + (i % 7) * 1e-3);
}

function edits(held: readonly HeldWorkbook[], { notebook, shared, single }: PlainWorkbook, rounds: number): string[][] {
  const [own] = held;
  const runs = 3;
  const timed = (at: Position) =>
    alternate(
      held.map(({ name, write }) => {
        const next = nudged(notebook, at);
        const once = () => {
          for (let i = 0; i < runs; i++) write(at, next.next().value);
        };
        return { name, runs, once };
      }),
      rounds,
    );
  const [all, one] = [timed(shared), timed(single)];
  return held.map(({ name, built }, i) => {
    const cells = [all, one].flatMap((times) => {
      const [mine, this_] = [times[0], times[i]];
      return mine && this_ ? [`${short(this_.micros / 1000)} ms`, `${short(ratio(this_, mine))} ×`] : [];
    });
    return [name, `${short(built / 1000)} s`, `${short(built / (own?.built ?? 1))} ×`, ...cells];
  });
}

/** Median of whole runs of the converter, with the shared input changed before each. */
function converted({ notebook, shared }: PlainWorkbook, folder: string, rounds: number): number {
  const next = nudged(notebook, shared);
  const times: number[] = [];
  for (let round = 0; round <= rounds; round++) {
    const changed = setCells(notebook, [{ ...shared, text: String(next.next().value) }]);
    const took = convert(changed, folder);
    // The first run makes its profile and does not count.
    if (round > 0) times.push(took);
  }
  return median(times);
}

/** The worked notebook in other spreadsheet engines, our functions unfolded into plain formulas. */
export async function othersBench(folder: string, options: number, rounds: number): Promise<string> {
  const plain = plainWorkbook(readFolder(folder), options);
  const { notebook } = plain;
  const held = [ownEngine(notebook), await wasmEngine(notebook)];
  const [own, wasm] = held as [HeldWorkbook, HeldWorkbook];
  const results = resultsOf(notebook, firstOption + options - 1);
  const lines = [
    `${options} options, ${plain.formulas} plain formulas; ${plain.unfolded} rows of calls unfolded, ${plain.values} cells hold the value of a function that cannot be unfolded`,
    `The same numbers as the program's engine to six digits, last option: ${agreement(results, own.shows, wasm.shows)} in WebAssembly`,
  ];
  if (hasHeadless()) {
    const place = mkdtempSync(join(tmpdir(), "athwart-bench-"));
    try {
      convert(notebook, place);
      lines.push(`${agreement(results, own.shows, shownBy(notebook, place))} in the headless converter`);
      const whole = converted(plain, place, rounds);
      const began = performance.now();
      ownEngine(notebook).close();
      const built = performance.now() - began;
      lines.push(
        `Headless converter: whole run with the shared input changed ${short(whole / 1000)} s; the program's engine builds and calculates the same in ${short(built / 1000)} s`,
      );
    } finally {
      rmSync(place, { recursive: true, force: true });
    }
  } else lines.push("No headless converter is installed here (soffice); it is left out.");
  const rows = edits(held, plain, rounds);
  for (const one of held) one.close();
  return [
    ...lines,
    table([
      ["", "built", "over own", "shared input changed", "over own", "one option's input changed", "over own"],
      ...rows,
    ]),
  ].join("\n");
}
