import { describe, expect, it } from "vitest";
import { amountAt, countOf } from "../../src/course/amount";
import { givenIn } from "../../src/course/asked";
import { taskAtWork } from "../../src/course/at-work";
import { callsIn } from "../../src/course/names";
import { numbersFor, numbersTried, scalarOf } from "../../src/course/numbers";
import { solutionSheet } from "../../src/course/sheet";
import { sheetsHtml, sheetText } from "../../src/course/sheet-print";
import { mistakesOf } from "../../src/course/task";
import { movedBy, workingOf } from "../../src/course/working";
import { courseOf, smallTask, taskOf, worked } from "./course";

describe("the working of a task", { timeout: 60_000 }, () => {
  it("goes step by step through the page, each with its value and the function's own steps", () => {
    const numbers = numbersFor(worked, taskOf(worked, "drop.csv"), "T07");
    const steps = workingOf(numbers);
    expect(steps.map(({ name, isAnswer }) => [name, isAnswer])).toEqual([
      ["run", false],
      ["resistance", true],
      ["drop", true],
      ["verdict", true],
    ]);
    const [run, , drop, verdict] = steps;
    expect(run?.value).toBe(2 * Number(numbers.drawn.get("way")));
    expect(run?.numbers).toBe(`2*${numbers.drawn.get("way")} m`);
    expect(drop?.calls[0]?.explanation.name).toBe("CONDUCTOR.DROP");
    expect(drop?.calls[0]?.explanation.arguments.map(({ value }) => value)).toEqual([
      numbers.drawn.get("current"),
      run?.value,
      numbers.drawn.get("area"),
      numbers.drawn.get("temperature"),
      1,
    ]);
    expect(drop?.calls[0]?.explanation.steps.at(-1)?.value).toBe(drop?.value);
    expect(verdict?.calls).toEqual([]);
  });

  it("explains a call whose arguments are calculated themselves", () => {
    const numbers = numbersFor(worked, taskOf(worked, "sag-thrust.csv"), "T07");
    const [speed] = workingOf(numbers);
    expect(speed?.calls[0]?.explanation.result).toBe(speed?.value);
    expect(speed?.calls[0]?.explanation.arguments[1]?.value).toBe(Number(numbers.drawn.get("outside")) / 1000);
  });

  it("goes inside every function of a formula that is more than one call, inner ones first", () => {
    const inside = (file: string, name: string) =>
      workingOf(numbersFor(worked, taskOf(worked, file), "T07"))
        .find((step) => step.name === name)
        ?.calls.map(({ formula, explanation }) => [formula, explanation.result]);
    const numbers = numbersFor(worked, taskOf(worked, "drop.csv"), "T07");
    expect(inside("drop.csv", "resistance")).toEqual([
      ["CONDUCTOR.RESISTANCE(area,run,temperature)", Number(scalarOf(numbers.worked.values.get("resistance"))) / 1000],
    ]);
    expect(inside("plies.csv", "resin")?.map(([formula]) => formula)).toEqual(["PLY.RESIN(fabric,fraction)"]);
    expect(callsIn('IF(A.B(x,C.D(1)),"E(2)",(y))')).toEqual([
      "C.D(1)",
      "A.B(x,C.D(1))",
      'IF(A.B(x,C.D(1)),"E(2)",(y))',
    ]);
    const sheet = solutionSheet(worked, numbers).flatMap((block) => (block.kind === "list" ? block.items : []));
    expect(sheet.filter((line) => line.startsWith("resistance = CONDUCTOR.RESISTANCE("))).toHaveLength(1);
  });

  it("moves what the question gives and nothing else, and starts where the trainee's numbers are", () => {
    for (const task of worked.tasks) {
      const own = numbersFor(worked, task, "T07");
      const tried = taskAtWork(own);
      const given = new Map(givenIn(own).map(({ name, value }) => [name, value]));
      expect(tried.task.drawn.map(({ name }) => [name, given.get(name)])).toEqual([...tried.drawn]);
      for (const { name } of task.answers) {
        const [a, b] = [own, tried].map(({ worked: { values } }) => scalarOf(values.get(name)));
        if (typeof a === "number") expect(b).toBeCloseTo(a, 9);
        else expect(b).toBe(a);
      }
      for (const { name, amount } of tried.task.drawn) {
        expect(tried.task.answers.some((answer) => movedBy(tried, answer.name).includes(name))).toBe(true);
        const places = Array.from({ length: countOf(amount) }, (_, place) => amountAt(amount, place));
        expect([task.title, name, places.includes(given.get(name) ?? "")]).toEqual([task.title, name, true]);
      }
    }
    const names = (file: string) =>
      taskAtWork(numbersFor(worked, taskOf(worked, file), "T07")).task.drawn.map(({ name }) => name);
    expect(names("cover.csv")).toEqual(["diameter", "light"]);
    expect(names("lever.csv")).toEqual(["push", "centre", "pivot", "thruster", "stated"]);
    expect(names("portions.csv")).not.toContain("cold");
  });

  it("knows which drawn numbers move a step, for sliders beside it", () => {
    const numbers = numbersFor(worked, taskOf(worked, "wind-push.csv"), "T07");
    expect(movedBy(numbers, "pressure")).toEqual(["wind"]);
    expect(movedBy(numbers, "push")).toEqual(["wind", "area", "coefficient"]);
  });

  it("is worked for numbers that are moved by hand, with what the page says against them", () => {
    const task = taskOf(worked, "drop.csv");
    const own = numbersFor(worked, task, "T07");
    const moved = (changes: Record<string, number>) =>
      numbersTried(task, "T07", new Map([...own.drawn, ...Object.entries(changes)]));
    const half = moved({ current: Number(own.drawn.get("current")) / 2 });
    if (typeof half === "string") throw new Error(half);
    expect(half.remark).toBeUndefined();
    expect(scalarOf(half.numbers.worked.values.get("drop"))).toBeCloseTo(
      Number(scalarOf(own.worked.values.get("drop"))) / 2,
      12,
    );
    expect(workingOf(half.numbers).find(({ name }) => name === "drop")?.calls[0]?.explanation.arguments[0]?.value).toBe(
      half.numbers.drawn.get("current"),
    );
    // The trainee's own numbers are as they were.
    expect(numbersFor(worked, task, "T07").drawn).toEqual(own.drawn);
    const long = moved({ current: 420, way: 9, area: 50, temperature: 70 });
    expect(typeof long === "string" ? long : long.remark).toBe("a plan does not lose more than that in the conductors");
    expect(moved({ current: -5 })).toMatch(/^current: -5 A \(allowed /);
  });

  it("fills the trainer's sheet: right answers, steps, what each mistake comes to", () => {
    for (const task of worked.tasks) {
      const numbers = numbersFor(worked, task, "T07");
      const text = sheetText(solutionSheet(worked, numbers));
      for (const { title } of mistakesOf(task)) expect(text).toContain(title);
      for (const hint of task.texts.hint) expect(text.replace(/\s+/g, " ")).toContain(hint);
      for (const { formula } of task.answers) expect(text.replace(/\s+/g, "")).toContain(formula.replace(/\s+/g, ""));
    }
  });

  it("prints as a page that loads nothing and takes no text for markup", () => {
    const rows = smallTask.map((row) =>
      row[0] === "rule" ? ["rule", "", "", '<img src="x" onerror=alert(1)> & more'] : row,
    );
    const course = courseOf(rows);
    const numbers = numbersFor(course, taskOf(course, "only.csv"), "<b>T1</b>");
    const html = sheetsHtml("<T1>", [solutionSheet(course, numbers)]);
    expect(html).toContain("&lt;img src=&quot;x&quot; onerror=alert(1)&gt; &amp; more");
    expect(html).not.toMatch(/<(img|script|link|iframe|b)\b/i);
    expect(html).not.toMatch(/\b(src|href)=["']/);
    expect(scalarOf(numbers.worked.values.get("push"))).toBeGreaterThan(0);
  });
});
