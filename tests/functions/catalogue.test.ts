import { describe, expect, it } from "vitest";
import { Engine } from "../../src/engine/engine";
import { defaultOf, words } from "../../src/formula/arguments";
import { callFunction, inOrder, program } from "../../src/formula/call";
import { Fault } from "../../src/formula/fault";
import { sourceLine } from "../../src/formula/source";
import type { Given } from "../../src/formula/value";
import { catalogue } from "../../src/functions";
import { exampleFormula } from "../../src/notebook/proof-page";
import { isUnitText } from "../../src/units/names";

const cases = catalogue.flatMap((definition) =>
  definition.examples.map((example) => ({
    name: `${definition.name} ${JSON.stringify(example.given)} = ${example.expect} (${sourceLine(example.source)})`,
    definition,
    example,
  })),
);

function sentenceOf(definition: (typeof catalogue)[number], given: readonly Given[]): string {
  try {
    return `answered ${String(callFunction(definition, given))}`;
  } catch (problem) {
    if (problem instanceof Fault) return problem.sentence;
    throw problem;
  }
}

describe("every named function", () => {
  it.each(cases)("$name", ({ definition, example }) => {
    const answer = callFunction(definition, inOrder(definition, example.given));
    if (typeof example.expect !== "number") expect(answer).toBe(example.expect);
    else expect(Math.abs(Number(answer) - example.expect)).toBeLessThanOrEqual(example.within);
  });

  it.each(cases)("gives the same bits in a cell: $name", ({ definition, example }) => {
    const engine = new Engine([{ name: "Page", rows: [[exampleFormula(definition, example.given)]] }]);
    const value = engine.value({ sheet: 0, row: 0, column: 0 });
    engine.dispose();
    const direct = callFunction(definition, inOrder(definition, example.given));
    expect(
      value.kind === "number" || value.kind === "flag" ? value.value : value.kind === "text" ? value.text : value,
    ).toBe(direct);
  });

  it.each(catalogue)("$name is whole: units, sources, validity, steps that read", (definition) => {
    expect(definition.sources.length).toBeGreaterThan(0);
    expect(definition.examples.length).toBeGreaterThan(0);
    expect(definition.valid).toMatch(/^[A-Z\d].* .*\.$/s);
    expect(definition.title.length).toBeGreaterThan(5);
    for (const argument of Object.values(definition.args)) {
      if ("unit" in argument && argument.unit !== "any") expect(isUnitText(argument.unit)).toBe(true);
      expect(argument.about.length).toBeGreaterThan(2);
    }
    for (const constant of Object.values(definition.constants ?? {})) expect(constant.source.title).not.toBe("");
    for (const step of definition.steps) if ("why" in step) expect(step.why.length).toBeGreaterThan(2);
    expect(() => program(definition)).not.toThrow();
  });

  it.each(catalogue)("$name names the argument that is blank", (definition) => {
    const example = inOrder(definition, definition.examples[0].given);
    Object.entries(definition.args).forEach(([name, argument], i) => {
      if (defaultOf(argument) !== undefined) return;
      const blanked = example.map((value, j) => (i === j ? null : value));
      expect(sentenceOf(definition, blanked)).toBe(`${words(name)}: blank`);
    });
  });

  it.each(catalogue)("$name names the argument that cannot be fitted", (definition) => {
    const example = inOrder(definition, definition.examples[0].given);
    Object.entries(definition.args).forEach(([name, argument], i) => {
      const wrong: Given[] = argument.kind === "text" || argument.kind === "key" ? [true] : ["nonsense"];
      if (argument.kind === undefined || argument.kind === "number") {
        if (argument.min !== undefined) wrong.push(argument.min - 1);
        if (argument.max !== undefined) wrong.push(argument.max + 1, Number.POSITIVE_INFINITY);
        wrong.push([1, 2, 3], true);
      }
      for (const value of wrong) {
        const sentence = sentenceOf(
          definition,
          example.map((old, j) => (i === j ? value : old)),
        );
        expect(
          sentence.startsWith(`${words(name)}: `),
          `${definition.name} ${name} ${String(value)}: ${sentence}`,
        ).toBe(true);
      }
    });
  });

  it.each(catalogue)("$name refuses more arguments than it has", (definition) => {
    const surplus = [...inOrder(definition, definition.examples[0].given), 1];
    const count = Object.keys(definition.args).length;
    expect(sentenceOf(definition, surplus)).toBe(`${definition.name}: takes ${count} arguments, got ${count + 1}`);
  });

  it("has a name of its own", () => {
    expect(new Set(catalogue.map(({ name }) => name)).size).toBe(catalogue.length);
  });
});
