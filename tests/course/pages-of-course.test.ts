import { describe, expect, it } from "vitest";
import { readCourse, release } from "../../src/course/course";
import { numbersFor } from "../../src/course/numbers";
import { markTraineeFile, printTraineeFile } from "../../src/course/trainee-file";
import { movePage, removePage, renamePage } from "../../src/notebook/edit-pages";
import { writeNotebook } from "../../src/notebook/files";
import { LiveNotebook } from "../../src/notebook/live";
import type { Notebook } from "../../src/notebook/model";
import { idOf } from "../notebook/sample";
import { readWorked } from "../sheets/worked";

const start = readWorked("course");
const before = readCourse(start);
const titles = (notebook: Notebook): readonly string[] => readCourse(notebook).tasks.map(({ title }) => title);
const [first = "", second = ""] = titles(start);
const last = titles(start).at(-1) ?? "";

/** A file that was handed out before the pages were changed, with something typed into each task. */
const handedOut = new TextEncoder().encode(printTraineeFile(before, "T07", { typed: () => "1" }));
const marked = (notebook: Notebook) =>
  markTraineeFile(readCourse(notebook), "T07.csv", handedOut).tasks.map(({ task, refused, marks }) => ({
    file: task.file,
    refused,
    marks: marks.map(({ mark }) => mark.kind),
  }));

describe("a task page of a course", { timeout: 60_000 }, () => {
  it("is removed with its task, and undo brings it back byte for byte", () => {
    const live = new LiveNotebook(start);
    const files = writeNotebook(start);
    live.apply("page removed", (notebook) => removePage(notebook, idOf(notebook, second)));
    expect(titles(live.notebook)).toEqual(titles(start).filter((title) => title !== second));
    expect(writeNotebook(live.notebook).size).toBe(files.size - 1);
    // The other tasks have other numbers now, and the same draw.
    const course = readCourse(live.notebook);
    const third = before.tasks[2];
    const now = course.tasks[1];
    expect([now?.title, now?.number]).toEqual([third?.title, 2]);
    expect(now && numbersFor(course, now, "T07").drawn).toEqual(third && numbersFor(before, third, "T07").drawn);
    live.undo();
    expect(writeNotebook(live.notebook)).toEqual(files);
    live.close();
  });

  it("that is removed is asked for by its title when a file of before comes back", () => {
    for (const title of [second, last]) {
      const removed = removePage(start, idOf(start, title));
      expect(() => marked(removed)).toThrow(`There is no task "${title}"`);
    }
  });

  it("that is moved gets another number, and a file of before is marked as before", () => {
    const moved = movePage(start, idOf(start, first), start.pages.length - 1);
    expect(titles(moved)).toEqual([...titles(start).slice(1), first]);
    expect(marked(moved)).toEqual(marked(start));
    expect(marked(start).every(({ refused, marks }) => refused === undefined && marks.length > 0)).toBe(true);
  });

  it("that gets another name has it as its title; its draw, its release and files of before stay", () => {
    const released = release(start, before.tasks[0]?.file ?? "", true);
    const renamed = renamePage(released, idOf(released, first), "Wind from the side");
    const course = readCourse(renamed);
    expect(titles(renamed)).toEqual(["Wind from the side", ...titles(start).slice(1)]);
    expect([...course.released]).toEqual([before.tasks[0]?.file]);
    expect(marked(renamed)).toEqual(marked(start));
    const both = movePage(renamed, idOf(renamed, second), renamed.pages.length - 1);
    expect(() => marked(both)).not.toThrow();
  });
});
