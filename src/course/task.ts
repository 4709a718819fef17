import type { Page } from "../notebook/model";
import { say } from "../words/say";
import type { Allowance } from "./allowance";
import type { Amount } from "./amount";

/** The first row of a task page; each row below it is one part of the task, named in the first column. */
export const taskHeader = ["Part", "Name", "Unit", "Text", "How", "Within", "Advice"] as const;

/** Whether a page has the header of a task page. */
export const isTaskPage = (page: Pick<Page, "rows">): boolean =>
  taskHeader.every((name, column) => page.rows[0]?.[column] === name);

/** What the first column may say, and what the row then holds. */
export const partWords = {
  question: say`a paragraph of the question; {name} stands for a number with its unit`,
  drawn: say`a number drawn for each trainee; How says from what`,
  made: say`a number that follows from the drawn ones and belongs to the question; How is its formula`,
  require: say`a condition that drawn numbers must meet; How is its formula, Text the reason`,
  working: say`a step of the solution; How is its formula`,
  answer: say`what is asked; How is the solution, Within what is taken as right`,
  mistake: say`a wrong way to the answer in Name; Text calls it by name, How is its formula, Advice helps on`,
  hint: say`one step of help; hints are shown one after the other`,
  rule: say`the rule that the task teaches`,
  source: say`where the rule comes from`,
  beyond: say`what may not be concluded`,
  caution: say`the usual caution where the work can hurt someone`,
} as const;

export type PartWord = keyof typeof partWords;

/** The parts of a task that are plain text. */
export const textParts = ["question", "hint", "rule", "source", "beyond", "caution"] as const;
export type TextPart = (typeof textParts)[number];

interface Row {
  /** Line of the page's file, from 1. */
  readonly row: number;
}

/** Something with a name that formulas may use. */
interface Named extends Row {
  readonly name: string;
  /** Unit text; empty for words. */
  readonly unit: string;
  readonly about: string;
}

export interface Drawn extends Named {
  readonly amount: Amount;
}

/** A value that follows from others by a formula over names, written without the equals sign. */
export interface Calculated extends Named {
  readonly formula: string;
}

export interface Requirement extends Row {
  readonly formula: string;
  readonly why: string;
}

export interface Mistake extends Row {
  /** Name of the answer that it spoils. */
  readonly of: string;
  readonly title: string;
  readonly formula: string;
  readonly advice: string;
}

export interface Answer extends Calculated {
  readonly allowance: Allowance;
  readonly mistakes: readonly Mistake[];
}

/** A task as its page says it. */
export interface Task {
  /** Place in the course, from 1. */
  readonly number: number;
  readonly title: string;
  readonly file: string;
  readonly texts: Readonly<Record<TextPart, readonly string[]>>;
  readonly drawn: readonly Drawn[];
  readonly made: readonly Calculated[];
  readonly requirements: readonly Requirement[];
  /** Steps and answers in the order of the page: the way to the solution. */
  readonly way: readonly (Calculated | Answer)[];
  readonly answers: readonly Answer[];
}

export const mistakesOf = (task: Task): readonly Mistake[] => task.answers.flatMap(({ mistakes }) => mistakes);
