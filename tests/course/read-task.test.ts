import { describe, expect, it } from "vitest";
import { readCourse, taskBy } from "../../src/course/course";
import { callIn, isName, namesIn, replaceNames } from "../../src/course/names";
import { readNotebook, writeNotebook } from "../../src/notebook/files";
import { printPage } from "../../src/notebook/page-csv";
import { readWorked } from "../sheets/worked";
import { courseOf, type Rows, smallTask, worked } from "./course";

const without = (part: string): Rows => smallTask.filter((row) => row[0] !== part);
const plus = (...rows: Rows): Rows => [...smallTask, ...rows];

describe("a task page", () => {
  it.each<[string, Rows, string]>([
    ["a strange part", plus(["clue", "", "", "x"]), 'only.csv, row 14, column 1 (Part): "clue" is no part of a task'],
    [
      "a name that is a cell's",
      plus(["drawn", "a1", "m", "x", "1 to 2"]),
      'only.csv, row 14, column 2 (Name): "a1" is no name',
    ],
    ["a name twice", plus(["drawn", "area", "m", "x", "1 to 2"]), '"area" is already the name of a row above'],
    ["an unknown unit", plus(["drawn", "b", "furlong", "x", "1 to 2"]), 'column 3 (Unit): "furlong" is not a unit'],
    [
      "a bad amount",
      plus(["drawn", "b", "m", "x", "some"]),
      'only.csv, row 14, column 5 (How): "some" cannot be drawn from',
    ],
    ["a formula with a strange name", plus(["made", "b", "m", "x", "area*size"]), '"size" is not a name of this page'],
    ["a formula with a cell in it", plus(["made", "b", "m", "x", "A1*area"]), '"A1" is not a name of this page'],
    [
      "a bad allowance",
      plus(["answer", "b", "m", "x", "area", "roughly"]),
      'column 6 (Within): "roughly" does not say what is right',
    ],
    [
      "an allowance in another unit",
      plus(["answer", "b", "m", "x", "area", "3 mm"]),
      '"3 mm" does not say what is right',
    ],
    ["equal choices", plus(["answer", "b", "", "x", "area", "one of yes; Yes"]), "two choices are the same"],
    [
      "a mistake of nothing",
      plus(["mistake", "area", "", "x", "area", "", "y"]),
      'there is no answer "area" to go wrong',
    ],
    ["a mistake without advice", plus(["mistake", "push", "", "x", "area"]), "column 7 (Advice): is blank"],
    ["a question about nothing", plus(["question", "", "", "How {long}?"]), "{long} stands for no name of this page"],
    ["no source", without("source"), 'only.csv: the task has no row "source"'],
    ["no limits", without("beyond"), 'only.csv: the task has no row "beyond"'],
  ])("with %s is refused where it stands", (_title, rows, sentence) => {
    expect(() => courseOf(rows)).toThrow(sentence);
  });

  it("takes formulas with and without an equals sign", () => {
    const course = courseOf(plus(["made", "twice", "m2", "x", "=2*area"]));
    expect(course.tasks[0]?.made[0]?.formula).toBe("2*area");
  });

  it("must have the header, and a course at least one task", () => {
    const about = (kind?: string) =>
      JSON.stringify({ version: 1, title: "C", pages: [{ name: "P", file: "p.csv", ...(kind && { kind }) }] });
    const read = (json: string) =>
      readCourse(
        readNotebook(
          new Map([
            ["notebook.json", json],
            ["p.csv", "a,b\n"],
          ]),
        ),
      );
    expect(() => read(about("task"))).toThrow(
      "p.csv, row 1: a task page begins with Part,Name,Unit,Text,How,Within,Advice",
    );
    expect(() => read(about())).toThrow('"C" has no tasks');
  });

  it("is found by number and by title", () => {
    expect(taskBy(worked, "4").title).toBe("Entrance and stock length");
    expect(taskBy(worked, "whole JOB").number).toBe(12);
    expect(() => taskBy(worked, "13")).toThrow('There is no task "13" (there are 1 Wind push, 2 Lever');
  });

  it("is a page of an ordinary notebook: printed anew it keeps its bytes, and the course with it", () => {
    const notebook = readWorked("course");
    const printed = new Map(notebook.pages.map(({ file, rows }) => [file, printPage(rows)]));
    for (const { file, source } of notebook.pages) expect(printed.get(file)).toBe(source?.text);
    const about = writeNotebook({ ...notebook, about: { ...notebook.about } }).get("notebook.json") ?? "";
    expect(readCourse(readNotebook(new Map([...printed, ["notebook.json", about]])))).toEqual(worked);
  });
});

describe("names in formulas", () => {
  it("are told from functions, texts, numbers and flags", () => {
    expect(namesIn('IF(area>1e3,"area b",FN.X(two_b,TRUE)) + 2*area')).toEqual(["area", "two_b"]);
    expect(replaceNames('a_b&"a_b"&CONVERT(a_b,"m","a_b")', () => "A1")).toBe('A1&"a_b"&CONVERT(A1,"m","a_b")');
  });

  it.each([
    ["area", true],
    ["a1", false],
    ["rated_current", true],
    ["Area", false],
    ["abcd1", true],
    ["x", true],
    ["1x", false],
  ])("%s is a name: %s", (text, is) => {
    expect(isName(text)).toBe(is);
  });

  it.each([
    ['WIND.PUSH(area, f(1,2), "a,b")', { name: "WIND.PUSH", args: ["area", "f(1,2)", '"a,b"'] }],
    ["PI()", { name: "PI", args: [] }],
    ["A(1)+B(2)", undefined],
    ["A(1)*2", undefined],
    ["2*A(1)", undefined],
  ])("%s is one call and no more, or is not", (formula, call) => {
    expect(callIn(formula)).toEqual(call);
  });
});
