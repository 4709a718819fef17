import { expect, it } from "vitest";
import { Engine } from "../../src/engine/engine";
import { callFunction } from "../../src/formula/call";
import type { AnyDefinition } from "../../src/formula/definition";
import { Fault } from "../../src/formula/fault";
import { whyNotUnfolded } from "../../src/formula/unfold/reason";
import type { Answer, Given } from "../../src/formula/value";
import { catalogue } from "../../src/functions";
import { setCells } from "../../src/notebook/edit-cells";
import { firstOption, type Page, textAt } from "../../src/notebook/model";
import { mapReferences } from "../../src/notebook/references";
import { unfoldCall } from "../../src/notebook/unfold";
import { anyArguments } from "../formula/any-arguments";
import { seeded } from "../formula/random-expression";
import { argumentsPage, text } from "./arguments-page";

const times = Number(process.env.ATHWART_UNFOLD ?? 60);
/** Rows of one sheet: what an engine builds at once stays within its time and memory. */
const atOnce = 2000;

/** A cell holds fifteen digits; past all size, a step on the way is an error in a cell and no number. */
function asTyped(value: Given): Given {
  if (typeof value === "object") return null;
  if (typeof value !== "number") return value;
  return Math.abs(value) < 1e-200 || Math.abs(value) > 1e200 ? 0 : Number(value.toPrecision(15)) + 0;
}

/** What a cell of a function shows: its answer, NaN for a refusal. */
function answer(one: AnyDefinition, given: readonly Given[]): Answer {
  try {
    return callFunction(one, given);
  } catch (problem) {
    if (problem instanceof Fault) return Number.NaN;
    throw problem;
  }
}

/** What stands in the other branch. */
const other = "another";

/** Of the lines with a call in a branch, one in three does not take it, with arguments of every kind. */
const isTaken = (at: number): boolean => at % 3 !== 2;

/**
 * The rows into which a call is unfolded, turned into one line of a sheet: what stood in row 7 of the page stands in
 * column 7 of the line, for any arguments.
 *
 * @param isBranched the call stands in a branch of a choice.
 */
function linesOf(
  one: AnyDefinition,
  isBranched: boolean,
): {
  readonly line: (at: number, given: readonly Given[]) => string[];
  readonly result: number;
} {
  const names = Object.keys(one.args);
  const { notebook: plain, row } = argumentsPage(one, [names.map(() => 1)]);
  const id = plain.pages[0]?.id ?? "";
  const call = textAt(plain.pages[0] as Page, row, firstOption).slice(1);
  const choice = [
    { page: id, row, column: firstOption, text: `=IF(E${row + 2}=1,${call},"${other}")` },
    { page: id, row: row + 1, column: firstOption, text: "1" },
  ];
  const notebook = isBranched ? setCells(plain, choice) : plain;
  const after = unfoldCall(notebook, id, row, one);
  const [page] = after.notebook.pages;
  if (!page) throw new Error("no page");
  const texts = page.rows.map((_, r) => (r === 0 ? "" : textAt(page, r, firstOption)));
  const turned = (formula: string, at: number): string =>
    mapReferences(formula, (old) => ({ ...old, from: { ...old.from, row: at, column: old.from.row }, to: undefined }));
  const line = (at: number, given: readonly Given[]): string[] =>
    texts.map((cell, r) => {
      const place = r - 1;
      if (isBranched && r === after.row + 1) return isTaken(at) ? "1" : "2";
      if (place >= 0 && place < names.length) return text(given[place] ?? null);
      return cell.startsWith("=") ? turned(cell, at) : cell;
    });
  return { line, result: after.row };
}

it.each([
  ["", false],
  [" where they are called in a branch that is taken, and nothing where it is not", true],
] as const)(
  `unfolded rows give the function's bits in the engine itself, on ${times} random inputs of every algebraic function%s`,
  {
    timeout: 3_600_000,
  },
  (_, isBranched) => {
    const random = seeded(19);
    const counts = { functions: 0, numbers: 0, refused: 0, other: 0 };
    for (const one of catalogue.filter((each) => whyNotUnfolded(each) === undefined)) {
      counts.functions++;
      const { line, result } = linesOf(one, isBranched);
      for (let done = 0; done < times; done += atOnce) {
        const sets = Array.from({ length: Math.min(atOnce, times - done) }, (_, i) =>
          anyArguments(random, one, i % 4 === 0 ? 0.3 : 0).map(asTyped),
        );
        const engine = new Engine([{ name: "Page", rows: sets.map((given, at) => line(at, given)) }]);
        sets.forEach((given, at) => {
          const value = engine.value({ sheet: 0, row: at, column: result });
          const shown =
            value.kind === "error"
              ? Number.NaN
              : value.kind === "blank"
                ? null
                : "text" in value
                  ? value.text
                  : value.value;
          const isOther = isBranched && !isTaken(at);
          const wanted = isOther ? other : answer(one, given);
          if (isOther) counts.other++;
          else if (typeof wanted === "number" && Number.isNaN(wanted)) counts.refused++;
          else counts.numbers++;
          if (!Object.is(shown, wanted))
            expect({ name: one.name, given, shown }).toEqual({ name: one.name, given, shown: wanted });
        });
        engine.dispose();
      }
    }
    console.log(`unfold: ${JSON.stringify({ times, isBranched, ...counts })}`);
    expect(counts.functions).toBeGreaterThan(70);
    expect(counts.numbers).toBeGreaterThan((counts.functions * times - counts.other) * 0.5);
    expect(counts.other > counts.functions * times * 0.3).toBe(isBranched);
    expect(counts.refused).toBeGreaterThan(0);
  },
);
