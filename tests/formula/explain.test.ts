import { describe, expect, it } from "vitest";
import { callFunction, inOrder, traceFunction } from "../../src/formula/call";
import { explainCall, mathematicsOf } from "../../src/formula/explain";
import { catalogue } from "../../src/functions";
import { conductorDrop } from "../../src/functions/conductor/drop";

const first = (name: string, given: Record<string, unknown>) => {
  const definition = catalogue.find((one) => one.name === name) as (typeof catalogue)[number];
  return explainCall(definition, inOrder(definition, given));
};

describe("the explanation of a call", () => {
  it.each(catalogue)(
    "$name: every step has mathematics, numbers, value and why, and ends in the answer",
    (definition) => {
      for (const example of definition.examples) {
        const given = inOrder(definition, example.given);
        const explained = explainCall(definition, given);
        const values = traceFunction(definition, given);
        expect(explained.result).toBe(callFunction(definition, given));
        expect(explained.steps).toHaveLength(definition.steps.length);
        for (const step of explained.steps) {
          expect(step.symbols.text).not.toBe("");
          expect(step.symbols.mathml).toMatch(/^<math .*<\/math>$/);
          expect(step.numbers?.mathml).toMatch(/^<math .*<\/math>$/);
          expect(step.why).not.toBe("");
          expect(step.reached).toBe(true);
          if (step.symbol !== "") expect(step.value).toEqual(values.get(step.symbol));
          if (step.kind !== "algebra") expect(step.words).not.toBe("");
        }
        const last = explained.steps.findLast(({ symbol }) => symbol !== "");
        expect(typeof last?.value === "number" ? last.value + 0 : last?.value).toBe(explained.result);
      }
    },
  );

  it.each(catalogue)("$name: its mathematics stand without a call", (definition) => {
    for (const step of mathematicsOf(definition)) {
      expect(step.symbols.mathml).not.toContain("undefined");
      expect(step.numbers).toBeUndefined();
      expect(step.reached).toBe(false);
    }
  });

  it("says what was given, what is by default, and where each constant stands", () => {
    const explained = explainCall(conductorDrop, [300, 10, 50, null]);
    expect(explained.arguments.map(({ words, value, unit, by }) => [words, value, unit, by])).toEqual([
      ["current", 300, "A", "given"],
      ["run", 10, "m", "given"],
      ["area", 50, "mm2", "given"],
      ["temperature", 20, "degC", "default"],
      ["parallel", 1, "1", "default"],
    ]);
    expect(explained.constants.map(({ value, unit }) => [value, unit])).toEqual([
      [0.00393, "1/K"],
      [20, "degC"],
      [1000, "m/km"],
    ]);
    for (const { source } of explained.constants) expect(source.line).not.toBe("");
  });

  it("shows each step with the numbers put in: 300 A over 10 m of 50 mm2, 0.386 ohm/km (IEC 60228)", () => {
    const explained = explainCall(conductorDrop, [300, 10, 50]);
    expect(explained.steps.map(({ numbers }) => numbers?.text)).toEqual([
      "r = IEC 60228 sizes, at 50 mm2",
      "R = 0.386 / 1000 × 10 × (1 + 0.00393 × (20 − 20)) / 1",
      "U = 0.00386 × 300",
    ]);
    expect(explained.steps[0]?.words).toContain("0.386 ohm/km");
    expect(explained.steps[0]?.source?.line).toContain("IEC 60228");
  });

  it("stops at the step that refuses, with its sentence", () => {
    const explained = explainCall(conductorDrop, [300, 10, 55]);
    expect(explained.result).toBeUndefined();
    expect(explained.refusal?.sentence).toContain("55");
    expect(explained.steps[0]).toMatchObject({ reached: true, refusal: explained.refusal?.sentence });
    const narrow = first("TUNNEL.FRICTION", { length: 1000, diameter: 100, speed: 0.01 });
    expect(narrow.refusal?.sentence).toContain("Reynolds number");
    expect(narrow.steps.map(({ reached, refusal }) => [reached, refusal !== undefined]).slice(0, 3)).toEqual([
      [true, false],
      [true, true],
      [false, false],
    ]);
    expect(narrow.steps[1]?.numbers?.text).toContain("≥ 4000");
  });

  it("says which argument is outside its limits and which is one too many", () => {
    const explained = explainCall(conductorDrop, [-5, 10, 50, null, null, 7]);
    expect(explained.arguments[0]).toMatchObject({
      inside: false,
      allowed: "0 to 5000 A",
      refusal: "current: -5 A (allowed 0 to 5000 A)",
    });
    expect(explained.surplus).toBe("CONDUCTOR.DROP: takes 5 arguments, got 6");
    expect(explained.steps.every(({ reached }) => !reached)).toBe(true);
  });

  it("tells how a size was found: the last one passed over and the first that holds", () => {
    const found = first("CONDUCTOR.LEAST", { current: 300, run: 10, drop: 1 });
    const step = found.steps.find(({ kind }) => kind === "first");
    expect(step?.words).toMatch(/the last of them 50 .* 70 satisfies it/);
  });

  it("tells how a root was closed in on", () => {
    const found = first("TUNNEL.FRICTION", { length: 100, diameter: 100, speed: 11.892 });
    expect(found.steps.find(({ kind }) => kind === "root")?.words).toMatch(/^5 → 9\.09.*the last step moved it by 0$/);
  });
});
