import type { Plain } from "../../src/study/kernel/plain";
import type { Runner } from "../../src/study/runner";
import type { StudyInput, Subject } from "../../src/study/subject";

/** A subject of numbers alone, calculated by a function of the test. */
export function plainSubject(
  inputs: Readonly<Record<string, number | Partial<StudyInput>>>,
  results: Readonly<Record<string, (...values: readonly number[]) => number>>,
): { subject: Subject; runner: Runner; runs: () => number } {
  const subject: Subject = {
    chain: { option: "Only", pages: [], own: [], inputs: [], fixed: [], formulas: [], wanted: [] },
    inputs: Object.entries(inputs).map(([name, given]) => ({
      name,
      quantity: name,
      unit: "m",
      value: typeof given === "number" ? given : 0,
      low: undefined,
      likely: undefined,
      high: undefined,
      choices: undefined,
      ...(typeof given === "object" ? given : {}),
    })),
    results: Object.keys(results).map((name) => ({
      name,
      quantity: name,
      unit: name.endsWith("_ok") ? "margin" : "m",
      isCheck: name.endsWith("_ok"),
    })),
  };
  let runs = 0;
  const run = (values: readonly Plain[]): Plain[] => {
    runs++;
    return Object.values(results).map((fn) => fn(...(values as readonly number[])));
  };
  const runner: Runner = {
    by: "closures",
    why: undefined,
    run,
    runNumbers: (values, into) => into.set(run(values).map(Number)),
    explain: () => {
      throw new Error("nothing to explain");
    },
    close: () => undefined,
  };
  return { subject, runner, runs: () => runs };
}
