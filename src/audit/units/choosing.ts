import type { Parsed } from "../../engine/parsed";
import { say } from "../../words/say";
import { silent } from "./measure";
import { together } from "./together";
import type { Rule } from "./visit";

/** A condition, then branches that must have one unit; an empty branch and text say nothing. */
export const choice =
  (branches: (args: readonly Parsed[]) => readonly Parsed[]): Rule =>
  (visit, { name, args }) => {
    const taken = branches(args);
    for (const part of args) if (!taken.includes(part) && part.kind !== "range") visit.measure(part);
    return together(visit, say`${name}, branches`, taken);
  };

export const everySecond = (from: number) => (args: readonly Parsed[]) =>
  args.filter((_, i) => i >= from && (i - from) % 2 === 0);

/** The unit of the column that is read; the key is compared with the keys. */
export const xlookup: Rule = (visit, { args }) => {
  const [key, keys, values, otherwise] = args;
  if (key && keys) {
    visit.judge.alike("XLOOKUP", visit.measure(key), visit.measure(keys), [visit.words(key), visit.words(keys)]);
  }
  const measure = values ? visit.measure(values) : silent;
  if (otherwise && values) {
    return visit.judge.alike("XLOOKUP", measure, visit.measure(otherwise), [
      visit.words(values),
      visit.words(otherwise),
    ]);
  }
  return measure;
};
