import { describe, expect, it } from "vitest";
import { readClassList } from "../../src/course/class-list";
import { harmless, printClassTable } from "../../src/course/class-table";
import { numbersFor, scalarOf } from "../../src/course/numbers";
import { missingFrom, printMarks, talliesOf, traineeResults } from "../../src/course/results";
import type { Task } from "../../src/course/task";
import { markTraineeFile, printTraineeFile } from "../../src/course/trainee-file";
import { parsePage, printPage } from "../../src/notebook/page-csv";
import { courseOf, smallTask, worked } from "./course";

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

describe("a class list", { timeout: 60_000 }, () => {
  it("has a column Trainee and any others, which stay beside it", () => {
    expect(readClassList("class.csv", bytes("Group;Trainee\nA;t01\n;\nB; T02 \n"))).toEqual([
      { trainee: "T01", beside: { Group: "A" } },
      { trainee: "T02", beside: { Group: "B" } },
    ]);
  });

  it.each([
    ["Name\nAnn\n", 'class.csv, row 1: a class list needs a column "Trainee" (there are Name).'],
    ["Trainee,Name\n,Ann\n", "class.csv, row 2, column 1: the trainee is blank; give a number or a name."],
    ["Trainee,Name\nT1,Ann\nT2,Bo\nt1,Cy\n", "class.csv, row 4, column 1: T1 already stands in row 2."],
  ])("is refused where it is wrong", (text, sentence) => {
    expect(() => readClassList("class.csv", bytes(text))).toThrow(sentence);
  });
});

describe("the trainer's table", { timeout: 60_000 }, () => {
  it("holds every trainee's numbers and answers", () => {
    const entries = readClassList("class.csv", bytes("Trainee,Name\nT01,Ann\nT02,=HYPERLINK()\n"));
    const rows = parsePage("table", printClassTable(worked, entries));
    expect(rows[0]).toEqual(["Trainee", "Name", "Task", "Title", "Part", "Name", "Unit", "Value", "Exact value"]);
    const task = worked.tasks[0] as Task;
    const push = scalarOf(numbersFor(worked, task, "T02").worked.values.get("push"));
    const row = rows.find((cells) => cells[0] === "T02" && cells[5] === "push" && cells[4] === "answer");
    expect(row?.[1]).toBe("'=HYPERLINK()");
    expect(row?.[8]).toBe(String(push));
    const answers = worked.tasks.reduce((sum, one) => sum + one.answers.length, 0);
    expect(rows.filter((cells) => cells[0] === "T01" && cells[4] === "answer").length).toBe(answers);
  });

  it.each([
    ["-5", "-5"],
    ["-5.5e3", "-5.5e3"],
    ["=1", "'=1"],
    ["@x", "'@x"],
    ["-x", "'-x"],
    ["+1+2", "'+1+2"],
    ["plain", "plain"],
  ])("writes %s as %s for other programs", (text, safe) => {
    expect(harmless(text)).toBe(safe);
  });
});

describe("results of a class", { timeout: 60_000 }, () => {
  const course = courseOf(smallTask);
  const task = course.tasks[0] as Task;
  const file = (trainee: string, answer: (values: { push: number; wrong: number }) => Record<string, string>) => {
    const { values, mistakes } = numbersFor(course, task, trainee).worked;
    const typed = answer({
      push: Number(scalarOf(values.get("push"))),
      wrong: Number(scalarOf([...mistakes.values()][0])),
    });
    const rows = parsePage("f", printTraineeFile(course, trainee)).map((row) =>
      row[1] === "answer" ? [...row.slice(0, 5), typed[row[2] ?? ""] ?? ""] : row,
    );
    return markTraineeFile(course, `${trainee}.csv`, bytes(printPage(rows)));
  };
  const files = [
    file("T1", ({ push }) => ({ push: `${push}`, half: `${push / 2}` })),
    file("T2", ({ wrong }) => ({ push: `${wrong}`, half: `${wrong / 2}` })),
    file("T3", ({ wrong }) => ({ push: `${wrong}`, half: "=2+2" })),
  ];

  it("count what went wrong, by task, answer and mistake", () => {
    const outcomes = talliesOf(files).map(
      ({ answer, outcome, trainees }) => `${answer}: ${outcome}: ${trainees.join(" ")}`,
    );
    expect(outcomes.sort()).toEqual([
      "half: cannot be read: T3",
      "half: follows from an earlier answer: T2",
      "half: right: T1",
      "push: divided instead: T2 T3",
      "push: right: T1",
      "verdict: blank: T1 T2 T3",
    ]);
  });

  it("count what was right, and say who is missing", () => {
    expect(traineeResults(files).map(({ trainee, right, asked }) => [trainee, right, asked])).toEqual([
      ["T1", 2, 3],
      ["T2", 0, 3],
      ["T3", 0, 3],
    ]);
    const entries = readClassList("c.csv", bytes("Trainee,Name\nT3,\nT4,\n"));
    expect(missingFrom(files, entries)).toEqual(["T4"]);
  });

  it("go out as CSV, with what trainees typed made harmless", () => {
    const rows = parsePage("marks", printMarks(files));
    expect(rows.length).toBe(1 + 9);
    const row = rows.find((cells) => cells[1] === "T3" && cells[4] === "half");
    expect(row?.slice(6, 8)).toEqual(["'=2+2", "unreadable"]);
    const named = rows.find((cells) => cells[1] === "T2" && cells[4] === "push");
    expect(named?.slice(7)).toEqual(["mistake", "divided instead", "not right: divided instead. Multiply."]);
  });
});
