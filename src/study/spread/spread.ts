import type { Study } from "../carry-out";
import type { Plain } from "../kernel/plain";
import type { Runner } from "../runner";
import { type Subject, valuesOf } from "../subject";
import { batches } from "./convergence";
import { type CommonCause, type Random, randomOf, shares } from "./sample";
import { checkShape, type Shape, valueAt } from "./shape";
import { type ResultSpread, Summary } from "./summary";
import { Trials } from "./trials";

export interface VariedInput {
  /** Place among the subject's inputs. */
  readonly input: number;
  readonly shape: Shape;
  /** 1 with the common cause (the default), −1 against it, 0 by itself. */
  readonly turns?: 1 | -1 | 0;
}

export interface SpreadQuestion {
  readonly varied: readonly VariedInput[];
  readonly trials: number;
  readonly common: CommonCause;
  /** The same seed gives the same numbers everywhere. */
  readonly seed: number;
}

export interface SpreadAnswer {
  readonly trials: number;
  readonly seed: number;
  readonly common: CommonCause;
  readonly results: readonly ResultSpread[];
  /** Share of trials in which all checks of the subject hold; undefined without checks. */
  readonly allHold: number | undefined;
}

/** Values of one batch: per varied input the value in each trial. */
function draw(question: SpreadQuestion, count: number, random: Random): Float64Array[] {
  const turns = question.varied.map((one) => one.turns ?? 1);
  return shares(count, turns, question.common, random).map((part, i) => {
    const shape = (question.varied[i] as VariedInput).shape;
    for (let k = 0; k < count; k++) part[k] = valueAt(shape, part[k] as number);
    return part;
  });
}

/**
 * How the results spread when inputs turn out otherwise: trials with all varied inputs at once, sampled as `shares`
 * says, in ten batches.
 *
 * @throws Refusal for limits that stand the wrong way round.
 */
export function spread(subject: Subject, runner: Runner, question: SpreadQuestion): Study<SpreadAnswer> {
  for (const { input, shape } of question.varied) checkShape(subject.inputs[input]?.name ?? "", shape);
  const size = Math.max(1, Math.ceil(question.trials / batches));
  const trials = size * batches;
  const random = randomOf(question.seed);
  const values: Plain[] = valuesOf(subject);
  const all = new Trials(subject.results.length, trials);
  const places = question.varied.map(({ input }) => input);
  const checks = subject.results.flatMap(({ isCheck }, i) => (isCheck ? [i] : []));
  return (function* () {
    let holding = 0;
    for (let batch = 0; batch < batches; batch++) {
      const drawn = draw(question, size, random);
      for (let k = 0; k < size; k++) {
        for (let i = 0; i < places.length; i++) values[places[i] as number] = (drawn[i] as Float64Array)[k] as number;
        const row = all.next;
        runner.runNumbers(values, row);
        all.take();
        if (checks.every((i) => (row[i] as number) >= 0)) holding++;
        yield { done: batch * size + k + 1, of: trials };
      }
    }
    all.putDown();
    const summary = new Summary(size, trials);
    const results: ResultSpread[] = [];
    for (const [i, result] of subject.results.entries()) {
      results.push(summary.of(result, all.columns[i] as Float64Array));
      yield { done: trials, of: trials };
    }
    return {
      trials,
      seed: question.seed,
      common: question.common,
      results,
      allHold: checks.length > 0 ? holding / trials : undefined,
    };
  })();
}
