import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileStems } from "../course/class-files";
import { type ClassEntry, readClassList } from "../course/class-list";
import { printClassTable } from "../course/class-table";
import { type Course, readCourse, taskBy } from "../course/course";
import { numbersFor } from "../course/numbers";
import { type Block, solutionSheet, taskSheet } from "../course/sheet";
import { sheetsHtml, sheetText } from "../course/sheet-print";
import type { Task } from "../course/task";
import { type FileWishes, printTraineeFile } from "../course/trainee-file";
import { say } from "../words/say";
import { readFolder } from "./folder";
import { Misuse, type Output } from "./output";

/** What `task` and `class` are asked to write. */
export interface SheetWishes {
  readonly trainee: string | undefined;
  readonly print: boolean;
  readonly html: boolean;
  readonly solution: boolean;
  readonly hints: string | undefined;
}

export const openCourse = (output: Output, folder: string): Course => readCourse(readFolder(output.path(folder)));

/** Reads a class list from a file. @throws Misuse, Refusal */
export function openClass(output: Output, file: string): readonly ClassEntry[] {
  return readClassList(file, readBytes(output, file));
}

/** A file as bytes. @throws Misuse when it cannot be read. */
export function readBytes(output: Output, file: string): Uint8Array {
  try {
    return readFileSync(output.path(file));
  } catch {
    throw new Misuse(say`${file} cannot be read; name a CSV file.`);
  }
}

/** How many hints of each task are wanted; undefined where nothing was said. */
function hintCount(hints: string | undefined): number | undefined {
  if (hints === undefined) return undefined;
  if (!/^\d{1,2}$/.test(hints))
    throw new Misuse(say`--hints ${hints}: give how many hints to print, for example --hints 1.`);
  return Number(hints);
}

const sheetsOf = (course: Course, tasks: readonly Task[], trainee: string, wishes: SheetWishes): readonly Block[][] =>
  tasks.map((task) => {
    const numbers = numbersFor(course, task, trainee);
    return [
      ...(wishes.solution ? solutionSheet(course, numbers) : taskSheet(course, numbers, hintCount(wishes.hints) ?? 0)),
    ];
  });

/** A file holds all hints when nothing is said of them: the page shows them one at a time. */
const fileWishes = (tasks: readonly Task[], wishes: SheetWishes): FileWishes => {
  const hints = hintCount(wishes.hints);
  return hints === undefined ? { tasks } : { tasks, hints };
};

/**
 * `task COURSE [TASK] --for TRAINEE`: the trainee's file as CSV; with `--print` a sheet of text, with `--html` a page
 * to print, with `--solution` the trainer's sheet instead.
 */
export function writeTask(output: Output, args: readonly string[], wishes: SheetWishes): void {
  const [folder, wanted, ...more] = args;
  if (folder === undefined || more.length > 0 || wishes.trainee === undefined) {
    throw new Misuse(
      say`task takes a course, a task and a trainee, for example task sheets/course 4 --for T07 --print.`,
    );
  }
  const course = openCourse(output, folder);
  const tasks = wanted === undefined ? course.tasks : [taskBy(course, wanted)];
  const { trainee } = wishes;
  if (wishes.html) {
    output.write(sheetsHtml(`${course.title}: ${trainee}`, sheetsOf(course, tasks, trainee, wishes)));
  } else if (wishes.print || wishes.solution) {
    output.write(sheetsOf(course, tasks, trainee, wishes).map(sheetText).join("\n\n"));
  } else {
    output.write(printTraineeFile(course, trainee, fileWishes(tasks, wishes)));
  }
}

/**
 * `class COURSE CLASS.csv`: all trainees' numbers and answers as CSV. With `--into FOLDER` a file and a printable page
 * for each trainee are written there, with `--solution` the trainer's page for each as well.
 */
export function writeClass(
  output: Output,
  args: readonly string[],
  into: string | undefined,
  wishes: SheetWishes,
): void {
  const [folder, list, ...more] = args;
  if (folder === undefined || list === undefined || more.length > 0) {
    throw new Misuse(say`class takes a course and a class list, for example class sheets/course class.csv.`);
  }
  const course = openCourse(output, folder);
  const entries = openClass(output, list);
  if (into === undefined) {
    output.write(printClassTable(course, entries));
    return;
  }
  const target = output.path(into);
  const stems = fileStems(entries);
  mkdirSync(target, { recursive: true });
  entries.forEach(({ trainee }, i) => {
    const write = (name: string, text: string): void => {
      writeFileSync(join(target, name), text);
      output.write(`${name}\n`);
    };
    const page = (solution: boolean) =>
      sheetsHtml(`${course.title}: ${trainee}`, sheetsOf(course, course.tasks, trainee, { ...wishes, solution }));
    write(`${stems[i]}.csv`, printTraineeFile(course, trainee, fileWishes(course.tasks, wishes)));
    write(`${stems[i]}.html`, page(false));
    if (wishes.solution) write(`${stems[i]}-solution.html`, page(true));
  });
}
