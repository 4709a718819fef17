/**
 * Mistakes in a definition that must not compile. The type check runs over this file: a line below a
 * `@ts-expect-error` that compiles is an error there.
 */
import { defineFunction } from "../../src/formula/define";
import { identity } from "../../src/formula/source";
import { conductorResistance } from "../../src/tables/conductor-resistance";

const source = identity("test");
const args = { run: { unit: "m", about: "length" } } as const;
const good = { name: "TEST.GOOD", title: "t", valid: "v", sources: [source] } as const;
const example = { given: { run: 1 }, expect: 1, within: 0, source } as const;
const step = { kind: "algebra", symbol: "y", formula: "run * 2", unit: "m", why: "w" } as const;

defineFunction({ ...good, args, steps: [step], examples: [example] });

defineFunction({
  ...good,
  args,
  // @ts-expect-error a misspelt name in a formula
  steps: [{ kind: "algebra", symbol: "y", formula: "rum * 2 + sqrt(run)", unit: "m", why: "w" }],
  examples: [example],
});

defineFunction({
  ...good,
  args,
  steps: [
    // @ts-expect-error a symbol used before its step
    { kind: "algebra", symbol: "x", formula: "y + 1", unit: "m", why: "w" },
    { kind: "algebra", symbol: "y", formula: "x + run", unit: "m", why: "w" },
  ],
  examples: [example],
});

defineFunction({
  ...good,
  args,
  steps: [
    {
      kind: "first",
      symbol: "size",
      table: conductorResistance,
      // @ts-expect-error a condition over a column that the table does not have
      where: "area >= run",
      take: "size",
      none: "none",
      unit: "mm2",
      why: "w",
    },
  ],
  examples: [example],
});

defineFunction({
  ...good,
  // @ts-expect-error an argument without a unit
  args: { run: { about: "length" } },
  steps: [step],
  examples: [example],
});

defineFunction({
  ...good,
  args,
  // @ts-expect-error a step without a unit
  steps: [{ kind: "algebra", symbol: "y", formula: "run", why: "w" }],
  examples: [example],
});

// @ts-expect-error no source
defineFunction({ ...good, sources: [], args, steps: [step], examples: [example] });

// @ts-expect-error no example
defineFunction({ ...good, args, steps: [step], examples: [] });

defineFunction({
  ...good,
  args,
  steps: [step],
  // @ts-expect-error an example without a source
  examples: [{ given: { run: 1 }, expect: 1, within: 0 }],
});

defineFunction({
  ...good,
  args,
  steps: [step],
  // @ts-expect-error an example that misses a required argument
  examples: [{ given: {}, expect: 1, within: 0, source }],
});

// @ts-expect-error a name in lower case
defineFunction({ ...good, name: "test.good", args, steps: [step], examples: [example] });

defineFunction({
  ...good,
  args,
  // @ts-expect-error a unit that is not known
  steps: [{ kind: "algebra", symbol: "y", formula: "run", unit: "furlong", why: "w" }],
  examples: [example],
});
