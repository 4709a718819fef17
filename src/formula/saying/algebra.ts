import { say } from "../../words/say";
import { mathCases, mathName, mathOperator, mathRow, mathWords } from "../math-element";
import { readExpression } from "../read";
import type { Algebra } from "../steps/algebra";
import type { Choose } from "../steps/choose";
import type { Convert } from "../steps/convert";
import type { Require } from "../steps/require";
import { symbolText } from "../symbol-name";
import type { Explain } from "./kinds";
import { written } from "./standing";

export const sayAlgebra: Explain<Algebra> = (step, after) => ({
  symbols: written(readExpression(step.formula)),
  numbers: after && written(after.put(step.formula)),
  words: "",
});

export const sayRequire: Explain<Require> = (step, after) => ({
  symbols: written(readExpression(step.holds)),
  numbers: after && written(after.put(step.holds)),
  words: after ? (after.holds(step.holds) ? say`holds` : say`does not hold`) : "",
});

export const sayChoose: Explain<Choose> = (step, after) => {
  const cases = Object.entries(step.cases).map(([word, formula]) => ({
    word,
    ...written(readExpression(formula)),
  }));
  const by = symbolText(step.by);
  const chosen = after && step.cases[String(after.value(step.by))];
  return {
    symbols: {
      text: cases.map(({ word, text }) => say`${text} if ${by} is ${word}`).join(", "),
      markup: mathCases(
        cases.map(({ word, markup }) => ({
          value: markup,
          when: mathRow(mathName(step.by), mathOperator("="), mathWords(word)),
        })),
      ),
    },
    numbers: chosen === undefined || !after ? undefined : written(after.put(chosen)),
    words: after ? say`${by} is ${String(after.value(step.by))}` : "",
  };
};

export const sayConvert: Explain<Convert> = (step, after) => {
  const line = (value: string, from: string, to: string) => say`${value} in ${from}, as ${to}`;
  const names = [step.value, step.from, step.to].map(symbolText) as [string, string, string];
  const texts =
    after && ([step.value, step.from, step.to].map((name) => String(after.value(name))) as [string, string, string]);
  const both = (text: string) => ({ text, markup: mathWords(text) });
  return {
    symbols: both(line(...names)),
    numbers: texts && both(line(...texts)),
    words: texts ? say`converted from ${texts[1]} to ${texts[2]} by the definitions of the units` : "",
  };
};
