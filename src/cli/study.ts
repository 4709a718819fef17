import type { Notebook } from "../notebook/model";
import { checkRows, columnOf, optionName, rowsNamed } from "../study/rows";
import { type Runner, runnerOf } from "../study/runner";
import { sourceFor } from "../study/source";
import { type StudyInput, type Subject, subjectOf } from "../study/subject";
import { say } from "../words/say";
import { readFolder } from "./folder";
import { Misuse, type Output } from "./output";

/** A study of one option on the terminal. */
export interface OpenStudy {
  readonly notebook: Notebook;
  readonly option: string;
  readonly subject: Subject;
  readonly runner: Runner;
}

/** Parts `Supply.drop@Cruiser` into the rows and the option; without an option the first one is meant. */
function splitAddress(address: string): { readonly rows: string; readonly option: string | undefined } {
  const at = address.indexOf("@");
  return at < 0 ? { rows: address, option: undefined } : { rows: address.slice(0, at), option: address.slice(at + 1) };
}

/** Opens the folder's notebook for a study of some rows of one option; `checks@Option` means all its checks. */
export function openStudy(output: Output, folder: string, address: string): OpenStudy {
  const notebook = readFolder(output.path(folder));
  const { rows, option } = splitAddress(address);
  const column = columnOf(notebook, option);
  const named = rows === "checks" ? checkRows(notebook) : rowsNamed(notebook, rows);
  const source = sourceFor(notebook, column, named);
  const subject = subjectOf(source, column, named);
  const runner = runnerOf(subject.chain, source.notebook.pages);
  return { notebook, option: optionName(notebook, column), subject, runner };
}

/** The place of an input that the person named. @throws Misuse when the results do not hang on it. */
export function inputPlace({ subject, notebook }: OpenStudy, name: string): number {
  const [row, ...more] = rowsNamed(notebook, name);
  if (!row || more.length > 0) throw new Misuse(say`--by ${name}: name one input, for example Supply.run.`);
  const place = subject.inputs.findIndex((input: StudyInput) => input.name === row.name);
  if (place < 0) throw new Misuse(say`${row.name} is no input of this result; see "moves" for those that are.`);
  return place;
}

/** A number from an argument. @throws Misuse */
export function numberFrom(name: string, text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const value = Number(text);
  if (text.trim() === "" || !Number.isFinite(value)) throw new Misuse(say`${name} ${text}: write a plain number.`);
  return value;
}

/** Why it takes longer, where it does; for the person, beside the answer. */
export const whyLine = ({ why }: Runner): string => (why === undefined ? "" : `${why}\n`);
