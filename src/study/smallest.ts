import { say } from "../words/say";
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
  /** The smallest value with which all checks hold that it moves; undefined when there is none. */
  readonly value: Plain | undefined;
  /** Of these, the ones that do not hold with the next smaller value, or with the best one where none does. */
  readonly short: readonly string[];
  /** Checks that fall short whatever the value is. */
  readonly unmoved: readonly string[];
  /** Checks that have no number whatever the value is: an error, or something that is not measured yet. */
  readonly open: readonly string[];
  readonly sentence: string;
}

const defaultParts = 240;

/** One value that was tried, with the checks that do not hold there. */
interface Try {
  readonly x: Plain;
  readonly short: readonly string[];
}

/**
 * The smallest value of an input with which every check of the subject holds that the input moves, everything else
 * staying as it is: by steps over the plausible range and then by halving, or the first of a list. Checks that fall
 * short whatever the value is are named beside it.
 *
 * @throws Refusal for an input without a plausible range.
 */
export function smallest(subject: Subject, runner: Runner, question: SmallestQuestion): Study<SmallestAnswer> {
  const input = subject.inputs[question.input];
  if (!input) throw new Error(say`the question names an input that the subject does not have`);
  const base = valuesOf(subject);
  /** A check without a result does not hold. */
  const shortAt = (x: Plain): string[] => {
    const values = runner.run(base.with(question.input, x));
    return subject.results.flatMap(({ name, isCheck }, i) => {
      const value = values[i];
      return isCheck && !(typeof value === "number" && value >= 0) ? [name] : [];
    });
  };
  const places = new Map(subject.results.map(({ name }, i) => [name, i]));
  const listed = input.choices !== undefined && question.range === undefined;
  const xs: readonly Plain[] = listed
    ? (input.choices ?? [])
    : pointsOver(rangeOf(input, question.range), question.parts ?? defaultParts);
  return (function* () {
    const tries: Try[] = [];
    for (const x of xs) {
      tries.push({ x, short: shortAt(x) });
      yield { done: tries.length, of: xs.length };
    }
    const stuck = (tries[0]?.short ?? []).filter((name) => tries.every(({ short }) => short.includes(name)));
    const now = runner.run(base);
    const open = stuck.filter((name) => {
      const value = now[places.get(name) ?? -1];
      return typeof value !== "number" || Number.isNaN(value);
    });
    const unmoved = stuck.filter((name) => !open.includes(name));
    const moved = (short: readonly string[]) => short.filter((name) => !stuck.includes(name));
    const first = tries.findIndex(({ short }) => moved(short).length === 0);
    const rest = [
      ...(unmoved.length === 0 ? [] : [say`whatever it is, short: ${listWords(unmoved)}`]),
      ...(open.length === 0 ? [] : [say`open: ${open.length === 1 ? say`one check` : say`${open.length} checks`}`]),
    ];
    const end = `${rest.map((words) => `; ${words}`).join("")}.`;
    const says = (x: Plain) => `${input.name} ${valueWords(x, input.unit)}`;
    if (first < 0) {
      const best = tries.reduce((a, b) => (b.short.length < a.short.length ? b : a));
      const short = moved(best.short);
      const sentence = say`No value of ${input.name} makes all checks hold that it moves; with ${valueWords(best.x, input.unit)} still short: ${listWords(short)}${end}`;
      return { value: undefined, short, unmoved, open, sentence };
    }
    const [found, before] = [tries[first] as Try, tries[first - 1]];
    if (!before) {
      const all = tries.every(({ short }) => moved(short).length === 0);
      const sentence = all
        ? say`${input.name} makes no difference to any check${end}`
        : say`All checks that ${input.name} moves hold from ${valueWords(found.x, input.unit)} on${end}`;
      return { value: found.x, short: [], unmoved, open, sentence };
    }
    let [value, short] = [found.x, moved(before.short)];
    if (!listed) {
      const at = (x: number) => moved(shortAt(x));
      const ends = halve({ left: Number(before.x), right: Number(found.x) }, (x) => at(x).length === 0);
      [value, short] = [ends.right, at(ends.left)];
    }
    const less = listed ? say`with ${valueWords(before.x, input.unit)}` : say`with anything less`;
    const sentence = say`All checks that ${input.name} moves hold with ${says(value)}; ${less} short: ${listWords(short)}${end}`;
    return { value, short, unmoved, open, sentence };
  })();
}
