import { mersenne } from "pure-rand/generator/mersenne";
import { describe, expect, it } from "vitest";
import { amountAt, countOf, readAmount } from "../../src/course/amount";
import { numbersFor, numbersFrom } from "../../src/course/numbers";
import { drawsFor, hashOf, traineeId } from "../../src/course/seed";
import { courseOf, givenOf, type Rows, smallTask, taskOf, trainees, worked } from "./course";

describe("the seed", { timeout: 60_000 }, () => {
  it.each([
    ["", 0x811c9dc5],
    ["a", 0xe40c292c],
    ["foobar", 0xbf9cf968],
  ])("hashes %j as the test vectors of FNV-1a print it (Noll, FNV reference page)", (text, hash) => {
    expect(hashOf(text)).toBe(hash);
  });

  it("gives the first numbers of MT19937 with seed 5489 (Matsumoto and Nishimura, reference code; C++ standard)", () => {
    const generator = mersenne(5489);
    const first = Array.from({ length: 3 }, () => generator.next() >>> 0);
    expect(first).toEqual([3499211612, 581869302, 3890346734]);
  });

  it("gives the number that the C++ standard prints as the 10000th of MT19937 with seed 5489: 4123659995", () => {
    const generator = mersenne(5489);
    let last = 0;
    for (let i = 0; i < 10_000; i++) last = generator.next() >>> 0;
    expect(last).toBe(4123659995);
  });

  it("takes a trainee as one, however the number was typed", () => {
    expect(traineeId(" t07 ")).toBe("T07");
    expect(traineeId("Ame\u0301lie")).toBe(traineeId("Am\u00e9lie"));
    const [one, other] = [drawsFor("1", "a.csv", "t07"), drawsFor("1", "a.csv", "T07 ")];
    expect(Array.from({ length: 50 }, () => one(1000))).toEqual(Array.from({ length: 50 }, () => other(1000)));
  });

  it("spreads evenly: 12,000 trainees over twelve places, none off by more than five standard deviations", () => {
    const counts = new Array<number>(12).fill(0);
    for (const trainee of trainees(12_000)) {
      const place = drawsFor("1", "a.csv", trainee)(12);
      counts[place] = (counts[place] ?? 0) + 1;
    }
    const deviation = Math.sqrt(12_000 * (1 / 12) * (11 / 12));
    for (const count of counts) expect(Math.abs(count - 1000)).toBeLessThan(5 * deviation);
  });
});

describe("amounts", { timeout: 60_000 }, () => {
  it("are decimal steps with both ends, free of binary dust", () => {
    const amount = readAmount("0.1 to 0.7 by 0.1");
    if (typeof amount === "string") throw new Error(amount);
    expect(Array.from({ length: countOf(amount) }, (_, i) => amountAt(amount, i))).toEqual([
      0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7,
    ]);
  });

  it("are lists of numbers or words", () => {
    expect(readAmount("one of 1/0; 2; a word")).toEqual({ kind: "list", choices: ["1/0", 2, "a word"] });
    expect(readAmount("-2 to 2")).toMatchObject({ from: -2, step: 1, count: 5 });
  });

  it.each([
    ["18 30", '"18 30" cannot be drawn from; write 18 to 30 by 0.5, or one of 35; 50; 70'],
    ["1 to 2 by 0.3", '"1 to 2 by 0.3": 2 is not reached in steps of 0.3'],
    ["2 to 1", '"2 to 1" must rise by a step above 0'],
    ["one of 5; 5", "the list names an entry twice"],
    ["one of 5", "a list needs at least two entries with a semicolon between them"],
  ])("refuse %j with a sentence", (text, sentence) => {
    expect(readAmount(text)).toBe(sentence);
  });
});

describe("the numbers of a trainee", { timeout: 60_000 }, () => {
  it("stay what they were when first drawn: another number here would change a running course (own values)", () => {
    const given = (file: string) => givenOf(numbersFor(worked, taskOf(worked, file), "T07"));
    expect(given("wind-push.csv")).toEqual({ wind: 27, area: 25, coefficient: 0.85 });
    expect(given("cover.csv")).toEqual({ diameter: 240, light: 265, deep: 305 });
  });

  it("are the same each time and for each way to write the trainee, and others for another edition", () => {
    const task = taskOf(worked, "drop.csv");
    const first = givenOf(numbersFor(worked, task, "T07"));
    expect(givenOf(numbersFor(worked, task, " t07"))).toEqual(first);
    const other = { ...worked, edition: "2" };
    expect(givenOf(numbersFor(other, task, "T07"))).not.toEqual(first);
    expect(givenOf(numbersFor(worked, task, "T08"))).not.toEqual(first);
  });

  it("meet every condition of the page", () => {
    const rows: Rows = [...smallTask, ["require", "", "", "even", "MOD(pressure,2)=0"]];
    const course = courseOf(rows);
    const [task] = course.tasks;
    if (!task) throw new Error("no task");
    for (const trainee of trainees(100)) {
      expect(Number(givenOf(numbersFor(course, task, trainee)).pressure) % 2).toBe(0);
    }
  });

  it("are refused when no draw meets the conditions, with the reason of the last", () => {
    const course = courseOf([...smallTask, ["require", "", "", "never", "pressure<0"]]);
    expect(() => numbersFor(course, taskOf(course, "only.csv"), "T1")).toThrow(
      "only.csv: 400 draws gave no numbers that the page allows; the last broke row 14: never.",
    );
  });

  it("are refused when the solution cannot be calculated, with the function's own sentence", () => {
    const rows: Rows = smallTask.map((row) =>
      row[0] === "answer" && row[1] === "push" ? [...row.slice(0, 4), "WIND.PUSH(area,90+pressure)", "1 %"] : row,
    );
    const course = courseOf(rows);
    expect(() => numbersFor(course, taskOf(course, "only.csv"), "T1")).toThrow(
      /row 5: speed: \d+ m\/s \(allowed 0 to 80 m\/s\)/,
    );
  });

  it("are drawn again while a mistake could pass for the right answer", () => {
    // The mistake comes to 1.015 of the right answer, too near to tell, but for every fourth pressure.
    const rows: Rows = smallTask.map((row) =>
      row[0] === "mistake" && row[1] === "push"
        ? ["mistake", "push", "", "now and then", "IF(MOD(pressure,4)=0,1.3,1.015)*push", "", "Again."]
        : row,
    );
    const course = courseOf(rows);
    const task = taskOf(course, "only.csv");
    for (const trainee of trainees(100)) {
      const numbers = numbersFor(course, task, trainee);
      expect(Number(givenOf(numbers).pressure) % 4).toBe(0);
      expect(numbers.hidden.size).toBe(0);
    }
  });

  it("leave a mistake out of marking when no draw shows it", () => {
    const rows: Rows = smallTask.map((row) =>
      row[0] === "mistake" && row[1] === "push"
        ? ["mistake", "push", "", "never seen", "push*1.001", "", "Again."]
        : row,
    );
    const course = courseOf(rows);
    const numbers = numbersFor(course, taskOf(course, "only.csv"), "T1");
    expect([...numbers.hidden].map(({ title }) => title)).toEqual(["never seen"]);
  });

  it("can be set by hand, as a slider does, with the same checks", () => {
    const course = courseOf([...smallTask, ["require", "", "", "not too small", "area>12"]]);
    const task = taskOf(course, "only.csv");
    const set = (area: number) =>
      numbersFrom(
        task,
        "T1",
        new Map([
          ["area", area],
          ["pressure", 50],
        ]),
      );
    const numbers = set(20);
    expect(typeof numbers === "string" ? numbers : numbers.worked.values.get("push")).toEqual({
      kind: "number",
      value: 1000,
    });
    expect(set(11)).toBe("row 14: not too small");
  });
});
