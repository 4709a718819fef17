import { describe, expect, it } from "vitest";
import { allowanceWords } from "../../src/course/allowance";
import { countOf } from "../../src/course/amount";
import { questionOf } from "../../src/course/asked";
import { markTask } from "../../src/course/mark";
import { type Numbers, numbersFor, scalarOf } from "../../src/course/numbers";
import { mistakesOf, type Task } from "../../src/course/task";
import { workingOf } from "../../src/course/working";
import { sourceLine } from "../../src/formula/source";
import { catalogue } from "../../src/functions";
import { fuseBreaking } from "../../src/tables/fuse-breaking";
import { givenOf, trainees, worked, written } from "./course";
import { type Second, secondSolutions } from "./second-solutions";

const many = 1000;
const patient = 120_000;
const cases = worked.tasks.map((task) => [task.title, task] as const);

interface Sat {
  readonly numbers: Numbers;
  readonly second: Second;
}

const sat = new Map<Task, readonly Sat[]>();

/** A thousand trainees' numbers of a task, each with the second calculation from what the trainee is given. */
function classOf(task: Task): readonly Sat[] {
  const known = sat.get(task);
  if (known) return known;
  const solve = secondSolutions[task.file];
  if (!solve) throw new Error(`${task.file} has no second solution`);
  const made = trainees(many).map((trainee) => {
    const numbers = numbersFor(worked, task, trainee);
    return { numbers, second: solve(givenOf(numbers)) };
  });
  sat.set(task, made);
  return made;
}

const wordsOf = (task: Task, name: string): string => {
  const answer = task.answers.find((one) => one.name === name);
  return answer ? allowanceWords(answer.allowance, answer.unit) : "";
};

/** What is sensible on a boat of 9 to 16 m, by task and answer; the yard's view, not the functions' limits. */
const sensible: Readonly<Record<string, Readonly<Record<string, readonly [number, number]>>>> = {
  "wind-push.csv": { pressure: [40, 150], push: [400, 6500] },
  "lever.csv": { need: [300, 1700] },
  "cover.csv": { cover: [20, 300], immersion: [0.15, 1] },
  "entrance.csv": { entrance: [11, 29], stock: [600, 1400] },
  "edge.csv": { edge: [6, 30], inlet: [0.09, 0.25], loss: [1.1, 1.4] },
  "plies.csv": { each: [0.4, 2.2], plies: [2, 16], resin: [0.5, 15] },
  "portions.csv": { potlife: [8, 80], portion: [0.03, 0.47], portions: [3, 30], hardener: [0.005, 0.15] },
  "drop.csv": { resistance: [1, 10], drop: [0.2, 1.8] },
  "conductor-size.csv": { size: [50, 120], reel: [50, 110] },
  "fuse-window.csv": { carry: [200, 400], most: [200, 600], fuse: [175, 350], fault: [3500, 10000] },
  "sag-thrust.csv": { speed: [0.75, 0.97], current: [150, 350], volts: [7.5, 10.4], thrust: [250, 1150] },
  "whole-job.csv": { push: [500, 4000], need: [250, 2500], gives: [200, 3000], immersion: [0.2, 1.1] },
};

describe.each(cases)("%s, a thousand trainees", (_title, task) => {
  it("the hidden solution equals a second calculation from what the trainee is given", { timeout: patient }, () => {
    for (const { numbers, second } of classOf(task)) {
      expect(Object.keys(second.answers)).toEqual(task.answers.map(({ name }) => name));
      for (const { name } of task.answers) {
        const ours = scalarOf(numbers.worked.values.get(name));
        const theirs = second.answers[name];
        if (typeof theirs !== "number") expect(ours).toBe(theirs);
        else expect(Math.abs((ours as number) - theirs)).toBeLessThanOrEqual(1e-9 * Math.abs(theirs));
      }
    }
  });

  it("a right answer, written as the sheet asks, is never marked wrong", { timeout: patient }, () => {
    for (const { numbers, second } of classOf(task)) {
      const exact = new Map(Object.entries(second.answers).map(([name, value]) => [name, String(value)]));
      const rounded = new Map(
        Object.entries(second.answers).map(([name, value]) => [name, written(wordsOf(task, name), value)]),
      );
      for (const typed of [exact, rounded]) {
        const marks = markTask(numbers, typed).map(({ answer, mark }) => `${answer.name}: ${mark.kind}`);
        expect(marks).toEqual(task.answers.map(({ name }) => `${name}: right`));
      }
    }
  });

  it("each mistake with a name is recognised for at least 95 of 100 trainees", { timeout: patient }, () => {
    const seen = new Map(mistakesOf(task).map(({ of, title }) => [`${of}: ${title}`, 0]));
    for (const { numbers, second } of classOf(task)) {
      for (const [name, mistakes] of Object.entries(second.mistakes)) {
        for (const [title, value] of Object.entries(mistakes)) {
          const [made] = markTask(numbers, new Map([[name, written(wordsOf(task, name), value)]])).filter(
            ({ answer }) => answer.name === name,
          );
          const key = `${name}: ${title}`;
          if (made?.mark.kind === "mistake" && made.mark.title === title) seen.set(key, (seen.get(key) ?? 0) + 1);
        }
      }
    }
    expect([...seen].filter(([, times]) => times < 0.95 * many)).toEqual([]);
    // No mistake of the second calculation is missing on the page, and none of the page in the second calculation.
    const titles = Object.entries(classOf(task)[0]?.second.mistakes ?? {}).flatMap(([name, mistakes]) =>
      Object.keys(mistakes).map((title) => `${name}: ${title}`),
    );
    expect([...seen.keys()].sort()).toEqual(titles.sort());
  });

  it("all numbers are sensible, and no answer rounds to nothing", { timeout: patient }, () => {
    const limits = sensible[task.file] ?? {};
    for (const { second } of classOf(task)) {
      for (const [name, value] of Object.entries(second.answers)) {
        if (typeof value !== "number") continue;
        const [low, high] = limits[name] ?? [Number.NaN, Number.NaN];
        expect([name, value >= low && value <= high, value]).toEqual([name, true, value]);
        expect(Number(written(wordsOf(task, name), value))).not.toBe(0);
      }
    }
  });

  it("every argument of every function stays inside what the function allows", { timeout: patient }, () => {
    for (const { numbers } of classOf(task).slice(0, 200)) {
      for (const { explanation } of workingOf(numbers).flatMap(({ calls }) => calls)) {
        expect(explanation.refusal).toBeUndefined();
        expect(explanation.arguments.filter(({ inside }) => !inside)).toEqual([]);
      }
    }
  });

  it("no two choices are equal, and a choice never gives itself away by always being the only one open", () => {
    for (const { allowance } of task.answers) {
      if (allowance.kind !== "choice") continue;
      const words = allowance.choices.map((choice) => choice.trim().toLowerCase());
      expect(new Set(words).size).toBe(words.length);
    }
    for (const { amount } of task.drawn) {
      expect(countOf(amount)).toBeGreaterThan(1);
      if (amount.kind === "list") expect(new Set(amount.choices).size).toBe(amount.choices.length);
    }
  });

  it("the right answer and its mistakes are told apart by more than both may be rounded", { timeout: patient }, () => {
    for (const { second } of classOf(task).slice(0, 200)) {
      for (const [name, mistakes] of Object.entries(second.mistakes)) {
        const all = [second.answers[name], ...Object.values(mistakes)];
        expect(new Set(all.map((value) => written(wordsOf(task, name), value as number | string))).size).toBe(
          all.length,
        );
      }
    }
  });

  it("trainees differ, and every question has all its numbers", { timeout: patient }, () => {
    const questions = classOf(task).map(({ numbers }) => questionOf(numbers).join("\n"));
    expect(questions.filter((text) => /[{}]|undefined|NaN|#[A-Z]/.test(text))).toEqual([]);
    expect(new Set(questions).size).toBeGreaterThan(0.9 * many);
  });
});

describe("the course as a whole", () => {
  it("has tasks that end with a no for everybody, and tasks where it depends", { timeout: patient }, () => {
    const endings = (file: string, name: string) => {
      const task = worked.tasks.find((one) => one.file === file) as Task;
      return [...new Set(classOf(task).map(({ second }) => second.answers[name]))].sort();
    };
    expect(endings("portions.csv", "tomorrow")).toEqual(["stop and ask"]);
    expect(endings("fuse-window.csv", "strip")).toEqual(["does not fit"]);
    expect(endings("whole-job.csv", "verdict")).toEqual(["does not fit", "fits", "stop and ask"]);
    for (const file of ["cover.csv", "conductor-size.csv", "fuse-window.csv"]) {
      expect(endings(file, "verdict")).toEqual(["does not fit", "fits"]);
    }
  });

  it("says rule, source and limits in every task, and a caution wherever a tool or a wire comes in", () => {
    for (const { texts, file } of worked.tasks) {
      for (const part of ["rule", "source", "beyond", "hint"] as const)
        expect([file, texts[part].length]).not.toEqual([file, 0]);
      if (file !== "wind-push.csv") expect([file, texts.caution.length]).not.toEqual([file, 0]);
    }
  });

  it("names no published text that the functions and tables do not rest on too", () => {
    const sources = [
      ...catalogue.flatMap((one) => [
        ...one.sources,
        ...one.examples.map(({ source }) => source),
        ...Object.values(one.constants ?? {}).map(({ source }) => source),
      ]),
      fuseBreaking.source,
    ];
    const known = sources.map((source) => `${sourceLine(source)} `).join("\n");
    const texts =
      /(?:IEC|ISO|ASTM|NFPA|ICAO Doc|Scilab Textbook Companion) ?[A-Z]?[\d-]+|33 CFR 183\.\d+|Technical Paper \d+|Blendermann|Munson|Polym\. Sci\. 56/g;
    const named = worked.tasks.flatMap(({ texts: { source } }) => source.flatMap((text) => text.match(texts) ?? []));
    expect(named.length).toBeGreaterThan(15);
    expect(named.filter((text) => !known.includes(text))).toEqual([]);
  });

  it("names the eight typical mistakes", () => {
    const titles = worked.tasks.flatMap((task) => mistakesOf(task).map(({ title }) => title));
    expect(titles).toEqual(
      expect.arrayContaining([
        "one-way length instead of out and back",
        "metres taken for millimetres",
        "diameter taken for the radius",
        "percent of the radius taken of the diameter",
        "rated against loaded voltage: stated thrust not reduced",
        "gauge taken for mm²",
        "glass fraction upside down",
        "cover measured from the axis",
      ]),
    );
  });
});
