// Past 150 lines: one edit, from the call in a row to the rows in its place.

import { contentOf } from "../engine/content";
import { type Argument, allowed, defaultOf, words } from "../formula/arguments";
import type { AnyDefinition } from "../formula/definition";
import { whyNotUnfolded } from "../formula/unfold/reason";
import { type CellOf, type UnfoldedRow, unfold } from "../formula/unfold/unfold";
import { say } from "../words/say";
import { branchTest } from "./branch-test";
import { type CellText, pageOf, setCells } from "./edit-cells";
import { insertRows } from "./edit-lines";
import { columnsOf, firstOption, isOptionPage, lead, type Notebook, type Page, textAt } from "./model";
import type { FindFunction } from "./named-function";
import { columnName, pagePrefix, referencesOf } from "./references";
import { Refusal } from "./refusal";
import { argumentTexts, scanCalls } from "./scan-calls";

/** The name of the row that says whether the branch is taken; no symbol holds a blank. */
const branchTaken = "branch taken";

/** A call as it stands in the text of a cell. */
interface CallText {
  readonly start: number;
  /** Just behind the closing bracket. */
  readonly end: number;
  readonly args: readonly string[];
  /** Whether the branch that it stands in is taken, as a formula; undefined where it is worked out in any case. */
  readonly taken: string | undefined;
}

function callIn(text: string, name: string): CallText | undefined {
  const call = contentOf(text).kind === "formula" ? scanCalls(text).find((one) => one.name === name) : undefined;
  if (call?.close === undefined) return undefined;
  return {
    start: call.start,
    end: call.close + 1,
    args: argumentTexts(text, call),
    taken: branchTest(text, call.start),
  };
}

/** The named functions in a cell, each once, outer ones first. */
export function namedIn(text: string, find: FindFunction): readonly AnyDefinition[] {
  const names = new Set(contentOf(text).kind === "formula" ? scanCalls(text).map(({ name }) => name) : []);
  return [...names].flatMap((name) => find(name) ?? []);
}

const oneCell = /^(?:'(?:[^']|'')+'!|[\p{L}_][\p{L}\p{N}_]*!)?\$?[A-Za-z]{1,3}\$?[1-9]\d*$/u;
const range = /^(?:'(?:[^']|'')+'!|[\p{L}_][\p{L}\p{N}_]*!)?\$?[A-Za-z]{0,3}\$?\d*:\$?[A-Za-z]{0,3}\$?\d*$/u;

/** The call in every option of a row, by column. @throws Refusal where one cannot be taken apart. */
function callsOfRow(page: Page, row: number, definition: AnyDefinition): Map<number, CallText> {
  const calls = new Map<number, CallText>();
  const count = Object.keys(definition.args).length;
  for (let column = firstOption; column < columnsOf(page); column++) {
    const call = callIn(textAt(page, row, column), definition.name);
    if (!call) continue;
    const cell = `${pagePrefix(page.name)}${columnName(column)}${row + 1}`;
    if (call.args.length > count) {
      throw new Refusal(
        say`${cell}: ${definition.name} takes ${count} arguments, got ${call.args.length}; mend it, then unfold it.`,
      );
    }
    const wide = call.args.find((argument) => range.test(argument));
    if (wide !== undefined) {
      throw new Refusal(
        say`${cell}: ${wide} is a range and ${definition.name} takes single cells; mend it, then unfold it.`,
      );
    }
    calls.set(column, call);
  }
  return calls;
}

/** What is typed for a formula: a plain number or word as such. */
function typed(formula: string): string {
  const word = /^"([^"]*)"$/.exec(formula)?.[1];
  if (word !== undefined && contentOf(word).kind === "text" && !word.startsWith("'")) return word;
  return contentOf(formula).kind === "number" ? formula : `=${formula}`;
}

const literal = (value: number | string | boolean): string =>
  typeof value === "string" ? `"${value.replaceAll('"', '""')}"` : String(value).toUpperCase();

/** An argument as a formula of its own; what is left out or blank takes the default, as in the call. */
function argumentFormula(argument: Argument, given: string): string {
  const otherwise = defaultOf(argument) as number | string | boolean | undefined;
  if (given === "") return otherwise === undefined ? "NA()" : literal(otherwise);
  if (otherwise === undefined || !oneCell.test(given)) return given;
  return `IF(${given}="",${literal(otherwise)},${given})`;
}

interface ArgumentRow {
  readonly name: string;
  readonly place: number;
  readonly argument: Argument;
}

/** The arguments that need a row: all but those that are plain references wherever the call stands. */
function argumentRows(definition: AnyDefinition, calls: readonly CallText[]): ArgumentRow[] {
  return Object.entries(definition.args)
    .map(([name, argument], place) => ({ name, argument, place }))
    .filter(
      ({ argument, place }) =>
        defaultOf(argument) !== undefined || calls.some(({ args }) => !oneCell.test(args[place] ?? "")),
    );
}

interface BranchRow {
  readonly name: string;
  readonly decides: true;
}

/** Where the call stands in a branch, a row says whether that is taken; while it is not, the others say that too. */
const branchRows = (calls: readonly CallText[]): BranchRow[] =>
  calls.some(({ taken }) => taken !== undefined) ? [{ name: branchTaken, decides: true }] : [];

/** The line before which the rows go: the row's own, or the page's end where a range would take them in. */
function placeFor(notebook: Notebook, page: Page, row: number, isFilled: boolean): number {
  let place = row;
  for (const home of notebook.pages) {
    for (const [r, cells] of home.rows.entries()) {
      for (const [column, text] of cells.entries()) {
        if (!text.startsWith("=") || !text.includes(":")) continue;
        // Counting what is blank does not see rows that are filled.
        const read = isFilled ? text.replace(/COUNTBLANK\([^()"]*\)/gi, "") : text;
        for (const { page: name, from, to } of referencesOf(read)) {
          if (!to || (name ?? home.name).toLowerCase() !== page.name.toLowerCase()) continue;
          if (from.row === undefined || to.row === undefined) {
            throw new Refusal(
              say`${pagePrefix(home.name)}${columnName(column)}${r + 1} reads whole columns of ${page.name}, new rows would count in it; name its rows, then unfold.`,
            );
          }
          if (Math.min(from.row, to.row) < row && row <= Math.max(from.row, to.row)) place = page.rows.length;
        }
      }
    }
  }
  return place;
}

/** Keys of their own for new rows: `drop_R`, with a number behind it where that is taken. */
function keysFor(page: Page, stem: string, names: readonly string[]): string[] {
  const taken = new Set(page.rows.map((cells) => cells[lead.key] ?? ""));
  return names.map((name) => {
    // `limits 1` is `drop_limits`, `limits 2` is `drop_limits_2`.
    const first = `${stem}_${name.replace(/ 1$/, "").replace(/[^\p{L}\p{N}_]+/gu, "_")}`;
    let key = first;
    for (let n = 2; taken.has(key); n++) key = `${first}_${n}`;
    taken.add(key);
    return key;
  });
}

/** How many rows came, and where the call's row is now. */
export interface UnfoldedCall {
  readonly notebook: Notebook;
  readonly first: number;
  readonly count: number;
  readonly row: number;
}

/**
 * Puts the steps of a named function as visible rows of plain formulas above the row that calls it, for all its
 * options; the row keeps its place in everything that refers to it, and its values to the last bit.
 *
 * @throws Refusal that says why a function, a call or a page cannot be taken apart.
 */
export function unfoldCall(notebook: Notebook, id: string, row: number, definition: AnyDefinition): UnfoldedCall {
  const page = pageOf(notebook, id);
  if (!isOptionPage(page)) {
    throw new Refusal(
      say`${page.name} is a free sheet; a function is unfolded on a page with options, where rows have units.`,
    );
  }
  const reason = whyNotUnfolded(definition);
  if (reason) throw new Refusal(reason);
  const calls = callsOfRow(page, row, definition);
  if (calls.size === 0)
    throw new Refusal(say`Row ${row + 1} of ${page.name} does not call ${definition.name}; choose a row that does.`);
  const { rows, result } = unfold(definition);
  const branch = branchRows([...calls.values()]);
  const args = argumentRows(definition, [...calls.values()]);
  const isFilled = calls.size === columnsOf(page) - firstOption;
  const free = placeFor(notebook, page, row, isFilled);
  // At the page's end they stand under a heading.
  const place = free === row ? row : free + 1;
  const count = branch.length + args.length + rows.length;
  const at = place === row ? row + count : row;
  const made = place === row ? insertRows(notebook, id, row, count) : notebook;
  // References have moved with the rows; everything is written as the formulas read now.
  const moved = callsOfRow(pageOf(made, id), at, definition);
  const lines = new Map<string, number>();
  [...branch, ...args, ...rows].forEach(({ name }, i) => {
    lines.set(name, place + i);
  });
  const stem = textAt(page, row, lead.key) || definition.name.replace(/^.*\./, "").toLowerCase();
  const keys = keysFor(page, stem, [...lines.keys()]);
  const cellOf =
    (column: number, call: CallText): CellOf =>
    (name) => {
      const line = lines.get(name);
      if (line !== undefined) return `${columnName(column)}${line + 1}`;
      return call.args[Object.keys(definition.args).indexOf(name)] ?? "";
    };
  const ofRow = (one: UnfoldedRow | ArgumentRow | BranchRow): readonly string[] => {
    if ("decides" in one) {
      return [
        say`The branch with ${definition.name} is taken`,
        "",
        say`where it is not, the rows of its steps are not used`,
      ];
    }
    if (!("argument" in one))
      return [one.title, one.unit === "any" ? textAt(page, row, lead.unit) : one.unit, one.basis];
    const { argument, name } = one;
    const unit = "unit" in argument ? argument.unit : "";
    const title = argument.about.charAt(0).toUpperCase() + argument.about.slice(1);
    return [
      title,
      unit === "any" ? textAt(page, row, lead.unit) : unit,
      say`${words(name)} of ${definition.name}; allowed ${allowed(argument)}`,
    ];
  };
  const textOf = (one: UnfoldedRow | ArgumentRow | BranchRow, column: number, call: CallText): string => {
    if ("decides" in one) return `=${call.taken ?? "TRUE()"}`;
    const formula =
      "argument" in one ? argumentFormula(one.argument, call.args[one.place] ?? "") : one.formula(cellOf(column, call));
    const text = typed(formula);
    if (branch.length === 0 || !text.startsWith("=")) return text;
    return `=IF(${cellOf(column, call)(branchTaken)},${formula},${literal(say`not used`)})`;
  };
  const cells: CellText[] = [...branch, ...args, ...rows].flatMap((one, i) => {
    const [title = "", unit = "", basis = ""] = ofRow(one);
    const line = { page: id, row: place + i };
    return [
      { ...line, column: lead.quantity, text: title },
      { ...line, column: lead.key, text: keys[i] as string },
      { ...line, column: lead.unit, text: unit },
      { ...line, column: lead.basis, text: basis },
      ...[...moved].map(([column, call]) => ({
        ...line,
        column,
        text: textOf(one, column, call),
      })),
    ];
  });
  const title = textAt(page, row, lead.quantity) || definition.name;
  const heading = place === row ? [] : [{ page: id, row: place - 1, column: lead.quantity, text: `${title}: steps` }];
  const results = [...moved].map(([column, call]) => {
    const text = textAt(pageOf(made, id), at, column);
    return {
      page: id,
      row: at,
      column,
      text: `${text.slice(0, call.start)}${result(cellOf(column, call))}${text.slice(call.end)}`,
    };
  });
  return { notebook: setCells(made, [...heading, ...cells, ...results]), first: place, count, row: at };
}
