import { describe, expect, it } from "vitest";
import { holdsTasks, keepTasksUnread } from "../../src/course/trainee-side";
import { setCells } from "../../src/notebook/edit-cells";
import { pageByName } from "../../src/notebook/model";
import { readWorked } from "../sheets/worked";

const course = readWorked("course");
const start = pageByName(course, "Start")?.id ?? "";
const typing = (text: string) => () =>
  keepTasksUnread(course, setCells(course, [{ page: start, row: 9, column: 1, text }]));

describe("the trainee's side of a course", () => {
  it.each(["=Drop!E17", "=drop!$E$17", "='Wind push'!A1:G20", "=\"x\"&'Whole job'!E20"])(
    "takes no formula that reads a task page: %s",
    (text) => {
      expect(typing(text)).toThrow(/holds a task: on the trainee's side no formula reads its cells\.$/);
    },
  );

  it.each(["=WIND.PUSH(20,10)", "=Start!A1&A2", "Drop!E17", '="Drop!E17"', "'=Drop!E17"])(
    "takes anything else: %s",
    (text) => {
      expect(typing(text)).not.toThrow();
    },
  );

  it("lets a formula stand that was there before, and is one only where there are tasks", () => {
    const before = setCells(course, [{ page: start, row: 9, column: 1, text: "=Drop!E17" }]);
    expect(() =>
      keepTasksUnread(before, setCells(before, [{ page: start, row: 9, column: 2, text: "1" }])),
    ).not.toThrow();
    expect([holdsTasks(course), holdsTasks(readWorked("three-hulls"))]).toEqual([true, false]);
  });
});
