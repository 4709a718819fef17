import { readFolder } from "../../src/cli/folder";
import { Engine } from "../../src/engine/engine";
import { LiveNotebook } from "../../src/notebook/live";
import { firstOption } from "../../src/notebook/model";
import { type Chain, chainOf } from "../../src/study/kernel/chain";
import { compileKernel, type Kernel } from "../../src/study/kernel/kernel";
import { kindsIn, type Plain } from "../../src/study/kernel/plain";
import { cellOf, rowsNamed } from "../../src/study/rows";
import { seeded } from "../formula/random-expression";
import { type RandomWishes, randomInputs, resultsOf } from "../study/random-inputs";
import { chainByHand, rowsByHand } from "./by-hand/chain";
import { hullOf } from "./by-hand/hull";
import { alternate, type Contender, ratio, short, table } from "./measure";

const keyOf = ({ sheet, row, column }: { sheet: number; row: number; column: number }) => `${sheet}:${row}:${column}`;

/** Puts a set of inputs into an engine and lets it recalculate, taking the time of the recalculation alone. */
class Recalculation {
  private readonly engine: Engine;
  /** Milliseconds of all recalculations since it was last asked. */
  private spent = 0;

  constructor(
    live: LiveNotebook,
    private readonly chain: Chain,
  ) {
    // The engine holds the cells of the chain and nothing else, so that it has no more to calculate than the kernel.
    const held = new Set([...chain.inputs, ...chain.fixed, ...chain.formulas].map(({ cell }) => keyOf(cell)));
    const pages = live.notebook.pages.map(({ name, rows }, sheet) => ({
      name,
      rows: rows.map((texts, row) =>
        texts.map((text, column) => (held.has(keyOf({ sheet, row, column })) ? text : "")),
      ),
    }));
    this.engine = new Engine(pages);
  }

  set(values: readonly Plain[]): void {
    // The engine's own pause: cells are written first, and then everything that hangs on them is calculated once.
    const { hf } = this.engine as unknown as {
      readonly hf: {
        suspendEvaluation(): void;
        resumeEvaluation(): unknown;
        setCellContents(at: { sheet: number; row: number; col: number }, value: Plain): unknown;
      };
    };
    hf.suspendEvaluation();
    this.chain.inputs.forEach(({ cell }, i) => {
      const value = values[i] ?? null;
      const at = { sheet: cell.sheet, row: cell.row, col: cell.column };
      hf.setCellContents(at, typeof value === "string" ? `'${value}` : value);
    });
    const began = performance.now();
    hf.resumeEvaluation();
    this.spent += performance.now() - began;
  }

  takeSpent(): number {
    const { spent } = this;
    this.spent = 0;
    return spent;
  }

  results(): Plain[] {
    return this.chain.wanted.map(({ cell }) => {
      const value = this.engine.value(cell);
      if (value.kind === "error") return Number.NaN;
      if (value.kind === "blank") return null;
      return value.kind === "text" ? value.text : value.value;
    });
  }

  close(): void {
    this.engine.dispose();
  }
}

/** Random sets near the worked inputs, so that no run can rest on the last one's numbers. */
const setsOf = (live: LiveNotebook, chain: Chain, count: number, seed: number, how: RandomWishes): Plain[][] => {
  const random = seeded(seed);
  return Array.from({ length: count }, () => randomInputs(random, live.notebook, chain, how));
};

/** Random sets with a number for every result that has one in the notebook, so that no run stops half way. */
function steadySets(live: LiveNotebook, chain: Chain, count: number, seed: number): Plain[][] {
  const sets = setsOf(live, chain, 4 * count, seed, { near: 0.004, whole: 1, picks: false });
  const { run } = compileKernel(chain, "text", kindsIn(sets));
  return sets.filter((values) => !run(values).some((value) => Number.isNaN(value))).slice(0, count);
}

function sameBits(live: LiveNotebook, chain: Chain, count: number): string {
  const sets = [
    ...setsOf(live, chain, count * 0.8, 31, { near: 0.3 }),
    ...setsOf(live, chain, count * 0.2, 77, { near: 3, wild: 0.01 }),
  ];
  const kernels = (["text", "closures"] as const).map((variant) => compileKernel(chain, variant, kindsIn(sets)));
  const engine = new Recalculation(live, chain);
  let [same, errors, different, left] = [0, 0, 0, 0];
  for (const values of sets) {
    engine.set(values);
    const expected = engine.results();
    for (const kernel of kernels) {
      let found: Plain[];
      try {
        found = kernel.run(values);
      } catch {
        left++;
        continue;
      }
      found.forEach((value, i) => {
        if (!Object.is(value, expected[i])) different++;
        else if (Number.isNaN(value)) errors++;
        else same++;
      });
    }
  }
  engine.close();
  return `${sets.length} sets × ${chain.wanted.length} results × 2 kernels: ${same} the same bits, ${errors} errors in both, ${different} different; ${left} runs left to the engine`;
}

function timed(live: LiveNotebook, chain: Chain, byHand: boolean, rounds: number): string {
  const sets = steadySets(live, chain, 50, 5);
  const kinds = kindsIn(sets);
  const engine = new Recalculation(live, chain);
  const kernel = (variant: Kernel["variant"]): Contender => {
    const { run } = compileKernel(chain, variant, kinds);
    const runs = variant === "text" ? 4000 : 1000;
    return { name: `kernel, ${variant}`, runs, once: () => loop(runs, (i) => run(sets[i % sets.length] as Plain[])) };
  };
  const contenders = [kernel("text"), kernel("closures")];
  if (byHand) {
    const hulls = sets.map((values) => {
      const known = new Map(chain.inputs.map(({ name }, i) => [name, values[i]]));
      return hullOf((name) => known.get(name));
    });
    const runs = 4000;
    contenders.push({
      name: "by hand",
      runs,
      once: () => loop(runs, (i) => chainByHand(hulls[i % hulls.length] as never)),
    });
  }
  const engineRuns = 20;
  const spent: number[] = [];
  contenders.push({
    name: "engine, inputs written and recalculated",
    runs: engineRuns,
    once: () => {
      loop(engineRuns, (i) => engine.set(sets[i % sets.length] as Plain[]));
      spent.push((engine.takeSpent() * 1000) / engineRuns);
    },
  });
  const timings = alternate(contenders, rounds);
  engine.close();
  const last = timings.at(-1);
  const alone = { name: "engine, recalculation alone", rounds: spent.slice(1), micros: 0 };
  const all = [
    ...timings,
    { ...alone, micros: [...alone.rounds].sort((a, b) => a - b)[alone.rounds.length >> 1] ?? 0 },
  ];
  const hand = timings.find(({ name }) => name === "by hand");
  const rows = all.map((one) => [
    one.name,
    `${short(one.micros)} µs`,
    last ? `${short(ratio(alone, one))} ×` : "",
    hand ? `${short(ratio(one, hand))} ×` : "",
  ]);
  return table([["", "one option", "engine alone over it", "over by hand"], ...rows]);
}

const loop = (runs: number, body: (i: number) => void): void => {
  for (let i = 0; i < runs; i++) body(i);
};

/** Largest difference between the chain by hand and the kernel, as a share. */
function handIsRight(live: LiveNotebook, chain: Chain): number {
  const sets = steadySets(live, chain, 200, 9);
  const { run } = compileKernel(chain, "text", kindsIn(sets));
  return Math.max(
    ...sets.map((values) => {
      const known = new Map(chain.inputs.map(({ name }, i) => [name, values[i]]));
      const hand = chainByHand(hullOf((name) => known.get(name)));
      return Math.max(
        ...run(values).map(
          (value, i) => Math.abs(Number(value) - (hand[i] ?? Number.NaN)) / Math.max(1e-9, Math.abs(Number(value))),
        ),
      );
    }),
  );
}

/** Kernels against the engine and against the chain by hand, for one worked notebook. */
export function kernelBench(folder: string, wishes: { readonly sets: number; readonly rounds: number }): string {
  const live = new LiveNotebook(readFolder(folder));
  const column = firstOption + 1;
  const byHand = chainOf(
    live,
    column,
    rowsNamed(live.notebook, rowsByHand.join(",")).map((row) => cellOf(row, column)),
  );
  const compare = chainOf(live, column, resultsOf(live.notebook, column, ["Compare"]));
  const whole = chainOf(live, column, resultsOf(live.notebook, column));
  const size = ({ inputs, formulas, wanted }: Chain) =>
    `${inputs.length} inputs, ${formulas.length} formulas, ${wanted.length} results`;
  const lines = [
    `Chain by hand: ${size(byHand)}; by hand and kernel differ by at most ${handIsRight(live, byHand).toExponential(1)}`,
    timed(live, byHand, true, wishes.rounds),
    `Page Compare: ${size(compare)}`,
    timed(live, compare, false, wishes.rounds),
    `Whole option, texts included: ${size(whole)}`,
    timed(live, whole, false, wishes.rounds),
  ];
  if (wishes.sets > 0) lines.push(sameBits(live, whole, wishes.sets));
  live.close();
  return lines.join("\n\n");
}
