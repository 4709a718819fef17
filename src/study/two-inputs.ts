import { say } from "../words/say";
import type { Study } from "./carry-out";
import type { Plain } from "./kernel/plain";
import { pointsOver, type Range, rangeOf } from "./range";
import type { Runner } from "./runner";
import { type StudyInput, type Subject, valuesOf } from "./subject";

export interface Axis {
  /** Place among the subject's inputs. */
  readonly input: number;
  readonly range?: Partial<Range>;
  /** Steps over the range; a list of choices is taken as it is. */
  readonly parts?: number;
}

export interface TwoInputsQuestion {
  readonly across: Axis;
  readonly down: Axis;
  /** Place among the subject's results. */
  readonly result: number;
}

export interface TwoInputsAnswer {
  readonly across: { readonly name: string; readonly unit: string; readonly values: readonly Plain[] };
  readonly down: { readonly name: string; readonly unit: string; readonly values: readonly Plain[] };
  readonly result: { readonly name: string; readonly unit: string };
  /** Row by row (down), then across; NaN where there is no result. */
  readonly results: readonly (readonly number[])[];
  /** Whether all checks hold there but those of `short`; one without a result does not. */
  readonly holds: readonly (readonly boolean[])[];
  /** Checks that hold nowhere in the range, by name. */
  readonly short: readonly string[];
  /** How many checks the region is made of. */
  readonly checks: number;
}

const defaultParts = 20;

const valuesAlong = (input: StudyInput, { range, parts = defaultParts }: Axis): readonly Plain[] =>
  input.choices && range === undefined ? input.choices : pointsOver(rangeOf(input, range), parts);

/**
 * A result over two inputs, with the region in which all checks of the subject hold; everything else stays as it is.
 * Checks that hold nowhere in the range would leave no region at all and are named beside it.
 *
 * @throws Refusal for an input without a plausible range.
 */
export function twoInputs(subject: Subject, runner: Runner, question: TwoInputsQuestion): Study<TwoInputsAnswer> {
  const [acrossInput, downInput] = [subject.inputs[question.across.input], subject.inputs[question.down.input]];
  const result = subject.results[question.result];
  if (!acrossInput || !downInput || !result) throw new Error(say`the question names what the subject does not have`);
  const base = valuesOf(subject);
  const [across, down] = [valuesAlong(acrossInput, question.across), valuesAlong(downInput, question.down)];
  return (function* () {
    const results: number[][] = [];
    const margins: (readonly Plain[])[][] = [];
    for (const [i, y] of down.entries()) {
      const line: number[] = [];
      const held: (readonly Plain[])[] = [];
      for (const x of across) {
        const values = runner.run(base.with(question.down.input, y).with(question.across.input, x));
        const value = values[question.result];
        line.push(typeof value === "number" ? value : Number.NaN);
        held.push(values);
      }
      results.push(line);
      margins.push(held);
      yield { done: i + 1, of: down.length };
    }
    const holdsAt = (values: readonly Plain[], k: number) => typeof values[k] === "number" && values[k] >= 0;
    const checks = subject.results.flatMap(({ isCheck }, k) => (isCheck ? [k] : []));
    const judged = checks.filter((k) => margins.some((line) => line.some((values) => holdsAt(values, k))));
    return {
      across: { name: acrossInput.name, unit: acrossInput.unit, values: across },
      down: { name: downInput.name, unit: downInput.unit, values: down },
      result: { name: result.name, unit: result.unit },
      results,
      holds: margins.map((line) => line.map((values) => judged.every((k) => holdsAt(values, k)))),
      short: checks.filter((k) => !judged.includes(k)).map((k) => subject.results[k]?.name ?? ""),
      checks: judged.length,
    };
  })();
}
