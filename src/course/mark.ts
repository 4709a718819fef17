// Past 150 lines: marking of one kind of answer after another, and what each mark says.
import { say } from "../words/say";
import { standsFor } from "./allowance";
import type { AskedAnswer } from "./asked-task";
import { namesIn } from "./names";
import { type Numbers, scalarOf } from "./numbers";
import type { Scalar } from "./scalar";
import { slipOf } from "./slips";
import type { Answer, Task } from "./task";
import { cellsOf } from "./task-cells";
import { readTyped, type Typed } from "./typed";

/** How an answer was marked. */
export type Mark =
  | { readonly kind: "right" }
  /** Wrong in a way that has a name. */
  | { readonly kind: "mistake"; readonly title: string; readonly advice: string }
  /** Right from an earlier answer of the trainee's that was not. */
  | { readonly kind: "carried"; readonly from: readonly string[] }
  | { readonly kind: "wrong" }
  | { readonly kind: "blank" }
  /** Neither right nor wrong: it cannot be read as an answer. */
  | { readonly kind: "unreadable"; readonly why: string };

export interface Marked {
  readonly answer: Answer;
  readonly typed: string;
  readonly mark: Mark;
}

const tidy = (text: string): string => text.trim().replace(/\s+/g, " ").toLowerCase();

function markWords(numbers: Numbers, answer: Answer, typed: string, before: ReadonlyMap<string, number>): Mark {
  const { allowance } = answer;
  if (tidy(typed) === "") return { kind: "blank" };
  const choices = allowance.kind === "choice" ? allowance.choices : [];
  const choice = choices.find((one) => tidy(one) === tidy(typed));
  if (choice === undefined) {
    return { kind: "unreadable", why: say`"${typed.trim()}" is none of the choices (${choices.join(" / ")})` };
  }
  const mark = markValue(numbers, answer, choice);
  if (mark?.kind === "right") return mark;
  // A choice that follows from a wrong number says more of that number than of the choice.
  return carried(numbers, answer, choice, before) ?? mark ?? { kind: "wrong" };
}

/** Right, or a mistake with a name; undefined for what is neither. */
function markValue(numbers: Numbers, answer: Answer, value: Scalar): Mark | undefined {
  const right = scalarOf(numbers.worked.values.get(answer.name)) as Scalar;
  if (standsFor(answer.allowance, value, right)) return { kind: "right" };
  const mistake = answer.mistakes.find((one) => {
    const wrong = scalarOf(numbers.worked.mistakes.get(one));
    return !numbers.hidden.has(one) && wrong !== undefined && standsFor(answer.allowance, value, wrong);
  });
  return mistake && { kind: "mistake", title: mistake.title, advice: mistake.advice };
}

/** The answers that an answer's solution is built on, straight or by way of steps. */
function earlierOf(task: Task, answer: Answer): readonly Answer[] {
  const found = new Set<string>();
  const look = (formula: string): void => {
    for (const name of namesIn(formula)) {
      const step = [...task.made, ...task.way].find((one) => one.name === name);
      if (!step || found.has(name)) continue;
      found.add(name);
      look(step.formula);
    }
  };
  look(answer.formula);
  return task.answers.filter(({ name }) => found.has(name));
}

function carried(
  numbers: Numbers,
  answer: Answer,
  value: Scalar,
  before: ReadonlyMap<string, number>,
): Mark | undefined {
  const wrong = new Map(
    earlierOf(numbers.task, answer).flatMap(({ name }) => {
      const own = before.get(name);
      return own === undefined ? [] : [[name, own] as const];
    }),
  );
  if (wrong.size === 0) return undefined;
  const follows = scalarOf(cellsOf(numbers.task).workFrom(numbers.drawn, wrong, answer.name));
  return follows !== undefined && standsFor(answer.allowance, value, follows)
    ? { kind: "carried", from: [...wrong.keys()] }
    : undefined;
}

function markNumber(numbers: Numbers, answer: Answer, typed: Typed, before: ReadonlyMap<string, number>): Mark {
  if (typed.kind === "blank") return typed;
  if (typed.kind === "text") return { kind: "unreadable", why: typed.why };
  const { value, other, figures } = typed;
  const mark = markValue(numbers, answer, value);
  if (mark?.kind === "right") return mark;
  if (other !== undefined && markValue(numbers, answer, other)?.kind === "right") {
    return { kind: "unreadable", why: say`the comma may part thousands or be the decimal sign (${other} or ${value})` };
  }
  const right = scalarOf(numbers.worked.values.get(answer.name));
  const slip = typeof right === "number" ? slipOf(answer.allowance, value, right, figures) : undefined;
  return (
    mark ??
    carried(numbers, answer, value, before) ??
    (slip ? { kind: "mistake", ...slip } : undefined) ?? { kind: "wrong" }
  );
}

/**
 * Marks what a trainee typed, by name of the answer, in the order of the page.
 *
 * The right number comes first, so that no mistake can take its place; then mistakes with a name, then what follows
 * from the trainee's own earlier number, then slips of the pen.
 */
export function markTask(numbers: Numbers, typed: ReadonlyMap<string, string>): readonly Marked[] {
  const before = new Map<string, number>();
  return numbers.task.answers.map((answer) => {
    const text = typed.get(answer.name) ?? "";
    if (answer.allowance.kind === "choice") {
      return { answer, typed: text, mark: markWords(numbers, answer, text, before) };
    }
    const read = readTyped(text, answer.unit);
    const mark = markNumber(numbers, answer, read, before);
    if (read.kind === "number" && mark.kind !== "right" && mark.kind !== "unreadable")
      before.set(answer.name, read.value);
    return { answer, typed: text, mark };
  });
}

/** What is said of an answer that cannot be read as one; that needs no solution. Undefined for one that can, or a blank. */
export function unreadableIn(answer: AskedAnswer | undefined, typed: string): Mark | undefined {
  if (!answer || answer.choices.length > 0) return undefined;
  const read = readTyped(typed, answer.unit);
  return read.kind === "text" ? { kind: "unreadable", why: read.why } : undefined;
}

/** A mark in words, for print and terminal. */
export function markWordsOf(mark: Mark): string {
  switch (mark.kind) {
    case "right":
      return say`right`;
    case "mistake":
      return say`not right: ${mark.title}. ${mark.advice}`;
    case "carried":
      return say`follows from your own ${mark.from.join(say` and `)}, which is not right`;
    case "wrong":
      return say`not right`;
    case "blank":
      return say`blank`;
    case "unreadable":
      return say`cannot be read: ${mark.why}`;
  }
}
