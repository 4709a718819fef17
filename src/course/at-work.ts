import { type Amount, amountAt, countOf } from "./amount";
import { isGiven } from "./asked";
import { namesIn } from "./names";
import { type Numbers, numbersTried, scalarOf } from "./numbers";
import type { Scalar } from "./scalar";
import type { Calculated, Drawn, Task } from "./task";
import { cellsOf } from "./task-cells";

/** So many places on a slider are finer than a hand. */
const mostSteps = 60;

/** The names of drawn numbers that a formula depends on, straight or by way of others. */
function rootsOf(task: Task, formula: string): ReadonlySet<string> {
  const found = new Set<string>();
  const look = (text: string): void => {
    for (const name of namesIn(text)) {
      if (found.has(name)) continue;
      found.add(name);
      const step = [...task.made, ...task.way].find((one) => one.name === name);
      if (step) look(step.formula);
    }
  };
  look(formula);
  return found;
}

/** The smallest of 1, 2, 5, 10, 20 ... that takes a width in so many steps. */
function roundStep(width: number): number {
  const rough = width / mostSteps;
  const power = 10 ** Math.floor(Math.log10(rough) + 1e-9);
  return (([1, 2, 5].find((one) => one * power >= rough * (1 - 1e-9)) as number | undefined) ?? 10) * power;
}

const digitsOf = (value: number): number => String(value).split(".")[1]?.length ?? 0;

/** Even steps through a value over a range, no finer than the values are; undefined where there is no range. */
function amountAround(own: number, values: readonly number[]): Amount | undefined {
  const [low, high] = [Math.min(own, ...values), Math.max(own, ...values)];
  if (!(high - low > 1e-9 * Math.abs(own))) return undefined;
  const digits = Math.max(...[own, ...values].map(digitsOf));
  const step = Math.max(roundStep(high - low), 10 ** -digits);
  const below = Math.floor((own - low) / step + 1e-9);
  return {
    kind: "steps",
    from: Number((own - below * step).toFixed(digits)),
    step,
    count: below + Math.floor((high - own) / step + 1e-9) + 1,
    digits,
  };
}

/** What a number that follows comes to at the ends of the numbers behind it that the question does not give. */
function valuesOf(numbers: Numbers, name: string, behind: readonly Drawn[]): readonly number[] {
  const { task, drawn } = numbers;
  const ends = behind.reduce<ReadonlyMap<string, Scalar>[]>(
    (all, { name: one, amount }) =>
      all.flatMap((before) =>
        [0, countOf(amount) - 1].map((place) => new Map([...before, [one, amountAt(amount, place)]])),
      ),
    [new Map(drawn)],
  );
  return ends.flatMap((values) => {
    const value = scalarOf(cellsOf(task).work(values).values.get(name));
    return typeof value === "number" ? [value] : [];
  });
}

const literal = (value: Scalar): string =>
  typeof value === "number" ? String(value) : `"${value.replaceAll('"', '""')}"`;

/** The given numbers that follow from the draw in a way that the question does not give, each with a range of its own. */
function freed(numbers: Numbers, hidden: readonly Drawn[]): readonly Drawn[] {
  const { task, worked } = numbers;
  const given = isGiven(task);
  return task.made.flatMap(({ formula, ...one }): Drawn[] => {
    const roots = rootsOf(task, formula);
    const behind = hidden.filter(({ name }) => roots.has(name));
    const own = scalarOf(worked.values.get(one.name));
    if (!given(one.name) || behind.length === 0 || typeof own !== "number") return [];
    const amount = amountAround(own, valuesOf(numbers, one.name, behind));
    return amount ? [{ ...one, amount }] : [];
  });
}

/**
 * A task as it is tried out: what moves are numbers that the question gives and that an answer follows from. Numbers
 * that only serve the draw stay as they fell; what they led to can be moved in their place, each on its own.
 */
export function taskAtWork(numbers: Numbers): Numbers {
  const { task, trainee, drawn, worked } = numbers;
  const given = isGiven(task);
  const free = freed(
    numbers,
    task.drawn.filter(({ name }) => !given(name)),
  );
  const isFree = new Set(free.map(({ name }) => name));
  const follows = task.made.filter(({ name }) => !isFree.has(name));
  const roots = new Set(task.answers.flatMap(({ formula }) => [...rootsOf({ ...task, made: follows }, formula)]));
  const moves = ({ name }: Drawn) => roots.has(name) && (given(name) || isFree.has(name));
  const fixed = task.drawn
    .filter((one) => !moves(one))
    .map(({ amount: _, ...one }): Calculated => ({ ...one, formula: literal(drawn.get(one.name) ?? "") }));
  const moving = [...task.drawn, ...free].filter(moves).sort((a, b) => a.row - b.row);
  const isFixed = new Set(fixed.map(({ name }) => name));
  const tried: Task = {
    ...task,
    drawn: moving,
    made: [...fixed, ...task.made.filter(({ name }) => !moving.some((one) => one.name === name))],
    // What a condition says of a number behind the draw means nothing here.
    requirements: task.requirements.filter(({ formula }) => !namesIn(formula).some((name) => isFixed.has(name))),
  };
  const start = new Map(
    moving.map(({ name }) => [name, drawn.get(name) ?? (scalarOf(worked.values.get(name)) as Scalar)]),
  );
  const found = numbersTried(tried, trainee, start);
  return typeof found === "string" ? numbers : found.numbers;
}
