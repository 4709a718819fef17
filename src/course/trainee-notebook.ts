import { readNotebook } from "../notebook/files";
import type { Notebook, Page, Row } from "../notebook/model";
import { printPage } from "../notebook/page-csv";
import { Refusal } from "../notebook/refusal";
import { say } from "../words/say";
import { type AskedAnswer, type AskedTask, taughtOf, taughtParts } from "./asked-task";
import { askedKind } from "./kinds";
import { traineeId } from "./seed";
import { shown } from "./shown";
import { traineeColumn as at, readTraineeRows, traineeHeader } from "./trainee-file";

const cell = (row: Row | undefined, column: number): string => (row?.[column] ?? "").trim();

/** Letters, digits and spaces, as a page may be called; a number keeps two tasks of one name apart. */
function pageName(number: string, title: string, isTaken: boolean): string {
  const plain = title
    .replace(/[^\p{L}\p{N} ,()-]+/gu, " ")
    .replace(/\s+/g, " ")
    .trim();
  return plain === "" || isTaken ? say`Task ${number} ${plain}`.trim() : plain;
}

/**
 * A trainee's file as a notebook: one page a task, the first page with whose it is. It holds what the file holds, so
 * nothing of the solutions.
 *
 * @throws Refusal for a file of another shape, without tasks or without a trainee.
 */
export function traineeNotebook(file: string, bytes: Uint8Array): Notebook {
  const rows = readTraineeRows(file, bytes);
  const head = rows.filter((row) => cell(row, at.task) === "");
  const named = (part: string) => head.find((row) => cell(row, at.part) === part);
  const trainee = traineeId(cell(named("trainee"), at.value));
  const numbers = [...new Set(rows.flatMap((row) => cell(row, at.task) || []))];
  if (trainee === "")
    throw new Refusal(say`${file}: the row "trainee" is missing or has no value; ask your trainer for another file.`);
  if (numbers.length === 0) throw new Refusal(say`${file} has no tasks; ask your trainer for another file.`);
  const course = cell(named("course"), at.text) || say`Course`;
  const taken = new Set([say`This file`.toLowerCase()]);
  const tasks = numbers.map((number) => {
    const own = rows.filter((row) => cell(row, at.task) === number);
    const title = cell(
      own.find((row) => cell(row, at.part) === "task"),
      at.text,
    );
    const isTaken = taken.has(title.toLowerCase());
    taken.add(title.toLowerCase());
    return { name: pageName(number, title, isTaken), file: `task-${number.replace(/\W+/g, "-")}.csv`, rows: own };
  });
  const about = {
    version: 1,
    title: `${course}: ${trainee}`,
    pages: [
      ...tasks.map(({ name, file: own }) => ({ name, file: own, kind: askedKind })),
      { name: say`This file`, file: "trainee.csv" },
    ],
    settings: { edition: cell(named("course"), at.value), trainee },
  };
  const page = (own: readonly Row[]): string => printPage([traineeHeader, ...own]);
  return readNotebook(
    new Map([
      ["notebook.json", `${JSON.stringify(about, undefined, 2)}\n`],
      ...tasks.map((task) => [task.file, page(task.rows)] as const),
      ["trainee.csv", page(head)],
    ]),
  );
}

/** Whether a notebook was made of a trainee's file. */
const isAsked = (notebook: Notebook, { file }: Page): boolean =>
  notebook.about.pages.some((entry) => entry.file === file && entry.kind === askedKind);

/** The trainee's file again, with the answers as they stand; its trainee by the way. */
export function traineeFileOf(notebook: Notebook): { readonly trainee: string; readonly text: string } {
  const tasks = notebook.pages.filter((page) => isAsked(notebook, page));
  const head = notebook.pages.filter((page) => !tasks.includes(page)).flatMap(({ rows }) => rows.slice(1));
  const trainee = cell(
    head.find((row) => cell(row, at.part) === "trainee"),
    at.value,
  );
  return { trainee, text: printPage([traineeHeader, ...head, ...tasks.flatMap(({ rows }) => rows.slice(1))]) };
}

/** The row in which the answer to a question is typed; -1 where there is none. */
export const answerRow = (page: Page, name: string): number =>
  page.rows.findIndex((row) => cell(row, at.part) === "answer" && cell(row, at.name) === name);

export const answerColumn = at.value;

/** What stands in the cell for an answer. */
export const typedOn = (page: Page, name: string): string =>
  (page.rows[answerRow(page, name)]?.[at.value] ?? "").replace(/^'/, "");

/** Parts `Loss (3 figures or more)` at the brackets at its end, in whatever language the file was written. */
function aboutAndHow(text: string): readonly [about: string, how: string] {
  if (!text.endsWith(")")) return [text, ""];
  let depth = 0;
  for (let i = text.length - 1; i > 0; i--) {
    if (text[i] === ")") depth++;
    else if (text[i] === "(" && --depth === 0) return [text.slice(0, i).trimEnd(), text.slice(i + 1, -1)];
  }
  return [text, ""];
}

/** What is chosen from has its words after a colon: `one of: fits / does not fit`. */
function answerOf(row: Row): AskedAnswer {
  const [about, how] = aboutAndHow(cell(row, at.text));
  const [, list] = /^[^:/]+: (.+ \/ .+)$/.exec(how) ?? [];
  return { name: cell(row, at.name), about, unit: cell(row, at.unit), how, choices: list?.split(" / ") ?? [] };
}

/** A task out of its page of a trainee's file. */
export function askedOn(page: Page): AskedTask {
  const of = (part: string): readonly Row[] => page.rows.filter((row) => cell(row, at.part) === part);
  const texts = (part: string): readonly string[] => of(part).map((row) => cell(row, at.text));
  const [rule = [], source = [], beyond = [], caution = []] = taughtParts.map(texts);
  const value = (row: Row): string => {
    const text = cell(row, at.value);
    const number = Number(text);
    return shown(text !== "" && Number.isFinite(number) ? number : text, cell(row, at.unit));
  };
  return {
    number: cell(of("task")[0], at.task),
    title: texts("task")[0] ?? page.name,
    question: texts("question"),
    given: of("given").map((row) => ({ about: cell(row, at.text), value: value(row) })),
    answers: of("answer").map(answerOf),
    hints: texts("hint"),
    taught: taughtOf({ rule, source, beyond, caution }),
  };
}
