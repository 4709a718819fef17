import { expect, it } from "vitest";
import { setCells } from "../../../src/notebook/edit-cells";
import { LiveNotebook } from "../../../src/notebook/live";
import { chainOf, plainOf } from "../../../src/study/kernel/chain";
import { compileKernel, type Kernel } from "../../../src/study/kernel/kernel";
import { Beyond } from "../../../src/study/kernel/library";
import { kinds } from "../../../src/study/kernel/plain";
import { KernelRefusal } from "../../../src/study/kernel/refusal";
import { seeded } from "../../formula/random-expression";
import { at, randomNotebook, randomText, shown } from "./random-sheet";

interface Count {
  compared: number;
  errors: number;
  beyond: number;
  refused: string[];
}

/** Compares single formulas of random sheets with the engine, for several sets of inputs each. */
function compare(seed: number, sheets: number, sets: number, wild: number): Count {
  const random = seeded(seed);
  const [inputs, formulas] = [10, 30];
  const count: Count = { compared: 0, errors: 0, beyond: 0, refused: [] };
  for (let sheet = 0; sheet < sheets; sheet++) {
    const live = new LiveNotebook(randomNotebook(random, inputs, formulas, wild));
    const kernels: [row: number, kernels: readonly Kernel[]][] = [];
    for (let row = inputs + 1; row <= inputs + formulas; row++) {
      try {
        const chain = chainOf(live, 4, [at(row)]);
        const all = chain.inputs.map(() => (wild > 0 ? kinds.any : kinds.number));
        kernels.push([row, [compileKernel(chain, "text", all), compileKernel(chain, "closures", all)]]);
      } catch (cause) {
        if (!(cause instanceof KernelRefusal)) throw cause;
        count.refused.push(cause.reason);
      }
    }
    for (let set = 0; set < sets; set++) {
      for (const [row, pair] of kernels) {
        const expected = shown(live, at(row));
        for (const kernel of pair) {
          const given = kernel.chain.inputs.map(({ cell }) => plainOf(live.text(at(cell.row))));
          try {
            const [value] = kernel.run(given);
            count.compared++;
            if (Number.isNaN(expected)) count.errors++;
            if (!Object.is(value, expected)) {
              const { inputs: typed, formulas: used } = kernel.chain;
              const texts = [...typed, ...used].map(({ name, cell }) => `${name} ${live.text(at(cell.row))}`);
              expect({ variant: kernel.variant, value, texts }).toEqual({
                variant: kernel.variant,
                value: expected,
                texts,
              });
            }
          } catch (cause) {
            if (!(cause instanceof Beyond)) throw cause;
            count.beyond++;
          }
        }
      }
      live.apply("inputs", (notebook) =>
        setCells(
          notebook,
          Array.from({ length: inputs }, (_, i) => ({ ...at(i + 1), text: randomText(random, wild) })),
        ),
      );
    }
    live.close();
  }
  return count;
}

const patience = { timeout: 120_000 };

it("kernels give the engine's bits for random formulas of numbers, and NaN for its errors", patience, () => {
  const { compared, errors, beyond } = compare(11, 12, 3, 0);
  expect(compared).toBeGreaterThan(1200);
  expect(errors / compared).toBeLessThan(0.6);
  expect(beyond / compared).toBeLessThan(0.2);
});

it("kernels agree with the engine on blanks, words, flags, texts like dates and numbers at the ends", patience, () => {
  const { compared, beyond } = compare(12, 12, 3, 0.4);
  expect(compared).toBeGreaterThan(600);
  // Where a text might be a number or a date the kernel says so, and the engine decides.
  expect(beyond).toBeGreaterThan(0);
});
