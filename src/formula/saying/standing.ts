import type { Expression } from "../expression";
import { mathExpression } from "../mathml";
import { readExpression } from "../read";
import { readerText } from "../reader-text";
import { runnable, type Slots, testable } from "../run";
import type { Value } from "../value";

/** A call part of the way through: what every name stands for by now. */
export class Standing {
  constructor(
    private readonly places: ReadonlyMap<string, number>,
    private readonly slots: Slots,
  ) {}

  value(name: string): Value | undefined {
    const place = this.places.get(name);
    return place === undefined ? undefined : this.slots[place];
  }

  /** The same call with other values for some names, such as the index of a sum. */
  with(values: Readonly<Record<string, Value>>): Standing {
    const slots = [...this.slots];
    for (const [name, value] of Object.entries(values)) {
      const place = this.places.get(name);
      if (place !== undefined) slots[place] = value;
    }
    return new Standing(this.places, slots);
  }

  number(formula: string): number {
    return runnable(readExpression(formula), this.places)(this.slots);
  }

  holds(condition: string): boolean {
    return testable(readExpression(condition), this.places)(this.slots);
  }

  /** A formula with the numbers put in for all names but those that stand for many values. */
  put(formula: string, except: readonly string[] = []): Expression {
    return put(readExpression(formula), (name) => (except.includes(name) ? undefined : this.value(name)));
  }
}

function put(expression: Expression, valueFor: (name: string) => Value | undefined): Expression {
  const of = (one: Expression): Expression => put(one, valueFor);
  switch (expression.kind) {
    case "number":
      return expression;
    case "name": {
      const value = valueFor(expression.name);
      if (typeof value === "number") return { kind: "number", value };
      return typeof value === "boolean" ? { kind: "name", name: value ? "TRUE" : "FALSE" } : expression;
    }
    case "minus":
      return { ...expression, of: of(expression.of) };
    case "binary":
    case "compare":
    case "logic":
      return { ...expression, left: of(expression.left), right: of(expression.right) };
    case "call":
      return { ...expression, args: expression.args.map(of) };
    case "choice":
      return {
        ...expression,
        test: of(expression.test),
        then: of(expression.then),
        otherwise: of(expression.otherwise),
      };
  }
}

/** A formula both ways, without the `<math>` element around it. */
export interface Written {
  readonly text: string;
  readonly markup: string;
}

export const written = (expression: Expression): Written => ({
  text: readerText(expression),
  markup: mathExpression(expression),
});
