import { describe, expect, it } from "vitest";
import { callFunction, inOrder } from "../../src/formula/call";
import { defineFunction } from "../../src/formula/define";
import type { AnyDefinition } from "../../src/formula/definition";
import { Fault } from "../../src/formula/fault";
import { readExpression } from "../../src/formula/read";
import { runnable } from "../../src/formula/run";
import { expressionScript } from "../../src/formula/script/expression";
import { identity } from "../../src/formula/source";
import { readSurface } from "../../src/formula/surface/read-surface";
import { functionText } from "../../src/formula/text";
import type { Answer, Given } from "../../src/formula/value";
import { catalogue } from "../../src/functions";
import { convertUnit } from "../../src/units/convert";
import { anyArguments, hostile } from "./any-arguments";
import { randomExpression, seeded } from "./random-expression";

type Call = (...given: readonly Given[]) => Answer;

const compiled = (text: string): Call =>
  new Function("convertUnit", "readSurface", `"use strict";return ${text}`)(convertUnit, readSurface);

/** The answer of the closures, a refusal as NaN. */
function reference(definition: AnyDefinition, given: readonly Given[]): Answer {
  try {
    return callFunction(definition, given);
  } catch (cause) {
    if (cause instanceof Fault) return Number.NaN;
    throw cause;
  }
}

const isNumber = (value: Given): boolean => typeof value === "number";

describe("functions as JavaScript text", () => {
  it.each(catalogue.map((definition) => [definition.name, definition] as const))(
    "%s gives the same bits as its steps, and NaN where they refuse",
    (_name, definition) => {
      const call = compiled(functionText(definition));
      const forms = Object.keys(definition.args).map(() => "number" as const);
      const callNumbers = compiled(functionText(definition, forms));
      const random = seeded(definition.name.length * 7919 + definition.name.charCodeAt(0));
      const examples = definition.examples.map(({ given }) => inOrder(definition, given));
      const cases = Array.from({ length: 400 }, (_, i) =>
        anyArguments(random, definition, i < 250 ? 0 : i < 350 ? 0.15 : 0.6),
      );
      let answered = 0;
      for (const given of [...examples, ...cases]) {
        const expected = reference(definition, given);
        const actual = call(...given);
        if (!Object.is(actual, expected)) expect({ given, answer: actual }).toEqual({ given, answer: expected });
        if (!Number.isNaN(expected)) answered++;
        if (given.every(isNumber)) expect(callNumbers(...given), JSON.stringify(given)).toBe(expected);
      }
      // The examples at least must be answered, else equality would say nothing.
      expect(answered).toBeGreaterThanOrEqual(examples.length);
    },
  );

  it("refuses what is not finite, one argument after the other", () => {
    for (const definition of catalogue) {
      const call = compiled(functionText(definition));
      const [example] = definition.examples;
      const good = inOrder(definition, example.given);
      good.forEach((_, i) => {
        for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
          const given = good.with(i, bad);
          expect(call(...given), `${definition.name} ${i}`).toBe(reference(definition, given));
        }
      });
    }
  });

  it("answers many of the random cases of most functions", () => {
    const share = catalogue.map((definition) => {
      const random = seeded(17);
      const cases = Array.from({ length: 200 }, () => anyArguments(random, definition, 0));
      return cases.filter((given) => !Number.isNaN(reference(definition, given))).length / cases.length;
    });
    expect(share.filter((one) => one > 0.2).length / share.length).toBeGreaterThan(0.8);
  });
});

describe("formulas as JavaScript text", () => {
  it("have the bits of the closures on 3000 random trees with hostile numbers", () => {
    const random = seeded(4242);
    const names = ["a", "b", "c"];
    const places = new Map(names.map((name, i) => [name, i]));
    const variables = new Map(names.map((name, i) => [name, `s[${i}]`]));
    const numbers = hostile.filter((value) => typeof value === "number");
    for (let i = 0; i < 3000; i++) {
      const tree = randomExpression(random, names, 4);
      const run = runnable(tree, places);
      const text = new Function("s", `return ${expressionScript(tree, variables)}`);
      for (let k = 0; k < 4; k++) {
        const slots = names.map(() =>
          random() < 0.4
            ? (numbers[Math.floor(random() * numbers.length)] ?? 0)
            : (random() - 0.3) * 10 ** (3 * random()),
        );
        expect(text(slots)).toBe(run(slots));
      }
    }
  });

  it("refuse a name that is not defined, as the closures do", () => {
    const tree = readExpression("a + later");
    expect(() => expressionScript(tree, new Map([["a", "s[0]"]]))).toThrow("later is not defined before its use");
  });
});

it("lets no word of a definition become code", () => {
  const evil = '";globalThis.broken=1;//`\u2028\\"';
  const definition = defineFunction({
    name: "TEST.WORDS",
    title: "Words that look like code",
    args: { constructor: { kind: "text", about: "any" }, way: { kind: "text", about: "any", choices: [evil, "x"] } },
    steps: [{ kind: "choose", symbol: "y", by: "way", cases: { [evil]: "1", x: "2" }, unit: "1", why: "choice" }],
    valid: "test only",
    sources: [identity("none")],
    examples: [{ given: { constructor: "", way: "x" }, expect: 2, within: 0, source: identity("none") }],
  });
  const text = functionText(definition);
  expect(text).not.toContain("constructor");
  expect(compiled(text)("a", evil)).toBe(1);
  expect(compiled(text)(evil, "x")).toBe(2);
  expect(globalThis).not.toHaveProperty("broken");
});
