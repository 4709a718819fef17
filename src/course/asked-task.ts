import { allowanceWords } from "./allowance";
import { givenIn, questionOf } from "./asked";
import type { Numbers } from "./numbers";
import { shown } from "./shown";
import type { Task, TextPart } from "./task";

/** The texts of a task that a trainee reads beside the question. */
export const taughtParts = ["rule", "source", "beyond", "caution"] as const satisfies readonly TextPart[];
type Taught = Readonly<Record<(typeof taughtParts)[number], readonly string[]>>;

export interface AskedAnswer {
  readonly name: string;
  readonly about: string;
  readonly unit: string;
  /** How to round and what counts as right, in words. */
  readonly how: string;
  /** Words to choose among; empty where a number is asked for. */
  readonly choices: readonly string[];
}

/** A task as a trainee may see it: no solution, step or mistake is in it. */
export interface AskedTask {
  readonly number: string;
  readonly title: string;
  readonly question: readonly string[];
  readonly given: readonly { readonly about: string; readonly value: string }[];
  readonly answers: readonly AskedAnswer[];
  /** To be shown one after the other, on request. */
  readonly hints: readonly string[];
  readonly taught: Taught;
}

/** The task with one trainee's numbers, without what is hidden from the trainee. */
export function askedOf(numbers: Numbers): AskedTask {
  const { task } = numbers;
  return {
    number: String(task.number),
    title: task.title,
    question: questionOf(numbers),
    given: givenIn(numbers).map(({ about, unit, value }) => ({ about, value: shown(value, unit) })),
    answers: task.answers.map(({ name, about, unit, allowance }) => ({
      name,
      about,
      unit,
      how: allowanceWords(allowance, unit),
      choices: allowance.kind === "choice" ? allowance.choices : [],
    })),
    hints: task.texts.hint,
    taught: taughtOf(task.texts),
  };
}

/** The parts that are read beside the question, out of a task's texts. */
export const taughtOf = ({ rule, source, beyond, caution }: Taught | Task["texts"]): Taught => ({
  rule,
  source,
  beyond,
  caution,
});
