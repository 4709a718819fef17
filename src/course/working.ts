import { explainCall } from "../formula/explain";
import type { Explanation } from "../formula/explanation";
import type { Given } from "../formula/value";
import { catalogue } from "../functions";
import { plainValue } from "../notebook/display";
import { callsIn, namesIn, replaceNames } from "./names";
import { type Numbers, scalarOf } from "./numbers";
import type { Scalar } from "./scalar";
import { shown } from "./shown";
import type { Answer } from "./task";
import { cellsOf } from "./task-cells";

/** One step on the way to the solution, as data for a screen that shows them one after the other. */
export interface WorkingStep {
  readonly name: string;
  readonly about: string;
  readonly unit: string;
  /** The formula as the page has it: `WIND.PUSH(area, speed, coefficient)`. */
  readonly formula: string;
  /** The same with this trainee's numbers in it. */
  readonly numbers: string;
  readonly value: Scalar;
  /** Whether the trainee is asked for this value. */
  readonly isAnswer: boolean;
  /** What the named functions of the formula do inside, step by step, inner ones first. */
  readonly calls: readonly WorkingCall[];
}

/** One call of a named function in a step. */
export interface WorkingCall {
  readonly formula: string;
  readonly explanation: Explanation;
}

const isAnswer = (step: object): step is Answer => "allowance" in step;

function callsOf(numbers: Numbers, formula: string): readonly WorkingCall[] {
  const cells = cellsOf(numbers.task);
  return callsIn(formula).flatMap((one) => {
    const call = cells.callOf(numbers.drawn, one);
    const definition = catalogue.find(({ name }) => name === call?.name);
    if (!call || !definition) return [];
    return {
      formula: one,
      explanation: explainCall(
        definition,
        call.given.map((value): Given => plainValue(value)),
      ),
    };
  });
}

/** Works a task step by step: every step of the solution and every answer in the order of the page. */
export function workingOf(numbers: Numbers): readonly WorkingStep[] {
  const { task, worked } = numbers;
  const texts = new Map(
    [...task.drawn, ...task.made, ...task.way].map(({ name, unit }) => {
      const value = scalarOf(worked.values.get(name));
      return [name, value === undefined ? name : shown(value, unit)] as const;
    }),
  );
  return task.way.map((step) => ({
    name: step.name,
    about: step.about,
    unit: step.unit,
    formula: step.formula,
    numbers: replaceNames(step.formula, (name) => texts.get(name)),
    value: scalarOf(worked.values.get(step.name)) as Scalar,
    isAnswer: isAnswer(step),
    calls: callsOf(numbers, step.formula),
  }));
}

/** The names of the drawn numbers that a step depends on: what a slider beside it may move. */
export function movedBy(numbers: Numbers, step: string): readonly string[] {
  const { task } = numbers;
  const found = new Set<string>();
  const look = (name: string): void => {
    if (found.has(name)) return;
    found.add(name);
    const source = [...task.made, ...task.way].find((one) => one.name === name);
    if (source) for (const next of namesIn(source.formula)) look(next);
  };
  look(step);
  return task.drawn.map(({ name }) => name).filter((name) => found.has(name));
}
