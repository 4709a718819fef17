import type { Row } from "../notebook/model";
import { printPage } from "../notebook/page-csv";
import { Refusal } from "../notebook/refusal";
import { detectShape, readTable } from "../notebook/table-in";
import { say } from "../words/say";
import { allowanceWords } from "./allowance";
import { givenIn, questionOf } from "./asked";
import { harmless } from "./class-table";
import { type Course, taskHandedOut } from "./course";
import { type Marked, markTask } from "./mark";
import { type Numbers, numbersFor } from "./numbers";
import { traineeId } from "./seed";
import type { Task } from "./task";

/** The first row of a trainee's file: what is given and what is asked, and the cells for the answers. */
export const traineeHeader = ["Task", "Part", "Name", "Unit", "Text", "Value"] as const;

export const traineeColumn = { task: 0, part: 1, name: 2, unit: 3, text: 4, value: 5 } as const;

/** What a trainee typed for an answer of a task. */
export type TypedFor = (task: Task, answer: string) => string;

/** What goes into a trainee's file. */
export interface FileWishes {
  /** All of the course when left out. */
  readonly tasks?: readonly Task[];
  /** What already stands in the cells for the answers; nothing for a file that is handed out. */
  readonly typed?: TypedFor;
  /** How many hints of each task; all when left out. */
  readonly hints?: number;
}

function rowsOf(numbers: Numbers, typed: TypedFor, hints: number): Row[] {
  const { task } = numbers;
  const line = (part: string, text: string, name = "", unit = "", value = ""): Row => [
    String(task.number),
    part,
    name,
    unit,
    text,
    value,
  ];
  const all = (part: "rule" | "source" | "beyond" | "caution") => task.texts[part].map((text) => line(part, text));
  return [
    line("task", task.title),
    ...questionOf(numbers).map((text) => line("question", text)),
    ...givenIn(numbers).map(({ name, about, unit, value }) => line("given", about, name, unit, String(value))),
    ...task.answers.map(({ name, about, unit, allowance }) =>
      line("answer", `${about} (${allowanceWords(allowance, unit)})`, name, unit, harmless(typed(task, name))),
    ),
    ...(["rule", "source", "beyond", "caution"] as const).flatMap(all),
    ...task.texts.hint.slice(0, hints).map((text) => line("hint", text)),
  ];
}

/**
 * The file for one trainee: questions, given numbers, rules and cells for the answers, as CSV. It is made of the parts
 * that trainees may see; solutions, steps and mistakes do not go in. Hints stand last in
 * each task.
 */
export function printTraineeFile(
  course: Course,
  trainee: string,
  { tasks = course.tasks, typed = () => "", hints = Number.POSITIVE_INFINITY }: FileWishes = {},
): string {
  const rows = tasks.flatMap((task) => rowsOf(numbersFor(course, task, trainee), typed, hints));
  return printPage([
    traineeHeader,
    ["", "course", "", "", course.title, course.edition],
    ["", "trainee", "", "", "", traineeId(trainee)],
    ["", "how", "", "", say`Write each answer into the column Value of its row; leave everything else as it is.`, ""],
    ...rows,
  ]);
}

/** One task of a trainee's file after marking. */
export interface MarkedTask {
  readonly task: Task;
  /** Empty when the task could not be marked. */
  readonly marks: readonly Marked[];
  /** Why the task was not marked. */
  readonly refused: string | undefined;
}

export interface MarkedFile {
  readonly file: string;
  readonly trainee: string;
  readonly tasks: readonly MarkedTask[];
}

/** The values of a part by name; a name without a row is left out. */
const valuesOf = (rows: readonly Row[], part: string): ReadonlyMap<string, string> =>
  new Map(
    rows
      .filter((row) => row[traineeColumn.part] === part)
      .map((row) => [row[traineeColumn.name] ?? "", row[traineeColumn.value] ?? ""]),
  );

function markRows(course: Course, trainee: string, task: Task, rows: readonly Row[]): MarkedTask {
  const numbers = numbersFor(course, task, trainee);
  const typed = valuesOf(rows, "answer");
  const given = valuesOf(rows, "given");
  // A decimal comma may have come in when the file went through another program.
  const strange = givenIn(numbers).find(
    ({ name, value }) => given.get(name)?.trim().replace(",", ".") !== String(value),
  );
  if (strange && [...typed.values()].some((text) => text.trim() !== "")) {
    const why = say`the file says ${strange.name} ${given.get(strange.name) ?? say`(nothing)`}, ${trainee} has ${strange.value}; it is another trainee's file, or of another edition`;
    return { task, marks: [], refused: why };
  }
  return { task, marks: markTask(numbers, typed), refused: undefined };
}

/** Whether a table has the first row of a trainee's file. */
export const isTraineeTable = (rows: readonly Row[]): boolean => {
  const header = (rows[0] ?? []).map((cell) => cell.replace(/^\uFEFF/, "").trim());
  return traineeHeader.every((name, i) => header[i] === name);
};

/** The rows of a trainee's file below its header. @throws Refusal for a file of another shape. */
export function readTraineeRows(file: string, bytes: Uint8Array): readonly Row[] {
  const rows = readTable(file, bytes, detectShape(bytes));
  if (!isTraineeTable(rows)) {
    throw new Refusal(say`${file}, row 1: a trainee's file begins with ${traineeHeader.join(",")}.`);
  }
  return rows.slice(1).map((row) => row.map((cell, i) => (i === traineeColumn.value ? cell : cell.trim())));
}

/**
 * Marks a file that came back from a trainee; a semicolon or tab between the cells does no harm.
 *
 * @throws Refusal with file and row for a file of another shape, without a trainee, or with an unknown task.
 */
export function markTraineeFile(course: Course, file: string, bytes: Uint8Array): MarkedFile {
  const rows = readTraineeRows(file, bytes);
  const trainee = traineeId(rows.find((row) => row[traineeColumn.part] === "trainee")?.[traineeColumn.value] ?? "");
  if (trainee === "")
    throw new Refusal(say`${file}: the row "trainee" is missing or has no value; put the trainee there.`);
  const wanted = [...new Set(rows.flatMap((row) => row[traineeColumn.task] || []))];
  const titled = rows.filter((row) => row[traineeColumn.part] === "task");
  const titles = new Map(titled.map((row) => [row[traineeColumn.task], row[traineeColumn.text] ?? ""]));
  return {
    file,
    trainee,
    tasks: wanted.map((number) => {
      const own = rows.filter((row) => row[traineeColumn.task] === number);
      return markRows(course, trainee, taskHandedOut(course, number, titles), own);
    }),
  };
}
