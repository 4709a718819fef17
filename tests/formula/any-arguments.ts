import type { Argument } from "../../src/formula/arguments";
import type { AnyDefinition } from "../../src/formula/definition";
import type { Given } from "../../src/formula/value";
import { pick } from "./random-expression";

/** Values that upset arithmetic, comparisons and look-ups. */
export const hostile: readonly (number | string | boolean | null)[] = [
  0,
  -0,
  1,
  -1,
  0.1,
  1e300,
  -1e300,
  1e-300,
  5e-324,
  Number.MAX_VALUE,
  2 ** 53,
  90,
  -90,
  "",
  "text",
  "4/0",
  "70",
  "__proto__",
  "constructor",
  true,
  false,
  null,
];

const within = (random: () => number, low: number, high: number): number =>
  random() < 0.5 ? low + random() * (high - low) : Math.round(low + random() * (high - low));

function number(random: () => number, argument: Argument): number {
  const { min, max } = argument as { readonly min?: number; readonly max?: number };
  const low = min ?? -1000;
  const high = max ?? Math.max(low + 1, 1000);
  const kind = random();
  if (kind < 0.06) return low;
  if (kind < 0.12) return high;
  // Most limits are far wider than what is met in practice: go near the low end too, by powers of ten.
  return kind < 0.6
    ? within(random, low, high)
    : Math.min(high, low + (high - low) * 10 ** (-8 * random()) * (random() < 0.5 ? 1 : random()));
}

function proper(random: () => number, argument: Argument, name: string): Given {
  switch (argument.kind) {
    case "text":
      // Units are the only free words of the catalogue.
      return pick(random, argument.choices ?? ["m", "mm", "in", "kn", "m/s", "C", "K", "degF", "no unit"]);
    case "flag":
      return random() < 0.5;
    case "key": {
      const key = pick(random, argument.keys);
      return /^\d+$/.test(key) && random() < 0.5 ? Number(key) : key;
    }
    case "range": {
      const cells = Array.from({ length: 1 + Math.floor(random() * 6) }, () => number(random, argument));
      return name === "xs" ? cells.sort((a, b) => a - b) : cells;
    }
    default:
      if (argument.oneOf) return pick(random, argument.oneOf);
      return argument.whole ? Math.round(number(random, argument)) : number(random, argument);
  }
}

/** One random value for each argument: mostly proper, some left blank, some of `hostile`. */
export const anyArguments = (random: () => number, definition: AnyDefinition, bad: number): Given[] =>
  Object.entries(definition.args).map(([name, argument]) => {
    const kind = random();
    if (kind < bad) return random() < 0.9 ? pick(random, hostile) : [pick(random, hostile), pick(random, hostile)];
    return kind < bad + 0.08 ? null : proper(random, argument, name);
  });
