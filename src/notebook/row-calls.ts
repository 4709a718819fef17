import { contentOf } from "../engine/content";
import type { AnyDefinition } from "../formula/definition";
import { say } from "../words/say";
import { branchTest } from "./branch-test";
import { columnsOf, firstOption, type Page, textAt } from "./model";
import type { FindFunction } from "./named-function";
import { columnName, pagePrefix } from "./references";
import { Refusal } from "./refusal";
import { argumentTexts, scanCalls } from "./scan-calls";

/** A call as it stands in the text of a cell. */
export interface CallText {
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

const range = /^(?:'(?:[^']|'')+'!|[\p{L}_][\p{L}\p{N}_]*!)?\$?[A-Za-z]{0,3}\$?\d*:\$?[A-Za-z]{0,3}\$?\d*$/u;

/** The call in every option of a row, by column. @throws Refusal where one cannot be taken apart. */
export function callsOfRow(page: Page, row: number, definition: AnyDefinition): Map<number, CallText> {
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
