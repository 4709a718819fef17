import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { allowanceWords, asAsked, readAllowance, standsFor } from "../../src/course/allowance";
import { markTask, markWordsOf } from "../../src/course/mark";
import { numbersFrom } from "../../src/course/numbers";
import { readTyped } from "../../src/course/typed";
import { courseOf, smallTask, taskOf } from "./course";

const course = courseOf(smallTask);
const task = taskOf(course, "only.csv");

/** Area 20 m2, pressure 73 Pa: push 1460 N, half 730 N, much. */
function marks(typed: Readonly<Record<string, string>>): Readonly<Record<string, string>> {
  const numbers = numbersFrom(
    task,
    "T1",
    new Map([
      ["area", 20],
      ["pressure", 73],
    ]),
  );
  if (typeof numbers === "string") throw new Error(numbers);
  return Object.fromEntries(
    markTask(numbers, new Map(Object.entries(typed))).map(({ answer, mark }) => [answer.name, markWordsOf(mark)]),
  );
}

describe("marking", () => {
  it.each(["1460", "1460 N", "1.46 kN", "1 460", "1'460", "1460.0", "1,46 kN", "1.46e3", "1474", "1446", "+1460"])(
    "takes %s for right",
    (typed) => {
      expect(marks({ push: typed }).push).toBe("right");
    },
  );

  it.each([
    ["", "blank"],
    ["  ", "blank"],
    ["3.65", "not right: divided instead. Multiply."],
    ["1500", "not right: rounded too far. The way is right; give more figures."],
    [
      "1.46",
      "not right: a power of ten off. The figures are right; look at the decimal point and at the units (mm and m, mΩ and Ω, g and kg).",
    ],
    ["1800", "not right"],
    ["1476", "not right"],
    ["-1460", "not right"],
    ["about right", 'cannot be read: "about right" is no number'],
    ["1460 mm", 'cannot be read: "1460 mm" is not given in N'],
    ["1,460", "cannot be read: the comma may part thousands or be the decimal sign (1460 or 1.46)"],
  ])("says of %j: %s", (typed, words) => {
    expect(marks({ push: typed }).push).toBe(words);
  });

  it("sees what follows from a wrong answer before, numbers and choices alike", () => {
    const made = marks({ push: "1100", half: "550", verdict: "little" });
    expect(made).toEqual({
      push: "not right",
      half: "follows from your own push, which is not right",
      verdict: "follows from your own push, which is not right",
    });
    // The right answer stays right, whatever stands before it.
    expect(marks({ push: "1000", half: "730", verdict: "much" })).toMatchObject({ half: "right", verdict: "right" });
    // With the push right, a wrong verdict is the mistake itself.
    expect(marks({ push: "1460", verdict: "little" }).verdict).toBe("not right: the wrong way round. Compare again.");
  });

  it("marks the next trainee afresh after an answer was followed up", () => {
    marks({ push: "1000", half: "500" });
    expect(marks({ push: "1460", half: "730" })).toMatchObject({ push: "right", half: "right" });
  });

  it.each([
    ["much", "right"],
    [" Much ", "right"],
    ["stop and  ask", "not right"],
    ["plenty", 'cannot be read: "plenty" is none of the choices (much / little / stop and ask)'],
    ["", "blank"],
  ])("takes the choice %j as: %s", (typed, words) => {
    expect(marks({ verdict: typed }).verdict).toBe(words);
  });
});

describe("what counts as right", () => {
  it.each([
    ["1 %", "3 figures or more; 1 % either way is right"],
    ["2 %", "3 figures or more; 2 % either way is right"],
    ["5 %", "3 figures or more; 5 % either way is right"],
    ["10 %", "2 figures or more; 10 % either way is right"],
    ["3 mm", "to 1 mm or finer; 3 mm either way is right"],
    ["0.02", "to 0.01 mm or finer; 0.02 mm either way is right"],
    ["0.1", "to 0.1 mm or finer; 0.1 mm either way is right"],
    ["exact", "the exact number"],
  ])("%s is said as: %s", (text, words) => {
    const allowance = readAllowance(text, "mm");
    if (typeof allowance === "string") throw new Error(allowance);
    expect(allowanceWords(allowance, "mm")).toBe(words);
  });

  it("a number rounded as the sheet asks always stands for the exact one", () => {
    const texts = fc.oneof(
      fc.integer({ min: 1, max: 400 }).map((share) => `${share / 10} %`),
      fc.integer({ min: 1, max: 5000 }).map((size) => `${size / 1000}`),
    );
    fc.assert(
      fc.property(texts, fc.double({ min: 1e-3, max: 1e6, noNaN: true }), (text, value) => {
        const allowance = readAllowance(text, "mm");
        if (typeof allowance === "string") throw new Error(allowance);
        expect(standsFor(allowance, Number(asAsked(allowance, value)), value)).toBe(true);
      }),
      { numRuns: 3000 },
    );
  });
});

describe("numbers as people type them", () => {
  it.each<[string, string, number]>([
    ["1514.7", "N", 1514.7],
    ["1 514,7", "N", 1514.7],
    ["1\u202f514,7 N", "N", 1514.7],
    ["1,514.7", "N", 1514.7],
    ["1.514,7", "N", 1514.7],
    ["1,514,700", "N", 1514700],
    ["−3", "mm", -3],
    [".5", "m", 0.5],
    ["50 mm²", "mm2", 50],
    ["20°", "deg", 20],
    ["3 mΩ", "mohm", 3],
    ["0.003 Ω", "mohm", 3],
    ["0.85 m", "mm", 850],
    ["9 plies", "1", 9],
    ["0.8 diameters", "diameters", 0.8],
  ])("%s in %s is %d", (text, unit, value) => {
    const typed = readTyped(text, unit);
    expect(typed.kind).toBe("number");
    expect(typed.kind === "number" ? typed.value : Number.NaN).toBeCloseTo(value, 9);
  });

  it.each([
    ["abc", "N"],
    ["12 kg", "N"],
    ["1.2.3", "N"],
    ["1,23,4", "N"],
    ["=1+1", "N"],
    ["80 %", "1"],
    ["1e999", "N"],
  ])("%s in %s is no number, and not a wrong one", (text, unit) => {
    expect(readTyped(text, unit).kind).toBe("text");
  });
});
