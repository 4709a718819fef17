import type { Arithmetic, Comparison, Expression, MathName } from "./expression";
import { element, fenced, mathCases, mathName, mathNumber, mathOperator, mathRow, mathWords } from "./math-element";
import { numberParts } from "./number-text";

const comparisonSigns: Readonly<Record<Comparison, string>> = {
  "<": "<",
  "<=": "≤",
  ">": ">",
  ">=": "≥",
  "==": "=",
  "!=": "≠",
};

const rank: Readonly<Record<Arithmetic, number>> = { "+": 1, "-": 1, "*": 2, "/": 4, "^": 3 };

/** How tightly a set formula holds together; a fraction, a root or a name never needs brackets in a product. */
function rankOf(expression: Expression): number {
  switch (expression.kind) {
    case "binary":
      return rank[expression.op];
    case "minus":
      return 1;
    case "number":
      return expression.value < 0 ? 1 : 4;
    case "compare":
    case "logic":
      return 0;
    default:
      return 4;
  }
}

const atLeast = (expression: Expression, least: number): string => {
  const set = mathExpression(expression);
  return rankOf(expression) >= least ? set : fenced(set);
};

function mathBinary(op: Arithmetic, left: Expression, right: Expression): string {
  switch (op) {
    case "/":
      return element("mfrac", mathExpression(left), mathExpression(right));
    case "^": {
      // Negative and compound bases have brackets, so that nobody reads -(a^2) for (-a)^2.
      const plain =
        left.kind === "name" || (left.kind === "number" && left.value >= 0 && numberParts(left.value).power === 0);
      return element("msup", plain ? mathExpression(left) : fenced(mathExpression(left)), mathExpression(right));
    }
    case "*":
      return mathRow(
        atLeast(left, 2),
        mathOperator(left.kind === "number" || right.kind === "number" ? "×" : "⋅"),
        atLeast(right, 2),
      );
    case "+":
      return mathRow(
        mathExpression(left),
        mathOperator("+"),
        right.kind === "binary" ? mathExpression(right) : atLeast(right, 2),
      );
    case "-":
      return mathRow(mathExpression(left), mathOperator("−"), atLeast(right, 2));
  }
}

function mathCall(name: MathName, args: readonly Expression[]): string {
  const [first, ...rest] = args.map(mathExpression);
  const of = first ?? "";
  switch (name) {
    case "sqrt":
      return element("msqrt", of);
    case "abs":
      return mathRow(mathOperator("|"), of, mathOperator("|"));
    case "ceil":
      return mathRow(mathOperator("⌈"), of, mathOperator("⌉"));
    case "floor":
      return mathRow(mathOperator("⌊"), of, mathOperator("⌋"));
    case "exp":
      return element("msup", "<mi>e</mi>", of);
    case "log10":
      return mathRow(element("msub", "<mi>log</mi>", "<mn>10</mn>"), fenced(of));
    case "radians":
      // An angle in degrees is shown with its sign; the factor π/180 says nothing to a reader.
      return args[0]?.kind === "name" || args[0]?.kind === "number"
        ? mathRow(of, mathOperator("°"))
        : mathRow(fenced(of), mathOperator("°"));
    case "degrees":
      return mathRow(element("mi", "deg"), fenced(of));
    default:
      return mathRow(element("mi", name), fenced([of, ...rest].join(mathOperator(","))));
  }
}

/** A formula as the content of a `<math>` element. Names are set as symbols or as words, numbers as numbers. */
export function mathExpression(expression: Expression): string {
  switch (expression.kind) {
    case "number":
      return mathNumber(expression.value);
    case "name":
      return mathName(expression.name);
    case "minus":
      return mathRow(mathOperator("−"), atLeast(expression.of, 2));
    case "binary":
      return mathBinary(expression.op, expression.left, expression.right);
    case "compare":
      return mathRow(
        mathExpression(expression.left),
        mathOperator(comparisonSigns[expression.op]),
        mathExpression(expression.right),
      );
    case "logic": {
      const side = (one: Expression) => (one.kind === "logic" ? fenced(mathExpression(one)) : mathExpression(one));
      return mathRow(side(expression.left), mathWords(`\u00A0${expression.op}\u00A0`), side(expression.right));
    }
    case "call":
      return mathCall(expression.name, expression.args);
    case "choice":
      return mathCases([
        { value: mathExpression(expression.then), when: mathExpression(expression.test) },
        { value: mathExpression(expression.otherwise), when: undefined },
      ]);
  }
}
