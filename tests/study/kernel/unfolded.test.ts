import { expect, it } from "vitest";
import { callFunction } from "../../../src/formula/call";
import { Fault } from "../../../src/formula/fault";
import { whyNotUnfolded } from "../../../src/formula/unfold/reason";
import type { Given } from "../../../src/formula/value";
import { catalogue } from "../../../src/functions";
import { setCells } from "../../../src/notebook/edit-cells";
import { LiveNotebook } from "../../../src/notebook/live";
import { firstOption, textAt } from "../../../src/notebook/model";
import { unfoldCall } from "../../../src/notebook/unfold";
import { chainOf } from "../../../src/study/kernel/chain";
import { compileKernel } from "../../../src/study/kernel/kernel";
import { kindsIn, type Plain } from "../../../src/study/kernel/plain";
import { anyArguments } from "../../formula/any-arguments";
import { seeded } from "../../formula/random-expression";
import { argumentsPage } from "../../notebook/arguments-page";

// `npm run long -- unfold` does the same in the engine itself, which takes minutes for so many cells.
it.each([
  [10_000, "", 1],
  [400, ", called in a branch that is taken", 1],
  [400, ", not called in a branch that is not taken", 2],
])(
  "unfolded rows give the function's bits on %i random inputs of every algebraic function%s",
  {
    timeout: 60_000,
  },
  (times, branch, choice) => {
    const random = seeded(10_000);
    const counts = { numbers: 0, refused: 0 };
    for (const definition of catalogue) {
      if (whyNotUnfolded(definition)) continue;
      const sets = Array.from({ length: times }, () => anyArguments(random, definition, 0) as Plain[]);
      const { notebook: plain, row } = argumentsPage(definition, [sets[0] as Plain[]]);
      const [page] = plain.pages;
      const call = page ? textAt(page, row, firstOption).slice(1) : "";
      const choosing = [
        { page: page?.id ?? "", row, column: firstOption, text: `=IF(E${row + 2}=1,${call},7)` },
        { page: page?.id ?? "", row: row + 1, column: firstOption, text: String(choice) },
      ];
      const notebook = branch ? setCells(plain, choosing) : plain;
      const after = unfoldCall(notebook, page?.id ?? "", row, definition);
      const live = new LiveNotebook(after.notebook);
      const at = { page: page?.id ?? "", row: after.row, column: firstOption };
      const source = { notebook: after.notebook, parsed: live.parsed.bind(live), isSpilled: live.isSpilled.bind(live) };
      const chain = chainOf(source, firstOption, [at]);
      // The rows of the function's constants are inputs too, and keep their values.
      const given = (set: readonly Plain[]): Plain[] =>
        chain.inputs.map(({ name, value }) => {
          const place = Object.keys(definition.args).indexOf(name.replace("Page.", ""));
          return place < 0 ? value : (set[place] ?? null);
        });
      const kernel = compileKernel(chain, "text", kindsIn(sets.map(given)));
      for (const set of sets) {
        let wanted: unknown = Number.NaN;
        try {
          wanted = choice === 2 ? 7 : callFunction(definition, set as Given[]);
          counts.numbers++;
        } catch (problem) {
          if (!(problem instanceof Fault)) throw problem;
          counts.refused++;
        }
        const [got] = kernel.run(given(set));
        if (!Object.is(got, wanted))
          expect({ name: definition.name, set, got }).toEqual({ name: definition.name, set, got: wanted });
      }
      live.close();
    }
    expect(counts.numbers).toBeGreaterThan(60 * times);
    expect(counts.refused).toBeGreaterThan(choice === 2 ? -1 : 10 * times);
  },
);
