import { Engine } from "../engine/engine";
import { blank, type CellValue } from "../engine/value";
import { callIn, replaceNames } from "./names";
import type { Scalar } from "./scalar";
import { type Mistake, mistakesOf, type Requirement, type Task } from "./task";

/** Everything that a task comes to for one set of drawn values. */
export interface Worked {
  /** By name: drawn, made, steps of the solution, answers. */
  readonly values: ReadonlyMap<string, CellValue>;
  readonly mistakes: ReadonlyMap<Mistake, CellValue>;
  readonly requirements: ReadonlyMap<Requirement, CellValue>;
}

/** The column of a task's sheet in which each row of it has its cell. */
const at = (row: number) => ({ sheet: 0, row, column: 0 });

/**
 * A task as cells of the engine, so that the solution, its steps and the mistakes are calculated by the same
 * functions as any notebook. Drawn values are typed in; all else follows.
 */
export class TaskCells {
  private readonly engine: Engine;
  /** Row of each name. */
  private readonly rows: ReadonlyMap<string, number>;
  private readonly typed = new Map<string, Scalar>();

  constructor(readonly task: Task) {
    const named = [...task.drawn, ...task.made, ...task.way];
    this.rows = new Map(named.map(({ name }, row) => [name, row]));
    const formulas = [...named, ...mistakesOf(task), ...task.requirements].map((one) =>
      "formula" in one ? this.cellFormula(one.formula) : "",
    );
    this.engine = new Engine([{ name: "Task", rows: formulas.map((text) => [text]) }]);
  }

  /** A formula over names as one over cells. */
  private cellFormula(formula: string): string {
    return `=${replaceNames(formula, (name) => {
      const row = this.rows.get(name);
      return row === undefined ? undefined : `A${row + 1}`;
    })}`;
  }

  private type(values: ReadonlyMap<string, Scalar>): void {
    const changes = [...values].flatMap(([name, value]) => {
      const row = this.rows.get(name);
      if (row === undefined || this.typed.get(name) === value) return [];
      this.typed.set(name, value);
      return [{ ...at(row), text: String(value) }];
    });
    if (changes.length > 0) this.engine.write(changes);
  }

  /** Works the task for drawn values; a name that is left out keeps what it had. */
  work(drawn: ReadonlyMap<string, Scalar>): Worked {
    this.type(drawn);
    const mistakes = mistakesOf(this.task);
    const first = this.rows.size;
    return {
      values: new Map([...this.rows].map(([name, row]) => [name, this.engine.value(at(row))])),
      mistakes: new Map(mistakes.map((mistake, i) => [mistake, this.engine.value(at(first + i))])),
      requirements: new Map(
        this.task.requirements.map((one, i) => [one, this.engine.value(at(first + mistakes.length + i))]),
      ),
    };
  }

  /** What an answer would come to if an earlier one were what the trainee made of it. */
  workFrom(drawn: ReadonlyMap<string, Scalar>, earlier: ReadonlyMap<string, number>, name: string): CellValue {
    this.type(drawn);
    const cells = [...earlier.keys()].map((one) => at(this.rows.get(one) ?? 0));
    const formulas = cells.map((cell) => this.engine.formula(cell) ?? "");
    this.engine.write(
      [...earlier.values()].map((value, i) => ({ ...(cells[i] as (typeof cells)[0]), text: String(value) })),
    );
    const value = this.valueOf(name);
    this.engine.write(cells.map((cell, i) => ({ ...cell, text: formulas[i] ?? "" })));
    return value;
  }

  private valueOf(name: string): CellValue {
    const row = this.rows.get(name);
    return row === undefined ? blank : this.engine.value(at(row));
  }

  /** The function that a formula calls and the values of its arguments; undefined when it is not one call alone. */
  callOf(drawn: ReadonlyMap<string, Scalar>, formula: string): { name: string; given: CellValue[] } | undefined {
    const call = callIn(formula);
    if (!call) return undefined;
    this.type(drawn);
    const given = call.args.map((arg) =>
      arg === "" ? blank : (this.engine.calculate(this.cellFormula(arg))[0]?.[0] ?? blank),
    );
    return { name: call.name, given };
  }

  dispose(): void {
    this.engine.dispose();
  }
}

const kept = new WeakMap<Task, TaskCells>();

/** The cells of a task, built once. */
export function cellsOf(task: Task): TaskCells {
  const known = kept.get(task) ?? new TaskCells(task);
  kept.set(task, known);
  return known;
}
