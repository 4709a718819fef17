import type { Page, Row } from "../notebook/model";
import { Refusal } from "../notebook/refusal";
import { readUnit } from "../units/unit";
import { say } from "../words/say";
import { readAllowance } from "./allowance";
import { readAmount } from "./amount";
import { isName, namesIn, withoutSign } from "./names";
import {
  type Answer,
  type Calculated,
  type Drawn,
  isTaskPage,
  type Mistake,
  type PartWord,
  partWords,
  type Requirement,
  type Task,
  type TextPart,
  taskHeader,
  textParts,
} from "./task";

/** A row of a task page, with a refusal that says where it is. */
interface Line {
  readonly row: number;
  readonly part: PartWord;
  readonly name: string;
  readonly unit: string;
  readonly text: string;
  readonly how: string;
  readonly within: string;
  readonly advice: string;
  readonly refuse: (column: (typeof taskHeader)[number], why: string) => Refusal;
}

const isPart = (word: string): word is PartWord => Object.hasOwn(partWords, word);

function lineOf(file: string, cells: Row, row: number): Line[] {
  if (cells.every((cell) => cell.trim() === "")) return [];
  const [part = "", name = "", unit = "", text = "", how = "", within = "", advice = ""] = cells.map((c) => c.trim());
  const refuse: Line["refuse"] = (column, why) =>
    new Refusal(say`${file}, row ${row}, column ${taskHeader.indexOf(column) + 1} (${column}): ${why}.`);
  if (!isPart(part)) {
    throw refuse("Part", say`"${part}" is no part of a task (there are ${Object.keys(partWords).join(", ")})`);
  }
  return [{ row, part, name, unit, text, how, within, advice, refuse }];
}

function checkName({ name, unit, how, refuse }: Line): void {
  if (!isName(name))
    throw refuse("Name", say`"${name}" is no name; use small letters, digits and _, not the name of a cell`);
  if (unit !== "" && !readUnit(unit)) throw refuse("Unit", say`"${unit}" is not a unit that the program knows`);
  if (how === "") throw refuse("How", say`is blank; say what the value is drawn from, or its formula`);
}

const calculated = ({ row, name, unit, text, how }: Line): Calculated => ({
  row,
  name,
  unit,
  about: text,
  formula: withoutSign(how),
});

function drawnOf(line: Line): Drawn {
  const amount = readAmount(line.how);
  if (typeof amount === "string") throw line.refuse("How", amount);
  const { row, name, unit, text } = line;
  return { row, name, unit, about: text, amount };
}

function answerOf(line: Line, mistakes: readonly Mistake[]): Answer {
  const allowance = readAllowance(line.within, line.unit);
  if (typeof allowance === "string") throw line.refuse("Within", allowance);
  return { ...calculated(line), allowance, mistakes: mistakes.filter(({ of }) => of === line.name) };
}

function mistakeOf(line: Line, answers: readonly Line[]): Mistake {
  const { row, name, text, how, advice, refuse } = line;
  if (!answers.some((answer) => answer.name === name))
    throw refuse("Name", say`there is no answer "${name}" to go wrong`);
  if (text === "") throw refuse("Text", say`is blank; call the mistake by a name`);
  if (how === "") throw refuse("How", say`is blank; give the formula that the mistake leads to`);
  if (advice === "") throw refuse("Advice", say`is blank; say what to do instead`);
  return { row, of: name, title: text, formula: withoutSign(how), advice };
}

function checkNames(lines: readonly Line[], known: ReadonlySet<string>): void {
  for (const { part, how, refuse } of lines) {
    if (!["made", "require", "working", "answer", "mistake"].includes(part)) continue;
    const strange = namesIn(withoutSign(how)).find((name) => !known.has(name));
    if (strange) throw refuse("How", say`"${strange}" is not a name of this page (there are ${[...known].join(", ")})`);
  }
  for (const { part, text, refuse } of lines) {
    if (part !== "question") continue;
    const strange = [...text.matchAll(/\{([^}]*)\}/g)].map(([, name = ""]) => name).find((name) => !known.has(name));
    if (strange !== undefined) throw refuse("Text", say`{${strange}} stands for no name of this page`);
  }
}

/** The names of a page, each only once. */
function namesOf(lines: readonly Line[]): ReadonlySet<string> {
  const names = new Set<string>();
  for (const line of lines) {
    checkName(line);
    if (names.has(line.name)) throw line.refuse("Name", say`"${line.name}" is already the name of a row above`);
    names.add(line.name);
  }
  return names;
}

const textsOf = (lines: readonly Line[]): Task["texts"] =>
  Object.fromEntries(
    textParts.map((part) => [part, lines.filter((line) => line.part === part).map(({ text }) => text)]),
  ) as unknown as Record<TextPart, readonly string[]>;

/**
 * Reads a task from its page.
 *
 * @throws Refusal with file, row and column for a part, name, unit, range or allowance that cannot be read.
 */
export function readTask(page: Page, number: number): Task {
  const { file, name: title } = page;
  if (!isTaskPage(page)) {
    throw new Refusal(say`${file}, row 1: a task page begins with ${taskHeader.join(",")}; put that row at its top.`);
  }
  const lines = page.rows.slice(1).flatMap((cells, i) => lineOf(file, cells, i + 2));
  const of = (...parts: readonly PartWord[]) => lines.filter(({ part }) => parts.includes(part));
  const known = namesOf(of("drawn", "made", "working", "answer"));
  checkNames(lines, known);
  const missing = (["question", "answer", "rule", "source", "beyond"] as const).find((part) => of(part).length === 0);
  if (missing) throw new Refusal(say`${file}: the task has no row "${missing}"; it needs ${partWords[missing]}.`);
  const mistakes = of("mistake").map((line) => mistakeOf(line, of("answer")));
  const way = of("working", "answer").map((line) =>
    line.part === "answer" ? answerOf(line, mistakes) : calculated(line),
  );
  return {
    number,
    title,
    file,
    texts: textsOf(lines),
    drawn: of("drawn").map(drawnOf),
    made: of("made").map(calculated),
    requirements: of("require").map(
      ({ row, how, text }): Requirement => ({ row, formula: withoutSign(how), why: text }),
    ),
    way,
    answers: way.filter((step): step is Answer => "allowance" in step),
  };
}
