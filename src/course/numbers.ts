import type { CellValue } from "../engine/value";
import { Refusal } from "../notebook/refusal";
import { say } from "../words/say";
import { canBeTold } from "./allowance";
import { amountAt, countOf } from "./amount";
import type { Course } from "./course";
import type { Scalar } from "./scalar";
import { drawsFor, traineeId } from "./seed";
import type { Answer, Mistake, Task } from "./task";
import { cellsOf, type Worked } from "./task-cells";

/** A task with the numbers of one trainee. */
export interface Numbers {
  readonly task: Task;
  readonly trainee: string;
  /** What was drawn, by name. */
  readonly drawn: ReadonlyMap<string, Scalar>;
  readonly worked: Worked;
  /** Mistakes that this trainee's numbers would not show; they are left out of marking. */
  readonly hidden: ReadonlySet<Mistake>;
}

/** So many draws are made for numbers that show every mistake; then the best ones so far are taken. */
const mostForMistakes = 80;
const mostDraws = 400;

export function scalarOf(value: CellValue | undefined): Scalar | undefined {
  if (value?.kind === "number") return value.value;
  return value?.kind === "text" ? value.text : undefined;
}

/** The first condition of the page that drawn values break. */
function broken(worked: Worked): string | undefined {
  for (const [{ row, why }, value] of worked.requirements) {
    if (value.kind === "error") return say`row ${row}: ${value.sentence}`;
    if (value.kind !== "flag") return say`row ${row}: the condition is neither TRUE nor FALSE`;
    if (!value.value) return say`row ${row}: ${why || say`the condition does not hold`}`;
  }
  return undefined;
}

/** The first value of the page that does not come to a number or a text. */
function failed(task: Task, worked: Worked): string | undefined {
  for (const { row, name } of [...task.made, ...task.way]) {
    const value = worked.values.get(name);
    if (value?.kind === "error") return say`row ${row}: ${value.sentence}`;
    if (scalarOf(value) === undefined) return say`row ${row}: ${name} is neither a number nor a text`;
  }
  return undefined;
}

/** The mistakes that lead to nothing, or to what another mistake or the right answer could be taken for. */
function hiddenIn(answer: Answer, worked: Worked): readonly Mistake[] {
  const told: Scalar[] = [scalarOf(worked.values.get(answer.name)) as Scalar];
  return answer.mistakes.filter((mistake) => {
    const value = scalarOf(worked.mistakes.get(mistake));
    if (value === undefined || !told.every((one) => canBeTold(answer.allowance, value, one))) return true;
    told.push(value);
    return false;
  });
}

/** A task for drawn values of any choice; the same checks, no drawing. @returns why not, where a check fails. */
export function numbersFrom(task: Task, trainee: string, drawn: ReadonlyMap<string, Scalar>): Numbers | string {
  const worked = cellsOf(task).work(drawn);
  const why = broken(worked) ?? failed(task, worked);
  if (why !== undefined) return why;
  return { task, trainee, drawn, worked, hidden: new Set(task.answers.flatMap((answer) => hiddenIn(answer, worked))) };
}

/** Values that somebody tries out on a task, with whatever the page says against drawing them. */
export interface Tried {
  readonly numbers: Numbers;
  /** The values come to something, but the page would not ask for it: `the verdict must not hang on rounding`. */
  readonly remark: string | undefined;
}

/** A task for values that are moved by hand, as sliders do. @returns a sentence where they come to nothing. */
export function numbersTried(task: Task, trainee: string, drawn: ReadonlyMap<string, Scalar>): Tried | string {
  const worked = cellsOf(task).work(drawn);
  const why = failed(task, worked);
  if (why !== undefined) return why.replace(/^row \d+: /, "");
  return {
    numbers: { task, trainee, drawn, worked, hidden: new Set() },
    remark: broken(worked)?.replace(/^row \d+: /, ""),
  };
}

/**
 * The numbers of one trainee in one task. The same course, edition, task and trainee give the same numbers, on any
 * machine. Draws that break a condition of the page, or in which a mistake could pass for the right answer or for
 * another mistake, are thrown away.
 *
 * @throws Refusal when no draw meets the conditions of the page.
 */
export function numbersFor(course: Course, task: Task, typed: string): Numbers {
  const trainee = traineeId(typed);
  if (trainee === "") throw new Refusal(say`A trainee needs a number or a name.`);
  const draw = drawsFor(course.edition, task.file, trainee);
  let best: Numbers | undefined;
  let last = "";
  for (let i = 0; i < (best ? mostForMistakes : mostDraws); i++) {
    const drawn = new Map(task.drawn.map(({ name, amount }) => [name, amountAt(amount, draw(countOf(amount)))]));
    const numbers = numbersFrom(task, trainee, drawn);
    if (typeof numbers === "string") {
      last = numbers;
      continue;
    }
    if (numbers.hidden.size === 0) return numbers;
    if (!best || numbers.hidden.size < best.hidden.size) best = numbers;
  }
  if (best) return best;
  throw new Refusal(
    say`${task.file}: ${mostDraws} draws gave no numbers that the page allows; the last broke ${last}.`,
  );
}
