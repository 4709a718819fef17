import { givenIn } from "../../src/course/asked";
import { type Course, readCourse } from "../../src/course/course";
import type { Numbers } from "../../src/course/numbers";
import type { Scalar } from "../../src/course/scalar";
import type { Task } from "../../src/course/task";
import { readNotebook } from "../../src/notebook/files";
import { printPage } from "../../src/notebook/page-csv";
import { readWorked } from "../sheets/worked";

/** The course as its folder has it. */
export const worked: Course = readCourse(readWorked("course"));

/** What the trainee is given, by name. */
export const givenOf = (numbers: Numbers): Readonly<Record<string, Scalar>> =>
  Object.fromEntries(givenIn(numbers).map(({ name, value }) => [name, value]));

/** Trainees by number: T1, T2 ... */
export const trainees = (count: number): readonly string[] => Array.from({ length: count }, (_, i) => `T${i + 1}`);

export const taskOf = (course: Course, file: string): Task => {
  const task = course.tasks.find((one) => one.file === file);
  if (!task) throw new Error(`no task ${file}`);
  return task;
};

/**
 * A value as a trainee writes it who follows the sentence on the sheet: `3 figures or more; ...`, `to 0.01 or finer`.
 *
 * @param words the sentence, as the sheet prints it.
 */
export function written(words: string, value: Scalar): string {
  if (typeof value !== "number") return value;
  const figures = /^(\d+) figures or more/.exec(words)?.[1];
  if (figures) return String(Number(value.toPrecision(Number(figures))));
  const place = /^to ([\d.]+)/.exec(words)?.[1];
  if (place) return (Math.round(value / Number(place)) * Number(place)).toFixed(place.split(".")[1]?.length ?? 0);
  return String(value);
}

export type Rows = readonly (readonly string[])[];

const header = ["Part", "Name", "Unit", "Text", "How", "Within", "Advice"];
const padded = (row: readonly string[]) => Array.from({ length: header.length }, (_, i) => row[i] ?? "");

/** A course of one page, from the rows below its header. */
export function courseOf(rows: Rows, settings: Record<string, unknown> = { edition: "1" }): Course {
  const about = { version: 1, title: "Small", pages: [{ name: "Only", file: "only.csv", kind: "task" }], settings };
  const page = printPage([header, ...rows.map(padded)]);
  return readCourse(
    readNotebook(
      new Map([
        ["notebook.json", JSON.stringify(about)],
        ["only.csv", page],
      ]),
    ),
  );
}

/** The rows of a small task; further rows may be put in the place of its own by part and name. */
export const smallTask: Rows = [
  ["question", "", "", "A side of {area} meets a pressure of {pressure}."],
  ["drawn", "area", "m2", "side area", "10 to 30 by 0.5"],
  ["drawn", "pressure", "Pa", "pressure", "40 to 90"],
  ["answer", "push", "N", "push", "area*pressure", "1 %"],
  ["mistake", "push", "", "divided instead", "pressure/area", "", "Multiply."],
  ["answer", "half", "N", "half of it", "push/2", "1 N"],
  ["answer", "verdict", "", "is it much?", 'IF(push>1200,"much","little")', "one of much; little; stop and ask"],
  ["mistake", "verdict", "", "the wrong way round", 'IF(push>1200,"little","much")', "", "Compare again."],
  ["hint", "", "", "First hint."],
  ["rule", "", "", "Pressure times area."],
  ["source", "", "", "Identity."],
  ["beyond", "", "", "No more than that."],
];
