import { betweenNumbers } from "../../words/decimal-sign";
import { counted, say } from "../../words/say";
import type { Expression } from "../expression";
import { element, fenced, mathName, mathOperator, mathRow, mathWords } from "../math-element";
import { mathExpression } from "../mathml";
import { numberText } from "../number-text";
import { readExpression } from "../read";
import { readerText } from "../reader-text";
import type { Mean } from "../steps/mean";
import type { Root } from "../steps/root";
import type { Sum } from "../steps/sum";
import type { Total } from "../steps/total";
import { symbolText } from "../symbol-name";
import type { Explain } from "./kinds";
import type { Standing, Written } from "./standing";

/** More terms than this are not listed one by one. */
const mostListed = 8;

const listed = (values: readonly number[]): string => {
  if (values.length <= mostListed) return values.map(numberText).join(betweenNumbers());
  const first = values.slice(0, mostListed - 1).map(numberText);
  return `${first.join(betweenNumbers())} … ${numberText(values.at(-1) as number)}`;
};

export const sayRoot: Explain<Root> = (step, after) => {
  const start = readExpression(step.start);
  const next = readExpression(step.next);
  const form = (from: Expression, rule: Expression): Written => {
    const end = `, ${say`${step.times} times, from`} ${readerText(from)}`;
    return {
      text: `${readerText(rule)}${end}`,
      markup: mathRow(
        mathExpression(rule),
        mathWords(`,\u00A0${say`${step.times} times, from`}\u00A0`),
        mathExpression(from),
      ),
    };
  };
  const path = after ? steps(step, after) : [];
  const moved = Math.abs((path.at(-1) ?? 0) - (path.at(-2) ?? 0));
  return {
    symbols: form(start, next),
    numbers: after && form(after.put(step.start), after.put(step.next, [step.symbol])),
    words: after ? say`${path.map(numberText).join(" → ")}; the last step moved it by ${numberText(moved)}` : "",
  };
};

function steps(step: Root, after: Standing): readonly number[] {
  const path = [after.number(step.start)];
  for (let i = 0; i < step.times; i++) {
    path.push(after.with({ [step.symbol]: path.at(-1) as number }).number(step.next));
  }
  return path;
}

const bounds = (name: string, from: Expression, to: Expression): string =>
  element(
    "munderover",
    mathOperator("∑"),
    mathRow(mathName(name), mathOperator("="), mathExpression(from)),
    mathExpression(to),
  );

const held = (term: Expression): string =>
  term.kind === "binary" && (term.op === "+" || term.op === "-") ? fenced(mathExpression(term)) : mathExpression(term);

const zero: Expression = { kind: "number", value: 0 };
const lessOne = (of: Expression): Expression =>
  of.kind === "number"
    ? { kind: "number", value: of.value - 1 }
    : { kind: "binary", op: "-", left: of, right: { kind: "number", value: 1 } };

export const saySum: Explain<Sum> = (step, after) => {
  const form = (n: Expression, term: Expression): Written => {
    const to = lessOne(n);
    return {
      text: say`sum over ${symbolText(step.index)} = 0 to ${readerText(to)} of ${readerText(term)}`,
      markup: mathRow(bounds(step.index, zero, to), held(term)),
    };
  };
  const terms = after
    ? Array.from({ length: Math.max(0, Math.ceil(after.number(step.count))) }, (_, i) =>
        after.with({ [step.index]: i }).number(step.term),
      )
    : [];
  return {
    symbols: form(readExpression(step.count), readExpression(step.term)),
    numbers: after && form(after.put(step.count), after.put(step.term, [step.index])),
    words: after ? `${counted(terms.length, "term")}: ${listed(terms)}` : "",
  };
};

export const sayTotal: Explain<Total> = (step, after) => {
  const form = (term: Expression): Written => ({
    text: say`sum over the cells ${symbolText(step.each)} of ${symbolText(step.over)}, of ${readerText(term)}`,
    markup: mathRow(
      element(
        "munder",
        mathOperator("∑"),
        mathRow(mathName(step.each), mathWords(`\u00A0${say`in`}\u00A0`), mathName(step.over)),
      ),
      held(term),
    ),
  });
  const cells = (after?.value(step.over) ?? []) as readonly number[];
  const terms = after ? cells.map((each) => after.with({ [step.each]: each }).number(step.term)) : [];
  return {
    symbols: form(readExpression(step.term)),
    numbers: after && form(after.put(step.term, [step.each])),
    words: after ? `${counted(terms.length, "cell")}: ${listed(terms)}` : "",
  };
};

export const sayMean: Explain<Mean> = (step, after) => {
  const form = (from: Expression, to: Expression, term: Expression, weight: Expression | undefined): Written => {
    const over = say`mean over ${symbolText(step.angle)} from ${readerText(from)} to ${readerText(to)}`;
    return {
      text: say`${over} of ${readerText(term)}${weight ? say`, weighted with ${readerText(weight)}` : ""}`,
      markup: weight
        ? element(
            "mfrac",
            mathRow(mathOperator("∑"), held(term), mathOperator("⋅"), held(weight)),
            mathRow(mathOperator("∑"), held(weight)),
          )
        : mathRow(element("mfrac", "<mn>1</mn>", `<mn>${step.points}</mn>`), mathOperator("∑"), held(term)),
    };
  };
  const weight = step.weight === undefined ? undefined : readExpression(step.weight);
  const range = after && [after.number(step.from), after.number(step.to)];
  return {
    symbols: form(readExpression(step.from), readExpression(step.to), readExpression(step.term), weight),
    numbers:
      after &&
      form(
        after.put(step.from),
        after.put(step.to),
        after.put(step.term, [step.angle]),
        step.weight === undefined ? undefined : after.put(step.weight, [step.angle]),
      ),
    words: range
      ? say`read at ${step.points} evenly spaced points, in the middle of equal parts of ${range.map(numberText).join(" … ")} rad`
      : "",
  };
};
