import type { Study } from "./carry-out";
import type { Plain } from "./kernel/plain";
import { pointsOver, type Range, rangeOf } from "./range";
import { halve } from "./root";
import type { Runner } from "./runner";
import { type Subject, valuesOf } from "./subject";
import { listWords, valueWords } from "./words";

export interface SmallestQuestion {
  /** Place among the subject's inputs. */
  readonly input: number;
  readonly range?: Partial<Range>;
  readonly parts?: number;
}

export interface SmallestAnswer {
  /** The smallest value with which all checks hold; undefined when there is none. */
  readonly value: Plain | undefined;
  /** Checks that do not hold with the next smaller value, or with the best one where none does. */
  readonly short: readonly string[];
  readonly sentence: string;
}

const defaultParts = 240;

/** The checks of a subject that do not hold; one without a result does not hold. */
function shortOf(subject: Subject, values: readonly Plain[]): string[] {
  return subject.results.flatMap(({ name, isCheck }, i) => {
    const value = values[i];
    return isCheck && !(typeof value === "number" && value >= 0) ? [name] : [];
  });
}

/**
 * The smallest value of an input with which every check of the subject holds, everything else staying as it is: by
 * steps over the plausible range and then by halving, or the first of a list.
 *
 * @throws Refusal for an input without a plausible range.
 */
export function smallest(subject: Subject, runner: Runner, question: SmallestQuestion): Study<SmallestAnswer> {
  const input = subject.inputs[question.input];
  if (!input) throw new Error("the question names an input that the subject does not have");
  const base = valuesOf(subject);
  const short = (x: Plain) => shortOf(subject, runner.run(base.with(question.input, x)));
  const listed = input.choices !== undefined && question.range === undefined;
  const range = listed ? undefined : rangeOf(input, question.range);
  const tries: readonly Plain[] = range ? pointsOver(range, question.parts ?? defaultParts) : (input.choices ?? []);
  return (function* () {
    let before: { readonly x: Plain; readonly short: readonly string[] } | undefined;
    let best: { readonly x: Plain; readonly short: readonly string[] } | undefined;
    for (const [i, x] of tries.entries()) {
      const missing = short(x);
      if (missing.length === 0) return found(x, before);
      before = { x, short: missing };
      if (!best || missing.length < best.short.length) best = before;
      yield { done: i + 1, of: tries.length };
    }
    const rest = best ? `; with ${valueWords(best.x, input.unit)} still short: ${listWords(best.short)}` : "";
    return {
      value: undefined,
      short: best?.short ?? [],
      sentence: `No value of ${input.name} makes all checks hold${rest}.`,
    };
  })();

  function found(
    x: Plain,
    before: { readonly x: Plain; readonly short: readonly string[] } | undefined,
  ): SmallestAnswer {
    const name = input?.name ?? "";
    const unit = input?.unit ?? "";
    if (!before) {
      const where = listed ? "the first of the list" : "the low end of its range";
      return { value: x, short: [], sentence: `All checks hold from ${where} on: ${name} ${valueWords(x, unit)}.` };
    }
    let [value, missing] = [x, before.short];
    if (!listed) {
      const ends = halve({ left: Number(before.x), right: Number(x) }, (one) => short(one).length === 0);
      value = ends.right;
      missing = short(ends.left);
    }
    const below = listed ? valueWords(before.x, unit) : "anything less";
    return {
      value,
      short: missing,
      sentence: `All checks hold with ${name} ${valueWords(value, unit)}; with ${below} short: ${listWords(missing)}.`,
    };
  }
}
