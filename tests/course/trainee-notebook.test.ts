import { describe, expect, it } from "vitest";
import { askedOf } from "../../src/course/asked-task";
import { readCourse, release } from "../../src/course/course";
import { askedKind } from "../../src/course/kinds";
import { unreadableIn } from "../../src/course/mark";
import { numbersFor } from "../../src/course/numbers";
import { markTraineeFile, printTraineeFile } from "../../src/course/trainee-file";
import {
  answerColumn,
  answerRow,
  askedOn,
  traineeFileOf,
  traineeNotebook,
  typedOn,
} from "../../src/course/trainee-notebook";
import { setCells } from "../../src/notebook/edit-cells";
import { readNotebook, writeNotebook } from "../../src/notebook/files";
import { pageByName } from "../../src/notebook/model";
import { readWorked } from "../sheets/worked";
import { taskOf, worked } from "./course";
import { secretsOf } from "./secrets";

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const handedOut = printTraineeFile(worked, "T07");
const notebook = traineeNotebook("T07.csv", bytes(handedOut));

describe("a trainee's file as a notebook", { timeout: 60_000 }, () => {
  it("has a page for each task and gives the very file back", () => {
    const tasks = notebook.about.pages.filter(({ kind }) => kind === askedKind);
    expect(tasks.map(({ name }) => name)).toEqual(worked.tasks.map(({ title }) => title));
    expect(traineeFileOf(notebook)).toEqual({ trainee: "T07", text: handedOut });
  });

  it("asks each task in the same words and numbers as the course does", () => {
    for (const task of worked.tasks) {
      const page = pageByName(notebook, task.title);
      expect(page && askedOn(page)).toEqual(askedOf(numbersFor(worked, task, "T07")));
    }
  });

  it("holds no solution, step, mistake or advice in any of its files", () => {
    const files = [...writeNotebook(notebook).values()].join("\n").replaceAll('""', '"');
    for (const task of worked.tasks) expect(secretsOf(task).filter((secret) => files.includes(secret))).toEqual([]);
  });

  it("says what cannot be read as an answer, which needs no solution", () => {
    const answers = askedOf(numbersFor(worked, taskOf(worked, "drop.csv"), "T07")).answers;
    const said = (name: string, typed: string) =>
      unreadableIn(
        answers.find((one) => one.name === name),
        typed,
      );
    expect(said("drop", "about two")).toEqual({ kind: "unreadable", why: '"about two" is no number' });
    expect(said("drop", "3 kg")).toEqual({ kind: "unreadable", why: '"3 kg" is not given in V' });
    for (const typed of ["", "1.46", "1,46 V", "900 mV"]) expect(said("drop", typed)).toBeUndefined();
    expect(said("verdict", "perhaps")).toBeUndefined();
  });

  it("takes answers as edits of its cells and hands them back to be marked", () => {
    const page = pageByName(notebook, "Drop");
    if (!page) throw new Error("no page Drop");
    const answered = setCells(notebook, [
      { page: page.id, row: answerRow(page, "drop"), column: answerColumn, text: "12 mV" },
    ]);
    expect(typedOn(pageByName(answered, "Drop") ?? page, "drop")).toBe("12 mV");
    const { tasks } = markTraineeFile(worked, "T07.csv", bytes(traineeFileOf(answered).text));
    const marks = tasks.find(({ task }) => task.file === "drop.csv")?.marks ?? [];
    expect(marks.map(({ mark }) => mark.kind)).toEqual(["blank", "wrong", "blank"]);
  });

  it("is kept as any notebook is: written and read again it is the same", () => {
    const again = readNotebook(writeNotebook(notebook));
    expect(traineeFileOf(again).text).toBe(handedOut);
  });

  it.each([
    ["Part,Name\nquestion,\n", "T07.csv, row 1: a trainee's file begins with Task,Part,Name,Unit,Text,Value."],
    [handedOut.replace(",trainee,,,,T07\n", ""), 'T07.csv: the row "trainee" is missing or has no value'],
    [handedOut.split("\n").slice(0, 4).join("\n"), "T07.csv has no tasks; ask your trainer for another file."],
  ])("of another shape is refused", (file, sentence) => {
    expect(() => traineeNotebook("T07.csv", bytes(file))).toThrow(sentence);
  });
});

describe("release of the working", () => {
  it("is a setting of the notebook that is written, read and taken back", () => {
    const shipped = readWorked("course");
    expect([...worked.released]).toEqual([]);
    const released = release(release(shipped, "drop.csv", true), "cover.csv", true);
    expect([...readCourse(readNotebook(writeNotebook(released))).released]).toEqual(["cover.csv", "drop.csv"]);
    const back = release(release(released, "drop.csv", false), "cover.csv", false);
    expect(back.about).toEqual(shipped.about);
    // Numbers and tasks are the same ones.
    expect(readCourse(released).tasks.map(({ file }) => file)).toEqual(worked.tasks.map(({ file }) => file));
  });
});
