import { describe, expect, it } from "vitest";
import { readFolder } from "../../../src/cli/folder";
import { Engine } from "../../../src/engine/engine";
import { LiveNotebook } from "../../../src/notebook/live";
import { firstOption, type Notebook, optionsOf, type Position } from "../../../src/notebook/model";
import { type Chain, chainOf } from "../../../src/study/kernel/chain";
import { compileKernel, textIsAllowed } from "../../../src/study/kernel/kernel";
import { Beyond } from "../../../src/study/kernel/library";
import { kindsIn, type Plain } from "../../../src/study/kernel/plain";
import { seeded } from "../../formula/random-expression";
import { randomInputs, resultsOf, typedText } from "../random-inputs";

/** The results of one set of inputs by the engine; an error is NaN. */
function byEngine(engine: Engine, chain: Chain, values: readonly Plain[]): Plain[] {
  engine.write(chain.inputs.map(({ cell }, i) => ({ ...cell, text: typedText(values[i] ?? null) })));
  return chain.wanted.map(({ cell }) => {
    const value = engine.value(cell);
    if (value.kind === "error") return Number.NaN;
    if (value.kind === "blank") return null;
    return value.kind === "text" ? value.text : value.value;
  });
}

interface Outcome {
  readonly same: number;
  readonly errors: number;
  readonly beyond: number;
}

function compare(
  notebook: Notebook,
  chain: Chain,
  sets: number,
  how: { near?: number; wild?: number; kindless?: number },
): Outcome {
  const engine = new Engine(notebook.pages);
  const random = seeded(2027);
  const given = Array.from({ length: sets }, () => randomInputs(random, notebook, chain, how));
  const kernels = (["text", "closures"] as const).map((variant) => compileKernel(chain, variant, kindsIn(given)));
  const numbers = new Float64Array(chain.wanted.length);
  let [same, errors, beyond] = [0, 0, 0];
  for (const values of given) {
    const expected = byEngine(engine, chain, values);
    for (const kernel of kernels) {
      try {
        const found = kernel.run(values);
        kernel.runNumbers(values, numbers);
        expect(numbers).toEqual(Float64Array.from(found, (one) => (typeof one === "number" ? one : Number.NaN)));
        found.forEach((value, i) => {
          if (!Object.is(value, expected[i])) {
            const { name } = chain.wanted[i] ?? {};
            expect({ variant: kernel.variant, name, value }).toEqual({
              variant: kernel.variant,
              name,
              value: expected[i],
            });
          }
          same++;
          if (Number.isNaN(value)) errors++;
        });
      } catch (cause) {
        if (!(cause instanceof Beyond)) throw cause;
        beyond++;
      }
    }
  }
  engine.dispose();
  return { same, errors, beyond };
}

const live = new LiveNotebook(readFolder("sheets/three-hulls"));
const { notebook } = live;
const chain = (column: number, wanted?: readonly Position[]) =>
  chainOf(live, column, wanted ?? resultsOf(notebook, column));

describe("kernels of the worked notebook with three hulls", { timeout: 120_000 }, () => {
  it("may be compiled from text here", () => expect(textIsAllowed()).toBe(true));

  it("take in every result of every option page", () => {
    for (const [i, option] of optionsOf(notebook).entries()) {
      const whole = chain(firstOption + i);
      expect(whole.option).toBe(option);
      expect(whole.formulas.length).toBeGreaterThan(400);
      expect(whole.inputs.length).toBeGreaterThan(250);
      const kernel = compileKernel(whole, "text");
      const shown = kernel.run(whole.inputs.map(({ value }) => value));
      expect(shown.filter((value) => Number.isNaN(value))).toEqual([]);
    }
  });

  it("take a zero with a sign as a cell does, without it", () => {
    const one = chain(firstOption + 1);
    const zeros = one.inputs.map(({ value }) => (typeof value === "number" ? -0 : value));
    for (const variant of ["text", "closures"] as const) {
      const results = compileKernel(one, variant, kindsIn([zeros])).run(zeros);
      expect(results.filter((value) => Object.is(value, -0))).toEqual([]);
      expect(results.filter((value) => value === 0).length).toBeGreaterThan(10);
    }
  });

  it("give the engine's bits on 20 random sets of inputs near the worked ones", () => {
    const { same, errors } = compare(notebook, chain(firstOption + 1), 20, { near: 0.3 });
    expect(same).toBeGreaterThan(15_000);
    expect(errors / same).toBeLessThan(0.3);
  });

  it("give the engine's bits, and NaN for its errors, with hostile numbers among the inputs", () => {
    const { same, errors } = compare(notebook, chain(firstOption + 2), 12, { near: 3, wild: 0.05 });
    expect(same).toBeGreaterThan(5000);
    expect(errors).toBeGreaterThan(1000);
  });

  it("give the engine's bits or leave the set to it where blanks, words and flags stand for numbers", () => {
    const { same } = compare(notebook, chain(firstOption), 12, { near: 0.3, kindless: 0.02 });
    expect(same).toBeGreaterThan(2500);
  });
});
